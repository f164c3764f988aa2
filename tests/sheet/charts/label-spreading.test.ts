/** Labels pushed apart. */

import { describe, expect, it } from 'vitest';
import { spreadLabels } from '../../../src/sheet/charts/label-spreading.js';

describe('labels pushed apart', () => {
  it('stay where they wish to be where there is room', () => {
    expect(spreadLabels([1, 5, 9], 2, 0, 10)).toEqual([1, 5, 9]);
  });

  it('share the room about their mean where they crowd, in order', () => {
    expect(spreadLabels([5, 5, 5], 2, 0, 10)).toEqual([3, 5, 7]);
    expect(spreadLabels([9.9, 10, 10], 2, 0, 10)).toEqual([6, 8, 10]);
    expect(spreadLabels([0, 0, 4], 2, 0, 10)).toEqual([0, 2, 4]);
  });
});
