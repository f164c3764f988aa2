/** `build --changed`: what is printed again, and what is not. */

import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../../src/host/memory-host.js';
import { run } from '../../command/run.js';
import { type GeneratedCut, generateEpisode } from './generate.js';
import { edit, hashes, shuffle, worldOf, writesOf } from './world.js';

const { cuts, files } = generateEpisode({ cuts: 40, seed: 40, meanFrames: 72 });
const lending = new Set(cuts.flatMap(({ reuses }) => reuses.map(({ cut }) => cut)));
const pdf = ({ file }: GeneratedCut) => file.replace(/^cuts\/(.*)\.cut$/, 'out/$1.pdf');
const called = (number: string) => cuts.find((cut) => cut.number === number)!;
/** Draws something, borrows and lends nothing, and meets no neighbour. */
const plain = cuts.find(
  ({ number, reuses, text }) =>
    !lending.has(number) && reuses.length === 0 && !/^overlap/m.test(text) && /^A .*: 1:\d+/m.test(text),
)!;

let printed: MemoryHost;
let host: MemoryHost;
let writes: string[];

beforeAll(async () => {
  printed = worldOf(files);
  await run(printed, 'build', 'e', '-o', 'out');
});

beforeEach(() => {
  host = memoryHost();
  for (const [path, bytes] of printed.files) host.files.set(path, bytes);
  writes = writesOf(host);
});

async function again(folder = 'e', on = host): Promise<string> {
  const { status, error } = await run(on, 'build', folder, '-o', 'out', '--changed');
  if (status !== 0) throw new Error(`the build gave ${status}: ${error}`);
  return error;
}

describe('nothing is written', () => {
  const everywhere = (change: (text: string) => string) => () => {
    for (const { file } of cuts) edit(host, `e/${file}`, change);
  };
  test.each<[string, () => void]>([
    [
      'a comment more',
      everywhere((text) => `# retimed, see the notes\n${text.replace('\n', ' # first line\n')}`),
    ],
    ['blank lines and blanks', everywhere((text) => text.replace(/\n/g, '  \n\n'))],
    [
      'a statement on two lines, typed in full width',
      everywhere((text) => text.replace(/^A (.*): (\S+)/m, 'Ａ  $1：\n　　$2')),
    ],
    ['CR LF', everywhere((text) => text.replaceAll('\n', '\r\n'))],
    ['lines in another order', everywhere((text) => text.replace(/^(scene \d+\n)(.*)$/ms, '$2$1'))],
    ['a later day', () => void Object.assign(host, { clock: new Date('2031-07-09') })],
    ['another commit', () => void host.commits.set('/work/e/cuts', '9bfdb48')],
    ['a folder in any order', () => void shuffle(host, 3)],
  ])('%s', async (_, change) => {
    change();
    expect(await again()).toBe(`${cuts.length} cuts unchanged\n`);
    expect(writes).toEqual([]);
  });

  test('rewritten by the formatter', async () => {
    const { status } = await run(host, 'format', 'e');
    expect(status).toBe(0);
    expect(writes.filter((name) => name.startsWith('e/cuts/')).length).toBeGreaterThan(cuts.length / 2);
    writes.length = 0;
    expect(await again()).toBe(`${cuts.length} cuts unchanged\n`);
    expect(writes).toEqual([]);
  });

  test('in another checkout', async () => {
    const elsewhere = worldOf(files, '/another/disk');
    for (const [path, bytes] of printed.files)
      if (path.startsWith('/work/out/')) elsewhere.files.set(path, bytes);
    const written = writesOf(elsewhere);
    expect(await again('/another/disk', elsewhere)).toBe(`${cuts.length} cuts unchanged\n`);
    expect(written).toEqual([]);
  });
});

describe('only what has changed is written', () => {
  /** Cuts of which the summary tells, in order. */
  const told = (error: string) => [...error.matchAll(/^cut (\w+): /gm)].map(([, number]) => number);

  const longer = (text: string) =>
    text.replace(/^(A .*: 1:)(\d+)/m, (_, head, frames) => `${head}${Number(frames) + 2}`);

  test('one key held for longer: that cut', async () => {
    edit(host, `e/${plain.file}`, longer);
    const error = await again();
    expect(writes).toEqual([pdf(plain)]);
    expect(error).toMatch(
      new RegExp(
        `^cut ${plain.number}: pages? 1.* of \\d+.*\nwrote ${pdf(plain)}: \\d+ pages?\n${cuts.length - 1} cuts unchanged\n$`,
      ),
    );
  });

  test('and it comes out as a full build has it', async () => {
    edit(host, `e/${plain.file}`, longer);
    await again();
    const fresh = memoryHost();
    for (const [path, bytes] of host.files) if (!path.startsWith('/work/out/')) fresh.files.set(path, bytes);
    await run(fresh, 'build', 'e', '-o', 'out');
    expect(hashes(host, 'out')).toEqual(hashes(fresh, 'out'));
  });

  test('a cut that lends a level: that cut, and those whose numbers are others now', async () => {
    const borrower = cuts.find(({ reuses, text }) =>
      reuses.some(({ level }) => new RegExp(`^${level} .*: on \\d \\(1-`, 'm').test(text)),
    )!;
    const [{ cut, from }] = borrower.reuses as [GeneratedCut['reuses'][number]];
    const lender = called(cut);
    const others = cuts.filter(({ reuses }) => reuses.some((one) => one.cut === cut && one.from === from));
    // One in-between more: here they are drawn anew, with new numbers.
    edit(host, `e/${lender.file}`, (text) =>
      text.replace(new RegExp(`^(${from} .*: on \\d \\(1-)`, 'm'), '$1-'),
    );
    const error = await again();
    const expected = cuts.filter((one) => one === lender || others.includes(one));
    expect(told(error)).toEqual(expected.map(({ number }) => number));
    expect(writes).toEqual(expected.map(pdf));
  });

  test('a cut that lends a level, changed elsewhere: that cut alone', async () => {
    const lender = called([...lending][0]!);
    edit(host, `e/${lender.file}`, (text) => `${text}note 1 "stands still"\n`);
    expect(told(await again())).toEqual([lender.number]);
    expect(writes).toEqual([pdf(lender)]);
  });

  test('a note on the second page: that page is named', async () => {
    const long = cuts.find(({ rows }) => rows > 150 && rows < 280)!;
    edit(host, `e/${long.file}`, (text) => `${text}note 150 "looks up"\n`);
    expect(await again()).toMatch(new RegExp(`^cut ${long.number}: page 2 of \\d+\\b`));
    expect(writes).toEqual([pdf(long)]);
  });

  test('the house file: the cuts whose timing it changes', async () => {
    edit(host, 'e/house.cut', (text) => text.replace('phrase blink = 1-2:3 1.1', 'phrase blink = 1-2:2 1.1'));
    await again();
    const blink = cuts.filter(({ text }) => /\bblink\b/.test(text));
    expect(blink.length).toBeGreaterThan(2);
    expect(blink.length).toBeLessThan(cuts.length);
    expect(writes).toEqual(blink.map(pdf));
  });

  test('a cut that is put in', async () => {
    host.files.set('/work/e/cuts/c900.cut', Buffer.from('cut 900\ntime 1+0\nartist "R. Esk"\nA: 1..\n'));
    expect(await again()).toMatch(/^cut 900: 1 page, not printed before\n/);
    expect(writes).toEqual(['out/c900.pdf']);
  });

  test('a print that is gone or damaged', async () => {
    host.files.delete(`/work/${pdf(cuts[3]!)}`);
    const half = host.files.get(`/work/${pdf(cuts[5]!)}`)!;
    host.files.set(`/work/${pdf(cuts[5]!)}`, half.subarray(0, half.length >> 1));
    await again();
    expect(writes).toEqual([pdf(cuts[3]!), pdf(cuts[5]!)]);
    expect(hashes(host, 'out')).toEqual(hashes(printed, 'out'));
  });
});

test('a style of the whole episode reprints everything, and says so cut by cut', async () => {
  edit(host, 'e/episode.yaml', (text) => text.replace('paper: A4', 'paper: A3'));
  await again();
  expect(writes).toEqual(cuts.map(pdf));
});
