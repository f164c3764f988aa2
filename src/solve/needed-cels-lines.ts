/** What a `cels` line must say so that the drawings of a level keep the numbers that they have now. */

import type { SolvedLevel, SolvedPassage, SolvedShot } from './solved-shot.js';

export interface Pins {
  readonly level: string;
  /** Entries of its `cels` line so far, 0 where it has none. */
  readonly before: number;
  /** The entries to be added: the first is number `before` + 1, `_` a number that is none of this level's. */
  readonly names: readonly string[];
}

/**
 * The levels that show drawings with no pinned number. A level that reuses another cut's pins only what is drawn for this cut; the
 * numbers below stay `_`. Where numbers go by frame, those on which no drawing starts stay `_`.
 */
export function pinsFor({ levels, shot }: SolvedShot): Pins[] {
  return levels.flatMap((level) => {
    const line = shot.levels.find(({ name }) => name === level.name)?.pinned?.names ?? [];
    const fresh = level.drawings.filter(({ cel, reused }) => !reused && cel > line.length);
    const last = fresh.at(-1);
    if (!last) return [];
    const before = line.length;
    const bare = new Set(
      line.flatMap((entry) => (entry.form === 'between' && entry.name.to === null ? [entry.name.key] : [])),
    );
    const named = new Map(fresh.map((drawing) => [drawing.cel, drawing]));
    const keys = new Map(fresh.flatMap(({ cel, drawing, kind }) => (kind === 'key' ? [[cel, drawing]] : [])));
    const ways = new Map(level.passages.flatMap(({ to, drawings }) => drawings.map((name) => [name, to])));
    const nextKeys: (string | undefined)[] = [];
    for (let cel = last.cel, next: string | undefined; cel > before; cel--) {
      nextKeys[cel] = next;
      next = keys.get(cel) ?? next;
    }
    const names = Array.from({ length: last.cel - before }, (_, i) => {
      const cel = before + 1 + i;
      const drawing = named.get(cel)?.drawing ?? '_';
      const to = ways.get(drawing);
      // With its second key where that is not the one behind it in the line, or where older names of the same key may have another:
      // when a way is gone, the drawings of the next one must not be taken for its.
      if (to === undefined || drawing.includes('>')) return drawing;
      return to === nextKeys[cel] && !bare.has(drawing.replace(/\..*/, ''))
        ? drawing
        : drawing.replace('.', `>${to}.`);
    });
    return [{ level: level.name, before, names }];
  });
}

/** A passage that is the second of its two keys with another count, so that its drawings have no name that a `cels` line may hold. */
export function unpinnable({ drawings, passages }: SolvedLevel): SolvedPassage | null {
  const fresh = new Set(drawings.filter(({ reused }) => !reused).map(({ drawing }) => drawing));
  return passages.find((each) => each.drawings.some((name) => name.includes('/') && fresh.has(name))) ?? null;
}

/** Pinned drawings that no frame shows: those with a name. */
export function unused({ missing }: SolvedLevel): SolvedLevel['missing'] {
  return missing.filter(({ drawing }) => drawing !== '');
}
