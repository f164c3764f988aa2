/** A tidy text for the exposures of a cut: what an animator would have typed. Pure. */

import { format } from '../language/format/format-text.js';
import { parse } from '../language/parse.js';
import { quote } from '../language/source.js';
import { bind } from '../shot/bind-cut.js';
import type { Settings } from '../shot/settings.js';
import { solve } from '../solve/solve-shot.js';
import type { SolvedLevel } from '../solve/solved-shot.js';
import {
  betweenParts,
  type ExposureRun,
  notationOf,
  type RunNotation,
  type TableLevel,
} from './exposure-runs.js';
import { type DraftItem, framesText, itemsText, sharePhrases, shortestItems } from './item-search.js';

export interface TableCut {
  /** Its number. */
  readonly cut: string;
  readonly title: string;
  /** In the order of the stack, bottom to top; all of one length. */
  readonly levels: readonly TableLevel[];
}

export interface CutText {
  readonly text: string;
  /** Levels whose exposures, names or numbers the language cannot say just as the table has them. */
  readonly unlike: readonly string[];
}

/**
 * How a level is written, from the clearest on: with dashes and cycles; the same without cycles; each drawing by its name, the
 * names being made by a `cels` line.
 */
type WritingStyle = 'cycles' | 'plain' | 'names';
const NEXT: Readonly<Record<WritingStyle, WritingStyle | null>> = {
  cycles: 'plain',
  plain: 'names',
  names: null,
};

export function cutText(cut: TableCut, settings: Settings): CutText {
  const ways = new Map<string, WritingStyle>(
    cut.levels.map((level) => [level.name, notationOf(level.runs).whole ? 'cycles' : 'names']),
  );
  for (;;) {
    const plain = new Map(
      cut.levels.map((level) => [level.name, levelItems(level, ways.get(level.name)!, settings)]),
    );
    const written = numbered(cut, plain, ways, settings);
    const wrong = written.unlike.filter((name) => NEXT[ways.get(name)!] !== null);
    if (wrong.length === 0) return withPhrases(cut, plain, written, settings);
    for (const name of wrong) ways.set(name, NEXT[ways.get(name)!]!);
  }
}

type LevelItems = ReadonlyMap<string, readonly DraftItem[]>;

function levelItems({ runs }: TableLevel, way: WritingStyle, { on }: Settings): readonly DraftItem[] {
  if (way !== 'names') return shortestItems(runs, notationOf(runs), on, way === 'cycles');
  const how = runs.map(({ kind }): RunNotation => (kind === 'key' || kind === 'empty' ? kind : 'reference'));
  return shortestItems(runs, { how, wraps: [], whole: false }, on);
}

/** So few frames are written with their seconds: alone they would be taken for seconds. */
const timeText = (frames: number, fps: number): string =>
  frames < fps / 2 ? `0+${frames}` : framesText(frames, fps);

/** The items of a timeline that shows these runs, in the fewest characters. `on`: the exposure of an item that says nothing. */
export function timelineItems(runs: readonly ExposureRun[], on: number, fps: number): string {
  return itemsText(shortestItems(runs, notationOf(runs), on), fps);
}

interface NumberedText extends CutText {
  readonly head: readonly string[];
  readonly cels: readonly string[];
}

/** With what makes the finished numbers those of the table: nothing, `numbering frame`, or `cels` lines. */
function numbered(
  cut: TableCut,
  pieces: LevelItems,
  ways: ReadonlyMap<string, WritingStyle>,
  settings: Settings,
): NumberedText {
  const pinned = cut.levels.filter(({ name }) => ways.get(name) === 'names');
  const lines = (levels: readonly TableLevel[]) =>
    levels.flatMap((level) => celsLine(level, ways.get(level.name) === 'names') ?? []);
  const tries: { head: string[]; cels: string[] }[] = [{ head: [], cels: lines(pinned) }];
  const first = attempt(tries[0]!);
  if (first.unlike.length === 0) return first;
  if (cut.levels.every(byFrame)) {
    const other = settings.numbering === 'frame' ? 'sequence' : 'frame';
    const second = attempt({ head: [`numbering ${other}`], cels: lines(pinned) });
    if (second.unlike.length === 0) return second;
  }
  const moved = cut.levels.filter(({ name }) => first.unlike.includes(name) || ways.get(name) === 'names');
  return attempt({ head: [], cels: lines(moved) });

  function attempt({ head, cels }: { head: readonly string[]; cels: readonly string[] }): NumberedText {
    const text = textOf(cut, pieces, { head, cels, phrases: [], items: new Map() }, settings);
    return { text, head, cels, unlike: unlike(cut, text, settings) };
  }
}

/** With phrases where several levels play the same. */
function withPhrases(cut: TableCut, pieces: LevelItems, written: NumberedText, settings: Settings): CutText {
  const texts = new Map([...pieces].map(([name, items]) => [name, itemsText(items, settings.fps)]));
  const { phrases, items } = sharePhrases(texts);
  if (phrases.length === 0) return written;
  const text = textOf(cut, pieces, { ...written, phrases, items }, settings);
  // Only if it still says the same.
  const same = unlike(cut, text, settings);
  return same.length <= written.unlike.length ? { text, unlike: same } : written;
}

interface TextParts {
  readonly head: readonly string[];
  readonly cels: readonly string[];
  readonly phrases: readonly string[];
  /** Items of levels that play phrases. */
  readonly items: ReadonlyMap<string, string>;
}

function textOf(cut: TableCut, pieces: LevelItems, parts: TextParts, { fps, on }: Settings): string {
  const length = cut.levels[0]?.runs.reduce((sum, { frames }) => sum + frames, 0) ?? 0;
  const quoted = cut.title === '' ? '' : ` ${quote(cut.title)}`;
  const timelines = [...pieces].map(
    ([name, items]) => `${name}: ${parts.items.get(name) ?? itemsText(items, fps)}`,
  );
  const paragraphs = [
    [`cut ${cut.cut}${quoted}`, `time ${timeText(length, fps)}`, ...parts.head],
    parts.phrases,
    timelines,
    parts.cels,
  ];
  const text = paragraphs
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
  return format('draft.cut', `${text}\n`, { fps, on }).text;
}

/** Levels that a text does not show as the table has them. */
function unlike(cut: TableCut, text: string, settings: Settings): string[] {
  const parsed = parse('draft.cut', text);
  const { shot, diagnostics } = bind(parsed.tree, [], settings);
  const solved = shot && solve(shot);
  const broken = [...parsed.diagnostics, ...diagnostics, ...(solved?.diagnostics ?? [])].some(
    ({ severity }) => severity === 'error',
  );
  const by = new Map(solved?.levels.map((level) => [level.name, level]));
  const wrong = cut.levels.filter((level) => !shows(by.get(level.name), level)).map(({ name }) => name);
  return broken && wrong.length === 0 ? cut.levels.map(({ name }) => name) : wrong;
}

/**
 * Drawing by drawing the same, under the same names: but that a name may be shorter, `1.1` for `1>2.1`, where the key leads to
 * another one only in what no frame shows.
 */
function shows(solved: SolvedLevel | undefined, { runs, cels }: TableLevel): boolean {
  if (!solved) return false;
  const renamed = new Map<string, string>();
  let frame = 0;
  for (const { drawing, kind, frames } of runs) {
    for (const end = frame + frames; frame < end; frame++) {
      const shown = solved.exposures[frame];
      if (!shown || shown.kind !== kind || (shown.drawing === null) !== (drawing === null)) return false;
      if (drawing === null || shown.drawing === null) continue;
      if (shortName(shown.drawing) !== shortName(drawing)) return false;
      if ((renamed.get(shown.drawing) ?? drawing) !== drawing) return false;
      renamed.set(shown.drawing, drawing);
      if (cels && shown.cel !== cels.get(drawing)) return false;
    }
  }
  return solved.exposures.length === frame && new Set(renamed.values()).size === renamed.size;
}

/** A drawing's name without what only tells passages apart. */
const shortName = (name: string): string => name.replace(/>\w+(?=\.)|\/\d+$/g, '');

/** Whether each drawing's number is the frame on which it is first shown. */
function byFrame({ runs, cels }: TableLevel): boolean {
  let frame = 1;
  const seen = new Set<string>();
  for (const { drawing, frames } of runs) {
    if (drawing !== null && !seen.has(drawing) && cels?.get(drawing) !== frame) return false;
    if (drawing !== null) seen.add(drawing);
    frame += frames;
  }
  return true;
}

/**
 * The line that gives a level's drawings the numbers of the table; null where it says none. `bare`: names as they are, for
 * passages that stand nowhere.
 */
function celsLine({ name, runs, cels }: TableLevel, bare: boolean): string | null {
  const numbers = cels ?? natural(runs);
  const last = Math.max(0, ...numbers.values());
  if (last === 0) return null;
  const ways = leadsTo(runs);
  const byNumber = new Map([...numbers].map(([drawing, cel]) => [cel, drawing]));
  const names = Array.from({ length: last }, (_, i) => {
    const drawing = byNumber.get(i + 1);
    if (drawing === undefined) return '_';
    const parts = betweenParts(drawing);
    const to = bare ? '' : parts && (parts.to || ways.get(drawing));
    return parts && to ? `${parts.from}>${to}.${parts.index}${parts.letter}` : drawing;
  });
  return `cels ${name} ${names.join(' ')}`;
}

/** 1, 2, 3 … in the order in which they are first shown. */
function natural(runs: TableLevel['runs']): Map<string, number> {
  const numbers = new Map<string, number>();
  for (const { drawing } of runs)
    if (drawing !== null && !numbers.has(drawing)) numbers.set(drawing, numbers.size + 1);
  return numbers;
}

/** The key that each in-between leads to, where its passage stands somewhere as a whole. */
function leadsTo(runs: TableLevel['runs']): Map<string, string> {
  const ways = new Map<string, string>();
  const { how } = notationOf(runs);
  let to: string | null = null;
  for (let i = runs.length - 1; i >= 0; i--) {
    const { drawing, kind } = runs[i]!;
    if (kind === 'key') to = drawing;
    else if (how[i] === 'between' && to !== null) ways.set(drawing!, to);
  }
  return ways;
}
