/** A page is exchanged mark by mark: what a save leaves alone stays the same element. */

import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CHROMIUM, launch, type Node } from '../browser.js';
import { Played } from './played.js';

/** In the browser. */
interface Marks extends Node {
  readonly children: readonly (Node & { old?: boolean })[];
  isEqualNode(other: unknown): boolean;
}
declare const document: { querySelector(selector: string): Marks | null };
declare const DOMParser: new () => {
  parseFromString(text: string, type: string): { documentElement: Marks };
};
declare const fetch: (path: string) => Promise<{ text(): Promise<string> }>;
declare const location: { readonly hash: string };

const cut = (memo: string) => `cut 1 "Slack water"\ntime 3+0\nA: 1:24 2..\nmemo "${memo}"\n`;

/** Whether the first page is what the server gives for it now, and how many of its marks are old. */
const drawn = ({ page }: Played) =>
  page.evaluate(async () => {
    const figure = document.querySelector('#pages figure')!;
    const served = await fetch(`page/${location.hash.slice(1)}/${figure.dataset.key}`);
    const fresh = new DOMParser().parseFromString(await served.text(), 'image/svg+xml').documentElement;
    const marks = document.querySelector('#pages svg g')!;
    return {
      equal: marks.isEqualNode(fresh.children[0]),
      kept: [...marks.children].filter(({ old }) => old).length,
      all: marks.children.length,
    };
  });

describe.skipIf(CHROMIUM === null)('a page that is exchanged', () => {
  let browser: Browser;

  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  test.each([
    ['another word', 'wait for the tide'],
    ['more lines', 'first the tide\nthen the ferry, and the whole of the crew with it'],
    ['fewer letters', 'x'],
  ])('becomes what the server gives, and keeps what is alike: %s', async (_, memo) => {
    const at = await Played.open(browser, { '1.cut': cut('wait for the wind') });
    await at.page.evaluate(() => {
      for (const mark of document.querySelector('#pages svg g')!.children) mark.old = true;
    });
    const key = await at.page.$eval('#pages figure', (one) => (one as unknown as Node).dataset.key!);
    at.save('1.cut', cut(memo.replaceAll('\n', '\\n')));
    await at.sees((before: string) => document.querySelector('#pages figure')!.dataset.key !== before, key);
    const { equal, kept, all } = await drawn(at);
    expect(equal).toBe(true);
    expect(kept).toBeGreaterThan(all * 0.8);
    await at.close();
    expect(at.faults).toEqual([]);
  });

  test('is the last one of saves that follow each other at once, with a broken text among them', async () => {
    const at = await Played.open(browser, { '1.cut': cut('a') });
    const last = cut('the last').replace('1:24 2..', '1:12 2:6 3..');
    for (const text of [
      cut('b'),
      cut('c').replace('2..', '2'),
      cut('a'),
      cut('d').replace('1:24', 'x:24 1'),
      last,
    ]) {
      at.save('1.cut', text);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    await at.sees(() => document.querySelector('#pages svg')!.textContent!.includes('the last'));
    await at.sees(() => !document.querySelector('#desk')!.classList.contains('stale'));
    expect((await drawn(at)).equal).toBe(true);
    // Back to a text that was there before, with the stamp that it had.
    at.save('1.cut', cut('a'));
    await at.sees(() => !document.querySelector('#pages svg')!.textContent!.includes('the last'));
    expect((await drawn(at)).equal).toBe(true);
    await at.close();
    expect(at.faults).toEqual([]);
  });
});
