/** Drawings that exist on paper already: those that a `cels` line names, and those of the level that is reused. */

import type { Report } from '../language/diagnostic.js';
import { diagnose } from '../language/diagnostic.js';
import type { Level, Shot } from '../shot/shot.js';
import { type Short, unpin } from './apply-cels-lines.js';
import type { Passages } from './inbetween-resolution.js';
import type { Drawing, Passage } from './level-drawings.js';
import { makeDrawing } from './level-drawings.js';
import type { SolvedLevel } from './solved-shot.js';

export interface PaperDrawings {
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
 * is one and it could be had; its names and numbers stand before those of the `cels` line.
 */
export function takeKnown(
  level: Level,
  passages: Passages,
  source: SolvedLevel | null,
  numbering: Shot['numbering'],
  report: Report,
): PaperDrawings {
  const reused = source ? takeReused(level, passages, source, report) : { loose: [], highest: 0 };
  if (!level.pinned) return { ...reused, reused: reused.highest, unused: [], short: [] };
  if (source) agree(level, source, report);
  const taken = new Set(reused.loose.map((drawing) => drawing.name));
  const pinned = unpin(level.pinned, passages, taken, numbering, report);
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

/** A `cels` line beside a reused level may only go on from it. */
function agree(level: Level, source: SolvedLevel, report: Report): void {
  const { drawings } = existing(source);
  const cels = new Map(drawings.map((each) => [each.cel, each.drawing]));
  const numbers = new Map(drawings.map((each) => [each.drawing, each.cel]));
  for (const [i, name] of level.pinned!.names.entries()) {
    if (name.form === 'unused') continue;
    const text = name.form === 'key' ? name.name : `${name.name.key}.${name.name.index}${name.name.letter}`;
    const there = cels.get(i + 1)?.replace(/>.*\./, '.');
    const number = numbers.get(text) ?? i + 1;
    if ((there === undefined || there === text) && number === i + 1) continue;
    const { cut, level: other } = level.reuse!;
    report(
      diagnose(
        'reuse-number',
        name.span,
        there === undefined || there === text
          ? { variant: 'number', drawing: text, number, level: other, cut, pinned: i + 1 }
          : { variant: 'drawing', pinned: i + 1, level: other, cut, there, drawing: text },
      ),
    );
  }
}
