/** Breaks what is too long for one line. */

import { LINE_COLUMNS } from '../cels-line.js';
import { displayWidth } from '../source.js';

/** What stays together in one line, and what comes before it: a blank, or nothing. */
export interface Atom {
  readonly text: string;
  readonly blank: boolean;
  /** Groups around the place before it. */
  readonly depth: number;
  /** A whole second of the timeline begins here. */
  readonly second: boolean;
}

/** A line is broken at a whole second only where it is at least this full. */
const REACH = 0.6;

/**
 * `head` and the atoms behind it; lines after the first start with `indent`. Where a line grows too long it is broken, of the
 * places that fit: at the last whole second within reach; at the last blank; between a key and its in-betweens, at a whole second
 * before others; inside a group. What would not fit into a line of its own stays where it is.
 */
export function fold(head: string, atoms: readonly Atom[], indent: string): string[] {
  const done: string[] = [];
  let line = head;
  let width = displayWidth(head);
  let first = 0;
  let places: { readonly at: number; readonly width: number }[] = [];
  const margin = displayWidth(indent);
  const widths = atoms.map(({ text }) => displayWidth(text));
  for (let i = 0; i < atoms.length; i++) {
    const { blank } = atoms[i]!;
    const gap = i > first && blank ? 1 : 0;
    if (i > first && margin + widths[i]! <= LINE_COLUMNS) places.push({ at: i, width });
    width += gap + widths[i]!;
    if (width <= LINE_COLUMNS) continue;
    const at = choose(places, atoms, margin);
    if (at === null) continue;
    done.push(line + joined(atoms.slice(first, at)));
    line = indent;
    width = margin;
    first = at;
    places = [];
    i = at - 1;
  }
  return [...done, line + joined(atoms.slice(first))];
}

function choose(
  places: readonly { readonly at: number; readonly width: number }[],
  atoms: readonly Atom[],
  margin: number,
): number | null {
  const fitting = places.filter(({ width }) => width <= LINE_COLUMNS);
  const far = fitting.filter(({ width }) => width - margin >= (LINE_COLUMNS - margin) * REACH);
  const last = (of: typeof places, fits: (atom: Atom) => boolean) =>
    of.findLast(({ at }) => fits(atoms[at]!))?.at;
  const outside = ({ depth }: Atom): boolean => depth === 0;
  return (
    last(far, ({ second, blank }) => second && blank) ??
    last(far, (atom) => outside(atom) && atom.blank) ??
    last(far, ({ second }) => second) ??
    last(far, outside) ??
    last(far, ({ blank }) => blank) ??
    last(fitting, outside) ??
    last(fitting, () => true) ??
    places[0]?.at ??
    null
  );
}

function joined(atoms: readonly Atom[]): string {
  return atoms.map(({ text, blank }, i) => (i > 0 && blank ? ` ${text}` : text)).join('');
}
