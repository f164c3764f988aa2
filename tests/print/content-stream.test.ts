/** The operators of a content stream (ISO 32000-1, annex A), read as they were written. */

import { describe, expect, test } from 'vitest';
import { Content } from '../../src/print/content-stream.js';
import type { CodedText } from '../../src/print/text-codes.js';
import type { Mark, Weight } from '../../src/sheet/display-list.js';
import { line, PEN, THIN, text } from './documents.js';

/** Codes that need no font: a character's code point, each half an em wide. */
const halfEms = (text: string, weight: Weight): CodedText => ({
  resource: weight === 'regular' ? 'F1' : 'F2',
  hex: [...text].map((one) => one.codePointAt(0)!.toString(16).padStart(4, '0')).join(''),
  ems: text.length / 2,
  characters: [],
});
const content = () => new Content(halfEms);
const taken = (from: Content) => Buffer.from(from.take()).toString('latin1');

function written(...marks: Mark[]): string {
  const writer = content();
  writer.tints(marks);
  writer.marks(marks);
  return taken(writer);
}

interface Operator {
  readonly name: string;
  readonly operands: readonly string[];
}

function operators(...marks: Mark[]): Operator[] {
  const read: Operator[] = [];
  let operands: string[] = [];
  for (const token of written(...marks).split(/\s+/)) {
    if (/^[A-Za-z]+$/.test(token)) {
      read.push({ name: token, operands });
      operands = [];
    } else if (token !== '') operands.push(token);
  }
  expect(operands).toEqual([]);
  return read;
}

const names = (...marks: Mark[]): string =>
  operators(...marks)
    .map(({ name }) => name)
    .join(' ');
const numbers = (name: string, ...marks: Mark[]): number[][] =>
  operators(...marks)
    .filter((one) => one.name === name)
    .map(({ operands }) => operands.map(Number));

const CIRCLE = { kind: 'circle', x: 100, y: 50, r: 30, stroke: PEN, fill: null } as const;
const TRIANGLE = [
  [0, 0],
  [1, 0],
  [1, 1],
] as const;

describe('a circle', () => {
  /** Places on the curve that is drawn, a hundred to each piece. */
  function outline(): [number, number][] {
    const [, , , , dx, dy] = numbers('cm', CIRCLE)[0] as [number, number, number, number, number, number];
    const moved = (points: readonly number[]) => points.map((one, i) => one + (i % 2 === 0 ? dx : dy));
    let from = moved(numbers('m', CIRCLE)[0]!);
    return numbers('c', CIRCLE).flatMap((path) => {
      const to = moved(path);
      const points = [from[0]!, from[1]!, ...to];
      from = to.slice(4);
      return Array.from({ length: 101 }, (_, i): [number, number] => {
        const t = i / 100;
        const weights = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
        const along = (axis: number) => weights.reduce((sum, w, k) => sum + w * points[2 * k + axis]!, 0);
        return [along(0), along(1)];
      });
    });
  }

  test('is round: nowhere off its radius by more than four cubic pieces can be', () => {
    // The best that four pieces through the quarter points do is 0.0273 % too wide (common knowledge of curve fitting).
    const radii = outline().map(([x, y]) => Math.hypot(x - CIRCLE.x, y - CIRCLE.y) / CIRCLE.r);
    expect(Math.max(...radii)).toBeLessThan(1.0003);
    expect(Math.min(...radii)).toBeGreaterThan(0.9999);
  });

  test('goes all the way round once, and is closed', () => {
    const turns = outline().map(([x, y]) => Math.atan2(y - CIRCLE.y, x - CIRCLE.x));
    const whole = turns.slice(1).reduce((sum, turn, i) => {
      const step = turn - turns[i]!;
      return sum + (step < -Math.PI ? step + 2 * Math.PI : step);
    }, 0);
    expect(whole).toBeCloseTo(2 * Math.PI, 6);
    expect(names(CIRCLE)).toMatch(/ h S Q$/);
  });

  test('of one radius is one path, wherever it stands', () => {
    const paths = [CIRCLE, { ...CIRCLE, x: 7.0004, y: 0.25 }].map((circle) =>
      written(circle).split('cm\n').at(-1),
    );
    expect(paths[1]).toBe(paths[0]);
    expect(numbers('cm', { ...CIRCLE, x: 7.0004, y: 0.25 })).toEqual([[1, 0, 0, 1, 7, 0.25]]);
  });

  test.each([
    ['stroked', PEN, null, 'S'],
    ['filled', null, 'black', 'f'],
    ['filled, then stroked', PEN, 'paper', 'B'],
  ] as const)('is %s', (_, stroke, fill, painter) => {
    expect(operators({ ...CIRCLE, stroke, fill }).at(-2)!.name).toBe(painter);
  });

  test('that is painted with nothing is not drawn', () => {
    expect(written({ ...CIRCLE, stroke: null, fill: null })).toBe('');
  });
});

describe('what is set once in a stream', () => {
  test('is not set again: one ink, one width, one path for lines of one stroke', () => {
    expect(names(line(0, 0, 1, 1), line(2, 2, 3, 3))).toBe('G w d m l m l S');
  });

  test('is set where it changes, after the path before is painted', () => {
    expect(names(line(0, 0, 1, 1), line(2, 2, 3, 3, { ...PEN, widthMm: 0.5 }))).toBe('G w d m l S w m l S');
    expect(names(line(0, 0, 1, 1), line(2, 2, 3, 3, { ...THIN, widthMm: PEN.widthMm }))).toBe(
      'G w d m l S RG m l S',
    );
  });

  test('a dash is set, and taken back', () => {
    const dashed = line(0, 0, 1, 1, { ...PEN, dash: [2, 1] });
    expect(written(dashed, line(2, 2, 3, 3))).toMatch(/\[2 1 \] 0 d\n[^[]*S\n\[\] 0 d\n/);
  });

  test('a font is chosen once for texts of one weight and size', () => {
    expect(names(text('1'), text('2'))).toBe('g BT Tf Tm Tj Td Tj ET');
    expect(names(text('1'), text('2', { weight: 'bold' }))).toBe('g BT Tf Tm Tj Tf Td Tj ET');
    expect(names(text('1'), text('2', { sizeMm: 5 }))).toBe('g BT Tf Tm Tj Tf Td Tj ET');
  });

  test('is forgotten when the stream is taken', () => {
    const writer = content();
    const marks = [line(0, 0, 1, 1, { ...PEN, dash: [2, 1] }), text('1')];
    writer.marks(marks);
    const first = taken(writer);
    writer.marks(marks);
    expect(taken(writer)).toBe(first);
  });
});

describe('a text', () => {
  test('ends before a line is drawn', () => {
    expect(names(text('1'), line(0, 0, 1, 1))).toBe('g BT Tf Tm Tj ET G w d m l S');
  });

  test.each([
    ['start', 50],
    ['middle', 46],
    ['end', 42],
  ] as const)('with its anchor at its %s', (anchor, x) => {
    // Four characters of half an em of 4 mm.
    expect(numbers('Tm', text('Moth', { anchor }))).toEqual([[1, 0, 0, -1, x, 60]]);
  });

  test('is squeezed along its line, and its anchor with it', () => {
    expect(numbers('Tm', text('Moth', { anchor: 'end', squeeze: 0.5 }))).toEqual([[0.5, 0, 0, -1, 46, 60]]);
  });

  test('turns clockwise', () => {
    expect(numbers('Tm', text('Moth', { anchor: 'end', turn: 90 }))).toEqual([[0, 1, 1, 0, 50, 52]]);
  });

  test('says its way from the one before, up counted positive, in thousandths that were rounded before', () => {
    const three = [text('1'), text('2', { x: 50.0006, y: 64.25 }), text('3', { x: 50.0012, y: 60 })];
    expect(numbers('Td', ...three)).toEqual([
      [0.001, -4.25],
      [0, 4.25],
    ]);
  });

  test('says its place where it or the one before is turned or squeezed, and after a line', () => {
    const squeezed = text('2', { squeeze: 0.5 });
    const turned = text('2', { turn: 90 });
    for (const other of [squeezed, turned]) {
      expect(names(text('1'), other)).toBe('g BT Tf Tm Tj Tm Tj ET');
      expect(names(other, text('3'))).toBe('g BT Tf Tm Tj Tm Tj ET');
    }
    expect(names(text('1'), line(0, 0, 1, 1), text('3'))).toBe('g BT Tf Tm Tj ET G w d m l S BT Tm Tj ET');
  });

  test('without a character leaves nothing', () => {
    expect(written(text(''))).toBe('');
  });
});

describe('a path', () => {
  test('is closed where it is said', () => {
    const path = { kind: 'path', points: TRIANGLE, stroke: PEN, fill: null } as const;
    expect(names({ ...path, closed: true })).toBe('G w d m l l h S');
    expect(names({ ...path, closed: false })).toBe('G w d m l l S');
  });

  test('of one point is not drawn', () => {
    expect(written({ kind: 'path', points: [[1, 2]], closed: true, stroke: PEN, fill: 'black' })).toBe('');
  });
});

describe('a hatch', () => {
  const hatch = { kind: 'hatch', x: 10, y: 20, width: 30, height: 15, gapMm: 2, stroke: PEN } as const;

  test('is clipped to its rectangle, and leaves no clip behind', () => {
    expect(numbers('re', hatch)).toEqual([[10, 20, 30, 15]]);
    expect(names(hatch)).toMatch(/^G w d q re W n( m l)+ S Q$/);
  });

  test.each([{ gapMm: 0 }, { width: 0 }, { height: -1 }])('without room is not drawn: %j', (none) => {
    expect(written({ ...hatch, ...none })).toBe('');
  });
});

describe('tints', () => {
  const tint: Mark = { kind: 'tint', x: 1, y: 2, width: 3, height: 4 };

  test('come first, and only when asked for', () => {
    expect(names(line(0, 0, 1, 1), tint)).toBe('g re f G w d m l S');
    const writer = content();
    writer.marks([tint]);
    expect(taken(writer)).toBe('');
  });
});

test('operators of the caller stand outside paths and texts', () => {
  const writer = content();
  writer.marks([line(0, 0, 1, 1)]);
  writer.raw('/X1 Do');
  writer.marks([text('1')]);
  writer.raw('/X2 Do');
  expect(taken(writer)).toMatch(/S\n\/X1 Do\n[^/]*\/F1 [^/]*ET\n\/X2 Do\n$/);
});
