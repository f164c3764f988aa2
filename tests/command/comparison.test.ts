import { describe, expect, test } from 'vitest';
import { compareSides, sideOf } from '../../src/command/comparison.js';
import { ConsoleReporter } from '../../src/command/console-reporter.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { run, runOn } from './run.js';

const cut = (number: string, timeline = '1--2..') => `cut ${number}\ntime 1+0\nA: ${timeline}\n`;

async function compared(files: Readonly<Record<string, string>>, was = 'old', is = 'new') {
  const host = memoryHost(files);
  const reporter = new ConsoleReporter(host, 'human', false);
  const [old, now] = [await sideOf(host, was), await sideOf(host, is)];
  const result = await compareSides(old, now, reporter, (before, after, changes) => {
    expect(changes.length).toBeGreaterThan(0);
    return `${before.shot.cut}→${after.shot.cut}`;
  });
  return { ...result, status: reporter.finish() };
}

describe('cuts of both sides', () => {
  test('belong together by their numbers, and stand in the order of the new side', async () => {
    const {
      differing,
      compared: count,
      onlyOld,
      onlyNow,
    } = await compared({
      'old/a.cut': cut('1'),
      'old/b.cut': cut('2'),
      'old/c.cut': cut('3'),
      'new/episode.yaml': 'cuts: [z.cut, y.cut, x.cut]\n',
      'new/x.cut': cut('01', '1---2..'),
      'new/y.cut': cut('2'),
      'new/z.cut': cut('3', '1-2..'),
    });
    expect(differing).toEqual(['3→3', '1→01']);
    expect([count, onlyOld, onlyNow]).toEqual([3, [], []]);
  });

  test('without another half are told by side', async () => {
    const {
      onlyOld,
      onlyNow,
      compared: count,
    } = await compared({
      'old/a.cut': cut('1'),
      'old/b.cut': cut('2'),
      'new/b.cut': cut('2'),
      'new/c.cut': cut('4a'),
    });
    expect([onlyOld, onlyNow, count]).toEqual([['1'], ['4A'], 1]);
  });

  test('with errors are not compared, and are not alone', async () => {
    const {
      differing,
      compared: count,
      onlyOld,
      onlyNow,
      status,
    } = await compared({
      'old/a.cut': cut('1'),
      'new/a.cut': cut('1', '1'),
    });
    expect([differing, count, onlyOld, onlyNow, status]).toEqual([[], 0, [], [], 1]);
  });
});

describe('one file', () => {
  test('against another is compared whatever their numbers', async () => {
    const { differing } = await compared({ 'a.cut': cut('1'), 'b.cut': cut('2', '1-2..') }, 'a.cut', 'b.cut');
    expect(differing).toEqual(['1→2']);
  });

  test('against many means the cut of its number, and the others are nobody’s concern', async () => {
    const files = { 'a.cut': cut('2', '1-2..'), 'new/b.cut': cut('1'), 'new/c.cut': cut('2') };
    const { differing, onlyOld, onlyNow, restricted } = await compared(files, 'a.cut', 'new');
    expect([differing, onlyOld, onlyNow, restricted]).toEqual([['2→2'], [], [], null]);
  });

  test('against many without its number says so', async () => {
    const { restricted, compared: count } = await compared(
      { 'a.cut': cut('9'), 'new/b.cut': cut('1') },
      'a.cut',
      'new',
    );
    expect([restricted, count]).toEqual([{ label: 'new', key: '9' }, 0]);
  });
});

describe('comparison sides', () => {
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
        'Warning: Cut 1 is already the number of `now/1.cut`; only that one is compared.\nnow/2.cut:1:5: cut-twice\n',
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
      expect(error).toContain(': timeline-short\n');
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
      expect((await run(host, 'compare', 'v2', 'c1.cut')).error).toContain('v2: file-missing');
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
      expect(error).toContain('HEAD~1:cuts/c1.cut:3:4: timeline-short');
    });
  });
});
