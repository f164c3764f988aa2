/** No text is smaller than its paper allows, nor condensed more than can be read. */

import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cutPages } from '../../src/build/printed-parts.js';
import type { Page } from '../../src/sheet/display-list.js';
import { PAPERS, type Paper } from '../../src/shot/settings.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { LABELS } from '../../src/words/labels.js';
import { compileFiles } from '../compile.js';
import { CUTS } from './cuts.js';
import { lookOf, solvedCut, textsOf } from './laid.js';

const MM_A_POINT = 25.4 / 72;
/** 5 pt where copies are made smaller, 5.5 pt on paper that is copied at its size: the project's own rule for its sheets. */
const SMALLEST_PT = (paper: Paper): number => (paper === 'A3' || paper === 'tabloid' ? 5 : 5.5);
const NARROWEST = 0.8;

const goldens = ['japan', 'japanese', 'west'].flatMap((folder) =>
  readdirSync(`tests/cuts/${folder}`)
    .filter((name) => name.endsWith('.cut'))
    .map((name) => `tests/cuts/${folder}/${name}`),
);
const compiled = [...(await compileFiles('examples/saltmarsh/cuts', 'examples/west', ...goldens))];
const all: [string, SolvedShot][] = [
  ...compiled.flatMap(([name, { solved }]): [string, SolvedShot][] => (solved ? [[name, solved]] : [])),
  ...Object.entries(CUTS).map(([name, text]): [string, SolvedShot] => [name, solvedCut(text)]),
];

/** `text size squeeze` of each text that is too small. */
function tooSmall(pages: readonly Page[], paper: Paper): string[] {
  const least = SMALLEST_PT(paper) * MM_A_POINT - 1e-6;
  return pages.flatMap(({ marks, form, label }) =>
    textsOf([...marks, ...(form?.marks ?? [])])
      .filter(({ sizeMm, squeeze = 1 }) => sizeMm < least || squeeze < NARROWEST - 1e-6)
      .map(
        ({ text, sizeMm, squeeze = 1 }) =>
          `${label}: ${text} ${(sizeMm / MM_A_POINT).toFixed(2)} pt ${squeeze.toFixed(2)}`,
      ),
  );
}

describe.each(PAPERS)('%s', (paper) => {
  test.each(all)('%s', (_, solved) => {
    for (const convention of ['japan', 'west'] as const)
      for (const labels of LABELS) {
        const look = lookOf({ ...solved.shot.settings, paper, convention, labels });
        const { parts } = cutPages(solved, look, { trueSize: true });
        expect(
          tooSmall(
            parts.flatMap(({ pages }) => pages),
            paper,
          ),
        ).toEqual([]);
      }
  });
});
