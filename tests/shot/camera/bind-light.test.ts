import { describe, expect, it, test } from 'vitest';
import type { CameraStatement } from '../../../src/language/tree-camera.js';
import { handleOf } from '../../../src/shot/camera/bind-light.js';
import { explained } from '../../explained.js';
import { withLines } from '../bind.js';
import { bound, during, length, number, state, words } from './nodes.js';

const overlap = (way: 'in' | 'out', frames: number): CameraStatement =>
  state({ kind: 'overlap', way, length: length(frames) });

describe('light', () => {
  it('has its shares from percents', () => {
    const expose = (from: number, last: number | null): CameraStatement =>
      state({
        kind: 'expose',
        levels: words('A'),
        from: number(from),
        to: last === null ? null : number(last),
        range: during(1, 24),
      });
    expect(bound([expose(0, 100)]).camera.light[0]).toMatchObject({ from: 0, to: 1 });
    expect(bound([expose(50, null)]).camera.light[0]).toMatchObject({ from: 0.5, to: 0.5 });
    expect(bound([expose(120, null)]).codes).toContain('exposure-range');
  });
});

describe('overlaps', () => {
  it('make the sheets of 4+00 and 3+00 with 1+00 between them 4+12 and 3+12', () => {
    // Handles of half the overlap: common practice; the sum of both times stays 168 frames.
    const out = bound([overlap('out', 24)], { text: 'cut 1\ntime 4+0\nA: 1..\n' }).shot;
    const into = bound([overlap('in', 24)], { text: 'cut 2\ntime 3+0\nA: 1..\n' }).shot;
    expect([out.length, out.handles]).toEqual([4 * 24 + 12, { head: 0, tail: 12 }]);
    expect([into.length, into.handles]).toEqual([3 * 24 + 12, { head: 12, tail: 0 }]);
    expect(out.time + into.time).toBe(168);
    expect(out.camera.light[0]).toMatchObject({ frames: { from: 85, to: 108 } });
    expect(into.camera.light[0]).toMatchObject({ frames: { from: 1, to: 24 } });
  });

  it('of an odd length give the outgoing cut the smaller half', () => {
    expect([handleOf('out', 9, 'half'), handleOf('in', 9, 'half')]).toEqual([4, 5]);
  });

  it('in full add nothing: both times contain them', () => {
    // 96 + 72 - 24 = 144: common practice.
    const { shot } = bound([overlap('out', 24)], { settings: { overlap: 'full' } });
    expect([shot.length, shot.handles]).toEqual([48, { head: 0, tail: 0 }]);
  });

  it('last from two frames to the whole sheet, one at each end', () => {
    expect(bound([overlap('out', 1)]).codes).toContain('overlap-short');
    expect(bound([overlap('out', 97)]).codes).toContain('overlap-long');
    expect(bound([overlap('out', 1e12)]).codes).toContain('overlap-long');
    expect(bound([overlap('out', 12), overlap('in', 12)]).codes).not.toContain('statement-twice');
    expect(bound([overlap('out', 12), overlap('out', 12)]).codes).toContain('statement-twice');
  });
});

describe('light of each kind', () => {
  it('is bound with its levels and frames', () => {
    const { shot, codes } = withLines(
      'fade out 97.. white',
      'glow A 1..9',
      'effect "haze" A,BG 3..',
      'effect "rain" 1..9',
    );
    expect(codes).toEqual([]);
    expect(shot!.camera.light).toMatchObject([
      { kind: 'glow', levels: ['A'], frames: { from: 1, to: 9 } },
      { kind: 'effect', text: 'rain', levels: [], frames: { from: 1, to: 9 } },
      { kind: 'effect', text: 'haze', levels: ['A', 'BG'], frames: { from: 3, to: 120 } },
      { kind: 'fade', way: 'out', white: true, frames: { from: 97, to: 120 } },
    ]);
  });

  it('wipes and opens', () => {
    const { shot, codes } = withLines('wipe in up 1..9', 'iris out 97.. at 40,-10', 'iris in 20..30');
    expect(codes).toEqual([]);
    expect(shot!.camera.light).toMatchObject([
      { kind: 'wipe', way: 'in', towards: 'up', frames: { from: 1, to: 9 } },
      { kind: 'iris', way: 'in', xMm: 0, yMm: 0, frames: { from: 20, to: 30 } },
      { kind: 'iris', way: 'out', xMm: 40, yMm: -10, frames: { from: 97, to: 120 } },
    ]);
  });

  it('warns of an iris whose centre is not in the picture', () => {
    expect(withLines('iris in 1..9 at 127,71').codes).toEqual([]);
    expect(withLines('iris in 1..9 at 128,0').codes).toEqual(['warning iris-outside']);
    expect(withLines('iris in 1..9 at 0,-72').codes).toEqual(['warning iris-outside']);
  });

  it('of no level that is there is left out', () => {
    expect(withLines('glow Q 1..9').shot!.camera.light).toEqual([]);
    expect(withLines('expose Q 50% 1..9').shot!.camera.light).toEqual([]);
  });
});

describe('what is said of light that cannot be, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'an iris whose centre is out at the side',
      'time 1+0\niris in 1..12 at 200,0',
      ['warning «200,0» The centre of this iris, 200,0, lies outside the picture.'],
    ],
    [
      'an iris whose centre is below',
      'time 1+0\niris in 1..12 at 0,-100',
      ['warning «0,-100» The centre of this iris, 0,-100, lies outside the picture.'],
    ],
    ['an iris whose centre is in the last corner', 'time 1+0\niris out 13..24 at 127,71', []],
    [
      'an exposure over all there is',
      'time 1+0\nexpose BG 120% 1..12',
      ['error «120%» An exposure is from 0 % to 100 % of the light, but this is 120 %.'],
    ],
    [
      'an exposure that goes over all there is',
      'time 1+0\nexpose BG 0% > 101% 1..12',
      ['error «101%» An exposure is from 0 % to 100 % of the light, but this is 101 %.'],
    ],
    [
      'an exposure of a level that is not there',
      'time 1+0\nexpose BG,Q 50% 1..12',
      ['error «Q» This cut has no level `Q`.'],
    ],
    [
      'light through a level that is not there',
      'time 1+0\nglow Q 1..12',
      ['error «Q» This cut has no level `Q`.'],
    ],
    [
      'an effect on a level that is not there',
      'time 1+0\neffect "haze" Q 1..12',
      ['error «Q» This cut has no level `Q`.'],
    ],
    [
      'an overlap of one frame',
      'time 1+0\noverlap in 1',
      ['error «1» An overlap lasts for two frames at least: one cut alone, then the other.'],
    ],
    ['overlaps longer than half the sheet', 'time 1+0\noverlap in 12\noverlap out 10', []],
    [
      'an overlap of ten minutes',
      'time 10+0\noverlap out 600+0',
      ['error «600+0» This overlap lasts for 14400 frames, but the whole sheet has 7440 rows.'],
    ],
    [
      'an overlap of more than ten minutes',
      'time 1+0\noverlap out 600+1',
      ['error «600+1» An overlap is no longer than the longest cut, ten minutes.'],
    ],
    [
      'an overlap that is said twice',
      'time 1+0\noverlap in 4\noverlap in 6',
      ['error «overlap in 6» `overlap in` is said twice.', ' + «overlap in 4» the first is here'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

test('light without a time or a share that can be had is left out', () => {
  const light = (line: string) => withLines(line).shot!.camera.light;
  for (const line of [
    'fade in 1..nowhere',
    'wipe in left nowhere..9',
    'iris in 1..nowhere',
    'expose A 50% 1..nowhere',
    'expose A 120% 1..9',
    'expose A 50% > 120% 1..9',
    'expose Q 50% 1..9',
    'glow A nowhere..9',
    'glow Q 1..9',
    'effect "haze" 1..nowhere',
  ])
    expect(light(line), line).toEqual([]);
  expect(light('effect "haze" 1..9')).toMatchObject([{ kind: 'effect', levels: [], text: 'haze' }]);
  expect(light('expose A 50% 1..9')).toMatchObject([{ kind: 'expose', levels: ['A'], from: 0.5, to: 0.5 }]);
  expect(light('iris out 1..9 at 3,4')).toMatchObject([{ kind: 'iris', way: 'out', xMm: 3, yMm: 4 }]);
  expect(light('fade in white 1..9')).toMatchObject([{ white: true }]);
  expect(light('fade in 1..9')).toMatchObject([{ white: false }]);
});
