/** Cut lists of any length, made without solving anything: short cuts and long, titles in two scripts, moves, dissolves, errors. */

import type { CutList, ListOf } from '../../../src/count/count-episode.js';
import type { CutRow } from '../../../src/count/cut-row.js';
import type { Frames } from '../../../src/shot/shot.js';
import { listOf, row } from '../../count/rows.js';

const TITLES = [
  'Salt marsh, low water',
  'Pim on the causeway, running from the boathouse to the steps before the tide is in',
  '渡し場の鐘',
  '',
  '潮が満ちる前に綱を引くピム、風は画面左から、霧は画面の端まで',
  'Rope "taut", then slack',
];
const ARTISTS = [
  ['H. Tarn'],
  ['L. Quoy'],
  ['R. Esk', '汐見ろく'],
  [],
  ['An artist of a very long name indeed'],
];
const MOVES = [
  ['FIX'],
  ['follow PAN', 'T.U', 'O.L'],
  ['graduated PAN'],
  ['FIX', 'double exposure', 'glow'],
  ['shake'],
];

/** Small numbers that do not repeat soon: a linear congruential generator. */
function rolls(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 1103515245 + 12345) % 2 ** 31;
    return Math.floor((state / 2 ** 31) * below);
  };
}

export function listOfCuts(cuts: number, more: Partial<ListOf> = {}, seed = 7): CutList {
  const roll = rolls(seed);
  const rows: CutRow[] = [];
  let dissolve = 0;
  for (let i = 0; i < cuts; i++) {
    const before = dissolve;
    dissolve = i < cuts - 1 && roll(9) === 0 ? 12 + roll(20) : 0;
    const time = roll(6) === 0 ? 10 + roll(20) : 24 + roll(170);
    const [head, tail] = [Math.ceil(before / 2), Math.floor(dissolve / 2)];
    const length = time + head + tail;
    const range = (): Frames => {
      const from = 1 + roll(length);
      return { from, to: Math.min(length, from + roll(60)) };
    };
    const [keys, breakdowns, inbetweens] = [1 + roll(20), roll(3), roll(30)];
    const drawings = keys + breakdowns + inbetweens;
    const number = `${1 + i}${roll(25) === 0 ? 'A' : ''}`;
    const unsound = cuts > 20 && roll(40) === 0;
    const counted = {
      time,
      rows: length,
      handles: { head, tail },
      overlap: { in: before, out: dissolve },
      levels: 1 + roll(6),
      counts: {
        keys,
        breakdowns,
        inbetweens,
        drawings,
        reused: roll(4) === 0 ? roll(12) : 0,
        backgrounds: 0,
      },
      moves: MOVES[roll(MOVES.length)]!,
      rhythm: {
        moving: roll(3) === 0 ? [range()] : [],
        spoken: roll(3) === 0 ? [range()] : [],
        fresh: Array.from({ length: drawings }, () => 1 + roll(length)).sort((a, b) => a - b),
      },
    };
    const untimed = unsound && before === 0 && dissolve === 0;
    rows.push(
      row(number, untimed ? null : counted, {
        title: TITLES[roll(TITLES.length)]!,
        scene: String(1 + Math.floor(i / 13)),
        artists: ARTISTS[roll(ARTISTS.length)]!,
        sound: !unsound,
        problems: { errors: unsound ? 1 + roll(3) : 0, warnings: roll(8) === 0 ? 1 : 0 },
        pages: unsound ? null : { sheet: 1 + roll(3), all: 4 + roll(9) },
      }),
    );
  }
  return listOf(rows, { budget: cuts * 105, ...more });
}
