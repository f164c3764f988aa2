/** What commands rely on must hold of the real host and of the one that the tests hand them. */

import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type Host, LARGEST_FILE, LIVE_PAGE_FILES } from '../../src/host/host.js';

export const bytes = (text: string) => Buffer.from(text);

/** The text of a file, or why there is none. */
export function words(host: Host, path: string): string {
  const reading = host.read(path);
  return reading.ok ? Buffer.from(reading.value).toString() : reading.reason;
}

/** Declares the tests that every host must pass. `open`: a host, and a folder in which it may write. */
export function hostContract(open: () => { readonly host: Host; readonly at: string }): void {
  test('reads back what it wrote', () => {
    const { host, at } = open();
    expect(host.write(join(at, 'c012.pdf'), bytes('one'))).toEqual({ ok: true, value: null });
    expect(words(host, join(at, 'c012.pdf'))).toBe('one');
    host.write(join(at, 'c012.pdf'), bytes('second'));
    expect(words(host, join(at, 'c012.pdf'))).toBe('second');
  });

  test('makes the folders that an output needs', () => {
    const { host, at } = open();
    host.write(join(at, 'out/today/c012.pdf'), bytes('one'));
    expect(words(host, join(at, 'out/today/c012.pdf'))).toBe('one');
    expect(host.kind(join(at, 'out'))).toBe('folder');
    expect(host.kind(join(at, 'out/today/c012.pdf'))).toBe('file');
    expect(host.kind(join(at, 'out/c013.pdf'))).toBe('none');
  });

  test('lists names by code point, and nothing that is left over from writing', () => {
    const { host, at } = open();
    for (const name of ['c2.cut', 'c10.cut', '\u{20BB7}.cut', '～.cut', 'B.cut']) {
      host.write(join(at, 'cuts', name), bytes(''));
    }
    expect(host.list(join(at, 'cuts'))).toEqual({
      ok: true,
      value: ['B.cut', 'c10.cut', 'c2.cut', '～.cut', '\u{20BB7}.cut'],
    });
  });

  test('says in a few words why not', () => {
    const { host, at } = open();
    host.write(join(at, 'cuts/c1.cut'), bytes(''));
    expect(words(host, join(at, 'none.cut'))).toBe('no such file');
    expect(words(host, join(at, 'cuts'))).toBe('is a folder');
    expect(host.write(join(at, 'cuts'), bytes(''))).toEqual({ ok: false, reason: 'is a folder' });
    expect(host.list(join(at, 'none'))).toEqual({ ok: false, reason: 'no such file' });
    expect(host.list(join(at, 'cuts/c1.cut')).ok).toBe(false);
  });

  test('refuses a file over 8 MB, and takes one of just that', () => {
    const { host, at } = open();
    host.write(join(at, 'film.mov'), new Uint8Array(LARGEST_FILE + 1));
    host.write(join(at, 'long.cut'), new Uint8Array(LARGEST_FILE));
    expect(words(host, join(at, 'film.mov'))).toBe('is larger than 8 MB');
    expect(host.read(join(at, 'long.cut')).ok).toBe(true);
  });

  test('has both weights of the font', () => {
    const { host } = open();
    for (const weight of ['regular', 'bold'] as const) {
      const reading = host.font(weight);
      // OpenType: a font with TrueType outlines starts with version 1.0.
      expect(reading.ok && Buffer.from(reading.value).readUInt32BE(0)).toBe(0x00010000);
    }
  });

  test('has the files of the live view', () => {
    const { host } = open();
    for (const name of LIVE_PAGE_FILES) expect(host.livePage(name)).toMatchObject({ ok: true });
    const page = host.livePage('live.html');
    expect(page.ok && Buffer.from(page.value).toString()).toMatch(/^<!doctype html>/i);
  });
}
