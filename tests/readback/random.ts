/** Random cuts through the whole house: text, table, pages, file, and back from paper. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Convention, defaults, PAPERS, type Settings } from '../../src/shot/settings.js';
import { type CutOptions, type GeneratedCut, generatedCuts } from '../generate.js';
import { caseOf, picker, somewhatMarked } from './cuts.js';
import { faults, layOut, printAndOpen } from './print.js';

/** Half of the cuts as the generator likes them, some long, some with so many levels that a page needs several sides. */
const KINDS: readonly { readonly options: CutOptions; readonly cuts: number }[] = [
  { options: { levels: { max: 4 }, pieces: 4 }, cuts: 110 },
  { options: { levels: { max: 8 } }, cuts: 60 },
  { options: { levels: { max: 2 }, pieces: 16, words: false }, cuts: 15 },
  { options: { levels: { min: 12, max: 16 }, pieces: 3 }, cuts: 15 },
];
const SEED = 20_12;
/** Cuts in one document. */
const AT_ONCE = 50;

interface Tried {
  readonly cut: GeneratedCut;
  readonly settings: Settings;
}

/** All papers, both label languages and several heights of page come by in turn. */
function settingsFor(convention: Convention, i: number): Settings {
  const unit = convention === 'west' ? 16 : 24;
  const rows = [null, null, 3 * unit, 4 * unit, 96, null][i % 6]!;
  return {
    ...defaults,
    convention,
    paper: PAPERS[i % PAPERS.length]!,
    labels: i % 3 === 1 ? 'ja' : 'en',
    rows,
  };
}

function tried(convention: Convention): Tried[] {
  const cuts = KINDS.flatMap(({ options, cuts }, kind) =>
    fc.sample(generatedCuts(options), {
      numRuns: cuts,
      seed: SEED + kind + (convention === 'west' ? 100 : 0),
    }),
  );
  return cuts.map((cut, i) => ({ cut, settings: settingsFor(convention, i) }));
}

export function randomCuts(convention: Convention): void {
  const all = tried(convention);
  const batches = Array.from({ length: Math.ceil(all.length / AT_ONCE) }, (_, i) =>
    all.slice(i * AT_ONCE, (i + 1) * AT_ONCE),
  );

  describe(`random cuts, ${convention}`, () => {
    test.each(batches.map((batch, i) => ({ batch, from: i * AT_ONCE + 1 })))(
      'say on paper what the solver says, from cut $from on',
      { timeout: 240_000 },
      async ({ batch }) => {
        const laid = batch.map(({ cut, settings }, i) => {
          const one = caseOf(cut.text, cut.text, settings);
          const marked = i % 3 === 0 ? somewhatMarked(one, picker(i)) : undefined;
          // Charts are the same work for all cuts of a kind; every second one prints them.
          return layOut({ ...one, marked }, i % 2 === 0);
        });
        const papers = await printAndOpen(laid);
        const wrong = laid
          .map((one, i) => ({
            text: one.name,
            on: one.settings.paper,
            faults: faults(one, papers[i]!).slice(0, 4),
          }))
          .filter((one) => one.faults.length > 0);
        expect(wrong).toEqual([]);
      },
    );

    test('are many, and need several pages now and then', () => {
      expect(all.length).toBeGreaterThanOrEqual(200);
      const labels = all.flatMap(({ cut, settings }, i) =>
        i % 10 === 9
          ? layOut(caseOf(cut.text, cut.text, settings), false).pages.map((page) => page.label)
          : [],
      );
      expect(labels).toContain('2');
    });
  });
}
