import { beforeAll, describe, expect, test } from 'vitest';
import type { Paper } from '../pdf.js';
import { caseOf, DISSOLVES, picker, RICH, somewhatMarked } from './cuts.js';
import { LIES } from './meddle.js';
import { type Case, faults, type Laid, layOut, printAndOpen, withPage } from './print.js';
import { type ReadPage, readSheet } from './sheet.js';

/** How often each lie is told, each time elsewhere. */
const TIMES = 5;

const honest = (['japan', 'west'] as const).flatMap((convention) => [
  layOut(caseOf(`${convention}, everything, ja`, RICH, { convention, labels: 'ja', paper: 'B4' }), false),
  layOut(caseOf(`${convention}, everything, en`, RICH, { convention, labels: 'en', paper: 'A4' }), false),
  layOut(caseOf(`${convention}, dissolves`, DISSOLVES, { convention, paper: 'A4' }), false),
  layOut(marked(caseOf(`${convention}, marked`, RICH, { convention, paper: 'A4' })), false),
]);

function marked(one: Case): Case {
  return { ...one, marked: somewhatMarked(one, picker(5)) };
}
let read: ReadPage[][];

beforeAll(async () => {
  read = (await printAndOpen(honest)).map((papers) => papers.map(readSheet));
});

/** One lie in one page of one of the cuts; pages that have nothing of the kind are passed over. */
function told(lie: string, seed: number): Laid {
  const pick = picker(seed);
  for (let tries = 0; tries < 60; tries++) {
    const which = pick(honest.length);
    const one = honest[which]!;
    const index = pick(one.pages.length);
    const page = LIES[lie]!(one.pages[index]!, read[which]![index]!, pick);
    if (page) return withPage(one, index, page);
  }
  throw new Error(`no page has room for ${lie}`);
}

test('the pages as they are agree with the solver', async () => {
  const papers = await printAndOpen(honest);
  expect(honest.map((one, i) => faults(one, papers[i]!))).toEqual(honest.map(() => []));
});

describe.each(Object.keys(LIES))('%s', (lie) => {
  test('is found out', async () => {
    const liars = Array.from({ length: TIMES }, (_, i) => told(lie, i + 1));
    const papers: Paper[][] = await printAndOpen(liars);
    const believed = liars.filter((one, i) => faults(one, papers[i]!).length === 0).map((one) => one.name);
    expect(believed).toEqual([]);
  });
});
