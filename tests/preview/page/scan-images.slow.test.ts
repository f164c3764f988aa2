/** Scans in the player: those that are there, come, go, and cannot be read. */

import type { Browser } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { CHROMIUM, launch } from '../browser.js';
import { plainScan } from './plain-scan.js';
import { Played } from './played.js';

/** In the browser. */
declare const document: { querySelector(selector: string): Canvas };
declare const dispatchEvent: (event: unknown) => void;
interface Canvas {
  readonly width: number;
  readonly height: number;
  toDataURL(): string;
  getContext(kind: '2d'): { getImageData(...box: number[]): { data: number[] } };
}

const FILES = {
  'episode.yaml': 'drawings: "scans/{level}{number}.png"\ncuts: [ "*.cut" ]\n',
  '1.cut': 'cut 1\ntime 1+0\nA: 1:12 2..\n',
};

describe.skipIf(CHROMIUM === null)('a scan', () => {
  let browser: Browser;
  let at: Played;

  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());
  afterEach(async () => {
    await at.close();
    expect(at.faults.filter((fault) => !/404/.test(fault))).toEqual([]);
  });

  const becomes = (...wanted: readonly number[]) =>
    at.sees(
      ((r: number, g: number, b: number) => {
        const canvas = document.querySelector('#picture');
        const { data } = canvas.getContext('2d').getImageData(canvas.width - 12, canvas.height - 12, 1, 1);
        // The pale sheet of the background shows through.
        return Math.abs(data[0]! - r) + Math.abs(data[1]! - g) + Math.abs(data[2]! - b) < 30;
      }) as never,
      ...wanted,
    );

  test('is shown in place of the sheet that stands for it', async () => {
    at = await Played.open(browser, { ...FILES, 'scans/A1.png': plainScan(0, 160, 0) });
    await at.openPlayer();
    await becomes(0, 160, 0);
  });

  test('that comes while the page is open is there when somebody looks again', async () => {
    at = await Played.open(browser, { ...FILES, 'scans/A1.png': plainScan(0, 160, 0) });
    await at.openPlayer();
    await becomes(0, 160, 0);
    at.save('scans/A1.png', plainScan(200, 0, 200));
    await at.page.evaluate(() => dispatchEvent(new Event('focus')));
    await becomes(200, 0, 200);
  });

  test('that cannot be read leaves its sheet, with the name of the file', async () => {
    at = await Played.open(browser, FILES);
    await at.openPlayer();
    const picture = () => at.page.evaluate(() => document.querySelector('#picture').toDataURL());
    const without = await picture();
    at.save('scans/A1.png', plainScan(0, 160, 0).subarray(0, 60));
    await at.page.evaluate(() => dispatchEvent(new Event('focus')));
    await at.sees(
      ((before: string) => document.querySelector('#picture').toDataURL() !== before) as never,
      without,
    );
    const { data } = await at.page.evaluate(() => {
      const canvas = document.querySelector('#picture');
      return { data: [...canvas.getContext('2d').getImageData(8, 8, 1, 1).data] };
    });
    // The pale sheet, not black and not green.
    expect(Math.min(...data.slice(0, 3))).toBeGreaterThan(200);
  });
});
