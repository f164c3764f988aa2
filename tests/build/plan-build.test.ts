/** `build --plan`: which rules the build file has, and what it is refused for. */

import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { run } from '../command/run.js';

const cut = (number: number | string, lines = 'A: 1..'): string => `cut ${number}\ntime 1+0\n${lines}\n`;
const EPISODE = {
  'e/episode.yaml': '',
  'e/house.cut': 'phrase p = 1--2\n',
  'e/1.cut': cut(1, 'C: 1--2..'),
  'e/2.cut': `use "house.cut"\n${cut(2, 'level D reuse 1/C\nD: 1..')}`,
  'e/3.cut': cut(3, 'overlap out 8\nA: 1..'),
  'e/4.cut': cut(4, 'overlap in 8\nA: 1..'),
  'e/5.cut': `ｃｕｔ ５\ntime 1+0\nA: 1..\n`,
  'e/6.cut': 'cut 6\ntme 1+0\n',
};

async function rules(...argv: string[]): Promise<string[]> {
  const host = memoryHost(EPISODE);
  const { status, error } = await run(host, 'build', 'e', '-o', 'out', '--plan', 'ninja', ...argv);
  expect([status, error]).toEqual([
    0,
    'wrote out/cutwright.ninja: 6 cuts; `ninja -f out/cutwright.ninja` prints them\n',
  ]);
  const text = Buffer.from(host.files.get('/work/out/cutwright.ninja')!).toString();
  return text.split('\n').filter((line) => line.startsWith('build ') && !line.endsWith(': phony'));
}

test('a rule a cut, with all that its print hangs on; none for a file that holds no cut', async () => {
  const all = 'e/1.cut e/2.cut e/house.cut e/3.cut e/4.cut e/6.cut';
  expect(await rules()).toEqual([
    'build out/1.pdf: print e/1.cut | e/episode.yaml e/2.cut e/house.cut',
    'build out/2.pdf: print e/2.cut | e/episode.yaml e/house.cut e/3.cut e/1.cut',
    'build out/3.pdf: print e/3.cut | e/episode.yaml e/2.cut e/4.cut',
    'build out/4.pdf: print e/4.cut | e/episode.yaml e/3.cut e/5.cut',
    // Its number is told by the grammar only, and what else it says.
    `build out/5.pdf: print e/5.cut | e/episode.yaml ${all}`,
    'build out/6.pdf: print e/6.cut | e/episode.yaml e/5.cut',
    'build out/cutwright.ninja: plan | e/1.cut e/episode.yaml e/2.cut e/house.cut e/3.cut e/4.cut e/5.cut e/6.cut e',
  ]);
});

test('options that look otherwise are handed on', async () => {
  const host = memoryHost(EPISODE);
  await run(host, 'build', 'e', '--plan', 'make', '--labels', 'ja', '--strict', '--true-size');
  const text = Buffer.from(host.files.get('/work/cutwright.mk')!).toString();
  expect(text).toContain(
    '\t$(CUTWRIGHT) build --labels ja --true-size --strict --output e/1.pdf -- e/1.cut\n',
  );
  expect(text).toContain(
    '\t$(CUTWRIGHT) build --labels ja --true-size --plan make --strict -- e && touch cutwright.mk\n',
  );
});

test.each([
  [['--one-file'], '`--plan` and `--one-file` do not go together.'],
  [['--changed'], '`--plan` and `--changed` do not go together.'],
  [['--shard', '1/2'], '`--plan` and `--shard` do not go together.'],
  [['--only', 'strip'], '`--plan` and `--only` do not go together.'],
  [['-o', '-'], '`--plan` and `--output -` do not go together.'],
  [['-o', 'all.pdf'], '`--plan` prints each cut into a file of its own; give `--output` a folder.'],
])('%j is refused', async (argv, words) => {
  const host = memoryHost(EPISODE);
  const { status, error } = await run(host, 'build', 'e', '--plan', 'ninja', ...argv);
  expect([status, error]).toEqual([2, expect.stringContaining(words)]);
});

test('so are a name that the tool cannot be told of, and two cuts that would go to one file', async () => {
  const odd = memoryHost({ ...EPISODE, 'e/a;b.cut': cut(7) });
  expect((await run(odd, 'build', 'e', '--plan', 'make')).error).toContain(
    'make cannot be told of a file with this name: `e/a;b.cut`',
  );
  const twice = memoryHost({ ...EPISODE, 'e/more/1.cut': cut(8) });
  const { status, error } = await run(twice, 'build', 'e', '-o', 'out', '--plan', 'ninja');
  expect([status, error]).toEqual([2, expect.stringContaining(': same-output\n')]);
  expect(twice.files.has('/work/out/cutwright.ninja')).toBe(false);
});

test('a file that may come is waited for in the folders that are there', async () => {
  // Ninja takes a missing folder for a fault, and stops.
  const host = memoryHost({ 'e/episode.yaml': '', 'e/1.cut': `use "later/house.cut"\n${cut(1)}` });
  await run(host, 'build', 'e', '-o', 'out', '--plan', 'ninja');
  const text = Buffer.from(host.files.get('/work/out/cutwright.ninja')!).toString();
  expect(text).toContain('build out/1.pdf: print e/1.cut');
  expect(text).not.toContain('later');
});

test('a file that may come into a folder that is there makes the plan hang on the folder', async () => {
  const host = memoryHost({
    'e/episode.yaml': '',
    'e/1.cut': `use "lib/house.cut"\n${cut(1)}`,
    'e/lib/other.txt': '',
  });
  await run(host, 'build', 'e', '-o', 'out', '--plan', 'ninja');
  const text = Buffer.from(host.files.get('/work/out/cutwright.ninja')!).toString();
  expect(text).toMatch(/^build out\/cutwright\.ninja: plan \| .*\be\/lib$/m);
});

test('a cut in the current folder makes the plan hang on it by its name', async () => {
  const host = memoryHost({ 'episode.yaml': '', '1.cut': cut(1) });
  await run(host, 'build', '.', '-o', 'out', '--plan', 'ninja');
  const text = Buffer.from(host.files.get('/work/out/cutwright.ninja')!).toString();
  expect(text).toMatch(/^build out\/cutwright\.ninja: plan \| 1\.cut episode\.yaml \.$/m);
});
