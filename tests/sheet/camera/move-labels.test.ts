/** Lengths on the artwork in print. */

import { describe, expect, test } from 'vitest';
import { tellingOf } from '../../../src/sheet/camera/camera-plan.js';
import {
  graduated,
  lightKind,
  moveKind,
  outlined,
  printedLengths,
  shortMoves,
} from '../../../src/sheet/camera/move-labels.js';
import type { Neighbours } from '../../../src/sheet/page-look.js';
import { parametersOf } from '../../../src/shot/camera/move-kinds.js';
import { CONVENTIONAL } from '../../../src/shot/settings.js';
import { wordsOf } from '../../../src/words/words.js';
import { KINDS, moveOf, parameterNames } from '../../move-samples.js';
import { solvedCut } from '../laid.js';

describe('in millimetres', () => {
  const mm = printedLengths({ lengths: 'mm' });

  test('have two decimals at most, in columns always', () => {
    expect([mm.figure(12.7), mm.text(12.3456), mm.aligned(12.7)]).toEqual(['12.7', '12.35 mm', '12.70']);
    expect(mm.area(560, 142.875)).toBe('560 × 142.88 mm');
  });

  test('a size that will do is never rounded down', () => {
    expect(mm.up(142.871)).toBeCloseTo(142.88, 10);
    expect(mm.up(142.87)).toBeCloseTo(142.87, 10);
    // Not for what is no more than an error of the arithmetic.
    expect(mm.up(142.87 + 1e-9)).toBeCloseTo(142.87, 8);
  });
});

describe('in inches', () => {
  const inches = printedLengths({ lengths: 'in' });

  test('have three decimals at most, in columns always', () => {
    expect([inches.figure(12.7), inches.text(25.4 / 3), inches.aligned(12.7)]).toEqual([
      '0.5',
      '0.333 in',
      '0.500',
    ]);
    expect(inches.area(254, 127)).toBe('10 × 5 in');
  });

  test('a size that will do is rounded up to a thousandth of an inch, and stays in millimetres', () => {
    expect(inches.up(25.4)).toBeCloseTo(25.4, 10);
    expect(inches.up(25.41)).toBeCloseTo(25.4254, 10);
  });
});

describe('a length', () => {
  test('as a step has whole numbers bare', () => {
    const of = (lengths: 'mm' | 'in') => printedLengths({ lengths });
    expect([of('mm').step(3), of('mm').step(2.5), of('in').step(25.4), of('in').step(2.54)]).toEqual([
      '3',
      '2.50',
      '1',
      '0.100',
    ]);
  });
});

// The field number is the field's width in inches: animationpost.co.uk/doping, “6-simp-trackin”. 16:9 makes 12 in 6.75 in high.
test('a western 12 field is 12 by 6.75 in', () => {
  const { widthMm, heightMm } = CONVENTIONAL.west.field;
  expect(printedLengths({ lengths: 'in' }).area(widthMm, heightMm)).toBe('12 × 6.75 in');
});

const tellings = (['en', 'ja'] as const).map((language) => ({
  words: wordsOf({ labels: language, convention: 'japan' }).moves,
  lengths: printedLengths({ lengths: 'mm' }),
  fieldMm: 254,
  length: (frames: number) => `0+${frames}`,
  neighbour: () => null,
}));
const [english] = tellings as unknown as [(typeof tellings)[number]];

describe.each(KINDS)('%s', (kind) => {
  test('has a name, a word and a line of the memo in both languages', () => {
    for (const telling of tellings) {
      const move = moveOf(kind, { second: parameterNames(kind) });
      const texts = [
        ...moveKind.names(move, telling),
        moveKind.short(move, telling.words),
        moveKind.memo(move, telling),
      ];
      for (const text of texts) expect(text).toMatch(/^\S(?!.*(undefined|NaN)).*$/);
    }
  });

  test('tells each parameter that is to be told', () => {
    for (const { name, parameter } of parametersOf(moveOf(kind)))
      if (parameter.told !== 'never')
        expect(moveKind.memo(moveOf(kind, { second: [name] }), english), name).not.toBe(
          moveKind.memo(moveOf(kind), english),
        );
  });
});

describe('moves are called', () => {
  const memo = (kind: (typeof KINDS)[number], second: readonly string[] = []) =>
    moveKind.memo(moveOf(kind, { second }), english);

  test('by their levels, word, way, parameters and manners', () => {
    expect(memo('pan', ['carry'])).toBe('follow PAN P→Q with A');
    expect(memo('truck', ['ratios', 'quick'])).toBe('Q.T.U P→Q equal ratios');
    expect(memo('pull', ['loop'])).toBe('A pull → 3 mm/f loop 420 mm');
    expect(memo('levelTruck')).toBe('A level T.U 100%→140%');
    expect(memo('turn')).toBe('A turn 0°→90° clockwise');
    expect(memo('turn', ['sense'])).toBe('A turn 0°→90° counter-clockwise');
    expect(memo('shake', ['size', 'sideways'])).toBe('shake 5→9 mm left and right (right first)');
    expect(memo('sway', ['period'])).toBe('A sway 5 mm up and down (up first) every 0+9');
    expect(
      moveKind.memo(moveOf('slide', { on: 2, spacing: { form: 'ease', leave: 4, arrive: 6 } }), english),
    ).toBe('A slide ア→イ ease 4/6 on 2s');
  });

  test('in inches where the settings say so', () => {
    const inches = { ...english, lengths: printedLengths({ lengths: 'in' }) };
    const said = (kind: (typeof KINDS)[number]) => moveKind.memo(moveOf(kind), inches);
    expect(said('pull')).toBe('A pull → 0.118 in/f');
    expect(said('shake')).toBe('shake 0.197 in up and down (up first)');
  });

  test('beside their rows by less and less', () => {
    expect(moveKind.names(moveOf('sway'), english)).toEqual(['A sway 5 mm', 'A sway', 'A']);
    expect(moveKind.names(moveOf('pan', { second: ['carry'] }), english)).toEqual(['follow PAN', 'PAN']);
    expect(moveKind.names(moveOf('shake'), english)).toEqual(['shake 5 mm', 'shake']);
  });
});

test('graduations are numbered where they are asked for or written by hand', () => {
  expect(graduated(moveOf('pan'))).toBe(false);
  expect(graduated(moveOf('pan', { graduated: true }))).toBe(true);
  expect(graduated(moveOf('pull', { spacing: { form: 'steps', mm: [72] } }))).toBe(true);
});

test('levels that go somewhere are outlined, those that swing are not', () => {
  expect(outlined(moveOf('slide'))).toEqual(['A']);
  expect(outlined(moveOf('pan', { second: ['carry'] }))).toEqual(['A']);
  expect(outlined(moveOf('sway'))).toEqual([]);
});

// ---- light on paper

function light(text: string, neighbours?: Neighbours) {
  const { shot } = solvedCut(`cut 1\ntime 4+0\nA: 1..\nB: 1..\n${text}\n`);
  const [one] = shot.camera.light;
  return {
    one: one!,
    kind: lightKind(one!),
    telling: tellingOf(shot, { labels: 'en', convention: 'japan', lengths: 'mm' }, neighbours),
  };
}
const memoOf = (text: string, neighbours?: Neighbours) => {
  const { one, kind, telling } = light(text, neighbours);
  return kind.memo(one, telling);
};

test.each([
  ['fade in 1..12', 'F.I', { form: 'wedge', opens: true }],
  ['fade out 1..12', 'F.O', { form: 'wedge', opens: false }],
  ['fade in white 1..12', 'W.I', { form: 'wedge', opens: true }],
  ['glow A 1..12', 'A glow', { form: 'box' }],
  ['effect "mist" A,B 1..12', 'A,B mist', { form: 'box' }],
  ['effect "mist" 1..12', 'mist', { form: 'box' }],
] as const)('%s', (text, memo, sign) => {
  const { one, kind } = light(text);
  expect(memoOf(text)).toBe(memo);
  expect(kind.sign(one)).toEqual(sign);
});

test('an exposure names its share, or both of them', () => {
  expect(memoOf('expose B 50% 1..12')).toBe('B double exposure 50%');
  expect(memoOf('expose B 50%>20% 1..12')).toBe('B double exposure 50%→20%');
});

describe('an overlap', () => {
  const overlap = 'overlap out 24';

  test('names the cut that it is with, if that is known', () => {
    expect(memoOf(overlap, { after: '2A' })).toBe('O.L 1+0 with c2A');
    expect(memoOf(overlap)).toBe('O.L 1+0 with the next cut');
    expect(memoOf('overlap in 24', { after: '2A' })).toBe('O.L 1+0 with the cut before');
  });

  test('has shorter names for where there is less room', () => {
    const names = (neighbours?: Neighbours) => {
      const { one, kind, telling } = light(overlap, neighbours);
      return kind.names(one, telling);
    };
    expect(names({ after: '2A' })).toEqual(['O.L 1+0 with c2A', 'O.L with c2A', 'O.L 1+0', 'O.L']);
    expect(names()).toEqual(['O.L 1+0', 'O.L']);
  });
});

// ---- what the camera does, in few words

const HEAD = 'cut 1\ntime 2+0\nA: 1..\nfield P full\nfield Q full at 40,0\nfield R 60%\n';
const moves = (text: string, language: 'en' | 'ja' = 'en') => shortMoves(solvedCut(HEAD + text), language);

test('a camera that rests is fixed, light or not', () => {
  expect(moves('')).toEqual(['FIX']);
  expect(moves('fade in 1..12\n')).toEqual(['FIX', 'F.I']);
});

test('moves and light stand in the order of their first rows, each name once', () => {
  expect(moves('fade out 37..48\ntruck Q@24 > R@36\npan P@1 > Q@12\nfade in 1..6\n')).toEqual([
    'PAN',
    'F.I',
    'T.U',
    'F.O',
  ]);
  expect(moves('shake 2mm 1..6\nshake 3mm 20..26\n')).toEqual(['shake']);
});

test('the words are those of the language', () => {
  expect(moves('shake 2mm 1..6\n', 'ja')).toEqual(['画面動']);
});
