/**
 * First mistakes of people who know the trade and not the syntax, western and Japanese, each with its message and the line as it is
 * mended. `first-mistakes.txt` holds them: the line as typed, then indented what is said in English and in Japanese; after `→` the line after its mend.
 * UPDATE=1 writes what is said today; read it before you commit.
 */

import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { acceptableCodes, type Code } from '../../src/language/catalogue/index.js';
import type { Diagnostic } from '../../src/language/diagnostic.js';
import { loadMessages, messageOf } from '../../src/language/message.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { compiled } from '../fuzz/ways.js';

await loadMessages('ja');

const TABLE = 'tests/language/first-mistakes.txt';

/** What stands around a line, by the heading of the table: what the line itself says is left out. */
const AROUND = {
  cut: 'cut 1\n',
  time: 'time 2+0\n',
  A: 'A: 1..\n',
  BG: 'level BG size 600x300mm\n',
  other: 'field B full at 20,0\nfield C 60% at 10,0\n',
} as const;
type Heading = keyof typeof AROUND;

/** Hints on the camera and the drawings, which have nothing to do with what was mistyped. */
const BESIDE: ReadonlySet<Code> = new Set(
  acceptableCodes().filter((code) => !['time-in-frames', 'key-after-group', 'chart-idle'].includes(code)),
);

function around(heading: Heading, line: string): { text: string; start: number } {
  const before = Object.entries(AROUND)
    .filter(([name]) => name !== heading || name === 'other')
    .map(([, text]) => text)
    .join('');
  return { text: `${before}${line}\n`, start: before.length };
}

/** Lines with two mistakes, of which a mend takes one away. */
const TWO_MISTAKES = [
  'A: key 1 key 2..',
  'A: A1 A2..',
  'A: K1 K2..',
  'A: 1-2-',
  'voice Pim 1+1..2+0 Wait!',
  'FIX A',
];

const errors = (found: readonly Diagnostic[]): Diagnostic[] =>
  found.filter(({ severity }) => severity === 'error');

/** The messages of a line, each with the line after its mend. */
function said(heading: Heading, typed: string): string[] {
  const line = typed.replaceAll('\\n', '\n');
  const { text, start } = around(heading, line);
  return compiled(text).diagnostics.flatMap((one) => {
    if (BESIDE.has(one.code)) return [];
    const out = [`${one.severity} ${one.code}: ${messageOf(one, 'en')}`, `ja: ${messageOf(one, 'ja')}`];
    if (!one.fix) return out;
    const mended = withEdits(
      text,
      one.fix.edits.map(({ span, text: written }) => ({ ...span, text: written })),
    );
    const left = errors(compiled(mended).diagnostics);
    return [
      ...out,
      `→ ${mended.slice(start, -1).replaceAll('\n', '\\n')}${left.map(({ code }) => ` ✗${code}`).join('')}`,
    ];
  });
}

interface Row {
  readonly heading: Heading;
  readonly typed: string;
  readonly said: readonly string[];
}

function table(): Row[] {
  const rows: { heading: Heading; typed: string; said: string[] }[] = [];
  let heading: Heading = 'other';
  for (const line of readFileSync(TABLE, 'utf8').split('\n')) {
    if (line.startsWith('## ')) heading = line.slice(3) as Heading;
    else if (line.startsWith('    ')) rows.at(-1)!.said.push(line.slice(4));
    else if (line !== '') rows.push({ heading, typed: line, said: [] });
  }
  return rows;
}

const rows = table();

if (process.env.UPDATE) {
  let heading = '';
  const lines = rows.flatMap((row) => {
    const head = row.heading === heading ? [] : [`## ${row.heading}`];
    heading = row.heading;
    return [...head, row.typed, ...said(row.heading, row.typed).map((one) => `    ${one}`)];
  });
  writeFileSync(TABLE, `${lines.join('\n')}\n`);
}

describe('first mistakes', () => {
  test.each(rows.map((row) => [row.typed, row] as const))('%s', (_, row) => {
    expect(said(row.heading, row.typed)).toEqual(row.said);
  });

  test('are told in Japanese in sentences of its own', () => {
    for (const { typed, said: all } of rows)
      for (const one of all.filter((text) => text.startsWith('ja: ')))
        expect(one.slice(4), typed).toMatch(/[\p{Script=Hiragana}\p{Script=Katakana}].*[。？]$/su);
  });

  test('are many, each is told, and a mend leaves the cut without an error of its own', () => {
    expect(rows.length).toBeGreaterThanOrEqual(227);
    expect(rows.filter((row) => row.said.length === 0)).toEqual([]);
    // What is left is another mistake of the same line, which has a message of its own once it is seen.
    const left = rows
      .filter(({ said }) => said.some((one) => / ✗(?!timeline-short)/.test(one)))
      .map(({ typed }) => typed);
    expect(left).toEqual(TWO_MISTAKES);
  });
});
