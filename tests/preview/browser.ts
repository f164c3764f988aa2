/** A real browser on the live view of a watch, where there is one: Debian's Chromium. */

import { existsSync } from 'node:fs';
import puppeteer, { type Browser, type Page } from 'puppeteer-core';

export const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync) ?? null;

if (CHROMIUM === null) console.warn('skipped: the live view in a browser, since Chromium is not installed');

/** root may not run it in its own sandbox. */
export function launch(): Promise<Browser> {
  return puppeteer.launch({
    executablePath: CHROMIUM!,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--force-color-profile=srgb'],
    timeout: 100_000,
    protocolTimeout: 110_000,
  });
}

/** A page that fails the test where its program does, or where the policy of the server forbids something. */
export async function open(browser: Browser, url: string): Promise<{ page: Page; faults: string[] }> {
  const page = await browser.newPage();
  page.setDefaultTimeout(100_000);
  const faults: string[] = [];
  page.on('pageerror', (fault) => faults.push(String(fault)));
  page.on('console', (message) => {
    if (message.type() === 'error' || /Content Security Policy/.test(message.text()))
      faults.push(message.text());
  });
  await page.setViewport({ width: 1400, height: 900 });
  await page.goto(url);
  return { page, faults };
}

/** As much of the browser's document as the tests ask for; what is evaluated in it is typed by this. */
export interface Dom {
  readonly title: string;
  readonly activeElement: Node | null;
  querySelector(selector: string): Node | null;
  querySelectorAll(selector: string): readonly Node[];
}
export interface Node {
  readonly textContent: string;
  readonly hidden: boolean;
  readonly dataset: Readonly<Record<string, string>>;
  readonly classList: { contains(name: string): boolean };
  scrollTop: number;
  setAttribute(name: string, value: string): void;
  getAttribute(name: string): string | null;
  hasAttribute(name: string): boolean;
  getBoundingClientRect(): { readonly top: number; readonly bottom: number; readonly width: number };
}
