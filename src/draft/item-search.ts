/**
 * The shortest items that show the runs of a level: exposures, cycles, ways there and back, holds to the end. Dynamic
 * programming over the runs; the cost of a text is its length, so that what is chosen is what one would type.
 */

import { splitSeconds } from '../shot/time-notation.js';
import { betweenParts, type ExposureRun, type LevelNotation, type RunNotation } from './exposure-runs.js';

/** Items of a timeline, as they are written. */
export type DraftItem =
  | { readonly kind: 'on'; readonly frames: number }
  | {
      readonly kind: 'item';
      readonly run: ExposureRun;
      readonly how: RunNotation;
      readonly length: DraftLength;
    }
  | {
      readonly kind: 'group';
      readonly body: readonly DraftItem[];
      readonly bounce: boolean;
      readonly repeat: { readonly times: number } | 'open';
    };

/** How the exposure of an item is said: not at all, in frames, or `..`. */
export type DraftLength = 'on' | 'open' | number;

/** The longest cycle that is looked for, in runs; a longer one is written out. */
const LONGEST_CYCLE = 96;
/** Exposures that are tried as the one that goes without saying. */
const MOST_EXPOSURES = 4;
/** What the signs of a group cost: brackets, a star and a figure. */
const GROUP_COST = 5;
const BOUNCE_COST = 2;
const ON_COST = 5;

interface Choice {
  readonly cost: number;
  /** Runs that it covers. */
  readonly runs: number;
  /** The exposure that holds after it. */
  readonly on: number;
  readonly make: () => DraftItem;
}

/**
 * `on`: the exposure that holds at the start; `cycles`: whether groups are looked for. The last item may be left open. Linear in
 * the number of runs.
 */
export function shortestItems(
  runs: readonly ExposureRun[],
  { how, wraps }: LevelNotation,
  on: number,
  cycles = true,
): DraftItem[] {
  return new ItemSearch(runs, how, on, cycles, wraps).pieces(true);
}

class ItemSearch {
  private readonly exposures: readonly number[];
  /** For each exposure: what the runs before each place cost when they are written one by one. */
  private readonly sums: readonly (readonly number[])[];
  private readonly ids: readonly number[];

  constructor(
    private readonly runs: readonly ExposureRun[],
    private readonly how: readonly RunNotation[],
    private readonly on: number,
    private readonly cycles = true,
    private readonly wraps: LevelNotation['wraps'] = [],
  ) {
    const count = new Map<number, number>();
    for (const { frames } of runs) count.set(frames, (count.get(frames) ?? 0) + 1);
    const common = [...count].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([frames]) => frames);
    this.exposures = [...new Set([on, ...common.slice(0, MOST_EXPOSURES)])].filter(
      (one) => one <= 12 || one === on,
    );
    this.sums = this.exposures.map((exposure) => {
      const sums = [0];
      for (let i = 0; i < runs.length; i++) sums.push(sums[i]! + this.itemCost(i, exposure));
      return sums;
    });
    const known = new Map<string, number>();
    this.ids = runs.map(({ drawing, frames }) => {
      const key = `${drawing ?? ''} ${frames}`;
      const id = known.get(key) ?? known.size;
      known.set(key, id);
      return id;
    });
  }

  /** `open`: whether the last item may go on to the end of the sheet. */
  pieces(open: boolean): DraftItem[] {
    const { runs, exposures } = this;
    const size = runs.length;
    const repeats = this.repeats();
    const best: Choice[][] = Array.from({ length: size + 1 }, () => []);
    const cost: number[][] = Array.from({ length: size + 1 }, () =>
      exposures.map(() => Number.POSITIVE_INFINITY),
    );
    cost[size]!.fill(0);
    for (let at = size - 1; at >= 0; at--) {
      const wrap = this.wraps.find(({ first }) => first === at);
      const groups = wrap ? [] : this.groups(at, repeats, open);
      for (const [s, exposure] of exposures.entries()) {
        const take = (choice: Choice): void => {
          const whole = choice.cost + cost[at + choice.runs]![s]!;
          if (whole >= cost[at]![s]!) return;
          cost[at]![s] = whole;
          best[at]![s] = choice;
        };
        if (wrap) {
          take(this.group(at, wrap.end - at, { passes: 1, toEnd: false, runs: wrap.end - at })(s, exposure));
          continue;
        }
        take(this.single(at, exposure, open));
        for (const group of groups) take(group(s, exposure));
      }
      // Another exposure from here on.
      const cheapest = cost[at]!.indexOf(Math.min(...cost[at]!));
      for (const [s] of exposures.entries()) {
        const switched = ON_COST + cost[at]![cheapest]!;
        if (switched >= cost[at]![s]!) continue;
        cost[at]![s] = switched;
        best[at]![s] = {
          cost: ON_COST,
          runs: 0,
          on: exposures[cheapest]!,
          make: () => ({ kind: 'on', frames: exposures[cheapest]! }),
        };
      }
    }
    return this.walk(best);
  }

  private walk(best: readonly (readonly Choice[])[]): DraftItem[] {
    const pieces: DraftItem[] = [];
    let on = this.on;
    for (let at = 0; at < this.runs.length; ) {
      const choice = best[at]![this.exposures.indexOf(on)]!;
      pieces.push(choice.make());
      at += choice.runs;
      on = choice.on;
    }
    return pieces;
  }

  private itemCost(at: number, exposure: number): number {
    const { drawing, frames } = this.runs[at]!;
    const how = this.how[at]!;
    const own = how === 'between' ? 1 : how === 'empty' ? 2 : drawing!.length + 1;
    return frames === exposure ? own : own + 1 + String(frames).length;
  }

  private single(at: number, exposure: number, open: boolean): Choice {
    const run = this.runs[at]!;
    const how = this.how[at]!;
    const last = open && at === this.runs.length - 1 && run.frames !== exposure;
    const length: DraftLength = run.frames === exposure ? 'on' : last ? 'open' : run.frames;
    const plain = this.itemCost(at, run.frames);
    const cost = length === 'on' ? plain : length === 'open' ? plain + 2 : this.itemCost(at, exposure);
    return { cost, runs: 1, on: exposure, make: () => ({ kind: 'item', run, how, length }) };
  }

  /** For each period, how many runs from a place on are the same as those a period later. */
  private repeats(): Uint32Array[] {
    const { ids } = this;
    const size = ids.length;
    const found: Uint32Array[] = [new Uint32Array(0)];
    for (let period = 1; period <= Math.min(LONGEST_CYCLE, size - 1); period++) {
      const same = new Uint32Array(size + 1);
      for (let at = size - period - 1; at >= 0; at--)
        same[at] = ids[at] === ids[at + period] ? same[at + 1]! + 1 : 0;
      found.push(same);
    }
    return found;
  }

  /** Groups that may start at a place: a function of the exposure that holds there. */
  private groups(
    at: number,
    repeats: readonly Uint32Array[],
    open: boolean,
  ): ((s: number, exposure: number) => Choice)[] {
    const { how } = this;
    // A group begins with something that needs nothing before it.
    if (!this.cycles || how[at] === 'between') return [];
    const found: ((s: number, exposure: number) => Choice)[] = [];
    const free = this.wraps.find(({ end }) => end > at)?.first ?? this.runs.length;
    for (let period = 1; period < repeats.length && at + period < this.runs.length; period++) {
      const same = repeats[period]![at]!;
      const span = this.span(at, period, same, open);
      if (at + span.runs > free) continue;
      // Two passes at least, or one that the end of the sheet cuts short, but of a way there and back.
      if (span.passes >= 2 || (span.toEnd && same > 0)) found.push(this.group(at, period, span));
      const there = period % 2 === 0 && period >= 4 ? this.wayThere(at, period) : null;
      if (there !== null) found.push(this.group(at, period, span, there));
    }
    return found;
  }

  /** Runs of the way there, where what follows is the way back without the ends; null where it is not. */
  private wayThere(at: number, period: number): number | null {
    const { ids, how, runs } = this;
    if (at + period > runs.length) return null;
    const there = period / 2 + 1;
    if (how[at] !== 'key' || how[at + there - 1] !== 'key') return null;
    for (let k = 1; k < there - 1; k++) if (ids[at + k] !== ids[at + period - k]) return null;
    return there;
  }

  /** How far a cycle goes: whole passes, or to the end of the sheet, which may cut its last pass and even its last run short. */
  private span(at: number, period: number, same: number, open: boolean): CycleReach {
    const { runs } = this;
    const passes = 1 + Math.floor(same / period);
    const reach = at + period + same;
    const last = runs.length - 1;
    const cut =
      reach === last &&
      runs[last]!.drawing === runs[last - period]!.drawing &&
      runs[last]!.frames < runs[last - period]!.frames;
    const toEnd = open && (reach > last || cut);
    return { passes, toEnd, runs: toEnd ? runs.length - at : passes * period };
  }

  /** `there`: runs of a way that is gone there and back. */
  private group(
    at: number,
    period: number,
    { passes, toEnd, runs }: CycleReach,
    there?: number,
  ): (s: number, exposure: number) => Choice {
    const body = there ?? period;
    const signs =
      there === undefined ? GROUP_COST : passes === 1 && !toEnd ? GROUP_COST : GROUP_COST + BOUNCE_COST;
    return (s, exposure) => ({
      cost: this.sums[s]![at + body]! - this.sums[s]![at]! + signs,
      runs,
      on: exposure,
      make: () => ({
        kind: 'group',
        body: new ItemSearch(this.runs.slice(at, at + body), this.how.slice(at, at + body), exposure).pieces(
          false,
        ),
        bounce: there !== undefined,
        repeat: toEnd ? 'open' : { times: passes },
      }),
    });
  }
}

/** What a cycle covers. */
interface CycleReach {
  readonly passes: number;
  readonly toEnd: boolean;
  readonly runs: number;
}

// ---- items as the text of a timeline, and the phrases that timelines share

/** `fps`: lengths of a second or more are written in seconds and frames. */
export function itemsText(pieces: readonly DraftItem[], fps: number): string {
  let text = '';
  for (const piece of pieces) {
    const next = pieceText(piece, fps);
    // A dash needs no blank beside it, as long as no length or hold stands before what it would be read with.
    const close =
      text === '' ||
      (next.startsWith('-') || next.startsWith('=') ? !text.endsWith('..') : /[-=]$/.test(text));
    text += close ? next : ` ${next}`;
  }
  return text;
}

function pieceText(piece: DraftItem, fps: number): string {
  if (piece.kind === 'on') return `on ${piece.frames}`;
  if (piece.kind === 'item') {
    const { run, how } = piece;
    const sign =
      how === 'empty'
        ? 'x'
        : how === 'between'
          ? run.kind === 'breakdown'
            ? '='
            : '-'
          : nameText(run.drawing!);
    return sign + lengthText(piece.length, fps);
  }
  const { body, bounce, repeat } = piece;
  const times = repeat === 'open' ? '..' : repeat.times > 1 ? `*${repeat.times}` : '';
  return `(${itemsText(body, fps)})${bounce ? '<>' : ''}${times}`;
}

/** A drawing's name as it is typed: without the count that only tells two passages apart. */
function nameText(name: string): string {
  return betweenParts(name)?.count ? name.replace(/\/.*/, '') : name;
}

function lengthText(length: DraftLength, fps: number): string {
  if (length === 'on') return '';
  if (length === 'open') return '..';
  return `:${framesText(length, fps)}`;
}

/** `18`, `1+6`: seconds where there is one. */
export function framesText(frames: number, fps: number): string {
  if (frames < fps) return String(frames);
  const split = splitSeconds(frames, fps);
  return `${split.seconds}+${split.frames}`;
}

// ---- cycles that stand in several places, made into phrases

/** More of them than this make no text clearer. */
const MOST_PHRASES = 6;

export interface SharedPhrases {
  /** `phrase` statements. */
  readonly phrases: readonly string[];
  /** Items of the levels that play one. */
  readonly items: ReadonlyMap<string, string>;
}

/** `texts`: the items of each level. What stands between the brackets of a group can be a phrase: it means the same by itself. */
export function sharePhrases(texts: ReadonlyMap<string, string>): SharedPhrases {
  const count = new Map<string, number>();
  for (const text of texts.values())
    for (const body of bodies(text)) count.set(body, (count.get(body) ?? 0) + 1);
  const chosen = [...count]
    .map(([body, times]) => ({ body, saved: (times - 1) * body.length - 'phrase cycle1 = '.length }))
    .filter(({ saved }) => saved > 0)
    .sort((a, b) => b.saved - a.saved || (a.body < b.body ? -1 : 1))
    .slice(0, MOST_PHRASES)
    .map(({ body }, i) => ({ body, name: `cycle${i + 1}` }));
  const items = new Map<string, string>();
  for (const [level, text] of texts) {
    const played = chosen.reduce((so, { body, name }) => so.replaceAll(`(${body})`, name), text);
    if (played !== text) items.set(level, played);
  }
  return { phrases: chosen.map(({ body, name }) => `phrase ${name} = ${body}`), items };
}

/** What stands between the outermost brackets. */
function bodies(text: string): string[] {
  return [...text.matchAll(/\(([^()]*)\)/g)].map(([, body]) => body!);
}
