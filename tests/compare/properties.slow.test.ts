import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence, telling } from '../../src/compare/change-wording.js';
import { changedRows, rowsOfChange, samePlace } from '../../src/compare/changed-rows.js';
import { type Change, compare } from '../../src/compare/compare-cuts.js';
import { compileText } from '../compile.js';
import { type GeneratedCut, generatedCuts } from '../generate.js';
import { SEEDS } from './seeds.js';

const RUNS = Number(process.env.RUNS ?? 40);

/** Null where the text has errors. */
function solvedOrNull(text: string) {
  const { solved, diagnostics } = compileText(text);
  return diagnostics.some(({ severity }) => severity === 'error') ? null : solved;
}

describe.each(SEEDS)('$name', ({ edit, kinds }) => {
  test('is the one change that is named', () => {
    let tried = 0;
    fc.assert(
      fc.property(generatedCuts({ levels: { min: 2, max: 4 } }), fc.nat({ max: 999 }), (cut, pick) => {
        const edited = edit(cut, pick);
        fc.pre(edited !== null);
        const [old, now] = [solvedOrNull(cut.text), solvedOrNull(edited!.text)];
        fc.pre(old !== null && now !== null);
        // What is written may be pushed past the end of the sheet, and never be seen.
        const rows = ({ levels }: NonNullable<typeof old>) =>
          JSON.stringify(
            levels.map((one) => [one.name, one.title, one.exposures.map(({ drawing }) => drawing)]),
          );
        fc.pre(rows(old!) !== rows(now!));
        tried++;
        const changes = compare(old!, now!);
        const t = telling(now!, 'en');
        const note = changes.map((change) => sentence(change, t)).join('\n');
        const [main, ...along] = kinds;
        const mains = changes.filter(({ kind }) => main!.includes(kind));
        expect(mains.length, note).toBe(1);
        expect(changes.filter(({ kind }) => !kinds.flat().includes(kind)).length, note).toBe(0);
        for (const more of along)
          expect(changes.filter(({ kind }) => more.includes(kind)).length).toBeLessThan(2);
        for (const change of changes) expect((change as { level?: string }).level).toBe(edited!.level);
        expect(compare(now!, old!).length).toBeGreaterThan(0);
      }),
      { numRuns: RUNS, maxSkipsPerRun: 1000 },
    );
    expect(tried).toBeGreaterThan(RUNS / 2);
  });
});

test('of a chain of edits each is told as if it were alone', () => {
  const plain = (changes: readonly Change[]) => changes.map((change) => JSON.stringify(change)).sort();
  fc.assert(
    fc.property(
      generatedCuts({ levels: { min: 3, max: 5 } }),
      fc.array(fc.record({ seed: fc.nat(5), pick: fc.nat(999) }), { minLength: 3, maxLength: 5 }),
      (cut, steps) => {
        let { statements } = cut;
        const old = solvedOrNull(cut.text)!;
        const alone: Change[] = [];
        const levels = new Set<string>();
        for (const { seed, pick } of steps) {
          const edited = SEEDS[seed]!.edit({ ...cut, statements }, pick);
          // One edit a level: two of one level may be one change, or undo each other.
          if (!edited || levels.has(edited.level)) continue;
          const next = edited.text.trimEnd().split('\n');
          const only = statements.find((one) => !next.includes(one));
          const now = only && solvedOrNull(cut.text.replace(only, next[statements.indexOf(only)] ?? ''));
          if (!now || !solvedOrNull(edited.text)) continue;
          if (next.length !== statements.length) continue;
          levels.add(edited.level);
          statements = next;
          alone.push(...compare(old, now));
        }
        fc.pre(levels.size > 1);
        expect(plain(compare(old, solvedOrNull(`${statements.join('\n')}\n`)!))).toEqual(plain(alone));
      },
    ),
    { numRuns: RUNS, maxSkipsPerRun: 1000 },
  );
});

/** The same content written otherwise. */
function rewritten({ statements }: GeneratedCut, numbers: readonly number[]): string {
  const head = statements.filter((one) => /^(cut|time|stack) /.test(one));
  const rest = statements.filter((one) => !head.includes(one) && !/^memo /.test(one));
  const memos = statements.filter((one) => /^memo /.test(one));
  const lines = [...rest]
    .map((one, i) => ({ one, key: (numbers[i % numbers.length]! * (i + 7)) % 101 }))
    .sort((a, b) => a.key - b.key)
    .map(({ one }) => `${one.replace(/ (?=["\d])/g, '  ')}   # ${one.length}`);
  return `\uFEFF# begins\r\n\r\n${[...lines, ...head, ...memos].join('\r\n\r\n')}\r\n`;
}

test('the same content in other formatting says nothing', () => {
  fc.assert(
    fc.property(generatedCuts({ stack: true }), fc.array(fc.nat(100), { minLength: 3 }), (cut, numbers) => {
      const [old, now] = [solvedOrNull(cut.text), solvedOrNull(rewritten(cut, numbers))];
      expect(now).not.toBeNull();
      expect(compare(old!, old!)).toEqual([]);
      expect(compare(old!, now!)).toEqual([]);
    }),
    { numRuns: RUNS },
  );
});

test('two cuts differ both ways round or not at all, and every change has its sentences and its rows', () => {
  fc.assert(
    fc.property(generatedCuts({ levels: { max: 3 } }), generatedCuts({ levels: { max: 3 } }), (a, b) => {
      const [old, now] = [solvedOrNull(a.text), solvedOrNull(b.text)];
      fc.pre(old !== null && now !== null);
      const changes = compare(old!, now!);
      expect(changes.length > 0).toBe(compare(now!, old!).length > 0);
      for (const change of changes) {
        for (const language of ['en', 'ja'] as const) {
          const said = sentence(change, telling(now!, language));
          expect(said).toMatch(/\S/);
          expect(said).not.toMatch(/undefined|NaN|null|\[object|\n/);
        }
        if (change.rows) {
          expect(change.rows.from).toBeGreaterThanOrEqual(1);
          expect(change.rows.to).toBeGreaterThanOrEqual(change.rows.from);
          expect(change.rows.to).toBeLessThanOrEqual(now!.shot.length);
        }
      }
      // Each change that says something of rows has a bar in its column.
      const marked = changedRows(old!, now!, changes);
      for (const { place, rows, kind } of changes)
        if (place && rows)
          expect(
            marked.some((one) => samePlace(place, one.place)),
            kind,
          ).toBe(true);
      expect(changedRows(now!, now!, [])).toEqual([]);
      // A retake note shows rows of the sheet, some of which differ.
      for (const change of changes) {
        const found = rowsOfChange(old!, now!, change, changes);
        expect(found !== null).toBe(change.place !== null && change.rows !== null);
        if (!found) continue;
        expect(found.differs).toHaveLength(now!.shot.length);
        expect(found.differs).toContain(true);
        expect(found.rows.from).toBeGreaterThanOrEqual(1);
        expect(found.rows.to).toBeGreaterThanOrEqual(found.rows.from);
        expect(found.rows.to).toBeLessThanOrEqual(now!.shot.length);
      }
    }),
    { numRuns: RUNS },
  );
});
