import { describe, expect, test } from 'vitest';
import { coverPages } from '../../../src/sheet/cover/cover-page.js';
import type { CutProduction } from '../../../src/sheet/page-look.js';
import { lookOf, solvedCut, textsOf } from '../laid.js';
import { CUT, PRODUCTION, retakes } from './covers.js';

const cover = (production: CutProduction, settings = {}) =>
  textsOf(coverPages(solvedCut(CUT), { ...lookOf(settings), production })[0]!.marks);
const said = (production: CutProduction, settings = {}): string[] =>
  cover(production, settings).map(({ text }) => text);

describe('the boxes to sign', () => {
  test('are filled where the stage is done, and leave room where it is not', () => {
    const texts = said(PRODUCTION);
    expect(texts).toEqual(
      expect.arrayContaining([
        '2027-03-06',
        'RETAKE 03-26 K. Brandt',
        'due 04-02',
        'started 03-26',
        'due 04-30',
      ]),
    );
    // Only those of `in-between` and `colour` are quite empty.
    expect(texts.filter((text) => text === 'sign')).toHaveLength(2);
    expect(texts.filter((text) => text === 'date')).toHaveLength(2);
  });

  test('are named in the language of the form; a stage of the house as it is typed', () => {
    expect(said(PRODUCTION, { labels: 'ja' })).toEqual(
      expect.arrayContaining(['レイアウト', '原画', 'チェック', '動画', 'colour', '締切 4/2']),
    );
  });

  test('stand in two rows where there are many', () => {
    const stages = Array.from({ length: 12 }, (_, i) => ({
      ...PRODUCTION.stages[4]!,
      stage: `stage-${i + 1}`,
    }));
    const rows = new Set(
      cover({ stages, retakes: [] })
        .filter(({ text }) => text.startsWith('stage-'))
        .map(({ y }) => y),
    );
    expect(rows.size).toBe(2);
  });
});

describe('the retakes', () => {
  test('are told with day, stage, who asked and why', () => {
    expect(said(PRODUCTION)).toEqual(
      expect.arrayContaining(['retakes: 1', '2027-03-26', 'key', 'K. Brandt', 'too early']),
    );
  });

  test('are the latest where there are too many, and how many others there were is said', () => {
    const texts = said({ ...PRODUCTION, retakes: retakes(30) });
    expect(texts).toContain('2027-04-30');
    expect(texts).not.toContain('2027-04-01');
    const shown = texts.filter((text) => text.startsWith('2027-04-')).length;
    expect(texts).toContain(`retakes: 30 (${30 - shown} earlier)`);
  });
});
