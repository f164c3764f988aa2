import { describe, expect, test } from 'vitest';
import { type Case, check, only } from './fault-check.js';

describe('numbers', () => {
  test.each<Case>([
    ['time 5 + 0', 'spaced-number', '5 + 0', 'time 5+0'],
    ['time 5 +0', 'spaced-number', '5 +0', 'time 5+0'],
    ['A: 3:1 + 0', 'spaced-number', '1 + 0', 'A: 3:1+0'],
    ["time 8 ' 04", 'spaced-number', "8 ' 04", "time 8'04"],
    ["time 8' 04", 'spaced-number', "8' 04", "time 8'04"],
    ["time 8'", 'glued-number', "8'", "time 8'00"],
    ['level BG size 560 x 200 mm', 'spaced-number', '560 x 200 mm', 'level BG size 560x200mm'],
    ['level BG at 3 mm,4', 'spaced-number', '3 mm', 'level BG at 3mm,4'],
    ['level BG size 560x200mmm', 'glued-number', '560x200mmm', 'level BG size 560x200mm'],
    ['A: 1 12abc', 'glued-number', '12abc', 'A: 1 12 abc'],
    ['A: 1.1A', 'glued-number', '1.1A', 'A: 1.1a'],
    ['A: 1.2.3', 'glued-number', '1.2.3', null],
    ['A: 1:12345678901', 'number-too-large', '12345678901', null],
    ['level BG at .5,0', 'stray-dot', '.5', 'level BG at 0.5,0'],
    ['sound 1...5 "x"', 'stray-dot', '1...5', 'sound 1..5 "x"'],
    ['A: 6...', 'stray-dot', '6...', 'A: 6..'],
    ['A: 6 ...', 'stray-dot', '...', 'A: 6 ..'],
    ['A: 6.', 'stray-dot', '.', 'A: 6..'],
  ])('%s', (...one) => check(one));

  test('a blank between digits is not one number', () => {
    expect(only('A: 1--2 60%')).toMatchObject({ code: 'does-not-fit', at: '60%' });
  });
});

describe('characters of no use', () => {
  test.each<Case>([
    ['A: 1 ; 2', 'unknown-character', ';', 'A: 1  2'],
    ['A: [1--2]..', 'unknown-character', '[', 'A: (1--2)..'],
    ['A: [1--2).. ', 'unknown-character', '[', 'A: (1--2).. '],
    ['sound 1+6〜2+20 "x"', 'unknown-character', '〜', 'sound 1+6..2+20 "x"'],
    ['A: (1--2)×3', 'times-sign', '×3', 'A: (1--2)*3'],
    ['A: 1… 2..', 'unknown-character', '…', null],
    ['A: 1…', 'unknown-character', '…', 'A: 1..'],
    ['A: 1～', 'unknown-character', '～', 'A: 1..'],
    ['pan A@1 → B@9', 'unknown-character', '→', 'pan A@1 > B@9'],
    // As on Japanese sheets: keys are circled, a filled circle is an in-between.
    ['A：①ーー②。。', 'unknown-character', '①', 'A：1ーー2。。'],
    ['A: ①②③-⑳..', 'unknown-character', '①', 'A: 1 2 3-20..'],
    ['A: 1②..', 'unknown-character', '②', 'A: 1 2..'],
    ['level B reuse ㊱/B', 'unknown-character', '㊱', 'level B reuse 36/B'],
    ['A: 1--2 ●-3..', 'unknown-character', '●', 'A: 1--2 --3..'],
    ['A: 1●●2..', 'unknown-character', '●', 'A: 1--2..'],
    ['A: ①●②..', 'unknown-character', '①', 'A: 1-2..'],
  ])('%s', (...one) => check(one));

  test('that look like a sign are asked about by it', () => {
    expect(only('A: [1--2]..').message).toContain('did you mean `(`?');
    expect(only('A: 1 ; 2').message).not.toContain('did you mean');
  });
});

describe('a number with something glued on', () => {
  test.each<Case>([
    ['level BG at 3MM,4', 'glued-number', '3MM', 'level BG at 3mm,4'],
    ['level BG at 3inn,4', 'glued-number', '3inn', 'level BG at 3in,4'],
    ['A: 1 2walk', 'glued-number', '2walk', 'A: 1 2 walk'],
    // A unit of time is no phrase.
    ['A: 1 2:12コマ 3..', 'glued-number', '12コマ', 'A: 1 2:12 3..'],
  ])('%s', (...one) => check(one));
});
