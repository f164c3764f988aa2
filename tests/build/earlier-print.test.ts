/** `build --changed`: what is printed again, what is said of it, and what stays untouched to the byte. */

import { beforeEach, describe, expect, test } from 'vitest';
import type { CutPrinter, PreparedCut } from '../../src/build/cut-printer.js';
import { compareWithEarlier } from '../../src/build/earlier-print.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { privateWords } from '../../src/print/info-dictionary.js';
import { lookInto } from '../command/pdf.js';
import { CUT, run } from '../command/run.js';
import { longCut, type PrintedEpisode, printedEpisode } from './printed-episode.js';

let episode: PrintedEpisode;
const set = (name: string, text: string) => episode.set(name, text);
const build = (...argv: string[]) => episode.build(...argv);
const written = (act: () => Promise<unknown>) => episode.written(act);

beforeEach(async () => {
  episode = await printedEpisode();
});

describe('nothing is written', () => {
  const still = async (...argv: string[]) => {
    const ran = await build('--changed', ...argv);
    expect(ran).toEqual({ status: 0, out: '', error: '3 cuts unchanged\n' });
  };

  test('where nothing has changed', async () => {
    expect(await written(() => still())).toEqual([]);
  });

  test.each([
    ['a comment', () => set('e/2.cut', `# retimed on Monday\n${longCut(2)}`)],
    [
      'another spelling',
      () => set('e/2.cut', longCut(2).replace('1{late}--2:6+0 3:6+0', '1{late}--2:144   (3:144)')),
    ],
    ['other line ends', () => set('e/2.cut', longCut(2).replaceAll('\n', '\r\n'))],
    [
      'the clock',
      () => {
        episode.host.clock = new Date('2044-02-03');
      },
    ],
    ['the commit', () => void episode.host.commits.set('/work/e', '9bfdb48')],
    [
      'a default that is written out',
      () => set('e/episode.yaml', 'title: Ferry\nepisode: 3\nfps: 24\non: 2\n'),
    ],
    [
      'a default that does not show',
      () => set('e/episode.yaml', 'title: Ferry\nepisode: 3\non: 2\nscan: 300dpi\n'),
    ],
    [
      'another story order',
      () => set('e/episode.yaml', 'title: Ferry\nepisode: 3\ncuts: [11.cut, 10.cut, 2.cut]\n'),
    ],
    [
      'a phrase of a house file',
      () => {
        set('e/house.txt', 'phrase p = 1{late}--2\n');
        set('e/10.cut', `use "house.txt"\n${CUT.replace('cut 1', 'cut 10').replace('1{late}--2', 'p 2')}`);
      },
    ],
  ])('for %s', async (_, change) => {
    change();
    expect(await written(() => still())).toEqual([]);
  });

  test('into another world: the folder copied elsewhere', async () => {
    const files = [...episode.host.files].map(
      ([name, bytes]) => [name.replace('/work/', '/mnt/day/'), bytes] as const,
    );
    const other = memoryHost();
    for (const [name, bytes] of files) other.files.set(name, bytes);
    const { error } = await run(other, 'build', '/mnt/day/e', '-o', '/mnt/day/out', '--changed');
    expect(error).toBe('3 cuts unchanged\n');
  });
});

describe('what has changed is printed again, and nothing else', () => {
  test('one key: its cut, and its page', async () => {
    set('e/2.cut', longCut(2).replace('4..', '4 3..'));
    const done = await written(async () => {
      const { status, error } = await build('--changed');
      expect(status).toBe(0);
      expect(error).toBe('cut 2: page 3 of 4\nwrote out/2.pdf: 4 pages\n2 cuts unchanged\n');
    });
    expect(done).toEqual(['out/2.pdf']);
    expect(await written(() => build('--changed'))).toEqual([]);
  });

  test('is the file that a plain build writes', async () => {
    set('e/2.cut', longCut(2).replace('4..', '4 3..'));
    await build('--changed');
    const changed = episode.bytes('out/2.pdf')!;
    await build();
    expect(Buffer.from(episode.bytes('out/2.pdf')!).equals(changed)).toBe(true);
  });

  test.each([
    ['a setting of the manifest', 'title: Ferry\nepisode: 3\npaper: A3\n'],
    ['the title', 'title: Ferries\nepisode: 3\n'],
  ])('%s: every cut', async (_, manifest) => {
    set('e/episode.yaml', manifest);
    const { error } = await build('--changed');
    expect(error).toContain('cut 2: pages 1-4 of 4 (1, 2, 3, charts 1)\n');
    expect(error).toContain('wrote 3 files');
  });

  test('pages that are new, and pages that are no more', async () => {
    set('e/10.cut', 'cut 10\ntime 7+0\nA: 1{late}--2..\n');
    expect((await build('--changed')).error).toContain('cut 10: pages 1-3 of 3 (1, 2 new, charts 1)\n');
    set('e/10.cut', 'cut 10\ntime 1+0\nA: 1..\n');
    expect((await build('--changed')).error).toContain('cut 10: page 1 of 1; no more: 2, charts 1\n');
  });

  test('a new cut, and one whose file is gone', async () => {
    set('e/12.cut', longCut(12));
    episode.delete('out/10.pdf');
    const { error } = await build('--changed');
    expect(error).toContain(
      'cut 10: all 2 pages, not printed before\ncut 12: all 4 pages, not printed before\n',
    );
    expect(error).toContain('wrote 2 files, 6 pages, in out\n2 cuts unchanged\n');
  });

  test('another choice of parts', async () => {
    expect((await build('--changed', '--only', 'sheet')).error).toContain(
      'cut 2: no page of 3 differs; no more: charts 1\n',
    );
    expect((await build('--changed')).error).toContain('cut 2: page 4 of 4 (charts 1 new)\n');
  });

  test('a cut with errors is not, and keeps its last good print', async () => {
    set('e/2.cut', longCut(2).replace('..', ''));
    const done = await written(async () => {
      const { status, error } = await build('--changed');
      expect(status).toBe(1);
      expect(error).toMatch(/\n2 cuts unchanged\nnot printed: cut 2 \(1 error\)\n$/);
    });
    expect(done).toEqual([]);
  });
});

describe('a file that tells nothing is printed anew', () => {
  const damages: [string, (bytes: Uint8Array) => Uint8Array][] = [
    ['cut short', (bytes) => bytes.subarray(0, bytes.length - 100)],
    ['cut short by a byte', (bytes) => bytes.subarray(0, bytes.length - 1)],
    ['only its end', (bytes) => bytes.subarray(4000)],
    ['empty', () => new Uint8Array()],
    ['no PDF', () => Buffer.from('hello')],
    [
      'noted in by another program, which appends',
      (bytes) => Buffer.concat([bytes, Buffer.from('9 0 obj\n<<>>\nendobj\nstartxref\n0\n%%EOF\n')]),
    ],
    ['of another version of the record', (bytes) => replaced(bytes, '(1;cut;', '(2;cut;')],
    ['with a record that cannot be read', (bytes) => replaced(bytes, '(1;cut;Ferry', '(1;cut;%zzrry')],
    ['with half a record', (bytes) => replaced(bytes, ' 1=', ' 1:')],
  ];
  test.each(damages)('%s', async (_, damage) => {
    const whole = episode.bytes('out/2.pdf')!;
    episode.host.files.set('/work/out/2.pdf', damage(whole));
    const { status, error } = await build('--changed');
    expect(status).toBe(0);
    expect(error).toBe(
      'cut 2: all 4 pages, as the file there is no print to compare with\nwrote out/2.pdf: 4 pages\n2 cuts unchanged\n',
    );
    expect(Buffer.from(episode.bytes('out/2.pdf')!).equals(whole)).toBe(true);
  });

  function replaced(bytes: Uint8Array, from: string, to: string): Uint8Array {
    const text = Buffer.from(bytes).toString('latin1');
    expect(text).toContain(from);
    return Buffer.from(text.replace(from, to), 'latin1');
  }
});

describe('pages that are left out', () => {
  test('by --pages: a later build prints the whole cut', async () => {
    await build('--pages', '2-3');
    expect((await build('--changed')).error).toContain('cut 2: pages 1, 4 of 4 (1, charts 1)\n');
    expect((await lookInto(episode.bytes('out/2.pdf')!)).labels).toEqual(['1', '2', '3', 'charts 1']);
  });

  test('by --pages changed: only what differs is printed, and then differs no more', async () => {
    set('e/2.cut', longCut(2).replace('4..', '4 3..'));
    expect((await build('--changed', '--pages', 'changed')).error).toContain('wrote out/2.pdf: 1 page\n');
    expect((await lookInto(episode.bytes('out/2.pdf')!)).labels).toEqual(['3']);
    expect((await build('--changed', '--pages', 'changed')).error).toBe('3 cuts unchanged\n');
    set('e/2.cut', longCut(2));
    expect((await build('--changed', '--pages', 'changed')).error).toContain('cut 2: page 3 of 4\n');
  });

  test('are printed once the whole cut is wanted', async () => {
    set('e/2.cut', longCut(2).replace('4..', '4 3..'));
    await build('--changed', '--pages', 'changed');
    expect((await build('--changed')).error).toContain(
      'cut 2: all 4 pages, as the file did not hold all\nwrote out/2.pdf: 4 pages\n',
    );
  });
});

test('the record is the file’s own, and names nothing of this machine', () => {
  const bytes = episode.bytes('out/2.pdf')!;
  const words = privateWords((most) => ({ bytes: bytes.subarray(-most), size: bytes.length }));
  expect(words).toMatch(
    /^1;cut;Ferry%203;2 [\w-]{16}\+[\w-]{16} 1=[\w-]{10} 2=[\w-]{10} 3=[\w-]{10} charts%201=[\w-]{10}$/,
  );
});

describe('paper without marks of change, compared with a cut that is to bear them', () => {
  const pages = [{ label: '1', hash: 'other', here: true }];
  const plain = { look: {} } as PreparedCut;
  const printer = {
    layOut: (prepared: PreparedCut) => ({ prepared, pages: prepared === plain ? printed.pages() : pages }),
    unmarked: () => plain,
  } as unknown as CutPrinter;
  const printed = {
    ...{ input: 'plain', unmarkedInput: 'plain', texts: null },
    whole: () => true,
    pages: () => [{ label: '1', hash: 'plain', here: true }],
  };
  const bars = { rows: [], ladders: [], lines: [] };
  const compared = (marked: object | undefined, earlier = printed) => {
    const look = { marked: marked && { against: 'HEAD', ...bars, ...marked } };
    const prepared = { input: 'marked', unmarkedInput: 'plain', look } as unknown as PreparedCut;
    return compareWithEarlier(printer, prepared, earlier, false) === null ? 'stays' : 'is printed again';
  };

  test('stays where nothing is found to be marked', () => {
    expect(compared({})).toBe('stays');
  });

  test('stays where another program printed it, if its pages are those of the cut without marks, or with them', () => {
    const foreign = { ...printed, input: 'elsewhere', unmarkedInput: 'elsewhere' };
    expect(compared({}, foreign)).toBe('stays');
    expect(compared({}, { ...foreign, pages: () => pages })).toBe('stays');
    const neither = [{ label: '1', hash: 'neither', here: true }];
    expect(compared({}, { ...foreign, pages: () => neither })).toBe('is printed again');
  });

  test.each([
    ['rows', { rows: ['a row'] }],
    ['ladders', { ladders: ['a ladder'] }],
    ['lines of the memo', { lines: ['a line'] }],
  ])('is printed again where %s are marked', (_, marked) => {
    // The printer is never asked for the unmarked cut: it would not be what is wanted.
    expect(compared(marked)).toBe('is printed again');
  });
});
