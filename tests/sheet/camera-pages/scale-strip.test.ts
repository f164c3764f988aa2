import { expect, test } from 'vitest';
import { LONGEST_STRIP_MM, stripPages } from '../../../src/sheet/camera-pages/scale-strip.js';
import { lookOf, solvedCut, textsOf } from '../laid.js';

const pages = (wayMm: number) =>
  stripPages(
    solvedCut(`cut 3
time 4+0
level A free
A: 1..
slide A ア(0,0)@1 > イ(${wayMm},0)@4+0
`),
    lookOf({ labels: 'en' }),
  );

/** The numbers of the pieces as their titles have them: `2 of 4`. */
const pieces = (wayMm: number): string[] =>
  pages(wayMm).flatMap(({ marks }) =>
    textsOf(marks).flatMap(({ text }) => text.match(/(?<=piece )\d+ of \d+/g) ?? []),
  );

test('a way that the paper holds is one strip, which says of no others', () => {
  expect(pages(60)).toHaveLength(1);
  expect(pieces(60)).toEqual([]);
});

test('a longer one goes on in further pieces, each with its number', () => {
  const found = pieces(600);
  const count = Number(/\d+$/.exec(found[0]!)![0]);
  // 600 mm and the blank paper at its ends, in pieces no longer than the long side of A4, which share 10 mm each.
  expect(count).toBeGreaterThanOrEqual(3);
  expect(found.map((text) => Number.parseInt(text, 10))).toEqual(
    Array.from({ length: count }, (_, index) => index + 1),
  );
});

test('one that nobody can lay beside a layout is not printed whole', () => {
  expect(pieces(2 * LONGEST_STRIP_MM)).toHaveLength(pieces(LONGEST_STRIP_MM).length);
  expect(pieces(LONGEST_STRIP_MM / 2).length).toBeLessThan(pieces(LONGEST_STRIP_MM).length);
});

test('of a curved way it is as long as the curve, and says so', () => {
  const solved = solvedCut(
    'cut 7\ntime 3+0\nA: 1..\nfield B full at 40,30\nfield C full at 80,0\npan full@1 > B > C@3+0 curved\n',
  );
  // The arc of a parabola over its base 80 with height 30, by its textbook integral; straight it would be 80.
  expect(solved.camera.moves[0]!.wayMm).toBeCloseTo(103.971378, 5);
  const texts = stripPages(solved, lookOf()).flatMap(({ marks }) => textsOf(marks));
  const said = texts.map(({ text }) => text).join(' | ');
  expect(said).toContain('measured along the curve');
  expect(said).toContain('| 100 |');
});
