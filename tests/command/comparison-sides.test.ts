import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { run, runOn } from './run.js';

const cut = (number: string | number, line = 'A: 1--2..', time = '1+0') =>
  `cut ${number}\ntime ${time}\n${line}\n`;
const LONGER = 'A: 1:4--2..';
const NOTE = 'A: key 1 held 2 frames longer, 4 frames (was 2), from 0+1; what follows comes 2 frames later';

describe('folders and manifests', () => {
  const files = {
    'old/c1.cut': cut(1),
    'old/c2.cut': cut(2),
    'old/c3.cut': cut(3),
    'old/c9.cut': cut(9),
    'old/c10.cut': cut(10),
    'now/scene-2.cut': cut('02', LONGER),
    'now/scene-10.cut': cut(10, LONGER),
    'now/12a.cut': cut('12A'),
  };

  test('bring cuts together by their numbers, and list the others shortly', async () => {
    expect(await runOn(files, 'compare', 'old', 'now')).toEqual({
      status: 1,
      out: `cut 02\n  ${NOTE}\ncut 10\n  ${NOTE}\nonly in old: cuts 1, 3, 9\nonly in now: cut 12A\n`,
      error: '2 cuts compared: 2 differ\n',
    });
  });

  test('with two cuts of one number never pass for the same: 2, and which one is left out', async () => {
    const twice = { 'old/1.cut': cut(1), 'now/1.cut': cut(1), 'now/2.cut': cut(1, LONGER) };
    const { status, error } = await runOn(twice, 'compare', 'old', 'now');
    expect(status).toBe(2);
    expect(error).toContain(
      'now/2.cut:1:5: warning[cut-twice]: Cut 1 is already the number of `now/1.cut`; only that one is compared.',
    );
  });

  test('join numbers that follow each other', async () => {
    const many = Object.fromEntries([1, 2, 3, 4, 5, 6, 7, 9].map((n) => [`old/${n}.cut`, cut(n)]));
    const { out } = await runOn({ ...many, 'now/8.cut': cut(8) }, 'compare', 'old/', 'now/');
    expect(out).toBe('only in old/: cuts 1-7, 9\nonly in now/: cut 8\n');
  });

  test('against one file mean the cut of its number', async () => {
    const host = memoryHost(files);
    const { out, status } = await run(host, 'compare', 'old', 'now/scene-10.cut');
    expect({ out, status }).toEqual({ out: `cut 10\n  ${NOTE}\n`, status: 1 });
    const none = await run(host, 'compare', 'old/c3.cut', 'now');
    expect(none.status).toBe(2);
    expect(none.error).toContain('`now` holds no cut 3.');
  });

  test('one cut with errors costs its own comparison only', async () => {
    const { status, out, error } = await runOn(
      { ...files, 'now/bad.cut': cut(3, 'A: 1') },
      'compare',
      'old',
      'now',
    );
    expect(status).toBe(2);
    expect(out).toContain('cut 10\n');
    expect(out).toContain('only in old: cuts 1, 9\n');
    expect(error).toContain('error[timeline-short]');
  });

  test('stand in the order of the new manifest', async () => {
    const { out } = await runOn(
      { ...files, 'now/episode.yaml': 'cuts: [scene-10.cut, scene-2.cut]\n' },
      'compare',
      'old',
      'now/episode.yaml',
    );
    expect(out.match(/^cut \d+/gm)).toEqual(['cut 10', 'cut 02']);
  });
});

describe('revisions', () => {
  test('that stand without a path are no missing files: how to write them is said', async () => {
    const host = memoryHost({ 'c1.cut': cut(1) });
    host.revisions.set('v1', memoryHost({ 'c1.cut': cut(1) }));
    const { status, error } = await run(host, 'compare', 'v1', 'c1.cut');
    expect(status).toBe(2);
    expect(error).toContain('`v1` is a revision: write `v1:` for all that it holds');
    expect((await run(host, 'compare', 'v1:', 'c1.cut')).status).toBe(0);
    expect((await run(host, 'compare', 'v2', 'c1.cut')).error).toContain('v2: error[file-missing]');
  });

  const world = () => {
    const host = memoryHost({
      '.git/HEAD': 'ref: x\n',
      'cuts/c1.cut': cut(1, LONGER),
      'cuts/c3.cut': cut(3),
      'episode.yaml': '',
    });
    host.revisions.set(
      'HEAD~1',
      memoryHost({ 'cuts/c1.cut': cut(1), 'cuts/c2.cut': cut(2), 'episode.yaml': '' }),
    );
    return host;
  };

  test('are named as git names them', async () => {
    const { out, status } = await run(world(), 'compare', 'HEAD~1:cuts/c1.cut', 'cuts/c1.cut');
    expect({ out, status }).toEqual({ out: `cut 1\n  ${NOTE}\n`, status: 1 });
    const below = { ...world(), cwd: '/work/cuts' };
    expect((await run(below, 'compare', 'HEAD~1:cuts/c1.cut', 'c1.cut')).out).toContain(NOTE);
    expect((await run(below, 'compare', 'HEAD~1:./c1.cut', 'c1.cut')).out).toContain(NOTE);
    expect((await run(below, 'compare', 'HEAD~1:../cuts', '.')).out).toContain(
      'only in HEAD~1:../cuts: cut 2',
    );
  });

  test('that git does not know are wrong use', async () => {
    const { status, error } = await run(world(), 'compare', 'v9:cuts/c1.cut', 'cuts/c1.cut');
    expect(status).toBe(2);
    expect(error).toContain('git knows no revision `v9`');
    expect((await run(world(), 'compare', '--since', 'v9')).status).toBe(2);
  });

  test('`--since` is the whole episode then, or what is named', async () => {
    const below = { ...world(), cwd: '/work/cuts' };
    for (const host of [world(), below]) {
      expect(await run(host, 'compare', '--since', 'HEAD~1')).toEqual({
        status: 1,
        out: `cut 1\n  ${NOTE}\nonly in HEAD~1: cut 2\nonly now: cut 3\n`,
        error: '',
      });
    }
    expect((await run(world(), 'compare', '--since', 'HEAD~1', 'cuts/c1.cut')).out).toBe(
      `cut 1\n  ${NOTE}\n`,
    );
    expect((await run(world(), 'compare', '--since', 'HEAD~1', 'cuts/c2.cut')).out).toBe(
      'only in HEAD~1: cut 2\n',
    );
    const typo = await run(world(), 'compare', '--since', 'HEAD~1', 'cuts/c4.cut');
    expect(typo.status).toBe(2);
  });

  test('errors of the past name it', async () => {
    const host = world();
    host.revisions.set('HEAD~1', memoryHost({ 'cuts/c1.cut': cut(1, 'A: 1') }));
    const { error, status } = await run(host, 'compare', 'HEAD~1:cuts/c1.cut', 'cuts/c1.cut');
    expect(status).toBe(2);
    expect(error).toContain('HEAD~1:cuts/c1.cut:3:4: error[timeline-short]');
  });
});
