/** Pieces that several English sentences are made of. */

import { figure } from '../../../words/number-format.js';
import type { Neighbour, NotLent, RowsFault, Takes, Wanted } from '../message-terms.js';
import { expected } from './terms-texts.js';

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

/** `120`, or `96 + 12 handle`: the frames of a cut and the rows that dissolves add. */
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
    case 'choice':
      return oneOf(takes.words);
  }
}

/** `12.5 %` of a share; one decimal at most. */
export const percent = (of: number): string => `${figure(of * 100, { decimals: 1 })} %`;

/** Rounded up, so that a piece of paper cut to it is never too small, and an edge never shows by 0 mm. */
export const paperMm = (mm: number): string => figure(Math.ceil(mm * 100 - 1e-6) / 100);

/** `frame 3`, `frames 3-7, 12, 15-20 and others`. */
export function frameList(frames: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const frame of frames) {
    const run = runs[runs.length - 1];
    if (run && frame === run[1] + 1) run[1] = frame;
    else runs.push([frame, frame]);
  }
  const texts = runs.slice(0, 4).map(([a, b]) => (a === b ? `${a}` : `${a}-${b}`));
  const more = runs.length > 4 ? ' and others' : '';
  return `${frames.length === 1 ? 'frame' : 'frames'} ${texts.join(', ')}${more}`;
}
