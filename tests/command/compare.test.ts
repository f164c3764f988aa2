import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { run, runOn } from './run.js';

const cut = (number: string | number, line = 'A: 1--2..', time = '1+0') =>
  `cut ${number}\ntime ${time}\n${line}\n`;
const LONGER = 'A: 1:4--2..';
const NOTE = 'A: key 1 held 2 frames longer, 4 frames (was 2), from 0+1; what follows comes 2 frames later';

describe('two files', () => {
  const files = {
    'old.cut': cut(1),
    'now.cut': cut(1, LONGER),
    'same.cut': `# a remark\n${cut(1).replaceAll('\n', '\r\n')}`,
  };

  test('leave with 1 and the note where they differ, with 0 and nothing where they do not', async () => {
    expect(await runOn(files, 'compare', 'old.cut', 'now.cut')).toEqual({
      status: 1,
      out: `cut 1\n  ${NOTE}\n`,
      error: '',
    });
    expect(await runOn(files, 'compare', 'old.cut', 'same.cut')).toEqual({ status: 0, out: '', error: '' });
  });

  test('say the time in the heading, and nothing more where nothing more has changed', async () => {
    const { out } = await runOn(
      { ...files, 'time.cut': cut(1, undefined, '1+12') },
      'compare',
      'old.cut',
      'time.cut',
    );
    expect(out).toBe('cut 1  1+0 → 1+12\n');
  });

  test('are compared whatever their numbers', async () => {
    const { out } = await runOn({ ...files, 'two.cut': cut(2) }, 'compare', 'old.cut', 'two.cut');
    expect(out).toBe('cut 2\n  cut 2 (was 1)\n');
  });

  test('may come from standard input, one of them', async () => {
    const host = memoryHost(files);
    host.input = Buffer.from(files['now.cut']);
    expect((await run(host, 'compare', 'old.cut', '-')).out).toContain(NOTE);
    const both = await run(host, 'compare', '-', '-');
    expect(both.status).toBe(2);
    expect(both.error).toContain('Standard input can be only one of the two.');
  });

  test('with errors cannot be compared: 2, and the errors as usual', async () => {
    const host = memoryHost({ ...files, 'bad.cut': cut(1, 'A: 1') });
    for (const words of [
      ['bad.cut', 'now.cut'],
      ['old.cut', 'bad.cut'],
    ]) {
      const { status, out, error } = await run(host, 'compare', ...words);
      expect({ status, out }).toEqual({ status: 2, out: '' });
      expect(error).toContain('bad.cut:3:4: timeline-short');
    }
  });

  test('that are not there, or are no cut, are wrong use', async () => {
    const host = memoryHost({ ...files, 'house.cut': 'phrase walk = 1--2--\n' });
    const missing = await run(host, 'compare', 'old.cut', 'nwo.cut');
    expect(missing.status).toBe(2);
    expect(missing.error).toContain('did you mean `now.cut`?');
    const house = await run(host, 'compare', 'house.cut', 'now.cut');
    expect(house.status).toBe(2);
    expect(house.error).toContain('only what cuts share');
    expect((await run(host, 'compare', 'old.cut')).status).toBe(2);
    expect((await run(host, 'compare', 'old.cut', 'now.cut', 'same.cut')).status).toBe(2);
  });

  test('warnings of either are not of the note', async () => {
    const warned = cut(1, 'A: 1--2 1-2..');
    const { error, status } = await runOn({ 'a.cut': warned, 'b.cut': warned }, 'compare', 'a.cut', 'b.cut');
    expect({ error, status }).toEqual({ error: '', status: 0 });
  });
});

test('the examples of its help are no wrong use', async () => {
  const files = {
    'c012.cut': cut(12),
    'cuts/c012.cut': cut(12),
    'take-1/c012.cut': cut(12, LONGER),
    'episode.yaml': 'cuts: ["cuts/*.cut"]\n',
  };
  const { out } = await runOn({}, 'compare', '--help');
  const lines = [...out.split('Examples:')[1]!.matchAll(/^ {2}cutwright (.*?) {3}/gm)].map(
    ([, line]) => line!,
  );
  expect(lines.length).toBe(6);
  for (const line of lines) {
    const host = memoryHost(files);
    for (const rev of ['HEAD', 'HEAD~1', 'v1'])
      host.revisions.set(rev, memoryHost({ 'cuts/c012.cut': cut(12) }));
    const { status, error } = await run(host, ...line.split(' '));
    expect({ line, error: error.match(/error/) }).toEqual({ line, error: null });
    expect(status).toBeLessThan(2);
  }
});

test('--json tells everything in numbers, with the sentences of both languages', async () => {
  const files = { 'old.cut': cut(1), 'now.cut': cut(1, LONGER) };
  const { out, status } = await runOn(files, 'compare', 'old.cut', 'now.cut', '--json');
  expect(status).toBe(1);
  expect(JSON.parse(out)).toEqual({
    version: 1,
    old: 'old.cut',
    now: 'now.cut',
    cuts: [
      {
        cut: '1',
        title: '',
        fps: 24,
        time: { old: 24, now: 24 },
        changes: [
          {
            kind: 'exposure',
            level: 'A',
            first: { form: 'drawing', drawing: '1', kind: 'key', cel: 1, way: null },
            last: { form: 'drawing', drawing: '1', kind: 'key', cel: 1, way: null },
            count: 1,
            frames: { old: 2, now: 4 },
            from: { old: 1, now: 1 },
            inCycle: false,
            follows: { by: 2, last: null },
            place: { kind: 'level', level: 'A' },
            rows: { from: 1, to: 4 },
            en: NOTE,
            ja: 'A：原画1 を2コマ長く、4コマ（旧 2）、0+1から、以降2コマ後ろへ',
          },
        ],
      },
    ],
    onlyOld: [],
    onlyNow: [],
  });
  expect(JSON.parse((await runOn(files, 'compare', 'old.cut', 'old.cut', '--json')).out).cuts).toEqual([]);
});
