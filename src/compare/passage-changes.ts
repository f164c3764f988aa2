/** In-betweens, charts and finished numbers of a level in two versions. */

import type { SolvedLevel, SolvedPassage } from '../solve/solved-shot.js';
import type { ChangeOf } from './change.js';
import type { Named, Names } from './exposure-tokens.js';

/** A passage with more or fewer in-betweens than before. */
export interface OtherCount {
  readonly from: string;
  readonly to: string;
  readonly old: SolvedPassage | null;
  readonly now: SolvedPassage | null;
  /** The lasting names of all its in-betweens. */
  readonly symbols: ReadonlySet<string>;
}

export interface PassageComparison {
  readonly counts: readonly OtherCount[];
  /** Passages that are the same drawings in both. */
  readonly same: readonly (readonly [SolvedPassage, SolvedPassage])[];
}

export function comparePassages({ old, now, replaced }: Names): PassageComparison {
  const key = (name: string) => replaced.get(name) ?? name;
  const byPair = new Map<string, { old: SolvedPassage[]; now: SolvedPassage[] }>();
  const of = (pair: string) => {
    const known = byPair.get(pair) ?? { old: [], now: [] };
    byPair.set(pair, known);
    return known;
  };
  for (const one of old.level.passages) of(`${key(one.from)}>${key(one.to)}`).old.push(one);
  for (const one of now.level.passages) of(`${one.from}>${one.to}`).now.push(one);
  const touching = { old: touch(old.level, key), now: touch(now.level, (name) => name) };
  const counts: OtherCount[] = [];
  const same: [SolvedPassage, SolvedPassage][] = [];
  for (const [pair, sides] of byPair) {
    const left = [...sides.now];
    const open: SolvedPassage[] = [];
    for (const one of sides.old) {
      const at = left.findIndex((other) => other.drawings.length === one.drawings.length);
      if (at >= 0) same.push([one, left.splice(at, 1)[0]!]);
      else open.push(one);
    }
    for (let i = 0; i < Math.max(open.length, left.length); i++) {
      const [before = null, after = null] = [open[i], left[i]];
      // In-betweens that come or go are a matter of their passage only where the same two keys still follow each other.
      if (!before && !touching.old.has(pair)) continue;
      if (!after && !touching.now.has(pair)) continue;
      const symbols = new Set([
        ...(before?.drawings ?? []).map((name) => old.symbols.get(name)!),
        ...(after?.drawings ?? []).map((name) => now.symbols.get(name)!),
      ]);
      const { from, to } = (after ?? before)!;
      counts.push({
        from: after ? from : key(from),
        to: after ? to : key(to),
        old: before,
        now: after,
        symbols,
      });
    }
  }
  return { counts, same };
}

/** Keys that are shown straight after each other. */
function touch({ exposures }: SolvedLevel, key: (name: string) => string): Set<string> {
  const pairs = new Set<string>();
  for (const [i, { kind, drawing, starts }] of exposures.entries()) {
    const before = exposures[i - 1];
    if (starts && kind === 'key' && before?.kind === 'key')
      pairs.add(`${key(before.drawing!)}>${key(drawing!)}`);
  }
  return pairs;
}

/** Other spacing of in-betweens that are as many as before. */
export function chartChanges(level: string, { same }: PassageComparison): ChangeOf<'chart'>[] {
  return same.flatMap(([old, now]) => {
    if (old.fractions.every((one, i) => Math.abs(one - now.fractions[i]!) < 1e-9)) return [];
    return [
      {
        kind: 'chart' as const,
        level,
        from: now.from,
        to: now.to,
        chart: { old: old.chart, now: now.chart },
        fractions: { old: old.fractions, now: now.fractions },
        place: { kind: 'level' as const, level },
        rows: { from: now.firstFrame, to: now.firstFrame },
      },
    ];
  });
}

/** Drawings that lie elsewhere on the way, though their passage has more or fewer in-betweens. */
export function placeChanges(
  level: string,
  { counts }: PassageComparison,
  { old, now }: Names,
): ChangeOf<'places'>[] {
  const cels = new Map(now.level.drawings.map(({ drawing, cel }) => [drawing, cel]));
  return counts.flatMap((count) => {
    if (!count.old || !count.now) return [];
    const { old: before, now: after } = count;
    const were = new Map(before.drawings.map((name, i) => [old.symbols.get(name), before.fractions[i]!]));
    const drawings = after.drawings.flatMap((drawing, i) => {
      const was = were.get(now.symbols.get(drawing));
      const cel = cels.get(drawing);
      const share = after.fractions[i]!;
      if (was === undefined || cel === undefined || Math.abs(was - share) < 1e-9) return [];
      return [{ drawing, cel, old: was, now: share }];
    });
    if (drawings.length === 0) return [];
    return [
      {
        kind: 'places' as const,
        level,
        from: after.from,
        to: after.to,
        drawings,
        place: { kind: 'level' as const, level },
        rows: { from: after.firstFrame, to: after.firstFrame },
      },
    ];
  });
}

/** Breakdowns and finished numbers of the drawings that are in both versions. */
export function drawingChanges(level: string, { old, now }: { old: Named; now: Named }) {
  // Where keys run backwards two drawings may have one name: the first then stands for the first, the second for the second.
  const before = new Map<string, SolvedLevel['drawings'][number][]>();
  for (const one of old.level.drawings) {
    const symbol = old.symbols.get(one.drawing)!;
    const alike = before.get(symbol);
    if (alike) alike.push(one);
    else before.set(symbol, [one]);
  }
  const met = new Map<string, number>();
  const breakdowns: ChangeOf<'breakdown'>[] = [];
  const numbers: { drawing: string; old: number; now: number; frame: number }[] = [];
  for (const { drawing, kind, cel, firstFrame } of now.level.drawings) {
    const symbol = now.symbols.get(drawing)!;
    const nth = met.get(symbol) ?? 0;
    met.set(symbol, nth + 1);
    const was = before.get(symbol)?.[nth];
    if (!was) continue;
    const place = { kind: 'level' as const, level };
    if (was.kind !== kind && was.kind !== 'key' && kind !== 'key') {
      const rows = { from: firstFrame, to: firstFrame };
      breakdowns.push({ kind: 'breakdown', level, drawing, cel, now: kind === 'breakdown', place, rows });
    }
    if (was.cel !== cel) numbers.push({ drawing, old: was.cel, now: cel, frame: firstFrame });
  }
  numbers.sort((a, b) => a.old - b.old);
  const renumbered: ChangeOf<'renumbered'>[] =
    numbers.length === 0
      ? []
      : [
          {
            kind: 'renumbered',
            level,
            numbers: numbers.map(({ drawing, old: from, now: to }) => ({ drawing, old: from, now: to })),
            place: { kind: 'level', level },
            // Their rows show what they showed; the number beside them says the rest.
            rows: null,
          },
        ];
  return { breakdowns, renumbered };
}
