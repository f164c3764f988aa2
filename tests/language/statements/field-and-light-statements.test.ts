import { describe, expect, test } from 'vitest';
import { bare, readOne } from '../read-text.js';
import { plain } from '../report/read-report.js';

describe('a field', () => {
  const field = (text: string) => bare(readOne('field', `field A ${text}`));

  test.each([
    ['full', { form: 'full' }],
    ['62.5%', { form: 'percent', percent: 62.5 }],
    ['8F', { form: 'chart', fields: 8 }],
    ['8.5F', { form: 'chart', fields: 8.5 }],
    ['12cm', { form: 'mm', widthMm: 120 }],
  ])('of size %s', (text, size) => {
    expect(field(text)).toMatchObject({ size, place: null, turned: null });
  });

  test('lies at millimetres, or at steps of the chart that add up', () => {
    expect(field('full at 40,-1.2cm')).toMatchObject({ place: { form: 'mm', xMm: 40, yMm: -12 } });
    expect(field('full at 2N 3E')).toMatchObject({ place: { form: 'chart', north: 2, east: 3 } });
    expect(field('full at 2S 0.5W')).toMatchObject({ place: { north: -2, east: -0.5 } });
    expect(field('full at 1N 1N 3E 1W')).toMatchObject({ place: { north: 2, east: 2 } });
  });

  test('is turned by degrees, with or without their sign', () => {
    expect(field('full cw 5')).toMatchObject({ turned: { sense: 'cw', degrees: 5 } });
    expect(field('full at 1,2 ccw 2.5deg')).toMatchObject({ turned: { sense: 'ccw', degrees: 2.5 } });
  });
});

describe('light', () => {
  test('fades in or out, to black or white, the word on either side of the frames', () => {
    expect(bare(readOne('fade', 'fade in 1..24'))).toMatchObject({ way: 'in', white: null });
    expect(readOne('fade', 'fade out white 1..24')).toMatchObject({
      way: 'out',
      white: { start: 9, end: 14 },
    });
    expect(readOne('fade', 'fade out 1..24 white').white).not.toBeNull();
  });

  test('wipes to a side, and opens about a place or the middle', () => {
    expect(readOne('wipe', 'wipe in up 1..18')).toMatchObject({ way: 'in', towards: 'up' });
    expect(readOne('iris', 'iris out 1..18 at 40,-10').at).toMatchObject({ xMm: 40, yMm: -10 });
    expect(readOne('iris', 'iris out 1..').at).toBeNull();
    // An edge goes to a side; an angle is what a pull may have.
    expect(plain('wipe out 30deg 1..24')).toContain(
      'where a direction (left, right, up or down) should stand',
    );
  });

  test('fades from a mark that is called white', () => {
    expect(bare(readOne('fade', 'fade out white..24'))).toMatchObject({
      white: null,
      range: { from: { form: 'mark', name: 'white' } },
    });
  });

  test('exposes by one share or from one to another', () => {
    expect(bare(readOne('expose', 'expose B,C 50% 1..24'))).toMatchObject({
      levels: [{ text: 'B' }, { text: 'C' }],
      from: { value: 50 },
      to: null,
    });
    expect(bare(readOne('expose', 'expose B 0%>100% 1..24'))).toMatchObject({
      from: { value: 0 },
      to: { value: 100 },
    });
  });

  test('an effect has levels where names stand before its range', () => {
    const levels = (text: string) =>
      readOne('effect', `effect "haze" ${text}`).levels.map(({ text: one }) => one);
    expect(levels('A,B 1..9')).toEqual(['A', 'B']);
    expect(levels('A hit..9')).toEqual(['A']);
    expect(levels('hit..9')).toEqual([]);
    expect(levels('1..9')).toEqual([]);
  });

  test('overlaps at one end', () => {
    expect(bare(readOne('overlap', 'overlap in 1+0'))).toMatchObject({
      way: 'in',
      length: { form: 'seconds', seconds: 1 },
    });
  });
});
