/** What stands under the list. */

import { describe, expect, test } from 'vitest';
import { listPaper } from '../../../src/sheet/cut-list/cut-list-paper.js';
import { artistLines, summaryLines } from '../../../src/sheet/cut-list/cut-list-totals.js';
import type { Convention } from '../../../src/shot/settings.js';
import { listOf, row } from '../../count/rows.js';
import { lookOf } from '../laid.js';

const COUNTS = { keys: 4, breakdowns: 0, inbetweens: 8, drawings: 12, reused: 0, backgrounds: 0 };
const paper = (convention: Convention = 'japan') => listPaper(lookOf({ convention }), false);
const rows = [row('1', { time: 48, counts: COUNTS }), row('2', { time: 24, counts: COUNTS })];
const lines = (list: ReturnType<typeof listOf>, convention?: Convention) =>
  summaryLines(paper(convention), list).map(({ text }) => text);

describe('the episode in sentences', () => {
  test('runs so long, and that is over, under or at the budget', () => {
    expect(lines(listOf(rows))[0]).toBe("running time 3+0 (4'08)");
    const judged = (budget: number) => lines(listOf(rows, { budget }))[0]!.split('): ').at(-1);
    expect(judged(60)).toBe("0+12 (0'12) over");
    expect(judged(96)).toBe("1+0 (1'08) under");
    expect(judged(72)).toBe('to the frame');
  });

  test('tells feet first in the west', () => {
    expect(lines(listOf(rows), 'west')[0]).toBe("running time 4'08 (3+0)");
  });

  test('tells new drawings a second and how long a cut runs on average', () => {
    expect(lines(listOf(rows))).toContain('8.0 new drawings a second; a cut runs 1+12 on average');
    expect(lines(listOf([row('1', null)])).join()).not.toContain('a second');
  });

  test('tells backgrounds, problems and cuts of several artists where there are some', () => {
    const list = listOf([
      row(
        '1',
        { time: 24, counts: { ...COUNTS, backgrounds: 2 } },
        { artists: ['M. Arai', 'L. Quoy'], problems: { errors: 0, warnings: 1 } },
      ),
    ]);
    const told = lines(list).join('\n');
    expect(told).toContain('2 backgrounds painted');
    expect(told).toContain('0 errors, 1 warning');
    expect(told).toContain('1 cut of several artists');
    expect(lines(listOf(rows))).toHaveLength(2);
  });
});

describe('the artists', () => {
  const named = [
    row('1', { time: 48, counts: COUNTS }, { artists: ['M. Arai'] }),
    row('2', { time: 24, counts: COUNTS }, { artists: [] }),
  ];

  test('have a line each, those of nobody one, and one for all', () => {
    expect(
      artistLines(paper(), listOf(named)).map(({ name, cuts, running, drawings }) => [
        name,
        cuts,
        running,
        drawings,
      ]),
    ).toEqual([
      ['M. Arai', 1, 48, 12],
      ['nobody named', 1, 24, 12],
      ['total', 2, 72, 24],
    ]);
  });

  test('have no line of nobody where each cut has somebody', () => {
    expect(artistLines(paper(), listOf(named.slice(0, 1))).map(({ name }) => name)).toEqual([
      'M. Arai',
      'total',
    ]);
  });
});
