import { describe, expect, test } from 'vitest';
import { comparedPrint, cutFile, cutInFile } from '../../src/build/cut-print.js';
import { CutPrinter, type LaidOutCut } from '../../src/build/cut-printer.js';
import { earlierPrintOf } from '../../src/build/earlier-print.js';
import type { PartSelection } from '../../src/build/print-plan.js';
import { type PrintedPage, readRecord } from '../../src/build/print-record.js';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache, noEpisode } from '../../src/episode/episode.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { privateWords } from '../../src/print/info-dictionary.js';
import { lookInto } from '../command/pdf.js';
import { longCut } from './printed-episode.js';

function laidOut(selection: PartSelection = {}): { printer: CutPrinter; cut: LaidOutCut } {
  const host = memoryHost({ 'a.cut': `${longCut(4)}artist "M. Arai"\n` });
  const cache = newEpisodeCache();
  const job = { path: '/work/a.cut', name: 'a.cut', episode: noEpisode, named: true };
  const compiled = compile(host, job.path, noEpisode, { name: job.name, cache });
  const printer = CutPrinter.open(host, selection);
  const prepared = printer.prepare({ host, job, compiled, solved: compiled.solved!, cache });
  return { printer, cut: printer.layOut(prepared) };
}

test('the pages of a cut that are kept are a file, which tells which they are', async () => {
  const { printer, cut } = laidOut();
  const made = (await cutFile(printer, cut, (page) => page === 2, true))!;
  expect([made.cut, made.pages]).toEqual(['4', 1]);
  expect((await lookInto(made.bytes)).labels).toEqual(['2']);
  const words = privateWords((most) => ({ bytes: made.bytes.subarray(-most), size: made.bytes.length }))!;
  const { pages } = readRecord(words)!.cuts[0]!;
  expect(pages.map(({ here }) => here)).toEqual(cut.pages.map((_, i) => i === 1));
});

test('or a part of a file, as plain data', () => {
  const { printer, cut } = laidOut();
  const made = cutInFile(printer, cut, (page) => page !== 1, false)!;
  expect(made).toMatchObject({ cut: '4', artists: ['M. Arai'], language: 'en' });
  const pages = made.printed.parts.flatMap((part) => part.pages);
  expect(pages.map(({ label }) => label)).toEqual(cut.pages.slice(1).map(({ label }) => label));
  expect(made.record.pages[0]).toMatchObject({ here: false, hash: null });
  const [copy] = structuredClone(made).printed.parts[0]!.pages;
  expect(Buffer.from(copy!.bytes).equals(pages[0]!.bytes)).toBe(true);
});

test('no page is no print', async () => {
  const { printer, cut } = laidOut();
  expect(await cutFile(printer, cut, () => false, false)).toBe(null);
  expect(cutInFile(printer, cut, () => false, false)).toBe(null);
});

describe('a cut that was printed before', () => {
  /** Three pages of sheet and one of charts; `before` makes of them what was printed. Which of them are printed now. */
  async function printed(
    before: (pages: readonly PrintedPage[]) => readonly PrintedPage[],
    changedPagesOnly = false,
    selection: PartSelection = {},
  ) {
    const { printer, cut } = laidOut(selection);
    const texts = null;
    const earlier = earlierPrintOf({
      cut: '4',
      input: 'other',
      unmarkedInput: 'other',
      texts,
      pages: before(cut.pages),
    });
    const { changes, made } = await comparedPrint(
      (_, { pages }, keep, known) => ({
        printed: pages.flatMap((__, i) => (keep(i + 1) ? [i + 1] : [])),
        known,
      }),
      printer,
      cut.prepared,
      earlier,
      changedPagesOnly,
    );
    return { told: changes !== null, made };
  }
  const third = (pages: readonly PrintedPage[]) =>
    pages.map((page, i) => (i === 2 ? { ...page, hash: 'other' } : page));
  const oneMore = (pages: readonly PrintedPage[]) => [...pages, { label: 'charts 2', hash: 'x', here: true }];

  test('stays where its pages are the same', async () => {
    expect(await printed((pages) => pages)).toEqual({ told: false, made: 'same' });
  });

  test('is printed whole where a page differs, or the pages that differ where only these are wanted', async () => {
    expect(await printed(third)).toEqual({ told: true, made: { printed: [1, 2, 3, 4], known: false } });
    // The others were printed before as they are.
    expect(await printed(third, true)).toEqual({ told: true, made: { printed: [3], known: true } });
  });

  test('that has lost a page is printed whole, but no page of it', async () => {
    expect(await printed(oneMore)).toEqual({ told: true, made: { printed: [1, 2, 3, 4], known: false } });
    expect(await printed(oneMore, true)).toEqual({ told: true, made: 'same' });
  });

  test('is nothing where it has no page of what is asked for', async () => {
    expect(await printed(oneMore, false, { only: 'camera' })).toEqual({ told: false, made: null });
  });
});
