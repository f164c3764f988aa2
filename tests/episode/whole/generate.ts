/**
 * A whole episode for tests and benchmarks, the same for the same seed: cuts of one to twelve seconds, one in three with a
 * camera, dialogue, dissolves, levels that later cuts reuse, a house file, four invented artists. Nothing in it is an error,
 * nor a warning. What the episode comes to is known beside the texts, from plain sums and not from the program.
 */

import { cameraWork } from './camera.js';
import { Dice } from './dice.js';
import { acting, cycle, entrance, eyes, HOUSE, hold, lent, mouth, type Timeline, walk } from './timelines.js';

export interface EpisodeOptions {
  readonly cuts?: number;
  readonly seed?: number;
  readonly overlap?: 'half' | 'full';
  /** Mean length of a cut, in frames: 300 of them are 22 minutes. */
  readonly meanFrames?: number;
}

export interface GeneratedCut {
  readonly number: string;
  /** In the episode's folder, as `cuts/c012A.cut`. */
  readonly file: string;
  readonly text: string;
  readonly timeFrames: number;
  /** Rows of the sheet: the time and the handles. */
  readonly rows: number;
  readonly artist: string;
  readonly camera: boolean;
  /** Frames of the dissolve to the next cut, or 0. */
  readonly overlapOut: number;
  readonly reuses: readonly { readonly level: string; readonly cut: string; readonly from: string }[];
}

export interface GeneratedEpisode {
  /** In story order. */
  readonly cuts: readonly GeneratedCut[];
  readonly runningFrames: number;
  /** Every text by its name in the episode's folder. */
  readonly files: Readonly<Record<string, string>>;
}

const FPS = 24;
export const ARTISTS = ['H. Tarn', 'L. Quoy', 'R. Esk', '汐見ろく'] as const;
const LEVELS = ['A', 'B', 'C', 'D', 'E', 'F'];
const PLACES = [
  'The jetty',
  'Boathouse',
  'On the causeway',
  'Salt marsh',
  'The lamp room',
  '渡し場',
  'Sea wall',
];
const LINES = [
  ['Pim', 'Did anyone cross?'],
  ['Oda', 'The tide waits for no lantern.'],
  ['Oda', 'Somebody always rings.'],
  ['ピム', 'いま行く！'],
  ['オダ', '潮が満ちるよ、ピム。'],
] as const;

/** What is drawn lots for before any text is written, so that neighbours can agree. */
interface Plan {
  readonly number: string;
  readonly timeFrames: number;
  readonly artist: string;
  readonly camera: boolean;
  overlapIn: number;
  overlapOut: number;
}

interface Drawn {
  readonly number: string;
  readonly levels: readonly { readonly name: string; readonly timeline: Timeline; readonly own: boolean }[];
}

export function generateEpisode(options: EpisodeOptions = {}): GeneratedEpisode {
  const { cuts: count = 300, seed = 1, overlap = 'half', meanFrames = (22 * 60 * FPS) / 300 } = options;
  const dice = new Dice(seed);
  const plans = planned(dice, count, meanFrames);
  const drawn: Drawn[] = [];
  const cuts = plans.map((plan, i) => written(new Dice(seed * 100_003 + i), plan, i, overlap, drawn));
  const dissolves = cuts.reduce((sum, { overlapOut }) => sum + overlapOut, 0);
  const times = cuts.reduce((sum, { timeFrames }) => sum + timeFrames, 0);
  const runningFrames = overlap === 'full' ? times - dissolves : times;
  const files: Record<string, string> = {
    'episode.yaml': manifest(cuts, overlap, count * meanFrames),
    'house.cut': HOUSE,
  };
  for (const { file, text } of cuts) files[file] = text;
  return { cuts, runningFrames, files };
}

function planned(dice: Dice, count: number, meanFrames: number): Plan[] {
  // Most cuts are short, a few are long; in sixths of a second, as directors time.
  const weights = Array.from(
    { length: count },
    () => 1 + dice.below(40) / 10 + dice.below(40) / 10 + (dice.once(8) ? 9 : 0),
  );
  const scale = (count * meanFrames) / weights.reduce((sum, one) => sum + one, 0);
  const times = weights.map((weight) => Math.max(24, 4 * Math.round((weight * scale) / 4)));
  const rest = Math.round(count * meanFrames) - times.reduce((sum, one) => sum + one, 0);
  const longest = times.indexOf(Math.max(...times));
  times[longest] = Math.max(24, times[longest]! + rest);
  const numbers = numbered(dice, count);
  let artist = dice.one(ARTISTS);
  let still = 0;
  const plans = times.map((timeFrames, i): Plan => {
    if (dice.once(5)) artist = dice.one(ARTISTS);
    // One in three, but no move in a cut that is over before it could be seen.
    const camera = timeFrames >= 48 && still >= 2;
    still = camera ? still - 2 : still + 1;
    return { number: numbers[i]!, timeFrames, artist, camera, overlapIn: 0, overlapOut: 0 };
  });
  for (let i = 0; i + 1 < count; i++) {
    const [out, into] = [plans[i]!, plans[i + 1]!];
    if (out.overlapIn > 0 || Math.min(out.timeFrames, into.timeFrames) < 60 || !dice.once(12)) continue;
    out.overlapOut = into.overlapIn = dice.one([12, 17, 24, 24, 25]);
  }
  return plans;
}

/** 1, 2, 3 … with cuts put in later (12A always, where there are so many) and numbers that are not used. */
function numbered(dice: Dice, count: number): string[] {
  const numbers: string[] = [];
  for (let number = 1; numbers.length < count; number++) {
    if (number > 12 && dice.once(40)) continue;
    numbers.push(String(number));
    if ((number === 12 || dice.once(25)) && numbers.length < count) numbers.push(`${number}A`);
  }
  return numbers;
}

function written(
  dice: Dice,
  plan: Plan,
  index: number,
  overlap: 'half' | 'full',
  drawn: Drawn[],
): GeneratedCut {
  const { number, timeFrames, artist, camera, overlapIn, overlapOut } = plan;
  // The outgoing cut of an odd dissolve has the smaller half.
  const handles = overlap === 'half' ? Math.floor(overlapOut / 2) + Math.ceil(overlapIn / 2) : 0;
  const rows = timeFrames + handles;
  const words = rows >= 48 && dice.once(2) ? speech(dice, rows) : null;
  const timelines = levelsOf(dice, rows, words);
  const reuse = rows >= 48 && dice.once(9) ? borrowed(dice, drawn, rows) : null;
  const levels = timelines.map((timeline, i) => ({ name: LEVELS[i]!, timeline, own: true }));
  if (reuse) levels.push({ name: LEVELS[levels.length]!, timeline: reuse.timeline, own: false });
  drawn.push({ number, levels });

  const names = levels.map(({ name }) => name);
  const scene = { length: rows, levels: names };
  const house = levels.some(({ timeline }) => timeline.house);
  const reuses = reuse ? [{ level: names.at(-1)!, cut: reuse.cut, from: reuse.from }] : [];
  const text = [
    ...(house ? ['use "../house.cut"', ''] : []),
    `cut ${number} "${dice.one(PLACES)}"`,
    `time ${Math.floor(timeFrames / FPS)}+${timeFrames % FPS}`,
    // The manifest says who draws the cuts of all others.
    ...(artist === ARTISTS[3] ? [`artist "${artist}"`] : []),
    `scene ${1 + Math.floor(index / 20)}`,
    ...(dice.once(3)
      ? [`memo "${dice.one(['Wind from screen left.', 'Low sun. 夕方の光。', 'Rain has just ended.'])}"`]
      : []),
    '',
    `stack BG ${names.join(' ')}`,
    ...levels.map(({ name, timeline: { title, items } }) => `${name} "${title}": ${items}`),
    ...reuses.map(({ level, cut, from }) => `level ${level} reuse ${cut}/${from}`),
    '',
    ...(words ? [`voice "${words.speaker}" ${words.from}..${words.to} "${words.line}"`] : []),
    ...(dice.once(3)
      ? [`sound ${dice.from(1, rows - 12)}.. "${dice.one(['bell, far off', 'oars', 'door slams'])}"`]
      : []),
    ...(dice.once(4)
      ? [`note ${dice.from(1, rows)} "${dice.one(['looks up', 'no move of the head', '振り向く'])}"`]
      : []),
    ...(camera ? cameraWork(dice, scene, overlapIn + overlapOut === 0) : []),
    ...(overlapIn > 0 ? [`overlap in ${overlapIn}`] : []),
    ...(overlapOut > 0 ? [`overlap out ${overlapOut}`] : []),
    '',
  ].join('\n');
  return { number, file: fileOf(number), text, timeFrames, rows, artist, camera, overlapOut, reuses };
}

function fileOf(number: string): string {
  const [, digits = '', letter = ''] = /^(\d+)(.*)$/.exec(number)!;
  return `cuts/c${digits.padStart(3, '0')}${letter}.cut`;
}

interface Speech {
  readonly speaker: string;
  readonly line: string;
  readonly from: number;
  readonly to: number;
}

function speech(dice: Dice, rows: number): Speech {
  const [speaker, line] = dice.one(LINES);
  const from = dice.from(4, rows - 40);
  return { speaker, line, from, to: from + dice.from(24, Math.min(60, rows - from)) - 1 };
}

/** One to five levels: someone who acts, with mouth and eyes, and what goes on around them. */
function levelsOf(dice: Dice, rows: number, words: Speech | null): Timeline[] {
  const first = dice.one([
    cycle(dice, rows),
    walk(),
    acting(dice, rows),
    acting(dice, rows),
    acting(dice, rows),
  ]);
  const timelines = [first];
  if (words) timelines.push(mouth(words));
  if (dice.once(3)) timelines.push(eyes(dice, rows));
  if (dice.once(2)) timelines.push(cycle(dice, rows));
  if (dice.once(4)) timelines.push(acting(dice, rows));
  if (dice.once(4) && rows >= 36) timelines.push(entrance(dice, rows));
  if (dice.once(5)) timelines.push(hold(dice));
  return timelines.slice(0, LEVELS.length - 1);
}

/** A level of one of the last thirty cuts that fills a sheet of any length. */
function borrowed(dice: Dice, drawn: readonly Drawn[], rows: number) {
  const offers = drawn
    .slice(-30)
    .flatMap(({ number, levels }) =>
      levels.filter(({ timeline, own }) => timeline.lends && own).map((level) => ({ number, level })),
    );
  if (offers.length === 0) return null;
  const { number, level } = dice.one(offers);
  return { cut: number, from: level.name, timeline: lent(dice, level.timeline, rows) };
}

function manifest(cuts: readonly GeneratedCut[], overlap: string, budgetFrames: number): string {
  const seconds = Math.ceil(budgetFrames / FPS);
  const artists = ARTISTS.slice(0, 3).map((name) => {
    const own = cuts.filter(({ artist }) => artist === name).map(({ number }) => number);
    return `  ${name}: [${own.join(', ')}]`;
  });
  return [
    'title: Samphire Ferry',
    'episode: 3',
    'paper: A4',
    'scan: 300dpi',
    `overlap: ${overlap}`,
    `budget: ${seconds}+0`,
    'artists:',
    ...artists,
    'cuts: ["cuts/*.cut"]',
    '',
  ].join('\n');
}
