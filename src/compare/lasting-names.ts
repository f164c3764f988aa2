/**
 * Names of drawings that last from one version to the next. What a text calls `1.1` is called `1>2.1` as soon as its key leads to
 * another key too; here an in-between is always named by both keys. Keys that took another's place keep its name.
 */

import type { SolvedLevel } from '../solve/solved-shot.js';
import { align } from './align.js';
import type { Named } from './exposure-tokens.js';

export interface Names {
  readonly old: Named;
  readonly now: Named;
  /** Keys in whose place another one stands: the new name by the old one. */
  readonly replaced: ReadonlyMap<string, string>;
}

export function nameBoth(old: SolvedLevel, now: SolvedLevel): Names {
  const replaced = replacedKeys(old, now);
  return {
    old: { level: old, symbols: symbolsOf(old, (key) => replaced.get(key) ?? key) },
    now: { level: now, symbols: symbolsOf(now, (key) => key) },
    replaced,
  };
}

function symbolsOf(level: SolvedLevel, key: (name: string) => string): Map<string, string> {
  const symbols = new Map<string, string>();
  const pairs = new Map<string, number>();
  for (const { from, to, drawings } of level.passages) {
    const pair = `${key(from)}>${key(to)}`;
    // Passages of one pair of keys with another count are other drawings.
    const count = pairs.get(pair) ?? 0;
    pairs.set(pair, count + 1);
    for (const drawing of drawings) {
      const place = /\.([^./]+)(\/\d+)?$/.exec(drawing)?.[1] ?? drawing;
      if (!symbols.has(drawing))
        symbols.set(drawing, `${pair}.${place}${count > 0 ? `/${drawings.length}` : ''}`);
    }
  }
  for (const { drawing, kind } of level.drawings) {
    if (!symbols.has(drawing)) symbols.set(drawing, kind === 'key' ? key(drawing) : drawing);
  }
  return symbols;
}

/** Keys that stand wherever another one stood, which is gone. */
function replacedKeys(old: SolvedLevel, now: SolvedLevel): Map<string, string> {
  const [keysOld, keysNow] = [old, now].map(keysOf) as [Set<string>, Set<string>];
  const gone = new Set([...keysOld].filter((key) => !keysNow.has(key)));
  const come = new Set([...keysNow].filter((key) => !keysOld.has(key)));
  if (gone.size === 0 || come.size === 0) return new Map();
  // Keys that went and keys that came are aligned as if all of them were one.
  const [shownOld, shownNow] = [shownKeys(old, gone), shownKeys(now, come)];
  const places = new Map<string, Map<string, number>>();
  for (const [i, j] of align(shownOld, shownNow)) {
    const [a, b] = [shownOld[i]!, shownNow[j]!];
    if (a.symbol !== OTHER) continue;
    const counts = places.get(a.name) ?? new Map<string, number>();
    places.set(a.name, counts.set(b.name, (counts.get(b.name) ?? 0) + 1));
  }
  const count = (shown: readonly { name: string }[], name: string) =>
    shown.filter((one) => one.name === name).length;
  const replaced = new Map<string, string>();
  for (const [name, counts] of places) {
    const [other] = [...counts.keys()];
    const times = counts.get(other!)!;
    const everywhere = times === count(shownOld, name) && times === count(shownNow, other!);
    if (counts.size === 1 && everywhere && ![...replaced.values()].includes(other!))
      replaced.set(name, other!);
  }
  return replaced;
}

/** Stands for every key that the other version does not have; no name is like it. */
const OTHER = '?';

function shownKeys(level: SolvedLevel, alone: ReadonlySet<string>) {
  const shown: { name: string; symbol: string; frames: number }[] = [];
  for (const { drawing, kind, starts } of level.exposures) {
    if (kind === 'empty' && starts) shown.push({ name: '', symbol: '', frames: 1 });
    if (kind !== 'key' || !starts) continue;
    shown.push({ name: drawing!, symbol: alone.has(drawing!) ? OTHER : drawing!, frames: 1 });
  }
  return shown;
}

function keysOf(level: SolvedLevel): Set<string> {
  return new Set(level.drawings.filter(({ kind }) => kind === 'key').map(({ drawing }) => drawing));
}
