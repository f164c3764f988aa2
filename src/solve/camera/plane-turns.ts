/** Turns of the plane whose right angles are exact. Degrees clockwise, y up. */

export interface Vector {
  readonly x: number;
  readonly y: number;
}

/** Cosine and sine of an angle in degrees. Multiples of 90 are exact, and d + 180 has exactly the opposite signs of d. */
export interface Turn {
  readonly cos: number;
  readonly sin: number;
}

export function turnOf(degrees: number): Turn {
  if (degrees === 0) return STILL;
  const whole = degrees % 360;
  const positive = whole < 0 ? whole + 360 : whole;
  const quarter = Math.floor(positive / 90) % 4;
  const rest = ((positive - quarter * 90) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(rest), Math.sin(rest)];
  if (quarter === 0) return { cos, sin };
  if (quarter === 1) return { cos: 0 - sin, sin: cos };
  if (quarter === 2) return { cos: 0 - cos, sin: 0 - sin };
  return { cos: sin, sin: 0 - cos };
}

const STILL: Turn = { cos: 1, sin: 0 };

/** The vector turned clockwise. */
export function clockwise(t: Turn, x: number, y: number): Vector {
  return { x: t.cos * x + t.sin * y, y: t.cos * y - t.sin * x };
}

/** The vector turned back. */
export function counterClockwise(t: Turn, x: number, y: number): Vector {
  return { x: t.cos * x - t.sin * y, y: t.sin * x + t.cos * y };
}
