/** Cuts that hold, between them, all that a sheet can say of levels. */

import type { BarPlace, MarkedChanges } from '../../src/sheet/page-look.js';
import { defaults, type Settings } from '../../src/shot/settings.js';
import { compileText, said } from '../compile.js';
import type { Case } from './print.js';

export function caseOf(name: string, text: string, settings: Partial<Settings> = {}): Case {
  const { solved, diagnostics } = compileText(text);
  if (!solved) throw new Error(`${name} was not solved:\n${said(diagnostics).join('\n')}`);
  return { name, solved, settings: { ...defaults, ...settings } };
}

/** Change bars beside rows of every column, a few by chance; some overlap, some pass the end or a break. */
export function somewhatMarked({ solved }: Case, pick: (n: number) => number): MarkedChanges {
  const { length } = solved.shot;
  const places: BarPlace[] = [
    ...solved.levels.flatMap(({ name }): BarPlace[] => [
      { kind: 'level', level: name, column: 'keys' },
      { kind: 'level', level: name, column: 'cels' },
    ]),
    { kind: 'speech' },
    { kind: 'camera' },
    { kind: 'notes' },
  ];
  const rows = Array.from({ length: 2 + pick(2 * places.length) }, () => {
    const from = 1 + pick(length);
    return { place: places[pick(places.length)]!, from, to: from + pick(60) };
  });
  const lines = Array.from({ length: 1 + pick(8) }, (_, i) => `line ${i}: the drawing after it stands later`);
  return { against: 'HEAD~1', rows, ladders: [], lines };
}

/** The same numbers on every run: below n. */
export function picker(seed: number): (n: number) => number {
  let state = seed * 2654435761 + 1;
  return (n) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return n === 0 ? 0 : (state >>> 8) % n;
  };
}

/** Keys, breakdowns, cycles, references, emptiness, holds over breaks, added and pinned numbers: 200 frames on five levels. */
export const RICH = `cut 31B "Everything"
time 8+8
A "walk": 1:7 1{late}---2-=-3 (4--5-)*3 6:30 1.2:3 1.1 7..
B: x:20 1--2:40 x:3 3a:1 x:60 4{both}-----5..
C: (1-2-)<>.. @5+1 3=4:90..
BOOK1: 1..
ア: @73 1:72 2--3..
cels A 1 1.1 1.2 2 1.3 2.1 2.2
`;

/** 26 levels, more than any paper has room for side by side. */
export const MANY_LEVELS = [
  'cut 80 "Market"',
  'time 7+0',
  ...Array.from({ length: 26 }, (_, i) => {
    const name = i < 24 ? String.fromCharCode(65 + i) : ['ア', 'CROWD2'][i - 24]!;
    return `${name}: 1:${i + 3} 1${'-'.repeat(i % 4)} 2:${i + 1} x:5 (2-3-)..`;
  }),
].join('\n');

/** Dissolves from the cut before and into the next: twelve rows of handle at each end, and they lie across a break. */
export const DISSOLVES = `cut 9 "Rooftop"
time 6+0
overlap in 24
overlap out 24
A: 1:20 1--2..
B: x:7 (1-)..
`;
