/** Bytes to text, with every way in which a file can fail to be one. */

import { isUtf8 } from 'node:buffer';
import { basename, dirname } from 'node:path';
import { type Host, TOO_LARGE } from '../host/host.js';
import type { Code, Messages } from '../language/catalogue/index.js';
import { type Diagnostic, diagnose, type Span } from '../language/diagnostic.js';
import { nearest } from '../language/suggest.js';

/** The largest text that is read as a cut. Nobody types a megabyte; what is below can be read in memory that every machine has. */
export const LARGEST_TEXT_BYTES = 2 * 1024 * 1024;

/** A text, or why there is none. `text` is given as far as it can be shown, so that a message can point into it. */
export interface ReadText {
  readonly text: string;
  readonly ok: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

const utf8 = new TextDecoder('utf-8', { ignoreBOM: true });

/**
 * Turns the bytes of the file that messages call `name` into text: without its byte-order mark, checked to be UTF-8 and
 * to hold no NUL.
 */
export function decode(name: string, bytes: Uint8Array, largest = LARGEST_TEXT_BYTES): ReadText {
  const failed = <C extends Code>(
    code: C,
    text: string,
    start: number,
    end: number,
    parameters: Messages[C],
  ): ReadText => ({
    text,
    ok: false,
    diagnostics: [diagnose(code, { file: name, start, end }, parameters)],
  });
  if (bytes.length > largest) {
    return failed('file-too-large', '', 0, 0, { file: null, bytes: largest });
  }
  const wide = wideEncoding(bytes);
  if (wide !== null) return failed('wrong-encoding', '', 0, 0, { variant: 'other', encoding: wide });
  const body = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? bytes.subarray(3) : bytes;
  const text = utf8.decode(body);
  const nul = text.indexOf('\0');
  if (nul >= 0) {
    const count = text.split('\0').length - 1;
    return failed('not-text', text, nul, nul + 1, { count });
  }
  const bad = firstInvalidByte(body);
  if (bad !== null) {
    const start = utf8.decode(body.subarray(0, bad)).length;
    const byte = body[bad]!;
    const place = bad + (bytes.length - body.length) + 1;
    return failed('wrong-encoding', text, start, start + 1, { variant: 'byte', place, byte });
  }
  return { text, ok: true, diagnostics: [] };
}

/**
 * Reads a file as text. `path` is where it lies, `name` what messages call it; `from` is the place that names it, where
 * that is a text, and `code` what a file that is not there is called.
 */
export function readText(
  host: Host,
  path: string,
  name: string,
  more: { from?: Span; missing?: 'use-missing'; largest?: number } = {},
): ReadText {
  const span = more.from ?? { file: name, start: 0, end: 0 };
  const reading = host.read(path);
  if (reading.ok) return decode(name, reading.value, more.largest);
  if (host.kind(path) === 'none') {
    const offer = nearest(basename(path), neighbours(host, path));
    return {
      text: '',
      ok: false,
      diagnostics: [
        diagnose(more.missing ?? 'file-missing', span, {
          variant: 'missing',
          file: name,
          guess: offer ?? null,
        }),
      ],
    };
  }
  const problem =
    reading.reason === TOO_LARGE
      ? diagnose('file-too-large', span, { file: name, bytes: more.largest ?? LARGEST_TEXT_BYTES })
      : diagnose((more.from && more.missing) ?? 'file-unreadable', span, {
          variant: 'unreadable',
          file: name,
          reason: reading.reason,
        });
  return { text: '', ok: false, diagnostics: [problem] };
}

/** The files of the folder in which a missing one was looked for. */
export function neighbours(host: Host, path: string): string[] {
  const names = host.list(dirname(path));
  return names.ok ? names.value : [];
}

/** UTF-16 and UTF-32 show by their byte-order marks, or by a NUL in every other byte of what is mostly ASCII. */
function wideEncoding(bytes: Uint8Array): string | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'UTF-16';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'UTF-16';
  const head = bytes.subarray(0, 64);
  if (head.length < 8) return null;
  for (const odd of [0, 1]) {
    if (head.every((byte, i) => (i % 2 === odd ? byte === 0 : byte !== 0))) return 'UTF-16';
  }
  return null;
}

/**
 * The offset of the first byte that is no UTF-8, or null where all of them are.
 * Well-formed sequences: Unicode Standard, table 3-7 (no overlong forms, no surrogates, nothing above U+10FFFF).
 */
export function firstInvalidByte(bytes: Uint8Array): number | null {
  if (isUtf8(bytes)) return null;
  let at = 0;
  while (at < bytes.length) {
    const lead = bytes[at]!;
    const more =
      lead < 0x80 ? 0 : lead < 0xc2 ? -1 : lead < 0xe0 ? 1 : lead < 0xf0 ? 2 : lead < 0xf5 ? 3 : -1;
    if (more < 0) return at;
    for (let i = 1; i <= more; i++) {
      const byte = bytes[at + i];
      const low = i > 1 ? 0x80 : lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
      const high = i > 1 ? 0xbf : lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
      if (byte === undefined || byte < low || byte > high) return at;
    }
    at += more + 1;
  }
  return null;
}
