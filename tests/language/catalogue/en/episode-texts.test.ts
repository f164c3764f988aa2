import { describe, expect, it, test } from 'vitest';
import type { UnreadableScan } from '../../../../src/language/catalogue/episode-codes.js';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { diagnose } from '../../../../src/language/diagnostic.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('an overlap is missing at the beginning, or at the end', () => {
  expect(said('overlap-missing', { cut: '7', way: 'in', frames: 24 })).toBe(
    'Cut 7 ends in an overlap of 24 frames with this cut, which has no `overlap in`.',
  );
  expect(said('overlap-missing', { cut: '9', way: 'out', frames: 24 })).toMatch(
    /^Cut 9 begins in an overlap .* no `overlap out`\.$/,
  );
  expect(said('overlap-alone', { way: 'in' })).toBe(
    'This is the first cut of the episode: there is no cut to overlap with.',
  );
  expect(said('overlap-alone', { way: 'out' })).toBe(
    'This is the last cut of the episode: there is no cut to overlap with.',
  );
});

test('a neighbour without a number is told by its file', () => {
  const unchecked = (cut: string, why: 'unreadable' | 'errors') =>
    said('overlap-unchecked', { neighbour: { cut, file: 'c008.cut' }, why });
  expect(unchecked('8', 'errors')).toBe(
    'Whether cut 8 names the same length cannot be told: there are errors in its text.',
  );
  expect(unchecked('', 'unreadable')).toBe(
    'Whether `c008.cut` names the same length cannot be told: it cannot be read.',
  );
});

test('a level that shows nothing reuses nothing', () => {
  const nothing = (here: string[]) =>
    said('reuse-nothing', { level: 'A', here, cut: '8', of: 'C', there: ['1', '2'] });
  expect(nothing([])).toBe('Level A shows no drawing, and level C of cut 8 has 1, 2: nothing is reused.');
  expect(nothing(['3'])).toMatch(/^Level A shows 3, and/);
});

test('six numbers of many are named', () => {
  const twice = (count: number) =>
    said('reuse-twice', {
      cut: '9',
      as: 'A',
      cels: Array.from({ length: count }, (_, i) => i + 4),
      from: '8',
      of: 'C',
    });
  expect(twice(6)).toMatch(/^Cut 9 adds C4, C5, C6, C7, C8, C9 to level C of cut 8,/);
  expect(twice(7)).toMatch(/^Cut 9 adds C4, C5, C6, C7, C8, C9 … to level C/);
});

describe('cut list texts', () => {
  const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
    messageOf({ code, parameters }, 'en');

  test('a cut of the list has errors, warnings, or both', () => {
    const of = (errors: number, warnings: number, timed = true) =>
      said('list-cut-errors', { cut: '8', errors, warnings, timed, file: 'c008.cut' });
    expect(of(1, 0)).toBe(
      'Cut 8 has 1 error, so its figures may change; `cutwright check c008.cut` says what is wrong.',
    );
    expect(of(2, 1)).toContain('Cut 8 has 2 errors and 1 warning, so');
    expect(of(0, 2)).toContain('Cut 8 has 2 warnings, so');
    expect(of(1, 0, false)).toContain('so not even its time is known;');
  });

  test('a budget is told in seconds and frames, and as least where cuts have no time', () => {
    const over = { running: 130, over: 1, budget: 129, fps: 24 };
    expect(said('list-over-budget', { ...over, untimed: 0 })).toBe(
      'The cuts run 5+10, which is 0+1 (1 frame) over the budget of 5+9.',
    );
    expect(said('list-over-budget', { ...over, untimed: 2 })).toMatch(/^The cuts run at least 5\+10,/);
  });
});

describe('handover texts', () => {
  const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
    messageOf({ code, parameters }, 'en');

  test('an overlap that only one of two cuts names', () => {
    expect(said('edit-overlap', { variant: 'uneven', before: '7', out: 24, after: '8', into: null })).toBe(
      'Cut 7 has `overlap out 24`, but cut 8, which follows, has no `overlap in`.',
    );
    expect(said('edit-overlap', { variant: 'uneven', before: '7', out: null, after: '8', into: 12 })).toBe(
      'Cut 7 has no `overlap out`, but cut 8, which follows, has `overlap in 12`.',
    );
  });

  test('a picture is too tall or too flat for the field', () => {
    const shape = (by: number) =>
      said('pixels-shape', {
        cut: '8',
        field: { widthMm: 254, heightMm: 140 },
        output: { width: 1920, height: 1080 },
        by,
      });
    expect(shape(21.6)).toContain('22 pixels too tall for it');
    expect(shape(-3)).toContain('3 pixels too flat for it');
  });
});

const span = { file: 'a.cut', start: 0, end: 0 };
const unreadable = (reason: UnreadableScan, others = 0) =>
  messageOf(diagnose('scan-unreadable', span, { file: 'A1.png', level: 'A', reason, others }), 'en');

describe('a scan that cannot be read', () => {
  test.each([
    [{ why: 'machine', reason: 'permission denied' }, 'permission denied'],
    [{ why: 'format' }, 'it is no PNG, JPEG or WebP'],
    [{ why: 'broken' }, 'it is cut off or damaged'],
    [
      { why: 'size', width: 20000, height: 300, most: 16384, mostMillions: 128 },
      'it is 20000 × 300 pixels; 16384 on a side and 128 million in all are the most',
    ],
  ] as const)('%j', (reason, words) => {
    expect(unreadable(reason)).toBe(`\`A1.png\` cannot be shown: ${words}.`);
  });

  it('counts those that are like it', () => {
    expect(unreadable({ why: 'broken' }, 1)).toContain('for 1 more drawing of level A.');
    expect(unreadable({ why: 'broken' }, 3)).toContain('for 3 more drawings of level A.');
  });
});

it('says of a scan that lies elsewhere what is allowed, with and without an episode', () => {
  const outside = (inEpisode: boolean) =>
    messageOf(diagnose('scan-outside', span, { path: '../a.png', inEpisode }), 'en');
  expect(outside(true)).toContain('not below the folder of the episode');
  expect(outside(false)).toContain('without an episode.yaml');
});
