import { describe, expect, it, test } from 'vitest';
import { messageOf, noteOf } from '../../../src/language/message.js';
import type { Light } from '../../../src/shot/camera/camera-model.js';
import {
  changesOf,
  countFlashes,
  exposureOn,
  fadedOn,
  flashChanges,
  type LightChange,
  rulingOn,
} from '../../../src/solve/camera/solve-light.js';
import { explained } from '../../explained.js';
import { codes, level, said, solved, span } from './build.js';

const fade = (way: 'in' | 'out', from: number, to: number, white = false): Light => ({
  kind: 'fade',
  way,
  white,
  frames: { from, to },
  span: span(),
});
const glow = (from: number, to: number): Light => ({
  kind: 'glow',
  levels: ['BG'],
  frames: { from, to },
  span: span(),
});
const expose = (from: number, to: number, a: number, b: number): Light => ({
  kind: 'expose',
  levels: ['BG'],
  from,
  to,
  frames: { from: a, to: b },
  span: span(),
});

const shares = (light: Light) => solved({ light: [light] }).solved.light[0]!.shares.map(({ share }) => share);
describe('light', () => {
  it('fades over five frames by 0, .25, .5, .75, 1', () => {
    // flylib 2.98.1.85: first frame 0/100, last 100/0.
    expect(shares(fade('in', 1, 5))).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(shares(fade('out', 44, 48))).toEqual([1, 0.75, 0.5, 0.25, 0]);
  });

  it('wipes and opens the same way', () => {
    const light = { way: 'out', frames: { from: 44, to: 48 }, span: span() } as const;
    expect(shares({ kind: 'wipe', towards: 'left', ...light })).toEqual([1, 0.75, 0.5, 0.25, 0]);
    expect(shares({ kind: 'iris', xMm: 3, yMm: 0, ...light, way: 'in' })).toEqual([0, 0.25, 0.5, 0.75, 1]);
  });

  it('overlaps the same way', () => {
    const out: Light = { kind: 'overlap', way: 'out', length: 3, frames: { from: 46, to: 48 }, span: span() };
    expect(shares(out)).toEqual([1, 0.5, 0]);
  });

  it('exposes by shares that run from the first frame to the last', () => {
    expect(shares(expose(0, 1, 1, 5))).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(shares(expose(0.5, 0.5, 1, 2))).toEqual([0.5, 0.5]);
  });
  it('of a fade over one frame has arrived there', () => {
    expect(shares(fade('in', 3, 3))).toEqual([1]);
  });

  it('past the end of the sheet stops with its last row', () => {
    expect(shares(fade('in', 45, 51))).toHaveLength(4);
  });

  it('through the artwork is full, and an effect has no share', () => {
    expect(shares(glow(3, 4))).toEqual([1, 1]);
    const effect: Light = {
      kind: 'effect',
      text: 'haze',
      levels: [],
      frames: { from: 1, to: 9 },
      span: span(),
    };
    expect(shares(effect)).toEqual([]);
  });
});

describe('flash count', () => {
  const FPS = 24;
  const context = { length: 48, levels: [level('BG'), level('L')] };

  const fade = (way: 'in' | 'out', from: number, to: number, white = false): Light => ({
    kind: 'fade',
    way,
    white,
    frames: { from, to },
    span: span(),
  });
  const expose = (from: number, to: number, share: number): Light => ({
    kind: 'expose',
    levels: ['L'],
    from: share,
    to: share,
    frames: { from, to },
    span: span(),
  });
  const glow = (from: number, to: number): Light => ({
    kind: 'glow',
    levels: ['L'],
    frames: { from, to },
    span: span(),
  });
  const count = (lights: readonly Light[], flashing: readonly string[] = [], levels = context.levels) =>
    countFlashes(flashChanges(lights, flashing, { ...context, levels }), FPS);

  describe('changes of light', () => {
    const frames = (amounts: readonly number[], before: number | null = null) =>
      changesOf(amounts, before, span()).map(({ frame, up }) => (up ? frame : -frame));

    it('begin on the frame after the last that was as dark or as bright', () => {
      expect(frames([0, 0, 1, 1, 0, 0])).toEqual([3, -5]);
      expect(frames([1, 0.5, 0, 0.5, 1])).toEqual([-2, 4]);
    });

    it('are a tenth of the light at least (WCAG 2.2, general flash: 10 % of the maximum relative luminance)', () => {
      expect(frames([0.5, 0.59, 0.5, 0.59])).toEqual([]);
      expect(frames([0.5, 0.6, 0.5, 0.6])).toEqual([2, -3, 4]);
    });

    it('add up where they go on the same way', () => {
      expect(frames([0, 0.05, 0.1, 0.15, 0.2])).toEqual([1 + 1]);
    });

    it('count on the first frame where it is known what was before', () => {
      expect(frames([1, 1, 1], 0)).toEqual([1]);
      expect(frames([1, 1, 1])).toEqual([]);
    });
  });

  describe('flashes', () => {
    // WCAG 2.2: a flash is a pair of opposing changes, so a dip to black is one as much as a flash of white.
    it('are counted when light falls and rises again', () => {
      const dips = [0, 4, 8, 12].flatMap((at) => [fade('out', at + 1, at + 2), fade('in', at + 3, at + 4)]);
      expect(count(dips)).toMatchObject({ most: 4, from: 2, any: true });
      expect(count(dips.slice(0, 6)).most).toBe(3);
    });

    it('are counted when an exposure alternates', () => {
      const strobe = Array.from({ length: 12 }, (_, i) => expose(2 * i + 1, 2 * i + 2, i % 2));
      expect(count(strobe).most).toBe(6);
    });

    it('are counted for each drawing of a level that flashes', () => {
      const lightning = { ...level('L'), appears: (frame: number) => frame % 6 === 1 };
      expect(count([], ['L'], [level('BG'), lightning])).toMatchObject({ most: 4, from: 1, any: true });
      // On ones there is a new one on each frame.
      const storm = { ...level('L'), appears: () => true };
      expect(count([], ['L'], [storm]).most).toBe(FPS);
    });

    it('are one for a flash of white, and one for each light through', () => {
      expect(count([fade('out', 1, 4, true), fade('in', 5, 10, true)]).most).toBe(1);
      expect(count([glow(1, 2), glow(9, 10), glow(17, 18)]).most).toBe(3);
    });

    it('within another second are other flashes', () => {
      expect(count([glow(1, 2), glow(30, 31)])).toMatchObject({ most: 1, from: 1 });
    });

    it('are none where a cut fades in and out again slowly', () => {
      expect(count([fade('in', 1, 12), fade('out', 37, 48)]).any).toBe(false);
      expect(count([]).most).toBe(0);
    });
  });
});

describe('light check', () => {
  const fade = (way: 'in' | 'out', from: number, to: number, white = false): Light => ({
    kind: 'fade',
    way,
    white,
    frames: { from, to },
    span: span(),
  });
  const glow = (from: number, to: number): Light => ({
    kind: 'glow',
    levels: ['BG'],
    frames: { from, to },
    span: span(),
  });
  const expose = (from: number, to: number, a: number, b: number): Light => ({
    kind: 'expose',
    levels: ['BG'],
    from,
    to,
    frames: { from: a, to: b },
    span: span(),
  });
  describe('light', () => {
    it('may not fade twice at once, nor over one frame, nor past the end', () => {
      expect(codes({ light: [fade('in', 1, 24), fade('out', 20, 48)] })).toContain('light-overlaps');
      expect(codes({ light: [fade('in', 1, 24), fade('out', 25, 48)] })).not.toContain('light-overlaps');
      expect(codes({ light: [expose(0, 1, 1, 9), expose(1, 0, 9, 12)] })).toContain('light-overlaps');
      expect(codes({ light: [fade('in', 3, 3)] })).toContain('fade-short');
      expect(codes({ light: [fade('in', 40, 60)] })).toContain('move-past-end');
    });
  });
  describe('flashes', () => {
    it('are never called harmless: a hint says that the picture is not measured, and the sheet bears a caution', () => {
      const quiet = { light: [fade('in', 1, 12), fade('out', 37, 48)] };
      expect(codes(quiet)).not.toContain('flash-unmeasured');
      expect(solved(quiet).solved.flashes).toBe(false);
      for (const light of [
        [glow(5, 6)],
        [fade('in', 1, 12, true)],
        [expose(0, 0, 9, 9), expose(0, 0, 11, 11)],
      ]) {
        expect(codes({ light })).toContain('flash-unmeasured');
        expect(solved({ light }).solved.flashes).toBe(true);
      }
    });

    it('more than three in any second are a caution that names its standards and is no measurement', () => {
      const four = [glow(5, 6), glow(11, 12), glow(17, 18), glow(28, 29)];
      expect(codes({ light: four.slice(0, 3) })).not.toContain('flashes');
      const { diagnostics } = solved({ light: four });
      const found = diagnostics.find(({ code }) => code === 'flashes')!;
      expect(found.severity).toBe('warning');
      expect(messageOf(found, 'en')).toMatch(
        /4 times within a second, on frames 5 to 28.*WCAG 2\.3\.1, ITU-R BT\.1702/,
      );
      expect(noteOf(found.notes[0]!, 'en')).toMatch(/no measurement.*broadcaster/);
    });

    it('a second apart are none too many', () => {
      expect(codes({ light: [glow(5, 6), glow(11, 12), glow(17, 18), glow(29, 30)] })).not.toContain(
        'flashes',
      );
    });

    it('count white out and in again once, dips to black too, and what flashes together once', () => {
      const white = (at: number) => [fade('out', at, at + 1, true), fade('in', at + 2, at + 3, true)];
      expect(codes({ light: [...white(1), ...white(5), ...white(9)] })).not.toContain('flashes');
      expect(said({ light: [...white(1), ...white(5), ...white(9), ...white(13)] }, 'flashes')[0]).toContain(
        '4 times',
      );
      // WCAG 2.3.1: a flash is a pair of opposing changes, whichever comes first.
      const dips = [1, 5, 9, 13].flatMap((f) => [fade('out', f, f + 1), fade('in', f + 2, f + 3)]);
      expect(codes({ light: dips })).toContain('flashes');
      expect(codes({ light: dips.slice(0, 6) })).not.toContain('flashes');
      const C = level('C', { appears: (frame) => [5, 11, 17].includes(frame) });
      const both = { levels: [level('BG'), C], flashing: ['C'], light: [glow(5, 6), glow(11, 12)] };
      expect(codes(both)).not.toContain('flashes');
      expect(said({ ...both, light: [glow(5, 6), glow(12, 13)] }, 'flashes')[0]).toContain('4 times');
    });

    it('count each drawing of a flashing level that appears', () => {
      const C = level('C', { timed: true, appears: (frame) => frame % 6 === 1 });
      expect(codes({ levels: [C], flashing: ['C'] })).toContain('flashes');
      expect(codes({ levels: [C], flashing: [] })).not.toContain('flashes');
    });
  });
});

describe('which light rules a frame', () => {
  const first = fade('in', 3, 5);
  const second = fade('out', 9, 13);
  const rules = (frame: number, lights = [first, second]) => {
    const ruling = rulingOn(lights, frame);
    return ruling && [lights.indexOf(ruling.light), ruling.way];
  };

  it('is the one that runs, else the last one before, else the first to come', () => {
    expect([1, 3, 4, 5, 6, 8, 9, 10, 13, 20].map((frame) => rules(frame))).toEqual([
      [0, 0],
      [0, 0],
      [0, 0.5],
      [0, 1],
      [0, 1],
      [0, 1],
      [1, 0],
      [1, 0.25],
      [1, 1],
      [1, 1],
    ]);
    expect(rules(1, [])).toBeNull();
    // Of one frame: it has arrived there.
    expect(rules(3, [fade('in', 3, 3)])).toEqual([0, 1]);
  });

  it('of fades says how much of the picture is away', () => {
    const fades = [first, second].filter((light) => light.kind === 'fade');
    expect([1, 3, 4, 5, 8, 9, 10, 13, 20].map((frame) => fadedOn(fades, frame))).toEqual([
      1, 1, 0.5, 0, 0, 0, 0.25, 1, 1,
    ]);
    expect(fadedOn([], 7)).toBe(0);
  });
});

it('an exposure gives a level its share of light on its own frames, and all of it elsewhere', () => {
  const lights = [glow(1, 9), expose(0.25, 0.75, 3, 5), expose(0.5, 0, 9, 9)];
  expect([2, 3, 4, 5, 6, 9, 10].map((frame) => exposureOn(lights, frame))).toEqual([
    1, 0.25, 0.5, 0.75, 1, 0, 1,
  ]);
});

it('an exposure from one share to another goes evenly from its first frame to its last', () => {
  const between = shares(expose(0.8, 0.2, 1, 4));
  [0.8, 0.6, 0.4, 0.2].forEach((share, i) => {
    expect(between[i]).toBeCloseTo(share, 12);
  });
});

describe('the second with the most flashes', () => {
  const at = (...frames: number[]): LightChange[] =>
    frames.map((frame) => ({ frame: Math.abs(frame), up: frame > 0, span: span() }));

  it('is found whichever light is named first', () => {
    const [early, late] = [at(1, -3), at(30, -31, 32, -33, 34, -35)];
    for (const all of [
      [early, late],
      [late, early],
    ])
      expect(countFlashes(all, 24)).toMatchObject({ most: 3, from: 30, to: 35, any: true });
  });

  it('is the first of several that are alike, and begins with a change', () => {
    const two = at(1, -2, 3, -4, 60, -61, 62, -63);
    expect(countFlashes([two], 24)).toMatchObject({ most: 2, from: 1, to: 4, span: two[0]!.span });
  });

  it('counts what changes on one frame once, up and down by itself', () => {
    expect(countFlashes([at(1, -9), at(1, -9)], 24).most).toBe(1);
    expect(countFlashes([at(1), at(-1)], 24)).toMatchObject({ most: 1, any: false });
  });

  it('ends before the same frame of the next second', () => {
    expect(countFlashes([at(1, 25)], 24)).toMatchObject({ most: 1, to: 1, any: false });
    expect(countFlashes([at(1, 24)], 24)).toMatchObject({ most: 2, to: 24, any: true });
  });
});

describe('a level that is exposed', () => {
  const seen = (from: number, to: number) => level('BG', { shown: (frame) => frame >= from && frame <= to });
  const changes = (own: ReturnType<typeof level>, ...lights: Light[]) =>
    flashChanges(lights, [], { length: 12, levels: [level('L'), own] }).map((one) =>
      one.map(({ frame, up }) => (up ? frame : -frame)),
    );

  it('changes only while it is there, and goes on from where it was', () => {
    expect(changes(level('BG'), expose(0, 0, 5, 6))).toEqual([[-5, 7]]);
    expect(changes(seen(1, 4), expose(0, 0, 5, 6))).toEqual([[]]);
    // Away on frame 5 and 6: dark again on frame 7 only.
    const away = level('BG', { shown: (frame) => frame < 5 || frame > 6 });
    expect(changes(away, expose(0, 0, 5, 8))).toEqual([[-7, 9]]);
    // Before its first drawing it has the light of that.
    expect(changes(seen(5, 12), expose(0, 0, 1, 8))).toEqual([[9]]);
  });

  it('is one light, however many exposures name it, and others are others', () => {
    const own: Light = { ...expose(0.2, 0.2, 9, 10), levels: ['L', 'BG'] } as Light;
    expect(changes(level('BG'), expose(0, 0, 3, 4), own, fade('in', 1, 3))).toEqual([
      [2],
      [-3, 5, -9, 11],
      [-9, 11],
    ]);
  });
});

describe('light that gets in the way of other light, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'fades that run into each other',
      'time 2+0\nfade in 1..12\nfade out 10..40',
      [
        "hint «fade in 1..12» Light flashes here, once in its fastest second; whether that is harmless only the broadcaster's test of the finished picture can say.",
        'error «fade out 10..40» Two fades, wipes, irises or overlaps of the whole picture run at once, from frame 10 to frame 12.',
        ' + «fade in 1..12» The other one.',
      ],
    ],
    [
      'a wipe that begins on the last frame of a fade',
      'time 2+0\nfade in 1..12\nwipe out left 12..48',
      [
        'error «wipe out left 12..48» Two fades, wipes, irises or overlaps of the whole picture run at once, from frame 12 to frame 12.',
        ' + «fade in 1..12» The other one.',
      ],
    ],
    [
      'an iris in while a fade runs',
      'time 2+0\nfade in 1..24\niris in 24..48',
      [
        'error «iris in 24..48» Two fades, wipes, irises or overlaps of the whole picture run at once, from frame 24 to frame 24.',
        ' + «fade in 1..24» The other one.',
      ],
    ],
    [
      'two exposures of a level among others',
      'time 1+0\nA: 1..\nexpose A,BG 50% 1..24\nexpose BG 50% 12..24',
      [
        'error «expose BG 50% 12..24» Two exposures of BG run at once, from frame 12 to frame 24.',
        ' + «expose A,BG 50% 1..24» The other one.',
      ],
    ],
    ['exposures of two levels', 'time 1+0\nA: 1..\nexpose A 50% 1..24\nexpose BG 50% 1..24', []],
    ['an exposure under a fade', 'time 2+0\nexpose BG 50% 1..48\nfade out 25..48', []],
    [
      'a fade that goes on behind the sheet',
      'time 1+0\nfade out 1..30',
      ['error «fade out 1..30» This ends on frame 1+6 (30), past the end of the sheet, which has 24 rows.'],
    ],
    [
      'one that begins there',
      'time 1+0\nfade out 25..30',
      ['error «fade out 25..30» This ends on frame 1+6 (30), past the end of the sheet, which has 24 rows.'],
    ],
    [
      'a fade of one frame',
      'time 1+0\nfade in 3..3',
      [
        'error «fade in 3..3» This needs two frames at least: nothing of the picture shows on one end, all of it on the other.',
      ],
    ],
    [
      'a wipe of one frame',
      'time 1+0\nwipe in left 3..3',
      [
        'error «wipe in left 3..3» This needs two frames at least: nothing of the picture shows on one end, all of it on the other.',
      ],
    ],
    ['an exposure of one frame', 'time 1+0\nexpose BG 50% 1..1', []],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('light that flashes, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a fade to white',
      'time 2+0\nfade out 1..12 white',
      [
        "hint «fade out 1..12 white» Light flashes here, once in its fastest second; whether that is harmless only the broadcaster's test of the finished picture can say.",
      ],
    ],
    ['a fade from black in a second', 'time 2+0\nfade in 1..24', []],
    [
      'a light through a level',
      'time 2+0\nglow BG 1..2',
      [
        "hint «glow BG 1..2» Light flashes here, once in its fastest second; whether that is harmless only the broadcaster's test of the finished picture can say.",
      ],
    ],
    [
      'a drawing that flashes four times in a second',
      'time 2+0\nA: 1 x 2 x 3 x 4 x 5 x 6..\nlevel A flash',
      [
        'warning «A» Light flashes 6 times within a second, on frames 1 to 21: more than three flashes in any second can bring on seizures (WCAG 2.3.1, ITU-R BT.1702).',
        ' + This is a count of what the text says (fades, exposures, glows, levels marked as flashing) and no measurement of the picture; the test of the broadcaster decides.',
      ],
    ],
    [
      'a drawing that flashes twice',
      'time 2+0\nA: 1 x:10 2..\nlevel A flash',
      [
        "hint «A» Light flashes here, twice in its fastest second; whether that is harmless only the broadcaster's test of the finished picture can say.",
      ],
    ],
    [
      'a level that never shows',
      'time 2+0\nA: x..\nlevel A flash',
      ['warning «A: x..» Level A never shows anything.'],
    ],
    [
      'exposures that go up and down while the level is away',
      'time 2+0\nA: 1:4 x:4 2:4 x:4 3..\nexpose A 100% 1..4\nexpose A 0% 5..8\nexpose A 100% 9..12',
      [],
    ],
    [
      'exposures that go up and down on a level that is seen',
      'time 2+0\nA: 1..\nexpose A 0% 5..8\nexpose A 0% 13..16\nexpose A 0% 21..24\nexpose A 0% 29..32',
      [
        "hint «expose A 0% 5..8» Light flashes here, three times in its fastest second; whether that is harmless only the broadcaster's test of the finished picture can say.",
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
