import { describe, expect, test } from 'vitest';
import { blankDocument, CutPrinter } from '../../src/build/cut-printer.js';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import type { MarkedChanges } from '../../src/sheet/page-look.js';
import { defaults } from '../../src/shot/settings.js';
import { lookInto } from '../command/pdf.js';
import { CUT, run } from '../command/run.js';
import { longCut } from './printed-episode.js';

const LONG = 'cut 12 "Rooftop & dusk"\ntime 13+0\nartist "M. Arai"\nA "Nao": (1--2--)..\n';

describe('a printed cut', () => {
  test('has the stamp at the foot of every page: the hash of the text, and the commit', async () => {
    const host = memoryHost({ 'c.cut': LONG });
    host.commits.set('/work', '9bfdb48');
    await run(host, 'build', 'c.cut');
    const { texts } = await lookInto(host.files.get('/work/c.pdf')!);
    for (const page of texts) expect(page).toMatch(/[0-9a-f]{10} · 9bfdb48/);
  });

  test('has no path of this machine in it', async () => {
    const host = memoryHost({ '/secret/place/c.cut': LONG, '/secret/place/episode.yaml': 'title: X' });
    await run(host, 'build', '/secret/place/c.cut', '-o', 'c.pdf');
    const bytes = Buffer.from(host.files.get('/work/c.pdf')!).toString('latin1');
    const { title, texts } = await lookInto(host.files.get('/work/c.pdf')!);
    expect([bytes, title, ...texts].join()).not.toMatch(/secret|\/work/);
  });

  test('is the same bytes at another time, in another place, in company or alone', async () => {
    const bytes = async (path: string, clock: string, ...others: string[]) => {
      const host = memoryHost({ [path]: LONG, 'o.cut': CUT });
      host.clock = new Date(clock);
      await run(host, 'build', path, ...others, '-o', 'out');
      return Buffer.from(host.files.get('/work/out/c.pdf')!).toString('base64');
    };
    const once = await bytes('c.cut', '2001-01-01');
    expect(await bytes('c.cut', '2031-07-09')).toBe(once);
    expect(await bytes('/else/where/c.cut', '2001-01-01')).toBe(once);
    expect(await bytes('c.cut', '2001-01-01', 'o.cut')).toBe(once);
  });
});

describe('a prepared cut', () => {
  async function prepared(
    text: string,
    {
      manifest = '',
      selection = {},
      marked,
    }: { manifest?: string; selection?: object; marked?: MarkedChanges } = {},
  ) {
    const host = memoryHost({ 'c.cut': text, 'episode.yaml': manifest });
    const { jobs } = await findCuts(host, ['c.cut']);
    const [job] = jobs;
    const cache = newEpisodeCache();
    const compiled = compile(host, job!.path, job!.episode, { name: 'c.cut', cache });
    const printer = CutPrinter.open(host, selection);
    const cut = printer.prepare({ host, job: job!, compiled, solved: compiled.solved!, cache }, marked);
    return { printer, cut };
  }
  const input = async (...args: Parameters<typeof prepared>) => (await prepared(...args)).cut.input;
  const MARKED: MarkedChanges = { against: 'HEAD', rows: [], ladders: [], lines: ['· A: one more drawing'] };

  test('has another input where anything that is printed is another', async () => {
    const inputs = [
      await input(LONG),
      await input(LONG.replace('13+0', '12+0')),
      await input(LONG, { manifest: 'title: X\n' }),
      await input(LONG, { manifest: 'paper: A3\n' }),
      await input(LONG, { selection: { only: 'sheet' } }),
      await input(LONG, { marked: MARKED }),
    ];
    expect(new Set(inputs).size).toBe(inputs.length);
    expect(await input(LONG)).toBe(inputs[0]);
  });

  test('that is marked is without its marks what it was before', async () => {
    const plain = await prepared(LONG);
    const { printer, cut } = await prepared(LONG, { marked: MARKED });
    expect(cut.input).not.toBe(plain.cut.input);
    expect(cut.unmarkedInput).toBe(plain.cut.input);
    expect(printer.unmarked(cut).input).toBe(plain.cut.input);
    expect(plain.printer.unmarked(plain.cut)).toBe(plain.cut);
  });

  test('has a hash for each page, equal where the same stands on it', async () => {
    const pages = async (text: string) => {
      const { printer, cut } = await prepared(text, { selection: { only: 'sheet' } });
      return printer.layOut(cut).pages;
    };
    const [one, two] = [await pages(longCut(1)), await pages(longCut(1).replace('4..', '4 3..'))];
    expect(one.map(({ label, here }) => [label, here])).toEqual([
      ['1', true],
      ['2', true],
      ['3', true],
    ]);
    expect(two.map(({ hash }, i) => hash === one[i]!.hash)).toEqual([true, true, false]);
  });
});

test('a lost font is said with the reason', () => {
  const host = memoryHost();
  host.font = (weight) =>
    weight === 'bold' ? { ok: false, reason: 'no such file' } : memoryHost().font(weight);
  expect(() => CutPrinter.open(host)).toThrow('the font of the installation cannot be read: no such file');
});

test('blank forms are called after the work, if it has a name', () => {
  const titled = (title: string) => blankDocument([], { ...defaults, labels: 'en', title });
  expect(titled('Ferry')).toMatchObject({
    title: 'Ferry · Blank forms',
    language: 'en',
    trueSize: false,
    bookmarks: [],
  });
  expect(titled('')).toMatchObject({ title: 'Blank forms' });
});
