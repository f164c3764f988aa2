/** What a level shows in two versions. */

import { expect, test } from 'vitest';
import { edits, MOUTH, SHEET } from './edits.js';
import { changes } from './say.js';

edits(SHEET, [
  [
    '1:12 1',
    '1:16 1',
    'A: key 1 held 4 frames longer, 18 frames (was 14), from 0+1; what follows comes 4 frames later',
  ],
  [
    '3:1+0',
    '3:1+12',
    'A: key 3 held 12 frames longer, 1+12 (was 1+0), from 0+23; what follows comes 12 frames later',
  ],
  [
    '3:1+0',
    '3:12',
    'A: key 3 held 12 frames shorter, 0+12 (was 1+0), from 0+23; what follows comes 12 frames earlier',
  ],
  [
    '1--2-3',
    '1-9-2-3',
    'A: 1 in-between, key 9, 1 in-between instead of 2 in-betweens from 0+15 for 6 frames (was 4); what follows comes 2 frames later',
    'A: numbers: A4 to A11 are now A5 to A12',
  ],
  [
    '3:1+0',
    '3:12 7:12',
    'A: key 7 added from 1+11 for 12 frames, key 3 held that much less',
    'A: numbers: A7 to A11 are now A8 to A12',
  ],
  ['3:1+0', '3:6 x:12 3:6', 'A: empty from 1+5 for 12 frames, key 3 held that much less'],
  ['6..', '6:12 8..', 'A: key 8 added from 3+11 for 1+14'],
  [
    '-3:1+0',
    '',
    'A: A5 (2.1), key 3 dropped (was on 0+21, 1+2); what follows comes 1+2 earlier',
    'A: numbers: A7 to A11 are now A5 to A9',
  ],
  ['C: 1 @49', 'C: 1 @61', 'C: keys 2 to 3 come 12 frames later, from 2+13 (was 2+1)'],
  ['C: 1 @49', 'C: 1:6 9 @49', 'C: key 9 added from 0+7 for 1+18', 'C: numbers: C2 to C5 are now C3 to C6'],
  [
    '2:12{late}',
    '2{late}',
    'C: key 2 held 10 frames shorter, 2 frames (was 12), from 2+1; what follows comes 10 frames earlier',
  ],
  ['3..\nv', '3:6 x..\nv', 'C: empty from 2+23 for 2+2'],
  [
    '"Nao": 1',
    '"Nao": on 3 1',
    'A: key 1 held 1 frame longer, 15 frames (was 14), from 0+1',
    'A: A2 (1.1) to A5 (2.1) (4 exposures) held 3 frames (was 2) each, from 0+16; what follows comes 4 frames later',
    'A: key 4 to A10 (5.1) (4 exposures) held 3 frames (was 2) each, from 2+4, in each pass of the cycle; what follows comes 12 frames later',
  ],
]);

edits(MOUTH, [
  ['@24', '@36', 'B: everything from key 2 on comes 12 frames later, from 1+12 (was 0+24)'],
  [
    '1:6 2 3',
    '1:6 2 4 2 3',
    'B: key 4, key 2 added from 2+6 for 6 frames; what follows comes 6 frames later',
  ],
  [
    '2 3:6 2 3:6 2 1',
    '2 3:6 3:6 2 1',
    'B: key 2 not shown again (was on 1+9, 3 frames); what follows comes 3 frames earlier',
  ],
  [
    '3:6 2 3 2',
    '3:6 2 3:5 2',
    'B: key 3 held 2 frames longer, 5 frames (was 3), from 2+15; what follows comes 2 frames later',
  ],
  // An anchor that stays takes up what comes before it.
  [
    'D: 1:12',
    'D: 1:15',
    'D: key 1 held 3 frames longer, 15 frames (was 12), from 0+1; what follows up to the cycle 2-3 comes 3 frames later',
  ],
  ['x:12 3', 'x:6 3', 'E: key 3 comes 6 frames earlier, from 0+23 (was 1+5)'],
  [
    'E: x:12 1 2',
    'E: x:12 1:5 2',
    'E: key 1 held 3 frames longer, 5 frames (was 2), from 0+13; what follows comes 3 frames later',
  ],
  [
    '1 2 x:12',
    '1 x:2 x:12',
    'E: key 2 dropped (was on 0+15, 2 frames), empty instead',
    'E: numbers: E3 is now E2',
  ],
]);

const cut = (timeline: string) => `cut 1\ntime 2+0\nA: ${timeline}\n`;

test('a change has the rows of the new sheet that differ by it', () => {
  expect(changes(cut('1:12 2:12 3..'), cut('1:12 2:18 3..'))).toMatchObject([
    { kind: 'exposure', rows: { from: 13, to: 30 } },
  ]);
  expect(changes(cut('1:12 2:12 3..'), cut('1:12 3..'))).toMatchObject([
    { kind: 'shown', rows: { from: 13, to: 13 } },
    { kind: 'renumbered', rows: null },
  ]);
});

test('two holds that swap their time are one that begins later', () => {
  expect(changes(cut('1:12 2:12 3..'), cut('1:14 2:10 3..'))).toMatchObject([
    { kind: 'moved', by: 2, from: { old: 13, now: 15 }, toEnd: false, inCycle: false },
  ]);
});

test('what the end of the sheet cuts off is not told as dropped, what is left longer there not as held', () => {
  expect(changes(cut('1:12 2:12 3:24'), cut('1:15 2:12 3:21'))).toMatchObject([
    { kind: 'exposure', frames: { old: 12, now: 15 }, follows: { by: 3, last: null } },
  ]);
});
