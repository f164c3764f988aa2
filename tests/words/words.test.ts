/** The words of a form, by its language and its convention. */

import { expect, test } from 'vitest';
import { LABELS } from '../../src/words/labels.js';
import { wordsOf } from '../../src/words/words.js';

/** Every plain word of a table by its path; null in place of functions. */
function leaves(table: object, path = ''): Map<string, string | null> {
  return new Map(
    Object.entries(table).flatMap(([key, value]): [string, string | null][] =>
      typeof value === 'string'
        ? [[`${path}${key}`, value]]
        : typeof value === 'function'
          ? [[`${path}${key}`, null]]
          : [...leaves(value as object, `${path}${key}.`)],
    ),
  );
}

const CONVENTIONS = ['japan', 'west'] as const;
const FORMS = LABELS.flatMap((labels) => CONVENTIONS.map((convention) => ({ labels, convention })));

test.each(FORMS)(
  '$labels, $convention: the words of the first form and no other, none of them empty',
  (form) => {
    const words = leaves(wordsOf(form));
    expect([...words.keys()].sort()).toEqual([...leaves(wordsOf(FORMS[0]!)).keys()].sort());
    // A truck is named by its sense alone: T.U, T.B. The line of a hold has a word in Japanese only.
    const empty = [...words].flatMap(([path, word]) => (word === '' ? [path] : []));
    expect(empty).toEqual([...(form.labels === 'en' ? ['sheet.held'] : []), 'moves.kinds.truck.name']);
    expect(wordsOf(form).sheet.language).toBe(form.labels);
  },
);

test('a western form in English calls a cut a scene and a scene a sequence', () => {
  const words = wordsOf({ labels: 'en', convention: 'west' });
  const { sheet, moves, documents, cutList } = words;
  expect([sheet.cut, sheet.scene, cutList.columns.cut, cutList.columns.scene]).toEqual([
    'scene',
    'sequence',
    'scene',
    'sequence',
  ]);
  expect(sheet.cutNumber('12')).toBe('scene 12');
  expect(sheet.reuse('A', '11', 'B')).toBe('A: reuse of scene 11, level B');
  expect(sheet.lentShort(['11'])).toBe('again in sc. 11');
  expect(moves.overlap('O.L', 'out', '13')).toBe('O.L with sc. 13');
  expect([documents.cut('12'), documents.onlyIn(null, '1-3', 3)]).toEqual([
    'Scene 12',
    'only now: scenes 1-3',
  ]);
  // The point at which two scenes are joined is the cut point in the west too.
  const said = [...leaves(words)].filter(([, word]) => /\bcuts?\b/i.test(word ?? ''));
  expect(said).toEqual([['sheet.cutPoint', 'cut point']]);
});

test('only a Japanese form with Japanese words names the total of the pages first', () => {
  expect(FORMS.map((form) => wordsOf(form).sheet.pageOf('1-b', 2))).toEqual([
    '1-b / 2',
    '1-b / 2',
    '2枚の1-b',
    '1-b / 2',
  ]);
});
