/** A watch over real files, in this process. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ConsoleReporter } from '../../src/command/console-reporter.js';
import type { Host } from '../../src/host/host.js';
import { nodeHost } from '../../src/host/node-host.js';
import { messageOf } from '../../src/language/message.js';
import type { WatchRequest } from '../../src/watch/cut-watcher.js';
import { type SessionOptions, watchCuts } from '../../src/watch/watch-session.js';

/** Polls; what is waited for comes when the machine has time for it. */
export async function until<T>(
  ask: () => T | Promise<T>,
  what: string | (() => string),
): Promise<NonNullable<T>> {
  const end = Date.now() + 100_000;
  for (;;) {
    const answer = await ask();
    if (answer) return answer as NonNullable<T>;
    if (Date.now() > end) throw new Error(`never came: ${typeof what === 'string' ? what : what()}`);
    await new Promise((done) => setTimeout(done, 15));
  }
}

export function freshFolder(): string {
  return mkdtempSync(join(tmpdir(), 'cutwright-watch-'));
}

export class Watch {
  readonly status: Promise<number>;
  private text = '';
  private readonly ending = new AbortController();
  private begun = false;
  private ended = false;

  constructor(
    readonly folder: string,
    files: readonly string[],
    wanted: Partial<WatchRequest> = {},
    { world, ...more }: Partial<SessionOptions> & { readonly world?: (host: Host) => Host } = {},
  ) {
    const real: Host = {
      ...nodeHost(),
      cwd: folder,
      colour: false,
      columns: null,
      now: () => new Date(2001, 0, 1, 12, 3, 7),
      error: (text) => {
        this.text += text;
      },
    };
    const host = world ? world(real) : real;
    const all: WatchRequest = {
      files,
      settings: {},
      output: undefined,
      selection: {},
      strict: false,
      newReporter: () => new ConsoleReporter(host, 'human', false),
      ...wanted,
    };
    this.status = watchCuts(host, all, {
      port: null,
      refuse: (parameters) => {
        this.text += `refused: ${messageOf({ code: 'watch-impossible', parameters }, 'en')}\n`;
        return 2;
      },
      check: () => {},
      ended: this.ending.signal,
      begun: () => {
        this.begun = true;
      },
      ...more,
    }).finally(() => {
      this.ended = true;
    });
  }

  /** All that was said. */
  get said(): string {
    return this.text;
  }

  /** Lines that were said, without the times that things took. */
  get lines(): string[] {
    return this.text.split('\n').map((line) => line.replace(/, \d+ ms$/, ', … ms'));
  }

  async ready(): Promise<this> {
    await until(
      () => this.begun || this.ended,
      () => `the beginning; said: ${this.text}`,
    );
    if (this.ended) throw new Error(`ended at once: ${this.text}`);
    return this;
  }

  /** Waits for a line. */
  hears(line: string | RegExp, times = 1): Promise<unknown> {
    const count = () =>
      this.lines.filter((one) => (typeof line === 'string' ? one === line : line.test(one))).length;
    return until(
      () => count() >= times,
      () => `${line}; said: ${this.text}`,
    );
  }

  async end(): Promise<number> {
    this.ending.abort();
    return this.status;
  }

  async remove(): Promise<void> {
    await this.end();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
