/** The player as a person has it: in Chromium, over a watch of real files. Its clock is driven by the test. */

import type { Browser } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { CHROMIUM, type Dom, launch } from '../browser.js';
import { Played } from './played.js';

/** In the browser. */
declare const document: Dom & { readonly documentElement: { readonly scrollWidth: number } };
declare const innerWidth: number;
declare const tick: (ms: number) => void;

const cut = (number: number, body: string) => `cut ${number} "Slack water ${number}"\n${body}\n`;
const TWO = cut(1, 'time 2+0\nA: on 2 (1 2 3)..');
const LIGHTNING = 'time 1+0\nlevel A flash\nA: 1:6 x:6 1:6 x..';

describe.skipIf(CHROMIUM === null)('the player', () => {
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

  test('shows on each tick of a minute the frame that is due, whether the screen is drawn late or not', async () => {
    at = await Played.open(browser, { '1.cut': cut(1, 'time 60+0\nA: on 2 (1 2 3 4 5)..') });
    await at.openPlayer();
    await at.page.keyboard.press('Space');
    await at.plays();
    const off = await at.page.evaluate(() => {
      let [elapsed, most, ticks] = [0, 0, 0];
      while (elapsed < 59_900) {
        // Mostly 60 times a second, now and then late by up to half a second.
        const step = ticks % 97 === 96 ? 500 : ticks % 13 === 12 ? 41 : 1000 / 60;
        tick(step);
        elapsed += step;
        ticks += 1;
        const frame = Number(document.querySelector('#picture')!.dataset.frame);
        most = Math.max(most, Math.abs(frame - (Math.floor((elapsed * 24) / 1000 + 1e-6) + 1)));
      }
      return { most, ticks };
    });
    expect(off.most).toBe(0);
    expect(off.ticks).toBeGreaterThan(2000);
    await at.tick(200);
    expect(await at.seen()).toMatchObject({ frame: 1440, playing: false, time: '59+24 (1440)' });
  });

  test('goes a frame to and fro, loops, and plays at other speeds', async () => {
    at = await Played.open(browser, { '1.cut': TWO });
    await at.openPlayer();
    for (const key of ['.', '.', '.', ',']) await at.page.keyboard.press(key as '.');
    expect(await at.seen()).toMatchObject({ frame: 3, time: '0+3 (3)', lit: [3], playing: false });
    await at.page.keyboard.press('l');
    await at.page.click('#play');
    await at.plays();
    await at.tick(1000);
    expect((await at.seen()).frame).toBe(27);
    await at.tick(1000);
    // 2 + 48 frames on: in the second pass.
    expect((await at.seen()).frame).toBe(3);
    await at.page.select('#speed', 'speed ¼');
    await at.tick(1000);
    expect((await at.seen()).frame).toBe(9);
    await at.page.click('#forth');
    expect(await at.seen()).toMatchObject({ frame: 10, playing: false });
  });

  test('leaves the keys of the pages to the pages, and has its own inside', async () => {
    at = await Played.open(browser, { '1.cut': TWO, '2.cut': cut(2, 'time 1+0\nA: 1..') });
    await at.openPlayer();
    await at.page.keyboard.press('ArrowRight');
    await at.page.keyboard.press('ArrowRight');
    await at.page.keyboard.press('ArrowLeft');
    expect((await at.seen()).frame).toBe(2);
    await at.page.focus('#desk');
    await at.page.keyboard.press('ArrowRight');
    expect((await at.seen()).frame).toBe(2);
    // A button that has the keys is pressed by the bar, and nothing plays.
    await at.page.focus('#list button[data-id="c2"]');
    await at.page.keyboard.press('Space');
    await at.sees(() => document.title.includes('Cut 2'));
    expect(await at.seen()).toMatchObject({ playing: false });
    // It is the current one now: there is nothing else for the bar to do.
    await at.page.keyboard.press('Space');
    await at.plays();
    await at.page.keyboard.press('v');
    expect(await at.page.$eval('#player', (one) => one.hasAttribute('hidden'))).toBe(true);
    await at.page.keyboard.press('n');
  });

  test('goes on with a changed text from the same frame, and stays within a shorter one', async () => {
    at = await Played.open(browser, { '1.cut': TWO });
    await at.openPlayer();
    await at.page.keyboard.press('Space');
    await at.plays();
    await at.tick(1500);
    expect((await at.seen()).frame).toBe(37);
    at.save('1.cut', TWO.replace('2+0', '5+0'));
    await at.sees(() => document.querySelector('#along')!.getAttribute('max') === '120');
    expect(await at.seen()).toMatchObject({ frame: 37, playing: true });
    await at.tick(1000);
    expect(await at.seen()).toMatchObject({ frame: 61, playing: true, lit: [61] });
    // While the text is broken the last good one plays.
    at.save('1.cut', TWO.replace('..', ''));
    await at.sees(() => document.querySelector('#desk')!.classList.contains('stale'));
    await at.tick(500);
    expect(await at.seen()).toMatchObject({ frame: 73, playing: true });
    at.save('1.cut', TWO.replace('2+0', '1+0'));
    await at.sees(() => document.querySelector('#along')!.getAttribute('max') === '24');
    expect((await at.seen()).frame).toBe(24);
  });

  test.each(['play', 'episode'])('is not set back by an answer (%s) that takes its time', async (way) => {
    at = await Played.open(browser, { '1.cut': TWO });
    await at.openPlayer();
    if (way === 'episode') {
      await at.page.keyboard.press('e');
      await at.sees(() => document.querySelector('#time')!.textContent.includes('row'));
    }
    await at.page.keyboard.press('Space');
    await at.plays();
    await at.page.setRequestInterception(true);
    const asked = new Promise<() => void>((resolve) => {
      at.page.on('request', (request) => {
        if (request.url().includes(`/${way}/`)) resolve(() => void request.continue());
        else void request.continue();
      });
    });
    at.save('1.cut', TWO.replace('2+0', '5+0'));
    const answer = await asked;
    await at.tick(500, 500);
    expect((await at.seen()).frame).toBe(25);
    answer();
    await at.sees(() => document.querySelector('#along')!.getAttribute('max') === '120');
    expect((await at.seen()).frame).toBe(25);
    await at.tick(500);
    expect((await at.seen()).frame).toBe(37);
  });

  test('stops with a word when its cut is deleted', async () => {
    at = await Played.open(browser, { '1.cut': TWO, '2.cut': cut(2, 'time 1+0\nA: 1..') });
    await at.openPlayer();
    await at.page.keyboard.press('Space');
    await at.plays();
    await at.tick(200);
    at.remove('1.cut');
    await at.plays(false);
    await at.sees(() => document.title.includes('Cut 2'));
    await at.sees(() => document.querySelector('#along')!.getAttribute('max') === '24');
    expect(await at.seen()).toMatchObject({
      playing: false,
      word: 'Cut 1 Slack water 1 is gone: playing has stopped.',
    });
  });

  test('shows the caution before a cut that flashes, and plays it when it is told so once more', async () => {
    at = await Played.open(browser, { '1.cut': cut(1, LIGHTNING) });
    await at.page.keyboard.press('Space');
    await at.sees(() => !document.querySelector('#allow')!.hidden);
    await at.tick(500);
    expect(await at.seen()).toMatchObject({ frame: 1, playing: false });
    expect(await at.page.$eval('#caution-word', (one) => one.textContent)).toMatch(
      /^CAUTION: flashing light can trigger seizures.*broadcaster’s or publisher’s test/,
    );
    await at.page.click('#allow');
    await at.plays();
    await at.tick(500);
    expect((await at.seen()).frame).toBe(13);
    // The word stays beside it.
    expect(await at.page.$eval('#caution', (one) => one.hasAttribute('hidden'))).toBe(false);
  });

  test('plays the episode from cut to cut, and waits before one that flashes', async () => {
    at = await Played.open(browser, {
      'episode.yaml': 'cuts: [ "*.cut" ]\n',
      '1.cut': cut(1, 'time 1+0\nA: 1..\noverlap out 8'),
      '2.cut': cut(2, 'time 1+0\nA: 1..\noverlap in 8'),
      '3.cut': cut(3, LIGHTNING),
    });
    await at.openPlayer();
    await at.page.keyboard.press('e');
    await at.sees(() => document.querySelector('#along')!.getAttribute('max') === '72');
    await at.page.keyboard.press('Space');
    await at.plays();
    await at.tick(500, 500, 250);
    expect(await at.seen()).toMatchObject({ frame: 31, time: '1+7, row 0+11' });
    await at.page.keyboard.press('Space');
    // The pages follow when it stands.
    await at.sees(() => document.title.includes('Cut 2') && document.querySelector('.playing-row') !== null);
    expect(await at.seen()).toMatchObject({ lit: [11] });
    await at.page.keyboard.press('Space');
    await at.plays();
    await at.tick(400, 400, 400);
    expect(await at.seen()).toMatchObject({ frame: 48, playing: false });
    expect(await at.page.$eval('#allow', (one) => one.textContent)).toBe('play Cut 3 Slack water 3');
    await at.page.click('#allow');
    await at.tick(100, 300);
    expect((await at.seen()).frame).toBeGreaterThan(50);
  });

  test('says why cuts make no episode', async () => {
    at = await Played.open(browser, {
      '1.cut': cut(1, 'time 1+0\nA: 1..'),
      '2.cut': cut(2, 'time 1+0\nfps 25\nA: 1..'),
    });
    await at.openPlayer();
    await at.page.keyboard.press('e');
    await at.sees(() => document.querySelector('#player-word')!.textContent !== '');
    expect((await at.seen()).word).toMatch(/25/);
  });

  test.each([
    [1280, 800],
    [390, 844],
  ])(
    'fits a screen of %d × %d without scrolling sideways, and every button has a name',
    async (width, height) => {
      at = await Played.open(browser, { '1.cut': cut(1, LIGHTNING) });
      await at.page.setViewport({ width, height });
      await at.openPlayer();
      expect(await at.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
      const places = await at.page.$$eval(
        '#player button, #player select, #player input, #player canvas',
        (all) =>
          all
            .map((one) => {
              const { left, right, width } = one.getBoundingClientRect();
              const name = (one.textContent || one.getAttribute('aria-label') || '').trim();
              return { left, right, width, name };
            })
            .filter((one) => one.width > 0),
      );
      expect(places.length).toBeGreaterThan(9);
      for (const { left, right, name } of places) {
        expect(name).not.toBe('');
        expect(left).toBeGreaterThanOrEqual(0);
        expect(right).toBeLessThanOrEqual(width);
      }
    },
  );
});
