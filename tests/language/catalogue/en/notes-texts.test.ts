import { expect, test } from 'vitest';
import { actionOf, noteOf } from '../../../../src/language/message.js';

test('one in-between was, two were', () => {
  expect(noteOf({ note: 'pinned-even', inbetweens: 1 }, 'en')).toBe(
    '1 in-between was pinned here, evenly spaced where no chart says how',
  );
  expect(noteOf({ note: 'pinned-even', inbetweens: 2 }, 'en')).toMatch(/^2 in-betweens were pinned here/);
  expect(noteOf({ note: 'drawn-for', drawings: 1, cut: '8' }, 'en')).toBe('it was drawn for cut 8');
  expect(noteOf({ note: 'drawn-for', drawings: 2, cut: '8' }, 'en')).toBe('they were drawn for cut 8');
});

test('a neighbour stands before, or after', () => {
  const neighbour = { cut: '8', file: 'c008.cut' };
  expect(noteOf({ note: 'neighbour-stands', neighbour, way: 'in' }, 'en')).toBe(
    'cut 8 stands before this cut',
  );
  expect(noteOf({ note: 'neighbour-stands', neighbour, way: 'out' }, 'en')).toBe(
    'cut 8 stands after this cut',
  );
});

test('one drawing is named, several from the first on', () => {
  expect(actionOf({ action: 'name-drawings', count: 1, name: '1>2.1' }, 'en')).toBe('name it `1>2.1`');
  expect(actionOf({ action: 'name-drawings', count: 2, name: '1>2.1' }, 'en')).toBe(
    'name them `1>2.1` and so on',
  );
});

test('one number is left unused, or several are', () => {
  expect(actionOf({ action: 'unpin-names', names: ['1.2'] }, 'en')).toBe(
    'mark the number of 1.2 as not used',
  );
  expect(actionOf({ action: 'unpin-names', names: ['1.2', '1.3'] }, 'en')).toBe(
    'mark the numbers of 1.2 1.3 as not used',
  );
});

test('each sign of several stands in backquotes', () => {
  expect(actionOf({ action: 'write-each', written: ['(', ')'] }, 'en')).toBe('write `(` and `)`');
});
