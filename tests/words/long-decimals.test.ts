/**
 * Inches become millimetres by 25.4, which no binary number is: 0.7 in are 17.779999999999998 mm. Whatever is printed or told must say
 * 17.78. Data for programs (`export`, `compare --json`) keep all digits, and are not looked at here.
 */

import { expect, test } from 'vitest';
import { PARTS } from '../../src/build/print-plan.js';
import { cutPages } from '../../src/build/printed-parts.js';
import { LABELS } from '../../src/words/labels.js';
import { runOn } from '../command/run.js';
import { lookOf, solvedCut, textsOf } from '../sheet/laid.js';

const INCHES = `cut 1 "Inches"
time 6+0
stack BG A B C D E

level BG size 10.1x7.7in at 0.7,0.3
A: 1-2..
B: 1-2..
C: 1-2..
D: 1-2..
E: 1-2..
field A full
field B 3.3in at 17.7,0.7 cw 0.3
pull BG right 0.7in/f 1..2+0 loop 10.1in
slide C ア(1.1,0.3)@1 > エ(-3.3,0.1)@2+0
sway D 0.7in 1..2+0 every 0+12
shake 0.3in 1..0+12
truck A@1 > B@3+0
truck level E 100%@1 > 70.1%@3+0 about 0.7,1.1
turn level A 0@1 > 0.3@1+0 cw about 0.7,1.1
expose B 33.3%>66.7% 1..1+0
`;
/** The same moves by other unlucky numbers; the follow, which moves the camera, in place of the truck. */
const OTHER = INCHES.replaceAll('0.7in', '1.1in')
  .replace('10.1in', '11.7in')
  .replace('10.1x7.7in', '11.1x3.3in')
  .replace('0.3in', '0.6in')
  .replaceAll('0.7,1.1', '0.1,2.3')
  .replace('33.3%', '28.7%');
const FOLLOW = INCHES.replace(/^truck A.*$/m, 'follow B left 3.3in 1..3+0').replace('cut 1', 'cut 2');
const WRONG = INCHES.replace('truck A@1', 'pan A@1')
  .replace('loop 10.1in', 'loop 0.7in')
  .replace('cut 1', 'cut 3');

/** Longer than anything that is rounded for people: six decimals at most, in a size that is offered as a fix. */
const LONG = /\d\.\d{7,}/;
const long = (text: string): string[] => text.split('\n').filter((line) => LONG.test(line));

test('the numbers of this cut are long ones inside', () => {
  expect(JSON.stringify(solvedCut(INCHES).camera.moves)).toMatch(LONG);
});

test.each([
  ['check', 'a.cut', 'b.cut', 'c.cut', 'd.cut'],
  ['show', 'a.cut', 'c.cut'],
  ['list', 'a.cut', 'c.cut'],
  ...LABELS.map((labels) => ['compare', 'a.cut', 'b.cut', '--labels', labels]),
])('no long decimal is told: %s %s %s %s %s', async (...line) => {
  const files = { 'a.cut': INCHES, 'b.cut': OTHER, 'c.cut': FOLLOW, 'd.cut': WRONG };
  const { out, error } = await runOn(files, ...line);
  expect(out + error).toMatch(/mm|pull/);
  expect(long(out + error)).toEqual([]);
});

test.each(LABELS.flatMap((labels) => [[labels, 'japan'] as const, [labels, 'west'] as const]))(
  'no long decimal is printed: %s, %s',
  (labels, convention) => {
    for (const text of [INCHES, OTHER, FOLLOW]) {
      const settings = { labels, convention };
      const pages = PARTS.flatMap((only) =>
        cutPages(solvedCut(text, settings), lookOf(settings), { only }).parts.flatMap((part) => part.pages),
      );
      const said = pages.flatMap((page) => textsOf(page.marks).map((mark) => mark.text));
      expect(said.length).toBeGreaterThan(100);
      expect(long(said.join('\n'))).toEqual([]);
    }
  },
);
