import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { main } from '../../src/command/main.js';
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

test('another shell is refused with a guess', async () => {
  const host = memoryHost();
  expect(await main(['completion', 'fihs'], host)).toBe(2);
  expect(host.complaints()).toContain('did you mean `fish`?');
  const none = memoryHost();
  expect(await main(['completion'], none)).toBe(2);
  expect(none.complaints()).toContain('`cutwright completion` needs a shell');
});
