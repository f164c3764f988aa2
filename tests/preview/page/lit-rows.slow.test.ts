/** Between the rows of the sheet and the text: rows of the item at the cursor, and from a press on a row to its place. */

import type { Browser } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { CHROMIUM, type Dom, launch } from '../browser.js';
import { Played } from './played.js';

/** In the browser. */
declare const document: Dom;

const CUT = 'cut 1 "Slack water"\ntime 3+0\nA: 1:24 2..\nB: x:24 5..\nnote 2+12 "turns"\n';

describe.skipIf(CHROMIUM === null)('rows and text', () => {
  let browser: Browser;
  let at: Played;

  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());
  afterEach(async () => {
    await at.close();
    // A row of which the text says nothing is answered by 404.
    expect(at.faults.filter((one) => !one.includes('404'))).toEqual([]);
  });

  /** The middle of what lies over a row, or of the row's left edge (its number). */
  const middle = (selector: string, share = 0.5) =>
    at.page.$eval(
      selector,
      (one, part) => {
        one.scrollIntoView({ block: 'center' });
        const { left, top, width, height } = one.getBoundingClientRect();
        return { x: left + width * part, y: top + height / 2 };
      },
      share,
    );
  const place = () =>
    at.page.$eval('#source', (one) => (one as unknown as { dataset: { place: string } }).dataset.place);

  test('the cursor lights the rows of its item, and the drawing in the column of its level', async () => {
    at = await Played.open(browser, { '1.cut': CUT });
    const light = async (line: number, column: number) => {
      await fetch(`${at.url}at?file=1.cut&line=${line}&column=${column}`);
    };
    await light(3, 4);
    await at.sees(() => document.querySelectorAll('.row.lit').length === 24);
    const items = await at.page.$$eval('.lit-item', (all) => all.map((one) => one.getAttribute('x')));
    // Each level has its column, and the one for finished cels where the form has it.
    expect(items.length).toBe(24 * new Set(items).size);
    await light(4, 9);
    await at.sees(() => document.querySelectorAll('.row.lit').length === 48);
    const others = await at.page.$$eval('.lit-item', (all) => all.map((one) => one.getAttribute('x')));
    expect(others.some((x) => items.includes(x))).toBe(false);
    // A note stands in no column.
    await light(5, 3);
    await at.sees(() => document.querySelectorAll('.row.lit').length === 1);
    expect(await at.page.$$('.lit-item')).toEqual([]);
    await at.page.keyboard.press('Escape');
    await at.sees(() => document.querySelector('.row.lit') === null);
  });

  test('a press on a drawing leads to its place in the text, and tells the editors', async () => {
    at = await Played.open(browser, { '1.cut': CUT });
    await fetch(`${at.url}at?file=1.cut&line=3&column=9`);
    await at.sees(() => document.querySelectorAll('.row.lit').length === 48);
    const there = await middle('.lit-item');
    const ended = new AbortController();
    const events = await fetch(`${at.url}events`, { signal: ended.signal });
    await at.page.mouse.click(there.x, there.y);
    await at.sees(() => !document.querySelector('#source')!.hidden);
    expect(await place()).toBe('1.cut:3:9');
    expect(await at.page.$eval('#source code', (one) => one.innerHTML)).toBe('A: 1:24 <mark>2..</mark>');
    let heard = '';
    for await (const chunk of events.body!) {
      heard += Buffer.from(chunk).toString('utf8');
      if (/event: source\ndata: .*\n\n/.test(heard)) break;
    }
    ended.abort();
    expect(heard).toContain('{"file":"1.cut","line":3,"column":9,"text":"A: 1:24 2.."}');
    await at.page.keyboard.press('Escape');
    expect(await at.page.$eval('#source', (one) => one.hasAttribute('hidden'))).toBe(true);
  });

  test('the key for it leads to the text of the row that is lit, or at which the player stands', async () => {
    at = await Played.open(browser, { '1.cut': CUT });
    await fetch(`${at.url}at?file=1.cut&line=4&column=9`);
    await at.sees(() => document.querySelectorAll('.row.lit').length === 48);
    await at.page.keyboard.press('t');
    await at.sees(() => !document.querySelector('#source')!.hidden);
    expect(await place()).toBe('1.cut:4:9');
    await at.openPlayer();
    // The player knows its row a moment after its first picture is there.
    const pressed = async () => {
      await at.page.keyboard.press('t');
      return place();
    };
    await expect.poll(pressed, { timeout: 60_000, interval: 500 }).toBe('1.cut:3:4');
  });
});
