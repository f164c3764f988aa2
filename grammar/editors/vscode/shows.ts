/** Live views: one `cutwright watch --preview` for each cut that is shown, ended with the editor. */

import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { callOf } from './program.js';

interface Show {
  readonly child: ChildProcess;
  /** The pages that the watch writes; the editor's own print stands beside the cut. */
  readonly folder: string;
  readonly address: Promise<string>;
  url: string | null;
}

/** Milliseconds that the cursor rests before the pages follow it. */
const PAUSE = 80;

export class Shows {
  private readonly running = new Map<string, Show>();
  private timer: NodeJS.Timeout | null = null;

  constructor(private readonly words: () => readonly string[]) {}

  /** Where the pages of a cut are to be seen. Rejects with what the program said. */
  address(file: string): Promise<string> {
    return (this.running.get(file) ?? this.begin(file)).address;
  }

  /** The rows of the line are lit in the pages of the cut, where they are shown. */
  follow(file: string, line: number): void {
    const url = this.running.get(file)?.url;
    if (!url) return;
    if (this.timer) clearTimeout(this.timer);
    const asked = new URLSearchParams({ file, line: String(line) });
    // A view that is gone by now has nothing to light.
    this.timer = setTimeout(() => void fetch(`${url}at?${asked}`).catch(() => {}), PAUSE);
  }

  end(): void {
    if (this.timer) clearTimeout(this.timer);
    for (const { child } of this.running.values()) child.kill();
  }

  private begin(file: string): Show {
    const folder = mkdtempSync(join(tmpdir(), 'cutwright-show-'));
    const more = ['watch', file, '--preview', '--output', join(folder, 'shown.pdf')];
    const { command, args, shell } = callOf(this.words(), more);
    const child = spawn(command, args, { shell, stdio: ['ignore', 'ignore', 'pipe'] });
    const address = new Promise<string>((resolve, reject) => {
      let said = '';
      const over = (reason: string): void => {
        this.running.delete(file);
        rmSync(folder, { recursive: true, force: true });
        reject(new Error(reason));
      };
      child.stderr.setEncoding('utf8').on('data', (text: string) => {
        // What it says later is in the pages too.
        if (show.url) return;
        said += text;
        show.url = /\bhttp:\/\/127\.0\.0\.1:\d+\/[\w-]+\/(?=\s)/.exec(said)?.[0] ?? null;
        if (show.url) resolve(show.url);
      });
      child.on('error', ({ message }) => over(`\`${command}\` cannot be run: ${message}`));
      child.on('close', () => over(said.trim() || 'The view has ended.'));
    });
    const show: Show = { child, folder, address, url: null };
    this.running.set(file, show);
    return show;
  }
}
