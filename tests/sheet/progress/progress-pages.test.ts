import { describe, expect, test } from 'vitest';
import { type ProducedCut, type Production, progressTable } from '../../../src/count/count-stages.js';
import { STAGE_STATES, USUAL_STAGES } from '../../../src/count/stage-states.js';
import { dayWords, progressPages } from '../../../src/sheet/progress/progress-pages.js';
import { smallestTextMm } from '../../../src/sheet/sheet-geometry.js';
import { PAPERS } from '../../../src/shot/settings.js';
import { wordsOf } from '../../../src/words/words.js';
import { stageRow } from '../../count/stages.js';
import { everyMark, offThePaper, struckOut, textClashes, tooSmall } from '../clashes.js';
import { lookOf, textsOf } from '../laid.js';

const PRODUCTION: Production = {
  stages: USUAL_STAGES,
  due: [
    { stage: 'layout', cut: null, date: '2027-03-10' },
    { stage: 'key', cut: null, date: '2027-04-20' },
  ],
  rates: new Map([
    ['key', { amount: 1450, decimals: 2, currency: 'shells', unit: 'key' }],
    ['finish', { amount: 2, decimals: 0, currency: 'EUR', unit: 'drawing' }],
  ]),
};

/** Cuts at all sorts of stages, told by their numbers. */
function episode(count: number, production = PRODUCTION) {
  const cuts = Array.from(
    { length: count },
    (_, i): ProducedCut => ({
      ...{ cut: `${i + 1}`, key: `${i + 1}`, title: `What is seen in cut ${i + 1} of the episode` },
      payable:
        i % 9 === 5
          ? null
          : { counts: { keys: i, breakdowns: 0, inbetweens: 2, drawings: i + 2 }, time: 24, fps: 24 },
    }),
  );
  const rows = cuts.flatMap(({ cut }, i) =>
    production.stages
      .slice(0, i % (production.stages.length + 1))
      .map((stage, j) =>
        stageRow(
          `${cut} ${stage} ${STAGE_STATES[(i + j) % 3]} 2027-03-${10 + j} ${'ABC'[i % 3]}.Marlowe-Quist`,
        ),
      ),
  );
  return progressTable(cuts, rows, production, '2027-04-05');
}

describe.each(PAPERS)('%s', (paper) => {
  for (const labels of ['en', 'ja'] as const)
    for (const convention of ['japan', 'west'] as const)
      test(`print in ${labels} for ${convention} is apart, in reach, large enough and free of lines`, () => {
        for (const count of [1, 60]) {
          const pages = progressPages(episode(count), lookOf({ paper, labels, convention }));
          for (const page of pages)
            expect([
              ...offThePaper(page),
              ...tooSmall(page, smallestTextMm(paper)),
              ...textClashes(everyMark(page)),
              ...struckOut(page),
            ]).toEqual([]);
        }
      });
});

describe('the pages', () => {
  const table = episode(60);
  const pages = progressPages(table, lookOf());
  const texts = pages.flatMap((page) => textsOf(page.marks).map(({ text }) => text));

  test('have every cut once, marked where it could not be counted', () => {
    for (const { cut, payable } of table.cuts)
      expect(texts.filter((text) => text === (payable ? cut : `${cut} !`)).length, cut).toBeGreaterThan(0);
  });

  test('have what is to be paid, in each currency, and the sum', () => {
    expect(texts).toContain('14.50 shells per key');
    const due = (currency: string): number =>
      table.people
        .flatMap(({ pay }) => pay.filter((sum) => sum.currency === currency))
        .reduce((sum, { amount }) => sum + amount, 0);
    expect(texts).toContain(`${(due('shells') / 100).toFixed(2)} shells`);
    expect(texts).toContain(`${due('EUR')} EUR`);
  });

  test('tell days that are due in brackets, and how many are past', () => {
    expect(texts).toContain('(04-20)');
    // From 10 March to 5 April.
    expect(texts).toContain('! 26 days late');
  });

  test('go on their side where many stages have no room upright', () => {
    const stages = Array.from({ length: 14 }, (_, i) => `stage-${i + 1}`);
    const [first] = progressPages(episode(20, { stages, due: [], rates: new Map() }), lookOf());
    expect(first!.widthMm).toBeGreaterThan(first!.heightMm);
    expect(textsOf(first!.marks).map(({ text }) => text)).toContain('stage-14');
  });

  test('name stages in the language of the form, and others as they are typed', () => {
    const stages = ['key', 'colour'];
    const [first] = progressPages(
      episode(3, { stages, due: [], rates: new Map() }),
      lookOf({ labels: 'ja' }),
    );
    const said = textsOf(first!.marks).map(({ text }) => text);
    expect(said).toEqual(expect.arrayContaining(['原画', 'colour', '進行表']));
  });
});

test('a day of another year is written whole', () => {
  const words = wordsOf({ labels: 'en', convention: 'japan' }).progress;
  expect(dayWords('2027-03-09', '2027-12-01', words)).toBe('03-09');
  expect(dayWords('2026-12-30', '2027-01-01', words)).toBe('2026-12-30');
});
