import { describe, expect, test } from 'vitest';
import { piecesOf } from '../../../src/language/format/format-pieces.js';
import { breakLines, gapsOf, type LineAtom } from '../../../src/language/format/statement-lines.js';

const atom = (text: string, more: Partial<LineAtom> = {}): LineAtom => ({
  text,
  blank: true,
  depth: 0,
  second: false,
  drawing: false,
  startsLine: false,
  ...more,
});
/** Widths of the lines that so many atoms of ten columns make; the head is `A: `, as wide as the indent. */
const broken = (atoms: readonly LineAtom[]) => breakLines('A: ', atoms, '   ');
const tens = (count: number, more: (i: number) => Partial<LineAtom> = () => ({})) =>
  Array.from({ length: count }, (_, i) => atom(`item${String(i).padStart(5, '0')}`, more(i)));

describe('a line that grows too long', () => {
  test('fits a hundred columns as it is', () => {
    // 3 + 9 · 9 + 8 blanks = 92.
    expect(broken(tens(9))).toHaveLength(1);
    expect(broken(tens(10))).toHaveLength(2);
  });

  test('is broken at the last blank, and goes on under the indent without it', () => {
    const [first, second] = broken(tens(12));
    expect(first!.endsWith('item00008')).toBe(true);
    expect(second!.startsWith('   item00009')).toBe(true);
  });

  test('is rather broken at a whole second within reach', () => {
    const [first] = broken(tens(12, (i) => ({ second: i === 7 })));
    expect(first!.endsWith('item00006')).toBe(true);
  });

  test('is not broken at a second that would leave it half empty', () => {
    const [first] = broken(tens(12, (i) => ({ second: i === 3 })));
    expect(first!.endsWith('item00008')).toBe(true);
  });

  test('is rather broken outside a group', () => {
    const [first] = broken(tens(12, (i) => ({ depth: i >= 7 ? 1 : 0, blank: true })));
    expect(first!.endsWith('item00005')).toBe(true);
  });

  test('is broken where no blank stands, if there is none', () => {
    const lines = broken(tens(20, () => ({ blank: false })));
    expect(lines.map((line) => line.length)).toEqual([93, 93]);
  });

  test('keeps the breaks before drawings, and is filled anew between them', () => {
    const lines = broken(tens(24, (i) => ({ drawing: i % 2 === 0, startsLine: i === 3 || i === 4 })));
    expect(lines.map((line) => line.trim().replace('A: ', '').split(' ').length)).toEqual([4, 9, 9, 2]);
  });

  test('loses nothing', () => {
    const atoms = tens(57, (i) => ({ blank: i % 3 > 0, depth: i % 2, second: i % 7 === 0 }));
    expect(broken(atoms).join('').replace(/[ A:]/g, '')).toBe(atoms.map(({ text }) => text).join(''));
  });

  test('stays where it is with what fits no line', () => {
    const long = 'x'.repeat(120);
    expect(broken([atom(long)])).toEqual([`A: ${long}`]);
    expect(broken([atom('a'), atom(long), atom('b')])[0]).toBe(`A: a ${long}`);
  });
});

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
