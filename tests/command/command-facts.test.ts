import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { factsOf } from '../../src/command/command-facts.js';
import { allCommands, main } from '../../src/command/main.js';
import { memoryHost } from '../../src/host/memory-host.js';

let folder: string;

async function script(shell: string): Promise<string> {
  const host = memoryHost();
  expect(await main(['completion', shell], host)).toBe(0);
  return host.printed();
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
  for (const shell of ['bash', 'zsh', 'fish']) writeFileSync(join(folder, shell), await script(shell));
  mkdirSync(join(folder, 'at/cuts'), { recursive: true });
  for (const file of ['c012.cut', 'c013.cut', 'c012.pdf', 'episode.yaml'])
    writeFileSync(join(folder, 'at', file), '');
});
afterAll(() => rmSync(folder, { recursive: true }));

test('the facts hold every command, and the words that an option takes', async () => {
  const facts = factsOf(await allCommands(memoryHost()));
  expect(facts.map(({ name }) => name)).toEqual(expect.arrayContaining(['build', 'check', 'completion']));
  const build = facts.find(({ name }) => name === 'build')!;
  expect(build.options.find(({ long }) => long === '--paper')).toMatchObject({
    short: '-p',
    value: 'size',
    words: expect.arrayContaining(['A3', 'legal']),
  });
  expect(build.options.find(({ long }) => long === '--true-size')).toMatchObject({
    value: null,
    words: null,
  });
});
