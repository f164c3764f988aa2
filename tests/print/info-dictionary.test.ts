import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { privateWords } from '../../src/print/info-dictionary.js';
import { printPdf } from '../../src/print/pdf.js';
import { testFonts } from '../fonts.js';
import { openPrinted } from '../pdf.js';
import { faults } from '../qpdf.js';
import { document, page, text } from './documents.js';

/** Reads from the end, and counts how much. */
function wordsIn(bytes: Uint8Array): { words: string | null; read: number } {
  let read = 0;
  const words = privateWords((most) => {
    const end = bytes.subarray(Math.max(0, bytes.length - most));
    read += end.length;
    return { bytes: end, size: bytes.length };
  });
  return { words, read };
}

const PAGES = [page([text('1')]), page([text('2')], { label: '2' })];
const print = (words?: string, pages = PAGES) =>
  printPdf(document(pages, { author: 'M. Arai', trueSize: true }), testFonts(), words);

describe('private words', () => {
  test('are read back from the file, which is sound', async () => {
    const bytes = await print('1;Ferry%203;12 abc-_ 1=x');
    expect(wordsIn(bytes).words).toBe('1;Ferry%203;12 abc-_ 1=x');
    expect(await faults(bytes)).toEqual([]);
    expect(await openPrinted(bytes)).toMatchObject({ title: 'Cut 12', author: 'M. Arai' });
  });

  test('are not there where there are none', async () => {
    expect(wordsIn(await print()).words).toBeNull();
    expect(wordsIn(new Uint8Array()).words).toBeNull();
    expect(privateWords(() => null)).toBeNull();
  });

  test('are found without reading the pages of a large file', async () => {
    // Compressed, texts like these come to some kB a page.
    const crowded = (n: number) =>
      page(
        Array.from({ length: 1500 }, (_, i) => text(`${Math.sin(n * 1500 + i)}`, { x: i % 200, y: i / 10 })),
      );
    const bytes = await print(
      '1;here',
      Array.from({ length: 20 }, (_, n) => crowded(n)),
    );
    expect(bytes.length).toBeGreaterThan(300_000);
    const { words, read } = wordsIn(bytes);
    expect(words).toBe('1;here');
    expect(read).toBeLessThan(bytes.length / 3);
  });

  test('are found where they are longer than what is read first', async () => {
    const long = `1;${'x'.repeat(300_000)}`;
    expect(wordsIn(await print(long)).words).toBe(long);
  });

  test('are none in a file that was cut, lengthened or joined', async () => {
    const bytes = Buffer.from(await print('1;here'));
    const damage = {
      'cut at its end': (at: number) => bytes.subarray(0, at),
      'cut at its start': (at: number) => bytes.subarray(at),
      'without a byte': (at: number) => Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1)]),
      'with more behind it': (at: number) => Buffer.concat([bytes, bytes.subarray(0, at)]),
      'with more before it': (at: number) => Buffer.concat([bytes.subarray(0, at), bytes]),
    };
    const how = fc.constantFrom(...Object.entries(damage));
    const place = fc.integer({ min: 1, max: bytes.length - 1 });
    fc.assert(
      fc.property(how, place, ([, damaged], at) => {
        expect(wordsIn(damaged(at)).words).toBeNull();
      }),
      { numRuns: 500, seed: 7 },
    );
  });

  test('no bytes make the reader fall over', async () => {
    const bytes = Buffer.from(await print('1;here'));
    const meddled = fc
      .array(fc.tuple(fc.integer({ min: 0, max: bytes.length - 1 }), fc.integer({ min: 0, max: 255 })), {
        minLength: 1,
        maxLength: 30,
      })
      .map((edits) => {
        const other = Buffer.from(bytes);
        for (const [at, value] of edits) other[at] = value;
        return other;
      });
    fc.assert(
      fc.property(fc.oneof(meddled, fc.uint8Array({ maxLength: 500 })), (other) => void wordsIn(other)),
      { numRuns: 500, seed: 8 },
    );
  });
});
