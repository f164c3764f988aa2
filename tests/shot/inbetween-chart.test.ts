import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../src/language/diagnostic.js';
import type { Chart } from '../../src/language/tree.js';
import { bindChart } from '../../src/shot/inbetween-chart.js';

const span = (start: number, end: number) => ({ file: 'this.cut', start, end });

function bound(chart: Chart) {
  const told: Diagnostic[] = [];
  const made = bindChart(chart, (one) => void told.push(one));
  return { made, codes: told.map(({ code }) => code), told };
}
const named = (name: string) => bound({ form: 'named', name, span: span(3, 9) });
const fractions = (...values: number[]) =>
  bound({
    form: 'fractions',
    fractions: values.map((value, i) => ({ value, span: span(4 + i, 5 + i) })),
    span: span(3, 20),
  });

describe('a chart with a name', () => {
  test.each(['even', 'early', 'late', 'both'])('%s', (name) => {
    expect(named(name)).toMatchObject({ made: { form: name, span: span(3, 9) }, codes: [] });
  });

  test('that is misspelt is told of, and mended', () => {
    const { made, told } = named('laet');
    expect(made).toBeNull();
    expect(told).toMatchObject([
      { code: 'unknown-chart', span: span(3, 9), fix: { edits: [{ text: '{late}', span: span(3, 9) }] } },
    ]);
  });

  test('that is near none has no fix', () => {
    const { made, told } = named('sideways');
    expect(made).toBeNull();
    expect(told[0]).toMatchObject({ code: 'unknown-chart' });
    expect(told[0]!.fix).toBeUndefined();
  });
});

describe('a chart of fractions', () => {
  test('rises between the keys', () => {
    expect(fractions(0.125, 0.5, 0.875)).toMatchObject({
      made: { form: 'fractions', fractions: [0.125, 0.5, 0.875], span: span(3, 20) },
      codes: [],
    });
  });

  test.each([0, 1, -0.5, 1.5, Number.NaN])('does not hold %d', (value) => {
    expect(fractions(value)).toMatchObject({ made: null, codes: ['chart-outside'] });
  });

  test.each([
    [0.5, 0.5],
    [0.5, 0.25],
  ])('does not hold %d before %d: it is told of the second', (first, second) => {
    const { made, told } = fractions(first, second);
    expect(made).toBeNull();
    expect(told).toMatchObject([{ code: 'chart-not-rising', span: span(5, 6) }]);
  });
});
