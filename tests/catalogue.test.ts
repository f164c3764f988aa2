/** Every message of the program has an entry that is true: its faulty example gives it, its mended one does not. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { files } from '../src/language/catalogue/files-codes.js';
import { type Code, catalogue, type Entry } from '../src/language/catalogue/index.js';
import { aboutCode } from '../src/language/message.js';
import { withoutMark } from '../src/language/source.js';
import { withEdits } from '../src/language/statement-reader.js';
import { situations } from './command/situations.js';
import { compileText, said } from './compile.js';

const all = Object.entries(catalogue) as [Code, Entry][];
const texts = all.flatMap(([code, entry]) =>
  entry.example.kind === 'text' ? [{ code, ...entry.example, severity: entry.severity }] : [],
);
/** The file that the examples stand in. */
const FILE = 'this.cut';

describe.each(texts)('$code', ({ code, failing, mended, files: others }) => {
  const faulty = compileText(failing, others).diagnostics;

  test('is what its faulty example gives', () => {
    expect(
      faulty.map((one) => one.code),
      said(faulty).join('\n'),
    ).toContain(code);
  });

  test('is gone from its mended example, and no error is left', () => {
    const { diagnostics } = compileText(mended, others);
    const left = diagnostics.filter((one) => one.code === code || one.severity === 'error');
    expect(said(left)).toEqual([]);
  });

  test('is gone after the edit that is offered', () => {
    const count = (text: string): number =>
      compileText(text, others).diagnostics.filter((one) => one.code === code).length;
    for (const { fix } of faulty.filter((one) => one.code === code && one.fix)) {
      const edits = fix!.edits.map(({ span, text }) => ({ ...span, text }));
      expect(edits.map(({ file }) => file)).toEqual(edits.map(() => FILE));
      expect(count(withEdits(withoutMark(failing), edits))).toBeLessThan(count(failing));
    }
  });
});

test('every situation has a test of its own, and nothing else is in that table', () => {
  const named = all.filter(([, { example }]) => example.kind === 'situation').map(([code]) => code);
  expect(Object.keys(situations).sort()).toEqual(named.sort());
});

test('one code means one thing: no two parts of the catalogue share one', () => {
  const codes = catalogueSources().flatMap(({ text }) =>
    [...text.matchAll(/^ {2}'?([a-z][a-z-]*)'?: \{$/gm)].map((m) => m[1]!),
  );
  expect(codes.sort()).toEqual(Object.keys(catalogue).sort());
});

test('entries are written for people', () => {
  for (const [code] of all) {
    const { title, explanation } = aboutCode(code, 'en');
    expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(title, code).not.toBe('');
    expect(explanation, code).toMatch(/^[^a-z].*[.?!]$/s);
  }
  expect(Object.keys(files)).not.toEqual([]);
});

function catalogueSources(): { name: string; text: string }[] {
  const folder = 'src/language/catalogue';
  return readdirSync(folder)
    .filter((name) => name.endsWith('-codes.ts'))
    .map((name) => ({ name, text: readFileSync(`${folder}/${name}`, 'utf8') }));
}
