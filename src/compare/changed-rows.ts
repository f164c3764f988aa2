/**
 * The rows of the new sheet that show something else than the same rows of the old one, column by column. A row is compared with the
 * row of its number: what comes later shows something else on every row but those on which the same drawing happens to stand. On a row
 * that the old sheet did not have, everything that stands there is new; where both have nothing, nothing differs.
 */

import { rowsOf as rowsOfMove, startOf } from '../shot/camera/move-kinds.js';
import type { Frames, Shot } from '../shot/shot.js';
import { wordStretches } from '../shot/word-stretches.js';
import type { SolvedLight, SolvedMove } from '../solve/camera/solved-camera.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import { type CameraThing, rowsOfThing, subjectOf } from './camera-subject.js';
import type { Change, ChangePlace, Was } from './change.js';
import { lastingNames } from './exposure-tokens.js';
import { placeNamesOf } from './move-pair.js';

/** A column of the sheet: of a level that of its keys or that of its finished numbers. */
export type ChangedColumn =
  | { readonly kind: 'level'; readonly level: string; readonly column: 'keys' | 'cels' }
  | { readonly kind: 'speech' | 'camera' | 'notes' };

/** Frames from..to, both included. */
export interface ChangedRows extends Frames {
  readonly place: ChangedColumn;
}

/** One a row of the new sheet: whether it shows something else. */
type Differs = boolean[];

/**
 * Levels in the order of the stack, then dialogue, camera, notes; each by its rows, none touching the next one. A change that says
 * something of rows has a row here at least, also where what it says is seen on none (a loop of another length).
 */
export function changedRows(
  old: SolvedShot,
  now: SolvedShot,
  changes: readonly Change[],
): readonly ChangedRows[] {
  const earlier = earlierLevels(changes);
  const columns: [ChangedColumn, Differs][] = [
    ...now.levels
      .filter(({ timed }) => timed)
      .flatMap((is): [ChangedColumn, Differs][] => {
        const was = old.levels.find(({ name }) => name === (earlier.get(is.name) ?? is.name));
        const drawings = levelRows(was, is, changes);
        const numbers = drawings.map((differs, i) => differs || otherNumber(was, is, i));
        // Western keys are called by their finished numbers.
        const keys = now.shot.settings.convention === 'west' ? [...numbers] : drawings;
        const place = { kind: 'level', level: is.name } as const;
        return [
          [{ ...place, column: 'keys' }, keys],
          [{ ...place, column: 'cels' }, numbers],
        ];
      }),
    [{ kind: 'speech' }, otherTexts(speechOn(old.shot), speechOn(now.shot))],
    [{ kind: 'camera' }, cameraRows(old, now, earlier)],
    [{ kind: 'notes' }, otherTexts(notesOn(old.shot), notesOn(now.shot))],
  ];
  return columns.flatMap(([place, differs]) => {
    for (const change of changes) if (samePlace(change.place, place)) markTold(differs, change);
    return runsOf(differs).map((rows) => ({ place, ...rows }));
  });
}

/** Whether what is said of a place is seen in a column. */
export const samePlace = (a: ChangePlace | null, b: ChangedColumn): boolean =>
  a?.kind === b.kind && (a.kind !== 'level' || a.level === (b as typeof a).level);

/** What levels that have another name now were called before. */
export function earlierLevels(changes: readonly Change[]): ReadonlyMap<string, string> {
  return new Map(
    changes.flatMap((change) =>
      change.kind === 'level-renamed' ? [[change.level, change.old] as const] : [],
    ),
  );
}

/** What levels of the old version are called now. */
export function nowCalled(earlier: ReadonlyMap<string, string>): (level: string) => string {
  const names = new Map([...earlier].map(([to, from]) => [from, to]));
  return (level) => names.get(level) ?? level;
}

/** What a change says that no row shows otherwise still has its rows. */
function markTold(differs: Differs, change: Change): void {
  if (change.rows === null) return;
  const within = change.place?.kind === 'level' ? [{ from: 1, to: differs.length }] : reach(change);
  if (within.some(({ from, to }) => differs.slice(from - 1, to).includes(true))) return;
  differs.fill(true, change.rows.from - 1, change.rows.to);
}

/** All rows on which a change may be seen: of words and of the camera those of before, too. */
function reach(change: Change): readonly Frames[] {
  // Of levels `frames` are lengths.
  const frames =
    change.place?.kind !== 'level' && 'frames' in change ? (change.frames as Frames | Was<Frames>) : null;
  return [change.rows!, ...(frames === null || !('old' in frames) ? [] : [frames.old])];
}

/** What a retake note shows of a change. */
export interface RowsOfChange {
  /** From the first to the last row that differs by it; of a move or light from where it begins. */
  readonly rows: Frames;
  /** One a row of the new sheet: whether its column, or the move or light that changed, differs there. */
  readonly differs: readonly boolean[];
}

/** Null: no row differs by it. */
export function rowsOfChange(
  old: SolvedShot,
  now: SolvedShot,
  change: Change,
  changes: readonly Change[],
): RowsOfChange | null {
  const { place, rows } = change;
  if (place === null || rows === null) return null;
  const differs = columnOf(old, now, change, place, changes);
  if (!differs.includes(true)) differs.fill(true, rows.from - 1, rows.to);
  const within = (from: number, to: number): Frames | null => {
    const runs = runsOf(differs.map((one, i) => one && i + 1 >= from && i + 1 <= to));
    return runs.length > 0 ? { from: runs[0]!.from, to: runs.at(-1)!.to } : null;
  };
  const [first, last] = [reach(change).map(({ from }) => from), reach(change).map(({ to }) => to)];
  // A hold that is shorter differs where it was held before.
  const found =
    within(Math.min(...first), Math.max(...last)) ?? within(rows.to, runEnd(differs, rows.to)) ?? rows;
  // Of a move or light also where its name stands.
  const subject =
    place.kind === 'camera' ? subjectOf(old, now, change, nowCalled(earlierLevels(changes))) : null;
  const named = [subject?.was, subject?.is].flatMap((thing) => (thing ? [rowsOfThing(thing).from] : []));
  return { rows: { ...found, from: Math.max(1, Math.min(found.from, ...named)) }, differs };
}

/** The last row of the first run of rows that differ, from a row on. */
const runEnd = (differs: Differs, from: number): number =>
  runsOf(differs).find(({ to }) => to >= from)?.to ?? differs.length;

function columnOf(
  old: SolvedShot,
  now: SolvedShot,
  change: Change,
  place: ChangePlace,
  changes: readonly Change[],
): Differs {
  const earlier = earlierLevels(changes);
  switch (place.kind) {
    case 'level': {
      const is = now.levels.find(({ name }) => name === place.level)!;
      const was = old.levels.find(({ name }) => name === (earlier.get(is.name) ?? is.name));
      return levelRows(was, is, changes);
    }
    case 'speech':
      return otherTexts(speechOn(old.shot), speechOn(now.shot));
    case 'notes':
      return otherTexts(notesOn(old.shot), notesOn(now.shot));
    case 'camera': {
      const called = nowCalled(earlier);
      const subject = subjectOf(old, now, change, called);
      if (!subject) return cameraRows(old, now, earlier);
      const { length } = now.shot;
      return otherTexts(
        thingOn(length, subject.was, called),
        thingOn(length, subject.is, (level) => level),
      );
    }
  }
}

/** A move or light on its rows, and where what it moves is. */
const thingOn = (length: number, thing: CameraThing | null, called: (level: string) => string): Texts =>
  rowTexts(length, (put) => {
    if (!thing) return;
    if ('light' in thing) {
      putLight(thing, called, put);
      return;
    }
    putMove(thing, called, put);
    const { from, to } = rowsOfThing(thing);
    for (const { frame, x, y, value } of thing.graduations)
      if (frame >= from && frame <= to)
        put(frame, [x, y, value ?? 0].map((one) => one.toFixed(3).replace(/^-(?=[0.]+$)/, '')).join(' '));
  });

function runsOf(differs: Differs): Frames[] {
  const runs: { from: number; to: number }[] = [];
  differs.forEach((one, i) => {
    if (!one) return;
    if (differs[i - 1]) runs.at(-1)!.to = i + 1;
    else runs.push({ from: i + 1, to: i + 1 });
  });
  return runs;
}

// ---- levels

/** Rows with another drawing, and those with a drawing that is itself another one: elsewhere on its way, or a breakdown. */
function levelRows(was: SolvedLevel | undefined, is: SolvedLevel, changes: readonly Change[]): Differs {
  if (was && !was.timed) return is.exposures.map(() => true);
  const before = was ? drawingsOn(was) : [];
  const otherwise = new Set(changes.flatMap((change) => drawnOtherwise(change, is)));
  return drawingsOn(is).map(
    (symbol, i) => symbol !== (before[i] ?? '') || otherwise.has(is.exposures[i]!.drawing ?? ''),
  );
}

/** Whether the same drawing has another number on a row. */
const otherNumber = (was: SolvedLevel | undefined, is: SolvedLevel, row: number): boolean =>
  (was?.exposures[row]?.cel ?? null) !== is.exposures[row]!.cel;

/** The lasting name of the drawing on each row; '' where it is empty. */
function drawingsOn(level: SolvedLevel): string[] {
  const symbols = lastingNames(level);
  return level.exposures.map(({ drawing }) => (drawing === null ? '' : symbols.get(drawing)!));
}

/** Drawings that keep their name and place in time, and are drawn otherwise. */
function drawnOtherwise(change: Change, { name, passages }: SolvedLevel): readonly string[] {
  if (!('level' in change) || change.level !== name) return [];
  switch (change.kind) {
    case 'breakdown':
      return [change.drawing];
    case 'places':
      return change.drawings.map(({ drawing }) => drawing);
    case 'chart': {
      const count = change.fractions.now.length;
      return passages
        .filter(
          ({ from, to, drawings }) => from === change.from && to === change.to && drawings.length === count,
        )
        .flatMap(({ drawings }) => drawings);
    }
    default:
      return [];
  }
}

// ---- words

/** What stands on each row, as one text; '' where nothing does. */
type Texts = readonly string[];

const otherTexts = (old: Texts, now: Texts): Differs => now.map((text, i) => text !== (old[i] ?? ''));

function rowTexts(length: number, each: (put: (frame: number, text: string) => void) => void): Texts {
  const texts = Array.from({ length }, (): string[] => []);
  each((frame, text) => texts[frame - 1]?.push(text));
  return texts.map((all) => all.sort().join('\n'));
}

const notesOn = ({ length, notes }: Shot): Texts =>
  rowTexts(length, (put) => {
    for (const { frame, text } of notes) put(frame, `note ${text}`);
  });

/** The words that fall on each row, and where they begin: between two that are tied to rows they are spread evenly. */
const speechOn = ({ length, spoken }: Shot): Texts =>
  rowTexts(length, (put) => {
    for (const line of spoken) {
      const said = [line.kind, line.speaker, line.manner].join(' ');
      const stretches = wordStretches(line);
      // A line without words takes its rows all the same.
      for (const { from, to, text } of stretches.length > 0 ? stretches : [{ ...line.frames, text: '' }]) {
        const words = wordsOf(text);
        for (let frame = from; frame <= to; frame++) {
          const at = (row: number) => Math.floor((row * words.length) / (to - from + 1));
          const [first, end] = [at(frame - from), at(frame - from + 1)];
          const begins = frame === from ? 'begins ' : '';
          put(frame, `${said} ${begins}${words.slice(first, Math.max(first + 1, end)).join(' ')}`);
        }
      }
    }
  });

/** Of scripts without blanks the letters. */
const wordsOf = (text: string): string[] =>
  text
    .split(/\s+/)
    .flatMap((word) => (/[\u3040-\u9fff]/.test(word) ? [...word] : [word]))
    .filter((word) => word !== '');

// ---- camera and light

/** Less than paper tells: mm and degrees have two decimals there, shares four. */
const LEAST = { mm: 0.005, degrees: 0.005, share: 0.00005 };

/** Where another place, size or turn of the camera or of a level is shot, and where something else is written or drawn beside the row. */
function cameraRows(old: SolvedShot, now: SolvedShot, earlier: ReadonlyMap<string, string>): Differs {
  const levels = [...now.camera.placement].flatMap(([name, is]) => {
    const was = old.camera.placement.get(earlier.get(name) ?? name);
    return was ? [[was, is] as const] : [];
  });
  const away = (a: number, b: number, least: number) => Math.abs(a - b) > least;
  const texts = otherTexts(
    cameraOn(old, nowCalled(earlier)),
    cameraOn(now, (level) => level),
  );
  return texts.map((differs, i) => {
    const [a, b] = [old.camera.frames[i], now.camera.frames[i]];
    if (differs || !a || !b) return differs;
    const { mm, degrees, share } = LEAST;
    return (
      away(a.x, b.x, mm) ||
      away(a.y, b.y, mm) ||
      away(a.width, b.width, mm) ||
      away(a.rotation, b.rotation, degrees) ||
      levels.some(([was, is]) => {
        const [p, q] = [was[i]!, is[i]!];
        return (
          away(p.x, q.x, mm) ||
          away(p.y, q.y, mm) ||
          away(p.scale, q.scale, share) ||
          away(p.rotation, q.rotation, degrees)
        );
      })
    );
  });
}

const cameraOn = ({ camera, shot }: SolvedShot, called: (level: string) => string): Texts =>
  rowTexts(shot.length, (put) => {
    for (const move of camera.moves) putMove(move, called, put);
    for (const light of camera.light) putLight(light, called, put);
  });

type Put = (frame: number, text: string) => void;

/** Its name beside all of its rows, names of places and its graduation on theirs. */
function putMove({ move, graduations }: SolvedMove, called: (level: string) => string, put: Put): void {
  const levels = move.target.levels.map(called).sort().join();
  const name = [move.kind, levels, move.on].join(' ');
  const places = placeNamesOf(move);
  const stops = new Map(
    places.map((place, i) => [i === 0 ? startOf(move) : move.legs[i - 1]!.end, place] as const),
  );
  const labels = new Map(graduations.map(({ frame, label }) => [frame, label]));
  const numbered = move.graduated || move.legs.some(({ spacing }) => spacing.form === 'steps');
  const { from, to } = rowsOfMove(move);
  for (let frame = Math.max(1, from); frame <= to; frame++) {
    const number = numbered ? frame - startOf(move) : '';
    put(frame, [name, stops.get(frame) ?? '', labels.get(frame) ?? '', number].join(' '));
  }
}

function putLight({ light, shares }: SolvedLight, called: (level: string) => string, put: Put): void {
  const { frames, span: _, ...how } = light;
  const levels = 'levels' in light ? light.levels.map(called).sort() : [];
  // How long it lasts is seen on its rows.
  const kept = Object.entries(how).filter(([key]) => !['levels', 'from', 'to', 'length'].includes(key));
  const name = JSON.stringify([kept, levels]);
  const share = new Map(shares.map((one) => [one.frame, one.share]));
  for (let { from: frame } = frames; frame <= frames.to; frame++)
    put(frame, `${name} ${(share.get(frame) ?? 1).toFixed(4)}`);
}
