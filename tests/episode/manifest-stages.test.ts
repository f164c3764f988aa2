import { describe, expect, test } from 'vitest';
import { dueKey, isoDay, rate, stageName } from '../../src/episode/manifest-stages.js';

test('a stage is one word that is no number', () => {
  for (const name of ['layout', 'in-between', '原画', 'ink_2'])
    expect(stageName(name)).toMatchObject({ ok: true });
  for (const name of ['', '2nd', 'two words', '-x', 'x'.repeat(30)])
    expect(stageName(name), name).toMatchObject({ ok: false, takes: { value: 'stage' } });
});

describe('a day', () => {
  test('has its year first, with any of the usual signs', () => {
    for (const text of ['2027-03-09', '2027/3/9', '2027.3.9', '２０２７−３−９'.replaceAll('−', '-')])
      expect(isoDay(text), text).toBe('2027-03-09');
  });

  test('is none where nobody could tell day and month, or where there is no such day', () => {
    for (const text of [
      '9.3.2027',
      '03/09/2027',
      '27-03-09',
      '2027-02-29',
      '2027-13-01',
      '2027-3',
      'soon',
      '',
    ])
      expect(isoDay(text), text).toBeNull();
    expect(isoDay('2028-02-29')).toBe('2028-02-29');
  });
});

test('what is due is a stage, a stage of a cut, or a cut', () => {
  const of = (text: string) => dueKey(text, ['layout', 'key']);
  expect(of('key')).toEqual({ stage: 'key', cut: null });
  expect(of('key 12A')).toEqual({ stage: 'key', cut: '12A' });
  expect(of('012')).toEqual({ stage: null, cut: '012' });
  for (const text of ['kye', 'kye 12', 'key 12 13', 'key twelve', '']) expect(of(text), text).toBeNull();
});

test('a rate is an amount, a currency and what it is paid for', () => {
  expect(rate('230 yen per drawing')).toMatchObject({
    value: { amount: 230, decimals: 0, currency: 'yen', unit: 'drawing' },
  });
  expect(rate('2.50  € per in-between')).toMatchObject({
    value: { amount: 250, decimals: 2, currency: '€', unit: 'in-between' },
  });
  for (const text of [
    '230',
    '230 yen',
    '230 per key',
    'yen 230 per key',
    '2,50 EUR per key',
    '1 yen per hour',
    '-1 yen per key',
  ])
    expect(rate(text), text).toMatchObject({ ok: false, takes: { value: 'rate' } });
});
