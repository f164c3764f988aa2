/** Watching real files: what is printed when they are saved in the ways that editors save. */

import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { freshFolder, Watch } from './watch.js';

const cut = (number: number, lines = 'A: 1--2..') => `cut ${number}\ntime 1+0\n${lines}\n`;

let folder: string;
let watch: Watch | null = null;

beforeEach(() => {
  folder = freshFolder();
});
afterEach(async () => {
  await watch?.end();
  watch = null;
  rmSync(folder, { recursive: true, force: true });
});

const at = (name: string) => join(folder, name);
function put(files: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(at(name), '..'), { recursive: true });
    writeFileSync(at(name), text);
  }
}
async function begin(
  ...args: ConstructorParameters<typeof Watch> extends [string, ...infer Rest] ? Rest : never
) {
  watch = new Watch(folder, ...args);
  return watch.ready();
}

describe('the folder', () => {
  test('is written to by one watch at a time; the next may begin when the first has ended', async () => {
    put({ 'a.cut': cut(1) });
    const first = await begin(['a.cut']);
    const second = new Watch(folder, ['.']);
    expect(await second.status).toBe(2);
    expect(second.said).toBe(
      'refused: `.` is written to by another watch already, this process: end that one, or name all cuts in one call.\n',
    );
    const elsewhere = await new Watch(folder, ['a.cut'], { output: 'out/' }).ready();
    expect(await elsewhere.end()).toBe(0);
    expect(await first.end()).toBe(0);
    await begin(['a.cut']);
  });

  test('that is removed ends the watch with a word', async () => {
    put({ 'day/a.cut': cut(1) });
    watch = new Watch(folder, ['day/a.cut']);
    await watch.ready();
    rmSync(at('day'), { recursive: true });
    expect(await watch.status).toBe(2);
    expect(watch.said).toContain('refused: The folder `day` is gone, so nothing is watched any more.');
  });

  test('without a cut is nothing to watch', async () => {
    put({ 'a.txt': '' });
    watch = new Watch(folder, ['.']);
    expect(await watch.status).toBe(2);
    expect(watch.said).toContain(': no-cuts\n');
  });
});
