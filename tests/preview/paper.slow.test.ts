/** The page on the screen is the page on paper: SVG as Chromium draws it against the PDF as poppler and cairo draw it. */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import type { Browser, Page as Tab } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PartName } from '../../src/build/print-plan.js';
import { cutPages } from '../../src/build/printed-parts.js';
import { printPdf } from '../../src/print/pdf.js';
import { printSvg } from '../../src/print/svg.js';
import type { Page } from '../../src/sheet/display-list.js';
import { compileFiles } from '../compile.js';
import { bytesOf, testFonts } from '../fonts.js';
import { CHROMIUM, launch } from './browser.js';

const poppler = spawnSync('pdftocairo', ['-v']).error === undefined;
if (!poppler)
  console.warn('skipped: pages of the live view against those on paper, since pdftocairo is not installed');

/** Ten px are a millimetre. */
const DPI = 254;
/** Cells of 2 mm: the two programs smooth edges in their own ways, but bring nearly the same ink to the same place. */
const CELL = 20;
/** A glyph may stand so far from its place: Chromium sets glyphs on the pixels of its own layout. */
const SHIFT = 3;
/** Found by trying: pages against themselves on paper differ by 0.034 at most, pages that lack one text by 0.048 at least. */
const TOLERANCE = 0.04;

describe.skipIf(CHROMIUM === null || !poppler)('a page on the screen', () => {
  let browser: Browser;
  let folder: string;
  let tab: Tab;

  beforeAll(async () => {
    browser = await launch();
    folder = mkdtempSync(join(tmpdir(), 'cutwright-paper-'));
    const face = (weight: 'regular' | 'bold', number: number) => {
      const data = Buffer.from(bytesOf(weight)).toString('base64');
      return `@font-face{font-family:sheet;font-weight:${number};src:url(data:font/ttf;base64,${data})}`;
    };
    const style = `${face('regular', 400)}${face('bold', 700)}body{margin:0}svg{display:block}`;
    writeFileSync(join(folder, 'page.html'), `<!doctype html><style>${style}</style><body></body>`);
    tab = await browser.newPage();
    await tab.goto(`file://${join(folder, 'page.html')}`);
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function onScreen(page: Page): Promise<PNG> {
    const [width, height] = [page.widthMm, page.heightMm].map((mm) => Math.ceil((mm / 25.4) * 96)) as [
      number,
      number,
    ];
    await tab.setViewport({ width, height, deviceScaleFactor: DPI / 96 });
    const svg = JSON.stringify(printSvg(page, { fontFamily: 'sheet' }));
    await tab.evaluate(`document.body.innerHTML = ${svg}; document.fonts.ready.then(() => 0)`);
    return PNG.sync.read(Buffer.from(await tab.screenshot({ type: 'png' })));
  }

  async function onPaper(page: Page): Promise<PNG> {
    const pages = [page];
    const bytes = await printPdf(
      { title: '', author: '', language: 'en', pages, bookmarks: [], trueSize: false },
      testFonts(),
    );
    writeFileSync(join(folder, 'page.pdf'), bytes);
    const done = spawnSync('pdftocairo', [
      '-r',
      `${DPI}`,
      '-png',
      '-singlefile',
      join(folder, 'page.pdf'),
      join(folder, 'page'),
    ]);
    expect(done.status).toBe(0);
    return PNG.sync.read(readFileSync(join(folder, 'page.png')));
  }

  const cases: readonly [string, PartName, object][] = [
    ['c001', 'sheet', {}],
    ['c006', 'sheet', { labels: 'ja', paper: 'B4' }],
    ['c012', 'camera', {}],
    ['c008', 'charts', { convention: 'west' }],
  ];
  test.each(cases)('has the ink of the page on paper: %s, %s', async (name, part, settings) => {
    const path = `examples/saltmarsh/cuts/${name}.cut`;
    const { solved } = (await compileFiles(path)).get(path)!;
    const look = {
      settings: { ...solved!.shot.settings, ...settings },
      metrics: testFonts().metrics,
      stamp: '0123456789',
    };
    const page = cutPages(solved!, look, { only: part }).parts[0]!.pages[0]!;
    const [screen, paper] = [await onScreen(page), await onPaper(page)];
    expect(Math.abs(screen.width - paper.width)).toBeLessThanOrEqual(3);
    expect(Math.abs(screen.height - paper.height)).toBeLessThanOrEqual(3);
    expect(farthest(screen, paper)).toBeLessThan(TOLERANCE);
    // A text of each ink that the page has.
    const texts = page.marks.flatMap((mark) =>
      mark.kind === 'text' && mark.text.trim() !== '' ? [mark] : [],
    );
    for (const ink of new Set(texts.map((text) => text.ink))) {
      const own = texts.filter((text) => text.ink === ink);
      const lost = own[own.length >> 1]!;
      const less = await onScreen({ ...page, marks: page.marks.filter((mark) => mark !== lost) });
      expect(farthest(less, paper), JSON.stringify(lost)).toBeGreaterThan(TOLERANCE);
    }
  });
});

/**
 * The largest difference of ink between a cell of the one and the same place of the other, moved by SHIFT at most in either
 * direction, whichever is nearest: 0 none, 1 black against white.
 */
function farthest(a: PNG, b: PNG): number {
  const [width, height] = [Math.min(a.width, b.width), Math.min(a.height, b.height)];
  const [inA, inB] = [inkSums(a), inkSums(b)];
  let most = 0;
  for (let top = SHIFT; top + CELL + SHIFT <= height; top += CELL)
    for (let left = SHIFT; left + CELL + SHIFT <= width; left += CELL) {
      const here = inA(left, top);
      let [least, greatest] = [1, 0];
      for (const dx of [-SHIFT, 0, SHIFT])
        for (const dy of [-SHIFT, 0, SHIFT]) {
          const there = inB(left + dx, top + dy);
          least = Math.min(least, there);
          greatest = Math.max(greatest, there);
        }
      most = Math.max(most, least - here, here - greatest);
    }
  return most;
}

/** Gives the ink of the cell that begins at a pixel: 0 none, 1 black. */
function inkSums({ width, height, data }: PNG): (left: number, top: number) => number {
  const sums = new Float64Array((width + 1) * (height + 1));
  const at = (x: number, y: number): number => y * (width + 1) + x;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      // Green: all inks are darker there than the paper.
      sums[at(x + 1, y + 1)] =
        255 - data[(y * width + x) * 4 + 1]! + sums[at(x, y + 1)]! + sums[at(x + 1, y)]! - sums[at(x, y)]!;
  return (x, y) =>
    (sums[at(x + CELL, y + CELL)]! - sums[at(x, y + CELL)]! - sums[at(x + CELL, y)]! + sums[at(x, y)]!) /
    (CELL * CELL * 255);
}
