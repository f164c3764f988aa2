/** What a level shows in two versions: events of the alignment → changes, each said once. */

import type { Frames } from '../shot/shot.js';
import type { Change, ChangeBody, ChangeOf, Follow, Seen, Shown } from './change.js';
import { type Aligned, type Anchors, type Event, type Story, story } from './events.js';
import type { Names } from './names.js';
import type { OtherCount } from './passages.js';
import { pairCycles, passesOf, type Token, tokensOf, wholePasses } from './tokens.js';

const NO_ANCHORS: Anchors = { old: new Set(), now: new Set() };

/** Changes of exposures and of in-between counts; `counts` are the passages that have more or fewer. */
export function exposureChanges(
  level: string,
  names: Names,
  anchors: Anchors,
  counts: readonly OtherCount[],
): Change[] {
  const { old, now } = pairCycles(tokensOf(names.old), tokensOf(names.now), names);
  const teller = new Teller(level, names, counts);
  teller.tell(old, now, anchors, 'level');
  return teller.finish();
}

class Teller {
  private readonly changes: Change[] = [];
  /** What more or fewer in-betweens do to the time, by passage. */
  private readonly counted = new Map<
    OtherCount,
    Pick<ChangeOf<'in-betweens'>, 'holder' | 'follows' | 'frame'>
  >();
  private readonly drawn: { readonly old: Set<string>; readonly now: Set<string> };

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
  tell(
    old: readonly Token[],
    now: readonly Token[],
    anchors: Anchors,
    what: 'level' | 'pass' | 'part',
  ): void {
    const whole = what === 'level';
    const told = story(old, now, anchors, what !== 'pass', (pair) => this.differsInside(pair));
    const { events, aligned } = told;
    for (let e = 0; e < events.length; e++) {
      const event = events[e]!;
      const next = events[e + 1];
      const opposite = next !== undefined && next.delta === -event.delta && event.delta !== 0;
      if (next?.type === 'region' && opposite && this.holdsEnd(event, next, told)) {
        this.length(event, told, e, whole);
        e++;
      } else if (event.type === 'length') {
        const one = event.first === event.last;
        if (next?.type === 'region' && opposite && one && next.after === event.last) {
          this.region(next, told, aligned[event.first]!.now, whole);
          e++;
        } else if (next?.type === 'length' && opposite && one && next.first === next.last) {
          this.moved(aligned.slice(event.last + 1, next.first + 1), event.delta, whole);
          e++;
        } else this.length(event, told, e, whole);
      } else if (event.type === 'region') {
        const holds = next?.type === 'length' && next.first === event.after + 1 && next.first === next.last;
        if (holds && opposite) {
          this.region(event, told, aligned[next.first]!.now, whole);
          e++;
        } else this.region(event, told, null, whole);
      } else if (event.type === 'anchor') {
        this.moved(aligned.slice(event.first, endOf(told, e) + 1), event.delta, whole);
      } else this.cycle(aligned[event.first]!, event, told);
    }
  }

  /** Whether a cycle goes on over what was, or is now, the hold of a drawing of its own behind it. */
  private holdsEnd(
    event: Event,
    region: Extract<Event, { type: 'region' }>,
    { aligned }: Story,
  ): event is Extract<Event, { type: 'length' | 'cycle' }> {
    if (event.type !== 'length' && event.type !== 'cycle') return false;
    const pair = aligned[event.last]!;
    const tokens = [...region.old, ...region.now];
    if (!pair.now.cycle || region.after !== event.last || tokens.length !== 1) return false;
    return [pair.old, pair.now].some(({ cycle }) =>
      cycle!.pass.some(({ symbol }) => symbol === tokens[0]!.symbol),
    );
  }

  private push(body: ChangeBody, rows: Frames): void {
    this.changes.push({ ...body, place: { kind: 'level', level: this.level }, rows } as Change);
  }

  private length(
    event: Extract<Event, { type: 'length' | 'cycle' }>,
    told: Story,
    e: number,
    whole: boolean,
  ): void {
    const { aligned } = told;
    const [first, last] = [aligned[event.first]!, aligned[event.last]!];
    const { seen, cycle } = first.now;
    if (event.type === 'cycle') {
      this.cycle(first, event, told);
      return;
    }
    if (seen.form === 'empty' && event.last < aligned.length - 1) {
      this.moved(aligned.slice(event.last + 1, endOf(told, e) + 1), event.delta, whole);
      return;
    }
    const rows = { from: first.now.start, to: last.now.start + last.now.frames - 1 };
    const follows = followOf(event, told);
    if (seen.form === 'cycle' && cycle) {
      this.push({ ...this.cycleBody(first), what: 'length', follows }, rows);
      return;
    }
    this.push(
      {
        kind: 'exposure',
        level: this.level,
        first: seen,
        last: last.now.seen,
        count: event.last - event.first + 1,
        frames: { old: first.old.frames, now: first.now.frames },
        from: { old: first.old.start, now: first.now.start },
        inCycle: !whole,
        follows,
      },
      rows,
    );
  }

  private moved(block: readonly Aligned[], by: number, whole: boolean): void {
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
        inCycle: !whole,
      },
      { from: first.now.start, to: block.at(-1)!.now.start + block.at(-1)!.now.frames - 1 },
    );
  }

  private region(
    event: Extract<Event, { type: 'region' }>,
    told: Story,
    held: Token | null,
    whole: boolean,
  ): void {
    const holder = held?.seen ?? null;
    const follows = held ? null : followOf(event, told);
    const counts = new Set<OtherCount>();
    const rest = (tokens: readonly Token[]) =>
      tokens.filter((token) => {
        const count = this.counts.find(({ symbols }) => symbols.has(token.symbol));
        if (count) counts.add(count);
        return !count;
      });
    // What is put into a hold parts it in two: the second half is nothing new.
    const parted = (tokens: readonly Token[]) => {
      if (tokens.length < 2 || !held || held.cycle) return tokens;
      if (tokens.at(-1)!.symbol === held.symbol) return tokens.slice(0, -1);
      return tokens[0]!.symbol === held.symbol ? tokens.slice(1) : tokens;
    };
    const [old, now] = [parted(rest(event.old)), parted(rest(event.now))];
    const before = told.aligned[event.after];
    const from = {
      old: (old[0] ?? event.old[0])?.start ?? (before ? before.old.start + before.old.frames : 1),
      now: (now[0] ?? event.now[0])?.start ?? (before ? before.now.start + before.now.frames : 1),
    };
    for (const count of counts) {
      if (!this.counted.has(count)) this.counted.set(count, { holder, follows, frame: from.now });
    }
    if (old.length + now.length === 0) return;
    const length = this.names.now.level.exposures.length;
    const start = Math.min(now[0]?.start ?? from.now, length);
    const end = now.length > 0 ? now.at(-1)!.start + now.at(-1)!.frames - 1 : start;
    this.push(
      {
        kind: 'shown',
        level: this.level,
        old: old.map((token) => shown(token, this.drawn.now)),
        now: now.map((token) => shown(token, this.drawn.old)),
        from,
        holder,
        inCycle: !whole,
        follows: counts.size > 0 ? null : follows,
      },
      { from: start, to: end },
    );
  }

  /** Whether a cycle changed in other ways than by what is left for it. */
  private differsInside({ old, now }: Aligned): boolean {
    const [a, b] = [old.cycle, now.cycle];
    if (!a || !b) return false;
    if (a.bounce !== b.bounce || this.otherTimes({ old, now })) return true;
    if (a.passFrames !== b.passFrames && wholePasses(old, now)) return true;
    const [before, after] = passesOf(old, now);
    if (before.length !== after.length) return true;
    return before.some((token, i) => {
      const other = after[i]!;
      if (token.cycle && other.cycle) return this.differsInside({ old: token, now: other });
      return token.symbol !== other.symbol || token.frames !== other.frames;
    });
  }

  private otherTimes({ old, now }: Aligned): boolean {
    const [a, b] = [old.cycle!, now.cycle!];
    return old.frames !== now.frames && a.times !== b.times && a.times !== null && b.times !== null;
  }

  private cycleBody({ old, now }: Aligned) {
    const [a, b] = [old.cycle!, now.cycle!];
    return {
      kind: 'cycle' as const,
      level: this.level,
      cycle: now.seen as Extract<Seen, { form: 'cycle' }>,
      from: { old: old.start, now: now.start },
      times: { old: a.times, now: b.times },
      pass: { old: a.passFrames, now: b.passFrames },
      frames: { old: old.frames, now: now.frames },
      bounce: { old: a.bounce, now: b.bounce },
    };
  }

  private cycle(pair: Aligned, event: Event, told: Story): void {
    const { old, now } = pair;
    const [a, b] = [old.cycle!, now.cycle!];
    const rows = { from: now.start, to: now.start + now.frames - 1 };
    const follows = followOf(event, told);
    if (a.bounce !== b.bounce) {
      this.push({ ...this.cycleBody(pair), what: 'bounce', follows }, rows);
      return;
    }
    // The whole number of passes says it best; else how long it lasts.
    const whole = old.frames % a.passFrames === 0 && now.frames % b.passFrames === 0;
    if (this.otherTimes(pair)) {
      this.push({ ...this.cycleBody(pair), what: whole ? 'times' : 'length', follows }, rows);
    }
    const [before, after] = passesOf(old, now);
    const inner = pairCycles(before, after, this.names);
    this.tell(inner.old, inner.now, NO_ANCHORS, wholePasses(old, now) ? 'pass' : 'part');
  }

  private inBetweens(count: OtherCount): Change {
    const { old, now, from, to } = count;
    const { names } = this;
    const only = (mine: OtherCount['old'], side: 'old' | 'now', others: ReadonlySet<string>) =>
      (mine?.drawings ?? [])
        .filter((drawing) => !others.has(names[side].symbols.get(drawing)!))
        .flatMap((drawing) => {
          const known = names[side].level.drawings.find((one) => one.drawing === drawing);
          return known ? [{ drawing, cel: known.cel }] : [];
        });
    const symbols = (mine: OtherCount['old'], side: 'old' | 'now') =>
      new Set((mine?.drawings ?? []).map((drawing) => names[side].symbols.get(drawing)!));
    const time = this.counted.get(count);
    const frame = now?.firstFrame ?? time?.frame ?? 1;
    const end = now ? lastRowOf(names, now.drawings, frame) : frame;
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
      rows: { from: frame, to: end },
    };
  }
}

/** The last row of a passage where it is first shown. */
function lastRowOf({ now }: Names, drawings: readonly string[], first: number): number {
  let frame = first;
  const names = new Set<string | null>(drawings);
  while (frame < now.level.exposures.length && names.has(now.level.exposures[frame]!.drawing)) frame++;
  return frame;
}

function shown({ seen, start, frames, symbol }: Token, others: ReadonlySet<string>): Shown {
  return { seen, from: start, frames, fresh: seen.form === 'drawing' && !others.has(symbol) };
}

/** The last aligned one before the event after this one. */
function endOf({ events, aligned }: Story, e: number): number {
  const next = events[e + 1];
  if (!next) return aligned.length - 1;
  if (next.type === 'region') return next.after;
  return next.type === 'anchor' ? next.first - 1 : next.first;
}

/** What an event moves that is not said elsewhere. */
function followOf(event: Event, told: Story): Follow | null {
  const { aligned } = told;
  const first =
    event.type === 'region' ? event.after + 1 : event.type === 'anchor' ? event.first : event.last + 1;
  const next = aligned[first];
  if (event.delta === 0 || !next) return null;
  // Up to where things stand again as they did.
  let last = first;
  const away = (k: number) => aligned[k]!.now.start - aligned[k]!.old.start;
  const shift = away(first);
  if (shift === 0 && told.pinned) return null;
  while (last + 1 < aligned.length && away(last + 1) === shift) last++;
  const toEnd = last === aligned.length - 1;
  return { by: event.delta, last: toEnd ? null : aligned[last]!.now.seen };
}
