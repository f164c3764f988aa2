/** What levels show, in Japanese. */

import { describe, expect, test } from 'vitest';
import { drawings } from '../../../src/words/ja/change-drawings-ja.js';
import {
  between,
  cycle,
  cycleChange,
  EMPTY,
  exposure,
  inBetweens,
  key,
  moved,
  replaced,
  say,
  shown,
} from '../sentence-samples.js';

const told = (body: Parameters<typeof say>[1], rows: Parameters<typeof say>[2] = null) =>
  say(drawings, body, rows);
const a = between('1.1', 2, '1', '2');

describe('a hold', () => {
  test('of one drawing says how much longer or shorter', () => {
    expect(told(exposure())).toBe('A：原画1 を4コマ長く、16コマ（旧 12）、0+1から');
    expect(told(exposure({ first: a, last: a, frames: { old: 3, now: 2 }, inCycle: true }))).toBe(
      'A：A2（1.1） を1コマ短く、2コマ（旧 3）、0+1から、リピート毎回',
    );
  });

  test('of several drawings says what each has', () => {
    const several = exposure({ last: key('3'), count: 3, frames: { old: 2, now: 3 } });
    expect(told(several)).toBe('A：原画1～3（3か所）各3コマ（旧 2）、0+1から');
    expect(told({ ...several, first: a })).toMatch(/^A：A2（1\.1）～原画3（3か所）/);
  });

  test('says what follows, and up to where', () => {
    expect(told(exposure({ follows: { by: 4, last: null } }))).toMatch(/、以降4コマ後ろへ$/);
    expect(told(exposure({ follows: { by: -4, last: cycle('2', '3') } }))).toMatch(
      /、以降リピート2～3まで4コマ前へ$/,
    );
  });
});

describe('what comes earlier or later', () => {
  test('one thing, or several by their ends', () => {
    expect(told(moved())).toBe('A：原画2 を6コマ後ろへ、0+19から（旧 0+13）');
    expect(told(moved({ last: key('4'), by: -6 }))).toBe('A：原画2～4 を6コマ前へ、0+19から（旧 0+13）');
  });

  test('everything to the end by the first, where its numbers fall', () => {
    expect(told(moved({ last: key('1'), toEnd: true }))).toBe(
      'A：原画2以降 を6コマ後ろへ、0+19から（旧 0+13）',
    );
  });
});

describe('what is shown', () => {
  test('is added where it is new, and shown again where it is not', () => {
    expect(told(replaced({ now: shown([key('7')]) }))).toBe('A：原画7 追加、0+13から2コマ');
    expect(told(replaced({ now: shown([key('7'), key('2')], false) }))).toBe(
      'A：原画7、原画2 をもう一度、0+13から4コマ',
    );
  });

  test('is dropped, or not shown again', () => {
    expect(told(replaced({ old: shown([key('7')]) }))).toBe('A：原画7 削除（旧 0+9から2コマ）');
    expect(told(replaced({ old: shown([key('7')], false) }))).toBe(
      'A：原画7 のくり返しなし（旧 0+9から2コマ）',
    );
  });

  test('stands in the place of something else, with its time where that differs', () => {
    const [now, old] = [shown([key('7')]), shown([a])];
    expect(told(replaced({ now, old }))).toBe('A：0+13から 原画7（旧 中割り1枚）');
    expect(told(replaced({ now: shown([key('7')], true, 6), old }))).toBe(
      'A：0+13から 原画7（旧 中割り1枚）、6コマ（旧 2）',
    );
  });

  test('two in-betweens of one name are told apart by their keys', () => {
    expect(told(replaced({ now: shown([between('1.1', 2, '1', '3')]), old: shown([a]) }))).toBe(
      'A：0+13から A2（1>3.1）（旧 A2（1>2.1））',
    );
  });

  test('nothing comes and goes as an empty cel', () => {
    expect(told(replaced({ now: shown([EMPTY]) }))).toBe('A：0+13から2コマ空セル');
    expect(told(replaced({ old: shown([EMPTY]) }))).toBe('A：空セルなし（旧 0+9から2コマ）');
  });

  test('takes the time of its neighbour, or gives it', () => {
    expect(told(replaced({ now: shown([key('7')]), holder: key('3') }))).toMatch(/、原画3の止メを短く$/);
    expect(told(replaced({ old: shown([key('7')]), holder: key('3') }))).toMatch(/、原画3の止メを長く$/);
    expect(told(replaced({ now: shown([key('7')]), holder: EMPTY }))).toMatch(/、空セルを短く$/);
  });
});

describe('in-betweens of a passage', () => {
  test('are counted, new ones and those that are gone named', () => {
    expect(told(inBetweens({ added: [{ drawing: '1.3', cel: 4 }] }))).toBe(
      'A：原画1→2 中割り3枚（旧 2枚）、0+3から、追加 A4（1.3）',
    );
    expect(told(inBetweens({ count: { old: 1, now: 0 }, dropped: [{ drawing: '1.1', cel: 2 }] }))).toBe(
      'A：原画1→2 中なし（旧 1枚）、0+3から、削除 A2（1.1）',
    );
  });

  test('more of them take the time of a hold, fewer give it', () => {
    expect(told(inBetweens({ holder: key('2') }))).toMatch(/、原画2の止メを短く$/);
    expect(told(inBetweens({ holder: key('2'), count: { old: 3, now: 2 } }))).toMatch(/、原画2の止メを長く$/);
  });

  test('lie elsewhere on the way', () => {
    const drawing = { drawing: '1.2', cel: 3, old: 2 / 3, now: 0.5 };
    expect(told({ kind: 'places', level: 'A', from: '1', to: '2', drawings: [drawing] })).toBe(
      'A：原画1→2 の割り A3 (1.2) 1/2（旧 2/3）',
    );
  });

  test('a chart is told by its name, one that was marked by its shares', () => {
    const chart = (old: string, now: string) =>
      told({
        kind: 'chart',
        level: 'A',
        from: '1',
        to: '2',
        chart: { old, now },
        fractions: { old: [1 / 3, 2 / 3], now: [0.25, 0.5] },
      });
    expect(chart('early', 'both')).toBe('A：原画1→2 のツメ 両ヅメ（旧 先ヅメ）');
    expect(chart('even', 'fractions')).toBe('A：原画1→2 のツメ 1/4 1/2（旧 均等）');
  });

  test('one becomes a breakdown, or is none any more', () => {
    const breakdown = { kind: 'breakdown', level: 'A', drawing: '1.1', cel: 2 } as const;
    expect(told({ ...breakdown, now: true })).toBe('A：A2（1.1）を中割り参考に');
    expect(told({ ...breakdown, now: false })).toBe('A：A2（1.1）は中割り参考でなくす');
  });
});

describe('a cycle', () => {
  test('runs more or fewer times, or lasts longer or shorter', () => {
    expect(told(cycleChange())).toBe('B：リピート1～2 4回（旧 3）、1+1から');
    expect(told(cycleChange({ what: 'length', frames: { old: 24, now: 30 } }))).toBe(
      'B：リピート1～2 1+6（旧 1+0）、1+1から',
    );
  });

  test('goes there and back, or one way', () => {
    expect(told(cycleChange({ what: 'bounce', bounce: { old: false, now: true } }))).toBe(
      'B：リピート1～2 往復（旧 片道）、1+1から',
    );
    expect(told(cycleChange({ what: 'bounce', bounce: { old: true, now: false } }))).toBe(
      'B：リピート1～2 片道（旧 往復）、1+1から',
    );
  });
});

test('a key in another’s place', () => {
  expect(told({ kind: 'key', level: 'A', frame: 25, old: '2', now: '2a' })).toBe(
    'A：原画2a（旧 原画2）、1+1から',
  );
});

describe('numbers', () => {
  const renumbered = (...numbers: [old: number, now: number][]) =>
    told({
      kind: 'renumbered',
      level: 'A',
      numbers: numbers.map(([old, now]) => ({ drawing: `${old}`, old, now })),
    });

  test('that move alike are told as a run', () => {
    expect(renumbered([2, 5], [4, 7], [5, 8])).toBe('A：番号変更 A2→A5、A4～5→A7～8');
  });

  test('in more than six runs are told by the first six, and how many they are', () => {
    const many = [1, 3, 5, 7, 9, 11, 13].map((old): [number, number] => [old, old + 20]);
    expect(renumbered(...many)).toMatch(/、A11→A31 …（7枚）$/);
  });
});

test('rows that show something else, where it is known which', () => {
  expect(told({ kind: 'rows', level: 'A' }, { from: 3, to: 8 })).toBe('A：0+3～0+8 別の絵');
  expect(told({ kind: 'rows', level: 'A' })).toBe('A：別の絵');
});
