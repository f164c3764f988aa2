/** The card: one page on each paper, readable, and true. */

import { describe, expect, test } from 'vitest';
import { memoryHost } from '../src/host/memory-host.js';
import { statementTable } from '../src/language/statements/statement-table.js';
import { ROWS, sections, strips } from '../src/reference/card/card-content.js';
import { cardPage } from '../src/reference/card/card-page.js';
import { drawnStrip } from '../src/reference/card/card-strip.js';
import { pageName } from '../src/reference/statement-pages.js';
import { PAPERS } from '../src/shot/settings.js';
import { run } from './command/run.js';
import { compileText, said } from './compile.js';
import { testFonts } from './fonts.js';
import { openPrinted } from './pdf.js';
import { everyMark, offThePaper, struckOut, textClashes, tooSmall } from './sheet/clashes.js';

const { metrics } = testFonts();
/** As many as there are, of the usual length. */
const COMMANDS = Array.from(
  { length: 16 },
  (_, i) => [`command${i}`, 'say what differs between two versions of a cut'] as const,
);
/** 6 pt. */
const LEAST_MM = 2.11;

describe.each(PAPERS)('on %s', (paper) => {
  test('it is one page whose texts are large enough, on the paper and apart from each other', () => {
    const page = cardPage(paper, COMMANDS, metrics);
    expect(offThePaper(page)).toEqual([]);
    expect(textClashes(everyMark(page))).toEqual([]);
    const written = {
      ...page,
      marks: page.marks.filter((mark) => mark.kind !== 'text' || mark.y > page.heightMm / 3),
    };
    expect(tooSmall(written, LEAST_MM)).toEqual([]);
    expect(struckOut({ ...page, marks: written.marks })).toEqual([]);
  });

  test('every row of it is there in full', () => {
    const page = cardPage(paper, COMMANDS, metrics);
    const flat = page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');
    for (const { title, rows } of sections(COMMANDS))
      for (const text of [title, ...rows.flat()]) expect(flat).toContain(text);
  });
});

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

test.each(strips)('$typed prints over ten frames what stands on the card', ({ typed }) => {
  const { diagnostics, solved } = compileText(`cut 1\ntime ${ROWS}\nA: ${typed}\n`);
  expect(said(diagnostics.filter(({ severity }) => severity !== 'hint'))).toEqual([]);
  const { marks } = drawnStrip(typed, 20, 30, 1, metrics);
  const keys = new Set(
    solved!.levels[0]!.exposures.flatMap(({ kind, drawing }) => (kind === 'key' ? [drawing!] : [])),
  );
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  for (const key of keys) expect(texts).toContain(key);
});

test('the command writes one page that names its own commands', async () => {
  const host = memoryHost();
  const { status } = await run(host, 'explain', '--card', '--paper', 'B5', '-o', 'b5.pdf');
  expect(status).toBe(0);
  const { pages } = await openPrinted(host.files.get('/work/b5.pdf')!);
  expect(pages).toHaveLength(1);
  const texts = pages[0]!.texts.map(({ text }) => text);
  for (const name of ['check', 'build', 'number', 'explain']) expect(texts).toContain(name);
});
