/** Single edits of a text, with the sentences that a comparison must say of each. */

import { expect, test } from 'vitest';
import { note } from './say.js';

export const SHEET = `cut 12 "Rooftop"
time 5+0
scene 6
artist "M. Arai"
memo "Wind from screen left."
stack BG A B C
level BG size 560x200mm at 130,0
A "Nao": 1:12 1--2-3:1+0 (4-5-)*3 6..
B: x:24 (1--2--)..
C: 1 @49 2:12{late}--3..
voice "Nao" 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"
sound 3+1..3+8 "door slams"
music 1.. "flute"
note 2+12 "looks up"
`;
export const CAMERA = `cut 12
time 5+0
stack BG A B C
level BG free
A: 1..
B: 1..
C: 1..
field A full
field B full at 110,0
field C 60% at 20,0 cw 5
field D 50% at 20,0
pan A@13 > B@3+13 > A@4+13 ease 6 carry A
slide B ア(0,0)@1 > エ(-120,0)@2+0
turn level C 0@1 > 360@2+0 cw about 0,0
pull BG right 3mm/f 1..2+0
shake 3mm 1+1..1+12
sway A 5mm 1..4+0 every 1+12
fade in 1..12
expose B 50% 1..24
glow C 1+1..2+0
effect "heat haze" A,B 1..5+0
`;
export const TRUCK = `cut 12
time 5+0
BG: x..
level BG free
field A full
field B 50% at 20,0
truck quick A@1 > B@24 fair ア@6 85%
`;

/** The same drawings again and again. */
export const MOUTH = `cut 4
time 4+0
B: on 3 1 @24 2 3:6 2 3:6 2 1:6 2 3:6 2 3 2 1..
C: (1-2)*3 2:12 3..
D: 1:12 (2-3)*3 @37 4..
E: x:12 1 2 x:12 3..
`;

/** What is replaced, by what, and all that is said of it. */
type Edit = readonly [from: string, to: string, ...sentences: readonly string[]];

/** A test for each edit of `base`. */
export function edits(base: string, all: readonly Edit[]): void {
  test.each(all.map(([from, to, ...sentences]) => ({ from, to, sentences })))(
    '$from → $to',
    ({ from, to, sentences }) => {
      expect(base).toContain(from);
      expect(note(base, base.replace(from, to))).toEqual(sentences);
    },
  );
}
