/**
 * Powers that are the same number on every machine. ECMAScript leaves the last digits of `**` and Math.pow to the engine, and
 * Node 24 gives others than Node 20 and 22; sums, products and quotients are exact to the bit by IEEE 754.
 */

/**
 * A number as the sum of two doubles, the second at most half a unit of the first one's last digit: some 100 bits. Source of
 * the sums and products without error: T. J. Dekker, “A floating-point technique for extending the available precision”, 1971.
 */
type Pair = readonly [high: number, low: number];

/**
 * e^(exponent · ln base), rounded once at the end. `base` at least 0; a negative one, which has no real power, and NaN give
 * NaN. 0 to the power of 0 is 1.
 */
export function power(base: number, exponent: number): number {
  if (exponent === 0 || base === 1) return 1;
  if (exponent === 1) return base;
  if (!(base >= 0) || Number.isNaN(exponent)) return Number.NaN;
  if (base === 0 || base === Infinity) return (base === 0) === exponent > 0 ? 0 : Infinity;
  const logarithm = ln(base);
  // Beyond the largest and the smallest double, e^709.8 and e^-745.1.
  const rough = logarithm[0] * exponent;
  if (Math.abs(rough) > 750) return rough < 0 ? 0 : Infinity;
  return exp(times(logarithm, [exponent, 0]));
}

const LN_2: Pair = [Math.LN2, 2.3190468138462996e-17];
const SQRT_2 = Math.SQRT2;

/** 1, 1/2, 1/3 … 1/9. What comes behind them in the series below is so small that a double holds enough of it: some 75 bits of the sum. */
const RECIPROCALS: readonly Pair[] = Array.from({ length: 9 }, (_, i) => over([1, 0], [i + 1, 0]));

/** With m = base / 2^k near 1: ln m = 2 artanh s = 2 (s + s³/3 + s⁵/5 + …), s = (m − 1) / (m + 1), at most 0.172. */
function ln(base: number): Pair {
  let m = base;
  let k = 0;
  for (; m > SQRT_2; k++) m /= 2;
  for (; m < SQRT_2 / 2; k--) m *= 2;
  const s = over([m - 1, 0], sumOf(m, 1));
  const square = times(s, s);
  let tail = 0;
  for (let n = 31; n >= 11; n -= 2) tail = tail * square[0] + 1 / n;
  let series: Pair = [tail, 0];
  for (let n = 9; n >= 1; n -= 2) series = plus(times(series, square), RECIPROCALS[n - 1]!);
  return plus(times([2 * s[0], 2 * s[1]], series), times(LN_2, [k, 0]));
}

/** With x = k ln 2 + f, f at most 0.35: 2^k (1 + f (1 + f/2 (1 + f/3 (…)))). */
function exp(x: Pair): number {
  const k = Math.round(x[0] / LN_2[0]);
  const f = plus(x, times(LN_2, [-k, 0]));
  let tail = 1;
  for (let n = 19; n >= 10; n--) tail = 1 + (f[0] / n) * tail;
  let series: Pair = [tail, 0];
  for (let n = 9; n >= 1; n--) series = plus(times(times(f, RECIPROCALS[n - 1]!), series), [1, 0]);
  let [result] = series;
  for (let i = 0; i < k; i++) result *= 2;
  for (let i = 0; i > k; i--) result /= 2;
  return result;
}

function plus(a: Pair, b: Pair): Pair {
  const [sum, rest] = sumOf(a[0], b[0]);
  return normal(sum, rest + a[1] + b[1]);
}

function times(a: Pair, b: Pair): Pair {
  const [product, rest] = productOf(a[0], b[0]);
  return normal(product, rest + a[0] * b[1] + a[1] * b[0]);
}

function over(a: Pair, b: Pair): Pair {
  const quotient = a[0] / b[0];
  const [taken, rest] = times(b, [quotient, 0]);
  return normal(quotient, (a[0] - taken - rest + a[1]) / b[0]);
}

/** Of a high part and a low one that may reach into it. */
function normal(high: number, low: number): Pair {
  const sum = high + low;
  return [sum, low - (sum - high)];
}

/** The sum, and what is lost of it by rounding. */
function sumOf(a: number, b: number): Pair {
  const sum = a + b;
  const second = sum - a;
  return [sum, a - (sum - second) + (b - second)];
}

/** The product, and what is lost of it by rounding: from halves whose products are exact. */
function productOf(a: number, b: number): Pair {
  const product = a * b;
  const [c, d] = halved(a);
  const [e, f] = halved(b);
  return [product, c * e - product + c * f + d * e + d * f];
}

/** The upper 26 bits and the rest. */
function halved(a: number): Pair {
  const scaled = 134217729 * a; // 2^27 + 1
  const upper = scaled - (scaled - a);
  return [upper, a - upper];
}
