/** What a sheet must say, told from the solver's table and the rules of the form alone. */

import type { Convention } from '../../src/shot/settings.js';
import type { SolvedCycle, SolvedLevel } from '../../src/solve/solved-shot.js';
import type { LabelLanguage } from '../../src/words/labels.js';
import type { Bracket, Cell, HoldWord } from './cells.js';

/** The words of a level's two columns on frame `f`, `breaks` saying on which frames a block of rows begins. */
export interface ExpectedLevel {
  cel(frame: number, breaks: boolean): Cell;
  key(frame: number, breaks: boolean): Cell;
}

export function expectedLevel(level: SolvedLevel, convention: Convention): ExpectedLevel {
  const cels = level.exposures.map((exposure) => (exposure.cel === null ? '×' : String(exposure.cel)));
  const begins = level.exposures.map(
    (exposure, i) => exposure.drawing !== level.exposures[i - 1]?.drawing || i === 0,
  );
  // A cycle that opens on what is held says in its first row what it begins with.
  const keyed = level.exposures.map(
    ({ drawing, frame }, i) =>
      begins[i]! || (drawing !== null && level.cycles.some(({ firstFrame }) => firstFrame === frame)),
  );
  const signs = convention === 'west' ? western(level) : japanese(level, keyed);
  const cell = (sign: Cell, held: string, starts: boolean, breaks: boolean, empty: boolean): Cell => {
    if (starts) return sign;
    if (breaks) return `[${held}]`;
    return empty ? '' : '|';
  };
  return {
    cel: (f, breaks) => cell(cels[f - 1]!, cels[f - 1]!, begins[f - 1]!, breaks, cels[f - 1] === '×'),
    key: (f, breaks) =>
      cell(
        signs[f - 1]!,
        heldSign(signs[f - 1]!),
        keyed[f - 1]!,
        breaks,
        level.exposures[f - 1]!.drawing === null,
      ),
  };
}

/** The sign of the drawing of each frame, also where it is only held. */
function western(level: SolvedLevel): Cell[] {
  return level.exposures.map(({ kind, cel }) => {
    if (kind === 'empty') return '×';
    return kind === 'key' ? `(${cel})` : kind === 'breakdown' ? `${cel}_` : `${cel}`;
  });
}

function japanese(level: SolvedLevel, begins: readonly boolean[]): Cell[] {
  const before = new Map<string, string>();
  for (const passage of level.passages)
    passage.drawings.forEach((drawing, i) => {
      before.set(drawing, i === 0 ? passage.from : passage.drawings[i - 1]!);
    });
  let turn: string | null = null;
  let sign: Cell = '';
  return level.exposures.map((exposure, i) => {
    const { drawing, kind } = exposure;
    if (!begins[i]) return sign;
    const inTurn = drawing !== null && turn !== null && before.get(drawing) === turn;
    if (kind === 'empty') sign = '×';
    else if (kind === 'key') sign = `(${drawing})`;
    // Out of its turn an in-between has its name, in a cycle too: a ring would not say which one it is.
    else if (!inTurn && !exposure.back) sign = `${drawing}`;
    else if (exposure.again || exposure.back) sign = 'o';
    // What another cut has drawn is no dash: a dash says "draw this".
    else if (level.drawings.some((one) => one.reused && one.drawing === drawing))
      sign = kind === 'breakdown' ? '(o)' : 'o';
    else sign = kind === 'breakdown' ? '(-)' : '-';
    const outOfTurn = kind !== 'key' && kind !== 'empty' && sign === drawing;
    if (!outOfTurn) turn = drawing;
    return sign;
  });
}

/** A sign as it stands in square brackets. */
function heldSign(sign: Cell): string {
  if (sign === '-') return '–';
  if (sign === '(-)') return '(–)';
  if (sign === 'o') return '○';
  if (sign === '(o)') return '(○)';
  return sign.replace(/^\((.*)\)$/, '$1').replace(/_$/, '');
}

/**
 * The words beside the lines of holds on the rows of frames `first` to `last`: each hold of a key that is longer than a second has one in
 * Japanese, where it begins. The rows are those of its line, in this block.
 */
export function expectedHoldWords(
  level: SolvedLevel,
  first: number,
  last: number,
  fps: number,
  labels: LabelLanguage,
): Omit<HoldWord, 'letters'>[] {
  if (labels !== 'ja') return [];
  const { exposures, cycles } = level;
  const isNew = (frame: number): boolean =>
    exposures[frame - 1]!.drawing !== exposures[frame - 2]?.drawing ||
    cycles.some(({ firstFrame }) => firstFrame === frame);
  return exposures.flatMap(({ frame, kind }) => {
    if (kind !== 'key' || frame < first || frame >= last || (frame > 1 && !isNew(frame))) return [];
    const end = exposures.find((one) => one.frame > frame && isNew(one.frame))?.frame ?? exposures.length + 1;
    if (end - frame <= fps) return [];
    return [{ firstRow: frame + 1 - first, lastRow: Math.min(end - 1, last) - first, text: '止メ' }];
  });
}

/** The brackets beside the cycles of a level on the rows of frames `first` to `last`. */
export function expectedBrackets(
  cycles: readonly SolvedCycle[],
  first: number,
  last: number,
  labels: LabelLanguage,
): Bracket[] {
  const words = (times: number | null) => {
    if (labels === 'ja') return times === null ? 'リピート' : `${times}回`;
    return times === null ? 'cycle' : `${times} times`;
  };
  return cycles
    .filter((cycle) => cycle.firstFrame <= last && cycle.lastFrame >= first)
    .map((cycle) => ({
      firstRow: Math.max(cycle.firstFrame, first) - first,
      lastRow: Math.min(cycle.lastFrame, last) - first,
      begins: cycle.firstFrame >= first,
      ends: cycle.lastFrame <= last && cycle.times !== null,
      arrow: cycle.lastFrame <= last && cycle.times === null,
      words: words(cycle.times),
    }));
}
