/** Sets names and numbers into a drawing so that they cover neither each other nor, where there is a choice, its lines. */

import type { Ink, Mark, Metrics, Pt, Weight } from '../display-list.js';
import { type Box, line, pale, polygon, textAt } from '../mark-builders.js';
import { clip, type Segment } from './artwork-plane.js';

export interface Label {
  readonly text: string;
  readonly sizeMm: number;
  readonly weight?: Weight;
  readonly ink?: Ink;
  /** In a ring. */
  readonly ringed?: boolean;
  /** Places for its middle, best first; further ones are looked for where it must be set. */
  readonly places: readonly Pt[];
  /** More of them, for when those are taken or can be led to only through other labels. */
  readonly otherwise?: readonly Pt[];
  /** Set it even where it has to stand away from its place, with a thin line to it. */
  readonly must?: boolean;
  /** What it names: a thin line leads there from a label further away than `beyondMm`. */
  readonly leader?: { readonly to: Pt; readonly beyondMm: number };
}

export interface Labels {
  readonly marks: Mark[];
  /** A line that labels should keep off. */
  avoid(segment: Segment): void;
  /** Whether it was set. */
  put(label: Label): boolean;
}

const MARGIN = 0.4;
/** A label with a line through it is worse than so many lines behind a label. */
const STRUCK = 3;

const leads = ({ to, beyondMm }: NonNullable<Label['leader']>, [x, y]: Pt): boolean =>
  Math.hypot(x - to[0], y - to[1]) > beyondMm;

export function labelsIn(bounds: Box, metrics: Metrics): Labels {
  const marks: Mark[] = [];
  const segments: Segment[] = [];
  const taken: Box[] = [];

  const boxAt = ([x, y]: Pt, width: number, height: number): Box => ({
    x: x - width / 2,
    y: y - height / 2,
    width,
    height,
  });
  const inside = (box: Box) =>
    box.x >= bounds.x &&
    box.y >= bounds.y &&
    box.x + box.width <= bounds.x + bounds.width &&
    box.y + box.height <= bounds.y + bounds.height;
  const free = (box: Box) => {
    const right = box.x + box.width;
    const bottom = box.y + box.height;
    for (const other of taken)
      if (
        right > other.x &&
        other.x + other.width > box.x &&
        bottom > other.y &&
        other.y + other.height > box.y
      )
        return false;
    return true;
  };
  /** Labels that a leader to a label at `at` would run through. */
  const struckBy = ({ leader }: Label, at: Pt): number =>
    leader && leads(leader, at) ? taken.filter((box) => clip([...leader.to, ...at], box) !== null).length : 0;
  /** Lines that run through a box; no more than `most` are counted. */
  const crossings = (box: Box, most: number) => {
    let count = 0;
    for (const segment of segments) if (count < most && clip(segment, box) !== null) count++;
    return count;
  };

  return {
    marks,
    avoid: (segment) => segments.push(segment),
    put(label) {
      const { text, sizeMm, weight = 'regular', ink = 'black', ringed = false } = label;
      const em = metrics.width(text, sizeMm, weight);
      const r = ringed ? Math.max(sizeMm * 0.72, em / 2 + 0.5) : 0;
      const width = ringed ? 2 * r + MARGIN : em + 2 * MARGIN;
      const height = ringed ? 2 * r + MARGIN : sizeMm * 1.05 + MARGIN;
      let best: { at: Pt; crossed: number; struck: number } | null = null;
      const consider = (at: Pt): boolean => {
        const box = boxAt(at, width, height);
        if (!inside(box) || !free(box)) return false;
        const struck = struckBy(label, at);
        const crossed =
          STRUCK * struck + crossings(box, best ? Math.max(1, best.crossed - STRUCK * struck) : Infinity);
        if (!best || crossed < best.crossed) best = { at, crossed, struck };
        return crossed === 0;
      };
      label.places.some(consider);
      const clear = best as { struck: number } | null;
      if (label.otherwise && (!clear || clear.struck > 0)) label.otherwise.some(consider);
      let far = false;
      if (!best && label.must) {
        far = true;
        const [cx, cy] = label.places[0]!;
        for (let step = 2; step < 60 && !best; step += 2) {
          for (let k = 0; k < 16; k++) {
            const angle = (Math.PI * k) / 8;
            if (consider([cx + step * Math.cos(angle), cy + step * Math.sin(angle)])) break;
          }
        }
      }
      if (!best) return false;
      const { at, crossed } = best as { at: Pt; crossed: number };
      const box = boxAt(at, width, height);
      taken.push(box);
      const { leader } = label;
      if (leader && leads(leader, at)) {
        marks.push(line(...leader.to, ...at, pale(0.2)));
        segments.push([...leader.to, ...at]);
      } else if (far && !leader) marks.push(line(...label.places[0]!, ...at, pale(0.2)));
      if (ringed) {
        marks.push({ kind: 'circle', x: at[0], y: at[1], r, stroke: { ink, widthMm: 0.3 }, fill: 'paper' });
      } else if (crossed > 0 || far) {
        const [x2, y2] = [box.x + box.width, box.y + box.height];
        marks.push(
          polygon(
            [
              [box.x, box.y],
              [x2, box.y],
              [x2, y2],
              [box.x, y2],
            ],
            'paper',
          ),
        );
      }
      marks.push(textAt(at[0], at[1], text, { sizeMm, weight, ink }));
      return true;
    },
  };
}
