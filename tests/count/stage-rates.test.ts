import { expect, test } from 'vitest';
import {
  amountText,
  countedDrawings,
  drawingsOfStage,
  payment,
  type Rate,
  type RateUnit,
  sums,
} from '../../src/count/stage-rates.js';

const CUT = { counts: { keys: 8, breakdowns: 2, inbetweens: 9, drawings: 19 }, time: 100, fps: 24 };
const rate = (unit: RateUnit, amount = 250, decimals = 2): Rate => ({
  amount,
  decimals,
  unit,
  currency: 'shells',
});

test('a stage works on the drawings that its rate is paid for, or on those of its name', () => {
  expect(drawingsOfStage('clean-up', rate('drawing'))).toBe('drawing');
  expect(['key', 'in-between', 'finish', 'layout'].map((stage) => drawingsOfStage(stage, null))).toEqual([
    'key',
    'in-between',
    'drawing',
    null,
  ]);
  expect(drawingsOfStage('key', rate('cut'))).toBe('key');
});

test('breakdowns are counted with the in-betweens, so that keys and in-betweens are all drawings', () => {
  expect(countedDrawings('in-between', CUT)).toBe(11);
  expect(countedDrawings('key', CUT) + countedDrawings('in-between', CUT)).toBe(CUT.counts.drawings);
});

test('what is paid is the rate times what it is paid for', () => {
  // 2.50 × 1, 8, 11, 19; 2.50 × 100/24 = 10.4166…; 2.50 × 100/16 = 15.625, half up.
  const paid = (['cut', 'key', 'in-between', 'drawing', 'second', 'foot'] as const).map((unit) =>
    amountText({ amount: payment(rate(unit), CUT), decimals: 2 }),
  );
  expect(paid).toEqual(['2.50', '20.00', '27.50', '47.50', '10.42', '15.63']);
});

test('sums are exact, a currency each, with the most decimals that were said', () => {
  const parts = [
    { amount: 10, decimals: 2, currency: 'EUR' },
    { amount: 20, decimals: 2, currency: 'EUR' },
    { amount: 3, decimals: 0, currency: 'yen' },
    { amount: 5, decimals: 1, currency: 'EUR' },
  ];
  expect(sums(parts).map((sum) => `${amountText(sum)} ${sum.currency}`)).toEqual(['0.80 EUR', '3 yen']);
  // A tenth and two tenths are three tenths, unlike in floating point.
  expect(amountText(sums([rate('cut', 1, 1), rate('cut', 2, 1)])[0]!)).toBe('0.3');
  expect(sums([])).toEqual([]);
});
