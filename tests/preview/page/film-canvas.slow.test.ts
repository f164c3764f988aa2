/** What the player's canvas shows, pixel by pixel, in Chromium. */

import type { Browser } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { CHROMIUM, launch } from '../browser.js';
import { plainScan } from './plain-scan.js';
import { Played } from './played.js';

/** In the browser. */
declare const document: { querySelector(selector: string): Canvas };
interface Canvas {
  readonly width: number;
  readonly height: number;
  toDataURL(): string;
  getContext(kind: '2d'): { getImageData(...box: number[]): { data: number[] } };
}

describe.skipIf(CHROMIUM === null)('the picture', () => {
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

  const picture = () => at.page.evaluate(() => document.querySelector('#picture').toDataURL());
  /** The colour in a corner, where no number stands. */
  const colour = () =>
    at.page.evaluate(() => {
      const canvas = document.querySelector('#picture');
      const { data } = canvas.getContext('2d').getImageData(canvas.width - 12, canvas.height - 12, 1, 1);
      return [...data].slice(0, 3);
    });
  const becomes = (wanted: readonly number[]) =>
    at.sees(
      ((r: number, g: number, b: number) => {
        const canvas = document.querySelector('#picture');
        const { data } = canvas.getContext('2d').getImageData(canvas.width - 12, canvas.height - 12, 1, 1);
        return Math.abs(data[0]! - r) + Math.abs(data[1]! - g) + Math.abs(data[2]! - b) < 9;
      }) as never,
      ...wanted,
    );

  test('is that of the drawing which the sheet has on that row', async () => {
    at = await Played.open(browser, { '1.cut': 'cut 1\ntime 1+0\nA: on 2 (1 2)..\n' });
    await at.openPlayer();
    await at.page.evaluate(async () => {
      await (document as unknown as { fonts: { ready: Promise<unknown> } }).fonts.ready;
    });
    const rows: string[] = [];
    for (let row = 1; row <= 5; row++) {
      rows.push(await picture());
      await at.page.keyboard.press('.');
    }
    expect(rows[1]).toBe(rows[0]);
    expect(rows[2]).not.toBe(rows[0]);
    expect(rows[3]).toBe(rows[2]);
    expect(rows[4]).toBe(rows[0]);
  });

  test('is mixed of both cuts in a dissolve', async () => {
    const cut = (number: number, overlap: string) =>
      `cut ${number}\ntime 1+0\nstack BG A\nA: x..\nlevel BG picture "${number}.png"\n${overlap}\n`;
    at = await Played.open(browser, {
      'episode.yaml': 'cuts: [ "*.cut" ]\n',
      '1.cut': cut(1, 'overlap out 8'),
      '2.cut': cut(2, 'overlap in 8'),
      '1.png': plainScan(240, 0, 0),
      '2.png': plainScan(0, 0, 240),
    });
    await at.openPlayer();
    await becomes([240, 0, 0]);
    await at.page.keyboard.press('e');
    await at.sees((() => (document as unknown as { title: string }).title !== '') as never);
    await at.page.focus('#picture');
    await at.page.keyboard.press('End');
    await becomes([0, 0, 240]);
    await at.page.$eval('#along', (one) => {
      const input = one as unknown as { value: string; dispatchEvent(event: unknown): void };
      input.value = '24';
      input.dispatchEvent(new Event('input'));
    });
    await at.waitsFor(24);
    const [red, green, blue] = await colour();
    // Frame 24 is the fourth of eight: the incoming cut has between three and five ninths of it.
    expect(green).toBeLessThan(5);
    expect(red! + blue!).toBeGreaterThan(230);
    expect(red! + blue!).toBeLessThan(250);
    expect(blue! / 240).toBeGreaterThan(0.33);
    expect(blue! / 240).toBeLessThan(0.6);
  });
});
