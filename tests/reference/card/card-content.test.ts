/** What stands on the card is all there is, and true. */

import { expect, test } from 'vitest';
import { statementTable } from '../../../src/language/statements/statement-table.js';
import type { UserLanguage } from '../../../src/language/user-language.js';
import { drawnStrip, named, ROWS, sections, strips } from '../../../src/reference/card/card-content.js';
import { loadReference, referenceWords } from '../../../src/reference/reference-language.js';
import { pageName, statementPages } from '../../../src/reference/statement-pages.js';
import { compileText, said } from '../../compile.js';
import { testFonts } from '../../fonts.js';
import { englishIn } from '../../japanese-text.js';

test('every statement stands on it, by the example that the grammar has of it', () => {
  const typed = sections('en', []).flatMap(({ rows }) => rows.map(([one]) => one));
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
  sections('en', [])
    .filter(({ title }) => ['Words', 'Camera', 'Light'].includes(title))
    .flatMap(({ rows }) => rows.map(([typed]) => typed)),
)('%s reads as it stands', (typed) => {
  const fields = typed.startsWith('field B')
    ? 'field A full\n'
    : typed.startsWith('pan')
      ? 'field A full\nfield B full at 20,0\n'
      : FIELDS;
  // A mouth stands in place of a timeline.
  const around = typed.startsWith('mouth C') ? AROUND.replace('C: 1..\n', '') : AROUND;
  const { diagnostics } = compileText(`cut 1\n${around}${fields}${typed}\n`);
  expect(said(diagnostics.filter(({ severity }) => severity === 'error'))).toEqual([]);
});

test.each(
  sections('en', [])
    .find(({ title }) => title === 'Behind a move')!
    .rows.map(([typed]) => typed),
)('%s may stand behind a move', (typed) => {
  const moves = [
    'pan A@1 > P@9',
    'pan A@1 > P@9 > Q@17',
    'truck A@1 > B@9',
    'turn level A 0@1 > 9@9 cw',
    'pull BG left 8mm 1..8',
    'pull BG left 18mm 1..7',
    'shake 1mm 1..8',
  ].map((move) =>
    compileText(
      `cut 1\n${AROUND}field P full at 14,0\nfield Q full at 14,9\n${FIELDS}${move} ${typed.replace('ease 6 12', 'ease 2 4')}\n`,
    ),
  );
  expect(moves.some(({ diagnostics }) => diagnostics.every(({ severity }) => severity !== 'error'))).toBe(
    true,
  );
});

test.each(
  sections('en', [])
    .find(({ title }) => title === 'Charts')!
    .rows.map(([typed]) => typed),
)('%s is a passage', (typed) => {
  const { diagnostics } = compileText(`cut 1\ntime 1+0\nA: ${typed}..\n`);
  expect(said(diagnostics)).toEqual([]);
});

test('a statement says what its page is called', () => {
  const rows = new Map(sections('en', []).flatMap((section) => section.rows));
  const fade = statementTable.find(({ word }) => word === 'fade')!;
  expect(rows.get(fade.example)).toBe(statementPages.fade!.title);
  expect(named()).toContain('fade');
  // A timeline stands in the strips.
  expect(named()).not.toContain('timeline');
});

test('the commands of the program are its last section', () => {
  expect(sections('en', [['check', 'say what is wrong']]).at(-1)).toEqual({
    title: 'Commands: cutwright …',
    rows: [['check', 'say what is wrong']],
  });
});

// ---- in Japanese

await loadReference('ja');

test('what is typed is the same in Japanese, but for the words that speak of a line', () => {
  const typed = (language: UserLanguage) =>
    sections(language, []).map(({ rows }) =>
      rows.map(([one]) => one.replace('字下げした行', 'indented line')),
    );
  expect(typed('ja')).toEqual(typed('en'));
  expect(strips('ja').map((strip) => strip.typed)).toEqual(strips('en').map((strip) => strip.typed));
});

test('no English word stands on it outside of what is typed', () => {
  const { card } = referenceWords('ja');
  const all = sections('ja', []);
  const code = [...all, { title: '', rows: strips('ja').map((strip) => [strip.typed, ''] as const) }]
    .flatMap(({ rows }) => rows.map(([typed]) => typed))
    .join(' ');
  const texts = [
    ...all.flatMap(({ title, rows }) => [title, ...rows.map(([, meaning]) => meaning)]),
    ...strips('ja').map(({ meaning }) => meaning),
    card.document,
    card.title,
    card.about,
    card.indented[0],
  ];
  for (const text of texts) expect(englishIn(text, `${code} early late both even`), text).toEqual([]);
  const rows = new Map(all.flatMap((section) => section.rows));
  expect(rows.get('sideways')).toBe('左右に、右から（shake、sway）');
  const fix = statementTable.find(({ word }) => word === 'fix')!;
  expect(rows.get(fix.example)).toBe('カメラの位置（FIX）');
});

// ---- pieces of a sheet on the card

const { metrics } = testFonts();

test.each(strips('en'))('$typed prints over ten frames what stands on the card', ({ typed }) => {
  const { diagnostics, solved } = compileText(`cut 1\ntime ${ROWS}\nA: ${typed}\n`);
  expect(said(diagnostics.filter(({ severity }) => severity !== 'hint'))).toEqual([]);
  const { marks } = drawnStrip(typed, 'en', 20, 30, 1, metrics);
  const keys = new Set(
    solved!.levels[0]!.exposures.flatMap(({ kind, drawing }) => (kind === 'key' ? [drawing!] : [])),
  );
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  for (const key of keys) expect(texts).toContain(key);
});

const ringOf = (k: number) => {
  const { marks, heightMm } = drawnStrip('1:4 2..', 'en', 20, 30, k, metrics);
  const ring = marks.find((mark) => mark.kind === 'circle');
  if (ring?.kind !== 'circle') throw new Error('no ring');
  return { ring, heightMm };
};

test('the first key stands in the middle of its column, on the first row', () => {
  const { ring, heightMm } = ringOf(1);
  expect(ring.x).toBeCloseTo(20);
  expect(ring.y).toBeCloseTo(30 + heightMm / ROWS / 2, 1);
});

test('twice as large is twice as high, with rings of twice the size', () => {
  const [once, twice] = [ringOf(1), ringOf(2)];
  expect(twice.heightMm).toBeCloseTo(2 * once.heightMm);
  expect(twice.ring.r).toBeCloseTo(2 * once.ring.r);
  expect(twice.ring.x).toBeCloseTo(20);
});

test('what is no timeline of so many frames is refused with the message of the language', () => {
  expect(() => drawnStrip('1:4 2:', 'en', 20, 30, 1, metrics)).toThrow();
  expect(() => drawnStrip('x..', 'en', 20, 30, 1, metrics)).toThrow('no key on the first row');
});

test.each(strips('ja'))('$typed is drawn without an English word on the Japanese card', ({ typed }) => {
  const { marks } = drawnStrip(typed, 'ja', 20, 30, 1, metrics);
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  for (const text of texts) expect(englishIn(text, ''), text).toEqual([]);
});
