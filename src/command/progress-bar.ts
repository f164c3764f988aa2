/** How far a long run is: a bar on a terminal, a line now and then elsewhere. */

import type { Progress } from '../build/build-run.js';
import type { Host } from '../host/host.js';

/** What is counted; where there is no terminal, a line is said each time so many are done. */
const CUTS = { name: 'cuts', lineEvery: 100 };
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
  private what = '';

  /** `quiet`: a program reads what is said. */
  constructor(
    private readonly world: Host,
    private readonly quiet: boolean,
    private readonly unit: { readonly name: string; readonly lineEvery: number } = CUTS,
  ) {
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

  /** `what` is done: `printing`. */
  start(what: string, total: number): void {
    this.clear();
    this.what = what;
    this.total = total;
    this.done = 0;
  }

  /** One more is begun. */
  step(): void {
    // Some terminals do not know how wide they are.
    const columns = this.world.columns === 0 ? 80 : this.world.columns;
    if (this.quiet || this.total < 2) return;
    if (columns === null) {
      if (this.done > 0 && this.done % this.unit.lineEvery === 0) {
        this.world.error(`${this.what}: ${this.done} of ${this.total} ${this.unit.name}\n`);
      }
    } else {
      const counted = `${this.what} ${this.done} of ${this.total} `;
      const width = Math.min(WIDEST, columns - counted.length - 3);
      const full = Math.floor((width * this.done) / this.total);
      this.clear();
      this.draw(
        width < 4
          ? counted.slice(0, columns - 1)
          : `${counted}[${'#'.repeat(full)}${'.'.repeat(width - full)}]`,
      );
    }
    this.done += 1;
  }

  /** Takes the bar away. */
  clear(): void {
    if (this.bar !== '') this.world.error(`\r${' '.repeat(this.bar.length)}\r`);
    this.bar = '';
  }

  private draw(bar: string): void {
    this.bar = bar;
    this.world.error(bar);
  }
}
