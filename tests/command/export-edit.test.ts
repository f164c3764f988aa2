import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { run } from './run.js';

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
