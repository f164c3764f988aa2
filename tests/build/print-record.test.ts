import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PrintRecord, readRecord, writeRecord } from '../../src/build/print-record.js';

const word = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 });
const hash = fc.stringMatching(/^[\w-]{10}$/);
const record: fc.Arbitrary<PrintRecord> = fc.record({
  of: fc.constantFrom('cut', 'cuts'),
  work: fc.string({ unit: 'grapheme', maxLength: 30 }),
  cuts: fc.array(
    fc.record({
      cut: word,
      input: hash,
      unmarkedInput: hash,
      texts: fc.option(hash),
      pages: fc.array(fc.record({ label: word, hash: fc.option(hash), here: fc.boolean() }), {
        maxLength: 5,
      }),
    }),
    { maxLength: 4 },
  ),
});

test('a record is read back as it was written, and needs no escaping in a PDF', () => {
  fc.assert(
    fc.property(record, (one) => {
      const written = writeRecord(one);
      expect(written).toMatch(/^[\x20-\x7e]*$/);
      expect(written).not.toMatch(/[()\\]/);
      expect(readRecord(written)).toEqual(one);
    }),
    { seed: 3 },
  );
});

test('half a character, as an escape in the manifest can make it, does not stop a print', () => {
  expect(readRecord(writeRecord({ of: 'cut', work: 'a\ud800', cuts: [] }))).toEqual({
    of: 'cut',
    work: 'a\ufffd',
    cuts: [],
  });
});

test.each([
  ['nothing', ''],
  ['another version', '2;cut;Ferry;12 abc 1=x'],
  ['no work', '1;cut'],
  ['of what nobody knows', '1;reel;Ferry;12 abc 1=x'],
  ['a cut without its number', '1;cut;Ferry; abc 1=x'],
  ['a cut without its input', '1;cut;Ferry;12'],
  ['a cut with half of its inputs', '1;cut;Ferry;12 abc/'],
  ['a cut with nothing where its texts should stand', '1;cut;Ferry;12 abc+'],
  ['an empty cut', '1;cut;Ferry;;'],
  ['a page without a hash', '1;cut;Ferry;12 abc 1'],
  ['a page without a label', '1;cut;Ferry;12 abc =x'],
  ['broken escapes', '1;cut;%E3%81;12 abc 1=x'],
  ['something after the hash', '1;cut;Ferry;12 abc 1=x!!'],
])('%s is no record', (_, text) => {
  expect(readRecord(text)).toBeNull();
});
