import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run, runOn } from './run.js';

const text = (host: ReturnType<typeof memoryHost>, path: string) =>
  Buffer.from(host.files.get(`/work/${path}`)!).toString('utf8');
/** A cut whose drawings exist, and which has one in-between more than they. */
const GROWN = 'cut 1\ntime 1+0\nA: 1---2..\ncels A 1 1.1 1.2 2\n';
const SHRUNK = 'cut 1\ntime 1+0\nA: 1-2..\ncels A 1 1.1 1.2 2\n';
const TWO_COUNTS = 'cut 1\ntime 2+0\nA: 1--2 x 1---2..\nB: 1..\n';

describe('number', () => {
  test('writes a line for each level, says what it pinned, and has nothing to do the second time', async () => {
    const host = memoryHost({ 'a.cut': 'cut 1\ntime 1+0\nA: 1--2..\nB: 1..\n\nmemo "x"\n' });
    const first = await run(host, 'number', 'a.cut');
    expect(first).toEqual({
      status: 0,
      out: '',
      error: 'a.cut: pinned: A1 to A4, B1\n1 cut: 1 numbered\n',
    });
    const pinned = 'cut 1\ntime 1+0\nA: 1--2..\nB: 1..\ncels A 1 1.1 1.2 2\ncels B 1\n\nmemo "x"\n';
    expect(text(host, 'a.cut')).toBe(pinned);
    expect((await run(host, 'number', 'a.cut')).error).toBe('1 cut: 1 with nothing to add\n');
    expect(text(host, 'a.cut')).toBe(pinned);
  });

  test('adds new drawings and names those no longer shown', async () => {
    const host = memoryHost({ 'a.cut': 'cut 1\ntime 1+0\nA: 1--3-4..\ncels A 1 2 _ 3\n' });
    const { error } = await run(host, 'number', 'a.cut');
    expect(error).toContain(
      'a.cut: A5 is 1>3.1, A6 is 1>3.2, A7 is 3.1, A8 is 4\na.cut: A2 (2) is no longer shown\n',
    );
    expect(text(host, 'a.cut')).toContain('cels A 1 2 _ 3 1>3.1 1>3.2 3.1 4\n');
  });

  test('keeps byte-order mark, line ends, comments and folded lines as they are', async () => {
    const typed = '\ufeffcut 1 # one\r\ntime　１＋０\r\n\r\n\r\nA: 1--   # two \r\n  2..\t# three\r\n# four';
    const host = memoryHost({ 'a.cut': typed });
    await run(host, 'number', 'a.cut');
    expect(text(host, 'a.cut')).toBe(typed.replace('three\r\n', 'three\r\ncels A 1 1.1 1.2 2\r\n'));
  });

  test('--level pins some of the levels', async () => {
    const host = memoryHost({ 'a.cut': 'cut 1\ntime 1+0\nA: 1..\nB: 1..\nC: 1..\n' });
    await run(host, 'number', 'a.cut', '--level', 'A,C');
    expect(text(host, 'a.cut')).toBe('cut 1\ntime 1+0\nA: 1..\nB: 1..\nC: 1..\ncels A 1\ncels C 1\n');
  });

  test('--level with a level that is not there writes nothing and guesses', async () => {
    const host = memoryHost({ 'a.cut': 'cut 1\ntime 1+0\nA: 1..\nBOOK1: 1..\n' });
    const { status, error } = await run(host, 'number', 'a.cut', '--level', 'A,BOK1');
    expect([status, error]).toEqual([2, expect.stringContaining('did you mean `BOOK1`?')]);
    expect(text(host, 'a.cut')).not.toContain('cels');
  });

  test('--check writes nothing and leaves with 1 while something is to be pinned', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    const before = await run(host, 'number', '--check', 'a.cut');
    expect(before).toMatchObject({
      status: 1,
      error: 'a.cut: not pinned: A1 to A4\n1 cut: 1 to be numbered\n',
    });
    expect(text(host, 'a.cut')).toBe(CUT);
    await run(host, 'number', 'a.cut');
    expect((await run(host, 'number', '--check', 'a.cut')).status).toBe(0);
  });

  test('a file that may not be written to: nothing is said to be pinned', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    host.write = () => ({ ok: false, reason: 'permission denied' });
    const { status, error } = await run(host, 'number', 'a.cut');
    expect([status, error]).toEqual([
      2,
      'a.cut: error[output-unwritable]: `a.cut` cannot be written: permission denied.\n1 cut: 1 not numbered (1 error)\n',
    ]);
  });

  test('--diff shows the change and makes none', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    const { status, out } = await run(host, 'number', '--diff', 'a.cut');
    expect(status).toBe(0);
    expect(out).toBe(
      '--- a/a.cut\n+++ b/a.cut\n@@ -1,3 +1,4 @@\n cut 1\n time 1+0\n A: 1--2..\n+cels A 1 1.1 1.2 2\n',
    );
    expect(text(host, 'a.cut')).toBe(CUT);
  });

  test('standard input goes to standard output, changed or not', async () => {
    const host = memoryHost();
    host.input = Buffer.from(`\ufeff${CUT}`);
    const first = await run(host, 'number', '-');
    expect(first.out).toBe(`\ufeff${CUT}cels A 1 1.1 1.2 2\n`);
    host.input = Buffer.from(first.out);
    expect((await run(host, 'number', '-')).out).toBe(first.out);
  });

  test('a whole episode, with a summary; one bad cut stops none', async () => {
    const host = memoryHost({
      'episode.yaml': 'cuts: ["*.cut"]\n',
      'house.cut': 'phrase walk = 1--2--\n',
      '1.cut': CUT,
      '2.cut': 'use "house.cut"\ncut 2\ntime 1+0\nA: walk..\n',
      '3.cut': 'cut 3\ntime 1+0\nA: 1\n',
      '4.cut': 'cut 4\ntime 1+0\nA: 1..\ncels A 1\n',
    });
    const { status, error } = await run(host, 'number', '.');
    expect(status).toBe(1);
    expect(error).toMatch(/\n4 cuts: 2 numbered, 1 with nothing to add, 1 not numbered \(1 error\)\n$/);
    expect(text(host, '2.cut')).toContain('A: walk..\ncels A 1 1.1 1.2 2 2>1.1 2>1.2\n');
    expect(text(host, '3.cut')).not.toContain('cels');
    expect(text(host, 'house.cut')).toBe('phrase walk = 1--2--\n');
  });

  test('a reused level: new drawings go on behind the other cut, which keeps its own', async () => {
    const host = memoryHost({
      'episode.yaml': '',
      '8.cut': 'cut 8\ntime 1+0\nC: 1--2..\n',
      '9.cut': 'cut 9\ntime 1+0\nlevel A reuse 8/C\nA: 1--2-3..\n',
    });
    const { error } = await run(host, 'number', '9.cut');
    expect(error).toContain('9.cut: pinned: A5 to A6\n');
    expect(text(host, '9.cut')).toContain('cels A _ _ _ _ 2.1 3\n');
    expect((await run(host, 'check', '9.cut')).error).toBe('1 cut checked: nothing wrong\n');
    expect((await run(host, 'number', '--check', '9.cut')).status).toBe(0);
  });
});

describe('a pinned passage that has grown or shrunk', () => {
  test('is not guessed at: it says what may be said', async () => {
    const host = memoryHost({ 'a.cut': GROWN });
    const { status, error } = await run(host, 'number', 'a.cut');
    expect(status).toBe(1);
    expect(error).toContain('error[cels-count]');
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

  test('a key taken out: nothing is pinned until it is said which way is on paper', async () => {
    const cut = 'cut 1\ntime 1+0\nA: 1--3..\nB: 1..\ncels A 1 1.1 1.2 2 3\n';
    const host = memoryHost({ 'a.cut': cut });
    const { status, error } = await run(host, 'number', 'a.cut');
    expect(status).toBe(1);
    expect(error).toContain('warning[cels-way]');
    expect(error).toContain('a.cut: say in its `cels` line which way is on paper, then number it again\n');
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

describe('what is refused', () => {
  test('a cut with errors', async () => {
    const host = memoryHost({ 'a.cut': 'cut 1\ntime 1+0\nA: 1\nB: 1..\n' });
    const { status, error } = await run(host, 'number', 'a.cut');
    expect([status, error]).toEqual([1, expect.stringMatching(/1 cut: 1 not numbered \(1 error\)\n$/)]);
    expect(text(host, 'a.cut')).not.toContain('cels');
  });

  test('two counts for one pair of keys, with its place; other levels may be pinned', async () => {
    const host = memoryHost({ 'a.cut': TWO_COUNTS });
    const { status, error } = await run(host, 'number', 'a.cut');
    expect(status).toBe(1);
    expect(error).toMatch(/^a\.cut:3:12: error\[number-two-counts\]: From key 1 to key 2 level A has 3/m);
    expect(text(host, 'a.cut')).toBe(TWO_COUNTS);
    expect((await run(host, 'number', 'a.cut', '--level', 'B')).status).toBe(0);
    expect(text(host, 'a.cut')).toBe(`${TWO_COUNTS}cels B 1\n`);
  });

  test('a house file that is named itself', async () => {
    const { status, error } = await runOn({ 'h.cut': 'phrase walk = 1--2--\n' }, 'number', 'h.cut');
    expect([status, error]).toEqual([2, expect.stringContaining('there is nothing to number')]);
  });

  test('a file that may not be written stays as it is', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    host.room = 3;
    const { status, error } = await run(host, 'number', 'a.cut');
    expect(status).toBe(2);
    expect(error).toContain('`a.cut` cannot be written: the disk is full.');
    expect(text(host, 'a.cut')).toBe(CUT);
  });

  test('standard input with errors: nothing comes out', async () => {
    const host = memoryHost();
    host.input = Buffer.from('cut 1\ntime 1+0\nA: 1\n');
    expect(await run(host, 'number', '-')).toMatchObject({ status: 1, out: '' });
  });
});
