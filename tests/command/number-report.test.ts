import { describe, expect, test } from 'vitest';
import type { Reporter } from '../../src/build/reporter.js';
import { questions, summary, told } from '../../src/command/number-report.js';
import { noEpisode } from '../../src/episode/episode.js';
import type { Job } from '../../src/episode/find-cuts.js';
import { pinsFor } from '../../src/solve/cels-lines.js';
import { compileText } from '../compile.js';

const JOB: Job = { path: '/work/a.cut', name: 'a.cut', episode: noEpisode, named: true };

describe('what only the animator can tell', () => {
  const asked = (lines: string, job = JOB) => questions(compileText(`cut 1\ntime 1+0\n${lines}`), job);

  test('is which drawing of a grown passage is new', () => {
    const [one, ...more] = asked('A: 1---2..\ncels A 1 1.1 1.2 2\n');
    expect(more).toEqual([]);
    expect(one).toMatch(
      /^a\.cut: say which one is new: cutwright number a\.cut --new A:\S+, .*--new A:\S+ or --new A:\S+$/,
    );
  });

  test('is which drawing of a shrunk passage is gone', () => {
    expect(asked('A: 1-2..\ncels A 1 1.1 1.2 2\n')).toEqual([
      'a.cut: say which one is gone: cutwright number a.cut --gone A:1.1 or --gone A:1.2',
    ]);
  });

  test('names standard input as the command line does', () => {
    expect(
      asked('A: 1-2..\ncels A 1 1.1 1.2 2\n', { ...JOB, path: null, name: 'standard input' })[0],
    ).toContain('cutwright number - --gone');
  });

  test('is nothing where numbers and drawings agree', () => {
    expect(asked('A: 1--2..\ncels A 1 1.1 1.2 2\n')).toEqual([]);
  });
});

describe('what is pinned', () => {
  const said = (lines: string, dry = {}, chosen = (_: string) => true) => {
    const solved = compileText(`cut 1\ntime 1+0\n${lines}`).solved!;
    return told(
      solved,
      pinsFor(solved).filter(({ level }) => chosen(level)),
      chosen,
      dry,
    );
  };

  test('is told as a stretch of numbers a level', () => {
    expect(said('A: 1--2..\nB: 1..\n')).toEqual(['pinned: A1 to A4, B1']);
    expect(said('A: 1--2..\nB: 1..\n', {}, (level) => level === 'B')).toEqual(['pinned: B1']);
  });

  test('is told drawing by drawing where a level has numbers already', () => {
    expect(said('A: 1--2 3..\ncels A 1 1.1 1.2 2\n')).toEqual(['A5 is 3']);
  });

  test('is not pinned in a dry run', () => {
    expect(said('A: 1--2..\n', { check: true })).toEqual(['not pinned: A1 to A4']);
    expect(said('A: 1--2 3..\ncels A 1 1.1 1.2 2\n', { diff: true })).toEqual(['not pinned: A5 is 3']);
  });

  test('but no longer shown is named', () => {
    expect(said('A: 1 2..\ncels A 1 3 2\n')).toEqual(['A2 (3) is no longer shown']);
  });
});

test('the summary counts what was numbered, what need not be, and what could not be', () => {
  const reporter = { tally: () => '1 error' } as Reporter;
  const of = (cuts: number, changed: number, failed: number, dry = {}) =>
    summary({ cuts, changed, failed }, dry, reporter);
  expect(of(1, 1, 0)).toBe('1 cut: 1 numbered');
  expect(of(6, 2, 1)).toBe('6 cuts: 2 numbered, 3 with nothing to add, 1 not numbered (1 error)');
  expect(of(2, 1, 0, { check: true })).toBe('2 cuts: 1 to be numbered, 1 with nothing to add');
});
