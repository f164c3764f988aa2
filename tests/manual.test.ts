import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { version } from '../package.json';
import { allCommands } from '../src/command/main.js';
import { memoryHost } from '../src/host/memory-host.js';
import { manualPage } from './manual.js';

const PATH = 'grammar/cutwright.1';
const page = manualPage(await allCommands(memoryHost()), version);

test('the manual page is what the commands say (UPDATE=1 writes it)', () => {
  if (process.env.UPDATE === '1') writeFileSync(PATH, page);
  expect(readFileSync(PATH, 'utf8')).toBe(page);
});

test('it names every option of every command', async () => {
  for (const command of await allCommands(memoryHost()))
    for (const { long } of command.options.filter(({ hidden }) => !hidden))
      expect(page).toContain(`Fl ${long!.slice(1)}`);
});

const has = spawnSync('mandoc', ['-V']).error === undefined;

test.skipIf(!has)('mandoc finds nothing to warn of', () => {
  const { stdout } = spawnSync('mandoc', ['-T', 'lint', '-W', 'warning'], { input: page, encoding: 'utf8' });
  expect(stdout).toBe('');
});
