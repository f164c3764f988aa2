/** The site made of the pages: opened from its folder in a real browser, where there is one. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CHROMIUM, launch, open } from './preview/browser.js';

describe.skipIf(CHROMIUM === null)('the site', () => {
  let browser: Browser;
  let folder: string;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'cutwright-site-'));
    execFileSync(process.execPath, ['scripts/site/make.mjs', folder]);
    browser = await launch();
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('shows a page with its picture, and its links lead on', async () => {
    const { page, faults } = await open(browser, `file://${folder}/grammar/index.html`);
    expect(await page.title()).toBe('The cut language');
    await Promise.all([page.waitForNavigation(), page.click('main a[href="timeline.html"]')]);
    expect(await page.title()).toBe('Timelines');
    const drawn = await page.$$eval('main img', (images) =>
      images.map((image) => (image as unknown as { naturalWidth: number }).naturalWidth),
    );
    expect(drawn.length).toBeGreaterThan(0);
    expect(drawn.filter((width) => width === 0)).toEqual([]);
    await Promise.all([page.waitForNavigation(), page.click('main a[href="statements/on.html"]')]);
    expect(await page.$eval('h1', (heading) => heading.textContent)).toBe('on');
    expect(faults).toEqual([]);
    await page.close();
  });

  test.each([
    ['truck', 'grammar/statements/truck.html', 'truck'],
    ['引き', 'grammar/glossary.html', 'Camera'],
    ['timeline-sh', 'grammar/messages.html', 'timeline-short'],
  ])('finds %s', async (asked, target, title) => {
    const { page, faults } = await open(browser, `file://${folder}/grammar/charts.html`);
    await page.type('input[type=search]', asked);
    await page.waitForSelector('#found li a');
    await page.waitForFunction(
      `[...document.querySelectorAll('#found a')].some(({ href, textContent }) => href.includes(${JSON.stringify(target)}) && textContent === ${JSON.stringify(title)})`,
    );
    const [link] = await page.$$('#found a');
    await Promise.all([page.waitForNavigation(), link!.click()]);
    expect(await page.$eval('main', (main) => main.textContent)).toContain(asked);
    expect(faults).toEqual([]);
    await page.close();
  });
});
