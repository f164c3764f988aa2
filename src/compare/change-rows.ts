/** A comparison as the sheet marks it: change bars beside rows, and lines for the memo. */

import type { SolvedShot } from '../solve/solved-shot.js';
import type { LabelLanguage } from '../words/labels.js';
import type { Change, ChangePlace } from './change.js';
import { ON_PAPER, sentence, telling } from './sentence.js';

export interface MarkedRows {
  readonly place: ChangePlace;
  readonly from: number;
  readonly to: number;
}

export interface MarkedLadder {
  readonly level: string;
  readonly from: string;
  readonly to: string;
}

/** Rows that get a change bar, place by place, joined where they touch. Sorted by place in the order of the changes, then by row. */
export function markedRows(changes: readonly Change[], now: SolvedShot): readonly MarkedRows[] {
  const { length } = now.shot;
  const byPlace = new Map<string, { place: ChangePlace; rows: { from: number; to: number }[] }>();
  for (const { place, rows } of changes) {
    if (place === null || rows === null) continue;
    const key = JSON.stringify(place);
    const known = byPlace.get(key) ?? { place, rows: [] };
    byPlace.set(key, known);
    const from = Math.max(1, Math.min(rows.from, length));
    known.rows.push({ from, to: Math.max(from, Math.min(rows.to, length)) });
  }
  return [...byPlace.values()].flatMap(({ place, rows }) => {
    const joined: { from: number; to: number }[] = [];
    for (const { from, to } of rows.sort((a, b) => a.from - b.from)) {
      const last = joined.at(-1);
      if (last && from <= last.to + 1) last.to = Math.max(last.to, to);
      else joined.push({ from, to });
    }
    return joined.map((each) => ({ place, ...each }));
  });
}

/** The ladders of the charts that get a change bar: the passage from one key to another. */
export function markedLadders(changes: readonly Change[], { levels }: SolvedShot): readonly MarkedLadder[] {
  const found: MarkedLadder[] = [];
  const add = (ladder: MarkedLadder) => {
    const { level, from, to } = ladder;
    if (!found.some((one) => one.level === level && one.from === from && one.to === to)) found.push(ladder);
  };
  for (const change of changes) {
    if (change.kind === 'chart' || change.kind === 'places' || change.kind === 'in-betweens') {
      const { level, from, to } = change;
      add({ level, from, to });
    } else if (change.kind === 'breakdown') {
      const level = levels.find(({ name }) => name === change.level);
      for (const { from, to, drawings } of level?.passages ?? [])
        if (drawings.includes(change.drawing)) add({ level: change.level, from, to });
    }
  }
  return found;
}

/** One line a change. */
export function markedLines(
  changes: readonly Change[],
  now: SolvedShot,
  language: LabelLanguage,
): readonly string[] {
  const t = telling(now, language, ON_PAPER);
  return changes.map((change) => sentence(change, t));
}
