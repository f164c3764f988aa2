import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { MissingGlyph } from '../../src/print/fonts.js';
import { PageWriter } from '../../src/print/page-writer.js';
import { FontUse } from '../../src/print/text-codes.js';
import { freshFonts, testFonts } from '../fonts.js';
import { page, RULED, text } from './documents.js';

const written = (writer: PageWriter, ...words: string[]) => {
  const use = new FontUse();
  const bytes = writer.page(page(words.map((word) => text(word))), '1 0 0 1 0 0 cm', use);
  return { stream: Buffer.from(bytes).toString('latin1'), use };
};

test('one writer serves all files of the same fonts', () => {
  expect(PageWriter.of(testFonts())).toBe(PageWriter.of(testFonts()));
  expect(PageWriter.of(freshFonts())).not.toBe(PageWriter.of(testFonts()));
});

test('a page begins with its place, and calls its form before its marks', () => {
  const writer = PageWriter.of(testFonts());
  const bytes = writer.page(page([text('1')], { form: RULED }), '1 0 0 1 0 0 cm', new FontUse());
  expect(Buffer.from(bytes).toString('latin1')).toMatch(/^1 0 0 1 0 0 cm\n\/X1 Do\n[\s\S]*<0031> Tj\nET\n$/);
});

test('each page says which fonts it needs', () => {
  const writer = PageWriter.of(testFonts());
  expect([...written(writer, '1').use.latin]).toEqual(['F1']);
  const { use } = written(writer, '夕');
  expect([[...use.latin], [...use.other.regular]]).toEqual([[], [0x5915]]);
});

test('a form is written and compressed once', () => {
  const writer = PageWriter.of(testFonts());
  expect(writer.form(RULED)).toBe(writer.form({ ...RULED }));
  expect(inflateSync(writer.form(RULED).bytes).toString('latin1')).toContain(' l\n');
});

test('what was half written when a character was missing stands on no other page', () => {
  const writer = PageWriter.of(testFonts());
  const before = written(writer, 'good').stream;
  expect(() => written(writer, 'first', '\u{1F6A2}')).toThrow(MissingGlyph);
  expect(written(writer, 'good').stream).toBe(before);
});
