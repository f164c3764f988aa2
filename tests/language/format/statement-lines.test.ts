import { describe, expect, test } from 'vitest';
import { breakLines, type LineAtom } from '../../../src/language/format/statement-lines.js';

const atom = (text: string, more: Partial<LineAtom> = {}): LineAtom => ({
  text,
  blank: true,
  depth: 0,
  second: false,
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
