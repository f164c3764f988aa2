import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('a fault of the CSV reader becomes a sentence', () => {
  expect(said('progress-faulty', { variant: 'no-csv', message: 'Invalid quote' })).toBe(
    'This is no CSV: invalid quote.',
  );
});

test('who had it done is told where somebody is named', () => {
  const row = { state: 'done', cut: '12', stage: 'key', date: '2027-03-19' } as const;
  expect(said('progress-twice', { ...row, person: 'L. Quoy' })).toContain('on 2027-03-19, L. Quoy;');
  expect(said('progress-twice', { ...row, person: '' })).toContain('on 2027-03-19;');
});

test('a cut is missed in a row, or under due', () => {
  expect(said('progress-cut', { inRow: true, cut: '9', guess: null })).toBe('The episode has no cut 9.');
  expect(said('progress-cut', { inRow: false, cut: '9', guess: null })).toBe(
    'A day is due for cut 9, which the episode does not have.',
  );
});
