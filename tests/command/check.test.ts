import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run, runOn } from './run.js';

const SHORT = 'cut 2\ntime 1+0\nA: 1 2\n';
/** A warning and nothing else: level B never shows anything. */
const WARNS = 'cut 3\ntime 1+0\nA: 1..\nB: x..\n';

describe('check', () => {
  test('a cut with nothing wrong', async () => {
    expect(await runOn({ 'a.cut': CUT }, 'check', 'a.cut')).toEqual({
      status: 0,
      out: '',
      error: '1 cut checked: nothing wrong\n',
    });
  });

  test('shows the line and a caret', async () => {
    const { status, error } = await runOn({ 'a.cut': SHORT }, 'check', 'a.cut');
    expect(status).toBe(1);
    expect(error).toMatch(/^Error: .*\na\.cut:3:\d+: timeline-short\n {4}A: 1 2\n {4} +\^+\n/);
    expect(error).toMatch(/\n1 cut checked: 1 error\n$/);
  });

  test('every problem of every file in one run, and a missing file stops nobody', async () => {
    const { status, error } = await runOn(
      { 'a.cut': SHORT, 'b.cut': `${SHORT}zzz\n`, 'c.cut': CUT },
      'check',
      'a.cut',
      'nope.cut',
      'b.cut',
      'c.cut',
    );
    expect(status).toBe(2);
    expect(error.match(/^\S+: [a-z-]+$/gm)).toEqual([
      'nope.cut: file-missing',
      expect.stringMatching(/^a\.cut:3.*short/),
      expect.stringMatching(/^b\.cut:3.*short/),
      expect.stringMatching(/^b\.cut:4.*unknown-word/),
    ]);
    expect(error).toMatch(/\n3 cuts checked: 4 errors\n$/);
  });

  test('warnings leave with 0, and with 1 where --strict asks for it', async () => {
    expect(await runOn({ 'a.cut': WARNS }, 'check', 'a.cut')).toMatchObject({
      status: 0,
      error: expect.stringContaining('1 warning'),
    });
    expect(await runOn({ 'a.cut': WARNS }, 'check', 'a.cut', '--strict')).toMatchObject({ status: 1 });
    expect(await runOn({ 'a.cut': CUT }, 'check', 'a.cut', '--strict')).toMatchObject({ status: 0 });
  });

  test('hints never count', async () => {
    const hint = 'cut 1\ntime 5+0\nA: 1..\nsound 1+0..2+0 "bell"\n';
    const { status, error } = await runOn({ 'a.cut': hint }, 'check', 'a.cut', '--strict');
    expect(error).toMatch(/^Hint: /m);
    expect(status).toBe(0);
  });

  test('reads standard input', async () => {
    const host = memoryHost();
    host.input = Buffer.from(SHORT);
    const { status, error } = await run(host, 'check', '-');
    expect(status).toBe(1);
    expect(error).toMatch(/^standard input:3:/m);
  });

  test('says once what is wrong with what several cuts use, and with their manifest', async () => {
    const files = {
      'episode.yaml': 'fsp: 24\n',
      'house.cut': 'phrase = 1\nphrase walk = 1--2--\n',
      'a.cut': `use "house.cut"\n${CUT}`,
      'b.cut': `use "house.cut"\n${CUT.replace('cut 1', 'cut 2')}`,
    };
    const { error } = await runOn(files, 'check', '.');
    expect(error.match(/^episode\.yaml:/gm)).toHaveLength(1);
    expect(error.match(/^house\.cut:/gm)).toHaveLength(1);
    expect(error).toMatch(/\n2 cuts checked: 2 errors\n$/);
  });

  test('a shared file by itself', async () => {
    expect(await runOn({ 'h.cut': 'phrase walk = 1--2--\n' }, 'check', 'h.cut')).toMatchObject({
      status: 0,
      error: '1 shared file checked: nothing wrong\n',
    });
  });

  test('one cut twice in an episode is a warning; outside one nobody knows', async () => {
    const cuts = { 'a.cut': CUT, 'b.cut': CUT };
    expect((await runOn({ ...cuts, 'episode.yaml': '' }, 'check', '.')).error).toContain(
      'Cut 1 is already the number of `a.cut`.',
    );
    expect((await runOn(cuts, 'check', '.')).error).not.toContain('cut-twice');
  });

  test('artists of cuts that are not there are looked at only when the whole episode is', async () => {
    const files = { 'episode.yaml': 'artists: { M. Arai: [1, 9] }\n', 'a.cut': CUT };
    expect((await runOn(files, 'check', '.')).error).toContain('The episode has no cut 9.');
    expect((await runOn(files, 'check', 'a.cut')).error).not.toContain('no cut 9');
  });
});

describe('the form of problems', () => {
  test('JSON is one document for the whole run, with nothing beside it', async () => {
    const { status, out, error } = await runOn(
      { 'a.cut': SHORT, 'b.cut': WARNS },
      'check',
      '--format',
      'json',
      'a.cut',
      'b.cut',
      'nope.cut',
    );
    expect([status, out]).toEqual([2, '']);
    const { diagnostics } = JSON.parse(error);
    expect(diagnostics).toMatchObject([
      { code: 'timeline-short', place: { file: 'a.cut', start: { line: 3 } } },
      { code: 'level-empty', place: { file: 'b.cut', start: { line: 4 } } },
      { code: 'file-missing', place: { file: 'nope.cut', start: null } },
    ]);
  });

  test('JSON with nothing wrong is an empty list', async () => {
    expect(
      JSON.parse((await runOn({ 'a.cut': CUT }, 'check', '--format=json', 'a.cut')).error).diagnostics,
    ).toEqual([]);
  });

  test('annotations stand on their lines', async () => {
    const { error } = await runOn({ 'a.cut': SHORT }, 'check', '--format', 'github', 'a.cut');
    expect(error).toMatch(/^::error file=a\.cut,line=3,.*title=timeline-short::/);
  });

  test('colour only on a terminal, and never with NO_COLOR', async () => {
    const coloured = async (colour: boolean, no: boolean) => {
      const host = Object.assign(memoryHost({ 'a.cut': SHORT }), { colour });
      if (no) host.variables.set('NO_COLOR', '1');
      return (await run(host, 'check', 'a.cut')).error.includes('\u001b[');
    };
    expect([await coloured(false, false), await coloured(true, false), await coloured(true, true)]).toEqual([
      false,
      true,
      false,
    ]);
  });

  test('the same run says the same', async () => {
    const files = { 'a.cut': `${SHORT}zzz\n"`, 'b.cut': WARNS, 'episode.yaml': 'fsp: 1' };
    const once = await runOn(files, 'check', '.');
    expect(await runOn(files, 'check', '.')).toEqual(once);
  });
});
