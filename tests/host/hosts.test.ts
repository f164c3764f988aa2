import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { type Host, LARGEST_FILE } from '../../src/host/host.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { nodeHost } from '../../src/host/node-host.js';

const bytes = (text: string) => Buffer.from(text);
const words = (host: Host, path: string) => {
  const reading = host.read(path);
  return reading.ok ? Buffer.from(reading.value).toString() : reading.reason;
};

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
  vi.unstubAllEnvs();
});

/** What commands rely on must hold of the real host and of the one that the tests hand them. */
describe.each([
  { name: 'the real host', open: () => ({ host: nodeHost(), at: folder }) },
  { name: 'the host in memory', open: () => ({ host: memoryHost({ '/work/.keep': '' }), at: '/work' }) },
])('$name', ({ open }) => {
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
});

describe('the real host', () => {
  test('writes through a link, and leaves it a link', () => {
    const host = nodeHost();
    host.write(join(folder, 'real.pdf'), bytes('one'));
    symlinkSync(join(folder, 'real.pdf'), join(folder, 'link.pdf'));
    host.write(join(folder, 'link.pdf'), bytes('two'));
    expect(words(host, join(folder, 'real.pdf'))).toBe('two');
    expect(host.real(join(folder, 'link.pdf'))).toBe(host.real(join(folder, 'real.pdf')));
    expect(readdirSync(folder).sort()).toEqual(['link.pdf', 'real.pdf']);
  });

  test('leaves nothing behind where it cannot write', () => {
    const host = nodeHost();
    expect(host.write(join(folder, `${'long'.repeat(80)}.pdf`), bytes('x'))).toEqual({
      ok: false,
      reason: 'the name is too long',
    });
    expect(readdirSync(folder)).toEqual([]);
  });

  test('a folder on the way that is a file', () => {
    const host = nodeHost();
    host.write(join(folder, 'out'), bytes('x'));
    const wanted = { ok: false, reason: 'a part of the path is not a folder' };
    expect(host.write(join(folder, 'out/c012.pdf'), bytes('x'))).toEqual(wanted);
    expect(host.read(join(folder, 'out/c012.cut'))).toEqual(wanted);
  });

  test('a name that no file can have', () => {
    expect(words(nodeHost(), 'a\0b.cut')).toBe('the name holds a character that no file name may hold');
  });

  test.skipIf(!existsSync('/dev/full'))('a full disk', () => {
    expect(nodeHost().write('/dev/full', bytes('x'))).toEqual({ ok: false, reason: 'the disk is full' });
  });

  test.skipIf(process.getuid?.() === 0)('what must not be read or written', () => {
    const host = nodeHost();
    mkdirSync(join(folder, 'shut'), { mode: 0o500 });
    expect(host.write(join(folder, 'shut/c012.pdf'), bytes('x'))).toEqual({
      ok: false,
      reason: 'permission denied',
    });
  });

  test.skipIf(!existsSync('/dev/zero'))('an endless file ends at 8 MB', () => {
    expect(words(nodeHost(), '/dev/zero')).toBe('is larger than 8 MB');
  });

  test('keeps the rights of a file that it replaces', () => {
    const host = nodeHost();
    host.write(join(folder, 'c012.pdf'), bytes('one'));
    const before = statSync(join(folder, 'c012.pdf')).mode;
    host.write(join(folder, 'c012.pdf'), bytes('two'));
    expect(statSync(join(folder, 'c012.pdf')).mode).toBe(before);
  });

  test('the clock can be set from outside, as reproducible-builds.org has it', () => {
    vi.stubEnv('SOURCE_DATE_EPOCH', '1700000000');
    expect(nodeHost().now().toISOString()).toBe('2023-11-14T22:13:20.000Z');
  });
});

describe('the host in memory', () => {
  test('has a disk that can be full, and keeps the file that was there', () => {
    const host = memoryHost({ 'c012.pdf': 'good' });
    host.room = 3;
    expect(host.write('c012.pdf', bytes('longer'))).toEqual({ ok: false, reason: 'the disk is full' });
    expect(words(host, '/work/c012.pdf')).toBe('good');
  });

  test('follows links, of folders too', () => {
    const host = memoryHost({ '/shared/house.cut': 'time 1+0' });
    host.links.set('/work/house', '../shared');
    expect(host.real('house/house.cut')).toBe('/shared/house.cut');
    expect(words(host, 'house/house.cut')).toBe('time 1+0');
    expect(host.kind('house')).toBe('folder');
  });

  test('locks files and folders', () => {
    const host = memoryHost({ 'shut/c1.cut': '' });
    host.locked.add('/work/shut');
    expect(words(host, 'shut/c1.cut')).toBe('permission denied');
    expect(host.write('shut/c2.cut', bytes(''))).toEqual({ ok: false, reason: 'permission denied' });
  });
});
