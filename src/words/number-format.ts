/** Numbers as they are written for people, for every stage. */

/** `1 cut`, `12 cuts`. */
export const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** How a number is written where it is not as usual. Named, so that `list.map(figure)` does not take an index for decimals. */
export interface FigureOptions {
  /** At most so many; two where nothing is said. */
  readonly decimals?: number;
  /**
   * Zeros at the end: never as usual; `always`, in columns; `unlessWhole`, where numbers that are not whole stand below each other.
   */
  readonly zeros?: 'never' | 'always' | 'unlessWhole';
}

/** A number with a decimal point, never `-0`. It is the one way by which a number that may have a fraction gets to a reader. */
export function figure(value: number, { decimals = 2, zeros = 'never' }: FigureOptions = {}): string {
  const fixed = value.toFixed(decimals);
  const text = fixed.startsWith('-') && Number(fixed) === 0 ? fixed.slice(1) : fixed;
  if (decimals === 0 || zeros === 'always' || !text.endsWith('0')) return text;
  return text.replace(zeros === 'never' ? /\.?0+$/ : /\.0+$/, '');
}

/** So many digits that count, whatever the size: for values of any size, as they were typed. */
export const significant = (value: number, digits: number): string =>
  String(Number(value.toPrecision(digits)));

/** A share of the way as it is written on a chart: `3/4`, or with two decimals where no simple fraction is it. */
export function share(value: number): string {
  for (let parts = 2; parts <= 64; parts++) {
    const count = value * parts;
    if (Math.abs(count - Math.round(count)) < 1e-6) return `${Math.round(count)}/${parts}`;
  }
  return figure(value);
}

/** More different numbers in a row than a sentence can hold. */
const MOST_REPEATED = 16;

/** Numbers as graduations are typed: `1 2 4*3 2`. Of a long row the beginning. */
export function repeated(values: readonly number[]): string {
  const runs: { text: string; times: number }[] = [];
  for (const value of values) {
    const text = figure(value, { decimals: 3 });
    const last = runs.at(-1);
    if (last?.text === text) last.times++;
    else runs.push({ text, times: 1 });
  }
  const said = runs.slice(0, MOST_REPEATED).map(({ text, times }) => (times > 1 ? `${text}*${times}` : text));
  return [...said, ...(runs.length > MOST_REPEATED ? ['…'] : [])].join(' ');
}

/** `1, 3-5`, of ascending numbers. */
export function ranges(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join(', ');
}

/** Frame 120 at 24 fps is `4+24`, the row labelled 24 in the fifth second; `unit`: frames of a second, or of a foot: `7'08`. */
export function rowLabel(frame: number, unit: number, feet: boolean): string {
  const before = Math.floor((frame - 1) / unit);
  const rest = frame - before * unit;
  return feet ? `${before}'${String(rest).padStart(2, '0')}` : `${before}+${rest}`;
}
