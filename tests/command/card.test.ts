/** `explain --card`. */

import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { openPrinted } from '../pdf.js';
import { run } from './run.js';

test('the command writes one page that names its own commands', async () => {
  const host = memoryHost();
  const { status } = await run(host, 'explain', '--card', '--paper', 'B5', '-o', 'b5.pdf');
  expect(status).toBe(0);
  const { pages } = await openPrinted(host.files.get('/work/b5.pdf')!);
  expect(pages).toHaveLength(1);
  const texts = pages[0]!.texts.map(({ text }) => text);
  for (const name of ['check', 'build', 'number', 'explain']) expect(texts).toContain(name);
});
