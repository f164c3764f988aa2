/** What a chart says of a passage. */

import { describe, expect, it } from 'vitest';
import { exposureText, ladders, wayText } from '../../../src/sheet/charts/chart-ladders.js';
import { solvedCut } from '../laid.js';

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

describe('the ladders of a cut', () => {
  const laddersOf = (text: string) => ladders(solvedCut(`cut 1\ntime 2+0\n${text}\n`));

  it('are those of levels that have in-betweens, in the order of the stack', () => {
    const levels = laddersOf('stack A B C\nA: 1 2..\nB: 1-2..\nC: 1-2..');
    expect(levels.map(({ level }) => level.name)).toEqual(['B', 'C']);
  });

  it('go from key to key by the way and the frames of each drawing', () => {
    const [level] = laddersOf('A: 1:4 1{late}--2:6 1.1:3 2..');
    expect(
      level!.ladders[0]!.steps.map(({ drawing, way, kind, exposed }) => [drawing, way, kind, exposed]),
    ).toEqual([
      ['1', 0, 'key', [6]],
      ['1.1', 0.5, 'inbetween', [2, 3]],
      ['1.2', 0.75, 'inbetween', [2]],
      ['2', 1, 'key', [6, 29]],
    ]);
  });
});
