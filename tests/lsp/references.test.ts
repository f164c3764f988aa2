import { describe, expect, test } from 'vitest';
import type { Location } from 'vscode-languageserver';
import { definitionAt, referencesAt, renameAt, renameableAt } from '../../src/lsp/references.js';
import { opened, uri } from './opened.js';

const FILES = {
  'episode.yaml': '',
  'house.cut': 'phrase walk = 1--2--\n',
  'c8.cut': 'cut 8\ntime 1+0\nuse "house.cut"\nA: walk..\nC: 1 2..\n',
};
const CUT = 'cut 12\ntime 2+0\nuse "house.cut"\nlevel C reuse 8/C\nfield near 60%\nA: walk..\nC: 1..\n';

const asked = (text = CUT, files: Readonly<Record<string, string>> = FILES) =>
  opened(text, files, { name: 'c12.cut' });
/** `file line:character` */
const places = (all: readonly Location[]) =>
  all.map(
    ({ uri: at, range }) => `${at.replace('file:///work/', '')} ${range.start.line}:${range.start.character}`,
  );

describe('the definition', () => {
  const definition = async (piece: string, more = 0) => {
    const { workspace, analysis, at } = await asked();
    return places(definitionAt(workspace, analysis, at(piece) + more));
  };

  test('of a phrase lies in the file that the cut uses', async () => {
    expect(await definition('walk')).toEqual(['house.cut 0:7']);
  });

  test('of a used file is its beginning', async () => {
    expect(await definition('house.cut')).toEqual(['house.cut 0:0']);
  });

  test('of a cut that lends a level is its number, of the level its timeline there', async () => {
    expect(await definition('8/C')).toEqual(['c8.cut 0:0']);
    expect(await definition('8/C', 2)).toEqual(['c8.cut 4:0']);
  });

  test('of a word of the language is none', async () => {
    expect(await definition('time')).toEqual([]);
  });

  test('of a used file that is not there is none', async () => {
    const { workspace, analysis, at } = await asked(CUT, { 'episode.yaml': '' });
    expect(definitionAt(workspace, analysis, at('house.cut'))).toEqual([]);
  });
});

test('references go through all cuts that mean the name, with or without its definitions', async () => {
  const { workspace, analysis, at } = await asked();
  const all = (definitions: boolean) =>
    places(referencesAt(workspace, analysis, at('walk'), { definitions }));
  expect(all(true)).toEqual(['house.cut 0:7', 'c12.cut 5:3', 'c8.cut 3:3']);
  expect(all(false)).toEqual(['c12.cut 5:3', 'c8.cut 3:3']);
});

describe('a rename', () => {
  const renamed = async (
    piece: string,
    wanted: string,
    text = CUT,
    files: Readonly<Record<string, string>> = FILES,
  ) => {
    const { workspace, analysis, at } = await asked(text, files);
    return renameAt(workspace, analysis, at(piece), wanted).changes!;
  };

  test('edits every file that means the name', async () => {
    const changes = await renamed('walk', 'stroll');
    expect(Object.keys(changes).sort()).toEqual([uri('c12.cut'), uri('c8.cut'), uri('house.cut')]);
    expect(changes[uri('c12.cut')]).toEqual([
      { range: { start: { line: 5, character: 3 }, end: { line: 5, character: 7 } }, newText: 'stroll' },
    ]);
  });

  test('into the name that it has changes nothing', async () => {
    expect(await renamed('walk', ' walk ')).toEqual({});
  });

  test.each([
    ['walk', '2nd', '`2nd` is no name'],
    ['walk', 'two words', '`two words` is no name'],
    ['walk', '', '`` is no name'],
    ['walk', 'on', '`on` means something else in a timeline'],
    ['near', 'full', 'always means the standard field'],
    ['time', 'x', 'there is none here'],
  ])('of %s into "%s" is refused', async (piece, wanted, words) => {
    await expect(renamed(piece, wanted)).rejects.toThrow(words);
  });

  test('into a name that is taken in another cut is refused', async () => {
    const files = { ...FILES, 'c8.cut': `${FILES['c8.cut']}phrase run = 1-2\n` };
    await expect(renamed('walk', 'run', CUT, files)).rejects.toThrow(
      'There is a phrase `run` already, in c8.cut.',
    );
  });

  test('is refused where a line that cannot be read names it too', async () => {
    const files = { ...FILES, 'c8.cut': `${FILES['c8.cut']}note walk walk walk\n` };
    await expect(renamed('walk', 'run', CUT, files)).rejects.toThrow(
      'Line 6 of c8.cut names `walk` too and cannot be read; mend it first.',
    );
  });
});

test('what can be renamed is the name under the cursor, but for the standard field', async () => {
  const { workspace, analysis, at } = await asked(`${CUT}fix full\n`);
  expect(renameableAt(workspace, analysis, at('near') + 2)).toEqual({
    range: { start: { line: 4, character: 6 }, end: { line: 4, character: 10 } },
    placeholder: 'near',
  });
  expect(() => renameableAt(workspace, analysis, at('full'))).toThrow('always means the standard field');
});
