import { describe, expect, test } from 'vitest';
import { DocumentText } from '../../src/lsp/document-text.js';

const utf16 = (text: string) => new DocumentText(text, 'utf-16');
const utf8 = (text: string) => new DocumentText(text, 'utf-8');
const MARK = '\ufeff';

describe('a place of an editor', () => {
  // 𠮷 is one character of two UTF-16 units and four bytes of UTF-8 (Unicode Standard, 3.9).
  test('counts UTF-16 units, or bytes where that was agreed on', () => {
    const text = 'cut 1\nA: 𠮷-2';
    const offset = text.indexOf('-');
    expect(utf16(text).position(offset)).toEqual({ line: 1, character: 5 });
    expect(utf8(text).position(offset)).toEqual({ line: 1, character: 7 });
    expect(utf16(text).offset({ line: 1, character: 5 })).toBe(offset);
    expect(utf8(text).offset({ line: 1, character: 7 })).toBe(offset);
  });

  test('inside a character is moved before it where bytes are counted', () => {
    const text = utf8('𠮷2');
    for (const character of [1, 2, 3]) expect(text.offset({ line: 0, character })).toBe(0);
    expect(text.offset({ line: 0, character: 4 })).toBe(2);
  });

  test('beyond its line is moved to the end of the line, beyond the text to the end of the text', () => {
    const text = utf16('ab\r\ncd');
    expect(text.offset({ line: 0, character: 99 })).toBe(2);
    expect(text.offset({ line: 7, character: 0 })).toBe(6);
    expect(text.offset({ line: -1, character: 4 })).toBe(0);
    expect(text.offset({ line: 1, character: Number.NaN })).toBe(4);
  });

  test('counts the byte-order mark where the editor holds it', () => {
    const text = utf16(`${MARK}cut 1`);
    expect(text.text).toBe('cut 1');
    expect(text.position(0)).toEqual({ line: 0, character: 1 });
    expect(text.offset({ line: 0, character: 1 })).toBe(0);
    expect(text.offset({ line: 0, character: 0 })).toBe(0);
    expect(utf8(`${MARK}cut 1`).position(1)).toEqual({ line: 0, character: 4 });
  });
});

describe('lines', () => {
  test('end before CR LF, LF and CR, and the last one may be empty', () => {
    const text = utf16('ab\r\nc\nd\re\n');
    expect(text.lineCount).toBe(5);
    expect([0, 1, 2, 3, 4].map((line) => text.line(line))).toEqual([
      { start: 0, end: 2 },
      { start: 4, end: 5 },
      { start: 6, end: 7 },
      { start: 8, end: 9 },
      { start: 10, end: 10 },
    ]);
  });

  test('that are not there lie empty behind the text', () => {
    expect(utf16('ab').line(3)).toEqual({ start: 2, end: 2 });
  });

  test('hold the offsets from their start to the start of the next', () => {
    const text = utf16('ab\ncd\n');
    expect([0, 2, 3, 5, 6].map((offset) => text.lineAt(offset))).toEqual([0, 0, 1, 1, 2]);
  });
});

describe('a change', () => {
  test('replaces the stretch that the editor names', () => {
    const range = { start: { line: 1, character: 3 }, end: { line: 1, character: 4 } };
    expect(utf16('cut 1\nA: 1..\n').changed(range, '2--3').raw).toBe('cut 1\nA: 2--3..\n');
  });

  test('without a range replaces everything', () => {
    const text = utf8('cut 1').changed(undefined, 'cut 2');
    expect([text.raw, text.encoding]).toEqual(['cut 2', 'utf-8']);
  });

  test('at the very beginning may take the byte-order mark away', () => {
    const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
    expect(utf16(`${MARK}cut 1`).changed(range, '').raw).toBe('cut 1');
  });

  test('whose end lies before its start puts in and takes nothing out', () => {
    const range = { start: { line: 0, character: 3 }, end: { line: 0, character: 1 } };
    expect(utf16('abcd').changed(range, 'X').raw).toBe('abcXd');
  });
});

test('what is put in has the line ends of the text', () => {
  expect(utf16('a\r\nb').lineEnds('x\ny\r\nz')).toBe('x\r\ny\r\nz');
  expect(utf16('a\nb').lineEnds('x\ny')).toBe('x\ny');
  const edit = { span: { file: 'c1.cut', start: 3, end: 4 }, text: '1\n2' };
  expect(utf16('a\r\nb').textEdit(edit)).toEqual({
    range: { start: { line: 1, character: 0 }, end: { line: 1, character: 1 } },
    newText: '1\r\n2',
  });
});
