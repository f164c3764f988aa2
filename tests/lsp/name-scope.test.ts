import { describe, expect, test } from 'vitest';
import { NameScope } from '../../src/lsp/name-scope.js';
import { opened } from './opened.js';

const FILES = {
  'episode.yaml': '',
  'house.cut': 'phrase walk = 1--2--\nfield wide full at 10,0\n',
  'c8.cut': 'cut 8 "The ferry"\ntime 1+0\nuse "house.cut"\nA: walk..\nC "Oda": 1 2..\n',
  'c9.cut': 'cut 9\ntime 1+0\nuse "house.cut"\nphrase walk = 1-2-\nA: walk..\n',
};
const CUT = 'cut 12\ntime 2+0\nuse "house.cut"\nmark hit 1+0\nlevel C reuse 8/C\nA: walk @hit 1..\nC: 1..\n';

async function scoped(files: Readonly<Record<string, string>> = FILES) {
  const { workspace, analysis, at } = await opened(CUT, files, { name: 'c12.cut' });
  const scope = new NameScope(workspace, analysis);
  const symbol = (piece: string) => scope.at(at(piece))!.symbol;
  /** `file: line`, a star where the name is defined. */
  const places = (piece: string) =>
    scope.places(symbol(piece)).map(({ file, text, span, defines }) => {
      const line = text.slice(0, span.start).split('\n').length;
      return `${file} ${line}${defines ? '*' : ''}`;
    });
  return { scope, at, symbol, places };
}

describe('the name under a cursor', () => {
  test('has the file that defines it as its home', async () => {
    const { symbol } = await scoped();
    expect(symbol('walk @')).toEqual({ kind: 'phrase', name: 'walk', home: '/work/house.cut' });
    expect(symbol('hit 1..')).toEqual({ kind: 'mark', name: 'hit', home: '/work/c12.cut' });
  });

  test('behind `reuse 8/` is that of the other cut', async () => {
    const { symbol } = await scoped();
    expect(symbol('C\nA:')).toEqual({ kind: 'level', name: 'C', home: '/work/c8.cut' });
  });

  test('behind a cut that the episode lacks is none', async () => {
    const { scope, at } = await scoped({ 'episode.yaml': '', 'house.cut': FILES['house.cut'] });
    expect(scope.at(at('C\nA:'))).toBeNull();
  });

  test('is none where none stands', async () => {
    const { scope, at } = await scoped();
    expect(scope.at(at('time'))).toBeNull();
  });
});

describe('the places of a name', () => {
  test('are those of all cuts that mean the same, definitions first', async () => {
    const { places } = await scoped();
    // Cut 9 has a phrase of its own under that name.
    expect(places('walk @')).toEqual(['house.cut 1*', 'c12.cut 6', 'c8.cut 4']);
  });

  test('of a mark lie in its own cut', async () => {
    const { places } = await scoped({ ...FILES, 'c7.cut': 'cut 7\ntime 1+0\nmark hit 1+0\nA: 1 @hit 2..\n' });
    expect(places('hit 1..')).toEqual(['c12.cut 4*', 'c12.cut 6']);
  });

  test('of a level take in the cuts that reuse it', async () => {
    const { places } = await scoped();
    expect(places('C\nA:')).toEqual(['c8.cut 5*', 'c12.cut 5']);
  });
});

test('the cuts that mean a name know which names are taken there', async () => {
  const { scope, symbol } = await scoped();
  const others = scope.others(symbol('walk @'));
  expect(others.map(({ file }) => file).sort()).toEqual(['c12.cut', 'c8.cut', 'house.cut']);
  for (const { names } of others) expect(names).toContain('walk');
});

test('the cuts of the episode stand in story order, with their titles', async () => {
  const { scope } = await scoped();
  expect(scope.cuts().map(({ number, title }) => [number, title])).toEqual([
    ['8', 'The ferry'],
    ['9', ''],
    ['12', ''],
  ]);
});

test('the levels of another cut have the titles of their timelines', async () => {
  const { scope } = await scoped();
  expect(scope.levelsOf('8')).toEqual([
    { name: 'A', title: '' },
    { name: 'C', title: 'Oda' },
  ]);
  expect(scope.levelsOf('99')).toEqual([]);
});

test('the cut that a level is reused from is found at its number only', async () => {
  const { scope, at } = await scoped();
  expect(scope.lenderAt(at('8/C'))!.name).toBe('c8.cut');
  expect(scope.lenderAt(at('time'))).toBeNull();
});
