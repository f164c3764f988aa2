/** A file that is printed cut by cut. */

import { describe, expect, test } from 'vitest';
import { MissingGlyph } from '../../src/print/fonts.js';
import { PageWriter } from '../../src/print/page-writer.js';
import { PdfFile, printPdf } from '../../src/print/pdf.js';
import type { Page } from '../../src/sheet/display-list.js';
import { testFonts } from '../fonts.js';
import { openPrinted } from '../pdf.js';
import { faults } from '../qpdf.js';
import { document, page, RULED, text } from './documents.js';

const OPENING = { title: 'Ferry 3', language: 'en' };
const CLOSING = { author: '', bookmarks: [], trueSize: false };
const add = (file: PdfFile, ...pages: Page[]) => {
  for (const one of pages) file.add(PageWriter.of(testFonts()).write(one), one.label);
};
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
      for (const one of GOOD) add(file, one);
    });
    const whole = await printPdf(document(GOOD, OPENING), testFonts());
    expect(Buffer.concat(pieces).equals(whole)).toBe(true);
  });

  test('hands pages on before it is closed', async () => {
    const crowd = Array.from({ length: 50 }, (_, i) => page([text(`${i}`)], { label: `${i}` }));
    let before = 0;
    let pieces = 0;
    const file = PdfFile.open(OPENING, testFonts(), () => void pieces++);
    add(file, ...crowd);
    before = pieces;
    await file.close(CLOSING);
    expect(before).toBeGreaterThan(49);
    expect(pieces).toBeGreaterThan(before);
    expect(file.pages).toBe(50);
  });

  test('holds nothing of a page that cannot be printed', async () => {
    const pieces = await printed((file) => {
      add(file, GOOD[0]!);
      expect(() => add(file, page([text('4'), text('🚢'), text('5')], { label: '4' }))).toThrow(MissingGlyph);
      expect(file.pages).toBe(1);
      add(file, GOOD[1]!);
    });
    const bytes = Buffer.concat(pieces);
    expect(await faults(bytes)).toEqual([]);
    const { labels, pages } = await openPrinted(bytes);
    expect(labels).toEqual(['1', '2']);
    expect(pages.map(({ texts }) => texts.map((one) => one.text))).toEqual([['1'], ['2']]);
  });
});
