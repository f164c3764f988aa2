/** `build --one-file`: where the file goes, and what the next build finds in it. */

import { beforeEach, describe, expect, test } from 'vitest';
import { CutsByNumber } from '../../src/build/combined-pdf.js';
import { readPrintRecord } from '../../src/build/earlier-print.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { CUT, isPdf, run } from '../command/run.js';

const short = (cut: string) => CUT.replace('cut 1', `cut ${cut}`);
/** Two pages of sheet, one of charts. */
const long = (cut: string) => `cut ${cut} "Rooftop"\ntime 7+0\nartist "M. Arai"\nA: 1{late}--2:6+0 3..\n`;
const BROKEN = 'cut 10\ntime 1+0\nA: 1\n';

const FILES = {
  'saltmarsh/episode.yaml': 'title: Ferry\nepisode: 3\nlabels: en\n',
  'saltmarsh/2.cut': long('2'),
  'saltmarsh/10.cut': short('10'),
  'saltmarsh/12A.cut': short('12A'),
  'saltmarsh/12.cut': short('12'),
};
const PDF = 'saltmarsh/saltmarsh.pdf';

let host: MemoryHost;
const set = (name: string, text: string) => void host.files.set(`/work/saltmarsh/${name}`, Buffer.from(text));
const bytes = (name = PDF) => host.files.get(`/work/${name}`);
const build = (...argv: string[]) => run(host, 'build', 'saltmarsh', '--one-file', ...argv);

/** The pages of a file by cut and label, as its record tells; `combined-pdf.slow.test.ts` reads the pages themselves. */
function pages(name = PDF): string[] {
  const record = readPrintRecord(host, `/work/${name}`);
  if ('none' in record) throw new Error(record.none.why);
  return record.cuts.flatMap(({ cut, pages }) =>
    pages.filter(({ here }) => here).map(({ label }) => `${cut}/${label}`),
  );
}

const ALL = [
  '2/1',
  '2/2',
  '2/charts 1',
  '10/1',
  '10/charts 1',
  '12/1',
  '12/charts 1',
  '12A/1',
  '12A/charts 1',
];

beforeEach(() => {
  host = memoryHost(FILES);
});

describe('where it goes', () => {
  beforeEach(() => {
    host = memoryHost({
      'saltmarsh/episode.yaml': '',
      'saltmarsh/2.cut': short('2'),
      'saltmarsh/10.cut': short('10'),
    });
  });

  test.each([
    [['-o', 'all.pdf'], 'all.pdf'],
    [['-o', 'out'], 'out/saltmarsh.pdf'],
    [[], PDF],
  ])('%s', async (argv, name) => {
    expect((await build(...argv)).status).toBe(0);
    expect(isPdf(bytes(name))).toBe(true);
  });

  test('under the name of a manifest that has one of its own', async () => {
    set('ep07.yaml', 'title: Ferry\n');
    await run(host, 'build', 'saltmarsh/ep07.yaml', '--one-file');
    expect(isPdf(bytes('saltmarsh/ep07.pdf'))).toBe(true);
  });

  test('to standard output, whole or not at all', async () => {
    const { status, error } = await build('-o', '-');
    expect([status, error]).toEqual([0, 'wrote 4 pages to standard output\n']);
    expect(isPdf(host.printedBytes())).toBe(true);
  });

  test('a full disk behind standard output is said of the file', async () => {
    host.out = () => {
      throw Object.assign(new Error(), { code: 'ENOSPC' });
    };
    const { status, error } = await build('-o', '-');
    expect([status, error]).toEqual([
      2,
      'Error: Standard output cannot be written: the disk is full.\nstandard output: output-unwritable\n',
    ]);
  });

  test('its folder is swept of what a killed run has left there', async () => {
    await build('-o', 'out/all.pdf');
    expect(host.swept).toEqual(['/work/out']);
  });

  test('some cuts need a name', async () => {
    const files = ['saltmarsh/2.cut', 'saltmarsh/10.cut', '--one-file'];
    const { status, error } = await run(host, 'build', ...files);
    expect([status, error]).toEqual([2, expect.stringContaining('give `--output` one')]);
    expect((await run(host, 'build', ...files, '-o', 'two.pdf')).error).toBe('wrote two.pdf: 4 pages\n');
    expect(pages('two.pdf')).toEqual(['2/1', '2/charts 1', '10/1', '10/charts 1']);
  });

  test.each([['saltmarsh/2.cut'], ['saltmarsh/episode.yaml'], ['other.yaml'], ['saltmarsh/house.txt']])(
    'not over a text: %s',
    async (output) => {
      set('house.txt', 'phrase p = 1{late}--2\n');
      set('10.cut', `use "house.txt"\n${short('10')}`);
      const before = new Map(host.files);
      const { status, error } = await build('-o', output);
      expect([status, error]).toEqual([2, expect.stringContaining('output-is-input')]);
      expect(new Map(host.files)).toEqual(before);
    },
  );

  test('a full disk leaves the last good one', async () => {
    await build();
    const before = bytes();
    host.room = 1000;
    const { status, error } = await build();
    expect(status).toBe(2);
    expect(error.match(/cannot be written: the disk is full/g)).toHaveLength(1);
    expect(bytes()).toBe(before);
  });

  test('a locked folder: said once, not for every cut', async () => {
    host.locked.add('/work/locked');
    const { status, error } = await build('-o', 'locked/all.pdf');
    expect(status).toBe(2);
    expect(error.match(/^Error: .*$/gm)).toEqual([
      'Error: `locked/all.pdf` cannot be written: permission denied.',
    ]);
    expect(error).toContain('not printed: cut 2 (not written), cut 10 (not written)');
  });
});

/** The file of `FILES`; it is printed once. */
let printed: Uint8Array | undefined;

describe('--changed', () => {
  const again = (...argv: string[]) => build('--changed', ...argv);
  beforeEach(async () => {
    if (!printed) await build();
    printed ??= bytes()!;
    host.files.set(`/work/${PDF}`, printed);
  });

  test('a terminal shows that cuts are compared, then printed', async () => {
    host = Object.assign(host, { columns: 60 });
    set('2.cut', long('2').replace('3..', '2a..'));
    const { error } = await again();
    expect(error.match(/[a-z]+ing \d of \d/g)).toEqual([
      ...[0, 1, 2, 3].map((done) => `comparing ${done} of 4`),
      ...[0, 1, 2, 3].map((done) => `printing ${done} of 4`),
    ]);
  });

  test('writes nothing where nothing has changed', async () => {
    const before = bytes();
    set('2.cut', `# as before\n${long('2')}`);
    expect(await again()).toEqual({ status: 0, out: '', error: '4 cuts unchanged\n' });
    expect(bytes()).toBe(before);
  });

  test('lists what has changed, and writes the whole', async () => {
    set('2.cut', long('2').replace('3..', '2a..'));
    expect((await again()).error).toBe('cut 2: page 2 of 3\nwrote saltmarsh/saltmarsh.pdf: 9 pages\n');
    expect(pages()).toEqual(ALL);
    expect((await again()).error).toBe('4 cuts unchanged\n');
  });

  test('with --pages changed prints the changedPagesOnly, and knows the rest', async () => {
    set('2.cut', long('2').replace('3..', '2a..'));
    const { error } = await again('--pages', 'changed');
    expect(error).toBe('cut 2: page 2 of 3\nwrote saltmarsh/saltmarsh.pdf: 1 page\n3 cuts unchanged\n');
    expect(pages()).toEqual(['2/2']);
    expect((await again('--pages', 'changed')).error).toBe('4 cuts unchanged\n');
    set('12.cut', short('12').replace('1{late}--2', '1{late}-2'));
    expect((await again('--pages', 'changed')).error).toContain('cut 12: pages 1-2 of 2 (1, charts 1)\n');
    expect(pages()).toEqual(['12/1', '12/charts 1']);
    await again();
    expect(pages()).toEqual(ALL);
  });

  test('a cut that is gone, a new one, another order', async () => {
    host.files.delete('/work/saltmarsh/10.cut');
    expect((await again()).error).toBe(
      'cut 10: no cut of the episode any more\nwrote saltmarsh/saltmarsh.pdf: 7 pages\n',
    );
    set('10.cut', short('10'));
    expect((await again()).error).toContain('cut 10: all 2 pages, new\nwrote');
    set('episode.yaml', `${FILES['saltmarsh/episode.yaml']}cuts: [12.cut, "*.cut"]\n`);
    expect((await again()).error).toContain('the cuts stand in another order\nwrote');
    expect(pages().slice(0, 2)).toEqual(['12/1', '12/charts 1']);
  });

  test('a cut with errors keeps its record: mended, it is not new', async () => {
    set('10.cut', BROKEN);
    expect((await again()).error).toMatch(/3 cuts unchanged\nnot printed: cut 10 \(1 error\)\n$/);
    expect(pages()).toEqual(ALL);
    set('2.cut', long('2').replace('3..', '2a..'));
    await again();
    expect(pages()).toEqual(ALL.filter((label) => !label.startsWith('10/')));
    set('10.cut', short('10'));
    const { error } = await again();
    expect(error).toContain('cut 10: all 2 pages, as the file did not hold all\nwrote');
    expect(pages()).toEqual(ALL);
  });

  test('a file cut short is printed anew', async () => {
    host.files.set(`/work/${PDF}`, bytes()!.subarray(0, -9));
    const { error } = await again();
    expect(error).toContain('cut 2: all 3 pages, as the file there is no print to compare with\n');
    expect(error).toContain('wrote saltmarsh/saltmarsh.pdf: 9 pages\n');
  });

  test('two cuts of one number are two', async () => {
    set('12b.cut', short('12'));
    await build();
    expect((await again()).error).toMatch(/5 cuts unchanged\n$/);
    set('12b.cut', short('12').replace('1{late}--2', '1{late}-2'));
    const { error } = await again();
    expect(error.match(/^cut 12: .*$/gm)).toEqual(['cut 12: pages 1-2 of 2 (1, charts 1)']);
    expect(error).toContain('wrote saltmarsh/saltmarsh.pdf: 11 pages\n');
  });

  test('of a cut with errors that was never printed, nothing is known: mended, it is new', async () => {
    set('13.cut', BROKEN.replace('10', '13'));
    set('2.cut', long('2').replace('3..', '2a..'));
    await again();
    expect(pages()).toEqual(ALL);
    set('13.cut', short('13'));
    expect((await again()).error).toBe('cut 13: all 2 pages, new\nwrote saltmarsh/saltmarsh.pdf: 11 pages\n');
  });

  test('a cut whose number cannot be read any more is named by its file', async () => {
    set('12A.cut', 'cat 12A\n');
    const { status, error } = await again();
    expect(status).toBe(1);
    expect(error).toContain('cut 12A: no cut of the episode any more\n');
    expect(error).toMatch(/not printed: saltmarsh\/12A\.cut \(\d errors?\)\n$/);
    expect(pages()).toEqual(ALL.slice(0, 7));
  });

  test('a file of one cut is none to compare with', async () => {
    await run(host, 'build', 'saltmarsh/2.cut', '-o', 'one.pdf');
    const { error } = await again('-o', 'one.pdf');
    expect(error).toContain('cut 2: all 3 pages, as the file there is of one cut\n');
    expect(error).toContain('wrote one.pdf: 9 pages\n');
  });

  test('cuts without a page of what is asked for are counted', async () => {
    set('12A.cut', 'cut 12A\ntime 1+0\nA: 1..\n');
    const first = await build('--only', 'charts');
    expect(first.error).toBe(`wrote ${PDF}: 3 pages\nNo in-between, so no chart, in 1 cut.\n`);
    expect((await again('--only', 'charts')).error).toBe(
      '3 cuts unchanged\nNo in-between, so no chart, in 1 cut.\n',
    );
    set('2.cut', long('2').replace('late', 'early'));
    const { error } = await again('--only', 'charts');
    expect(error).toMatch(
      /^cut 2: page 1 of 1 .*\nwrote .*: 3 pages\nNo in-between, so no chart, in 1 cut\.\n$/,
    );
  });

  test('a page that is no more is told, and takes no paper where changed pages are asked for', async () => {
    // An even passage has no chart, and the sheet does not say how a passage is spaced.
    set('10.cut', short('10').replace('{late}', ''));
    expect((await again('--pages', 'changed')).error).toBe(
      'cut 10: no page of 1 differs; no more: charts 1\n4 cuts unchanged\n',
    );
    expect(pages()).toEqual(ALL);
    // It is known of in the file of the pages of another cut.
    set('12.cut', short('12').replace('1{late}--2', '1{late}-2'));
    await again('--pages', 'changed');
    expect((await again('--pages', 'changed')).error).toContain('4 cuts unchanged\n');
  });
});

test('cuts of one number are told apart by their order', () => {
  const cuts = new CutsByNumber<string>();
  const keys = ['12', '7', '012', '12'].map((cut, i) => cuts.next(cut, `${i}`));
  expect(new Set(keys).size).toBe(4);
  expect(keys.map((key) => cuts.get(key))).toEqual(['0', '1', '2', '3']);
  expect(cuts.keys()).toEqual(keys);
});
