/** A fix that is offered mends: over the example cuts and the failing examples of all messages, with a few changes in each. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Compiled } from '../../src/episode/compile-cut.js';
import { catalogue } from '../../src/language/catalogue/index.js';
import type { Diagnostic, Span } from '../../src/language/diagnostic.js';
import { withoutMark } from '../../src/language/source.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { said } from '../compile.js';
import { mutated, randomOf } from '../fuzz/texts.js';
import { compiled } from '../fuzz/ways.js';

const cuts = readdirSync('examples', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.cut'))
  .sort()
  .map((name) => readFileSync(join('examples', name), 'utf8'));
const failing = Object.values(catalogue).flatMap(({ example }) =>
  example.kind === 'text' ? [example.failing] : [],
);

const FILE = 'this.cut';
const errors = ({ diagnostics }: Compiled): Diagnostic[] =>
  diagnostics.filter(({ severity }) => severity === 'error');
const unread = ({ tree }: Compiled): number => tree!.broken.length;
const graphemes = (text: string): Set<number> =>
  new Set([...new Intl.Segmenter('en').segment(text)].map(({ index }) => index).concat(text.length));

/** How many fixes of a text were tried; fails where one does not keep its promise. */
function tryFixes(text: string): number {
  const typed = withoutMark(text);
  const before = compiled(text);
  const offered = before.diagnostics.filter(({ fix }) => fix?.edits.every(({ span }) => span.file === FILE));
  for (const one of offered) {
    const edits = one.fix!.edits.map(({ span, text }) => ({ start: span.start, end: span.end, text }));
    const mended = withEdits(typed, edits);
    const after = compiled(mended);
    const report = [typed, mended, ...said([one]), '→', ...said(errors(after))].join('\n');

    // What stood before the first edit and behind the last one is as it was.
    const first = Math.min(...edits.map(({ start }) => start));
    const last = Math.max(...edits.map(({ end }) => end));
    const rest = typed.length - last;
    const fromEnd = (at: number): number => mended.length - (typed.length - at);
    const { span: was } = one;
    const start = was.start <= first ? was.start : was.start >= last ? fromEnd(was.start) : first;
    const end = was.end >= last ? fromEnd(was.end) : was.end <= first ? was.end : fromEnd(last);
    const stays = after.diagnostics.filter(
      ({ code, span }) =>
        code === one.code && span.file === was.file && span.start <= end - 1 && span.end >= start + 1,
    );
    expect(said(stays), `the fault stays\n${report}`).toEqual([]);

    expect(unread(after), `more is unreadable\n${report}`).toBeLessThanOrEqual(unread(before));
    const readable = before.tree!.broken.every(
      ({ span }) => span.end < one.span.start || span.start > one.span.end,
    );
    if (readable && one.code !== 'indented-start')
      expect(errors(after).length, `more errors\n${report}`).toBeLessThanOrEqual(errors(before).length);

    // Where it was edited, with all statements that reach into that, before or after.
    const reach = (cut: Compiled, length: number): { start: number; rest: number } => {
      const spans = [...cut.tree!.statements, ...cut.tree!.broken]
        .map(({ span }) => span)
        .filter((span) => span.file === FILE && span.end >= first && span.start <= length - rest);
      return {
        start: Math.min(first, ...spans.map((span) => span.start)),
        rest: Math.min(rest, ...spans.map((span) => length - span.end)),
      };
    };
    const reaches = [reach(before, typed.length), reach(after, mended.length)];
    // A statement that could not be read may show faults of its names and numbers, but none in the words that were written.
    const touched = ({ span }: { readonly span: Span }, length: number): boolean =>
      span.file === FILE && span.end >= first && span.start <= length - rest;
    const uncovered =
      !before.tree!.statements.some((one) => touched(one, typed.length)) &&
      !after.tree!.broken.some((one) => touched(one, mended.length));
    if (uncovered) {
      const written = { start: first, end: mended.length - rest };
      const inside = errors(after).filter(
        ({ span }) =>
          span.file === FILE &&
          span.end > span.start &&
          span.start >= written.start &&
          span.end <= written.end,
      );
      expect(said(inside), `what was written is wrong\n${report}`).toEqual([]);
    }
    const edited = (cut: Compiled, length: number): number =>
      errors(cut).filter(
        ({ span }) =>
          span.file === FILE &&
          span.end >= Math.min(was.start, ...reaches.map((one) => one.start)) &&
          span.start <= length - Math.min(typed.length - was.end, ...reaches.map((one) => one.rest)),
      ).length;
    if (!uncovered)
      expect(edited(after, mended.length), `more errors where it was mended\n${report}`).toBeLessThanOrEqual(
        edited(before, typed.length),
      );

    const whole = graphemes(typed);
    for (const { start, end } of edits)
      for (const at of [start, end])
        if (/^\p{Regional_Indicator}/u.test(typed.slice(at)))
          expect(whole, `half a character\n${report}`).toContain(at);
  }
  return offered.length;
}

describe.each([
  ['failing examples', failing, 1, 900, 300],
  ['example cuts', cuts, 2, 120, 40],
] as const)('%s with a few changes', (_, texts, seed, times, least) => {
  test('are mended by every fix that is offered', { timeout: 300_000 }, () => {
    const random = randomOf(seed);
    let tried = 0;
    for (let i = 0; i < times; i++) tried += tryFixes(mutated(random, texts[i % texts.length]!));
    expect(tried).toBeGreaterThan(least);
  });
});

test('every failing example is mended by its fixes', { timeout: 60_000 }, () => {
  const tried = failing.reduce((sum, text) => sum + tryFixes(text), 0);
  expect(tried).toBeGreaterThan(40);
});
