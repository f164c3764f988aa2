import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { run } from './run.js';

const TYPED = 'cut 1\ntime 2 + 0\nA: 1..\nSE 1..24 "bell"\n';
const MENDED = 'cut 1\ntime 2+0\nA: 1..\nsound 1..24 "bell"\n';
const textOf = (host: ReturnType<typeof memoryHost>, name: string): string =>
  Buffer.from(host.files.get(`/work/${name}`)!).toString();

describe('check --fix', () => {
  test('writes what cannot change the meaning, and checks what was written', async () => {
    const host = memoryHost({ 'a.cut': TYPED, 'b.cut': 'cut 2\ntime 2+0\nA: 1\n' });
    const { status, error } = await run(host, 'check', '--fix', 'a.cut', 'b.cut');
    expect(textOf(host, 'a.cut')).toBe(MENDED);
    expect(textOf(host, 'b.cut')).toBe('cut 2\ntime 2+0\nA: 1\n');
    expect(error).toContain('a.cut: 2 mends written\n');
    expect(error).toMatch(/\n2 cuts checked: 1 error\n$/);
    expect(status).toBe(1);
  });

  test('keeps a byte-order mark', async () => {
    const host = memoryHost({ 'a.cut': `\ufeff${TYPED}` });
    await run(host, 'check', '--fix', 'a.cut');
    expect(textOf(host, 'a.cut')).toBe(`\ufeff${MENDED}`);
  });

  test('--diff shows it and writes nothing', async () => {
    const host = memoryHost({ 'a.cut': TYPED });
    const { status, out } = await run(host, 'check', '--diff', 'a.cut');
    expect(out).toContain('-time 2 + 0\n+time 2+0\n');
    expect([status, textOf(host, 'a.cut')]).toEqual([1, TYPED]);
  });

  test('standard input comes back on standard output', async () => {
    const host = memoryHost();
    host.input = Buffer.from(TYPED);
    const { status } = await run(host, 'check', '--fix', '-');
    expect([status, host.printed()]).toEqual([0, MENDED]);
  });

  test('a file that cannot be written is told and left whole', async () => {
    const host = memoryHost({ 'a.cut': TYPED });
    host.room = 3;
    const { status, error } = await run(host, 'check', '--fix', 'a.cut');
    expect([status, textOf(host, 'a.cut')]).toEqual([2, TYPED]);
    expect(error).toContain(': output-unwritable\n');
  });
});
