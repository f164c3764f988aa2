/** The Japanese table says all that the English one says, in Japanese: the types hold codes and parameters, these tests the words. */

import { describe, expect, test } from 'vitest';
import { type Code, catalogue } from '../../src/language/catalogue/index.js';
import type { Diagnostic } from '../../src/language/diagnostic.js';
import { aboutCode, actionOf, loadMessages, messageOf, noteOf, textsOf } from '../../src/language/message.js';
import { compileText } from '../compile.js';
import { englishIn } from '../japanese-text.js';

await loadMessages('ja');

const codes = Object.keys(catalogue) as Code[];

function saidOf(one: Diagnostic): string[] {
  return [
    messageOf(one, 'ja'),
    ...one.notes.map((note) => noteOf(note, 'ja')),
    ...(one.fix ? [actionOf(one.fix, 'ja')] : []),
  ];
}

/** Every value of the parameters of a diagnostic, which come from the text that it is about. */
const given = (one: Diagnostic): string => JSON.stringify([one.parameters, one.notes, one.fix]);

describe('both tables', () => {
  test('have the same codes, notes and fixes, with the same variants', () => {
    const shape = (of: unknown): unknown =>
      typeof of === 'object' && of !== null
        ? Object.fromEntries(
            Object.entries(of)
              .sort(([a], [b]) => (a < b ? -1 : 1))
              .map(([key, value]) => [key, shape(value)]),
          )
        : typeof of;
    expect(shape(textsOf('ja'))).toEqual(shape(textsOf('en')));
  });
});

describe.each(codes)('%s', (code) => {
  test('has a title and an explanation in Japanese', () => {
    const { title, explanation } = aboutCode(code, 'ja');
    expect(title).not.toMatch(/[。]$/);
    expect(explanation).toMatch(/[。？]$/);
    expect(explanation).not.toMatch(/[,.] /);
    expect(englishIn(title, '')).toEqual([]);
    expect(englishIn(explanation, '')).toEqual([]);
  });
});

const failing = codes.flatMap((code) => {
  const { example } = catalogue[code];
  return example.kind === 'text' ? [{ code, ...example }] : [];
});

test.each(failing)('the message of $code is a Japanese sentence', ({ code, failing: text, files }) => {
  const found = compileText(text, files).diagnostics.filter((one) => one.code === code);
  expect(found).not.toEqual([]);
  for (const one of found) {
    const said = saidOf(one);
    expect(said[0]).toMatch(/^[^\n]*[。？]$/);
    for (const each of said) {
      expect(englishIn(each, given(one)), each).toEqual([]);
      expect(each.replace(/`[^`]*`/g, '')).not.toMatch(/undefined|null|NaN|\[object|function/);
    }
  }
});
