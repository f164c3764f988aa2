import { expect, test } from 'vitest';
import { linksIn } from '../../src/lsp/document-links.js';
import { opened, uri } from './opened.js';

const files = {
  'episode.yaml': 'cuts:\n  - c1.cut\n  - c8.cut\n  - later.cut\n',
  'house.cut': 'phrase walk = 1-2\n',
  'c8.cut': 'cut 8\ntime 1+0\nC: 1..\n',
  'c1.wav': 'x',
};

async function links(typed: string, name = 'c1.cut') {
  const { workspace, analysis } = await opened(typed, files, { name });
  return linksIn(workspace, analysis).map(({ range, target }) => [
    analysis.text.text.slice(analysis.text.offset(range.start), analysis.text.offset(range.end)),
    target,
  ]);
}

test('lead to shared files, recordings and the cuts of reused levels', async () => {
  expect(
    await links(
      'cut 1\ntime 1+0\nuse "house.cut"\nuse "gone.cut"\ntrack "c1.wav"\nlevel A reuse 8/C\nA: 1..\n',
    ),
  ).toEqual([
    ['"house.cut"', uri('house.cut')],
    ['"c1.wav"', uri('c1.wav')],
    ['8', uri('c8.cut')],
  ]);
});

test('lead to nothing outside of the episode', async () => {
  expect(await links('cut 1\nuse "../../etc/passwd"\n')).toEqual([]);
});

test('lead from a manifest to its cuts', async () => {
  expect((await links(files['episode.yaml'], 'episode.yaml')).map(([, target]) => target)).toEqual([
    uri('c8.cut'),
  ]);
});
