import { expect, test } from 'vitest';
import { noteOf } from '../../../../src/language/message.js';

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
