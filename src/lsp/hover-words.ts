/** The words of what a hover computes, a table a language; what they are told of stands in `hover-texts.ts`. */

import type { MoveKind } from '../language/tree-camera.js';
import type { UserLanguage } from '../language/user-language.js';
import type { MouthShape } from '../shot/shot.js';
import { feetAndFrames, inFrames, rowName, secondsAndFrames } from '../shot/time-notation.js';
import { moveTitles } from '../words/en/forms-en.js';
import { figure, plural } from '../words/number-format.js';
import { JAPANESE_HOVERS } from './hover-words-ja.js';

/** How many drawings of each kind are drawn for a level. */
export interface DrawnCounts {
  readonly keys: number;
  readonly breakdowns: number;
  readonly inbetweens: number;
  readonly reused: number;
}

/** Frames are numbers counted from 1, lengths numbers of frames; `stretch` is what `between` or `frameList` gives, `length` what `lasting` gives. */
export interface HoverWords {
  // ---- times and numbers
  readonly lasting: (frames: number, fps: number) => string;
  readonly between: (from: number, to: number) => string;
  readonly frameList: (places: string) => string;
  readonly asLength: (frames: number, fps: number) => string;
  readonly asPosition: (frame: number, fps: number) => string;
  /** `most` of the parts, then how many more there are. */
  readonly listed: (parts: readonly string[], most?: number) => string;
  /** Before what is said of the frame; `offset`: frames from the mark. */
  readonly mark: (name: string, offset: number) => string;

  // ---- fields and moves
  readonly field: (name: string, size: string, percent: number) => string;
  readonly centre: (xMm: number, yMm: number) => string;
  readonly turned: (degrees: number) => string;
  readonly chart: (fields: number, place: string) => string;
  readonly move: (kind: MoveKind, stretch: string, length: string, steps: number) => string;
  readonly gives: Readonly<Record<'width' | 'centre', string>>;
  /** `speed`: mm a frame, where it is constant, or for all of the move. */
  readonly way: (mm: number, speed: { readonly mm: number; readonly throughout: boolean } | null) => string;
  readonly largestStep: (step: {
    readonly mm: number;
    readonly frame: number | null;
    readonly percent: number;
    readonly pixels: number;
  }) => string;
  readonly fromTo: (from: string, to: string) => string;
  readonly ofWidth: (mm: number) => string;

  // ---- timelines and levels
  readonly kinds: Readonly<Record<'key' | 'breakdown' | 'inbetween' | 'empty', string>>;
  readonly drawing: (level: string, names: string, kind: string, cels: string) => string;
  readonly empty: (level: string) => string;
  readonly here: (stretch: string, length: string, times: number) => string;
  readonly inAll: (length: string, first: number) => string;
  /** `chart`: null where its shares say it all. */
  readonly passage: (
    from: string,
    to: string,
    inbetweens: number,
    shares: string,
    chart: 'even' | 'early' | 'late' | 'both' | null,
  ) => string;
  readonly group: (
    phrase: string | null,
    stretch: string,
    length: string,
    passes: number,
    pass: number,
  ) => string;
  /** `lengths`: '' where the cut does not play it. */
  readonly phrase: (name: string, lengths: string) => string;
  readonly level: (name: string, title: string) => string;
  readonly drawn: (counts: DrawnCounts) => string;
  readonly seen: (length: string, of: string, empty: number) => string;
  readonly reuses: (cut: string, level: string) => string;
  readonly unused: (numbers: string) => string;
  readonly artwork: (needed: string, given: string | null, loopMm: number | null) => string;
  readonly neverSeen: string;

  // ---- cuts, recordings, dialogue
  readonly cut: (number: string, title: string) => string;
  readonly noCut: (number: string) => string;
  readonly recording: (seconds: number, kilohertz: number, channels: number) => string;
  readonly heard: (rows: { readonly from: number; readonly to: number } | null) => string;
  readonly line: (unit: 'mora' | 'syllable', count: number, wanted: string) => string;
  readonly lineHas: (length: string, aSecond: number) => string;
  readonly mouth: (mouth: {
    readonly speaker: string;
    readonly lines: number;
    /** Lines that nobody can read, so that the mouth only flaps. */
    readonly flapping: number;
    readonly drawings: number;
    readonly on: number;
    readonly lead: number;
  }) => string;
  /** A drawing of a mouth; `seen`: null where it never is. */
  readonly seenAs: (
    shape: MouthShape,
    key: string,
    seen: { readonly cel: string; readonly length: string } | null,
  ) => string;
}

export function hoverWords(language: UserLanguage): HoverWords {
  return language === 'ja' ? JAPANESE_HOVERS : ENGLISH_HOVERS;
}

const quoted = (title: string): string => (title === '' ? '' : ` “${title}”`);

const ENGLISH_HOVERS: HoverWords = {
  lasting: (frames, fps) => `${inFrames(frames)} (${secondsAndFrames(frames, fps)})`,
  between: (from, to) => (from === to ? `frame ${from}` : `frames ${from}–${to}`),
  frameList: (places) => `frames ${places}`,
  asLength: (frames, fps) =>
    `${inFrames(frames)} = ${secondsAndFrames(frames, fps)} = ${feetAndFrames(frames)} of 35 mm film`,
  asPosition: (frame, fps) =>
    `frame ${frame}: row ${rowName(frame, fps, false)}, or ${rowName(frame, 16, true)} in feet; up to here ${ENGLISH_HOVERS.asLength(frame, fps)}`,
  listed: (parts, most = 6) =>
    parts.length > most
      ? `${parts.slice(0, most).join(', ')} and ${parts.length - most} more`
      : parts.join(', '),
  mark: (name, offset) =>
    `Mark \`${name}\`${offset === 0 ? '' : ` ${offset > 0 ? '+' : '−'} ${Math.abs(offset)}`}: `,

  field: (name, size, percent) => `Field \`${name}\`: ${size}, ${figure(percent)} % of the standard field`,
  centre: (xMm, yMm) => `centre ${figure(xMm)}, ${figure(yMm)} mm`,
  turned: (degrees) =>
    `, turned ${figure(Math.abs(degrees))}° ${degrees > 0 ? 'clockwise' : 'counter-clockwise'}`,
  chart: (fields, place) => `; on the ${fields}-field chart ${place}`,
  move: (kind, stretch, length, steps) =>
    `${moveTitles[kind].title}: ${stretch}, ${length} in ${steps} steps`,
  gives: {
    width: 'gives the width; another move of the camera gives the centre',
    centre: 'gives the centre and the turn; a truck gives the width',
  },
  way: (mm, speed) =>
    `way ${figure(mm)} mm${
      speed
        ? `, ${figure(speed.mm, { decimals: 3 })} mm/f ${speed.throughout ? 'throughout' : 'where it runs at constant speed'}`
        : ''
    }`,
  largestStep: ({ mm, frame, percent, pixels }) =>
    `largest step ${figure(mm)} mm${frame === null ? '' : ` on frame ${frame}`}: ${figure(percent)} % of the field's width, ${figure(pixels, { decimals: 1 })} pixels`,
  fromTo: (from, to) => `from ${from} to ${to}`,
  ofWidth: (mm) => `${figure(mm)} mm of width`,

  kinds: { key: 'key drawing', breakdown: 'breakdown', inbetween: 'in-between', empty: 'empty' },
  drawing: (level, names, kind, cels) => `**${level} ${names}**: ${kind}, number ${cels}`,
  empty: (level) => `**${level}**: empty`,
  here: (stretch, length, times) => `here ${stretch}: ${length}${times > 1 ? `, ${times} times` : ''}`,
  inAll: (length, first) => `in all ${length}, first on frame ${first}`,
  passage: (from, to, inbetweens, shares, chart) =>
    `${from} → ${to}: ${plural(inbetweens, 'in-between')} at ${shares} of the way${chart === null ? '' : ` (${chart})`}`,
  group: (phrase, stretch, length, passes, pass) =>
    `${phrase === null ? 'Group' : `Phrase \`${phrase}\``}: ${stretch}, ${length}, ${
      passes === 1 ? 'once' : `${figure(passes)} passes of ${inFrames(pass)}`
    }`,
  phrase: (name, lengths) => `Phrase \`${name}\`${lengths === '' ? '' : `: ${lengths} a pass`}`,
  level: (name, title) => `Level **${name}**${quoted(title)}`,
  drawn: ({ keys, breakdowns, inbetweens, reused }) => {
    const kinds = [
      `${keys} keys`,
      ...(breakdowns > 0 ? [`${breakdowns} breakdowns`] : []),
      `${inbetweens} in-betweens`,
    ];
    return `${keys + breakdowns + inbetweens} drawings: ${kinds.join(', ')}${reused > 0 ? `; ${reused} reused` : ''}`;
  },
  seen: (length, of, empty) => `seen on ${length} of ${of}${empty > 0 ? `, empty on ${empty}` : ''}`,
  reuses: (cut, level) => `reuses the drawings of ${cut}/${level}`,
  unused: (numbers) => `numbers not used: ${numbers}`,
  artwork: (needed, given, loopMm) =>
    `artwork needed ${needed}${given === null ? '' : `, it has ${given}`}${
      loopMm === null ? '' : `, painted as a loop of ${figure(loopMm)} mm`
    }`,
  neverSeen: 'never seen',

  cut: (number, title) => `Cut ${number}${quoted(title)}`,
  noCut: (number) => `The episode has no cut ${number}.`,
  recording: (seconds, kilohertz, channels) =>
    `Recording of ${figure(seconds)} s, ${figure(kilohertz)} kHz, ${
      channels === 1 ? 'mono' : channels === 2 ? 'stereo' : `${channels} channels`
    }`,
  heard: (rows) => (rows ? `; heard on rows ${rows.from} to ${rows.to}` : '; heard on no row of the sheet'),
  line: (unit, count, wanted) =>
    `${count} ${unit === 'mora' ? 'morae' : 'syllables'}: the line wants about ${wanted}`,
  lineHas: (length, aSecond) => `; it has ${length}, ${figure(aSecond, { decimals: 1 })} a second`,
  mouth: ({ speaker, lines, flapping, drawings, on, lead }) => {
    const unread = flapping === 0 ? '' : flapping === lines ? ', not read' : `, ${flapping} not read`;
    return `Mouth of “${speaker}”: ${plural(lines, 'line')}${unread}; ${plural(drawings, 'drawing')}, on ${on}, leads by ${inFrames(lead)}`;
  },
  seenAs: (shape, key, seen) => `${shape} ${key}: ${seen ? `${seen.cel}, ${seen.length}` : 'not seen'}`,
};
