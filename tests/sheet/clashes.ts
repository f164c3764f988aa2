/** What makes a page hard to read, found in its marks. */

import type { Mark, Page } from '../../src/sheet/display-list.js';
import { type Bounds, boundsOf, type Line, linesOf, overlap, textsOf } from './laid.js';

export const everyMark = (page: Page): readonly Mark[] => [...(page.form?.marks ?? []), ...page.marks];

/** Texts that leave the part of the paper that printers reach. */
export function offThePaper(page: Page): string[] {
  return textsOf(everyMark(page))
    .filter((text) => {
      const { left, right, top, bottom } = boundsOf(text);
      return !(left > 5 && top > 5 && right < page.widthMm - 5 && bottom < page.heightMm - 5);
    })
    .map(({ text, x, y }) => `“${text}” at ${x}, ${y}`);
}

/** The narrowest that a text is set, as a share of its own width: the project's own rule for its sheets. */
const NARROWEST = 0.8;

export function tooSmall(page: Page, leastMm: number): string[] {
  return textsOf(everyMark(page))
    .filter(({ sizeMm, squeeze = 1 }) => sizeMm < leastMm - 1e-9 || squeeze < NARROWEST - 1e-6)
    .map(({ text, sizeMm, squeeze = 1 }) => `“${text}” is ${sizeMm} mm high, ${squeeze} of its width`);
}

/** Texts that are set over one another. */
export function textClashes(marks: readonly Mark[]): string[] {
  const texts = textsOf(marks)
    .map((text) => ({ text: text.text, bounds: boundsOf(text) }))
    .sort((a, b) => a.bounds.top - b.bounds.top);
  return texts.flatMap(({ text, bounds }, i) => {
    const clash: string[] = [];
    for (let next = i + 1; next < texts.length; next++) {
      const other = texts[next]!;
      if (other.bounds.top > bounds.bottom) break;
      if (overlap(bounds, other.bounds, 0.15)) clash.push(`“${text}” and “${other.text}”`);
    }
    return clash;
  });
}

/** Rings about keys that touch. */
export function ringClashes(page: Page): string[] {
  const rings = ringsOf(page);
  return rings.flatMap((ring, i) =>
    rings
      .slice(i + 1)
      .filter((other) => overlap(ring, other, 0))
      .map((other) => `rings at ${ring.left}, ${ring.top} and ${other.left}, ${other.top}`),
  );
}

/** From the middle of a ring's stroke to what stands in it there is at least this much, mm; a stroke is 0.25 at the most. */
const INSIDE = 0.15;

/** Figures and letters that touch the ring about them, or nearly; kana have round corners. */
export function touchedRings(page: Page): string[] {
  const rings = ringsOf(page);
  const square = textsOf(page.marks).filter(({ text }) => /^[\p{Script=Latin}\p{N}\p{P}\p{S}]+$/u.test(text));
  return square.flatMap((text) => {
    const { left, right, top, bottom } = boundsOf(text);
    const [x, y] = [(left + right) / 2, text.y - 0.37 * text.sizeMm];
    const about = rings.find(
      (ring) =>
        Math.abs((ring.left + ring.right) / 2 - x) < 0.01 &&
        Math.abs((ring.top + ring.bottom) / 2 - y) < 0.01,
    );
    if (!about) return [];
    const r = (about.bottom - about.top) / 2;
    const straight = (about.right - about.left) / 2 - r;
    const corner = Math.hypot(Math.max(0, (right - left) / 2 - straight), Math.min(y - top, bottom - y));
    return r - corner < INSIDE ? [`“${text.text}” is ${(r - corner).toFixed(2)} mm from its ring`] : [];
  });
}

function ringsOf(page: Page): Bounds[] {
  return page.marks.flatMap((mark): Bounds[] => {
    if (mark.kind === 'circle')
      return [
        { left: mark.x - mark.r, right: mark.x + mark.r, top: mark.y - mark.r, bottom: mark.y + mark.r },
      ];
    if (mark.kind !== 'path' || !mark.closed || mark.points.length < 10) return [];
    const xs = mark.points.map(([x]) => x);
    const ys = mark.points.map(([, y]) => y);
    return [{ left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }];
  });
}

/** Black lines that run through a text. */
export function struckOut(page: Page): string[] {
  const texts = textsOf(page.marks).map((text) => ({ text: text.text, bounds: boundsOf(text) }));
  return linesOf(page.marks)
    .filter(({ stroke }) => stroke.ink === 'black')
    .flatMap((line) => {
      const stroke = strokeBounds(line);
      return texts
        .filter(({ bounds }) => overlap(bounds, stroke, 0.02))
        .map(({ text }) => `line from ${line.x1}, ${line.y1} through “${text}”`);
    });
}

/** Lines run along the paper's edges, and end bluntly. */
function strokeBounds({ x1, y1, x2, y2, stroke }: Line): Bounds {
  const half = stroke.widthMm / 2;
  const level = y1 === y2;
  return {
    left: Math.min(x1, x2) - (level ? 0 : half),
    right: Math.max(x1, x2) + (level ? 0 : half),
    top: Math.min(y1, y2) - (level ? half : 0),
    bottom: Math.max(y1, y2) + (level ? half : 0),
  };
}
