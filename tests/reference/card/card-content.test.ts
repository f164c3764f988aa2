/** What stands on the card is all there is, and true. */

import { expect, test } from 'vitest';
import { statementTable } from '../../../src/language/statements/statement-table.js';
import { named, sections } from '../../../src/reference/card/card-content.js';
import { pageName, statementPages } from '../../../src/reference/statement-pages.js';
import { compileText, said } from '../../compile.js';

test('every statement stands on it, by the example that the grammar has of it', () => {
  const typed = sections([]).flatMap(({ rows }) => rows.map(([one]) => one));
  const missing = statementTable.filter(({ word, example }) => word !== '' && !typed.includes(example));
  expect(missing.map(pageName)).toEqual([]);
});

/** What the examples of statements need about them. */
const AROUND = `time 6+0
A: 1--2..
B: 1..
C: 1..
level A free
level BG free
`;
const FIELDS = 'field A full\nfield B 60% at 40,-12\n';

test.each(
  sections([])
    .filter(({ title }) => ['Words', 'Camera', 'Light'].includes(title))
    .flatMap(({ rows }) => rows.map(([typed]) => typed)),
)('%s reads as it stands', (typed) => {
  const fields = typed.startsWith('field B')
    ? 'field A full\n'
    : typed.startsWith('pan')
      ? 'field A full\nfield B full at 20,0\n'
      : FIELDS;
  const { diagnostics } = compileText(`cut 1\n${AROUND}${fields}${typed}\n`);
  expect(said(diagnostics.filter(({ severity }) => severity === 'error'))).toEqual([]);
});

test.each(
  sections([])
    .find(({ title }) => title === 'Behind a move')!
    .rows.map(([typed]) => typed),
)('%s may stand behind a move', (typed) => {
  const moves = [
    'pan A@1 > P@9',
    'truck A@1 > B@9',
    'turn level A 0@1 > 9@9 cw',
    'pull BG left 8mm 1..8',
    'pull BG left 18mm 1..7',
    'shake 1mm 1..8',
  ].map((move) =>
    compileText(
      `cut 1\n${AROUND}field P full at 14,0\n${FIELDS}${move} ${typed.replace('ease 6 12', 'ease 2 4')}\n`,
    ),
  );
  expect(moves.some(({ diagnostics }) => diagnostics.every(({ severity }) => severity !== 'error'))).toBe(
    true,
  );
});

test.each(
  sections([])
    .find(({ title }) => title === 'Charts')!
    .rows.map(([typed]) => typed),
)('%s is a passage', (typed) => {
  const { diagnostics } = compileText(`cut 1\ntime 1+0\nA: ${typed}..\n`);
  expect(said(diagnostics)).toEqual([]);
});

test('a statement says what its page is called', () => {
  const rows = new Map(sections([]).flatMap((section) => section.rows));
  const fade = statementTable.find(({ word }) => word === 'fade')!;
  expect(rows.get(fade.example)).toBe(statementPages.fade!.title);
  expect(named()).toContain('fade');
  // A timeline stands in the strips.
  expect(named()).not.toContain('timeline');
});

test('the commands of the program are its last section', () => {
  expect(sections([['check', 'say what is wrong']]).at(-1)).toEqual({
    title: 'Commands: cutwright …',
    rows: [['check', 'say what is wrong']],
  });
});
