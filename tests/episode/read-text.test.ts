import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decode, firstInvalidByte, readText } from '../../src/episode/read-text.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';

const bytes = (...parts: (string | number[])[]) =>
  Buffer.concat(parts.map((part) => (typeof part === 'string' ? Buffer.from(part) : Buffer.from(part))));

describe('decode', () => {
  test('leaves the byte-order mark out', () => {
    expect(decode('a.cut', bytes([0xef, 0xbb, 0xbf], 'cut 1\n'))).toMatchObject({
      ok: true,
      text: 'cut 1\n',
    });
  });

  test('points at the character that is no UTF-8, and says which byte it is', () => {
    const { ok, diagnostics, text } = decode('a.cut', bytes('cut 1\nmemo "caf', [0xe9], '"\n'));
    expect(ok).toBe(false);
    expect(diagnostics[0]).toMatchObject({ code: 'wrong-encoding', span: { file: 'a.cut', start: 15 } });
    expect(messageOf(diagnostics[0]!, 'en')).toContain('Byte 16');
    expect(messageOf(diagnostics[0]!, 'en')).toContain('0xE9');
    expect(text.slice(0, 15)).toBe('cut 1\nmemo "caf');
  });

  test('counts places in characters, not bytes', () => {
    expect(decode('a', bytes('あ🎬', [0xff]))).toMatchObject({ diagnostics: [{ span: { start: 3 } }] });
  });

  test('names UTF-16, with its mark and without', () => {
    const wide = Buffer.from('cut 12 "Rooftop"\n', 'utf16le');
    for (const input of [wide, bytes([0xff, 0xfe], [...wide]), bytes([0xfe, 0xff], [...wide.swap16()])]) {
      const { diagnostics } = decode('a', input);
      expect(diagnostics[0]).toMatchObject({ code: 'wrong-encoding' });
      expect(messageOf(diagnostics[0]!, 'en')).toContain('UTF-16');
    }
  });

  test('refuses NUL bytes with the first place and their number', () => {
    const { diagnostics } = decode('a', bytes('cut 1\n', [0, 0, 0], 'time 1+0\n'));
    expect(diagnostics).toMatchObject([{ code: 'not-text', span: { start: 6, end: 7 } }]);
    expect(messageOf(diagnostics[0]!, 'en')).toContain('3 NUL bytes');
  });

  test('refuses what is too large before looking into it', () => {
    expect(decode('a', new Uint8Array(101), 100)).toMatchObject({
      ok: false,
      diagnostics: [{ code: 'file-too-large' }],
    });
  });

  test('never throws, and takes what is valid as it is', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (input) => {
        decode('a', input);
      }),
    );
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        const plain = text.replaceAll('\0', '').replace(/^\uFEFF/, '');
        expect(decode('a', Buffer.from(plain)).text).toBe(plain);
      }),
    );
  });
});

describe('firstInvalidByte', () => {
  // Source: Unicode Standard, table 3-7, well-formed UTF-8 byte sequences; each of these breaks one of its rows.
  test.each([
    ['a lone continuation', [0x41, 0x80], 1],
    ['an overlong slash', [0xc0, 0xaf], 0],
    ['an overlong three-byte form', [0xe0, 0x9f, 0xbf], 0],
    ['a surrogate', [0xed, 0xa0, 0x80], 0],
    ['beyond U+10FFFF', [0xf4, 0x90, 0x80, 0x80], 0],
    ['cut off at the end', [0x41, 0xe3, 0x81], 1],
    ['a lead without its continuation', [0xe3, 0x81, 0x41], 0],
  ])('finds %s', (_, input, place) => {
    expect(firstInvalidByte(Uint8Array.from(input))).toBe(place);
  });

  test('agrees with the decoder of the platform', () => {
    const strict = new TextDecoder('utf-8', { fatal: true });
    const fine = (input: Uint8Array) => {
      try {
        strict.decode(input);
        return true;
      } catch {
        return false;
      }
    };
    const piece = fc.constantFrom(
      [0x41],
      [0xc3, 0xa9],
      [0xe3, 0x81, 0x82],
      [0xf0, 0x9f, 0x8e, 0xac],
      [0xed, 0xa0, 0x80],
      [0x80],
      [0xe3],
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
        const input = Uint8Array.from(pieces.flat());
        const place = firstInvalidByte(input);
        expect(place === null).toBe(fine(input));
        // What stands before the place is valid, and one byte more makes it beyond repair.
        if (place !== null) expect(fine(input.subarray(0, place))).toBe(true);
      }),
    );
  });
});

describe('readText', () => {
  test('offers a file of nearly the same name', () => {
    const host = memoryHost({ 'c012.cut': 'cut 12\n' });
    expect(messageOf(readText(host, '/work/c0l2.cut', 'c0l2.cut').diagnostics[0]!, 'en')).toContain(
      '`c012.cut`',
    );
  });

  test('says why a file that is there cannot be read', () => {
    const host = memoryHost({ 'a.cut': 'cut 1\n', 'b/c.cut': '' });
    host.locked.add('/work/a.cut');
    const told = (path: string, name: string) =>
      readText(host, path, name).diagnostics.map((one) => `${one.code}: ${messageOf(one, 'en')}`);
    expect(told('/work/a.cut', 'a.cut')).toEqual([
      'file-unreadable: `a.cut` cannot be read: permission denied.',
    ]);
    expect(told('/work/b', 'b')).toEqual(['file-unreadable: `b` cannot be read: is a folder.']);
  });
});
