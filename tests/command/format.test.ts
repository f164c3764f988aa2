import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run, runOn } from './run.js';

const text = (host: ReturnType<typeof memoryHost>, path: string) =>
  Buffer.from(host.files.get(`/work/${path}`)!).toString('utf8');
const UNTIDY = 'cut   1\ntime １＋０\nA:1{late} - - 2..\n';

describe('format', () => {
  test('writes the usual layout, and has nothing to do the second time', async () => {
    const host = memoryHost({ 'a.cut': UNTIDY });
    expect(await run(host, 'format', 'a.cut')).toEqual({
      status: 0,
      out: '',
      error: '1 file: 1 formatted\n',
    });
    expect(text(host, 'a.cut')).toBe(CUT);
    expect((await run(host, 'format', 'a.cut')).error).toBe('1 file: 1 as it should be\n');
  });

  test('--check lists what would change, leaves with 1 and writes nothing', async () => {
    const host = memoryHost({ 'a.cut': UNTIDY, 'b.cut': CUT, 'c.cut': `\ufeff${CUT}` });
    expect(await run(host, 'format', '--check', '.')).toEqual({
      status: 1,
      out: 'a.cut\nc.cut\n',
      error: '3 files: 2 to be formatted, 1 as it should be\n',
    });
    expect(text(host, 'a.cut')).toBe(UNTIDY);
    await run(host, 'format', '.');
    expect(text(host, 'c.cut')).toBe(CUT);
    expect(await run(host, 'format', '--check', '.')).toMatchObject({ status: 0, out: '' });
  });

  test('--diff shows the change and makes none', async () => {
    const host = memoryHost({ 'a.cut': UNTIDY });
    const { status, out } = await run(host, 'format', '--diff', 'a.cut');
    expect(status).toBe(0);
    expect(out).toBe(
      '--- a/a.cut\n+++ b/a.cut\n@@ -1,3 +1,3 @@\n-cut   1\n-time １＋０\n-A:1{late} - - 2..\n+cut 1\n+time 1+0\n+A: 1{late}--2..\n',
    );
    expect(text(host, 'a.cut')).toBe(UNTIDY);
    expect(await run(host, 'format', '--diff', '--check', 'a.cut')).toMatchObject({ status: 1 });
  });

  test('standard input goes to standard output, changed or not', async () => {
    const host = memoryHost();
    host.input = Buffer.from(UNTIDY);
    expect((await run(host, 'format', '-')).out).toBe(CUT);
    host.input = Buffer.from(CUT);
    expect(await run(host, 'format', '-')).toEqual({ status: 0, out: CUT, error: '' });
  });

  test('standard input gives nothing but the text, whatever cannot be read in it', async () => {
    const host = memoryHost();
    host.input = Buffer.from(`tmie   1+0\n${UNTIDY}`);
    expect(await run(host, 'format', '-')).toEqual({ status: 0, out: `tmie   1+0\n${CUT}`, error: '' });
    host.input = Buffer.from(UNTIDY);
    expect((await run(host, 'format', '--check', '-')).error).toBe('1 file: 1 to be formatted\n');
  });

  test('a file with statements that cannot be read is not as it should be', async () => {
    const host = memoryHost({ 'a.cut': 'cut 1\ntmie   1+0\n', 'b.cut': CUT });
    expect(await run(host, 'format', '--check', '.')).toEqual({
      status: 0,
      out: '',
      error:
        'a.cut: 1 statement could not be read and was left as it is\n' +
        '2 files: 1 as it should be, 1 with statements that cannot be read\n',
    });
  });

  test('what cannot be read is left, in a word; its errors are for check', async () => {
    const host = memoryHost({ 'a.cut': 'cut  1\ntmie   1+0   # so\nA:1..\nB  1\n' });
    const { status, error } = await run(host, 'format', 'a.cut');
    expect(status).toBe(0);
    expect(error).toBe(
      'a.cut: 2 statements could not be read and were left as they are\n1 file: 1 formatted\n',
    );
    expect(text(host, 'a.cut')).toBe('cut 1\ntmie   1+0   # so\nA: 1..\nB  1\n');
  });

  test('every text of a folder, also what no manifest lists', async () => {
    const host = memoryHost({
      'episode.yaml': 'fsp: 24\ncuts: ["c/*.cut"]\n',
      'c/10.cut': UNTIDY,
      'c/2.cut': UNTIDY,
      'house.cut': 'phrase  walk=1-- 2--\n',
    });
    expect((await run(host, 'format', '--check', '.')).out).toBe('c/2.cut\nc/10.cut\nhouse.cut\n');
    expect(await run(host, 'format', '.')).toMatchObject({ status: 0, error: '3 files: 3 formatted\n' });
    expect(text(host, 'house.cut')).toBe('phrase walk = 1--2--\n');
  });

  test('the cuts of a manifest, whatever is wrong with it', async () => {
    const host = memoryHost({
      'episode.yaml': 'fsp: 24\ncuts: ["c/*.cut"]\n',
      'c/1.cut': UNTIDY,
      'house.cut': 'phrase  walk=1-- 2--\n',
    });
    expect(await run(host, 'format', 'episode.yaml')).toMatchObject({
      status: 0,
      error: '1 file: 1 formatted\n',
    });
    expect(text(host, 'house.cut')).toContain('phrase  walk');
  });

  test('a folder with no text is told', async () => {
    expect(await runOn({ 'd/a.txt': '' }, 'format', 'd')).toMatchObject({
      status: 2,
      error: expect.stringContaining(': no-cuts\n'),
    });
  });

  test('long timelines are broken at the seconds of the episode', async () => {
    const items = Array.from({ length: 60 }, (_, i) => i + 1).join(' ');
    const cut = `cut 1\ntime 10+0\nA: ${items}..\n`;
    const broken = async (settings: string) => {
      const host = memoryHost({ 'episode.yaml': settings, 'a.cut': cut });
      await run(host, 'format', 'a.cut');
      return [...text(host, 'a.cut').matchAll(/^ +(\d+)/gm)].map(([, key]) => Number(key) - 1);
    };
    // On twos 12 keys fill a second of 24 frames, on fours 6 do, and 15 a second of 30 on twos.
    expect(await broken('')).toEqual([24, 48]);
    expect(await broken('on: 4\n')).toEqual([30]);
    expect(await broken('fps: 30\n')).toEqual([30]);
  });

  test('files that are no text, or not there, stop nobody', async () => {
    const host = memoryHost({ 'a.cut': new Uint8Array([0x41, 0xff, 0x0a]), 'b.cut': UNTIDY });
    const { status, error } = await run(host, 'format', 'a.cut', 'nope.cut', 'b.cut');
    expect(status).toBe(2);
    expect(error).toContain(': wrong-encoding\n');
    expect(error).toContain(': file-missing\n');
    expect(error).toMatch(/\n2 files: 1 formatted, 1 not formatted\n$/);
    expect(text(host, 'b.cut')).toBe(CUT);
  });

  test('a file that may not be written stays as it is', async () => {
    const host = memoryHost({ 'a.cut': UNTIDY });
    host.room = 3;
    const { status, error } = await run(host, 'format', 'a.cut');
    expect([status, error]).toEqual([
      2,
      expect.stringContaining('`a.cut` cannot be written: the disk is full.'),
    ]);
    expect(text(host, 'a.cut')).toBe(UNTIDY);
  });

  test('an empty file stays empty', async () => {
    expect(await runOn({ 'a.cut': '' }, 'format', 'a.cut')).toMatchObject({
      status: 0,
      error: '1 file: 1 as it should be\n',
    });
  });
});
