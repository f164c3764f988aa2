import { expect, test } from 'vitest';
import { workspaceSymbols } from '../../src/lsp/workspace-symbols.js';
import { opened, uri } from './opened.js';

const files = {
  'episode.yaml': '',
  'house.cut': 'phrase walk = 1-2\nfield near 60%\n',
  'c8.cut': 'cut 8 "The ferry"\ntime 1+0\nC "Oda": 1..\nmark hit 6\n',
};

async function found(query: string) {
  const { workspace, analysis } = await opened('cut 1 "汐"\ntime 1+0\nA: 1..\n', files);
  return workspaceSymbols(workspace, analysis, query).map(({ name, containerName, location }) => [
    name,
    containerName,
    location.uri,
  ]);
}

test('are cuts with their titles, and the names that each text makes', async () => {
  expect(await found('')).toEqual([
    ['cut 1 汐', 'c1.cut', uri('c1.cut')],
    ['A', 'cut 1 汐', uri('c1.cut')],
    ['cut 8 The ferry', 'c8.cut', uri('c8.cut')],
    ['C', 'cut 8 The ferry', uri('c8.cut')],
    ['hit', 'cut 8 The ferry', uri('c8.cut')],
    ['walk', 'house.cut', uri('house.cut')],
    ['near', 'house.cut', uri('house.cut')],
  ]);
});

test('are found by some of their letters, in their order', async () => {
  expect((await found('fry')).map(([name]) => name)).toEqual(['cut 8 The ferry']);
  expect((await found('WLK')).map(([name]) => name)).toEqual(['walk']);
  expect(await found('klaw')).toEqual([]);
});
