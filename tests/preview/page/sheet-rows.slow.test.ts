/** The sheet beside the player: rows that are lit, gone to, and drawn over. */

import type { Browser } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { CHROMIUM, type Dom, launch } from '../browser.js';
import { Played } from './played.js';

/** In the browser. */
declare const document: Dom;
declare const innerHeight: number;

const LONG = 'cut 1 "Slack water"\ntime 14+0\nA: on 2 (1 2 3)..\n';

describe.skipIf(CHROMIUM === null)('rows of the sheet', () => {
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

  const middle = (frame: number) =>
    at.page.$eval(`.row[data-frame="${frame}"]`, (row) => {
      row.scrollIntoView({ block: 'center' });
      const { left, top, width, height } = row.getBoundingClientRect();
      return { x: left + width / 3, y: top + height / 2 };
    });
  const isInSight = (frame: number) =>
    at.page.evaluate((wanted) => {
      const { top, bottom } = document.querySelector(`.row[data-frame="${wanted}"]`)!.getBoundingClientRect();
      return top > 0 && bottom < innerHeight;
    }, frame);

  test.each(['japan', 'west'])(
    'are lit in both columns and on all pages of a %s sheet',
    async (convention) => {
      at = await Played.open(browser, {
        'episode.yaml': `convention: ${convention}\ncuts: [ "*.cut" ]\n`,
        '1.cut': LONG,
      });
      await at.openPlayer();
      await at.page.keyboard.press('Space');
      await at.plays();
      let now = 0;
      for (const second of [1, 5, 9, 13]) {
        await at.tick((second - now) * 1000);
        now = second;
        expect(await at.seen()).toMatchObject({ frame: second * 24 + 1, lit: [second * 24 + 1] });
        expect(await isInSight(second * 24 + 1), `second ${second}`).toBe(true);
      }
    },
  );

  test('are gone to by a click, whether it runs or not', async () => {
    at = await Played.open(browser, { '1.cut': LONG });
    await at.openPlayer();
    const far = await middle(200);
    await at.page.mouse.click(far.x, far.y);
    expect(await at.seen()).toMatchObject({ frame: 200, lit: [200], playing: false });
    await at.page.keyboard.press('Space');
    await at.plays();
    const near = await middle(20);
    await at.page.mouse.click(near.x, near.y);
    await at.tick(250);
    expect(await at.seen()).toMatchObject({ frame: 26, playing: true });
  });

  test('that are drawn over are looped, until Escape lets go of them', async () => {
    at = await Played.open(browser, { '1.cut': LONG });
    await at.openPlayer();
    const from = await middle(10);
    const to = await at.page.$eval('.row[data-frame="33"]', (row) => {
      const { left, top, width, height } = row.getBoundingClientRect();
      return { x: left + width / 2, y: top + height / 2 };
    });
    await at.page.mouse.move(from.x, from.y);
    await at.page.mouse.down();
    await at.page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
    await at.page.mouse.move(to.x, to.y, { steps: 4 });
    await at.page.mouse.up();
    const { ranged, frame } = await at.seen();
    expect([ranged[0], ranged.at(-1), ranged.length, frame]).toEqual([10, 33, 24, 10]);
    await at.page.keyboard.press('Space');
    await at.plays();
    await at.tick(1250);
    expect((await at.seen()).frame).toBe(16);
    await at.page.keyboard.press('Escape');
    expect((await at.seen()).ranged).toEqual([]);
    await at.tick(1000);
    expect((await at.seen()).frame).toBe(40);
  });

  test('are taken as a range from here to there by keys, as on a telephone', async () => {
    at = await Played.open(browser, { '1.cut': LONG });
    await at.openPlayer();
    for (let i = 0; i < 4; i++) await at.page.keyboard.press('.');
    await at.page.keyboard.press('[');
    for (let i = 0; i < 4; i++) await at.page.keyboard.press('.');
    await at.page.keyboard.press(']');
    expect((await at.seen()).ranged).toEqual([5, 6, 7, 8, 9]);
    await at.page.click('#all');
    expect((await at.seen()).ranged).toEqual([]);
  });
});
