import { expect, test } from 'vitest';
import { editOrder } from '../../src/picture/film-order.js';
import { episodePlayOf } from '../../src/watch/played-episode.js';
import { compileText } from '../compile.js';

const cut = (id: string, text: string) => {
  const { shot, counts, camera, track } = compileText(text).solved!;
  return { id, handed: { shot, counts }, flashes: camera.flashes, heard: track !== null };
};
const A = cut('c1', 'cut 1\ntime 1+0\nA: 1..\noverlap out 8\n');
const B = cut('c2', 'cut 2\ntime 1+0\nA: 1..\noverlap in 8\n');

test('the cuts lie end to end in their order, with their overlaps', () => {
  const play = episodePlayOf([A, B], 0, 'en');
  expect(play.word).toBe('');
  expect(play.cuts.map(({ id, record, dissolve }) => [id, record, dissolve])).toEqual([
    ['c1', 0, null],
    ['c2', 24, { before: 4, after: 4 }],
  ]);
  const order = editOrder(play);
  expect(order.frames).toBe(48);
  expect([order.at(20).incoming, order.at(21).incoming?.cut]).toEqual([null, 1]);
});

test('says why cuts make no episode', () => {
  const play = episodePlayOf([A, cut('c3', 'cut 3\ntime 1+0\nA: 1..\n')], 0, 'en');
  expect([play.frames, play.cuts]).toEqual([0, []]);
  expect(play.word).toBe('Cut 1 has `overlap out 8`, but cut 3, which follows, has no `overlap in`.');
});

test('says which cuts flash', () => {
  const lightning = cut('c4', 'cut 4\ntime 1+0\nlevel A flash\nA: 1:6 x:6 1:6 x..\n');
  expect(episodePlayOf([lightning], 0, 'en').cuts[0]).toMatchObject({ flashes: true, heard: false });
});

test('says how many cuts are left out', () => {
  expect(episodePlayOf([A, B], 2, 'en').word).toBe('2 cuts left out: there are errors in the text.');
});
