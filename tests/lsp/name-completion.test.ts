import { describe, expect, test } from 'vitest';
import { namesOffered, oneLine } from '../../src/lsp/name-completion.js';
import type { NameKind } from '../../src/lsp/name-index.js';
import { opened } from './opened.js';

describe('a statement in one line', () => {
  test('has its line ends and its blanks drawn together', () => {
    expect(oneLine('  phrase walk =\n    1--2--  ')).toBe('phrase walk = 1--2--');
  });

  test('is cut where it is longer than 60 characters', () => {
    expect(oneLine('x'.repeat(60))).toBe('x'.repeat(60));
    expect(oneLine('x'.repeat(61))).toBe(`${'x'.repeat(59)}…`);
  });
});

describe('names', () => {
  const named = async (typed: string, kind: NameKind, files: Record<string, string> = {}) => {
    const { workspace, analysis, cursor } = await opened(typed, files);
    return namesOffered(workspace, analysis, kind, cursor).map(({ label, detail }) => [label, detail]);
  };

  test('have what defines them as their detail, wherever that stands', async () => {
    const text = 'cut 1\ntime 1+0\nA: walk..\nphrase walk = 1--2--\nmark hit 1+0\n';
    expect(await named(text, 'phrase')).toEqual([['walk', 'phrase walk = 1--2--']]);
    expect((await named(text, 'mark')).map(([label]) => label)).toEqual(['hit']);
  });

  test('of fields have the standard field among them', async () => {
    expect(await named('cut 1\ntime 1+0\nfield near 60%\nA: 1..\n', 'field')).toEqual([
      ['full', 'the standard field'],
      ['near', 'field near 60%'],
    ]);
  });

  test('of files that the cut uses are there before it says them', async () => {
    const files = {
      'episode.yaml': '',
      'house.cut': 'use "roof.cut"\nphrase walk = 1--2--\nlevel CAT size 100x80mm\n',
      'roof.cut': 'field near 60%\n',
    };
    const text = 'cut 1\ntime 1+0\nuse "house.cut"\nA: 1..\n';
    expect(await named(text, 'phrase', files)).toEqual([['walk', 'phrase walk = 1--2--']]);
    expect(await named(text, 'field', files)).toContainEqual(['near', 'field near 60%']);
    expect(await named(text, 'level', files)).toContainEqual(['CAT', 'level CAT size 100x80mm']);
    expect(await named(text, 'mark', files)).toEqual([]);
  });

  test('that are being typed are none yet', async () => {
    expect(await named('cut 1\ntime 1+0\nphrase walk = 1-2\nA: wa|\n', 'phrase')).toEqual([
      ['walk', 'phrase walk = 1-2'],
    ]);
    expect(await named('cut 1\ntime 1+0\nphrase wa = 1-2\nA: wa|\n', 'phrase')).toHaveLength(1);
  });
});
