/** The form in English. */

import { describe, expect, test } from 'vitest';
import {
  cameraPages,
  cutListIn,
  documentsIn,
  JAPAN_TERMS,
  movesIn,
  sheetIn,
  WEST_TERMS,
} from '../../../src/words/en/forms-en.js';

const sheet = sheetIn(JAPAN_TERMS);
const west = sheetIn(WEST_TERMS);

describe('cuts that show a level again', () => {
  const lent = (...cuts: string[]) =>
    sheet.lent(
      'A',
      cuts.map((cut) => ({ cut, as: 'B' })),
    );

  test('are listed, the last one after “and”', () => {
    expect(lent('12')).toBe('A is shown again in cut 12 (as B)');
    expect(lent('12', '15')).toBe('A is shown again in cuts 12 (as B) and 15 (as B)');
    expect(lent('12', '15', '20')).toBe('A is shown again in cuts 12 (as B), 15 (as B) and 20 (as B)');
  });

  test('are short over a column', () => {
    expect(sheet.lentShort(['12', '15'])).toBe('again in c12 c15');
  });
});

describe('handles', () => {
  test('name the ends that there are', () => {
    expect(sheet.handles('0+12', '1+0', '6+12')).toBe(
      'Handles (shaded rows): 0+12 before the cut, 1+0 after it. Sheet 6+12 in all.',
    );
    expect(sheet.handles('', '1+0', '6+0')).toBe('Handles (shaded rows): 1+0 after it. Sheet 6+0 in all.');
    expect(sheet.handles('0+12', '', '5+12')).toBe(
      'Handles (shaded rows): 0+12 before the cut. Sheet 5+12 in all.',
    );
  });

  test('in a line of the terminal, of a western form about a scene', () => {
    expect(sheet.handlesLine('', '1+0', '6+0')).toBe('handles 1+0 after the cut; sheet 6+0 in all');
    expect(west.handlesLine('0+12', '', '5+12')).toBe('handles 0+12 before the scene; sheet 5+12 in all');
  });
});

test('only kinds of drawings that there are are counted, reused and painted ones besides', () => {
  const counts = { keys: 1, breakdowns: 2, inbetweens: 9, reused: 3, backgrounds: 1 };
  expect(sheet.drawingCounts(counts)).toBe(
    '1 key, 2 breakdowns, 9 in-betweens, 3 reused besides, 1 background besides',
  );
  expect(sheet.drawingCounts({ keys: 0, breakdowns: 0, inbetweens: 4, reused: 0, backgrounds: 0 })).toBe(
    '4 in-betweens',
  );
  expect(sheet.drawingCounts({ keys: 0, breakdowns: 0, inbetweens: 0, reused: 0, backgrounds: 0 })).toBe('');
});

test('change bars are explained where there are some', () => {
  expect(sheet.changed('HEAD', true)).toBe('Changed against HEAD (bar: rows that differ)');
  expect(sheet.changed('HEAD', false)).toBe('Changed against HEAD');
});

// ---- moves in English

const moves = movesIn(JAPAN_TERMS);

describe('an overlap', () => {
  test('with a cut that is known names it', () => {
    expect(moves.overlap('O.L 12', 'in', '11')).toBe('O.L 12 with c11');
    expect(movesIn(WEST_TERMS).overlap('O.L', 'in', '11')).toBe('O.L with sc. 11');
  });

  test('with one that is not known says on which side it is', () => {
    expect(moves.overlap('O.L', 'in', null)).toBe('O.L with the cut before');
    expect(moves.overlap('O.L', 'out', null)).toBe('O.L with the next cut');
  });
});

test('what a retake note says of a flag depends on whether it is set', () => {
  const { ratios, quick, sideways } = moves.changed;
  expect([ratios('', true), ratios('', false)]).toEqual(['by equal ratios', 'by equal widths']);
  expect([quick('', true), quick('', false)]).toEqual(['quick', 'not quick']);
  expect([sideways('', true), sideways('', false)]).toEqual(['sideways', 'up and down']);
});

test('no levels, no loop and no point are said in words', () => {
  const { carry, loop, about } = moves.changed;
  expect([carry('A,B', false), carry('', false)]).toEqual(['carrying A,B', 'carrying no level']);
  expect([loop('420 mm', false), loop('', false)]).toEqual(['loop of 420 mm', 'no loop']);
  expect([about('10,20', false), about('', false)]).toEqual([
    'about 10,20',
    'about the centre of the artwork',
  ]);
});

// ---- titles and headings in English

const japan = documentsIn(JAPAN_TERMS);

test('cuts that only one version has: which version, and one cut or several', () => {
  expect(japan.onlyIn(null, '12', 1)).toBe('only now: cut 12');
  expect(japan.onlyIn('HEAD', '12, 14', 2)).toBe('only in HEAD: cuts 12, 14');
});

test('a bookmark begins with a capital, a heading of a note does not', () => {
  expect([japan.cut('12'), japan.noteCut('12')]).toEqual(['Cut 12', 'cut 12']);
  expect(documentsIn(WEST_TERMS).cut('12')).toBe('Scene 12');
});

// ---- the camera's pages in English

test('a way leads up or down', () => {
  expect(cameraPages.slope('4.5', true, true)).toBe('leads 4.5° up to the right');
  expect(cameraPages.slope('4.5', false, false)).toBe('leads 4.5° down to the left');
});

test('the rows of the largest step are one or several', () => {
  expect(cameraPages.way('9 mm', '1 mm', '0+2', '0+2')).toBe(
    'distance 9 mm, largest step 1 mm a frame (row 0+2)',
  );
  expect(cameraPages.way('9 mm', '1 mm', '0+2', '0+8')).toContain('(rows 0+2–0+8)');
});

describe('cut list en', () => {
  // ---- the cut list in English

  const japan = cutListIn(JAPAN_TERMS);
  const west = cutListIn(WEST_TERMS);

  test('one of several artists, or several', () => {
    expect(japan.sharedNote(1)).toBe(
      '1 cut of several artists: counted for each of them here, once in the total.',
    );
    expect(west.sharedNote(3)).toMatch(/^3 scenes of several artists:/);
  });

  test('cuts with errors, and those of them whose time is not known', () => {
    expect(japan.unsoundNote(2, 0)).toBe(
      '2 cuts with errors (!): counted as far as could be read, not printed.',
    );
    expect(japan.unsoundNote(2, 1)).toBe(
      '2 cuts with errors (!): counted as far as could be read, not printed; the time of 1 is not known and not in the total.',
    );
  });

  test('errors and warnings are counted each', () => {
    expect(japan.problemsNote(1, 2)).toBe('1 error, 2 warnings');
  });

  test('a title begins with a capital, a scene is short before its name', () => {
    expect([japan.list, west.list]).toEqual(['Cut list', 'Scene list']);
    expect([japan.scene('3'), west.scene('3')]).toEqual(['sc. 3', 'seq. 3']);
  });
});
