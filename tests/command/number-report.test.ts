import { describe, expect, test } from 'vitest';
import type { Reporter } from '../../src/build/reporter.js';
import { questions, summary, told } from '../../src/command/number-report.js';
import { noEpisode } from '../../src/episode/episode.js';
import type { Job } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { runTexts } from '../../src/language/message.js';
import { pinsFor } from '../../src/solve/cels-lines.js';
import { compileText } from '../compile.js';
import { run, runOn } from './run.js';

const JOB: Job = { path: '/work/a.cut', name: 'a.cut', episode: noEpisode, named: true };

describe('what only the animator can tell', () => {
  const asked = (lines: string, job = JOB) =>
    questions(memoryHost(), compileText(`cut 1\ntime 1+0\n${lines}`), job, runTexts('en'));

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
      runTexts('en'),
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
    expect(said('A: 1 2..\ncels A 1 3 2\n')).toEqual(['A2 (3) is not used any more']);
  });
});

test('the summary counts what was numbered, what need not be, and what could not be', () => {
  const reporter = { tally: () => '1 error', words: runTexts('en') } as Reporter;
  const of = (cuts: number, changed: number, failed: number, dry = {}) =>
    summary({ cuts, changed, failed }, dry, reporter);
  expect(of(1, 1, 0)).toBe('1 cut: 1 numbered');
  expect(of(6, 2, 1)).toBe('6 cuts: 2 numbered, 3 with nothing to add, 1 not numbered (1 error)');
  expect(of(2, 1, 0, { check: true })).toBe('2 cuts: 1 to be numbered, 1 with nothing to add');
});

const text = (host: ReturnType<typeof memoryHost>, path: string) =>
  Buffer.from(host.files.get(`/work/${path}`)!).toString('utf8');
/** A cut whose drawings exist, and which has one in-between more than they. */
const GROWN = 'cut 1\ntime 1+0\nA: 1---2..\ncels A 1 1.1 1.2 2\n';
const SHRUNK = 'cut 1\ntime 1+0\nA: 1-2..\ncels A 1 1.1 1.2 2\n';

describe('a pinned passage that has grown or shrunk', () => {
  test('is not guessed at: it says what may be said', async () => {
    const host = memoryHost({ 'a.cut': GROWN });
    const { status, error } = await run(host, 'number', 'a.cut');
    expect(status).toBe(1);
    expect(error).toContain(': cels-count\n');
    expect(error).toContain(
      'a.cut: say which one is new: cutwright number a.cut --new A:1.0a, --new A:1.1a or --new A:1.2a\n',
    );
    expect(text(host, 'a.cut')).toBe(GROWN);
  });

  test.each([
    ['1.0a', '1 5 2 3 4'],
    ['1.1a', '1 2 5 3 4'],
    ['1.2a', '1 2 3 5 4'],
  ])('--new A:%s', async (name, cels) => {
    const host = memoryHost({ 'a.cut': GROWN });
    const { status, error } = await run(host, 'number', 'a.cut', '--new', `A:${name}`);
    expect([status, error]).toEqual([0, `a.cut: A5 is ${name}\n1 cut: 1 numbered\n`]);
    expect(text(host, 'a.cut')).toBe(GROWN.replace('1.2 2', `1.2 2 ${name}`));
    const { out } = await run(host, 'export', 'a.cut', '--table', 'exposures');
    const shown = [...out.matchAll(/^1,A,\d+,\w+,[\d.a]+,(\d+),(?:1|true)/gm)].map(([, cel]) => cel);
    expect(shown.join(' ')).toBe(cels);
  });

  test('every in-between that is offered by a name is taken, also beside one that was put in before', async () => {
    const grown = GROWN.replace('---', '-----').replace('2\n', '2 1.1a 1.0a\n');
    const { error } = await runOn({ 'a.cut': grown }, 'number', 'a.cut');
    const offered = [...error.matchAll(/--new (\S+?)(?=[, \n])/g)].map(([, word]) => word!);
    expect(offered).toEqual(['A:1.0b', 'A:1.1b', 'A:1.2a']);
    for (const word of offered) {
      expect((await runOn({ 'a.cut': grown }, 'number', 'a.cut', '--new', word)).status).toBe(0);
    }
  });

  test('--new of a drawing that the timeline does not show writes nothing', async () => {
    const fits = 'cut 1\ntime 1+0\nA: 1--2..\nB: 1..\ncels A 1 1.1 1.2 2\ncels B 1\n';
    const host = memoryHost({ 'a.cut': fits });
    const { status, error } = await run(host, 'number', 'a.cut', '--new', 'B:1.1a');
    expect([status, error]).toEqual([
      2,
      expect.stringContaining('The timeline does not show this drawing; write the in-between into it first'),
    ]);
    expect(text(host, 'a.cut')).toBe(fits);
  });

  test('--gone leaves its number unused', async () => {
    const host = memoryHost({ 'a.cut': SHRUNK });
    expect((await run(host, 'number', 'a.cut')).error).toContain(
      'say which one is gone: cutwright number a.cut --gone A:1.1 or --gone A:1.2\n',
    );
    const { status } = await run(host, 'number', 'a.cut', '--gone', 'A:1.1');
    expect(status).toBe(0);
    expect(text(host, 'a.cut')).toBe(SHRUNK.replace('1.1 ', '_ '));
  });

  test('--gone of a drawing that the timeline still shows says to take it out first', async () => {
    const fits = 'cut 1\ntime 1+0\nA: 1--2..\nB: 1--2..\ncels A 1 1.1 1.2 2\ncels B 1 1>2.1 1>2.2 2\n';
    const host = memoryHost({ 'a.cut': fits });
    for (const word of ['A:1.1', 'B:1>2.2']) {
      const { status, error } = await run(host, 'number', 'a.cut', '--gone', word);
      expect([status, error]).toEqual([
        2,
        expect.stringContaining(
          `Level ${word[0]} still shows as many in-betweens from key 1 to key 2 as are on paper; take the drawing out`,
        ),
      ]);
      expect(error).not.toContain('--new');
      expect(text(host, 'a.cut')).toBe(fits);
    }
  });

  test.each([
    ['no level', ['--new', '1.1a'], 'takes a level and the name of an in-between'],
    ['a key', ['--new', 'A:3'], 'takes a level and the name of an in-between'],
    ['no letter', ['--new', 'A:1.3'], 'such as `A:1.2a`'],
    ['a level that is not pinned', ['--new', 'B:1.1a'], 'The numbers of level B are not pinned'],
    ['one that is not there', ['--gone', 'A:3.1'], 'has no 3.1'],
  ])('wrong words: %s', async (_, words, said) => {
    const host = memoryHost({ 'a.cut': GROWN });
    const { status, error } = await run(host, 'number', 'a.cut', ...words);
    expect([status, error]).toEqual([2, expect.stringContaining(said)]);
    expect(text(host, 'a.cut')).toBe(GROWN);
  });

  test('is said of one cut at a time', async () => {
    const host = memoryHost({ 'a.cut': GROWN, 'b.cut': GROWN.replace('cut 1', 'cut 2') });
    expect(await run(host, 'number', 'a.cut', 'b.cut', '--new', 'A:1.1a')).toMatchObject({ status: 2 });
    expect(text(host, 'a.cut')).toBe(GROWN);
  });

  test('a word too many is told, and nothing is written', async () => {
    const host = memoryHost({ 'a.cut': GROWN });
    const { status, error } = await run(host, 'number', 'a.cut', '--new', 'A:1.1a', '--new', 'A:1.2a');
    expect([status, error]).toEqual([1, expect.stringContaining('cels-count')]);
    expect(text(host, 'a.cut')).toBe(GROWN);
  });

  test('a key taken out: nothing is pinned until it is said which passage is on paper', async () => {
    const cut = 'cut 1\ntime 1+0\nA: 1--3..\nB: 1..\ncels A 1 1.1 1.2 2 3\n';
    const host = memoryHost({ 'a.cut': cut });
    const { status, error } = await run(host, 'number', 'a.cut');
    expect(status).toBe(1);
    expect(error).toContain(': cels-passage\n');
    expect(error).toContain(
      'a.cut: say in its `cels` line which passage is on paper, then number it again\n',
    );
    expect(text(host, 'a.cut')).toBe(cut);
    host.files.set('/work/a.cut', Buffer.from(cut.replace('1.1 1.2', '1>2.1 1>2.2')));
    await run(host, 'number', 'a.cut');
    expect(text(host, 'a.cut')).toContain('cels A 1 1>2.1 1>2.2 2 3 1>3.1 1>3.2\ncels B 1\n');
  });

  test('standard input with what is new', async () => {
    const host = memoryHost();
    host.input = Buffer.from(GROWN);
    expect((await run(host, 'number', '-', '--new', 'A:1.1a')).out).toContain('cels A 1 1.1 1.2 2 1.1a\n');
  });
});
