/** What counts for the print of a cut is in the hash of its texts; what does not is not. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type CutTexts, textsOf } from '../../src/episode/cut-texts.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';

const cut = (number: number | string, lines: string): string => `cut ${number}\ntime 2+0\n${lines}\n`;
const EPISODE: Record<string, string> = {
  'e/episode.yaml': 'artists:\n  R. Esk: [8]\ncuts: ["cuts/*.cut"]\n',
  'e/house.cut': 'phrase p = 1--2\n',
  'e/cuts/8.cut': cut(8, 'C: 1--2..'),
  'e/cuts/9.cut': cut(9, 'overlap out 1+0\nA: 1..'),
  'e/cuts/10.cut': cut(10, 'overlap in 24\nA: 1..'),
  'e/cuts/11.cut': `use "../house.cut"\n\n${cut(11, 'A: p 1..')}`,
  'e/cuts/12.cut': cut(12, 'level D reuse 8/C\nD: 1..'),
  'e/cuts/13.cut': cut(13, 'level D reuse 12/D\nD: 1..'),
  'e/cuts/14.cut': cut(14, 'A: 1..'),
};

let host: MemoryHost;

beforeEach(() => {
  host = memoryHost(EPISODE);
});

const set = (name: string, text: string) => host.files.set(`/work/${name}`, Buffer.from(text));

async function all(): Promise<Map<string, CutTexts | null>> {
  const { jobs } = await findCuts(host, ['e']);
  const cache = newEpisodeCache();
  return new Map(jobs.map((job) => [job.name, textsOf(host, job, cache)]));
}

/** Names of the cuts whose hash is another after a change. */
async function moved(change: () => void): Promise<string[]> {
  const before = await all();
  change();
  const now = await all();
  return [...now]
    .filter(([name, one]) => one?.hash !== before.get(name)?.hash)
    .map(([name]) => name.slice(7, -4));
}

test('of every cut that is written plainly, with its number and the texts that it was read from', async () => {
  const texts = await all();
  expect([...texts.values()].map((one) => one?.number)).toEqual(['8', '9', '10', '11', '12', '13', '14']);
  expect([...texts.get('e/cuts/11.cut')!.sources.keys()]).toEqual(['e/cuts/11.cut', 'e/house.cut']);
});

describe('another text', () => {
  test.each<[string, string, string, string[]]>([
    ['of a cut: that cut', 'e/cuts/14.cut', cut(14, 'A: 2..'), ['14']],
    ['of a used file', 'e/house.cut', 'phrase p = 1-2\n', ['11']],
    ['of a lender: all that it is lent to, on and on', 'e/cuts/8.cut', cut(8, 'C: 1-2..'), ['8', '12', '13']],
    [
      'of a borrower: those that lend to it',
      'e/cuts/13.cut',
      cut(13, 'level D reuse 12/D\nD: 2..'),
      ['8', '12', '13'],
    ],
    ['of a neighbour with an overlap', 'e/cuts/9.cut', cut(9, 'overlap out 1+0\nA: 2..'), ['8', '9', '10']],
    [
      'that reuses a level for the first time',
      'e/cuts/14.cut',
      cut(14, 'level A reuse 8/C\nA: 1..'),
      ['8', '12', '13', '14'],
    ],
    [
      'with an artist of its own in the manifest',
      'e/episode.yaml',
      'artists:\n  R. Esk: [8, 14]\ncuts: ["cuts/*.cut"]\n',
      ['14'],
    ],
    [
      'with other settings',
      'e/episode.yaml',
      'fps: 25\nartists:\n  R. Esk: [8]\ncuts: ["cuts/*.cut"]\n',
      ['8', '9', '10', '11', '12', '13', '14'],
    ],
    [
      'with another order of the story',
      'e/episode.yaml',
      'artists:\n  R. Esk: [8]\ncuts: ["cuts/8.cut", "cuts/10.cut", "cuts/9.cut", "cuts/1[1-4].cut", "cuts/1?.cut"]\n',
      ['8', '9', '10', '11'],
    ],
  ])('%s', async (_, name, text, expected) => {
    const changed = await moved(() => set(name, text));
    expect(changed.sort((a, b) => Number(a) - Number(b))).toEqual(expected);
  });

  test('a cut that is put in between two', async () => {
    set('e/cuts/9A.cut', cut('9A', 'A: 1..'));
    expect(await moved(() => host.files.delete('/work/e/cuts/9A.cut'))).toEqual(['9', '10']);
  });

  test('a used file that is gone, and one that a used file uses', async () => {
    expect(await moved(() => host.files.delete('/work/e/house.cut'))).toEqual(['11']);
    set('e/house.cut', 'use "more.cut"\n');
    set('e/more.cut', 'phrase p = 1--2\n');
    expect(await moved(() => set('e/more.cut', 'phrase p = 1-2\n'))).toEqual(['11']);
  });

  test('a level that reuses another in a used file', async () => {
    set('e/house.cut', 'phrase p = 1--2\nlevel A reuse 14/A\n');
    expect(await moved(() => set('e/cuts/14.cut', cut(14, 'A: 2..')))).toEqual(['11', '14']);
  });
});

test.each([
  ['a comment on it', 'use "../house.cut" # shared'],
  ['on two lines', 'use\n  "../house.cut"'],
  ['in full width', 'ｕｓｅ “../house.cut”'],
])('a `use` %s is followed', async (_, line) => {
  set('e/cuts/14.cut', `${line}\n${cut(14, 'A: 1..')}`);
  const changed = await moved(() => set('e/house.cut', 'phrase p = 1-2\n'));
  expect(changed).toEqual(['11', '14']);
});

test('a used file with a Japanese name is followed', async () => {
  set('e/館.cut', 'phrase p = 1--2\n');
  set('e/cuts/14.cut', `use "../館.cut"\n${cut(14, 'A: 1..')}`);
  expect(await moved(() => set('e/館.cut', 'phrase p = 1-2\n'))).toEqual(['14']);
});

test.each([
  ['on two lines', 'level A\n  reuse 8/C'],
  ['in full width', 'ｌｅｖｅｌ Ａ ｒｅｕｓｅ ８／Ｃ'],
  ['between other parts', 'level A free reuse 8/C'],
])('a reuse %s is followed', async (_, line) => {
  set('e/cuts/14.cut', cut(14, `${line}\nA: 1..`));
  expect(await moved(() => set('e/cuts/8.cut', cut(8, 'C: 1-2..')))).toEqual(['8', '12', '13', '14']);
});

test.each<[string, () => void]>([
  ['line ends', () => set('e/cuts/11.cut', EPISODE['e/cuts/11.cut']!.replaceAll('\n', '\r\n'))],
  ['a budget', () => set('e/episode.yaml', `budget: 90+0\n${EPISODE['e/episode.yaml']}`)],
  ['a file that is no cut', () => set('e/cuts/readme.txt', 'x')],
])('%s does not count', async (_, change) => {
  expect(await moved(change)).toEqual([]);
});

test('no hash where only compiling tells the number, for standard input, and for a cut beside the story', async () => {
  set('e/cuts/14.cut', 'ｃｕｔ １４\ntime 2+0\nA: 1..\n');
  set('e/loose.cut', cut(15, 'A: 1..'));
  expect((await all()).get('e/cuts/14.cut')).toBeNull();
  const { jobs } = await findCuts(host, ['e/loose.cut', '-']);
  expect(jobs.map((job) => textsOf(host, job, newEpisodeCache()))).toEqual([null, null]);
});

describe('a recording', () => {
  const recorded = cut(15, 'A: 1..\ntrack "../sound/a.wav"');
  beforeEach(() => {
    set('e/cuts/15.cut', recorded);
    set('e/sound/a.wav', 'RIFF one');
  });

  test('counts for the cut that names it, and for no other', async () => {
    expect(await moved(() => void set('e/sound/a.wav', 'RIFF two'))).toEqual(['15']);
    expect(await moved(() => void set('e/sound/b.wav', 'RIFF two'))).toEqual([]);
    expect(await moved(() => void host.files.delete('/work/e/sound/a.wav'))).toEqual(['15']);
  });

  test('of a long reel only compiling tells', async () => {
    const { readPart } = host;
    host.readPart = (path, at, most) => {
      const part = readPart(path, at, most);
      return part.ok ? { ok: true, value: { ...part.value, size: 1e9 } } : part;
    };
    expect((await all()).get('e/cuts/15.cut')).toBeNull();
  });
});
