import { describe, expect, test } from 'vitest';
import { PdfObjects, pdfText } from '../../src/print/pdf-objects.js';

test('the table says where each object begins, in whatever order they were written', () => {
  const pieces: Uint8Array[] = [];
  const objects = new PdfObjects((bytes) => void pieces.push(Uint8Array.from(bytes)));
  const [one, two, three] = [objects.next(), objects.next(), objects.next()];
  objects.add(three, '(three)');
  objects.stream(one, '/Kind /Test', Uint8Array.of(1, 2, 3));
  objects.add(two, '(two)');
  objects.end(two, three, new Uint8Array(16));
  const file = Buffer.concat(pieces).toString('latin1');
  const [, table] = /startxref\n(\d+)\n%%EOF\n$/.exec(file)!;
  const [head, count, free, ...entries] = file.slice(Number(table)).split('\n');
  expect([head, count, free]).toEqual(['xref', '0 4', '0000000000 65535 f ']);
  for (const id of [one, two, three]) {
    const [, offset] = /^(\d{10}) 00000 n $/.exec(entries[id - 1]!)!;
    expect(file.slice(Number(offset))).toMatch(new RegExp(`^${id} 0 obj\n`));
  }
  expect(file).toContain(
    '1 0 obj\n<<\n/Kind /Test\n/Length 3\n/Filter /FlateDecode\n>>\nstream\n\x01\x02\x03\nendstream\nendobj\n',
  );
});

describe('a text', () => {
  test('in ASCII stands as it is, what PDF reads otherwise escaped', () => {
    expect(pdfText('Cut 1')).toBe('(Cut 1)');
    expect(pdfText('a (b) \\')).toBe('(a \\(b\\) \\\\)');
  });

  test('with anything else is UTF-16', () => {
    expect(pdfText('夕a')).toBe('<feff59150061>');
    expect(pdfText('\u{20bb7}')).toBe('<feffd842dfb7>');
    expect(pdfText('a\nb')).toBe('<feff0061000a0062>');
  });
});
