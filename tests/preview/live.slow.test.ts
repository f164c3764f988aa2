/** The live view as a person sees it: a watch over real files, in Chromium. */

import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { freshFolder, Watch } from '../watch/watch.js';
import { CHROMIUM, type Dom, launch, type Node, open } from './browser.js';

/** In the browser. */
declare const document: Dom;
declare const innerHeight: number;

/** Two pages of sheet: twelve seconds, six a page. */
const LONG = (tail: string) => `cut 1 "Slack water"
time 12+0
A: 1:6+0
  ${tail}
memo "first"
`;
const SHORT = 'cut 2 "Tide"\ntime 1+0\nA: 1--2..\nB: x..\nfield N 60%\ntruck full@1 > N@1+0\n';

describe.skipIf(CHROMIUM === null)('the live view', () => {
  let browser: Browser;
  let folder: string;
  let watch: Watch;
  let page: Page;
  let faults: string[];
  let url: string;

  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());
  beforeEach(async () => {
    folder = freshFolder();
    save('1.cut', LONG('2..'));
    save('2.cut', SHORT);
    watch = await new Watch(folder, ['.'], {}, { port: 0 }).ready();
    await watch.hears(/^the pages are shown at /);
    url = /shown at (\S+)/.exec(watch.said)![1]!;
    ({ page, faults } = await open(browser, url));
    await sees(() => document.querySelectorAll('#pages svg').length > 1);
  });
  afterEach(async () => {
    await page.close();
    await watch.end();
    rmSync(folder, { recursive: true, force: true });
    expect(faults).toEqual([]);
  });

  const save = (name: string, text: string) => writeFileSync(join(folder, name), text);
  const sees = (what: () => unknown) => page.waitForFunction(what, { polling: 30 });
  /** Puts a sign on every page as it stands, and later tells which have been exchanged. */
  const sign = () =>
    page.evaluate(() => {
      for (const one of document.querySelectorAll('#pages figure'))
        one.setAttribute('data-signed', one.dataset.key!);
    });
  const exchanged = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('#pages figure')].map(({ dataset }) => dataset.signed !== dataset.key),
    );
  const scrolled = () => page.evaluate(() => document.querySelector('#desk')!.scrollTop);

  test('lists the cuts, and shows the pages of the first one in their order', async () => {
    const list = await page.$$eval('#list .name', (all) => all.map((one) => one.textContent));
    expect(list).toEqual(['Slack water', 'Tide']);
    const labels = await page.$$eval('figcaption', (all) => all.map((one) => one.textContent));
    expect(labels.slice(0, 2)).toEqual(['Cut 1: sheet, page 1', 'Cut 1: sheet, page 2']);
    expect(await page.title()).toContain('Cut 1');
    await page.keyboard.press('n');
    await sees(
      () => document.title.includes('Cut 2') && document.querySelector('[data-part="camera"] svg') !== null,
    );
  });

  test('shows the first cut where the address is cut off in the middle of a name', async () => {
    const second = await open(browser, `${url}#%E5%B1`);
    await second.page.waitForFunction(() => document.querySelectorAll('#pages svg').length > 1, {
      polling: 30,
    });
    expect(await second.page.title()).toContain('Cut 1');
    await second.page.close();
    expect(second.faults).toEqual([]);
  });

  test('exchanges exactly the page that a save changes, and stays where it is', async () => {
    await page.evaluate(() => {
      document.querySelector('#desk')!.scrollTop = 700;
    });
    const before = await scrolled();
    expect(before).toBeGreaterThan(600);
    await sign();
    const stamp = await page.evaluate(
      () => document.querySelector('#pages svg')!.textContent!.match(/[0-9a-f]{8,}/)?.[0],
    );
    save('1.cut', LONG('2:3+0 1..'));
    await sees(() =>
      [...document.querySelectorAll('#pages figure')].some(({ dataset }) => dataset.signed !== dataset.key),
    );
    await watch.hears(/^12:03:07 1\.cut → /, 2);
    const pages = await exchanged();
    expect(pages.slice(0, 2)).toEqual([false, true]);
    expect(await scrolled()).toBe(before);
    // The page that stays is of the newer text, too, and says so at its foot.
    await page.waitForFunction(
      (old) => !document.querySelector('#pages svg')!.textContent!.includes(old!),
      { polling: 30 },
      stamp,
    );
    expect(stamp).toBeTruthy();
  });

  test('keeps the last good pages greyed while the text is broken, and shows the line', async () => {
    await sign();
    save('1.cut', LONG('2'));
    await sees(() => !document.querySelector('#problems')!.hidden);
    await sees(() => document.querySelector('#desk')!.classList.contains('stale'));
    expect(await exchanged()).not.toContain(true);
    expect(await page.$eval('#word', (one) => one.textContent)).toBe(
      '1 error in the text: these are the last good pages',
    );
    expect(await page.$eval('#problems .place', (one) => one.textContent)).toBe('1.cut, line 4');
    expect(await page.$eval('#problems details', (one) => one.hasAttribute('open'))).toBe(false);
    await page.click('#problems summary');
    expect(await page.$eval('#problems pre .here', (one) => one.textContent)).toBe('  2');
    expect(await page.$eval('#list .broken .mark', (one) => one.textContent)).toBe('!');
    save('1.cut', LONG('2..'));
    await sees(() => !document.querySelector('#desk')!.classList.contains('stale'));
    await sees(() => document.querySelector('#problems')!.hidden);
    expect(await exchanged()).not.toContain(true);
  });

  test('marks the rows of the line that is edited, and goes there', async () => {
    const answer = await fetch(`${url}at?file=1.cut&line=4`);
    const rows = { from: 145, to: 288 };
    expect(await answer.json()).toEqual({
      line: 4,
      cuts: [{ id: 'c1', frames: [rows], items: [{ level: 'A', ...rows }] }],
    });
    await sees(() => document.querySelectorAll('.row.lit').length === 144);
    const lit = await page.$$eval('.row.lit', (all) => all.map((one) => Number((one as Node).dataset.frame)));
    expect([Math.min(...lit), Math.max(...lit)]).toEqual([145, 288]);
    await sees(() => {
      const { top, bottom } = document.querySelector('.row.lit[data-frame="145"]')!.getBoundingClientRect();
      return top > 0 && bottom < innerHeight;
    });
    // Another cut's line brings that cut.
    await fetch(`${url}at`, {
      method: 'POST',
      body: new URLSearchParams({ file: join(folder, '2.cut'), line: '6' }),
    });
    await sees(() => document.title.includes('Cut 2') && document.querySelectorAll('.row.lit').length === 24);
    await page.keyboard.press('Escape');
    await sees(() => document.querySelector('.row.lit') === null);
  });

  test('keeps the size that was chosen, also for other cuts', async () => {
    await page.keyboard.press('1');
    const width = () => page.$eval('figure', (one) => Math.round(one.getBoundingClientRect().width));
    // CSS: 96 px an inch.
    expect(await width()).toBe(Math.round((210 * 96) / 25.4));
    await page.keyboard.press('n');
    await sees(() => document.title.includes('Cut 2') && document.querySelector('#pages svg') !== null);
    expect(await width()).toBe(Math.round((210 * 96) / 25.4));
    await page.reload();
    await sees(() => document.title.includes('Cut 2') && document.querySelector('#pages svg') !== null);
    expect(await width()).toBe(Math.round((210 * 96) / 25.4));
  });

  test('is at the place where it was after a reload, cut by cut', async () => {
    await page.evaluate(() => {
      document.querySelector('#desk')!.scrollTop = 640;
    });
    await page.keyboard.press('n');
    await sees(() => document.title.includes('Cut 2') && document.querySelector('#pages svg') !== null);
    await sees(() => document.querySelector('#desk')!.scrollTop === 0);
    await page.evaluate(() => {
      document.querySelector('#desk')!.scrollTop = 320;
    });
    await page.reload();
    await sees(() => document.title.includes('Cut 2') && document.querySelector('#desk')!.scrollTop === 320);
    await page.keyboard.press('p');
    await sees(() => document.title.includes('Cut 1') && document.querySelector('#desk')!.scrollTop === 640);
  });

  test('lists the cuts that fit what is typed, and goes through those', async () => {
    const listed = () => page.$$eval('#list .name', (all) => all.map((one) => one.textContent));
    await page.keyboard.press('/');
    await page.keyboard.type('ＴＩＤ 2');
    expect(await listed()).toEqual(['Tide']);
    expect(await page.title()).toContain('Cut 1');
    await page.keyboard.press('Enter');
    await sees(() => document.title.includes('Cut 2'));
    await page.keyboard.press('p');
    expect(await page.title()).toContain('Cut 2');
    await page.keyboard.press('/');
    await page.keyboard.type('x');
    expect([await listed(), await page.$eval('#no-cut', (one) => one.hasAttribute('hidden'))]).toEqual([
      [],
      false,
    ]);
    await page.keyboard.press('Escape');
    expect(await listed()).toEqual(['Slack water', 'Tide']);
    expect(await page.$eval('#no-cut', (one) => one.hasAttribute('hidden'))).toBe(true);
  });

  test('fits a page to the window, upright or lying, and back to true size', async () => {
    await page.keyboard.press('n');
    await sees(() => document.querySelector('[data-part="camera"] svg') !== null);
    const sizes = () =>
      page.$$eval('figure', (all) =>
        all.map((one) => {
          const { width, height } = one.getBoundingClientRect();
          return [width, height].map(Math.round);
        }),
      );
    const [deskWidth, deskHeight] = await page.$eval('#desk', (one) => [one.clientWidth, one.clientHeight]);
    await page.keyboard.press('f');
    for (const [width, height] of await sizes()) {
      expect(width).toBeLessThan(deskWidth!);
      expect(height).toBeLessThan(deskHeight!);
      // As large as it may be in one of the two.
      expect(width! > deskWidth! - 50 || height! > deskHeight! - 90).toBe(true);
    }
    expect(await page.$eval('#whole', (one) => one.getAttribute('aria-pressed'))).toBe('true');
    await page.keyboard.press('f');
    // CSS: 96 px an inch.
    expect((await sizes())[0]![0]).toBe(Math.round((210 * 96) / 25.4));
    expect(await page.$eval('#whole', (one) => one.getAttribute('aria-pressed'))).toBe('false');
  });

  test('has a name for each page, which Tab reaches and the arrows turn', async () => {
    const names = await page.$$eval('#pages svg', (all) =>
      all.map((one) => `${one.getAttribute('role')} ${one.getAttribute('aria-label')}`),
    );
    const count = names.length;
    expect(names.slice(0, 2)).toEqual([
      `img Cut 1: sheet, page 1; 1 of ${count} pages`,
      `img Cut 1: sheet, page 2; 2 of ${count} pages`,
    ]);
    await page.focus('#keys');
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? null);
    await page.keyboard.press('Tab');
    expect(await focused()).toBe(names[0]!.slice(4));
    await page.keyboard.press('ArrowRight');
    expect(await focused()).toBe(names[1]!.slice(4));
  });

  test('takes in a new cut and lets go of one that is deleted', async () => {
    save('3.cut', SHORT.replace('cut 2 "Tide"', 'cut 3 "Mud"'));
    await sees(() => document.querySelectorAll('#list button').length === 3);
    rmSync(join(folder, '1.cut'));
    await sees(
      () => document.querySelectorAll('#list button').length === 2 && document.title.includes('Cut 2'),
    );
  });

  test('says when the watch has ended', async () => {
    await watch.end();
    await sees(() => document.querySelector('#word')!.textContent!.startsWith('The watch has ended'));
    faults.length = 0;
  });

  test('prints each page on paper of its size, in its true size, upright and lying', async () => {
    await page.keyboard.press('n');
    await sees(() => document.querySelector('[data-part="camera"] svg') !== null);
    const wanted = await page.$$eval('figure', (all) =>
      all.map((one) => {
        const { width, height } = one.querySelector('svg')!.viewBox.baseVal;
        const sizes = [...one.querySelectorAll('text')].map((text) => Number(text.getAttribute('font-size')));
        return { size: [width, height], largest: Math.max(...sizes) };
      }),
    );
    // A sheet upright, and a chart that lies.
    expect(new Set(wanted.map(({ size: [width, height] }) => width! < height!)).size).toBe(2);
    const bytes = await page.pdf({ preferCSSPageSize: true });
    const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
    const printed = await getDocument({ data: bytes }).promise;
    const found = [];
    for (let i = 1; i <= printed.numPages; i++) {
      const one = await printed.getPage(i);
      const { width, height } = one.getViewport({ scale: 25.4 / 72 });
      const { items } = await one.getTextContent();
      const sizes = items.flatMap((item) =>
        'transform' in item ? [(Math.hypot(item.transform[2], item.transform[3]) * 25.4) / 72] : [],
      );
      found.push({ size: [Math.round(width), Math.round(height)], largest: Math.max(...sizes) });
    }
    expect(found.map(({ size }) => size)).toEqual(wanted.map(({ size }) => size.map(Math.round)));
    for (const [i, { largest }] of found.entries())
      expect(largest / wanted[i]!.largest, `page ${i + 1}`).toBeCloseTo(1, 2);
  });
});
