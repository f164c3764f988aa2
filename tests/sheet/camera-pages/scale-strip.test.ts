import { describe, expect, test } from 'vitest';
import { LONGEST_STRIP_MM, stripPages } from '../../../src/sheet/camera-pages/scale-strip.js';
import { textClashes } from '../clashes.js';
import { linesOf, lookOf, solvedCut, textsOf } from '../laid.js';

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

describe('the strips of a cut', () => {
  const strips = (statements: string) =>
    stripPages(solvedCut(`cut 3\ntime 4+0\nlevel A free\nA: 1..\n${statements}\n`), lookOf({ labels: 'en' }));
  const titles = (statements: string) =>
    strips(statements).flatMap(({ marks }) =>
      textsOf(marks).filter(({ text, weight }) => weight === 'bold' && /slide|PAN/.test(text)),
    );
  /** Base lines; the check rule of 100 mm is none. */
  const bases = (statements: string) =>
    strips(statements).map(({ marks }) =>
      linesOf(marks).filter(({ stroke, x1, x2, y1, y2 }) => {
        const mm = Math.hypot(x2 - x1, y2 - y1);
        return stroke.ink === 'black' && stroke.widthMm === 0.25 && mm > 10 && mm < 99;
      }),
    );

  test('are one for each leg, which its title counts', () => {
    const legs = 'slide A ア(0,0)@1 > イ(60,0)@2+0 > ウ(60,40)@4+0';
    expect(titles(legs).map(({ text }) => /\((\d\/\d)\)/.exec(text)![1])).toEqual(['1/2', '2/2']);
    expect(titles('slide A ア(0,0)@1 > イ(60,0)@2+0')[0]!.text).not.toContain('/');
  });

  test('lie one below the other, 42 mm apart; upright ones stand on a page of their own, 56 mm apart', () => {
    const [lying] = bases('slide A ア(0,0)@1 > イ(60,0)@2+0 > ウ(20,0)@4+0');
    expect(lying!.map(({ y1, y2 }) => y1 - y2)).toEqual([0, 0]);
    expect(lying![1]!.y1 - lying![0]!.y1).toBeCloseTo(42, 9);
    const [level, upright] = bases('slide A ア(0,0)@1 > イ(60,0)@1+0 > ウ(60,40)@2+0 > エ(60,0)@4+0');
    expect(level).toHaveLength(1);
    expect(upright!.map(({ x1, x2 }) => x1 - x2)).toEqual([0, 0]);
    expect(upright![1]!.x1 - upright![0]!.x1).toBeCloseTo(56, 9);
  });

  test('say how steeply a way leads that is neither level nor upright, and not of one that is', () => {
    const slope = (x: number, y: number) =>
      titles(`slide A ア(0,0)@1 > イ(${x},${y})@2+0`)[0]!.text.match(/leads .*/)?.[0] ?? null;
    // The arctangents of 1, 3/4 and 4/3.
    expect(slope(30, 30)).toMatch(/^leads 45° up to the right/);
    expect(slope(-40, 30)).toMatch(/^leads 37° up to the left/);
    expect(slope(30, -40)).toMatch(/^leads 53° down to the right/);
    expect([slope(60, 0), slope(0, 60)]).toEqual([null, null]);
  });

  test('leave out graduations that are closer than 0.8 mm, and say so', () => {
    // 24 mm in 47 steps are half a millimetre each: every second one is drawn, and the last.
    const statement = 'slide A ア(0,0)@1 > イ(24,0)@2+0 graduated';
    const [page] = strips(statement);
    const strokes = linesOf(page!.marks).filter(
      ({ stroke, y1, y2 }) => stroke.ink === 'black' && [0.12, 0.3].includes(stroke.widthMm) && y1 > y2,
    );
    const places = [...new Set(strokes.map(({ x1 }) => Math.round(x1 * 100) / 100))].sort((a, b) => a - b);
    const gaps = places.slice(1).map((x, i) => x - places[i]!);
    expect(Math.min(...gaps.slice(0, -1))).toBeGreaterThan(0.8);
    expect(titles(statement)[0]!.text).toContain('0.8 mm');
    expect(titles('slide A ア(0,0)@1 > イ(60,0)@2+0 graduated')[0]!.text).not.toContain('0.8 mm');
  });

  test('are none of a way that nobody could measure', () => {
    expect(strips('slide A ア(0,0)@1 > イ(0.4,0)@2+0')).toEqual([]);
    expect(strips('slide A ア(0,0)@1 > イ(0.6,0)@2+0')).toHaveLength(1);
  });
});

test('a long name beside an upright ruler leaves its place to no count', () => {
  const solved = solvedCut(
    'cut 5\ntime 5+0\nlevel BG size 320x700mm at 0,-200\nA: 1..\nfield surface full\nfield seabed full at 0,-400\npan surface@1 > seabed@5+0 ease 24 on 2 graduated\n',
  );
  for (const { marks } of stripPages(solved, lookOf({ labels: 'en' }))) {
    expect(textsOf(marks).map(({ text }) => text)).toContain('surface 0+1–0+2');
    expect(textClashes(marks)).toEqual([]);
  }
});
