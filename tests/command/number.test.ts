import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run, runOn } from './run.js';

const text = (host: ReturnType<typeof memoryHost>, path: string) =>
  Buffer.from(host.files.get(`/work/${path}`)!).toString('utf8');
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
      'a.cut: A5 is 1>3.1, A6 is 1>3.2, A7 is 3.1, A8 is 4\na.cut: A2 (2) is not used any more\n',
    );
    expect(text(host, 'a.cut')).toContain('cels A 1 2 _ 3 1>3.1 1>3.2 3.1 4\n');
  });

  test('pins the drawings of a mouth, which keep their numbers when the line changes', async () => {
    const typed = 'cut 1\ntime 2+0\nmouth A "Nao" 1 2 3\nvoice "Nao" 7..36 "ああああ"\n';
    const host = memoryHost({ 'a.cut': typed });
    await run(host, 'number', 'a.cut');
    const pinned = text(host, 'a.cut');
    expect(pinned).toBe(typed.replace('1 2 3\n', '1 2 3\ncels A 1 3\n'));
    host.files.set('/work/a.cut', Buffer.from(pinned.replace('ああああ', 'いあいあ')));
    expect((await run(host, 'number', 'a.cut')).error).toContain('a.cut: A3 is 2\n');
    expect(text(host, 'a.cut')).toContain('cels A 1 3 2\n');
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
      'Error: `a.cut` cannot be written: permission denied.\na.cut: output-unwritable\n1 cut: 1 not numbered (1 error)\n',
    ]);
  });

  test('--diff shows the change and makes none', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    const { status, out } = await run(host, 'number', '--diff', 'a.cut');
    expect(status).toBe(0);
    expect(out).toBe(
      '--- a/a.cut\n+++ b/a.cut\n@@ -1,3 +1,4 @@\n cut 1\n time 1+0\n A: 1{late}--2..\n+cels A 1 1.1 1.2 2\n',
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

describe('new in-betweens from a key that leads on in the reused cut, too', () => {
  test.each([
    ['1--2..', '1---2..', '_ _ _ _ 1>2.1 1>2.2 1>2.3'],
    ['1--2..', '1--3..', '_ _ _ _ 1>3.1 1>3.2 3'],
    ['(1--2--)..', '1--2-3..', '_ _ _ _ _ _ 2>3.1 3'],
    ['(1--2--)..', '2-3..', '_ _ _ _ _ _ 2>3.1 3'],
    ['1--2--3..', '1--2-4..', '_ _ _ _ _ _ _ 2>4.1 4'],
    // Key 1 leads to two keys there, so the names of both passages have their second key.
    ['1-2 1-3..', '1---2..', '_ _ _ _ _ 1>2.1 1>2.2 1>2.3'],
  ])('source `%s`, here `%s`', async (source, here, cels) => {
    const host = memoryHost({
      'episode.yaml': '',
      '6.cut': `cut 6\ntime 2+0\nB: ${source}\n`,
      '9.cut': `cut 9\ntime 2+0\nlevel B reuse 6/B\nB: ${here}\n`,
    });
    const drawings = async () => (await run(host, 'export', '-t', 'drawings', '9.cut')).out;
    const before = await drawings();
    expect((await run(host, 'number', '9.cut')).error).toMatch(/\n1 cut: 1 numbered\n$/);
    expect(text(host, '9.cut')).toMatch(new RegExp(`\ncels B ${cels}\n$`));
    expect(await drawings()).toBe(before);
    const again = await run(host, 'number', '9.cut');
    expect([again.status, again.error]).toEqual([
      0,
      expect.stringMatching(/1 cut: 1 with nothing to add\n$/),
    ]);
  });

  test('their own numbers may be said by hand; those of the other cut may not', async () => {
    const cut = (cels: string) => ({
      'episode.yaml': '',
      '6.cut': 'cut 6\ntime 2+0\nB: (1--2--)..\n',
      '9.cut': `cut 9\ntime 2+0\nlevel B reuse 6/B\nB: 2-3 2--1..\ncels B ${cels}\n`,
    });
    const check = async (cels: string) => (await runOn(cut(cels), 'check', '9.cut')).error;
    expect(await check('_ _ _ _ _ _ 2>3.1 3')).not.toContain('Error');
    expect(await check('_ _ _ _ _ _ 2.1 3')).not.toContain('Error');
    expect(await check('1 1.1 1.2 2 2.1 2>1.2 2>3.1 3')).not.toContain('Error');
    expect(await check('_ _ _ _ _ _ 2>3.1 2>1.2')).toContain(
      'Drawing 2>1.2 is number 6 of level B in cut 6, not 8.',
    );
    expect(await check('_ _ _ _ 2>3.1')).toContain('Number 5 of level B in cut 6 is drawing 2.1');
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
    expect(error).toMatch(/^Error: From key 1 to key 2 level A has 3.*\na\.cut:3:12: number-two-counts$/m);
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
