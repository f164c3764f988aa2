/**
 * Writing 700 sheet pages as one PDF, against sending the same finished content streams through zlib and nothing else.
 * Bundled by run.mjs, as it reads the sources.
 */
import { deflateSync } from 'node:zlib';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.ts';
import { shippedFont } from '../../src/host/shipped-files.ts';
import { openFonts } from '../../src/print/fonts.ts';
import { printPdf } from '../../src/print/pdf.ts';
import { sheetPages } from '../../src/sheet/exposure-sheet.ts';
import { generateEpisode } from '../episode/whole/generate.ts';
import { worldOf } from '../episode/whole/world.ts';
import { median, milliseconds, report, timed } from './measure.mjs';
import { contents } from './streams.mjs';

const PAGES = 700;
const ROUNDS = 7;

async function sheets(metrics) {
  const host = worldOf(generateEpisode({ cuts: 700 }).files);
  const cache = newEpisodeCache();
  const pages = [];
  for (const { path, episode } of (await findCuts(host, ['e'])).jobs) {
    const { solved } = compile(host, path, episode, { cache });
    pages.push(...sheetPages(solved, { settings: episode.settings, metrics, stamp: 'measured' }));
    if (pages.length >= PAGES) return pages.slice(0, PAGES);
  }
  throw new Error(`the episode has only ${pages.length} pages`);
}

/** Gives the pages, how wide a text is on them, and what writes them, for others to compare with. */
export async function printing() {
  const fonts = openFonts({ read: (weight) => shippedFont(weight).value, latin: null });
  const pages = await sheets(fonts.metrics);
  const document = { title: 'Measured', language: 'en', author: '', pages, bookmarks: [], trueSize: false };
  const streams = contents(Buffer.from(await printPdf(document, fonts)));
  if (streams.length < PAGES) throw new Error(`only ${streams.length} streams were found`);
  const printed = [];
  const zlib = [];
  for (let round = 0; round < ROUNDS; round++) {
    printed.push((await timed(() => printPdf(document, fonts))).took);
    zlib.push((await timed(() => streams.map((stream) => deflateSync(stream).length))).took);
  }
  const size = streams.reduce((sum, { length }) => sum + length, 0) / 2 ** 20;
  report(`zlib alone, ${streams.length} streams of ${size.toFixed(1)} MB`, milliseconds(median(zlib)));
  const rate = ((PAGES / median(printed)) * 1000).toFixed(0);
  const ratio = (median(printed) / median(zlib)).toFixed(2);
  report(
    `${PAGES} pages as one PDF`,
    `${milliseconds(median(printed))}, ${rate} pages/s, ${ratio} × zlib`,
    '2 ×',
  );
  return {
    pages,
    width: fonts.metrics.width,
    own: async () => (await printPdf(document, fonts)).length,
  };
}
