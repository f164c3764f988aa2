/** Camera work of a generated cut, that neither strobes nor shows an edge. Lengths are millimetres, times frames. */

import type { Dice } from './dice.js';

export interface Scene {
  /** Rows of the sheet, 48 at least. */
  readonly length: number;
  /** Levels with a timeline, bottom to top. */
  readonly levels: readonly string[];
}

/** Statements of one move; `free` levels need no artwork that reaches beyond the picture. */
type Move = (dice: Dice, scene: Scene) => readonly string[];

const FIELD = 254;
const HEIGHT = 160;

const free = (levels: readonly string[]) => levels.map((level) => `level ${level} free`);

/** A speed in mm a frame that neither strobes nor judders: slow enough to be followed, or a zip. */
function speed(dice: Dice): number {
  return dice.once(4) ? dice.from(6, 8) : dice.from(3, 13) / 10;
}

/** Background that is long enough for a way to one side of the picture. */
function background(wayMm: number, side: 1 | -1): string {
  return `level BG size ${Math.ceil(FIELD + wayMm + 26)}x${HEIGHT} at ${side * Math.round(wayMm / 2)},0`;
}

const pan: Move = (dice, { length, levels }) => {
  const from = dice.from(1, 12);
  const to = length - dice.from(0, 12);
  const [leave, arrive] = [dice.from(4, 10), dice.from(6, 14)];
  const way = Math.floor((dice.from(3, 13) / 10) * (to - from - (leave + arrive) / 2));
  const side = dice.one([1, -1] as const);
  return [
    background(way, side),
    'field A full',
    `field B full at ${side * way},0`,
    `pan A@${from} > B@${to} ease ${leave} ${arrive}${dice.once(2) ? ' graduated' : ''} carry ${levels.join(',')}`,
  ];
};

const truck: Move = (dice, { length }) => {
  const size = dice.from(70, 90);
  const room = (FIELD * (100 - size)) / 200 - 1;
  const near = `field B ${size}% at ${dice.from(0, Math.floor(room))},${dice.from(-4, 4)}`;
  const [from, to] = [dice.from(1, 12), length - dice.from(0, 12)];
  const ways = dice.once(2) ? `A@${from} > B@${to}` : `B@${from} > A@${to}`;
  return [
    'field A full',
    near,
    `truck ${ways}${dice.once(3) ? ' log' : ''} ease ${dice.from(6, 12)} ${dice.from(6, 12)}`,
  ];
};

const quick: Move = (dice) => [
  'field A 70% at 20,-6',
  'field B full',
  `truck quick A@1 > B@24 fair ア@6 ${dice.from(62, 66)}% graduated`,
];

const pull: Move = (dice, { length }) => {
  const rate = speed(dice);
  return [background(rate * length, -1), `pull BG right ${rate}mm/f 1..${length}`];
};

const follow: Move = (dice, { length, levels }) => {
  const rate = speed(dice);
  return [background(rate * length, -1), `follow ${levels.join(',')} left ${rate}mm/f 1..${length}`];
};

const slide: Move = (dice, { length, levels: [level] }) => {
  const [from, to] = [dice.from(1, 12), length - dice.from(0, 12)];
  const way = Math.floor((to - from) * (dice.from(2, 10) / 10) * dice.one([1, -1]));
  return [...free([level!]), `slide ${level} ア(0,0)@${from} > イ(${way},${dice.from(0, 6)})@${to} ease 6 8`];
};

const near: Move = (dice, { length, levels: [level] }) => [
  ...free([level!]),
  `truck level ${level} ${dice.from(60, 80)}%@1 > ${dice.from(105, 120)}%@${length} log ease 8 12 about 10,12`,
];

const shake: Move = (dice, { length }) => {
  const from = dice.from(4, length - 30);
  return [`shake ${dice.from(2, 5)}mm>0mm ${from}..${from + dice.from(8, 20)}`];
};

const sway: Move = (dice, { length, levels: [level] }) => [
  ...free([level!]),
  `sway ${level} ${dice.from(2, 4)}mm 1..${48 * Math.floor(length / 48)} every 2+0`,
];

const fade: Move = (dice, { length }) => {
  const frames = dice.from(12, 24);
  return dice.once(2) ? [`fade in 1..${frames}`] : [`fade out ${length - frames + 1}..${length}`];
};

const MOVES: readonly Move[] = [pan, pan, truck, truck, quick, pull, follow, slide, near, shake, sway];

/** One move; with `light`, now and then a fade beside it, which no dissolve may meet. */
export function cameraWork(dice: Dice, scene: Scene, light: boolean): readonly string[] {
  const move = dice.one(MOVES)(dice, scene);
  return light && dice.once(4) ? [...move, ...fade(dice, scene)] : move;
}
