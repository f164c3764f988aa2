import { beforeEach, describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, fileNames, run } from '../command/run.js';
import { longCut, type PrintedEpisode, printedEpisode } from './printed-episode.js';

const TWO = CUT.replace('cut 1', 'cut 2');
const BROKEN = 'cut 3\ntime 1+0\nA: 1\n';

let episode: PrintedEpisode;
const set = (name: string, text: string) => episode.set(name, text);
const build = (...argv: string[]) => episode.build(...argv);

beforeEach(async () => {
  episode = await printedEpisode();
});

describe('remarks', () => {
  const fine = 'cut 2\ntime 1+0\nfield A 60%\nfix A\nA: 1..\n';
  const warned = `${fine}overlap out 6\n`;

  test.each([['apart'], ['--one-file']])(
    'hints on a cut that is not printed again are left out: %s',
    async (way) => {
      const more = way === 'apart' ? [] : [way, '-o', 'all.pdf'];
      set('e/10.cut', fine.replace('cut 2', 'cut 10'));
      set('e/2.cut', fine);
      const first = await run(episode.host, 'build', 'e', '--changed', ...more);
      expect(first.error.match(/: scan-enlarged$/gm)).toHaveLength(2);
      set('e/2.cut', fine.replace('1..', '1:12 2..'));
      const { error } = await run(episode.host, 'build', 'e', '--changed', ...more);
      expect(error.match(/^\S+: [a-z-]+$/gm)).toEqual(['e/2.cut:3:1: scan-enlarged']);
      expect((await run(episode.host, 'build', 'e', '--changed', ...more)).error).toBe('3 cuts unchanged\n');
    },
  );

  test('warnings stay', async () => {
    set('e/2.cut', warned);
    await build('--changed');
    expect((await build('--changed')).error).toMatch(/^Warning: [\s\S]*\n3 cuts unchanged\n$/);
  });
});

test('a program that reads JSON gets no list', async () => {
  set('e/2.cut', longCut(2).replace('4..', '4 3..'));
  const { error } = await build('--changed', '--format', 'json');
  expect(JSON.parse(error)).toMatchObject({ diagnostics: [] });
});

describe('what is wrong with one cut', () => {
  test('never stops the others', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'b.cut': BROKEN, 'c.cut': TWO });
    const { status, error } = await run(host, 'build', 'a.cut', 'b.cut', 'c.cut');
    expect(status).toBe(1);
    expect(fileNames(host)).toEqual(['a.cut', 'a.pdf', 'b.cut', 'c.cut', 'c.pdf']);
    expect(error).toMatch(/wrote 2 files, 4 pages, in \.\nnot printed: cut 3 \(1 error\)\n$/);
  });

  test('is said of each in short, of many for the first', async () => {
    const cuts = Array.from({ length: 20 }, (_, i) => [`e/${i + 1}.cut`, BROKEN.replace('3', `${i + 1}`)]);
    const host = memoryHost({
      ...Object.fromEntries(cuts),
      'e/episode.yaml': '',
      'e/1.cut': 'cut 1\ntime 1+0\nA: 1:3\nB: 1:3\n',
      'e/2.cut': 'cat 2\n',
    });
    const { error } = await run(host, 'build', 'e');
    const last = error.split('\n').at(-2)!;
    expect(last).toMatch(
      /^not printed: cut 1 \(2 errors\), e\/2\.cut \(\d+ errors?\), cut 3 \(1 error\), .*cut 12 \(1 error\) and 8 more$/,
    );
  });

  test('leaves the last good PDF as it is', async () => {
    const host = memoryHost({ 'b.cut': BROKEN, 'b.pdf': 'the last good one' });
    expect((await run(host, 'build', 'b.cut')).status).toBe(1);
    expect(Buffer.from(host.files.get('/work/b.pdf')!).toString()).toBe('the last good one');
  });

  test('warnings print all the same, but not with --strict', async () => {
    const files = { 'a.cut': 'cut 3\ntime 1+0\nA: 1..\nB: x..\n' };
    const host = memoryHost(files);
    expect((await run(host, 'build', 'a.cut')).status).toBe(0);
    expect(fileNames(host)).toContain('a.pdf');
    const strict = memoryHost(files);
    expect((await run(strict, 'build', 'a.cut', '--strict')).status).toBe(1);
    expect(fileNames(strict)).toEqual(['a.cut']);
  });

  test('a manifest with a fault keeps its cuts from printing', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'episode.yaml': 'papper: A3' });
    expect((await run(host, 'build', 'a.cut')).status).toBe(1);
    expect(fileNames(host)).toEqual(['a.cut', 'episode.yaml']);
  });

  test('a fault of the program in one cut does not stop the next', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'b.cut': TWO });
    const { read } = host;
    host.read = (path) => {
      if (path.endsWith('a.cut')) throw new Error('a fault that was made');
      return read(path);
    };
    const { status, error } = await run(host, 'build', 'a.cut', 'b.cut');
    expect(status).toBe(2);
    expect(error).toContain('a.cut: internal-fault');
    expect(fileNames(host)).toContain('b.pdf');
  });
});

test('no more than sixteen files are open at a time: the next waits until the first is written', async () => {
  const host = memoryHost({ 'a.cut': CUT });
  const { BuildRun } = await import('../../src/build/build-run.js');
  const written: number[] = [];
  const run = new BuildRun(host, {} as never, {} as never, {} as never, {} as never, {} as never);
  const finish: (() => void)[] = [];
  const begin = (i: number) =>
    run.later(
      {} as never,
      new Promise((resolve) => finish.push(() => resolve(null))),
      () => void written.push(i),
    );
  for (let i = 0; i < 15; i++) await begin(i);
  expect(written).toEqual([]);
  const sixteenth = begin(15);
  finish[0]!();
  await sixteenth;
  expect(written).toEqual([0]);
  for (const end of finish) end();
  await run.written();
  expect(written).toEqual(Array.from({ length: 16 }, (_, i) => i));
});
