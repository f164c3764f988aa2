/** Items of timelines and phrases: lengths resolved, `on` given to each item, phrases put in as groups. */

import { diagnose, guessFix, type Report, type Span } from '../language/diagnostic.js';
import { type Guess, nearest } from '../language/suggest.js';
import type { Position, StatementOf, Chart as TreeChart, Item as TreeItem } from '../language/tree.js';
import type { DirectKeys, Group, Leaf, ShotChart, ShotItem, ShotRepeat } from './shot.js';
import type { Clock } from './time-resolver.js';
import { chartOf, silentSlip, wordForSign } from './timeline-slips.js';

/** Groups and phrases within each other; deeper ones are a slip or a trap, and nobody could read them. */
export const DEEPEST = 50;

export interface BoundItems {
  readonly items: readonly ShotItem[];
  /** False: something could not be bound and was left out. */
  readonly whole: boolean;
  readonly direct: readonly DirectKeys[];
}

/** What a timeline asks for outside of itself: the marks of its times, and the phrases that it plays. */
export interface AskedOutside {
  readonly positions: Position[];
  /** By name and exposure. */
  readonly played: Map<string, { readonly phrase: Played; readonly on: number }>;
}

const nothingAsked = (): AskedOutside => ({ positions: [], played: new Map() });

export interface BoundTimeline extends BoundItems {
  /** Null: it is not whole or something was said of it, so that it has to be bound again to hear that. */
  readonly asked: AskedOutside | null;
}

export interface Phrases {
  /** Items of a timeline. `on`: frames for an item that says nothing. */
  timeline(items: readonly TreeItem[], on: number): BoundTimeline;
  /** Asks for what a timeline asked for that was bound before and need not be bound again. */
  again(asked: AskedOutside): void;
  /** Binds a phrase for its messages only. */
  check(name: string, on: number): void;
  /** Phrases that some timeline or phrase plays. */
  readonly played: ReadonlySet<string>;
}

export interface PhrasesParts {
  readonly phrases: ReadonlyMap<string, StatementOf<'phrase'>>;
  readonly broken: ReadonlySet<string>;
  /** A used file could not be read, which has been reported: unknown phrases are its fault. */
  readonly unread: boolean;
  readonly clock: Clock;
  readonly guess: Guess;
  readonly report: Report;
}

/** The name of a phrase that an item plays, or that stands alone in brackets. */
function spelledName(item: TreeItem): string | null {
  if (item.kind === 'phrase') return item.name;
  const only = item.kind === 'group' && item.items.length === 1 ? item.items[0] : undefined;
  return only?.kind === 'phrase' ? only.name : null;
}

/** Whether what it shows last goes on until the next `@` or the end. */
export function endsOpen(item: ShotItem | undefined): boolean {
  if (!item || item.kind === 'at') return false;
  if (item.kind !== 'group') return item.open;
  if (item.repeat.form === 'open') return true;
  return playedOnce(item) && endsOpen(item.items.at(-1));
}

export function playedOnce(group: Group): boolean {
  return !group.bounce && group.repeat.form === 'times' && group.repeat.times === 1;
}

/** The keys on both sides of a `direct`; null where one of them is something else. What only says when or how long is passed over. */
function directKeys(source: readonly TreeItem[], index: number): DirectKeys | null {
  const key = (step: 1 | -1): string | null => {
    for (let i = index + step; ; i += step) {
      const item = source[i];
      if (item?.kind === 'on' || item?.kind === 'at') continue;
      return item?.kind === 'key' ? item.name : null;
    }
  };
  const [from, to] = [key(-1), key(1)];
  return from === null || to === null || from === to ? null : { from, to };
}

type Shown = Extract<TreeItem, { length: unknown }>;
type Repeated = Extract<TreeItem, { repeat: unknown }>;
/** A phrase where it is played. */
type Played = Pick<Extract<TreeItem, { kind: 'phrase' }>, 'name' | 'span' | 'margin'>;

export function makePhrases({
  phrases,
  broken,
  unread,
  clock,
  guess: guessName,
  report: tell,
}: PhrasesParts): Phrases {
  let said = 0;
  const report: Report = (diagnostic) => {
    said++;
    tell(diagnostic);
  };
  let asked = nothingAsked();
  const played = new Set<string>();
  const done = new Map<string, BoundItems>();
  const trail: string[] = [];
  const circular = new Set<string>();

  function bindItems(source: readonly TreeItem[], startOn: number, depth: number): BoundItems {
    const items: ShotItem[] = [];
    const direct: DirectKeys[] = [];
    let on = startOn;
    let whole = true;
    let open = false;
    const add = (item: ShotItem | null) => {
      if (!item) {
        whole = false;
        return;
      }
      if (item.kind === 'at') {
        open = false;
      } else {
        if (open) {
          whole = false;
          report(diagnose('after-open', item.span, {}));
        }
        open = endsOpen(item);
      }
      items.push(item);
    };
    for (const [index, item] of source.entries()) {
      const name = spelledName(item);
      const slip = name === null || phrases.has(name) || broken.has(name) ? null : wordForSign(source, index);
      if (slip) {
        report(slip);
        whole = false;
        continue;
      }
      if (item.kind === 'key' || item.kind === 'group') {
        const hint = silentSlip(source, index);
        if (hint) report(hint);
      }
      switch (item.kind) {
        case 'on':
          on = bindOn(item.frames, item.span, report) ?? on;
          break;
        case 'direct': {
          const keys = directKeys(source, index);
          if (keys) direct.push(keys);
          else if (source[index - 1]?.kind !== 'direct') report(diagnose('direct-misplaced', item.span, {}));
          break;
        }
        case 'at': {
          if (depth > 0) {
            report(diagnose('at-in-group', item.span, {}));
            whole = false;
            break;
          }
          if (item.position.form === 'mark') asked.positions.push(item.position);
          const frame = clock.position(item.position);
          add(frame === null ? null : { kind: 'at', span: item.span, frame });
          break;
        }
        case 'group': {
          const inner = depth < DEEPEST ? bindItems(item.items, on, depth + 1) : tooDeep(item.span);
          direct.push(...inner.direct);
          add(grouped(item, inner, null));
          if (!inner.whole) whole = false;
          break;
        }
        case 'phrase': {
          const inner = phrase(item, on, depth + 1);
          // What stands behind it belongs to the timeline that was indented.
          if (!inner && item.margin && !phrases.has(item.name)) return { items, whole: false, direct };
          direct.push(...(inner?.direct ?? []));
          add(inner && grouped(item, inner, item.name));
          if (!inner?.whole) whole = false;
          break;
        }
        default: {
          const shown = leaf(item, on);
          if (shown.frames === 0) whole = false;
          else add(shown);
        }
      }
    }
    return { items, whole, direct };
  }

  function tooDeep(span: Span): BoundItems {
    report(diagnose('too-deep', span, { most: DEEPEST }));
    return { items: [], whole: false, direct: [] };
  }

  /** The items of a phrase, or null where there is none of that name or it plays itself. */
  function phrase(wanted: Played, on: number, depth: number): BoundItems | null {
    const { name, span } = wanted;
    played.add(name);
    if (trail.length === 0) asked.played.set(`${on} ${name}`, { phrase: wanted, on });
    if (circular.has(name)) return null;
    const statement = phrases.get(name);
    if (!statement) {
      if (!broken.has(name) && !unread) unknownPhrase(wanted);
      return null;
    }
    const at = trail.indexOf(name);
    if (at >= 0) {
      const circle = trail.slice(at);
      for (const each of circle) circular.add(each);
      report(
        diagnose(
          'phrase-circle',
          span,
          { phrases: [...circle, name] },
          {
            notes: circle.map((each) => ({
              note: 'phrase-here',
              phrase: each,
              span: phrases.get(each)!.name.span,
            })),
          },
        ),
      );
      return null;
    }
    const key = `${on} ${name}`;
    const before = done.get(key);
    if (before) return before;
    if (depth > DEEPEST) return tooDeep(span);
    trail.push(name);
    const bound = bindItems(statement.items, on, depth);
    trail.pop();
    done.set(key, bound);
    return bound;
  }

  function unknownPhrase({ name, span, margin }: Played): void {
    const guess = guessName(name, phrases.keys());
    if (!guess && margin) {
      const fix = { action: 'to-left-edge' as const, edits: [{ span: margin, text: '' }] };
      report(
        diagnose(
          'indented-statement',
          { ...span, end: span.start + name.length },
          { variant: 'phrase', name },
          { fix },
        ),
      );
      return;
    }
    report(
      diagnose(
        'unknown-phrase',
        span,
        { name, guess: guess ?? null },
        guessFix(guess, { ...span, end: span.start + name.length }),
      ),
    );
  }

  function grouped(item: Repeated, inner: BoundItems, name: string | null): Group | null {
    if (inner.items.length === 0) {
      if (inner.whole) {
        report(diagnose('group-empty', item.span, { phrase: name }));
      }
      return null;
    }
    const repeat = bindRepeat(item);
    if (!repeat) return null;
    const group: Group = {
      kind: 'group',
      span: item.span,
      items: inner.items,
      bounce: item.bounce,
      repeat,
      repeatSpan: item.repeat.form === 'once' ? null : item.repeat.span,
      phrase: name,
    };
    if (!playedOnce(group) && endsOpen(inner.items.at(-1))) {
      report(diagnose('open-in-group', item.span, {}));
      return null;
    }
    return group;
  }

  function bindRepeat(item: Repeated): ShotRepeat | null {
    const repeat = item.repeat;
    if (repeat.form === 'once') return { form: 'times', times: 1 };
    if (repeat.form === 'open') return { form: 'open' };
    if (repeat.form === 'length') {
      const frames = positive(clock.length(repeat.length), repeat.span);
      return frames === null ? null : { form: 'frames', frames };
    }
    if (repeat.times >= 1) return { form: 'times', times: Math.min(repeat.times, 1e12) };
    report(diagnose('repeat-zero', repeat.span, {}));
    return null;
  }

  function positive(frames: number | null, span: Span): number | null {
    if (frames !== 0) return frames;
    report(diagnose('length-zero', span, {}));
    return null;
  }

  /** `frames` is 0 where the item's length could not be bound. */
  function leaf(item: Shown, on: number): Leaf {
    const own = item.length !== null;
    const frames = item.length === null ? on : (positive(clock.length(item.length), item.length.span) ?? 0);
    if (item.length && item.open) {
      report(diagnose('length-and-open', item.open, {}));
    }
    // Written out in each, not spread: a long cut has tens of thousands of them.
    const { span } = item;
    const said = own && item.open === null;
    const lengthSpan = item.length?.span ?? null;
    const open = item.open !== null;
    switch (item.kind) {
      case 'key': {
        const chart = item.chart && bindChart(item.chart, report);
        return { kind: 'key', span, frames, own: said, lengthSpan, open, name: item.name, chart };
      }
      case 'between':
        return { kind: 'between', span, frames, own: said, lengthSpan, open, breakdown: item.breakdown };
      case 'empty':
        return { kind: 'empty', span, frames, own: said, lengthSpan, open };
      case 'reference': {
        const { key, to, index, letter } = item;
        return {
          kind: 'reference',
          span,
          frames,
          own: said,
          lengthSpan,
          open,
          name: { key, to, index, letter },
        };
      }
    }
  }

  return {
    played,
    timeline(items, on) {
      const before = said;
      const own = nothingAsked();
      asked = own;
      const bound = bindItems(items, on, 0);
      asked = nothingAsked();
      return { ...bound, asked: bound.whole && said === before ? own : null };
    },
    again(before) {
      for (const position of before.positions) clock.position(position);
      for (const { phrase: one, on } of before.played.values()) phrase(one, on, 1);
    },
    check(name, on) {
      const statement = phrases.get(name);
      const before = played.has(name);
      if (statement) phrase({ name, span: statement.name.span, margin: null }, on, 1);
      if (!before) played.delete(name);
    },
  };
}

/** Most frames that `on` may say; more is a hold, and is written as a length. */
const LONGEST_ON = 240;

/** A number behind `on`, or null after a report. */
export function bindOn(frames: number, span: Span, report: Report): number | null {
  if (Number.isInteger(frames) && frames >= 1 && frames <= LONGEST_ON) return frames;
  report(diagnose('on-range', span, { most: LONGEST_ON }));
  return null;
}

// ---- in-between charts as typed → their form; how many in-betweens they must fit is the solver's to check

const NAMED = ['even', 'early', 'late', 'both'] as const;

/** Null after a report. */
export function bindChart(chart: TreeChart, report: Report): (ShotChart & { readonly span: Span }) | null {
  if (chart.form === 'named') {
    const form = NAMED.find((each) => each === chart.name);
    if (form) return { form, span: chart.span };
    const guess = chartOf(chart.name) ?? nearest(chart.name, NAMED);
    report(
      diagnose(
        'unknown-chart',
        chart.span,
        { name: chart.name, guess: guess ?? null },
        guessFix(guess, chart.span, `{${guess}}`),
      ),
    );
    return null;
  }
  let before = 0;
  for (const { value, span } of chart.fractions) {
    if (!(value > 0 && value < 1)) {
      report(diagnose('chart-outside', span, {}));
      return null;
    }
    if (value <= before) {
      report(diagnose('chart-not-rising', span, {}));
      return null;
    }
    before = value;
  }
  return { form: 'fractions', fractions: chart.fractions.map((each) => each.value), span: chart.span };
}
