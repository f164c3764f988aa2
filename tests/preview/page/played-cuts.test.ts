import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { PlayedCuts } from '../../../src/preview/page/played-cuts.js';
import { answer } from '../player/answers.js';

/** Questions that were asked, with the function that answers each. */
let asked: [string, (answer: unknown) => void][];

beforeEach(() => {
  asked = [];
  vi.stubGlobal('fetch', (way: string) => new Promise((give) => asked.push([way, give])));
});
afterEach(() => vi.unstubAllGlobals());

const give = (at: number, version: number, rows = 24) =>
  asked[at]![1]({ ok: true, json: async () => answer('c1', rows, { version }) });

test('a cut is asked for once', async () => {
  const cuts = new PlayedCuts();
  const both = Promise.all([cuts.load('c1'), cuts.load('c1')]);
  give(0, 1);
  const [first, second] = await both;
  expect(second).toBe(first);
  expect(await cuts.load('c1')).toBe(first);
  expect(asked.map(([way]) => way)).toEqual(['play/c1']);
});

test('a newer one is fetched while the older one is at hand', async () => {
  const cuts = new PlayedCuts();
  const first = cuts.load('c1');
  give(0, 1);
  await first;
  const renewed = cuts.renew('c1');
  expect(cuts.at('c1')?.play.version).toBe(1);
  give(1, 2, 12);
  await renewed;
  expect(cuts.at('c1')?.play.version).toBe(2);
  expect(cuts.at('c1')?.cut.frames).toHaveLength(12);
});

test('an answer that comes after a newer one does not count', async () => {
  const cuts = new PlayedCuts();
  const first = cuts.renew('c1');
  const second = cuts.renew('c1');
  give(1, 2);
  await second;
  give(0, 1);
  await first;
  expect(cuts.at('c1')?.play.version).toBe(2);
});

test('what cannot be shown is nothing, and is asked for again', async () => {
  const cuts = new PlayedCuts();
  const first = cuts.load('c1');
  asked[0]![1]({ ok: false });
  expect(await first).toBeNull();
  const second = cuts.load('c1');
  give(1, 1);
  expect((await second)?.play.version).toBe(1);
});

test('only a few cuts are kept', async () => {
  const cuts = new PlayedCuts();
  for (let i = 0; i < 12; i++) {
    const loaded = cuts.load(`c${i}`);
    give(i, 1);
    await loaded;
  }
  expect(cuts.at('c0')).toBeNull();
  expect(cuts.at('c11')).not.toBeNull();
});
