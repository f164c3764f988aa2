/** Pinned numbers of levels that reuse another cut's, on random chains of three cuts. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { celsEdits } from '../../src/language/cels-line.js';
import { parse } from '../../src/language/parse.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { pinsFor, unpinnable } from '../../src/solve/cels-lines.js';
import type { SolvedLevel } from '../../src/solve/solved-shot.js';
import { solveText } from './shown.js';

const way = fc
  .tuple(
    fc.integer({ min: 1, max: 4 }),
    fc.array(fc.tuple(fc.nat(3), fc.integer({ min: 1, max: 4 })), { maxLength: 3 }),
  )
  .map(([first, rest]) =>
    rest.reduce((text, [dashes, key]) => `${text}${'-'.repeat(dashes) || ' '}${key}`, `${first}`),
  );
const item = fc.oneof(
  way,
  fc
    .tuple(way, fc.nat(2), fc.integer({ min: 1, max: 12 }))
    .map(([of, back, frames]) => `(${of}${'-'.repeat(back)}):${frames}`),
);
/** Few keys and counts, so that the cuts have much in common, and much nearly in common. */
const timeline = fc.array(item, { minLength: 1, maxLength: 3 }).map((items) => `${items.join(' x:2 ')} x..`);

const cut = (number: number, items: string, from: number | null) =>
  `cut ${number}\ntime 10+0\n${from === null ? '' : `level C reuse ${from}/C\n`}C: ${items}\n`;

interface Numbered {
  readonly text: string;
  readonly level: SolvedLevel;
  readonly errors: readonly string[];
}

function solved(text: string, source: SolvedLevel | null): Numbered {
  const found = solveText(text, source ? { reused: new Map([['C', source]]) } : {});
  const level = found.solved.levels.find(({ name }) => name === 'C')!;
  return { text, level, errors: found.codes.filter((code) => code.startsWith('error')) };
}

/** The text as `number` would write it. */
function pinned(text: string, source: SolvedLevel | null): string {
  const found = solveText(text, source ? { reused: new Map([['C', source]]) } : {});
  const added = new Map(pinsFor(found.solved).map(({ level, names }) => [level, names]));
  const edits = celsEdits(text, parse('this.cut', text).tree, added);
  return withEdits(
    text,
    edits.map((edit) => ({ ...edit.span, text: edit.text })),
  );
}

const numbers = ({ drawings }: SolvedLevel) =>
  drawings.map(
    ({ cel, drawing, reused, firstFrame }) => `${cel} ${drawing}${reused ? ' reused' : ''} @${firstFrame}`,
  );

describe('a chain of cuts that reuse each other', () => {
  test('keeps all numbers and names when they are pinned, and has nothing to pin then', () => {
    const seen = { pinned: 0, refused: 0, otherCounts: 0 };
    fc.assert(
      fc.property(timeline, timeline, timeline, fc.boolean(), (first, second, third, sourcePinned) => {
        let source: SolvedLevel | null = null;
        for (const [i, items] of [first, second, third].entries()) {
          const text = cut(i + 6, items, i === 0 ? null : i + 5);
          const before = solved(text, source);
          // A text with errors is not numbered.
          if (before.errors.length > 0) return;
          const names = [...before.level.drawings, ...before.level.inherited.drawings].map(
            ({ drawing }) => drawing,
          );
          expect([text, new Set(names).size]).toEqual([text, names.length]);
          if (unpinnable(before.level)) {
            seen.refused++;
            source = before.level;
            continue;
          }
          const line = pinned(text, source);
          const after = solved(line, source);
          expect([line, after.errors]).toEqual([line, []]);
          expect([line, numbers(after.level)]).toEqual([line, numbers(before.level)]);
          expect([line, pinned(line, source)]).toEqual([line, line]);
          if (source && line !== text) seen.pinned++;
          if (before.level.drawings.some(({ drawing, reused }) => !reused && drawing.includes('/')))
            seen.otherCounts++;
          source = sourcePinned ? after.level : before.level;
        }
      }),
      { numRuns: 150 },
    );
    expect(seen.pinned).toBeGreaterThan(50);
    expect(seen.refused).toBeLessThan(seen.pinned);
  });
});
