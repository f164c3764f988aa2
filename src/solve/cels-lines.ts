/** `cels` lines → numbers and names of drawings. */

import { diagnose, type Fix, type Report, type Span } from '../language/diagnostic.js';
import type { BetweenName, Level, Pinned, Shot } from '../shot/shot.js';
import type { Passages } from './inbetween-resolution.js';
import { type Drawing, makeDrawing, type Passage } from './level-drawings.js';
import type { SolvedLevel, SolvedPassage, SolvedShot } from './solved-shot.js';

type PinnedBetween = Extract<Pinned, { form: 'between' }> & { readonly cel: number };

export function betweenText({ key, to, index, letter }: BetweenName): string {
  return `${key}${to === null ? '' : `>${to}`}.${index}${letter}`;
}

/** In the order of the way: 1.0a 1.1 1.1a 1.2. */
function byPlace(a: PinnedBetween, b: PinnedBetween): number {
  return a.name.index - b.name.index || (a.name.letter < b.name.letter ? -1 : 1);
}

/**
 * A passage with fewer names than in-betweens, each named by its place among them. No fault where a frame shows none of the others
 * (the cycle ends before them); `tell` reports the fault where one does.
 */
export interface Short {
  readonly passage: Passage;
  readonly tell: () => void;
}

/** What the cut that is reused has on paper: the `cels` line may only go on from it. */
export interface LentDrawings {
  /** Its numbers. What the line says of these is compared with them elsewhere. */
  readonly cels: ReadonlySet<number>;
  /** Its drawings that the timeline shows by reference at most. */
  readonly loose: readonly Drawing[];
  /** Reports an entry under a number of its own for a drawing that has the given number in the other cut. */
  readonly otherNumber: (entry: { span: Span; cel: number }, drawing: string, number: number) => void;
}

export const NOTHING_LENT: LentDrawings = { cels: new Set(), loose: [], otherNumber: () => {} };

/** Gives the drawings that the line names their numbers and names on paper. `played`: see `takeKnown`. */
export function unpin(
  line: NonNullable<Level['pinned']>,
  passages: Passages,
  played: ReadonlySet<Drawing>,
  lent: LentDrawings,
  numbering: Shot['numbering'],
  report: Report,
): { readonly loose: Drawing[]; readonly unused: number[]; readonly short: Short[] } {
  const loose: Drawing[] = [];
  const short: Short[] = [];
  const unused: number[] = [];
  const betweens = new Map<string, PinnedBetween[]>();
  for (const [i, entry] of line.names.entries()) {
    const cel = i + 1;
    if (entry.form === 'unused') unused.push(cel);
    else if (lent.cels.has(cel)) continue;
    else if (entry.form === 'between') {
      const list = betweens.get(entry.name.key);
      if (list) list.push({ ...entry, cel });
      else betweens.set(entry.name.key, [{ ...entry, cel }]);
    } else {
      const known = passages.keys.get(entry.name);
      const there = known?.reused ? known : lent.loose.find(({ name }) => name === entry.name);
      if (there) lent.otherNumber({ ...entry, cel }, entry.name, there.cel);
      const drawing = known ?? makeDrawing('key', entry.name, entry.span);
      if (!known) loose.push(drawing);
      pin(drawing, cel, entry.name);
    }
  }
  const from = new Map<string, Passage[]>();
  for (const passage of passages.passages) {
    const list = from.get(passage.from);
    if (list) list.push(passage);
    else from.set(passage.from, [passage]);
  }
  for (const [key, names] of betweens) {
    const ways = from.get(key) ?? [];
    const drawnHere = ways.filter(({ drawings }) => drawings.some(({ reused }) => !reused));
    const assumed = soleWay(line, names, drawnHere.length > 0 ? drawnHere : ways, report);
    const left = new Set(names);
    for (const to of new Set(ways.map((passage) => passage.to))) {
      const pair = ways.filter((passage) => passage.to === to);
      const fresh = pair.filter((passage) => drawnHere.includes(passage));
      const shown = fresh.filter(({ drawings }) => drawings.some((one) => !one.reused && played.has(one)));
      const own = shown.length > 0 ? shown : fresh;
      // Of a pair of keys with two counts the line can name the drawings of one only: of the first that is all of this cut.
      const passage = own.find(({ drawings }) => drawings.every(({ reused }) => !reused)) ?? own[0];
      const there = (passage ? [passage] : pair).flatMap(({ drawings }) =>
        drawings.filter(({ reused }) => reused),
      );
      const here: PinnedBetween[] = [];
      for (const each of names) {
        if ((each.name.to ?? assumed) !== to) continue;
        const { index, letter } = each.name;
        const known = there.find((drawing) => drawing.index === index && drawing.letter === letter);
        if (known) lent.otherNumber(each, betweenText(each.name), known.cel);
        else if (passage) here.push(each);
        else continue;
        left.delete(each);
      }
      if (!passage || here.length === 0) continue;
      here.sort(byPlace);
      for (const other of fresh) {
        if (other !== passage)
          short.push({ passage: other, tell: () => otherCount(line, other, here, report) });
      }
      const drawings = drawingsOf(here, passage);
      if (!drawings) {
        otherCount(line, passage, here, report);
        continue;
      }
      const count = drawnCount(line, here, passage.to, numbering);
      const changed = count !== here.length || here.some(({ name }) => name.letter !== '');
      if (changed && drawings === passage.drawings && !passage.drawn)
        passage.drawn = { by: 'pinned', count, line: line.span };
      if (drawings.length < passage.drawings.length)
        short.push({ passage, tell: () => otherCount(line, passage, here, report) });
      for (const [i, drawing] of drawings.entries()) {
        const { cel, name } = here[i]!;
        if (drawing.reused) continue;
        pin(drawing, cel, betweenText(name));
        drawing.index = name.index;
        drawing.letter = name.letter;
      }
    }
    for (const each of left) {
      const { name, cel, span } = each;
      const { index, letter, to } = { ...name, to: name.to ?? assumed };
      const there = lent.loose.find(
        (one) =>
          one.key === key &&
          (to === null || one.to === null || one.to === to) &&
          one.kind !== 'key' &&
          one.index === index &&
          one.letter === letter,
      );
      if (there) lent.otherNumber(each, betweenText(name), there.cel);
      const drawing = makeDrawing('inbetween', key, span, { to, index, letter });
      pin(drawing, cel, betweenText(name));
      loose.push(drawing);
    }
  }
  return { loose, unused, short };
}

/**
 * How many in-betweens a passage had when it was drawn: its highest place, and the `_` between that and its second key, which are
 * lost ones (by frame they are frames on which no drawing starts). `names` in the order of the way.
 */
function drawnCount(
  { names: entries }: NonNullable<Level['pinned']>,
  names: readonly PinnedBetween[],
  to: string,
  numbering: Shot['numbering'],
): number {
  const last = names.at(-1)!.name.index;
  const behind = names.find(({ name }) => name.index === last && name.letter === '')?.cel;
  if (numbering === 'frame' || behind === undefined) return last;
  let end = behind;
  while (entries[end]?.form === 'unused') end++;
  const next = entries[end];
  return next?.form === 'key' && next.name === to ? last + end - behind : last;
}

/** The drawing of each name, in the order of the way; null where the counts do not fit. */
function drawingsOf(names: readonly PinnedBetween[], { drawings }: Passage): readonly Drawing[] | null {
  if (names.length === drawings.length) return drawings;
  const found = names.flatMap(({ name }) =>
    name.letter === '' && name.index > 0 ? (drawings[name.index - 1] ?? []) : [],
  );
  return names.length < drawings.length && found.length === names.length ? found : null;
}

function pin(drawing: Drawing, cel: number, name: string): void {
  if (drawing.reused) return;
  drawing.cel = cel;
  drawing.name = name;
  drawing.pinned = true;
}

/**
 * Where names with no second key belong: where their key leads to, and of several, to the key behind them in the line. Null: nowhere.
 * Where the line does not tell it is an error, and then one of them, so that the rest can go on.
 */
function soleWay(
  line: NonNullable<Level['pinned']>,
  names: readonly PinnedBetween[],
  ways: readonly Passage[],
  report: Report,
): string | null {
  const targets = [...new Set(ways.map((passage) => passage.to))];
  const bare = names.filter(({ name }) => name.to === null);
  const [first] = bare;
  const [sole] = targets;
  if (!first || sole === undefined) return sole ?? null;
  const next = keyBehind(line, first.cel);
  if (next !== null && targets.includes(next)) return next;
  if (targets.length === 1) {
    if (next !== null) otherWay(line, bare, sole, next, report);
    return sole;
  }
  const fitting = ways.find((passage) => passage.drawings.length === bare.length) ?? ways[0]!;
  report(
    diagnose(
      'cels-ambiguous',
      first.span,
      { key: first.name.key, keys: targets },
      { fix: leadingTo(bare, fitting.to) },
    ),
  );
  return fitting.to;
}

/** The key that stands behind a place in the line. In the order of first showing it is the one that the in-betweens there lead to. */
function keyBehind({ names }: NonNullable<Level['pinned']>, cel: number): string | null {
  const next = names.slice(cel).find(({ form }) => form === 'key');
  return next?.form === 'key' ? next.name : null;
}

/**
 * In-betweens that stand before another key in the line than the one that their key leads to now. Where that one stands before
 * them, they may well lead back to it, as in a cycle; otherwise they are probably of a way that is gone.
 */
function otherWay(
  line: NonNullable<Level['pinned']>,
  bare: readonly PinnedBetween[],
  sole: string,
  next: string,
  report: Report,
): void {
  const [{ cel, name, span }] = bare as [PinnedBetween];
  const back = line.names.slice(0, cel).some((entry) => entry.form === 'key' && entry.name === sole);
  report(
    diagnose(
      'cels-passage',
      span,
      { key: name.key, to: sole, drawing: betweenText(name), next },
      { fix: leadingTo(bare, back ? sole : next) },
    ),
  );
}

function leadingTo(bare: readonly PinnedBetween[], to: string): Fix {
  const [{ name: first }] = bare as [PinnedBetween];
  return {
    action: 'name-drawings',
    count: bare.length,
    name: betweenText({ ...first, to }),
    edits: bare.map(({ span, name }) => ({ span, text: betweenText({ ...name, to }) })),
  };
}

function otherCount(
  line: NonNullable<Level['pinned']>,
  passage: Passage,
  names: readonly PinnedBetween[],
  report: Report,
): void {
  const { from, to, drawings, written } = passage;
  const fix = drawings.length > names.length ? addNames(line, passage, names) : dropNames(passage, names);
  report(
    diagnose(
      'cels-count',
      written[0]!.span,
      { from, to, shown: drawings.length, pinned: names.map(({ name }) => betweenText(name)) },
      {
        notes: [
          { note: 'pinned-here', span: line.span },
          { note: drawings.length > names.length ? 'new-name' : 'dropped-name' },
        ],
        ...(fix ? { fix } : {}),
      },
    ),
  );
}

/** New ones go behind the last one of the passage, which is a guess; there are no more than 26 places for them. */
function addNames(
  line: NonNullable<Level['pinned']>,
  passage: Passage,
  names: readonly PinnedBetween[],
): Fix | null {
  const last = names.at(-1)!.name;
  const first = last.letter === '' ? 0 : last.letter.charCodeAt(0) - 96;
  const count = passage.drawings.length - names.length;
  if (first + count > 26) return null;
  const added = Array.from({ length: count }, (_, i) =>
    betweenText({ ...last, letter: String.fromCharCode(97 + first + i) }),
  );
  const end = line.span.end;
  return {
    action: 'pin-names',
    names: added,
    edits: [{ span: { ...line.span, start: end }, text: ` ${added.join(' ')}` }],
  };
}

function dropNames(passage: Passage, names: readonly PinnedBetween[]): Fix {
  const surplus = names.slice(passage.drawings.length);
  return {
    action: 'unpin-names',
    names: surplus.map(({ name }) => betweenText(name)),
    edits: surplus.map(({ span }) => ({ span, text: '_' })),
  };
}

// ---- what a `cels` line must say so that the drawings of a level keep the numbers that they have now

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
      // Which count of a pair it is of (`/3`) is told by its number: that of the other one is the other cut's.
      if (to === undefined || drawing.includes('>')) return drawing.replace(/\/.*/, '');
      return to === nextKeys[cel] && !bare.has(drawing.replace(/\..*/, ''))
        ? drawing
        : drawing.replace('.', `>${to}.`);
    });
    return [{ level: level.name, before, names }];
  });
}

/**
 * A passage that is the second of its two keys with another count, so that its drawings have no name that a `cels` line may hold.
 * Where the first one is drawn for the cut that is reused they have.
 */
export function unpinnable({ drawings, passages, inherited }: SolvedLevel): SolvedPassage | null {
  const fresh = new Set(drawings.filter(({ reused }) => !reused).map(({ drawing }) => drawing));
  const lent = new Set(
    [...drawings, ...inherited.drawings].map(({ drawing }) => drawing).filter((name) => !fresh.has(name)),
  );
  const own = passages.filter((each) => each.drawings.some((name) => fresh.has(name)));
  return (
    own.find((each, i) => {
      const { from, to } = each;
      if (own.slice(0, i).some((before) => before.from === from && before.to === to)) return true;
      const full = each.drawings.filter((name) => name.includes('/') && fresh.has(name));
      return full.length > 0 && !full.some((name) => lent.has(name.replace(/\/.*/, '')));
    }) ?? null
  );
}

/** Pinned drawings that no frame shows: those with a name. */
export function unused({ missing }: SolvedLevel): SolvedLevel['missing'] {
  return missing.filter(({ drawing }) => drawing !== '');
}
