import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, fileNames, run, runOn } from './run.js';

const TWO = CUT.replace('cut 1', 'cut 2');
const BROKEN = 'cut 3\ntime 1+0\nA: 1\n';
const records = (text: string): Record<string, string>[] =>
  parse(text, { columns: true, record_delimiter: '\r\n' });

describe('a cut', () => {
  test('goes to standard output as JSON, with nothing beside it', async () => {
    const { status, out, error } = await runOn({ 'a.cut': CUT }, 'export', 'a.cut');
    expect([status, error]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({ version: 1, cut: '1', time: 24, diagnostics: [] });
  });

  test('goes to a file or a folder, and the file is named', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    expect((await run(host, 'export', 'a.cut', '-o', 'x.json')).error).toBe('wrote x.json\n');
    expect((await run(host, 'export', 'a.cut', '-o', 'out/')).error).toBe('wrote out/a.json\n');
    expect((await run(host, 'export', 'a.cut', '-o', 'out/', '-t', 'camera')).error).toBe(
      'wrote out/a.camera.csv\n',
    );
    expect(fileNames(host)).toEqual(['a.cut', 'out/a.camera.csv', 'out/a.json', 'x.json']);
  });

  test('with warnings tells them, by the name of the file without its folder', async () => {
    const { status, out } = await runOn(
      { 'day/a.cut': 'cut 3\ntime 1+0\nA: 1..\nB: x..\n' },
      'export',
      'day/a.cut',
    );
    const { diagnostics } = JSON.parse(out) as { diagnostics: unknown[] };
    expect([status, diagnostics.length, out.includes('day/')]).toEqual([0, 1, false]);
  });

  test('with errors comes out nowhere', async () => {
    const { status, out, error } = await runOn({ 'a.cut': BROKEN }, 'export', 'a.cut');
    expect([status, out]).toEqual([1, '']);
    expect(error).toMatch(/\n1 cut not exported: 1 error\n$/);
  });
});

describe('several cuts', () => {
  const files = { 'a.cut': CUT, 'b.cut': TWO, 'h.cut': 'phrase walk = 1-2\n' };

  test('are one table with one header row', async () => {
    const { status, out } = await runOn(files, 'export', '.', '-t', 'drawings');
    expect(status).toBe(0);
    expect(out.match(/^cut,/gm)).toHaveLength(1);
    expect(new Set(records(out).map(({ cut }) => cut))).toEqual(new Set(['1', '2']));
  });

  test('go into one file of a table, or into a folder each', async () => {
    const host = memoryHost(files);
    expect((await run(host, 'export', '.', '-t', 'drawings', '-o', 'all.csv')).error).toBe(
      'wrote all.csv: drawings of 2 cuts\n',
    );
    expect((await run(host, 'export', '.', '-o', 'out/')).error).toBe('wrote 2 files in out\n');
    expect(fileNames(host).filter((name) => name.startsWith('out/'))).toEqual(['out/a.json', 'out/b.json']);
  });

  test('do not go into one JSON text', async () => {
    const { status, out, error } = await runOn(files, 'export', '.');
    expect([status, out]).toEqual([2, '']);
    expect(error).toContain('3 cuts do not go into one JSON text; name a folder with `--output`.');
  });

  test('come out but for the one with errors', async () => {
    const { status, out, error } = await runOn(
      { 'a.cut': CUT, 'b.cut': BROKEN },
      'export',
      '.',
      '-t',
      'drawings',
    );
    expect([status, records(out).every(({ cut }) => cut === '1')]).toEqual([1, true]);
    expect(error).toContain('1 cut not exported: 1 error\n');
  });
});

test('a text is not written over', async () => {
  const host = memoryHost({ 'a.cut': CUT, 'b.cut': TWO });
  for (const more of [
    ['-o', 'a.cut'],
    ['-o', 'b.cut', '-t', 'drawings'],
  ]) {
    const { status, error } = await run(host, 'export', 'a.cut', ...more);
    expect([status, error.includes('error[output-is-input]')]).toEqual([2, true]);
  }
  expect(Buffer.from(host.files.get('/work/b.cut')!).toString()).toBe(TWO);
});

test('a picture that is not shaped as the field is told once of each shape', async () => {
  const files = { 'episode.yaml': 'output: 1000x1000\n', 'a.cut': CUT, 'b.cut': TWO };
  const { status, error } = await runOn(files, 'export', '.', '--pixels', '-t', 'placement');
  expect([status, error.match(/\[pixels-shape\]/g)]).toEqual([0, ['[pixels-shape]']]);
});
