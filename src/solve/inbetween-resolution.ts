/**
 * Which drawing each `-` and `=` is. An in-between belongs to the passage from the key before it to the key after it, and that
 * is settled by where it is written, not by when it is played: a group may not begin with `-`, and what stands behind its last
 * key leads to its own first key in every pass. So nothing is played here, and large counts cost nothing.
 */

import type { NoKeyAfter, NoKeyBefore } from '../language/catalogue/message-terms.js';
import { diagnose, type Report } from '../language/diagnostic.js';
import type { Group, Leaf, Level, ShotItem } from '../shot/shot.js';
import { groupCutShort, lastOfPass, leafAt, onceThrough } from './item-placement.js';
import { type Drawing, makeDrawing, type Passage } from './level-drawings.js';

type Key = Extract<Leaf, { kind: 'key' }>;
type Reference = Extract<Leaf, { kind: 'reference' }>;

export interface Passages {
  readonly keys: ReadonlyMap<string, Drawing>;
  /** In the order of writing. */
  readonly passages: readonly Passage[];
  /** The drawing of each in-between that has a passage. */
  readonly betweens: ReadonlyMap<ShotItem, Drawing>;
  readonly references: readonly Reference[];
}

/** What a run of items begins with, as a passage that leads into it sees it: references are seen through. */
type Entry = { readonly kind: 'key'; readonly key: Key } | { readonly kind: 'between' | 'empty' | 'through' };
/** What it leaves behind for the next `-`. */
type End =
  | { readonly kind: 'key'; readonly key: Key }
  | { readonly kind: 'between' | 'empty' | 'through' | 'cut' };

/** `isCut`: whether the last pass of a group at the top is cut short. */
export function findPassages(
  level: Level,
  items: readonly ShotItem[],
  isCut: (group: Group) => boolean,
  report: Report,
): Passages {
  const keys = new Map<string, Drawing>();
  const found = new Map<string, Passage>();
  const pairs = new Map<string, Passage>();
  const betweens = new Map<ShotItem, Drawing>();
  const references: Reference[] = [];
  const ends = new Map<readonly ShotItem[], End>();
  const entries = new Map<readonly ShotItem[], Entry>();
  const charted = new Map<Key, boolean>();

  function entry(of: readonly ShotItem[]): Entry {
    const known = entries.get(of);
    if (known) return known;
    let result: Entry = { kind: 'through' };
    for (const item of of) {
      if (item.kind === 'at' || item.kind === 'reference') continue;
      if (item.kind === 'key') result = { kind: 'key', key: item };
      else if (item.kind === 'group') result = entry(item.items);
      else result = { kind: item.kind };
      if (result.kind !== 'through') break;
    }
    entries.set(of, result);
    return result;
  }

  function close(from: Key, pending: readonly Leaf[], to: Key, wrapped: boolean): void {
    if (pending.length === 0) return;
    const id = `${from.name}>${to.name}*${pending.length}`;
    let passage = found.get(id);
    if (!passage) {
      passage = {
        from: from.name,
        to: to.name,
        drawings: pending.map((leaf, i) =>
          makeDrawing('inbetween', from.name, leaf.span, { to: to.name, index: i + 1, letter: '' }),
        ),
        charts: [],
        drawn: null,
        written: pending,
        wrapped,
      };
      found.set(id, passage);
      const pair = `${from.name}>${to.name}`;
      const other = pairs.get(pair);
      if (other) twoCounts(passage, other);
      else pairs.set(pair, passage);
    }
    for (const [i, leaf] of pending.entries()) {
      const drawing = passage.drawings[i]!;
      betweens.set(leaf, drawing);
      if (leaf.kind === 'between' && leaf.breakdown) drawing.kind = 'breakdown';
    }
    if (!from.chart) return;
    charted.set(from, true);
    passage.charts.push(from.chart);
  }

  function twoCounts(passage: Passage, other: Passage): void {
    report(
      diagnose(
        'two-counts',
        passage.written[0]!.span,
        {
          from: passage.from,
          to: passage.to,
          here: passage.drawings.length,
          before: other.drawings.length,
        },
        { notes: [{ note: 'count-here', inbetweens: other.drawings.length, span: other.written[0]!.span }] },
      ),
    );
  }

  /** Walks a run of items; at the `top` nothing leads back to the first key. */
  function walk(of: readonly ShotItem[], top: boolean): End {
    const begins = entry(of);
    let from: Key | null = null;
    let why: NoKeyBefore = 'start';
    // One report for each stretch of in-betweens with no key before it.
    let told = !top && begins.kind === 'between';
    let pending: Leaf[] = [];
    let end: End = { kind: 'through' };
    const leadsTo = (key: Key | null, reason: NoKeyAfter | null, wrapped = false) => {
      if (pending.length > 0 && from && key) close(from, pending, key, wrapped);
      else if (pending.length > 0) noTo(pending[0]!, reason!);
      pending = [];
    };
    for (const item of of) {
      switch (item.kind) {
        case 'at':
          break;
        case 'reference':
          references.push(item);
          break;
        case 'key':
          leadsTo(item, null);
          if (!keys.has(item.name)) keys.set(item.name, makeDrawing('key', item.name, item.span));
          if (item.chart && !charted.has(item)) charted.set(item, false);
          from = item;
          told = false;
          end = { kind: 'key', key: item };
          break;
        case 'empty':
          leadsTo(null, 'empty');
          from = null;
          why = 'empty';
          told = false;
          end = { kind: 'empty' };
          break;
        case 'between':
          if (from) pending.push(item);
          else if (!told) {
            told = true;
            report(diagnose('between-from', item.span, { why }));
          }
          end = { kind: 'between' };
          break;
        case 'group': {
          const into = entry(item.items);
          if (into.kind === 'key') leadsTo(into.key, null);
          else if (into.kind === 'empty') {
            leadsTo(null, 'group-empty');
          } else if (into.kind === 'between') leadsTo(null, 'group-between');
          const left = group(item);
          if (left.kind === 'through') break;
          told = false;
          from = left.kind === 'key' ? left.key : null;
          if (left.kind !== 'key') why = left.kind;
          end = left.kind === 'cut' ? { kind: 'cut' } : left;
        }
      }
    }
    if (pending.length > 0) {
      if (top) leadsTo(null, 'end');
      else if (begins.kind === 'key') leadsTo(begins.key, null, true);
      else leadsTo(null, 'group-end');
      end = { kind: 'between' };
    }
    return end;
  }

  function noTo(leaf: Leaf, why: NoKeyAfter): void {
    report(diagnose('between-to', leaf.span, { why }));
  }

  function group(item: Group): End {
    if (entry(item.items).kind === 'between') {
      report(diagnose('group-begins-between', item.span, {}));
    }
    let end = ends.get(item.items);
    if (!end) {
      end = walk(item.items, false);
      ends.set(item.items, end);
    }
    if (item.bounce) end = bounceEnd(item) ?? end;
    return end.kind !== 'through' && (isCut(item) || groupCutShort(item)) ? { kind: 'cut' } : end;
  }

  function bounceEnd(item: Group): End | null {
    const first = leafAt(item.items, 0).leaf;
    const last = leafAt(item.items, onceThrough(item.items) - 1).leaf;
    if (first.kind !== 'key' || last.kind !== 'key') {
      report(diagnose('bounce-ends', item.span, {}));
      return null;
    }
    const leaf = lastOfPass(item);
    if (!leaf || leaf.kind === 'reference') return { kind: 'between' };
    return leaf.kind === 'key' ? { kind: 'key', key: leaf } : { kind: leaf.kind };
  }

  walk(items, true);
  for (const [key, used] of charted) {
    if (used) continue;
    report(
      diagnose(
        'chart-unused',
        key.chart!.span,
        { key: key.name, level: level.name },
        {
          // Between two keys a blank has to stay.
          fix: {
            action: 'take-out',
            edits: [{ span: key.chart!.span, text: key.span.end > key.chart!.span.end ? '' : ' ' }],
          },
        },
      ),
    );
  }
  return { keys, passages: [...found.values()], betweens, references };
}
