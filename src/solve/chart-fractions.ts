/** In-between charts → fractions of the way, one for each in-between. */

import type { ShotChart } from '../shot/shot.js';

/**
 * The named charts, by halving as an in-betweener draws them: half of the way, then half of what is left to the key that is
 * crowded, again and again; `early` is the mirror of `late`, `both` halves from the middle to both keys. Null: the fractions
 * that are written are not as many as the in-betweens. Source for the halves: common practice in reading timing charts.
 */
export function chartFractions(chart: ShotChart, count: number): readonly number[] | null {
  switch (chart.form) {
    case 'fractions':
      return chart.fractions.length === count ? chart.fractions : null;
    case 'even':
      return Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
    case 'late':
      return late(count);
    case 'early':
      return mirrored(late(count));
    case 'both': {
      const side = Math.floor(count / 2);
      const ends = halves(side + 1)
        .slice(1)
        .reverse();
      return count % 2 === 1 ? [...ends, 0.5, ...mirrored(ends)] : [...ends, ...mirrored(ends)];
    }
  }
}

function late(count: number): number[] {
  return count === 1 ? [3 / 4] : mirrored(halves(count)).reverse();
}

/** 1/2, 1/4, 1/8 … */
function halves(count: number): number[] {
  let half = 1;
  return Array.from({ length: count }, () => (half /= 2));
}

function mirrored(fractions: readonly number[]): number[] {
  return fractions.map((fraction) => 1 - fraction).reverse();
}

/** The narrowest gap, keys included. */
export function narrowestGap(fractions: readonly number[]): number {
  return [...fractions, 1].reduce((least, each, i) => Math.min(least, each - (fractions[i - 1] ?? 0)), 1);
}
