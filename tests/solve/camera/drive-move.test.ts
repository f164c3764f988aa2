import { describe, expect, it } from 'vitest';
import { stageOf } from '../../../src/solve/camera/camera-tracks.js';
import { driveMove, drivenBy } from '../../../src/solve/camera/drive-move.js';
import * as build from './build.js';

const { at, FULL, field, follow, leg, level, pan, pull, roll, scale, shake, slide, truck, turn } = build;

describe('what a move drives', () => {
  it('is the camera, once, whatever goes along', () => {
    expect(drivenBy(pan([leg(FULL, 1, FULL, 9)], { carry: ['A'] }))).toEqual(['camera field']);
    expect(drivenBy(truck([leg(FULL, 1, FULL, 9)]))).toEqual(['camera field']);
    expect(drivenBy(follow(['A', 'B'], 'left', 9, 1, 9))).toEqual(['camera field']);
    expect(drivenBy(shake(1, 1, 1, 9))).toEqual(['camera shake']);
  });

  it('is a quantity of each level that it names', () => {
    expect(drivenBy(pull(['A', 'B'], 'left', 9, 1, 9))).toEqual(['A pull', 'B pull']);
    expect(drivenBy(slide(['A'], [leg(at(0, 0), 1, at(1, 0), 9)]))).toEqual(['A slide']);
    expect(drivenBy(scale(['A'], [leg(1, 1, 2, 9)]))).toEqual(['A scale']);
    expect(drivenBy(turn(['A'], [leg(0, 1, 9, 9)]))).toEqual(['A turn']);
    expect(drivenBy(roll(['A'], 5, 1, 9, 9))).toEqual(['A sway']);
  });
});

it('drives the tracks of its kind alone, and gives its own way', () => {
  const context = build.contextOf({ length: 9, levels: [level('A')] });
  const stage = stageOf(context, field('R'), () => {});
  const path = driveMove(pull(['A'], 'right', 9, 1, 9), stage);
  expect([path.start, path.end, path.at(3).x]).toEqual([0, 9, 3]);
  const { pullX, slideX } = stage.levels.get('A')!;
  expect([pullX[3], slideX[3], stage.camera.goneX[3]]).toEqual([3, 0, 0]);
  expect(driveMove(pan([leg(FULL, 1, field('B', { xMm: 16 }), 9)]), stage).at(5).x).toBe(8);
  expect([stage.camera.baseX[5], pullX[5]]).toEqual([8, 5]);
});
