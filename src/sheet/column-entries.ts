/** What the key and cel columns of a level say on each row, in the marks of the trade, before anything is drawn. */

import type { Convention } from '../shot/settings.js';
import type { Exposure, SolvedLevel } from '../solve/solved-shot.js';

/** What the two columns of a level say, found once for all blocks and pages. */
export interface ColumnEntries {
  /** Of the key column: one a frame; null where nothing changes. */
  readonly signs: readonly (KeySign | null)[];
  /** From one sign to the next, and from one finished number to the next. The first begins with the cut in any case. */
  readonly keyHolds: readonly Hold[];
  readonly celHolds: readonly Hold[];
}

/** Frames on which a column says nothing after the first; both included. */
export interface Hold {
  readonly from: number;
  readonly to: number;
}

export function columnEntries(level: SolvedLevel, convention: Convention): ColumnEntries {
  const signs = keySigns(level, convention);
  const { exposures } = level;
  return {
    signs,
    keyHolds: holdsOf(exposures.length, (frame) => signs[frame - 1] !== null),
    celHolds: holdsOf(exposures.length, (frame) => exposures[frame - 1]!.starts),
  };
}

function holdsOf(length: number, begins: (frame: number) => boolean): Hold[] {
  const holds: Hold[] = [];
  let from = 1;
  for (let frame = 1; frame <= length; frame++) {
    if (frame < length && !begins(frame + 1)) continue;
    holds.push({ from, to: frame });
    from = frame + 1;
  }
  return holds;
}

export type KeySign =
  /** A number in a ring. */
  | { readonly form: 'key'; readonly text: string }
  /** A short stroke: an in-between, in its turn. */
  | { readonly form: 'dash' }
  /** The stroke in round brackets. */
  | { readonly form: 'breakdown' }
  /** A small open ring: an in-between that exists, of another cut or from an earlier pass of a cycle. Nobody draws it here. */
  | { readonly form: 'again' }
  /** The small open ring in round brackets: a breakdown of another cut, where it is first shown. */
  | { readonly form: 'reused breakdown' }
  /** An in-between by its name, as it does not stand in its turn. */
  | { readonly form: 'named'; readonly text: string }
  /** A bare number. */
  | { readonly form: 'number'; readonly text: string }
  /** A number with a stroke under it. */
  | { readonly form: 'underlined'; readonly text: string }
  | { readonly form: 'empty' };

/** One sign a frame; null where nothing changes. */
export function keySigns(level: SolvedLevel, convention: Convention): (KeySign | null)[] {
  const begins = keyBegins(level);
  return convention === 'west'
    ? level.exposures.map((one) => (begins(one.frame) ? westernSign(one) : null))
    : japaneseSigns(level, begins);
}

/**
 * Whether a frame has a sign in the key column: where the level shows something else, and where a cycle opens on a drawing that is
 * held already, so that its first row says what it begins with.
 */
function keyBegins({ exposures, cycles }: SolvedLevel): (frame: number) => boolean {
  const opens = new Set(cycles.map(({ firstFrame }) => firstFrame));
  return (frame) => {
    const { starts, kind } = exposures[frame - 1]!;
    return starts || (kind !== 'empty' && opens.has(frame));
  };
}

function westernSign(exposure: Exposure): KeySign {
  if (exposure.kind === 'empty') return { form: 'empty' };
  const text = String(exposure.cel);
  if (exposure.kind === 'key') return { form: 'key', text };
  return exposure.kind === 'breakdown' ? { form: 'underlined', text } : { form: 'number', text };
}

function japaneseSigns(level: SolvedLevel, begins: (frame: number) => boolean): (KeySign | null)[] {
  const before = predecessors(level);
  const reused = new Set(level.drawings.filter((one) => one.reused).map((one) => one.drawing));
  /** The drawing that the next in-between has to follow to stand in its turn. */
  let last: string | null = null;
  return level.exposures.map((exposure): KeySign | null => {
    const { drawing, kind, frame, again, back } = exposure;
    if (!begins(frame)) return null;
    if (drawing === null) {
      last = null;
      return { form: 'empty' };
    }
    if (kind === 'key') {
      last = drawing;
      return { form: 'key', text: drawing };
    }
    const inTurn = before.get(drawing) === last;
    if (!inTurn && !back) return { form: 'named', text: drawing };
    last = drawing;
    if (again || back) return { form: 'again' };
    if (reused.has(drawing)) return { form: kind === 'breakdown' ? 'reused breakdown' : 'again' };
    return { form: kind === 'breakdown' ? 'breakdown' : 'dash' };
  });
}

/** Of each in-between the drawing that it follows in its passage. */
function predecessors(level: SolvedLevel): Map<string, string> {
  const before = new Map<string, string>();
  for (const { from, drawings } of level.passages)
    drawings.forEach((drawing, i) => {
      before.set(drawing, drawings[i - 1] ?? from);
    });
  return before;
}

/** What is held on a frame where nothing begins, as it is written after a break (without its square brackets). */
export function heldText(signs: readonly (KeySign | null)[], frame: number): string {
  const sign = signs.slice(0, frame).findLast((one) => one !== null);
  if (!sign) return '';
  switch (sign.form) {
    case 'dash':
      return '–';
    case 'again':
      return '○';
    case 'breakdown':
      return '(–)';
    case 'reused breakdown':
      return '(○)';
    case 'empty':
      return '×';
    default:
      return sign.text;
  }
}
