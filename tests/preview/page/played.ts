/** A watch, a browser on its live view, and the clock of its player in the hands of the test. */

import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { freshFolder, Watch } from '../../watch/watch.js';
import { type Dom, open } from '../browser.js';

/** In the browser. */
declare const document: Dom;
declare let performance: { now: () => number };
declare let requestAnimationFrame: (act: (now: number) => void) => number;
declare const tick: (ms: number) => void;

export interface Seen {
  readonly frame: number;
  readonly time: string;
  readonly playing: boolean;
  /** Rows of the sheet that are lit, and those that are played. */
  readonly lit: readonly number[];
  readonly ranged: readonly number[];
  readonly word: string;
  readonly title: string;
}

export class Played {
  private constructor(
    readonly folder: string,
    readonly watch: Watch,
    readonly page: Page,
    readonly faults: string[],
    readonly url: string,
  ) {}

  /** `own`: the browser's clock is left alone. */
  static async open(
    browser: Browser,
    files: Readonly<Record<string, string | Uint8Array>>,
    { own = false, first = '' } = {},
  ): Promise<Played> {
    const folder = freshFolder();
    for (const [name, text] of Object.entries(files)) write(folder, name, text);
    const watch = await new Watch(folder, ['.'], {}, { port: 0 }).ready();
    await watch.hears(/^the pages are shown at /);
    const url = /shown at (\S+)/.exec(watch.said)![1]!;
    const { page, faults } = await open(browser, 'about:blank');
    if (!own) await page.evaluateOnNewDocument(drive);
    await page.goto(`${url}${first}`);
    const all = new Played(folder, watch, page, faults, url);
    await all.sees(() => document.querySelectorAll('#pages svg').length > 0);
    return all;
  }

  async close(): Promise<void> {
    await this.page.close();
    await this.watch.end();
    rmSync(this.folder, { recursive: true, force: true });
  }

  save(name: string, text: string | Uint8Array): void {
    write(this.folder, name, text);
  }

  remove(name: string): void {
    rmSync(join(this.folder, name));
  }

  sees(what: (...more: never[]) => unknown, ...more: unknown[]): Promise<unknown> {
    return this.page.waitForFunction(what as () => unknown, { polling: 30 }, ...(more as []));
  }

  /** Opens the player; it stands on the first frame. */
  async openPlayer(): Promise<void> {
    await this.page.click('#view');
    await this.sees(() => document.querySelector('#picture')!.dataset.frame !== undefined);
  }

  /** The player's clock goes on by so many milliseconds, and the screen is drawn once. */
  async tick(...steps: readonly number[]): Promise<void> {
    await this.page.evaluate((all) => {
      for (const step of all) tick(step);
    }, steps as number[]);
  }

  /** Waits until it plays, or no more. */
  async plays(wanted = true): Promise<void> {
    await this.sees(
      ((word: string) => document.querySelector('#play')!.textContent === word) as never,
      wanted ? 'stop' : 'play',
    );
  }

  async waitsFor(frame: number): Promise<void> {
    await this.sees(
      ((wanted: string) => document.querySelector('#picture')!.dataset.frame === wanted) as never,
      String(frame),
    );
  }

  seen(): Promise<Seen> {
    return this.page.evaluate(() => {
      const rows = (name: string) => [
        ...new Set([...document.querySelectorAll(name)].map((row) => Number(row.dataset.frame))),
      ];
      const text = (name: string) => document.querySelector(name)!.textContent;
      return {
        frame: Number(document.querySelector('#picture')!.dataset.frame),
        time: text('#time'),
        playing: text('#play') === 'stop',
        lit: rows('.playing-row'),
        ranged: rows('.row.ranged'),
        word: text('#player-word'),
        title: text('#title'),
      };
    });
  }
}

function write(folder: string, name: string, text: string | Uint8Array): void {
  mkdirSync(dirname(join(folder, name)), { recursive: true });
  writeFileSync(join(folder, name), text);
}

function drive(): void {
  let now = 5000;
  let waiting: ((now: number) => void)[] = [];
  performance.now = () => now;
  requestAnimationFrame = (act) => waiting.push(act);
  (globalThis as unknown as { tick: (ms: number) => void }).tick = (ms) => {
    now += ms;
    const due = waiting;
    waiting = [];
    for (const act of due) act(now);
  };
}
