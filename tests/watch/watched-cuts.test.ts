import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { textsOf } from '../../src/episode/cut-texts.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts, type Job } from '../../src/episode/find-cuts.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import type { Change } from '../../src/watch/file-changes.js';
import { WatchedCuts } from '../../src/watch/watched-cuts.js';

const cut = (number: number, lines = 'A: 1--2..') => `cut ${number}\ntime 2+0\n${lines}\n`;

const FILES = {
  'episode.yaml': '',
  'house.txt': 'phrase walk = 1--2--\n',
  '1.cut': cut(1, 'use "house.txt"\nA: walk..'),
  '2.cut': cut(2),
  '3.cut': cut(3),
};

async function watched(files: Readonly<Record<string, string>> = FILES) {
  const host = memoryHost(files);
  const cuts = new WatchedCuts(host, false);
  const { jobs } = await findCuts(host, ['.']);
  for (const job of jobs) cuts.compile(job);
  return { host, cuts, job: (name: string) => jobs.find((one) => one.name === name)! };
}
const change = (name: string, kind: Change['kind'] = 'text'): Change => ({
  path: `/work/${name}`,
  real: `/work/${name}`,
  kind,
});
const set = (host: MemoryHost, name: string, text: string) =>
  void host.files.set(`/work/${name}`, Buffer.from(text));

describe('a change of a file', () => {
  test('matters to the cut itself and to those that use the file', async () => {
    const { cuts } = await watched();
    const concerned = (name: string) =>
      ['1.cut', '2.cut'].filter((one) => cuts.concerned(`/work/${one}`, [change(name)]));
    expect(concerned('2.cut')).toEqual(['2.cut']);
    expect(concerned('house.txt')).toEqual(['1.cut']);
    expect(concerned('other.txt')).toEqual([]);
    expect([cuts.uses('/work/house.txt'), cuts.uses('/work/other.txt')]).toEqual([true, false]);
  });

  test('matters to a cut that missed the file', async () => {
    const { cuts } = await watched({ '1.cut': cut(1, 'use "late.txt"\nA: walk..') });
    expect(cuts.concerned('/work/1.cut', [change('late.txt', 'new')])).toBe(true);
  });

  test('matters to a cut that nobody has looked at yet, or that was forgotten', async () => {
    const { cuts } = await watched();
    expect(cuts.concerned('/work/9.cut', [])).toBe(true);
    cuts.forget('/work/2.cut');
    expect([cuts.of('/work/2.cut'), cuts.concerned('/work/2.cut', [])]).toEqual([undefined, true]);
  });
});

describe('other cuts', () => {
  const moved = async (files: Readonly<Record<string, string>>, act: (host: MemoryHost) => void) => {
    const { host, cuts, job } = await watched(files);
    const names = Object.keys(files).filter((name) => name.endsWith('.cut'));
    const around = () => names.filter((name) => cuts.movedAround(job(name) as Job));
    expect(around()).toEqual([]);
    act(host);
    cuts.refresh();
    return around();
  };

  test('that a cut overlaps into are part of its sheet', async () => {
    const files = {
      ...FILES,
      '1.cut': cut(1, 'overlap out 12\nA: 1..'),
      '2.cut': cut(2, 'overlap in 12\nA: 1..'),
    };
    expect(await moved(files, (host) => set(host, '2.cut', cut(4, 'overlap in 12\nA: 1..')))).toContain(
      '1.cut',
    );
  });

  test('that begin to borrow a level are part of its sheet', async () => {
    expect(await moved(FILES, (host) => set(host, '3.cut', cut(3, 'level A reuse 1/A\nA: 1..')))).toContain(
      '1.cut',
    );
  });

  test('have nothing to do with a cut outside an episode', async () => {
    const { 'episode.yaml': _, ...files } = FILES;
    expect(await moved(files, (host) => set(host, '2.cut', cut(7)))).toEqual([]);
  });
});

test('the keys of problems are equal where the same is wrong', async () => {
  const broken = 'cut 1\ntime 1+0\nA: 1:3\n';
  const { host, cuts, job } = await watched({ '1.cut': broken });
  const first = cuts.of('/work/1.cut')!.problemKeys;
  expect(cuts.compile(job('1.cut')).known.problemKeys).toBe(first);
  set(host, '1.cut', broken.replace('1:3', '1:4'));
  expect(cuts.compile(job('1.cut')).known.problemKeys).not.toBe(first);
});

test('after any saves each cut is what a fresh look makes of it', async () => {
  const LINES = [
    'A: 1--2..',
    'A: 1---2..',
    'use "house.txt"\nA: walk..',
    'use "house.txt"\nC: 1..\nA: 1..',
    'level A reuse 1/A\nA: 1..',
    'level A reuse 3/A\nA: 1..',
    'overlap out 12\nA: 1..',
    'overlap in 12\nA: 1..',
    'A: 1--',
    'A 1',
  ];
  const HOUSES = ['phrase walk = 1--2--\n', 'phrase walk = 1-2-\n', 'phrase walk = 1\nlevel C reuse 2/A\n'];
  const text = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.constantFrom(...LINES)).map((own) => cut(...own));
  const save = fc.oneof(
    { weight: 4, arbitrary: fc.tuple(fc.constantFrom('1.cut', '2.cut', '3.cut'), text) },
    { weight: 1, arbitrary: fc.tuple(fc.constant('house.txt'), fc.constantFrom(...HOUSES)) },
  );
  await fc.assert(
    fc.asyncProperty(fc.array(save, { minLength: 1, maxLength: 8 }), async (saves) => {
      const { host, cuts, job } = await watched();
      for (const [name, typed] of saves) {
        set(host, name, typed);
        cuts.refresh();
        for (const each of ['1.cut', '2.cut', '3.cut'].map(job)) {
          const { compiled, known } = cuts.compile(each);
          const cache = newEpisodeCache();
          const fresh = compile(host, each.path, each.episode, { name: each.name, cache });
          const all = ({ diagnostics, digest, surroundings }: typeof fresh) => ({
            diagnostics,
            digest,
            surroundings,
          });
          expect(all(compiled)).toEqual(all(fresh));
          const texts = textsOf(host, each, cache);
          if (texts) expect(known.around).toBe(texts.hash);
        }
      }
    }),
    { numRuns: 12 },
  );
});
