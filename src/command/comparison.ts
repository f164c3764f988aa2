/** Two sides of a comparison → which of their cuts differ, and which have no other half. */

import type { Reporter } from '../build/reporter.js';
import { type Change, compare } from '../compare/compare-cuts.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { type ComparisonSide, type Version, versionsOf } from './comparison-sides.js';

/** Says of two versions of a cut what the run will print; the versions themselves are not kept. */
export type Tell<T> = (was: SolvedShot, is: SolvedShot, changes: readonly Change[]) => T;

export interface Comparison<T> {
  /** In the order of the new side. */
  readonly differing: readonly T[];
  readonly onlyOld: readonly string[];
  readonly onlyNow: readonly string[];
  readonly compared: number;
  /** One file was named, and the many of the other side have no cut of its number. */
  readonly restricted: { readonly label: string; readonly key: string } | null;
}

export function compareSides<T>(
  old: ComparisonSide,
  now: ComparisonSide,
  reporter: Reporter,
  tell: Tell<T>,
): Promise<Comparison<T>> {
  return new Pairing(old, now, reporter, tell).all();
}

/** Brings the cuts of both sides together by their numbers, holding no more of them than wait for their other half. */
class Pairing<T> {
  private readonly waiting = { old: new Map<string, Version>(), now: new Map<string, Version>() };
  private readonly order = new Map<string, number>();
  private readonly differing: { readonly key: string; readonly told: T }[] = [];
  /** Files whose number nobody knows. */
  private readonly unknown = new Set<string>();
  private compared = 0;

  constructor(
    private readonly old: ComparisonSide,
    private readonly now: ComparisonSide,
    private readonly reporter: Reporter,
    private readonly tell: Tell<T>,
  ) {}

  async all(): Promise<Comparison<T>> {
    const sources = { old: versionsOf(this.old, this.reporter), now: versionsOf(this.now, this.reporter) };
    const both = this.old.single && this.now.single;
    for (let running = true; running; ) {
      running = false;
      const taken: Partial<Record<'old' | 'now', Version>> = {};
      for (const name of ['old', 'now'] as const) {
        const next = await sources[name].next();
        if (next.done) continue;
        running = true;
        if (both) taken[name] = next.value;
        else this.meet(name, next.value);
      }
      if (taken.old && taken.now) this.pair(taken.old, taken.now);
      // There then and gone now, or the other way round.
      else for (const name of ['old', 'now'] as const) if (taken[name]) this.meet(name, taken[name]);
    }
    return this.result();
  }

  private meet(name: 'old' | 'now', version: Version): void {
    const { key, file } = version;
    if (key === null) {
      this.unknown.add(file);
      return;
    }
    if (name === 'now') this.order.set(key, this.order.size);
    const others = this.waiting[name === 'old' ? 'now' : 'old'];
    const other = others.get(key);
    if (!other) {
      this.waiting[name].set(key, version);
      return;
    }
    others.delete(key);
    if (name === 'old') this.pair(version, other);
    else this.pair(other, version);
  }

  private pair({ solved: old }: Version, { solved: now, key }: Version): void {
    if (!old || !now) return;
    this.compared += 1;
    const changes = compare(old, now);
    if (changes.length > 0) this.differing.push({ key: key ?? '', told: this.tell(old, now, changes) });
  }

  private result(): Comparison<T> {
    const { old, now, waiting, compared } = this;
    const only = (name: 'old' | 'now') =>
      [...waiting[name]].filter(([, { file }]) => !this.unknown.has(file)).map(([key]) => key);
    const place = (key: string) => this.order.get(key) ?? 0;
    const differing = [...this.differing].sort((a, b) => place(a.key) - place(b.key)).map(({ told }) => told);
    // Of many against one only the one of its number is meant.
    const alone = old.single !== now.single;
    const single = old.single ? 'old' : 'now';
    const [key] = alone ? only(single) : [];
    const restricted = key === undefined ? null : { label: (old.single ? now : old).label, key };
    return {
      differing,
      onlyOld: alone ? [] : only('old'),
      onlyNow: alone ? [] : only('now'),
      compared,
      restricted,
    };
  }
}
