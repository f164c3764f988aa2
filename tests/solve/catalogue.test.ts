/**
 * Beside what holds for every message (tests/catalogue.test.ts): those about statements and timelines have examples with nothing
 * else wrong in them, and edits that leave no error at all.
 */

import { describe, expect, test } from 'vitest';
import type { Code } from '../../src/language/catalogue/index.js';
import { statements } from '../../src/language/catalogue/statements-codes.js';
import { timelines } from '../../src/language/catalogue/timelines-codes.js';
import type { Fix } from '../../src/language/diagnostic.js';
import { messageOf } from '../../src/language/message.js';
import { compileText, said } from '../compile.js';

function applied(text: string, fix: Fix): string {
  return [...fix.edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((now, { span, text: by }) => now.slice(0, span.start) + by + now.slice(span.end), text);
}

const texts = Object.entries({ ...statements, ...timelines }).flatMap(([code, { example, severity }]) =>
  example.kind === 'text' ? [{ code: code as Code, severity, ...example }] : [],
);

describe.each(texts)('$code', ({ code, severity, failing, mended, files }) => {
  const found = compileText(failing, files).diagnostics;
  const hits = found.filter((each) => each.code === code);

  test('stands alone in its faulty example, and the mended one is perfect', () => {
    expect(hits, said(found).join('\n')).toHaveLength(1);
    expect(hits[0]!.severity).toBe(severity);
    expect(messageOf(hits[0]!, 'en')).toMatch(/^(?=.*\S[.?]$)[^\n]+$/);
    // Who accepts an error has that error, too.
    if (code !== 'accept-error')
      expect(said(found.filter((each) => each.severity === 'error' && each.code !== code))).toEqual([]);
    expect(said(compileText(mended, files).diagnostics)).toEqual([]);
  });

  const fix = hits[0]?.fix;
  if (!fix) return;
  test('is mended by its edit', () => {
    const text = applied(failing, fix);
    const after = compileText(text, files).diagnostics;
    expect(said(after.filter((each) => each.code === code || each.severity === 'error')), text).toEqual([]);
  });
});
