/** A small cut for each kind of move, alone and on a level or under a camera that is scaled and turned. */

import type { MoveKind } from '../../src/shot/camera/camera-model.js';

const head = `cut 1
time 1+0
stack BG A
level BG size 900x700mm at 12,-7
level A size 420x300mm at -9,6 free
A: on 3 (1 2)..
field P full
field Q 70% at 31,-13
field R 55% at -22,17 cw 18
`;

/** What the levels do besides, so that a matrix has all of its parts. */
const TURNED = `truck level A 100%@1 > 130%@1+0 about 11,-4
turn level A 0@1 > 33@1+0 cw about -8,14
`;

/** By kind: the statement of the move, and what is added to have scale and turn besides. */
const MOVES: { readonly [K in MoveKind]: readonly [string, string] } = {
  pan: ['pan P@1 > P2@1+0\nfield P2 full at 61,-22', TURNED],
  truck: ['truck P@1 > R@1+0', TURNED],
  follow: ['follow A left 3mm/f 1..1+0', `${TURNED}fix R\n`],
  shake: ['shake 6mm>2mm 1..1+0', `${TURNED}fix R\n`],
  slide: ['slide A ア(0,0)@1 > イ(-44,18)@1+0', `${TURNED}fix R\n`],
  pull: ['pull BG right 3mm/f 1..1+0', 'fix R\n'],
  levelTruck: ['truck level A 60%@1 > 140%@1+0 about 14,9', 'turn level A 0@1 > 33@1+0 cw\nfix R\n'],
  turn: ['turn level A 0@1 > 90@1+0 ccw about 14,9', 'truck level A 100%@1 > 130%@1+0\nfix R\n'],
  sway: ['sway A 5mm 1..1+0 every 12', `${TURNED}fix R\n`],
};

/** Texts by a name for the test's list. */
export const MOVING_CUTS: readonly (readonly [string, string])[] = Object.entries(MOVES).flatMap(
  ([kind, [move, besides]]) => [
    [`${kind}, alone`, `${head}${move}\n`] as const,
    [`${kind}, scaled and turned`, `${head}${move}\n${besides}`] as const,
  ],
);
