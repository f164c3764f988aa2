/** What a chart says of a passage, before any of it is drawn: its keys and in-betweens in order, with all that stands beside them. */

import type { DrawingKind, SolvedLevel, SolvedPassage, SolvedShot } from '../../solve/solved-shot.js';
import { figure } from '../../words/number-format.js';

/** A drawing on a ladder. */
export interface Step {
  readonly drawing: string;
  /** Null: a drawing that no frame shows. */
  readonly cel: number | null;
  readonly kind: DrawingKind;
  /** The way from the first key, 0 to 1. */
  readonly way: number;
  /** In how many parts evenly spaced in-betweens would divide the way. */
  readonly parts: number;
  /** Frames that it is exposed for, each time that it is shown, in the order of the frames. */
  readonly exposed: readonly number[];
}

export interface Ladder {
  readonly level: string;
  readonly passage: SolvedPassage;
  /** Both keys and what lies between: at least three. */
  readonly steps: readonly Step[];
}

export interface LevelLadders {
  readonly level: SolvedLevel;
  readonly ladders: readonly Ladder[];
}

/** The levels that have a passage with in-betweens, in the order of the stack. */
export function ladders(solved: SolvedShot): LevelLadders[] {
  return solved.levels
    .map((level) => ({ level, ladders: laddersOf(level) }))
    .filter((entry) => entry.ladders.length > 0);
}

function laddersOf(level: SolvedLevel): Ladder[] {
  const drawings = new Map(level.drawings.map((drawing) => [drawing.drawing, drawing]));
  const runs = runsOf(level);
  const step = (drawing: string, way: number, kind: DrawingKind, parts: number): Step => ({
    drawing,
    cel: drawings.get(drawing)?.cel ?? null,
    kind: drawings.get(drawing)?.kind ?? kind,
    way,
    parts,
    exposed: runs.get(drawing) ?? [],
  });
  return level.passages
    .filter((passage) => passage.drawings.length > 0)
    .map((passage) => {
      const parts = passage.drawings.length + 1;
      const between = passage.drawings.map((name, i) =>
        step(name, passage.fractions[i] ?? 0, 'inbetween', parts),
      );
      return {
        level: level.name,
        passage,
        steps: [step(passage.from, 0, 'key', parts), ...between, step(passage.to, 1, 'key', parts)],
      };
    });
}

/** Whether its in-betweens divide the way into equal parts. */
export function isEven({ passage }: Ladder): boolean {
  const parts = passage.fractions.length + 1;
  return passage.fractions.every((way, i) => Math.abs(way - (i + 1) / parts) < 1e-9);
}

/** How long each drawing stands, each time that it is shown. */
function runsOf(level: SolvedLevel): Map<string, number[]> {
  const runs = new Map<string, number[]>();
  let before: string | null = null;
  for (const { drawing } of level.exposures) {
    if (drawing !== null) {
      const run = runs.get(drawing) ?? [];
      if (drawing === before) run[run.length - 1] = (run.at(-1) ?? 0) + 1;
      else run.push(1);
      runs.set(drawing, run);
    }
    before = drawing;
  }
  return runs;
}

/** `2`; `2 ×4` where it is always the same; `2, 6`; `2–12 ×7` where there is no room for them all. */
export function exposureText(exposed: readonly number[]): string {
  if (exposed.length < 2) return exposed.join('') || '–';
  const least = Math.min(...exposed);
  const most = Math.max(...exposed);
  if (least === most) return `${least} ×${exposed.length}`;
  return exposed.length < 4 ? exposed.join(', ') : `${least}–${most} ×${exposed.length}`;
}

/** Halves of halves first, then other simple parts. */
const PARTS = [2, 4, 8, 16, 32, 64, 128, ...Array.from({ length: 62 }, (_, i) => i + 3)];

/** A way as a person measures it: as a fraction where it is a simple one (or one of `ofParts`), else as three decimals. */
export function wayText(way: number, ofParts = 2): string {
  for (const parts of [...PARTS, ofParts]) {
    const count = Math.round(way * parts);
    if (count > 0 && count < parts && Math.abs(count / parts - way) < 1e-9) return `${count}/${parts}`;
  }
  if (way > 0.9995) return '>.999';
  return way < 0.0005 ? '<.001' : figure(way, { decimals: 3, zeros: 'always' }).replace(/^0/, '');
}
