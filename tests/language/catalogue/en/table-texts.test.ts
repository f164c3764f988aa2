import { describe, expect, test } from 'vitest';
import { tables } from '../../../../src/language/catalogue/en/table-texts.js';

const COUNTS = { drawings: 5, keys: 1, breakdowns: 0, inbetweens: 4, reused: 2, backgrounds: 0 };

describe('the cut list', () => {
  const { list } = tables;

  test.each([
    [null, false, '1 cut, running time 7+6'],
    [null, true, '1 cut, running time at least 7+6'],
    [{ budget: '8+0', by: null }, false, '1 cut, running time 7+6; budget 8+0: to the frame'],
    [
      { budget: '8+0', by: { length: '0+18', over: false } },
      false,
      '1 cut, running time 7+6; budget 8+0: 0+18 under',
    ],
    [
      { budget: '7+0', by: { length: '0+6', over: true } },
      false,
      '1 cut, running time 7+6; budget 7+0: 0+6 over',
    ],
  ])('the budget %j', (budget, least, sentence) =>
    expect(list.running(1, '7+6', least, budget)).toBe(sentence),
  );

  test('drawings by their sorts; backgrounds where there are any', () => {
    expect(list.drawings(COUNTS, '2.0')).toBe(
      '5 drawings: 1 key, 0 breakdowns, 4 in-betweens; 2 reused; 2.0 new ones a second',
    );
    expect(list.drawings({ ...COUNTS, backgrounds: 1 }, '2.0')).toContain('; 1 background besides; 2.0 new');
  });

  test('cuts with errors, and what is not known of them', () => {
    expect(list.unsound(2, 0)).toBe('2 cuts with errors (!): counted as far as could be read, not printed');
    expect(list.unsound(2, 1)).toMatch(/not printed; the time of 1 is not known and not in the total$/);
  });
});

describe('the list since a revision', () => {
  const { since } = tables;

  test.each([
    [0, 3, false, 'no cut differs; 3 with the same time and number of drawings'],
    [1, 0, false, '1 cut differs'],
    [
      2,
      1,
      true,
      '2 cuts differ; 1 with the same time and number of drawings; the cuts stand in another order',
    ],
  ])('%i differ, %i do not', (differ, unchanged, reordered, sentence) =>
    expect(since.differ(differ, unchanged, reordered)).toBe(sentence),
  );

  test('totals then and now, and what became of them', () => {
    expect(since.episode('v2', 1, 2, '1+0', false, null)).toBe('v2: 1 cut, 2 drawings, running time 1+0');
    expect(since.episode(null, 1, 2, '1+0', true, null)).toBe(
      'now: 1 cut, 2 drawings, running time at least 1+0',
    );
    expect(since.runs('0+0', 'same')).toBe('it runs as long as before');
    expect(since.runs('0+4', 'shorter')).toBe('it runs 0+4 shorter');
    expect(since.budget('2+0', 'larger')).toBe('the budget is 2+0 larger');
  });
});

test('progress: cuts through, and late ones by stage and day', () => {
  const { progress } = tables;
  expect(progress.summary(3, '2027-02-01', 1, 2)).toBe(
    '3 cuts on 2027-02-01: 1 through the last stage, 2 retakes',
  );
  expect(progress.late(1, 'key', '2027-01-31', ['4', '5A'])).toBe(
    'late by 1 day: key, due 2027-01-31: 4, 5A',
  );
});
