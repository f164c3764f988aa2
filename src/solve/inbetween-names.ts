/** Drawings that exist on paper already: those that a `cels` line names, and those of the level that is reused. */

import { type Diagnostic, diagnose, type Report } from '../language/diagnostic.js';
import type { Level, Shot, ShotItem } from '../shot/shot.js';
import { betweenText, type LentDrawings, NOTHING_LENT, type Short, unpin } from './cels-lines.js';
import type { Passages } from './inbetween-resolution.js';
import { type Drawing, makeDrawing, type Passage } from './level-drawings.js';
import type { SolvedLevel } from './solved-shot.js';

interface PaperDrawings {
  /** On paper, but neither key nor in-between of the timeline; references may show them. */
  readonly loose: readonly Drawing[];
  /** The highest number given, 0 where none is. */
  readonly highest: number;
  /** The highest number of the level that is reused, 0 where none is. */
  readonly reused: number;
  /** Numbers that the `cels` line leaves unused. */
  readonly unused: readonly number[];
  readonly short: readonly Short[];
}

const NAME = /^(\d+(?:\p{L}\p{M}*)?)(?:>(\d+(?:\p{L}\p{M}*)?))?\.(\d+)([a-z]?)/u;

/**
 * Gives number and name to every drawing of the level that exists. `source` is the solved level that this one reuses, where there
 * is one and it could be had; its names and numbers stand before those of the `cels` line. `played`: the drawings whose place in
 * the timeline comes up on some frame.
 */
export function takeKnown(
  level: Level,
  passages: Passages,
  played: ReadonlySet<Drawing>,
  source: SolvedLevel | null,
  numbering: Shot['numbering'],
  report: Report,
): PaperDrawings {
  const reused = source ? takeReused(level, passages, source, report) : { loose: [], highest: 0 };
  if (!level.pinned) return { ...reused, reused: reused.highest, unused: [], short: [] };
  const lent = source ? lentDrawings(level, source, reused.loose, report) : NOTHING_LENT;
  const pinned = unpin(level.pinned, passages, played, lent, numbering, report);
  return {
    loose: [...reused.loose, ...pinned.loose],
    highest: Math.max(reused.highest, level.pinned.names.length),
    reused: reused.highest,
    unused: pinned.unused,
    short: pinned.short,
  };
}

function take(drawing: Drawing, cel: number, name: string): void {
  drawing.cel = cel;
  drawing.name = name;
  drawing.pinned = true;
  drawing.reused = true;
}

/** All that can be reused of a level: what it shows, and what it could have shown of the level that it reuses itself. */
export function existing({ drawings, passages, inherited }: SolvedLevel): SolvedLevel['inherited'] {
  return {
    drawings: [...drawings, ...inherited.drawings],
    passages: [...passages, ...inherited.passages],
  };
}

function takeReused(level: Level, passages: Passages, source: SolvedLevel, report: Report) {
  const there = existing(source);
  const free = new Map(there.drawings.map((drawing) => [drawing.drawing, drawing]));
  for (const [name, key] of passages.keys) {
    const found = free.get(name);
    if (found) take(key, found.cel, name);
    free.delete(name);
  }
  for (const passage of passages.passages) {
    const same = there.passages.filter((each) => each.from === passage.from && each.to === passage.to);
    const match = same.find((each) => each.drawings.length === passage.drawings.length);
    if (!match) {
      if (same[0]) otherCount(level, passage, same[0].drawings.length, report);
      continue;
    }
    passage.drawn = { by: 'lent', fractions: match.fractions, chart: match.chart, cut: level.reuse!.cut };
    for (const [i, drawing] of passage.drawings.entries()) {
      const found = free.get(match.drawings[i]!);
      // What the other cut counts but never shows is not on paper: it is new here.
      if (!found) continue;
      take(drawing, found.cel, found.drawing);
      const [, , , index = drawing.index, letter = ''] = NAME.exec(found.drawing) ?? [];
      drawing.index = Number(index);
      drawing.letter = letter;
      if (found.kind === 'breakdown') drawing.kind = 'breakdown';
      free.delete(found.drawing);
    }
  }
  const span = level.reuse?.span ?? level.span;
  const loose = [...free.values()].flatMap((found) => {
    const [, key, to = null, index, letter = ''] = NAME.exec(found.drawing) ?? [];
    if (key === undefined) return [];
    const passage = there.passages.find((each) => each.drawings.includes(found.drawing));
    const drawing = makeDrawing(found.kind, key, span, {
      to: passage?.to ?? to,
      index: Number(index),
      letter,
    });
    take(drawing, found.cel, found.drawing);
    return [drawing];
  });
  const highest = Math.max(
    source.lastCel,
    0,
    ...source.missing.map((each) => each.cel),
    ...source.inherited.drawings.map((each) => each.cel),
  );
  return { loose, highest };
}

function otherCount(
  level: Level,
  { from, to, drawings, written }: Passage,
  count: number,
  report: Report,
): void {
  const { cut, level: name } = level.reuse!;
  report(
    diagnose('reuse-count', written[0]!.span, {
      from,
      to,
      level: name,
      cut,
      there: count,
      here: drawings.length,
    }),
  );
}

/**
 * What a `cels` line beside a reused level may not speak against. Its entries under numbers of the other cut are compared with the
 * drawings there; bare names fit whatever their key leads to, as the number says which it is.
 */
function lentDrawings(
  level: Level,
  source: SolvedLevel,
  loose: readonly Drawing[],
  report: Report,
): LentDrawings {
  const { cut, level: other } = level.reuse!;
  const { drawings, passages } = existing(source);
  const ways = new Map(passages.flatMap(({ to, drawings: names }) => names.map((name) => [name, to])));
  const cels = new Map(drawings.map(({ cel, drawing }) => [cel, drawing]));
  for (const [i, entry] of level.pinned!.names.entries()) {
    const there = cels.get(i + 1);
    if (entry.form === 'unused' || there === undefined) continue;
    const [, key, to = ways.get(there), index, letter] = NAME.exec(there) ?? [];
    const { name } = entry;
    const same =
      typeof name === 'string'
        ? name === there
        : name.key === key &&
          (name.to === null || to === undefined || name.to === to) &&
          `${name.index}${name.letter}` === `${index}${letter}`;
    if (same) continue;
    report(
      diagnose('reuse-number', entry.span, {
        variant: 'drawing',
        pinned: i + 1,
        level: other,
        cut,
        there: there.replace(/\/.*/, ''),
        drawing: typeof name === 'string' ? name : betweenText(name),
      }),
    );
  }
  return {
    cels: new Set(cels.keys()),
    loose,
    otherNumber: ({ span, cel }, drawing, number) =>
      report(
        diagnose('reuse-number', span, {
          variant: 'number',
          drawing,
          number,
          level: other,
          cut,
          pinned: cel,
        }),
      ),
  };
}

// ---- canonical names of in-betweens, and the drawings that references mean

function listed<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

/**
 * Names what has no name on paper: `1.2` where key 1 leads to one passage only, else `1>3.2`, and `1>3.2/4` for the passages of a
 * pair of keys that are written after another one with another count (`/4`: of four in-betweens). Names of the cut that is reused
 * come first. All drawings of a passage are named in the same way, whether they are pinned or not: pinning changes no name.
 */
export function nameBetweens({ passages }: Passages, { loose }: PaperDrawings): void {
  const ways = new Map<string, Passage[]>();
  for (const passage of passages) listed(ways, passage.from, passage);
  const all = passages.flatMap((passage) => passage.drawings);
  const taken = new Set([...loose, ...all.filter(({ reused }) => reused)].map(({ name }) => name));
  // A short name is kept as it is on paper. One with its second key is on paper for the `cels` line, not for who reads it here.
  const kept = new Set(
    all.filter(({ name, reused }) => !reused && name !== '' && !name.includes('>') && !taken.has(name)),
  );
  for (const { name } of kept) taken.add(name);
  const isPinned = ({ drawings }: Passage) => drawings.some(({ pinned, reused }) => pinned && !reused);
  for (const passage of [...passages.filter(isPinned), ...passages.filter((each) => !isPinned(each))]) {
    const { from, to, drawings } = passage;
    const place = ({ index, letter }: Drawing) => `${index}${letter}`;
    const names = [
      ...(ways.get(from)!.length === 1 ? [(one: Drawing) => `${from}.${place(one)}`] : []),
      (one: Drawing) => `${from}>${to}.${place(one)}`,
      (one: Drawing) => `${from}>${to}.${place(one)}/${drawings.length}`,
    ];
    const open = drawings.filter((drawing) => !drawing.reused && !kept.has(drawing));
    const name = names.find((each) => open.every((drawing) => !taken.has(each(drawing)))) ?? names.at(-1)!;
    for (const drawing of open) {
      drawing.name = name(drawing);
      taken.add(drawing.name);
    }
  }
}

/**
 * The drawing of each reference; those that mean none are reported and left out. Where one pair of keys has two counts, the
 * passage that is written first is meant.
 */
export function findReferences(
  level: Level,
  found: Passages,
  { loose }: PaperDrawings,
  report: Report,
): Map<ShotItem, Drawing> {
  const { passages, references } = found;
  // Of each name with and without its second key, the drawing that is written first.
  const exact = new Map<string, Drawing>();
  const bare = new Map<string, Drawing>();
  const targets = new Map<string, Set<string>>();
  const counts = new Map<string, number>();
  for (const { from, to, drawings } of passages) {
    if (!targets.has(from)) targets.set(from, new Set());
    targets.get(from)!.add(to);
    counts.set(`${from}>${to}`, Math.max(drawings.length, counts.get(`${from}>${to}`) ?? 0));
  }
  for (const drawing of [...passages.flatMap((passage) => passage.drawings), ...loose]) {
    if (drawing.kind === 'key') continue;
    const place = `${drawing.index}${drawing.letter}`;
    const names: [Map<string, Drawing>, string][] = [
      [exact, `${drawing.key}>${drawing.to ?? ''}.${place}`],
      [bare, `${drawing.key}.${place}`],
    ];
    for (const [map, name] of names) if (!map.has(name)) map.set(name, drawing);
  }
  const meant = new Map<ShotItem, Drawing>();
  for (const reference of references) {
    const { key, to, index, letter } = reference.name;
    const tos = targets.get(key) ?? new Set<string>();
    const place = `${index}${letter}`;
    const drawing =
      to === null
        ? bare.get(`${key}.${place}`)
        : (exact.get(`${key}>${to}.${place}`) ?? exact.get(`${key}>.${place}`));
    if (drawing) meant.set(reference, drawing);
    if (to === null && tos.size > 1) report(ambiguous(level, reference, drawing, [...tos].slice(0, 6)));
    else if (!drawing) {
      const way = to ?? tos.values().next().value;
      const count = way === undefined ? 0 : (counts.get(`${key}>${way}`) ?? 0);
      const text = betweenText(reference.name);
      report(
        diagnose('reference-missing', reference.span, {
          level: level.name,
          drawing: text,
          key,
          to,
          way: way ?? null,
          count,
        }),
      );
    }
  }
  return meant;
}

/** `tos`: the first few keys that its key leads to. */
function ambiguous(
  level: Level,
  { name, span }: Passages['references'][number],
  drawing: Drawing | undefined,
  tos: readonly string[],
): Diagnostic {
  const text = betweenText(name);
  const parameters = { level: level.name, drawing: text, key: name.key, keys: tos };
  if (!drawing?.to) return diagnose('reference-ambiguous', span, parameters);
  const full = betweenText({ ...name, to: drawing.to });
  const place = { ...span, end: span.start + text.length };
  return diagnose('reference-ambiguous', span, parameters, {
    fix: { action: 'write', written: full, edits: [{ span: place, text: full }] },
  });
}
