import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('what does not fit a truck says what a truck does', () => {
  const meant = (statement: string) =>
    said('does-not-fit', { variant: 'level-meant', found: '100%', statement } as Messages['does-not-fit']);
  expect(meant('truck')).toMatch(/with the word `level` before it, and `truck` alone moves the camera/);
  expect(meant('turn')).toBe('`100%` does not fit here; a level is meant, with the word `level` before it.');
});

test('of several things that could stand there each is named', () => {
  expect(said('does-not-fit', { variant: 'wanted', found: '3', wanted: ['in-or-out', '`white`'] })).toBe(
    '`3` does not fit here, where the word `in` or `out` or `white` should stand.'.replace(
      'or `white`',
      'or `white`',
    ),
  );
});

test('a statement that stops short is named by its word, a timeline as one', () => {
  const short = (statement: string) => said('stops-short', { statement, wanted: ['drawings'], last: ':' });
  expect(short('')).toBe('The timeline stops too soon: a drawing such as 1 or - should follow `:`.');
  expect(short('phrase')).toMatch(/^The `phrase` statement stops too soon:/);
});

test.each([
  ['seconds', 'Seconds and frames'],
  ['feet', 'Feet and frames'],
  ['unit', 'A number and its unit'],
] as const)('blanks inside %s', (parts, begins) => {
  expect(said('spaced-number', { parts, joined: '5+0' })).toBe(
    `${begins} are written with no blanks between: 5+0.`,
  );
});
