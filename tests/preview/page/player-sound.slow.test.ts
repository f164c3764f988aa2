/** The track in the player: which part of it is heard when, and that the frames follow its clock. Both clocks are driven by the test. */

import type { Browser } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { tone, wave } from '../../sound/wave-writer.js';
import { CHROMIUM, launch } from '../browser.js';
import { Played } from './played.js';

/** In the browser. */
declare const BaseAudioContext: { readonly prototype: object };
declare const AudioContext: { readonly prototype: object };
declare const AudioBufferSourceNode: { readonly prototype: { start: (...when: number[]) => void } };
declare const AudioBuffer: unknown;

interface Heard {
  audioNow: number;
  readonly started: number[][];
}

const TRACKED = 'cut 1\ntime 4+0\nA: 1..\ntrack "c.wav"\n';

describe.skipIf(CHROMIUM === null)('the track', () => {
  let browser: Browser;
  let at: Played;

  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());
  afterEach(async () => {
    await at.close();
    expect(at.faults).toEqual([]);
  });

  /** The audio clock stands at 10 s, without any delay, and what is begun is written down. */
  async function opened(): Promise<void> {
    at = await Played.open(browser, { '1.cut': TRACKED, 'c.wav': wave(tone(4)) });
    await at.page.evaluateOnNewDocument(() => {
      const heard: Heard = { audioNow: 10, started: [] };
      Object.assign(globalThis, { heard });
      const clock = { get: () => heard.audioNow, configurable: true };
      Object.defineProperty(BaseAudioContext.prototype, 'currentTime', clock);
      Object.defineProperty(BaseAudioContext.prototype, 'state', { get: () => 'running' });
      for (const name of ['outputLatency', 'baseLatency'])
        Object.defineProperty(AudioContext.prototype, name, { get: () => 0 });
      AudioBufferSourceNode.prototype.start = function (...when) {
        const { duration } = (this as unknown as { buffer: { duration: number } }).buffer;
        const { value } = (this as unknown as { playbackRate: { value: number } }).playbackRate;
        heard.started.push([...when, duration, value]);
      };
      (AudioBufferSourceNode.prototype as unknown as { stop: () => void }).stop = () => {};
    });
    await at.page.reload();
    await at.sees((() => typeof AudioBuffer === 'function') as never);
    const sound = at.page.waitForResponse((answer) => answer.url().includes('/sound/'));
    await at.openPlayer();
    await sound;
  }

  const audio = (by: number) =>
    at.page.evaluate((seconds) => {
      (globalThis as unknown as { heard: Heard }).heard.audioNow += seconds;
    }, by);
  const started = () => at.page.evaluate(() => (globalThis as unknown as { heard: Heard }).heard.started);
  const begins = async (count: number) => {
    await at.sees(
      ((wanted: number) => {
        (globalThis as unknown as { tick: (ms: number) => void }).tick(1);
        return (globalThis as unknown as { heard: Heard }).heard.started.length >= wanted;
      }) as never,
      count,
    );
  };

  test('begins with its row, and the frames follow the clock of what is heard', async () => {
    await opened();
    for (let i = 0; i < 24; i++) await at.page.keyboard.press('.');
    await at.page.keyboard.press('Space');
    await at.plays();
    await begins(1);
    const [[when, offset, length, duration, rate]] = (await started()) as [number[]];
    expect([when, offset, length, duration, rate].map((one) => Number(one!.toFixed(3)))).toEqual([
      10.01, 1, 3, 4, 1,
    ]);
    // The other clock runs faster: nobody minds.
    for (let i = 0; i < 20; i++) {
      await audio(0.05);
      await at.tick(300);
    }
    await audio(0.011);
    await at.tick(1);
    expect(await at.seen()).toMatchObject({ frame: 25 + 24, playing: true });
  });

  test('is heard slower at half the speed, from where the picture is', async () => {
    await opened();
    await at.page.keyboard.press('Space');
    await at.plays();
    await begins(1);
    await audio(1.01);
    await at.tick(16);
    await at.page.select('#speed', 'speed ½');
    await begins(2);
    const [, second] = await started();
    expect(second!.slice(1).map((one) => Number(one.toFixed(2)))).toEqual([1, 3, 4, 0.5]);
  });

  test('whose clock stops for good leaves the picture running', async () => {
    await opened();
    await at.page.keyboard.press('Space');
    await at.plays();
    await audio(0.51);
    await at.tick(16);
    expect((await at.seen()).frame).toBe(13);
    await at.tick(700, 16, 500);
    expect(await at.seen()).toMatchObject({ playing: true });
    expect((await at.seen()).frame).toBeGreaterThan(20);
  });
});
