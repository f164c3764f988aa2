/** Golden sheets in the terminal, `NAME.show`; with ACCEPT=1 (`npm run accept`) they are written anew. */

import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { terminalSheet } from '../../src/sheet/terminal/terminal-sheet.js';
import { compileFiles } from '../compile.js';

const accepting = process.env.ACCEPT === '1' && !process.env.CI;

test.each([
  ['japan/levels', 80],
  ['japanese/words', 80],
  ['west/feet', 100],
])('%s at %i columns is the sheet that was accepted', async (name, width) => {
  const path = `tests/cuts/${name}`;
  const [compiled] = (await compileFiles(`${path}.cut`)).values();
  const { solved } = compiled!;
  const made = `${terminalSheet(solved!, { width, labels: solved!.shot.settings.labels }).join('\n')}\n`;
  if (accepting) writeFileSync(`${path}.show`, made);
  expect(made).toBe(readFileSync(`${path}.show`, 'utf8'));
});
