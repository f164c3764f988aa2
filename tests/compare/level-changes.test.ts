/** The levels of two versions. */

import { expect, test } from 'vitest';
import { compareLevels } from '../../src/compare/level-changes.js';
import { CAMERA, edits, SHEET } from './edits.js';
import { note, solved } from './say.js';

edits(SHEET, [
  ['B: x:24 (1--2--)..', 'B: x..', 'B: empty throughout'],
  ['B: x:24 (1--2--)..\n', '', 'B: no timeline any more, simply there'],
  ['BG A B C', 'BG B A C', 'stack, bottom to top: BG B A C (was BG A B C)'],
  ['560x200', '600x200', 'BG: artwork 600 x 200 mm (was 560 x 200 mm)'],
  ['at 130,0', 'at 130,5', 'BG: artwork 5 mm up, at 130,5 (was 130,0)'],
  ['level BG', 'level A free\nlevel BG', 'A: its edges may show'],
  ['"Nao":', '"Nao, near":', 'A: title “Nao, near” (was “Nao”)'],
  ['stack BG A B C', 'cels A 1 1.1 1.2 2 2.1 3 4 4.1 5 5.1 6\nstack BG A B C'],
]);

test('the name of a level may change wherever it stands', () => {
  const now = CAMERA.replace('stack BG A B C', 'stack BG A B H')
    .replace('C: 1', 'H: 1')
    .replace('level C 0@1', 'level H 0@1')
    .replace('glow C', 'glow H');
  // What shows the same as another level can be told from it by nothing but its place.
  const base = CAMERA.replace('C: 1..', 'C: 1 2 3..');
  expect(note(base, now.replace('H: 1..', 'H: 1 2 3..'))).toEqual(['level C is called H']);
});

test('a level that comes or goes is one line, with what it moves with it', () => {
  const head = 'cut 1\ntime 1+0\n';
  const one = `${head}BG: x..\nA: 1--2..\n`;
  const two = `${head}BG: x..\nA: 1--2..\nC "smoke": 1-2-3..\n`;
  expect(note(one, two)).toEqual(['level C “smoke” added, above A: 5 drawings']);
  expect(note(two, one)).toEqual(['level C “smoke” dropped: 5 drawings']);
});

test('reuse of another cut is told, and its drawings are not counted', () => {
  const text = (reuse: string) => `cut 9\ntime 1+0\n${reuse}C: 1--2..\n`;
  expect(note(text(''), text('level C reuse 8/C\n'))).toEqual(['C: reuse of cut 8, level C (was none)']);
});

test('what a level is drawn to, and what it masks, is told of each; a new name of a level is no such change', () => {
  const text = (lines: string, top = 'C') =>
    `cut 9\ntime 1+0\nstack BG A B ${top}\n${lines}A: 1--2..\nB: 1 2..\n${top}: 1:4 2..\n`;
  expect(note(text(''), text('level B with A\nlevel C masks B\n'))).toEqual([
    'A: drawn to B (was none)',
    'B: drawn to A (was none)',
    'C: mask of B (was none)',
  ]);
  expect(note(text('level B with C\n'), text('level B with H\n', 'H'))).toEqual(['level C is called H']);
  expect(note(text('level B with A\n'), text('level A with B\n'))).toEqual([]);
});

test('a mouth is compared by what it shows: with another lead, and with the same as a timeline', () => {
  const mouth = (drawn: string) => `cut 1\ntime 2+0\n${drawn}\nvoice "Nao" 13..36 "ああああ"\n`;
  expect(note(mouth('mouth A "Nao" 1 2 3'), mouth('A "Nao, mouth": 1:11 3:23 1..'))).toEqual([]);
  expect(note(mouth('mouth A "Nao" 1 2 3'), mouth('mouth A "Nao" 1 2 3 lead 3'))).toEqual([
    'A: key 1 held 2 frames shorter, 9 frames (was 11), from 0+1; what follows comes 2 frames earlier',
  ]);
});

const cut = (...lines: string[]) => solved(`cut 1\ntime 1+0\n${lines.join('\n')}\n`);

test('what levels are called now stands by what they were called', () => {
  const { names } = compareLevels(cut('A: 1 2..', 'B: 1 3..'), cut('A: 1 2..', 'H: 1 3..'));
  expect([...names]).toEqual([
    ['BG', 'BG'],
    ['A', 'A'],
    ['B', 'H'],
  ]);
});

test('a level that shows something else under another name is dropped, and another one added', () => {
  const { changes } = compareLevels(cut('A: 1..', 'B: 1 3..'), cut('A: 1..', 'H: 1 2 3..'));
  expect(changes.map(({ kind }) => kind)).toEqual(['level-added', 'level-dropped']);
});

test('a level without a timeline is renamed where its artwork is the same, and only then', () => {
  const sheet = (name: string, size: string) =>
    cut(`stack ${name} A`, `level ${name} size ${size} at 10,0`, 'A: 1..');
  const kinds = (now: ReturnType<typeof cut>) =>
    compareLevels(sheet('BG1', '560x200mm'), now).changes.map(({ kind }) => kind);
  expect(kinds(sheet('BG2', '560x200mm'))).toEqual(['level-renamed']);
  expect(kinds(sheet('BG2', '600x200mm'))).toEqual(['level-added', 'level-dropped']);
});

test('a level that comes changes no order of the stack', () => {
  const stack = (names: string) => cut(`stack ${names}`, ...names.split(' ').map((name) => `${name}: 1..`));
  const kinds = (old: string, now: string) =>
    compareLevels(stack(old), stack(now)).changes.map(({ kind }) => kind);
  expect(kinds('A B', 'A C B')).toEqual(['level-added']);
  expect(kinds('A B C', 'B A C')).toEqual(['stack']);
});
