/** Changes in words: as sentences of a retake note, and as lines for the memo of a sheet. */

import { kindOf } from '../shot/camera/move-kinds.js';
import type { Form, Parameter } from '../shot/camera/move-parameters.js';
import { FRAMES_A_FOOT } from '../shot/settings.js';
import { feetAndFrames, rowName, secondsAndFrames } from '../shot/time-notation.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { SentenceFormat } from '../words/change-sentences.js';
import type { LabelLanguage } from '../words/labels.js';
import { figure } from '../words/number-format.js';
import type { MoveWords } from '../words/sheet-words.js';
import { type Words, wordsOf } from '../words/words.js';
import type { Change, ChangeOf, MannerValue, MoveSeen } from './change.js';

export interface SentenceContext extends SentenceFormat {
  readonly language: LabelLanguage;
  /** Those of the form that the cut is printed on. */
  readonly words: Words;
}

/** Letters of a text that are quoted on paper; the text itself stands there too. */
export const ON_PAPER = 40;

/** As the sheet of `now` writes times, in a language; `most`: letters that are quoted of one text. */
export function telling({ shot }: SolvedShot, language: LabelLanguage, most = 200): SentenceContext {
  const feet = shot.settings.convention === 'west';
  const unit = feet ? FRAMES_A_FOOT : shot.fps;
  const length = (frames: number) => (feet ? feetAndFrames(frames) : secondsAndFrames(frames, shot.fps));
  const words = wordsOf({ labels: language, convention: shot.settings.convention });
  return {
    language,
    words,
    length,
    move: (seen) => moveName(seen, words.moves),
    parameter: (change, value) => parameterText(change, value, words.moves, length),
    long: (frames) => Math.abs(frames) >= shot.fps,
    row: (frame) => rowName(frame, unit, feet),
    brief: (text, other = '') => brief(text, other, most),
  };
}

/** Letters before what differs that say where it is. */
const LEAD = 12;

/** At most so many letters of a text: its beginning, or the part of it where it begins to differ from the other one. */
function brief(text: string, other: string, most: number): string {
  const [letters, others] = [text, other].map((one) => [...one.replace(/\s+/g, ' ')]) as [string[], string[]];
  if (letters.length <= most) return letters.join('');
  const same = (a: readonly string[], b: readonly string[]): number => {
    const at = a.findIndex((letter, i) => letter !== b[i]);
    return at < 0 ? a.length : at;
  };
  const first = same(letters, others);
  const end = Math.max(first, letters.length - same(letters.toReversed(), others.toReversed()));
  const room = (from: number) => most - (from > 0 ? 4 : 2);
  if (other === '' || end <= room(0)) return `${letters.slice(0, room(0)).join('').trimEnd()} …`;
  // From a word on, where there are blanks.
  const lead = Math.max(0, first - LEAD);
  const word = lead === 0 ? 0 : letters.indexOf(' ', lead) + 1;
  const from = word > lead && word < first ? word : lead;
  const to = from + (letters.length - from <= most - 2 ? most : room(from));
  return `${from > 0 ? '… ' : ''}${letters.slice(from, to).join('').trim()}${to < letters.length ? ' …' : ''}`;
}

/** No full stop at its end; one line. */
export function sentence(change: Change, t: SentenceContext): string {
  const say = t.words.changes[change.kind] as (change: Change, t: SentenceFormat) => string;
  return say(change, t)
    .replace(/\s*\n\s*/g, ' ')
    .replace(/\p{Cc}/gu, '?');
}

// ----
// Names of moves, and values of their parameters, as a sentence has them: made of the table of moves and the words of a language.

const SENSE = { in: 'T.U', out: 'T.B' } as const;

/** `A スライド ア→イ`, `Q.T.U A→B` */
export function moveName(
  { move, levels, places, sense, quick }: MoveSeen,
  { kinds, told }: MoveWords,
): string {
  const { grows } = kindOf({ kind: move });
  const word = `${quick ? told.quick('') : ''}${kinds[move].name}${grows ? (sense ? SENSE[sense] : 'T.U/T.B') : ''}`;
  return [levels.join(','), word, places.join('→')].filter((part) => part !== '').join(' ');
}

const DIRECTIONS: ReadonlySet<string> = new Set(['left', 'right', 'up', 'down']);
const UNITS = { mm: ' mm', degrees: '°' } as const;

type Length = (frames: number) => string;

/** Values of a change as text; '' where there is none. */
const TEXTS: {
  readonly [F in Form]: (
    value: string,
    words: MoveWords,
    length: Length,
    unit: Parameter<F>['unit'],
  ) => string;
} = {
  flag: () => '',
  levels: (value) => value,
  sense: (value, words) => words.senses[value as keyof MoveWords['senses']],
  direction: (value, words) =>
    DIRECTIONS.has(value) ? words.directions[value as keyof MoveWords['directions']] : value,
  way: (value) => `${figure(Number(value))} mm`,
  swing: (value, words) => {
    const [from, to] = value.split('>') as [string, string?];
    return `${to === undefined ? from : words.swing(from, to)} mm`;
  },
  measure: (value, _, length, unit) => (unit === 'frames' ? length(Number(value)) : `${value}${UNITS[unit]}`),
  loop: (value) => `${figure(Number(value))} mm`,
  point: (value) => value,
};

/** A parameter with that value: `every 1+12`, `no loop`. */
export function parameterText(
  { move, manner }: ChangeOf<'move-manner'>,
  value: MannerValue,
  words: MoveWords,
  length: Length,
): string {
  const { form, unit } = kindOf({ kind: move }).parameters[manner]!;
  const say = words.changed as Readonly<Record<string, (text: string, value: boolean) => string>>;
  const text = value === null ? '' : TEXTS[form](String(value), words, length, unit);
  return say[manner]!(text, value === true);
}

// ---- A comparison as the sheet marks it, besides its rows (changed-rows.ts): ladders with change bars, and lines for the memo

export interface MarkedLadder {
  readonly level: string;
  readonly from: string;
  readonly to: string;
}

/** The ladders of the charts that get a change bar: the passage from one key to another. */
export function markedLadders(changes: readonly Change[], { levels }: SolvedShot): readonly MarkedLadder[] {
  const found: MarkedLadder[] = [];
  const add = (ladder: MarkedLadder) => {
    const { level, from, to } = ladder;
    if (!found.some((one) => one.level === level && one.from === from && one.to === to)) found.push(ladder);
  };
  for (const change of changes) {
    if (change.kind === 'chart' || change.kind === 'places' || change.kind === 'in-betweens') {
      const { level, from, to } = change;
      add({ level, from, to });
    } else if (change.kind === 'breakdown') {
      const level = levels.find(({ name }) => name === change.level);
      for (const { from, to, drawings } of level?.passages ?? [])
        if (drawings.includes(change.drawing)) add({ level: change.level, from, to });
    }
  }
  return found;
}

/** One line a change. */
export function markedLines(
  changes: readonly Change[],
  now: SolvedShot,
  language: LabelLanguage,
): readonly string[] {
  const t = telling(now, language, ON_PAPER);
  return changes.map((change) => sentence(change, t));
}
