/** A file that is printed cut by cut. */

import { describe, expect, test } from 'vitest';
import { MissingGlyph } from '../../src/print/fonts.js';
import { PdfFile, printPdf } from '../../src/print/pdf.js';
import type { Page } from '../../src/sheet/display-list.js';
import { testFonts } from '../fonts.js';
import { openPrinted } from '../pdf.js';
import { faults } from '../qpdf.js';
import { document, page, RULED, text } from './documents.js';

const OPENING = { title: 'Ferry 3', language: 'en' };
const CLOSING = { author: '', bookmarks: [], trueSize: false };
const labelled = (...pages: Page[]) => pages.map((one) => ({ page: one, label: one.label }));
const GOOD = [page([text('1')], { form: RULED }), page([text('2')], { form: RULED, label: '2' })];

/** Prints with what `work` does; the bytes, piece by piece. */
async function printed(work: (file: PdfFile) => void): Promise<Uint8Array[]> {
  const pieces: Uint8Array[] = [];
  const file = PdfFile.open(OPENING, testFonts(), (bytes) => void pieces.push(bytes));
  work(file);
  await file.close(CLOSING);
  return pieces;
}

describe('a file that is printed piece by piece', () => {
  test('is the one that is printed at once', async () => {
    const pieces = await printed((file) => {
      for (const one of GOOD) file.add(labelled(one));
    });
    const whole = await printPdf(document(GOOD, OPENING), testFonts());
    expect(Buffer.concat(pieces).equals(whole)).toBe(true);
  });

  test('hands pages on before it is closed', async () => {
    const crowd = Array.from({ length: 50 }, (_, i) => page([text(`${i}`)], { label: `${i}` }));
    let before = 0;
    let pieces = 0;
    const file = PdfFile.open(OPENING, testFonts(), () => void pieces++);
    file.add(labelled(...crowd));
    before = pieces;
    await file.close(CLOSING);
    expect(before).toBeGreaterThan(49);
    expect(pieces).toBeGreaterThan(before);
    expect(file.pages).toBe(50);
  });

  test('holds nothing of pages one of which cannot be printed', async () => {
    const bad = [page([text('3')]), page([text('4'), text('🚢'), text('5')], { label: '4' })];
    const pieces = await printed((file) => {
      file.add(labelled(GOOD[0]!));
      expect(() => file.add(labelled(...bad))).toThrow(MissingGlyph);
      expect(file.pages).toBe(1);
      file.add(labelled(GOOD[1]!));
    });
    const bytes = Buffer.concat(pieces);
    expect(await faults(bytes)).toEqual([]);
    const { labels, pages } = await openPrinted(bytes);
    expect(labels).toEqual(['1', '2']);
    expect(pages.map(({ texts }) => texts.map((one) => one.text))).toEqual([['1'], ['2']]);
  });
});
