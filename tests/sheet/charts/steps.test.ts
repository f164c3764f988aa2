/** What a chart says of a passage. */

import { describe, expect, it } from 'vitest';
import { exposureText, wayText } from '../../../src/sheet/charts/steps.js';

describe('what stands beside a step', () => {
  it('names the frames of each showing', () => {
    expect(exposureText([2])).toBe('2');
    expect(exposureText([2, 2, 2])).toBe('2 ×3');
    expect(exposureText([2, 6])).toBe('2, 6');
    expect(exposureText([2, 6, 2, 12])).toBe('2–12 ×4');
    expect(exposureText([])).toBe('–');
  });

  it('names a way as halves of halves, then as other parts', () => {
    expect([1 / 2, 3 / 4, 15 / 16, 2 / 3, 1 / 128, 3 / 26].map(wayText)).toEqual([
      '1/2',
      '3/4',
      '15/16',
      '2/3',
      '1/128',
      '3/26',
    ]);
    expect(wayText(0.123)).toBe('.123');
    expect(wayText(1 - 2 ** -30)).toBe('>.999');
    expect(wayText(2 ** -30)).toBe('<.001');
  });
});
