import { beforeEach, describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, fileNames, run } from '../command/run.js';
import { FILES, longCut, type PrintedEpisode, printedEpisode } from './printed-episode.js';

let episode: PrintedEpisode;
const set = (name: string, text: string) => episode.set(name, text);
const build = (...argv: string[]) => episode.build(...argv);
const written = (act: () => Promise<unknown>) => episode.written(act);

beforeEach(async () => {
  episode = await printedEpisode();
});

describe('files of cuts that are there no more', () => {
  test('are named, and left', async () => {
    episode.delete('e/10.cut');
    const { error } = await build('--changed');
    expect(error).toBe('out/10.pdf: no cut of the episode any more\n2 cuts unchanged\n');
    expect(episode.bytes('out/10.pdf')).toBeDefined();
    expect((await build()).error).toContain('out/10.pdf: no cut of the episode any more\n');
  });

  test('a cut whose file has another name', async () => {
    episode.delete('e/10.cut');
    set('e/c010.cut', FILES['e/10.cut']);
    expect((await build('--changed')).error).toContain('out/10.pdf: cut 10 goes to out/c010.pdf now\n');
  });

  test('a cut whose file has another name, and which has errors', async () => {
    episode.delete('e/10.cut');
    set('e/c010.cut', FILES['e/10.cut'].replace('..', ''));
    expect((await build('--changed')).error).toContain('out/10.pdf: cut 10 goes to out/c010.pdf now\n');
  });

  test('none where the number of some cut cannot be read', async () => {
    episode.delete('e/10.cut');
    set('e/c010.cut', 'cat 10\ntime 1+0\nA: 1..\n');
    expect((await build('--changed')).error).not.toContain('out/10.pdf');
    set('e/c010.cut', 'cut "no number"\ntime 1+0\nA: 1..\n');
    expect((await build('--changed')).error).not.toContain('out/10.pdf');
  });

  test('not a file of several cuts, even if only one is in it', async () => {
    await run(episode.host, 'build', 'e/2.cut', '--one-file', '-o', 'out/all.pdf');
    expect((await build('--changed')).error).toBe('3 cuts unchanged\n');
  });

  test('not those of another episode, nor what is no print', async () => {
    episode.host.files.set('/work/out/other.pdf', Buffer.from('%PDF-1.7'));
    episode.host.files.set('/work/out/10.pdf.old', episode.bytes('out/10.pdf')!);
    set('f/episode.yaml', 'title: Harbour\n');
    set('f/99.cut', CUT.replace('cut 1', 'cut 99'));
    await run(episode.host, 'build', 'f', '-o', 'out');
    expect((await build('--changed')).error).toBe('3 cuts unchanged\n');
  });

  test('nor where only some cuts are printed', async () => {
    const { error } = await run(episode.host, 'build', 'e/2.cut', '-o', 'out', '--changed');
    expect(error).toBe('1 cut unchanged\n');
  });
});

test('a folder that may not be written to: said for each cut, and nothing is lost', async () => {
  set('e/2.cut', longCut(2).replace('4..', '4 3..'));
  const write = episode.host.write;
  episode.host.write = () => ({ ok: false, reason: 'permission denied' });
  const done = await written(async () => {
    const { status, error } = await build('--changed');
    expect(status).toBe(2);
    expect(error).toContain('Error: `out/2.pdf` cannot be written: permission denied.');
    expect(error).toMatch(/2 cuts unchanged\nnot printed: cut 2 \(not written\)\n$/);
  });
  expect(done).toEqual([]);
  episode.host.write = write;
  expect((await build('--changed')).error).toContain('cut 2: page 3 of 4\n');
});

describe('a disk that refuses', () => {
  test('full: told with the file, the last good PDF whole, exit 2', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'a.pdf': 'old' });
    host.room = 100;
    const { status, error } = await run(host, 'build', 'a.cut');
    expect(status).toBe(2);
    expect(error).toContain(
      'Error: `a.pdf` cannot be written: the disk is full.\na.cut: output-unwritable\n',
    );
    expect(Buffer.from(host.files.get('/work/a.pdf')!).toString()).toBe('old');
  });

  test('a folder in the way, a locked folder', async () => {
    const host = memoryHost({ 'a.cut': CUT, 'a.pdf/x': '', 'locked/x': '' });
    host.locked.add('/work/locked');
    expect((await run(host, 'build', 'a.cut')).error).toContain('is a folder');
    expect((await run(host, 'build', 'a.cut', '-o', 'locked/a.pdf')).error).toContain('permission denied');
    expect(fileNames(host)).toEqual(['a.cut', 'a.pdf/x', 'locked/x']);
  });

  test('the font of the installation gone: a fault of the program, and no crash', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    host.font = () => ({ ok: false, reason: 'no such file' });
    expect(await run(host, 'build', 'a.cut')).toMatchObject({
      status: 2,
      error: expect.stringContaining('internal-fault'),
    });
  });
});
