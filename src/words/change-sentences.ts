/**
 * A change between two versions of a cut as one sentence. The data that a sentence gets is what `compare` finds, and its types are all
 * that this folder takes from elsewhere: plain texts and numbers, counted already.
 */

import type { Change, ChangeOf, Frames, MannerValue, MoveSeen, SeenThing, Shown } from '../compare/change.js';

/** One way to say each kind of change: no full stop at its end, one line. */
export type ChangeSentences = {
  readonly [K in Change['kind']]: (change: ChangeOf<K>, t: SentenceFormat) => string;
};

/** How times, rows and quotes stand in a sentence, as the sheet of the cut writes them. */
export interface SentenceFormat {
  /** `5+12`, in the west `8'04`. */
  length(frames: number): string;
  /** Whether so many frames are told as `1+12`, not by their number. */
  long(frames: number): boolean;
  /** A row as the sheet and the text name it: `2+13`. */
  row(frame: number): string;
  /** Words that are quoted, cut where there are too many of them; `other`: words in whose place they stand, so that what differs is kept. */
  brief(text: string, other?: string): string;
  /** What a move is called: `A スライド ア→イ`. */
  move(seen: MoveSeen): string;
  /** A parameter of a move with one of its values: `every 1+12`, `no loop`. */
  parameter(change: ChangeOf<'move-manner'>, value: MannerValue): string;
}

// ---- what sentences about a change say in the same way in every language

export const isLater = (frames: { old: Frames; now: Frames }): number | null => {
  const by = frames.now.from - frames.old.from;
  return frames.now.to - frames.old.to === by ? by : null;
};

export const lasts = ({ from, to }: Frames): number => to - from + 1;

/** Runs of numbers that all move by the same: `4 to 12 → 5 to 13`. */
export function numberRuns(
  numbers: readonly { old: number; now: number }[],
): { old: readonly [number, number]; now: readonly [number, number] }[] {
  const runs: { old: [number, number]; now: [number, number] }[] = [];
  for (const { old, now } of numbers) {
    const last = runs.at(-1);
    if (last && old === last.old[1] + 1 && now === last.now[1] + 1) {
      last.old[1] = old;
      last.now[1] = now;
    } else runs.push({ old: [old, old], now: [now, now] });
  }
  return runs;
}

/** Whether two ends name a stretch of drawings that a reader finds in this order: one thing, or two rising numbers. */
export function rises(first: SeenThing, last: SeenThing): boolean {
  if (first.form !== 'drawing' || last.form !== 'drawing') return first === last || first.form === last.form;
  return first.cel <= last.cel;
}

// ---- lists of what is shown, by names of a language

/** What one thing, and a run of in-betweens, are called in a language. */
export interface Naming {
  one(it: SeenThing): string;
  /** An in-between by the keys that it lies between. */
  full(it: Extract<SeenThing, { form: 'drawing' }>): string;
  betweens(count: number): string;
  /** So many things that their ends must do. */
  ends(first: string, last: string, count: number): string;
  readonly comma: string;
}

const MOST_NAMED = 6;

/** The things of a list by name; where there are far too many, its ends. */
export function listOf(shown: readonly Shown[], naming: Naming): string {
  return listed(
    shown.map(({ seen }) => naming.one(seen)),
    shown.length,
    naming,
  );
}

/**
 * Two lists of which one stands in the other's place: in-betweens by their count, which is what differs; where that is the same,
 * by name, and two of one name by the keys that they lead to.
 */
export function listsOf(
  now: readonly Shown[],
  old: readonly Shown[],
  naming: Naming,
): [now: string, old: string] {
  const counted = [now, old].map((shown) => {
    const names: string[] = [];
    let betweens = 0;
    for (const seen of [...shown.map((one) => one.seen), null]) {
      if (seen?.form === 'drawing' && seen.kind !== 'key') {
        betweens += 1;
        continue;
      }
      if (betweens > 0) names.push(naming.betweens(betweens));
      betweens = 0;
      if (seen) names.push(naming.one(seen));
    }
    return listed(names, shown.length, naming);
  }) as [string, string];
  if (counted[0] !== counted[1]) return counted;
  const full = (shown: readonly Shown[], others: readonly Shown[]) => {
    const twins = new Set(others.map(({ seen }) => naming.one(seen)));
    const names = shown.map(({ seen }) =>
      seen.form === 'drawing' && seen.way && twins.has(naming.one(seen))
        ? naming.full(seen)
        : naming.one(seen),
    );
    return listed(names, shown.length, naming);
  };
  return [full(now, old), full(old, now)];
}

function listed(names: readonly string[], count: number, { comma, ends }: Naming): string {
  return names.length > MOST_NAMED ? ends(names[0]!, names.at(-1)!, count) : names.join(comma);
}
