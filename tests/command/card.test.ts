/** `explain --card`. */

import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { sections } from '../../src/reference/card/card-content.js';
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

test('the card is in the language of the user, its commands too', async () => {
  const host = memoryHost();
  await run(host, 'explain', '--card', '--language', 'ja', '-o', 'ja.pdf');
  const { pages } = await openPrinted(host.files.get('/work/ja.pdf')!);
  const texts = pages[0]!.texts.map(({ text }) => text);
  expect(texts).toContain('cutwright：カットの書き方');
  expect(texts).toContain('カットの誤りを調べます');
  for (const { title, rows } of sections('en', []))
    for (const text of [title, ...rows.map(([, meaning]) => meaning)]) expect(texts).not.toContain(text);
});
