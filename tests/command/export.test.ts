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
    expect([status, error.includes(': output-is-input\n')]).toEqual([2, true]);
  }
  expect(Buffer.from(host.files.get('/work/b.cut')!).toString()).toBe(TWO);
});

test('a picture that is not shaped as the field is told once of each shape', async () => {
  const files = { 'episode.yaml': 'output: 1000x1000\n', 'a.cut': CUT, 'b.cut': TWO };
  const { status, error } = await runOn(files, 'export', '.', '--pixels', '-t', 'placement');
  expect([status, error.match(/: pixels-shape$/gm)]).toEqual([0, [': pixels-shape']]);
});

describe('export --edit', () => {
  const FILES = { 'ep/cuts/1.cut': 'cut 1\ntime 12\nA: 1..\n', 'ep/cuts/2.cut': 'cut 2\ntime 12\nA: 1..\n' };
  const written = (host: ReturnType<typeof memoryHost>, path: string) =>
    Buffer.from(host.files.get(`/work/${path}`)!).toString();

  test('writes one file, called as the folder is where a folder is named', async () => {
    const host = memoryHost({ ...FILES, 'ep/episode.yaml': 'title: Samphire Ferry\nepisode: 3\n' });
    const { status, out, error } = await run(host, 'export', 'ep', '--edit', 'edl', '-o', 'out/');
    expect([status, out, error]).toEqual([0, '', 'wrote out/ep.edl: 2 cuts, 1+0\n']);
    expect(written(host, 'out/ep.edl')).toMatch(/^TITLE: Samphire Ferry 3\r\n/);
    await run(host, 'export', 'ep', '--edit', 'otio', '-o', 'out/other.otio');
    expect(JSON.parse(written(host, 'out/other.otio')).name).toBe('Samphire Ferry 3');
  });

  test('a folder without a manifest goes in the order of numbers: 2 before 10', async () => {
    const files = Object.fromEntries(
      [10, 2, 1].map((n) => [`cuts/c${n}.cut`, `cut ${n}\ntime 12\nA: 1..\n`]),
    );
    const { out } = await run(memoryHost(files), 'export', 'cuts', '--edit', 'edl');
    expect([...out.matchAll(/NAME: (\d+)/g)].map(([, cut]) => cut)).toEqual(['1', '2', '10']);
    expect(out).toMatch(/^TITLE: cuts\r\n/);
  });

  test('one cut with errors, and nothing is written', async () => {
    const host = memoryHost({ ...FILES, 'ep/cuts/3.cut': 'cut 3\ntime 12\nA: 1--2\n' });
    const { status, error } = await run(host, 'export', 'ep', '--edit', 'edl', '-o', 'a.edl');
    expect(status).toBe(1);
    expect(error).toContain('no edit written: 1 cut with errors, 1 error');
    expect(host.files.has('/work/a.edl')).toBe(false);
  });

  test('house files are no clips', async () => {
    const { out } = await run(
      memoryHost({ ...FILES, 'ep/house.cut': 'phrase a = 1-2\n' }),
      'export',
      'ep',
      '--edit',
      'edl',
    );
    expect(out.match(/^\d{3} /gm)).toHaveLength(2);
  });

  test.each([
    [['--start', '1:00:00:00'], '1:00:00:00', 'such as 01:00:00:00'],
    [['--start', '01:00:00;00'], '01:00:00;00', 'such as 01:00:00:00'],
    [['--start', '24:00:00:00'], '24:00:00:00', 'such as 01:00:00:00'],
    [['--start', '00:00:00:24'], '00:00:00:24', 'frames up to 23: the cuts run at 24 a second'],
    [['--table', 'camera'], '--table', 'do not go together'],
    [['--pixels'], '--pixels', 'do not go together'],
    [['-o', 'ep/cuts/1.cut'], 'ep/cuts/1.cut', 'not written over'],
  ])('%j is wrong use', async (more, word, said) => {
    const { status, out, error } = await run(memoryHost(FILES), 'export', 'ep', '--edit', 'edl', ...more);
    expect([status, out]).toEqual([2, '']);
    expect(error).toContain(word);
    expect(error).toContain(said);
  });

  test('two episodes are no edit, and a start needs one', async () => {
    const files = {
      ...FILES,
      'ep/episode.yaml': '',
      'other/episode.yaml': '',
      'other/1.cut': FILES['ep/cuts/1.cut'],
    };
    const two = await run(memoryHost(files), 'export', 'ep', 'other', '--edit', 'otio');
    expect([two.status, two.error]).toEqual([2, expect.stringContaining('cuts are of 2 episodes')]);
    const start = await run(memoryHost(FILES), 'export', 'ep/cuts/1.cut', '--start', '01:00:00:00');
    expect([start.status, start.error]).toEqual([2, expect.stringContaining('goes with `--edit`')]);
  });
});
