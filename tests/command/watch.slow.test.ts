/** The shipped program as a watching process: signals, locks of the dead, the live view out of the bundle. */

import { type ChildProcess, spawn } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { program } from '../bundle.js';
import { freshFolder, until } from '../watch/watch.js';
import { CUT } from './run.js';

let folder: string;
const children: ChildProcess[] = [];

beforeEach(() => {
  folder = freshFolder();
  writeFileSync(join(folder, 'a.cut'), CUT);
});
afterEach(async () => {
  // Each takes its lock away, unless it was killed.
  for (const child of children.splice(0)) {
    if (child.exitCode !== null || child.signalCode !== null) continue;
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGTERM');
    await ended;
  }
  rmSync(folder, { recursive: true, force: true });
});

function begin(...argv: string[]) {
  const child = spawn(process.execPath, [program, 'watch', ...argv], {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  children.push(child);
  let said = '';
  child.stderr!.on('data', (chunk) => {
    said += chunk;
  });
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
  return {
    child,
    ended,
    said: () => said,
    hears: (what: RegExp) =>
      until(
        () => what.exec(said),
        () => `${what}; said: ${said}`,
      ),
  };
}

test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
  'ends with 0 at %s, and leaves the folder free',
  async (signal) => {
    const first = begin('a.cut');
    await first.hears(/Ctrl-C ends it/);
    first.child.kill(signal);
    expect(await first.ended).toBe(0);
    const second = begin('a.cut');
    await second.hears(/watching 1 cut; Ctrl-C ends it/);
  },
);

test('a second one in the folder leaves with 2 and names the first; one that was killed is no hindrance', async () => {
  const first = begin('a.cut');
  await first.hears(/Ctrl-C ends it/);
  const second = begin('.');
  expect(await second.ended).toBe(2);
  expect(second.said()).toMatch(new RegExp(`^Error: .* another watch already, process ${first.child.pid}: `));
  first.child.kill('SIGKILL');
  await first.ended;
  const third = begin('a.cut');
  await third.hears(/Ctrl-C ends it/);
});

test('the live view is served out of what is shipped', async () => {
  const watch = begin('--preview', 'a.cut');
  const [, url] = await watch.hears(/shown at (\S+)/);
  for (const way of ['', 'live.css', 'live.js', 'font/regular', 'cut/c1'])
    expect((await fetch(url! + way)).status, way).toBe(200);
  const port = new URL(url!).port;
  writeFileSync(join(folder, 'b.cut'), CUT.replace('cut 1', 'cut 2'));
  const other = begin('b.cut', '-o', 'out/', '--preview', port);
  expect(await other.ended).toBe(2);
  expect(other.said()).toMatch(/^Error: .*port \d+: another program listens there.*\n.*: watch-impossible$/m);
});

test('what makes no sense is refused', async () => {
  for (const argv of [
    ['-'],
    ['a.cut', '-o', '-'],
    ['a.cut', '--preview', '99999'],
    ['a.cut', '--rows', '7'],
  ]) {
    const watch = begin(...argv);
    expect(await watch.ended, argv.join(' ')).toBe(2);
    expect(watch.said()).toMatch(/: (wrong-arguments|option-value)$/m);
  }
});
