import { describe, expect, test } from 'vitest';
import { piecesOf } from '../../../src/language/format/format-pieces.js';
import { gapsOf } from '../../../src/language/format/token-gaps.js';

/** The statement with its gaps, but for the blank behind a heading, which its width decides: nothing, `_` for a blank that keeps, `|` for a place to break, ` ` for a blank to break at. */
function gaps(text: string): string {
  const [piece] = piecesOf('this.cut', text);
  if (piece?.kind !== 'statement') throw new Error('not read');
  const signs = { none: '', keep: '_', soft: '|', blank: ' ' };
  return gapsOf(piece.statement, piece.tokens)
    .map((gap, i) => signs[gap] + piece.tokens[i]!.text)
    .join('');
}

describe('gaps', () => {
  test.each([
    ['cut 1 "x"', 'cut_1 "x"'],
    ['stack BG A', 'stack_BG A'],
    ['time 5+0', 'time_5+0'],
    ['level BG size 560x200mm at -20,8 free', 'level_BG size_560x200mm at_-20,8 free'],
    ['level C reuse 8/C', 'level_C reuse_8/C'],
    ['sound hit+2..hit-3 "x"', 'sound_hit+2..hit-3 "x"'],
    ['expose B 0%>100% 1..24', 'expose_B 0%>100% 1..24'],
    ['pan A@1 > B@9 carry A,B', 'pan_A@1 >_B@9 carry_A,B'],
  ])('%s', (typed, laid) => {
    expect(gaps(typed)).toBe(laid);
  });

  test('between items are those of keys and in-betweens', () => {
    expect(gaps('A: 1--2 3')).toBe('A:1|--2 3');
    expect(gaps('A: 1:4 -:2 2')).toBe('A:1:4|-:2 2');
    expect(gaps('A: (1-)*2 x on 3 2')).toBe('A:(1|-)*2 x on_3_2');
    expect(gaps('A: 1 @5 2')).toBe('A:1 @5_2');
  });

  test('a dash keeps off the name of a mark', () => {
    expect(gaps('A: 1:hit -2')).toBe('A:1:hit -2');
  });

  test('a word that is tied keeps its row', () => {
    expect(gaps('sound 1..9 "a" @5 "b"')).toBe('sound_1..9 "a" @5_"b"');
  });
});
