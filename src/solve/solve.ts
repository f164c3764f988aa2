/** `Shot` → `SolvedShot`. Pure. */

import type { Diagnostic } from '../language/diagnostic.js';
import type { Shot } from '../shot/shot.js';
import { solveLevel } from './level.js';
import type { Counts, SolvedLevel, SolvedShot } from './solved.js';

export interface Given {
  /**
   * For levels that reuse one of another cut, by their name here: that level, solved. Drawings that it shows keep their names and
   * numbers and are not counted; others are new, numbered on from its highest number. Without it (a cut looked at by itself)
   * the other cut's numbers cannot be known: every drawing counts as reused, and is numbered as if it were this cut's own.
   */
  readonly reused?: ReadonlyMap<string, SolvedLevel>;
}

export function solve(shot: Shot, { reused }: Given = {}): SolvedShot {
  const diagnostics: Diagnostic[] = [];
  const said = new Set<string>();
  const report = (diagnostic: Diagnostic) => {
    const { code, span } = diagnostic;
    // A phrase that several levels play is written once: what is wrong with it is said once.
    const id = `${code} ${span.file} ${span.start} ${span.end}`;
    if (said.has(id)) return;
    said.add(id);
    diagnostics.push(diagnostic);
  };
  const levels = shot.levels.map((level) =>
    solveLevel(level, shot, (level.reuse && reused?.get(level.name)) ?? null, report),
  );
  return { shot, levels, counts: count(levels), diagnostics };
}

/** New drawings by kind, and the reused ones by themselves. */
function count(levels: readonly SolvedLevel[]): Counts {
  const all = levels.flatMap((level) => level.drawings);
  const fresh = all.filter((drawing) => !drawing.reused);
  const kinds = (kind: string) => fresh.filter((drawing) => drawing.kind === kind).length;
  return {
    keys: kinds('key'),
    breakdowns: kinds('breakdown'),
    inbetweens: kinds('inbetween'),
    drawings: fresh.length,
    reused: all.length - fresh.length,
  };
}
