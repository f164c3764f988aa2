/** Numbers as they are written for people, for every stage. */

/** `1 cut`, `12 cuts`. */
export const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/**
 * A number with a point: two decimals at most where nothing else is said, no zeros at its end, never `-0`. `fixed`: all its decimals, for
 * columns. Options are named so that `list.map(figure)` does not take an index for decimals.
 */
export function figure(
  value: number,
  { decimals = 2, fixed = false }: { readonly decimals?: number; readonly fixed?: boolean } = {},
): string {
  const text = value.toFixed(decimals);
  const written = fixed || decimals === 0 ? text : text.replace(/\.?0+$/, '');
  return Number(written) === 0 ? written.replace('-', '') : written;
}

/** A share of the way as it is written on a chart: `3/4`, or with two decimals where no simple fraction is it. */
export function share(value: number): string {
  for (let parts = 2; parts <= 64; parts++) {
    const count = value * parts;
    if (Math.abs(count - Math.round(count)) < 1e-6) return `${Math.round(count)}/${parts}`;
  }
  return figure(value);
}
