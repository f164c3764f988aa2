import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('a dissolve is missing at the beginning, or at the end', () => {
  expect(said('overlap-missing', { cut: '7', way: 'in', frames: 24 })).toBe(
    'Cut 7 ends in a dissolve of 24 frames with this cut, which has no `overlap in`.',
  );
  expect(said('overlap-missing', { cut: '9', way: 'out', frames: 24 })).toMatch(
    /^Cut 9 begins in a dissolve .* no `overlap out`\.$/,
  );
  expect(said('overlap-alone', { way: 'in' })).toBe(
    'This is the first cut of the episode: there is no cut to dissolve from.',
  );
  expect(said('overlap-alone', { way: 'out' })).toBe(
    'This is the last cut of the episode: there is no cut to dissolve to.',
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
