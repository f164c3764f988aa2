import type { Settings } from '../../shot/settings.js';
import type { Mark, Pt } from '../display-list.js';
import { rectangle } from './artwork-plane.js';

const INCH = 25.4;
/** Round hole of 1/4 in, flats of 1/2 by 1/8 in, 4 in from centre to centre. Source: common practice. */
export const PEGS = {
  roundMm: INCH / 4,
  flatMm: { width: INCH / 2, height: INCH / 8 },
  apartMm: 4 * INCH,
  /** From the standard field's centre to the middle hole. Source: recommended 16:9 layout paper of Japan's producers' association. */
  fromCentreMm: 104.775,
};

export interface Hole {
  readonly x: number;
  readonly y: number;
  readonly round: boolean;
}

/** Middles of the holes, mm from the field's centre, y up: at the top in Japan, at the bottom in the west. None unless asked for. */
export function holes({ pegs, convention }: Settings): Hole[] {
  if (pegs !== 'acme') return [];
  const y = convention === 'japan' ? PEGS.fromCentreMm : -PEGS.fromCentreMm;
  return [-PEGS.apartMm, 0, PEGS.apartMm].map((x) => ({ x, y, round: x === 0 }));
}

export function holeMark(hole: Hole, place: (p: Pt) => Pt, n: number): Mark {
  const stroke = { ink: 'grey', widthMm: 0.2 } as const;
  if (hole.round) {
    const [x, y] = place([hole.x, hole.y]);
    return { kind: 'circle', x, y, r: PEGS.roundMm / 2 / n, stroke, fill: null };
  }
  const { width, height } = PEGS.flatMm;
  const points = rectangle(hole.x, hole.y, width, height, 0).map(place);
  return { kind: 'path', points, closed: true, stroke, fill: null };
}
