/** A ruler at true size: what stands where on it, in millimetres of paper. */

import { describe, expect, test } from 'vitest';
import { chartTexts } from '../../../src/sheet/camera-pages/chart-texts.js';
import { stripPages } from '../../../src/sheet/camera-pages/scale-strip.js';
import {
  pieceMarks,
  type Strip,
  type StripPiece,
  type StripStroke,
} from '../../../src/sheet/camera-pages/strip-marks.js';
import type { Mark } from '../../../src/sheet/display-list.js';
import { linesOf, lookOf, solvedCut, type Text, textsOf } from '../laid.js';
import { plainMetrics } from '../plain-metrics.js';

/** The numbers in rings, from left to right: the ones in a line above the rows. */
function numbers(wayMm: number): string[] {
  const cut = solvedCut(`cut 3
time 2+0
level A free
A: on 4 (1-2-3-)..
slide A ア(0,0)@1 > イ(${wayMm},0)@2+0
`);
  return stripPages(cut, lookOf()).flatMap(({ marks }) => {
    const rings = marks.flatMap((mark) => (mark.kind === 'circle' && mark.r > 1.2 ? [mark] : []));
    return textsOf(marks)
      .filter((text) => rings.some(({ x, y }) => Math.hypot(x - text.x, y - text.y) < 1.2))
      .sort((a, b) => a.x - b.x)
      .map(({ text }) => text);
  });
}

test('every key has its number where there is room', () => {
  expect(numbers(140)).toEqual(['1', '2', '3', '1', '2', '3']);
});

test('else the first pass alone is numbered, so that no order is read wrongly', () => {
  expect(numbers(12)).toEqual(['1', '2', '3']);
});

test('and none at all where that has no room', () => {
  expect(numbers(0.6)).toEqual([]);
});

/** A stroke `mm` from the start, on a frame which is its count too. */
const stroke = (mm: number, frame: number, more: Partial<StripStroke> = {}, name = ''): StripStroke => ({
  ...{ mm, until: frame, named: name !== '', drawn: true, keys: [] },
  point: { at: [0, 0], frame, count: frame, name, keys: [] },
  ...more,
});
const end = (mm: number, frame: number, name = '') => stroke(mm, frame, { named: true }, name);

/** A piece in a box at (10, 20), names 2 mm high in a font whose every character is half an em wide. */
function piece(
  strokes: readonly StripStroke[],
  strip: Partial<Strip> = {},
  cut: Partial<StripPiece> = {},
  inches = false,
) {
  const whole: Strip = {
    ...{ title: 'pan', remarks: [], upright: false, backwards: false, counted: false, strokes },
    ...{ from: 0, to: strokes.at(-1)!.mm },
    ...strip,
  };
  const look = {
    ...lookOf({ labels: 'en', ...(inches ? { lengths: 'in' } : {}) }),
    metrics: plainMetrics,
  };
  const texts = { ...chartTexts(solvedCut('cut 1\ntime 1+0\nA: 1..\n'), look), smallMm: 2 };
  // Blank paper of 7 mm before the start and behind the end.
  const given = { strip: whole, from: -7, to: whole.to + 7, index: 0, of: 1, ...cut };
  return pieceMarks(given, { x: 10, y: 20, width: 200, height: 42 }, texts);
}
const near = (value: number) => expect.closeTo(value, 9);
const inkOf = (marks: readonly Mark[], widthMm: number) =>
  linesOf(marks).filter(({ stroke }) => stroke.widthMm === widthMm);
/** The middle of a line of figures is 0.37 em above its baseline. */
const middleOf = ({ y, sizeMm }: Text) => y - 0.37 * sizeMm;

describe('strokes of a ruler', () => {
  const marks = [end(0, 1), stroke(30, 12), stroke(45, 20, { drawn: false }), end(60, 24)];

  test('stand as far from its start as the thing has gone, to the right where it runs right', () => {
    const drawn = piece(marks);
    // The start is 7 mm from the edge of the box at 10; the base line is 30 mm below its top at 20.
    expect(inkOf(drawn, 0.3).map(({ x1, y1, y2 }) => [x1, y1, y2])).toEqual([
      [17, 50, near(45.6)],
      [77, 50, near(45.6)],
    ]);
    expect(inkOf(drawn, 0.12).filter(({ stroke }) => stroke.ink === 'black')).toMatchObject([
      { x1: 47, x2: 47, y1: 50, y2: 47 },
    ]);
    expect(inkOf(drawn, 0.25).filter(({ y1, y2, x1 }) => y1 === y2 && x1 === 17)).toMatchObject([
      { y1: 50, x2: 77 },
    ]);
  });

  test('begin at the right of one that runs left', () => {
    expect(inkOf(piece(marks, { backwards: true }), 0.3).map(({ x1 }) => x1)).toEqual([77, 17]);
  });

  test('lie on an upright ruler, whose base line is 42 mm from its left', () => {
    const drawn = piece(marks, { upright: true });
    expect(inkOf(drawn, 0.3).map(({ x1, y1, x2, y2 }) => [x1, y1, x2, y2])).toEqual([
      [52, 27, near(47.6), 27],
      [52, 87, near(47.6), 87],
    ]);
  });

  test('have a dot where a place is named, and a ring where a key is', () => {
    const drawn = piece([end(0, 1), stroke(30, 12, { keys: ['2'] }), end(60, 24)]);
    const circles = drawn.filter((mark) => mark.kind === 'circle');
    expect(circles.map(({ x, y, r, fill }) => [x, y, r, fill])).toEqual([
      [17, 50, 0.6, 'black'],
      [47, 50, 1.1, null],
      [77, 50, 0.6, 'black'],
      // The number of the key, 10.2 mm above.
      [47, near(39.8), near(1.44), null],
    ]);
  });
});

describe('lengths on the other side of the base line', () => {
  const lengths = (to: number, cut: Partial<StripPiece> = {}, inches = false) => {
    const drawn = piece([end(0, 1), end(to, 24)], {}, cut, inches);
    return {
      high: inkOf(drawn, 0.12)
        .filter(({ stroke }) => stroke.ink === 'form')
        .map(({ x1, y1, y2 }) => [x1, Math.round((y2 - y1) * 10) / 10]),
      figures: textsOf(drawn)
        .filter(({ ink }) => ink === 'grey')
        .map(({ text, x }) => [text, x]),
    };
  };

  test('have a line every millimetre, a longer one at five and ten, and a figure at ten', () => {
    const { high, figures } = lengths(12);
    expect(high.map(([x]) => x)).toEqual(Array.from({ length: 13 }, (_, mm) => 17 + mm));
    expect(high.map(([, mm]) => mm)).toEqual([2.4, 1, 1, 1, 1, 1.7, 1, 1, 1, 1, 2.4, 1, 1]);
    expect(figures).toEqual([
      ['0', 17],
      ['10', 27],
    ]);
  });

  test('have one every eighth of an inch where lengths are in inches, and a figure at every inch', () => {
    const { high, figures } = lengths(26, {}, true);
    expect(high.map(([x]) => x)).toEqual(Array.from({ length: 9 }, (_, i) => near(17 + (i * 25.4) / 8)));
    expect(high.map(([, mm]) => mm)).toEqual([2.4, 1, 1, 1, 1.7, 1, 1, 1, 2.4]);
    expect(figures).toEqual([
      ['0', 17],
      [expect.stringMatching(/^1/), near(42.4)],
    ]);
  });

  test('go on in the next piece from where it begins; a figure stands whole on a piece, and on no line to cut', () => {
    // 10 mm before its end the first piece has a line up to which the next is laid.
    const first = lengths(150, { to: 100, of: 2 });
    expect(first.figures.map(([text]) => text)).toEqual([
      '0',
      '10',
      '20',
      '30',
      '40',
      '50',
      '60',
      '70',
      '80',
    ]);
    const second = lengths(150, { from: 90, index: 1, of: 2 });
    expect(second.figures).toEqual(
      ['100', '110', '120', '130', '140', '150'].map((text) => [text, 10 + Number(text) - 90]),
    );
    expect(second.high[0]![0]).toBe(10);
  });
});

describe('a piece', () => {
  const dashed = (cut: Partial<StripPiece>) =>
    linesOf(piece([end(0, 1), end(150, 24)], {}, cut))
      .filter(({ stroke }) => stroke.ink === 'grey')
      .map(({ x1, x2, y1, y2 }) => [x1, y1, x2, y2]);

  test('is to be cut at its edges, and has a line up to which the next is laid, but for the last', () => {
    const edges = (right: number) => [
      [10, 28, right, 28],
      [10, 58, right, 58],
      [10, 27, 10, 59],
      [right, 27, right, 59],
    ];
    expect(dashed({ to: 100, of: 2 })).toEqual([...edges(117), [107, 55, 107, 59], [107, 27, 107, 30]]);
    expect(dashed({ from: 90, index: 1, of: 2 })).toEqual(edges(77));
  });

  test('says which it is, and what to do with the next one', () => {
    const title = (cut: Partial<StripPiece>) =>
      textsOf(piece([end(0, 1), end(150, 24)], {}, cut)).find(({ text }) => text.startsWith('pan'))!.text;
    expect(title({})).toBe('pan');
    expect(title({ to: 100, of: 2 })).toBe(
      'pan   piece 1 of 2   lay the next piece on up to the inner dashed line',
    );
    expect(title({ from: 90, index: 1, of: 2 })).toBe('pan   piece 2 of 2');
  });

  test('points the way at its end, and again near the start where it is longer than 40 mm', () => {
    const tips = (to: number, cut: Partial<StripPiece> = {}) =>
      piece([end(0, 1), end(to, 24)], {}, cut).flatMap((mark) =>
        mark.kind === 'path' && mark.fill === 'black' ? [mark.points[0]] : [],
      );
    // On the blank paper 5.5 mm behind the end; on a piece that goes on 1.5 mm before its edge.
    expect(tips(30)).toEqual([[52.5, 50]]);
    expect(tips(60)).toEqual([
      [82.5, 50],
      [26, 50],
    ]);
    expect(tips(150, { to: 100, of: 2 })).toEqual([
      [115.5, 50],
      [26, 50],
    ]);
  });
});

describe('names beside the strokes', () => {
  const named = (strokes: readonly StripStroke[], strip: Partial<Strip> = {}) => {
    const drawn = piece(strokes, strip);
    return textsOf(drawn)
      .filter(({ ink, text }) => ink === 'black' && text !== 'pan')
      .map((one) => ({
        text: one.text,
        x: one.x,
        above: Math.round((50 - middleOf(one)) * 10) / 10,
        weight: one.weight,
      }));
  };

  test('say the place and its rows, from the first to the last on which the thing stands there', () => {
    expect(named([end(0, 1, 'A'), stroke(60, 20, { named: true, until: 24 }, 'B')])).toEqual([
      { text: 'A 0+1', x: 17, above: 6, weight: 'bold' },
      { text: 'B 0+20–0+24', x: 77, above: 6, weight: 'bold' },
    ]);
  });

  test('stay whole on the piece', () => {
    // 20 characters are 20 mm: the middle 10 mm from the edge.
    expect(named([end(0, 1, 'ABCDEFGHIJKLMNOP'), end(60, 24)])[0]).toMatchObject({
      text: 'ABCDEFGHIJKLMNOP 0+1',
      x: 20,
    });
  });

  test('of the ends come first; one that finds its place taken stands higher, with a thin line to its stroke', () => {
    const strokes = [end(0, 1, 'A'), end(2, 3, 'B'), end(60, 24, 'C')];
    expect(named(strokes).map(({ text, x, above }) => [text, x, above])).toEqual([
      ['A 0+1', 17, 6],
      ['C 0+24', 77, 6],
      ['B 0+3', 19, 18.4],
    ]);
    expect(inkOf(piece(strokes), 0.15).filter(({ stroke }) => stroke.ink === 'form')).toMatchObject([
      { x1: 19, y1: near(45.6), x2: 19, y2: near(32.8) },
    ]);
  });

  test('are followed by rows where there is room, the roundest parts of a second first', () => {
    // A stroke every 2 mm; rows are 3 and 4 mm wide with 0.7 mm between: 12, then 8 and 16, 6 (18 touches 16), 4 and 20.
    const strokes = Array.from({ length: 24 }, (_, i) =>
      stroke(2 * i, i + 1, { named: i === 0 || i === 23 }),
    );
    const rows = named(strokes);
    expect(rows.filter(({ weight }) => weight === 'bold').map(({ text }) => text)).toEqual(['0+1', '0+24']);
    const plain = rows.filter(({ weight }) => weight === 'regular');
    expect(plain.map(({ text }) => text)).toEqual(['0+12', '0+8', '0+16', '0+6', '0+4', '0+20']);
    expect(
      plain.every(({ text, x, above }) => x === 17 + 2 * (Number(text.slice(2)) - 1) && above === 6),
    ).toBe(true);
  });

  test('have counts on a line of their own where graduations were typed, the roundest first', () => {
    const strokes = Array.from({ length: 24 }, (_, i) =>
      stroke(2 * i, i + 1, { named: i === 0 || i === 23 }),
    );
    const counts = named(strokes, { counted: true })
      .filter(({ above }) => above === 14.4)
      .map(({ text }) => Number(text));
    // Figures of one character have room at every stroke, those of two at every third.
    expect(counts.slice(0, 8)).toEqual([24, 12, 6, 18, 3, 9, 15, 21]);
    expect([...counts].sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 15, 18, 21, 24]);
    expect(named(strokes).some(({ above }) => above === 14.4)).toBe(false);
  });
});

describe('numbers of keys', () => {
  const rings = (strokes: readonly StripStroke[], strip: Partial<Strip> = {}) =>
    piece(strokes, strip).flatMap((mark) =>
      mark.kind === 'circle' && mark.r > 1.2 ? [[mark.x, mark.y]] : [],
    );

  test('of one row stand side by side, on an upright ruler to the left', () => {
    const strokes = [end(0, 1), stroke(30, 12, { keys: ['1', '2'] }), end(60, 24)];
    // Rings of 1.44 mm touch over the stroke at 47; on the upright one the first is 29 mm left of the base line at 52.
    expect(rings(strokes)).toEqual([
      [near(45.56), near(39.8)],
      [near(48.44), near(39.8)],
    ]);
    expect(rings(strokes, { upright: true })).toEqual([
      [23, 57],
      [near(20.12), 57],
    ]);
  });

  test('that are close stand a little further on, with a thin line to their strokes', () => {
    const strokes = [
      end(0, 1),
      stroke(30, 12, { keys: ['1'] }),
      stroke(31, 13, { keys: ['2'] }),
      end(60, 24),
    ];
    // 0.7 mm between the rings.
    expect(rings(strokes)).toEqual([
      [47, near(39.8)],
      [near(47 + 2.88 + 0.7), near(39.8)],
    ]);
    expect(inkOf(piece(strokes), 0.15).filter(({ stroke }) => stroke.ink === 'form')).toMatchObject([
      { x1: 48, x2: near(50.58) },
    ]);
  });
});

describe('the title', () => {
  const lines = (title: number, ...remarks: number[]) => {
    const word = (length: number, letter: string) => letter.repeat(length);
    const strip = { title: word(title, 't'), remarks: remarks.map((length, i) => word(length, 'rs'[i]!)) };
    return textsOf(piece([end(0, 1), end(60, 24)], strip))
      .filter(({ text }) => /^[trs ]+$/.test(text))
      .map((one) => [one.text.replace(/(.)\1+/g, '$1'), Math.round((middleOf(one) - 20) * 10) / 10]);
  };

  test('is one line with its remarks where the box has room for it', () => {
    // 196 mm, with 0.9 mm a character at the smallest, squeezed to four fifths: 272 characters.
    expect(lines(100, 100)).toEqual([['t r', 2]]);
    expect(lines(300)).toEqual([['t', 2]]);
  });

  test('else it is two, broken where the longer of both is shortest', () => {
    expect(lines(100, 100, 100)).toEqual([
      ['t', 1.4],
      ['r s', 5],
    ]);
    expect(lines(60, 60, 200)).toEqual([
      ['t r', 1.4],
      ['s', 5],
    ]);
  });

  test('reads downwards beside an upright ruler', () => {
    const [title] = textsOf(piece([end(0, 1), end(60, 24)], { upright: true })).filter(
      ({ text }) => text === 'pan',
    );
    expect(title).toMatchObject({ turn: 90, anchor: 'start', y: 20 });
  });
});
