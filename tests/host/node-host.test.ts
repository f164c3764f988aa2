import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { nodeHost } from '../../src/host/node-host.js';
import { bytes, hostContract, words } from './host-contract.js';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
  vi.unstubAllEnvs();
});

describe('the real host', () => {
  hostContract(() => ({ host: nodeHost(), at: folder }));

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

  test.each([0, 1, 32767, 32768, 32769, 65537])(
    'reads a file of %i bytes, and keeps it when it reads the next',
    (length) => {
      const host = nodeHost();
      const written = Buffer.alloc(length, 'one ');
      host.write(join(folder, 'a.cut'), written);
      host.write(join(folder, 'b.cut'), Buffer.alloc(length, 'other'));
      const read = host.read(join(folder, 'a.cut'));
      host.read(join(folder, 'b.cut'));
      expect(read.ok && Buffer.compare(read.value, written)).toBe(0);
    },
  );

  test('calls a timer when its time is up, unless it is cancelled', async () => {
    const host = nodeHost();
    const begun = host.elapsedMs();
    const done: string[] = [];
    host.after(5, () => void done.push('never'))();
    await new Promise<void>((resolve) => host.after(15, resolve));
    expect(done).toEqual([]);
    // Timers of Node count whole milliseconds.
    expect(host.elapsedMs() - begun).toBeGreaterThanOrEqual(14);
  });
});
