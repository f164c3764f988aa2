/** What a level shows in two versions: events of the alignment → changes, each said once. */

import type { Frames } from '../shot/shot.js';
import {
  type Aligned,
  type Anchors,
  type Event,
  followOf,
  type LevelEvents,
  lastAlignedBefore,
  type Scope,
  story,
} from './alignment-events.js';
import type { Change, ChangeBody, ChangeOf, Follow, SeenThing, Shown } from './change.js';
import { differs, endHeld, otherTimes, pairCycles, passesOf, regrouped, wholePasses } from './cycle-pairs.js';
import { type ExposureToken, type Names, tokensOf } from './exposure-tokens.js';
import type { OtherCount } from './passage-changes.js';

const NO_ANCHORS: Anchors = { old: new Set(), now: new Set() };

type EventOf<T extends Event['type']> = Extract<Event, { type: T }>;

/** Changes of exposures and of in-between counts; `counts` are the passages that have more or fewer. */
export function exposureChanges(
  level: string,
  names: Names,
  anchors: Anchors,
  counts: readonly OtherCount[],
): Change[] {
  const teller = new Teller(level, names, counts);
  teller.tell(tokensOf(names.old), tokensOf(names.now), anchors, 'level');
  return teller.finish();
}

class Teller {
  private readonly changes: Change[] = [];
  /** What more or fewer in-betweens do to the time, by passage. */
  private readonly counted = new Map<
    OtherCount,
    Pick<ChangeOf<'in-betweens'>, 'holder' | 'follows' | 'frame'>
  >();
  private readonly drawn: { readonly old: ReadonlySet<string>; readonly now: ReadonlySet<string> };
  /** Cycles that the other version does not have. */
  private readonly alone = { old: new Set<ExposureToken>(), now: new Set<ExposureToken>() };
  /** Inside a cycle: what its passes, taken together, do to what follows it, until that is said. */
  private outer: Follow | null | undefined;

  constructor(
    private readonly level: string,
    private readonly names: Names,
    private readonly counts: readonly OtherCount[],
  ) {
    this.drawn = {
      old: new Set(names.old.symbols.values()),
      now: new Set(names.now.symbols.values()),
    };
  }

  finish(): Change[] {
    for (const count of this.counts) this.changes.push(this.inBetweens(count));
    return this.changes;
  }

  /** Two sequences, of the whole level or of one pass of a cycle. */
  tell(old: readonly ExposureToken[], now: readonly ExposureToken[], anchors: Anchors, scope: Scope): void {
    const paired = pairCycles(old, now, this.names);
    for (const side of ['old', 'now'] as const)
      for (const token of paired.alone[side]) this.alone[side].add(token);
    const told = story(paired.old, paired.now, anchors, scope, (pair, yields) => differs(pair, yields));
    const inCycle = scope !== 'level';
    const { events, aligned } = told;
    for (let e = 0; e < events.length; e++) {
      const event = events[e]!;
      const next = events[e + 1];
      const opposite = next !== undefined && next.delta === -event.delta && event.delta !== 0;
      switch (event.type) {
        case 'length': {
          const one = event.first === event.last;
          const rest = next && next.type === 'region' && joinedHold(event, next, aligned);
          if (rest) {
            this.region(rest, told, e + 1, null, inCycle);
            e++;
          } else if (next?.type === 'region' && opposite && one && next.after === event.last) {
            this.region(next, told, e + 1, aligned[event.first]!.now, inCycle);
            e++;
          } else if (next?.type === 'length' && opposite && one && next.first === next.last) {
            this.moved(told, event.last + 1, next.first, event.delta);
            e++;
          } else this.length(event, told, e, inCycle);
          break;
        }
        case 'region': {
          const rest = next?.type === 'length' && joinedHold(next, event, aligned);
          if (rest) {
            this.region(rest, told, e + 1, null, inCycle);
            e++;
            break;
          }
          const holds = next?.type === 'length' && next.first === event.after + 1 && next.first === next.last;
          this.region(event, told, e, holds && opposite ? aligned[next.first]!.now : null, inCycle);
          if (holds && opposite) e++;
          break;
        }
        case 'anchor':
          this.moved(told, event.first, lastAlignedBefore(told, e), event.delta);
          break;
        case 'cycle':
          this.cycle(aligned[event.first]!, this.follow(event, told, e));
      }
    }
  }

  private push(body: ChangeBody, rows: Frames): void {
    const { length } = this.names.now.level.exposures;
    const from = Math.min(rows.from, length);
    const clamped = { from, to: Math.max(from, Math.min(rows.to, length)) };
    this.changes.push({ ...body, place: { kind: 'level', level: this.level }, rows: clamped } as Change);
  }

  private follow(event: Event, told: LevelEvents, e: number): Follow | null {
    if (this.outer === undefined) return followOf(event, told, e);
    const follows = event.delta === 0 ? null : this.outer;
    if (follows) this.outer = null;
    return follows;
  }

  private length(event: EventOf<'length'>, told: LevelEvents, e: number, inCycle: boolean): void {
    const { aligned } = told;
    const [first, last] = [aligned[event.first]!, aligned[event.last]!];
    const { seen, cycle } = first.now;
    if (seen.form === 'empty' && event.last < aligned.length - 1) {
      this.moved(told, event.last + 1, lastAlignedBefore(told, e), event.delta);
      return;
    }
    const rows = rowsOf(first.now, last.now);
    const follows = this.follow(event, told, e);
    if (cycle && cycle.played !== first.old.cycle!.played) {
      this.push({ ...this.cycleBody(first), what: 'length', follows }, otherRows(first));
      return;
    }
    // A cycle that is played as before is held otherwise on what it ends on.
    const [before, after] = [first.old, first.now].map(cycle ? endHeld : (token: ExposureToken) => token) as [
      ExposureToken,
      ExposureToken,
    ];
    this.push(
      {
        kind: 'exposure',
        level: this.level,
        first: after.seen,
        last: cycle ? after.seen : last.now.seen,
        count: event.last - event.first + 1,
        frames: { old: before.frames, now: after.frames },
        from: { old: before.start, now: after.start },
        inCycle,
        follows,
      },
      cycle ? rowsOf(after, after) : rows,
    );
  }

  /** `start` … `end`: places of the aligned ones. */
  private moved({ aligned, scope }: LevelEvents, start: number, end: number, by: number): void {
    const block = aligned.slice(start, end + 1);
    const first = block.find(({ now }) => now.seen.form !== 'empty') ?? block[0];
    if (!first) return;
    const last = block.findLast(({ now }) => now.seen.form !== 'empty') ?? first;
    this.push(
      {
        kind: 'moved',
        level: this.level,
        first: first.now.seen,
        last: last.now.seen,
        by,
        from: { old: first.old.start, now: first.now.start },
        toEnd: end === aligned.length - 1,
        inCycle: scope !== 'level',
      },
      rowsOf(first.now, block.at(-1)!.now),
    );
  }

  private region(
    event: EventOf<'region'>,
    told: LevelEvents,
    e: number,
    held: ExposureToken | null,
    inCycle: boolean,
  ): void {
    const holder = held?.seen ?? null;
    const follows = held ? null : this.follow(event, told, e);
    const counts = new Set<OtherCount>();
    const rest = (tokens: readonly ExposureToken[]) =>
      tokens.filter((token) => {
        const count = this.counts.find(({ symbols }) => symbols.has(token.symbol));
        if (count) counts.add(count);
        return !count;
      });
    const [old, now] = [parted(rest(event.old), held), parted(rest(event.now), held)];
    const before = told.aligned[event.after];
    const behind = (side: 'old' | 'now') => (before ? before[side].start + before[side].frames : 1);
    const from = {
      old: (old[0] ?? event.old[0])?.start ?? behind('old'),
      now: (now[0] ?? event.now[0])?.start ?? behind('now'),
    };
    for (const count of counts) {
      if (!this.counted.has(count)) this.counted.set(count, { holder, follows, frame: from.now });
    }
    // What more in-betweens push out of a pass that is cut short is not dropped.
    const pushedOut = told.scope === 'part' && event.after === told.aligned.length - 1 && counts.size > 0;
    if (pushedOut ? old.length * now.length === 0 : old.length + now.length === 0) return;
    this.push(
      {
        kind: 'shown',
        level: this.level,
        old: regrouped(old, this.alone.old).map((token) => shown(token, this.drawn.now)),
        now: regrouped(now, this.alone.now).map((token) => shown(token, this.drawn.old)),
        from,
        holder,
        inCycle,
        follows: counts.size > 0 ? null : follows,
      },
      now.length > 0 ? rowsOf(now[0]!, now.at(-1)!) : { from: from.now, to: from.now },
    );
  }

  private cycleBody({ old, now }: Aligned) {
    const [a, b] = [old.cycle!, now.cycle!];
    return {
      kind: 'cycle' as const,
      level: this.level,
      cycle: now.seen as Extract<SeenThing, { form: 'cycle' }>,
      from: { old: old.start, now: now.start },
      times: { old: a.times, now: b.times },
      pass: { old: a.passFrames, now: b.passFrames },
      frames: { old: a.played, now: b.played },
      bounce: { old: a.bounce, now: b.bounce },
    };
  }

  /** A cycle that differs in itself. */
  private cycle(pair: Aligned, follows: Follow | null): void {
    const { old, now } = pair;
    const [a, b] = [old.cycle!, now.cycle!];
    const rows = rowsOf(now, now);
    const said = this.changes.length + this.counted.size;
    if (a.bounce !== b.bounce) {
      this.push({ ...this.cycleBody(pair), what: 'bounce', follows }, rows);
      return;
    }
    // The whole number of passes says it best; else how long it lasts.
    const whole = a.played % a.passFrames === 0 && b.played % b.passFrames === 0;
    const times = otherTimes(pair, false);
    const otherwise = wholePasses(old, now) && a.passFrames === b.passFrames ? otherRows(pair) : rows;
    if (times) this.push({ ...this.cycleBody(pair), what: whole ? 'times' : 'length', follows }, otherwise);
    const outer = this.outer;
    this.outer = times ? null : follows;
    this.tell(...passesOf(old, now), NO_ANCHORS, wholePasses(old, now) ? 'pass' : 'part');
    this.outer = outer;
    if (this.changes.length + this.counted.size === said && a.played !== b.played)
      this.push({ ...this.cycleBody(pair), what: 'length', follows }, otherwise);
  }

  private inBetweens(count: OtherCount): Change {
    const { old, now, from, to } = count;
    const { names } = this;
    const symbols = (mine: OtherCount['old'], side: 'old' | 'now') =>
      new Set((mine?.drawings ?? []).map((drawing) => names[side].symbols.get(drawing)!));
    const only = (mine: OtherCount['old'], side: 'old' | 'now', others: ReadonlySet<string>) =>
      (mine?.drawings ?? [])
        .filter((drawing) => !others.has(names[side].symbols.get(drawing)!))
        .flatMap((drawing) => {
          const known = names[side].level.drawings.find((one) => one.drawing === drawing);
          return known ? [{ drawing, cel: known.cel }] : [];
        });
    const time = this.counted.get(count);
    const { length } = names.now.level.exposures;
    const frame = Math.min(now?.firstFrame ?? time?.frame ?? 1, length);
    return {
      kind: 'in-betweens',
      level: this.level,
      from,
      to,
      count: { old: old?.drawings.length ?? 0, now: now?.drawings.length ?? 0 },
      added: only(now, 'now', symbols(old, 'old')),
      dropped: only(old, 'old', symbols(now, 'now')),
      frame,
      holder: time?.holder ?? null,
      follows: time?.follows ?? null,
      place: { kind: 'level', level: this.level },
      rows: { from: frame, to: now ? lastRowOf(names, now.drawings, frame) : frame },
    };
  }
}

/**
 * Something put into a hold, or taken out of it, where the other half of that hold counts as put in or taken out as well: the
 * region without that half. False where it is not so.
 */
function joinedHold(
  length: EventOf<'length'>,
  region: EventOf<'region'>,
  aligned: readonly Aligned[],
): EventOf<'region'> | false {
  const touches = region.after === length.last || region.after + 1 === length.first;
  if (!touches || length.first !== length.last) return false;
  const { symbol, cycle } = aligned[length.first]!.now;
  const [list, sign] = region.now.length === 0 ? [region.old, 1] : [region.now, -1];
  if (cycle || list.length < 2 || region.old.length * region.now.length > 0) return false;
  const half = (token: ExposureToken) => token.symbol === symbol && token.frames * sign === length.delta;
  const rest = half(list.at(-1)!) ? list.slice(0, -1) : half(list[0]!) ? list.slice(1) : null;
  if (!rest) return false;
  const delta = region.delta + length.delta;
  return region.now.length === 0 ? { ...region, old: rest, delta } : { ...region, now: rest, delta };
}

/** What is put into a hold parts it in two: the second half is nothing new. */
function parted(tokens: readonly ExposureToken[], held: ExposureToken | null): readonly ExposureToken[] {
  if (tokens.length < 2 || !held || held.cycle) return tokens;
  if (tokens.at(-1)!.symbol === held.symbol) return tokens.slice(0, -1);
  return tokens[0]!.symbol === held.symbol ? tokens.slice(1) : tokens;
}

const rowsOf = (first: ExposureToken, last: ExposureToken): Frames => ({
  from: first.start,
  to: last.start + last.frames - 1,
});

/** Of a cycle that is played longer than before, what is new; of one that is played shorter, where it ends now. */
function otherRows({ old, now }: Aligned): Frames {
  const { from, to } = rowsOf(now, now);
  return { from: Math.min(to, from + old.cycle!.played), to };
}

/** The last row of a passage where it is first shown. */
function lastRowOf({ now }: Names, drawings: readonly string[], first: number): number {
  let frame = first;
  const names = new Set<string | null>(drawings);
  while (frame < now.level.exposures.length && names.has(now.level.exposures[frame]!.drawing)) frame++;
  return frame;
}

function shown(token: ExposureToken, others: ReadonlySet<string>): Shown {
  const { seen, start, frames, symbol, cycle } = token;
  const fresh = cycle
    ? cycle.pass.some((one) => one.seen.form === 'drawing' && !others.has(one.symbol))
    : seen.form === 'drawing' && !others.has(symbol);
  return { seen, from: start, frames, fresh };
}
