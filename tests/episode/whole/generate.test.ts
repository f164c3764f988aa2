import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../../src/episode/episode.js';
import { findCuts } from '../../../src/episode/find-cuts.js';
import { said } from '../../compile.js';
import { generateEpisode } from './generate.js';
import { worldOf } from './world.js';

describe('a generated episode of 300 cuts', () => {
  const episode = generateEpisode();

  test('is 22 minutes long, as an episode is', () => {
    expect(episode.cuts).toHaveLength(300);
    expect(episode.runningFrames).toBe(22 * 60 * 24);
  });

  test('holds what episodes hold', () => {
    const { cuts } = episode;
    const share = (chosen: (cut: (typeof cuts)[number]) => boolean) =>
      cuts.filter(chosen).length / cuts.length;
    expect(share(({ camera }) => camera)).toBeCloseTo(1 / 3, 1);
    expect(share(({ text }) => /^voice/m.test(text))).toBeGreaterThan(0.3);
    expect(share(({ text }) => /on 3/.test(text))).toBeGreaterThan(0.3);
    expect(share(({ reuses }) => reuses.length > 0)).toBeGreaterThan(0.05);
    expect(share(({ overlapOut }) => overlapOut > 0)).toBeGreaterThan(0.03);
    expect(share(({ overlapOut }) => overlapOut % 2 === 1)).toBeGreaterThan(0);
    expect(new Set(cuts.map(({ artist }) => artist)).size).toBe(4);
    expect(cuts.map(({ number }) => number)).toContain('12A');
    for (const word of [
      'pan',
      'truck',
      'truck quick',
      'truck level',
      'pull',
      'follow',
      'slide',
      'shake',
      'sway',
      'fade',
    ])
      expect(
        share(({ text }) => new RegExp(`^${word} `, 'm').test(text)),
        word,
      ).toBeGreaterThan(0);
  });

  test('is the same for the same seed, and another for another', () => {
    expect(generateEpisode()).toEqual(episode);
    expect(generateEpisode({ seed: 2 }).files).not.toEqual(episode.files);
  });
});

test.each([
  [{ cuts: 40, seed: 1 }],
  [{ cuts: 40, seed: 2, overlap: 'full' as const }],
  [{ cuts: 40, seed: 3, meanFrames: 48 }],
  [{ cuts: 40, seed: 4, meanFrames: 240 }],
])('nothing is wrong in a generated episode: %j', async (options) => {
  const { cuts, files } = generateEpisode(options);
  const host = worldOf(files);
  const { jobs, diagnostics, episodes } = await findCuts(host, ['e']);
  const cache = newEpisodeCache();
  const compiled = jobs.map((job) => compile(host, job.path, job.episode, { name: job.name, cache }));
  const problems = [
    diagnostics,
    ...episodes.map((one) => one.diagnostics),
    ...compiled.map((one) => one.diagnostics),
  ];
  expect(said(problems.flat())).toEqual([]);
  expect(compiled.map((one) => one.shot!.cut)).toEqual(cuts.map(({ number }) => number));
  expect(compiled.map((one) => one.solved!.shot.length)).toEqual(cuts.map(({ rows }) => rows));
});
