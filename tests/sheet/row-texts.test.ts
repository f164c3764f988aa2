/** What is said beside the rows, as text. */

import { describe, expect, test } from 'vitest';
import { cameraTexts, noteTexts, type RowTexts, speechTexts } from '../../src/sheet/row-texts.js';
import { wordsOf } from '../../src/words/words.js';
import { solvedCut } from './laid.js';

const FORM = { labels: 'en', convention: 'japan', lengths: 'mm' } as const;
const words = wordsOf(FORM).sheet;
const cut = (text: string) => solvedCut(`cut 6\ntime 0+10\nA: 1..\n${text}\n`);
const rows = (column: RowTexts, last = 10) =>
  Array.from({ length: last }, (_, i) => column.on(i + 1) || (column.lasts(i + 1) ? '|' : ''));

describe('speech', () => {
  test('stands where its words begin, with who speaks on the first row', () => {
    const { shot } = cut('voice "Wen" off 2..6 "Up" @5 "the mast"\nsound 3..4 "gust"');
    expect(rows(speechTexts(shot, ['voice'], words))).toEqual([
      '',
      'Wen OFF: Up',
      '|',
      '|',
      'the mast',
      '|',
      '',
      '',
      '',
      '',
    ]);
    expect(rows(speechTexts(shot, ['sound'], words), 5)).toEqual(['', '', 'gust', '|', '']);
    expect(rows(speechTexts(shot, ['voice', 'sound'], words))[2]).toBe('gust');
  });

  test('of two who begin on one row is both', () => {
    const { shot } = cut('voice "Wen" 2..6 "Up"\nvoice "Ida" 2..3 "No"');
    expect(rows(speechTexts(shot, ['voice'], words))[1]).toBe('Ida: No / Wen: Up');
  });
});

test('notes stand on their row and do not last', () => {
  const { shot } = cut('note 4 "rain stops"');
  expect(rows(noteTexts(shot), 5)).toEqual(['', '', '', 'rain stops', '']);
});

describe('the camera', () => {
  test('has each move by its name, and the fields that it reaches', () => {
    const solved = cut('field N full at -60,0\npan full@3 > N@8');
    const said = rows(cameraTexts(solved, FORM));
    expect(said).toEqual(['', '', 'PAN (full)', '|', '|', '|', '|', '(N)', '', '']);
  });

  test('has one move alone where that is asked for, or none', () => {
    const solved = cut('field N full at -60,0\npan full@3 > N@8\nshake 3mm 1..4\nglow A 2..3');
    const only = (thing: Parameters<typeof cameraTexts>[2]) => rows(cameraTexts(solved, FORM, thing), 4);
    const shake = solved.camera.moves.find(({ move }) => move.kind === 'shake')!;
    expect(only(shake)).toEqual(['shake 3 mm', '|', '|', '|']);
    expect(only(solved.camera.light[0]!)).toEqual(['', 'A glow', '|', '']);
    expect(only(null)).toEqual(['', '', '', '']);
    expect(rows(cameraTexts(cut(''), FORM, null), 2)).toEqual(['', '']);
  });

  test('that does not move says so once', () => {
    expect(rows(cameraTexts(cut(''), FORM), 3)).toEqual(['FIX', '', '']);
  });
});
