/** How far a long run is: a bar on a terminal, a line now and then elsewhere. */

import type { Progress } from '../build/build-run.js';
import type { Host } from '../host/host.js';
import type { Activity, RunTexts } from '../language/catalogue/catalogue-entry.js';
import { runTexts } from '../language/message.js';
import { displayWidth } from '../language/source.js';
import { userLanguage } from '../language/user-language.js';

/** Where there is no terminal, a line is said each time so many are done. */
const LINE_EVERY = { cuts: 100, frames: 500 };
const WIDEST = 40;

/**
 * Watches a run. All that is said must go through `host`, which takes the bar away first and draws it again below. The bar is
 * drawn when a cut is begun, never by the clock.
 */
export class ProgressBar implements Progress {
  readonly host: Host;
  private bar = '';
  private done = 0;
  private total = 0;
  private activity: Activity = 'printing';
  private readonly words: RunTexts;

  /** `quiet`: a program reads what is said. */
  constructor(
    private readonly world: Host,
    private readonly quiet: boolean,
    private readonly unit: keyof typeof LINE_EVERY = 'cuts',
  ) {
    this.words = runTexts(userLanguage(world));
    const around = (say: () => void): void => {
      const { bar } = this;
      this.clear();
      say();
      if (bar !== '') this.draw(bar);
    };
    this.host = {
      ...world,
      error: (text) => around(() => world.error(text)),
      out: (text) => around(() => world.out(text)),
    };
  }

  start(activity: Activity, total: number): void {
    this.clear();
    this.activity = activity;
    this.total = total;
    this.done = 0;
  }

  /** One more is begun. */
  step(): void {
    // Some terminals do not know how wide they are.
    const columns = this.world.columns === 0 ? 80 : this.world.columns;
    if (this.quiet || this.total < 2) return;
    const { activity, done, total, unit } = this;
    if (columns === null) {
      if (done > 0 && done % LINE_EVERY[unit] === 0)
        this.world.error(`${this.words.progress(activity, done, total, unit)}\n`);
    } else {
      const counted = `${this.words.progressBar(activity, done, total)} `;
      const width = Math.min(WIDEST, columns - displayWidth(counted) - 3);
      const full = Math.floor((width * done) / total);
      this.clear();
      this.draw(
        width < 4
          ? inColumns(counted, columns - 1)
          : `${counted}[${'#'.repeat(full)}${'.'.repeat(width - full)}]`,
      );
    }
    this.done += 1;
  }

  /** Takes the bar away. */
  clear(): void {
    if (this.bar !== '') this.world.error(`\r${' '.repeat(displayWidth(this.bar))}\r`);
    this.bar = '';
  }

  private draw(bar: string): void {
    this.bar = bar;
    this.world.error(bar);
  }
}

/** As much of a text as has room; a Japanese character takes two columns. */
function inColumns(text: string, columns: number): string {
  let shown = text;
  while (displayWidth(shown) > columns) shown = shown.slice(0, -1);
  return shown;
}
