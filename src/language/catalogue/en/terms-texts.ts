/** What the things that messages speak of are called in English. */

import { figure } from '../../../words/number-format.js';
import type { RowText, RowTexts } from '../catalogue-entry.js';
import type {
  Expected,
  FieldQuantity,
  Misplaced,
  Neighbour,
  NoKeyAfter,
  NoKeyBefore,
  NotLent,
  NumberBounds,
  Quantity,
  RowsFault,
  Takes,
  Wanted,
} from '../message-terms.js';

const expected: Readonly<Record<Expected, string>> = {
  'level-names': 'the names of levels',
  'cut-number': 'a number such as 12 or 12A',
  'message-code': 'the code of a warning or a hint such as strobing',
  time: 'a time such as 5+0',
  range: 'a range such as 1+6..2+20',
  'range-dots': 'the `..` of a range such as 1+6..2+20',
  millimetres: 'a number of millimetres',
  'place-comma': 'the comma of a place such as 130,0',
  'quoted-words': 'the words in quotes',
  'scene-number': 'a number such as 3 or 3B',
  direction: 'a direction (left, right, up, down or an angle such as 30deg)',
  side: 'a direction (left, right, up or down)',
  way: 'a speed or a distance such as 1.2mm/f or 95mm',
  'scale-on-frame': 'a size such as 100%@1',
  'field-on-frame': 'a field such as A@1',
  'marked-number': 'the size or angle of a mark, such as (100%) or (30)',
  'marked-place': 'a place such as (0,0)',
  'marked-place-comma': 'the comma of a place such as (0,0)',
  'turning-levels': 'the word `level` and the levels that turn',
  'sway-length': 'the length of one sway, such as every 1+12',
  'in-or-out': 'the word `in` or `out`',
  'field-size': 'the size of the field: full, 60%, 8F or 120mm',
  'field-place': 'the place of its centre: 40,-12 or 2N 3E',
  'cut-level': 'a level of another cut such as 8/C',
  'drawing-name': 'the name of a drawing such as 1 or 1.2',
  'drawing-names': 'the names of drawings such as 1 1.1 1.2 2',
  fraction: 'a fraction such as 1/2',
  chart: 'a chart such as {late} or {1/2 3/4}',
  'chart-end': 'the `}` of the chart',
  'frame-count': 'a number of frames',
  'repeat-count': 'a number of times',
  'drawing-or-group-end': 'a drawing or the `)` of the group',
  drawing: 'a drawing',
  drawings: 'a drawing such as 1 or -',
  'phrase-equals': 'the `=` between the name and the drawings',
  'short-length': 'a length such as 3mm',
  angle: 'an angle such as 30',
  'on-frame': 'the `@` that says on which frame',
  steps: 'the steps in millimetres, such as 1 2 4 8*17 4 2 1',
  'leg-arrow': 'the `>` to where it goes',
  name: 'a name',
  'phrase-name': 'the name of a phrase',
  key: 'a key drawing',
  between: "an in-between's name such as 1.2",
  text: 'text in quotes',
  'unclosed-text': 'text with no closing quote',
  size: 'a size such as 560x200mm',
  rate: 'a rate such as 1.2mm/f',
  length: 'a length such as 120mm',
  degrees: 'an angle such as 30deg',
  share: 'a share such as 60%',
  'chart-field': 'a field such as 8F',
  'chart-step': 'a step on the field chart such as 2N',
  'chart-field-part': 'a field such as 8.5F',
  'chart-step-part': 'a step on the field chart such as 2.5N',
  'whole-seconds': 'seconds such as 12s',
  'part-seconds': 'seconds such as 12.48s',
  timecode: 'a timecode such as 0:03:12:08',
  'recording-time': 'a time in the recording such as 12.48s or 0:03:12:08',
  seconds: 'seconds and frames such as 5+12',
  feet: "feet and frames such as 8'04",
  decimal: 'a number such as 1.5',
  'between-lettered': "an in-between's name such as 1.1a",
  'key-lettered': 'a key drawing such as 3a',
  whole: 'a whole number',
  glued: 'a number with something glued on',
  dots: 'too many dots',
  unknown: 'a character of no use',
};

export const misplaced: Readonly<Record<Misplaced, string>> = {
  length: 'a length such as `:8` comes once, after a drawing or a group, and before `..`',
  repeat: 'a repeat such as `*3` comes once, after the `)` of a group or the name of a phrase',
  bounce: '`<>` comes after the `)` of a group or the name of a phrase, and before `*3`',
  chart: 'a chart such as {late} comes once, straight after a key drawing',
  open: '`..` comes once, after a drawing or a group',
  arrow: '`>` stands between a key and an in-between, as in 1>3.2',
  offset: 'an offset stands straight after the name of a mark, as in hit+6',
  comma: 'drawings have blanks between them, no commas',
  'group-end': 'it closes no group',
  seconds: 'how long a drawing stays is written with a colon, as in 3:1+0',
  'comma-for-blank': 'a blank stands between the two, no comma',
};

export const noKeyBefore: Readonly<Record<NoKeyBefore, string>> = {
  start: 'there is no key before it',
  empty: 'the level is empty before it, and a passage never crosses `x`',
  between: 'the group before it ends in an in-between; write a key first',
  cut: 'the last pass of the group before it is cut short; write a key first',
};

export const noKeyAfter: Readonly<Record<NoKeyAfter, string>> = {
  end: 'there is no key after it',
  empty: 'the level is empty after it, and a passage never crosses `x`',
  'group-empty': 'the group after it begins with `x`, and a passage never crosses that',
  'group-between': 'the group after it begins with an in-between',
  'group-end': 'its group does not begin with a key that it could lead back to',
};

export const quantities: Readonly<Record<Quantity, string>> = {
  on: '`on`',
  'place-x': 'The place to the right in mm',
  'place-y': 'The place upwards in mm',
  'point-x': 'The point to the right in mm',
  'point-y': 'The point upwards in mm',
  scale: 'The scale (1 is 100 %)',
  turn: 'The turn in degrees',
  direction: 'The direction in degrees',
  way: 'The distance in mm',
  swing: 'The swing in mm',
  'last-swing': 'The last swing in mm',
  loop: 'The length of the loop in mm',
  sway: 'The sway in mm',
  'sway-time': 'The time of one sway in frames',
};

/** Before the name of a field, and behind it. */
export const fieldQuantities: Readonly<Record<FieldQuantity, readonly [before: string, behind: string]>> = {
  width: ['The width of', 'in mm'],
  x: ['The place of', 'to the right in mm'],
  y: ['The place of', 'upwards in mm'],
  turn: ['The turn of', 'in degrees'],
};

export const bounds: Readonly<Record<NumberBounds, string>> = {
  length: 'a length of 100 metres at most',
  size: 'more than nothing, and 100 metres at most',
  scale: 'between 1 % and 10000 %',
  degrees: 'a thousand full turns at most',
  frames: 'one frame at least',
};

// ---- pieces that several English sentences are made of

/** The end of a sentence that says there is no such thing; `otherwise`: what stands there where nothing is like it. */
export const meant = (guess: string | null, otherwise = '.'): string =>
  guess === null ? otherwise : `; did you mean \`${guess}\`?`;

/** A statement by its first word, '' for a timeline. */
export const statementName = (word: string): string => (word === '' ? 'timeline' : `\`${word}\` statement`);

/** `a size such as 100%@1 or a name`: what could stand at one place. */
export const anyOf = (wanted: readonly Wanted[]): string =>
  wanted
    .map((one) => (Object.hasOwn(expected, one) ? expected[one as keyof typeof expected] : one))
    .join(' or ');

/** What leads back to itself. */
export const around = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(' → ');

/** `120`, or `96 + 12 handle`: the frames of a cut and the rows that overlaps add. */
export const sheetRows = (time: number, rows: number): string =>
  rows === time ? String(rows) : `${time} + ${rows - time} handle`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const neighbourName = ({ cut, file }: Neighbour): string =>
  cut === '' ? `\`${file}\`` : `cut ${cut}`;

/** `A, B or C`. */
export const oneOf = (words: readonly string[]): string =>
  `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

/** At most six drawings of a level. */
export const drawingList = (drawings: readonly string[]): string =>
  drawings.length === 0 ? 'none' : `${drawings.slice(0, 6).join(', ')}${drawings.length > 6 ? ', …' : ''}`;

/** U+0007 and so on. */
export const codePoint = (character: number): string =>
  `U+${character.toString(16).toUpperCase().padStart(4, '0')}`;

export function notLent(reason: NotLent): string {
  switch (reason.why) {
    case 'circle':
      return `the levels reuse each other in a circle, ${reason.links.join(' → ')}`;
    case 'no-cut':
      return `the episode has no cut ${reason.cut}`;
    case 'too-far':
      return `the level goes through more than ${reason.most} cuts`;
    case 'errors':
      return `cut ${reason.cut} has errors`;
    case 'not-lent-either':
      return `level ${reason.level} of cut ${reason.cut} itself reuses one that is not to be found`;
    case 'no-level': {
      const offer = reason.guess === null ? '' : ` (did you mean ${reason.guess}?)`;
      return `cut ${reason.cut} has no level ${reason.level}${offer}`;
    }
  }
}

export function rowsFault({ unit, rows, most, near, paper }: RowsFault): string {
  return `a page has whole ${unit} of ${rows} rows, on ${paper} from ${rows} to ${most}; ${near} would do`;
}

export function taken(takes: Takes): string {
  switch (takes.value) {
    case 'size':
      return `a width and a height such as \`254mm x 142.875mm\`, each from ${takes.least} to ${takes.most} mm`;
    case 'pixels':
      return 'a width and a height in pixels such as `1920x1080`, each from 16 to 32768';
    case 'dpi':
      return 'a resolution such as `200dpi`, from 10 to 10000';
    case 'running-time':
      return 'a running time such as `1320+0` (seconds + frames), of one frame to ten hours';
    case 'whole':
      return `a whole number from ${takes.least} to ${takes.most}`;
    case 'rows':
      return `a number of rows: ${rowsFault(takes.fault)}`;
    case 'cuts':
      return 'a file or a pattern such as `cuts/*.cut`, or a list of them';
    case 'cuts-of-artist':
      return 'the cuts that the artist draws, such as `[12, 13]`';
    case 'stages':
      return 'a list of stages such as `[layout, key, in-between, finish]`';
    case 'stage':
      return 'the name of a stage: one word that begins with a letter, such as `layout`';
    case 'due':
      return 'a list of stages and cuts with their days, such as `{ key: 2027-03-19, key 12: 2027-03-26 }`';
    case 'day':
      return 'a day, the year first, such as `2027-03-19`';
    case 'rates':
      return 'a list of stages with what is paid, such as `{ key: 900 yen per key }`';
    case 'rate':
      return `what is paid, such as \`230 yen per drawing\`: an amount, a currency, and per ${oneOf(takes.units)}`;
    case 'choice':
      return oneOf(takes.words);
  }
}

/** `12.5 %` of a share; one decimal at most. */
export const percent = (of: number): string => `${figure(of * 100, { decimals: 1 })} %`;

/** Rounded up, so that a piece of paper cut to it is never too small, and an edge never shows by 0 mm. */
export const paperMm = (mm: number): string => figure(Math.ceil(mm * 100 - 1e-6) / 100);

/** Rows of the sheet, and frames where nobody knows the sheet. */
export const rows: RowTexts = {
  plain: (from, to) => (to === undefined ? `frame ${from}` : `frames ${from} to ${to}`),
  named: (rows, from, to) =>
    to === undefined ? `frame ${rows} (${from})` : `frames ${rows} (${from} to ${to})`,
  until: ' to ',
};

/** `frame 3`, `frames 3-7, 12, 15-20 and others`. */
export function frameList(frames: readonly number[], row: RowText): string {
  const runs: [number, number][] = [];
  for (const frame of frames) {
    const run = runs[runs.length - 1];
    if (run && frame === run[1] + 1) run[1] = frame;
    else runs.push([frame, frame]);
  }
  const more = runs.length > 4 ? ' and others' : '';
  const named = runs.slice(0, 4).map(([a, b]) => (a === b ? row(a) : row(a, b)));
  // As the sheet names them, or in short where that is the same.
  if (named.some((one) => one.endsWith(')'))) return `${named.join(', ')}${more}`;
  const texts = runs.slice(0, 4).map(([a, b]) => (a === b ? `${a}` : `${a}-${b}`));
  return `${frames.length === 1 ? 'frame' : 'frames'} ${texts.join(', ')}${more}`;
}
