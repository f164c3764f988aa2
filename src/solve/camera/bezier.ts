/**
 * Cubic Bézier timing with end points (0, 0) and (1, 1) as W3C CSS Easing Level 1 defines it: the share of the way y at the
 * share of the time x. With x1 and x2 in [0, 1] the curve's x never runs back, so there is one y for each x.
 */
export function bezier(x1: number, y1: number, x2: number, y2: number): (x: number) => number {
  const xs = coefficients(x1, x2);
  const ys = coefficients(y1, y2);
  return (x) => {
    if (x <= 0) return 0;
    if (x >= 1) return 1;
    return value(ys, parameter(xs, x));
  };
}

type Cubic = readonly [number, number, number];

/** Of a t³ + b t² + c t. */
function coefficients(p1: number, p2: number): Cubic {
  const c = 3 * p1;
  const b = 3 * (p2 - p1) - c;
  return [1 - c - b, b, c];
}

const value = ([a, b, c]: Cubic, t: number) => ((a * t + b) * t + c) * t;
const slope = ([a, b, c]: Cubic, t: number) => (3 * a * t + 2 * b) * t + c;

/** Newton's method inside a bracket that is halved wherever a step would leave it; full precision in both regions. */
function parameter(xs: Cubic, x: number): number {
  let low = 0;
  let high = 1;
  let t = x;
  for (let round = 0; round < 80; round++) {
    const off = value(xs, t) - x;
    if (off === 0) return t;
    if (off > 0) high = t;
    else low = t;
    const s = slope(xs, t);
    const newton = t - off / s;
    const next = s > 1e-9 && newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - t) < 1e-16) return next;
    t = next;
  }
  return t;
}
