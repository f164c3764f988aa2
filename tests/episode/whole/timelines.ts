/** What the levels of a generated cut show: acting, cycles, mouths, eyes, holds; on twos and threes. */

import type { Dice } from './dice.js';

export interface Timeline {
  readonly title: string;
  readonly items: string;
  /** Items that fill a sheet of any length, such as a cycle: another cut may reuse the level as it stands. */
  readonly lends: boolean;
  /** The timeline plays phrases of the house file. */
  readonly house: boolean;
}

/** The file that all cuts of a generated episode may use. */
export const HOUSE = `# The timing that the episode shares.
phrase walk = 1--=--2--=--
phrase blink = 1-2:3 1.1
phrase talk = on 3 2 3 2 1
`;

/** Frames of `talk` once through, and of `blink` on twos. */
const TALK = 12;
const BLINK = 2 + 2 + 3 + 2;

const CYCLES = [
  ['reeds', '(1---2)<>..'],
  ['fire', '(1-2-3-)..'],
  ['water', '(1--2--3--)..'],
  ['grass', '(1-2-)..'],
  ['flag', '(1-2-3-4-)..'],
  ['lantern', '(1--=--2)<>..'],
] as const;

/** Slow ones only where the sheet has time for a whole pass. */
export function cycle(dice: Dice, length: number): Timeline {
  const [title, items] = dice.one(CYCLES);
  return { title, items: `on ${dice.from(2, length < 48 ? 2 : 4)} ${items}`, lends: true, house: false };
}

export function walk(): Timeline {
  return { title: 'Pim', items: 'walk..', lends: true, house: true };
}

export function hold(dice: Dice): Timeline {
  return {
    title: dice.one(['crowd, far', 'rope', 'boat', 'post']),
    items: '1..',
    lends: false,
    house: false,
  };
}

/** Keys that are held, moved between and held again, over `length` rows. */
export function acting(dice: Dice, length: number): Timeline {
  const on = dice.once(3) ? 3 : 2;
  const items: string[] = on === 2 ? [] : ['on 3'];
  let frames = 0;
  let key = 1;
  // Every key with its hold, and the in-betweens to the next.
  for (;;) {
    const holdFrames = dice.from(6, 28);
    const between = dice.from(1, 3);
    const chart = dice.one(['', '', '{late}', '{early}', '{both}']);
    const breakdown = between === 3 && dice.once(4);
    frames += holdFrames + between * on;
    // What is left must show the last key for a moment.
    if (frames >= length - 6) break;
    const dashes = breakdown ? '-=-' : '-'.repeat(between);
    items.push(`${key}:${holdFrames}${chart}${dashes}`);
    key += 1;
  }
  return {
    title: dice.one(['Pim', 'Oda', 'Oda, back', 'Pim, hands', 'ferryman']),
    items: [...items, `${key}..`].join(' '),
    lends: false,
    house: false,
  };
}

/** Something that comes into the picture in the middle of the cut. */
export function entrance(dice: Dice, length: number): Timeline {
  const empty = dice.from(8, Math.max(8, length - 24));
  return {
    title: dice.one(['gulls', 'splash', 'smoke']),
    items: `x:${empty} 1-2-3..`,
    lends: false,
    house: false,
  };
}

export function eyes(dice: Dice, length: number): Timeline {
  const items: string[] = [];
  for (let frames = 0; ; ) {
    const open = dice.from(20, 60);
    frames += open + BLINK;
    if (frames >= length) break;
    items.push(`1:${open} blink`);
  }
  return { title: 'eyes', items: [...items, '1..'].join(' '), lends: false, house: items.length > 0 };
}

/** A mouth that begins two frames before the words do. */
export function mouth(words: { readonly from: number; readonly to: number }): Timeline {
  const start = words.from - 2;
  const times = Math.floor((words.to - start + 1) / TALK);
  const items = `on 3 ${start > 1 ? `1 @${start} ` : ''}talk*${times} 1..`;
  return { title: 'mouth', items, lends: false, house: true };
}

/** The drawings of a level that `lends`, with a new key at the end where there is time for it. */
export function lent(dice: Dice, from: Timeline, length: number): Timeline {
  const [, group] = /^on \d (\(.*\))\.\.$/.exec(from.items) ?? [];
  // The longest pass of the cycles is 12 drawings on fours.
  if (group === undefined || length <= 2 * 48 || dice.once(2)) return { ...from, lends: false };
  return { ...from, items: from.items.replace('..', '*2 9..'), lends: false };
}
