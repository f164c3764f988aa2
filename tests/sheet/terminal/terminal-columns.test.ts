/** Columns for what lasts, in the terminal. */

import { describe, expect, test } from 'vitest';
import type { TextColumn } from '../../../src/layout/text-table.js';
import { cameraPlan } from '../../../src/sheet/camera/camera-plan.js';
import {
  barOn,
  cameraColumns,
  levelColumn,
  notesColumn,
  rowsWithin,
  sheetColumn,
  speechColumns,
  trackColumn,
} from '../../../src/sheet/terminal/terminal-columns.js';
import { wordsOf } from '../../../src/words/words.js';
import { compileText } from '../../compile.js';
import { tone, wave } from '../../sound/wave-writer.js';
import { solvedCut } from '../laid.js';

const words = wordsOf({ labels: 'en', convention: 'japan' }).sheet;
const FORM = { labels: 'en', convention: 'japan', lengths: 'mm' } as const;
const rowsTo = (last: number) => Array.from({ length: last }, (_, i) => i + 1);
const lines = (column: TextColumn, width: number) => column.cells(width).map(([text]) => text);
const shotOf = (text: string) => solvedCut(`cut 1\ntime 1+0\nA: 1..\n${text}\n`).shot;

describe('rows within a range', () => {
  test('are those that show its frames, also where only some frames have a row', () => {
    expect(rowsWithin([1, 3, 5, 7], { from: 2, to: 6 })).toEqual({ first: 1, last: 2 });
    expect(rowsWithin([1, 3, 5, 7], { from: 3, to: 3 })).toEqual({ first: 1, last: 1 });
  });

  test('are none where it falls between two rows, or beside them all', () => {
    expect(rowsWithin([1, 5], { from: 2, to: 4 })).toBeNull();
    expect(rowsWithin([5, 6], { from: 1, to: 4 })).toBeNull();
    expect(rowsWithin([5, 6], { from: 7, to: 9 })).toBeNull();
  });
});

describe('a bar', () => {
  const bar = (rows: number[], range: { from: number; to: number }) => {
    const within = rowsWithin(rows, range)!;
    return rows
      .slice(within.first, within.last + 1)
      .map((_, i) => barOn(rows, range, within.first + i, within));
  };

  test('has a foot at both its ends', () => {
    expect(bar([1, 2, 3, 4], { from: 1, to: 3 })).toEqual(['┌', '│', '└']);
    expect(bar([1, 2, 3, 4], { from: 2, to: 2 })).toEqual(['╶']);
  });

  test('has none where it goes on before the first row or after the last', () => {
    expect(bar([5, 6, 7], { from: 1, to: 9 })).toEqual(['│', '│', '│']);
    expect(bar([5, 6, 7], { from: 1, to: 6 })).toEqual(['│', '└']);
    expect(bar([5, 6, 7], { from: 6, to: 9 })).toEqual(['┌', '│']);
  });
});

test('a column has its texts as lines, told how wide it is', () => {
  const column = sheetColumn(['A', ''], 3, 8, (width) => [`${width}`]);
  expect([column.heads, column.least, column.wanted]).toEqual([['A', ''], 3, 8]);
  expect(column.cells(5)).toEqual([['5']]);
});

describe('dialogue', () => {
  test('goes down its rows, words that are tied to one on it', () => {
    const [column] = speechColumns(shotOf('voice "Nao" 2..6 "Wait" @5 "here"'), rowsTo(8), words);
    expect(lines(column!, 24)).toEqual(['', '┌ Nao: Wait', '│', '│', '│ here', '└', '', '']);
  });

  test('is cut on its last row where there are more lines than rows', () => {
    const [column] = speechColumns(
      shotOf('voice "Nao" 1..2 "Wait until the bell has rung"'),
      rowsTo(3),
      words,
    );
    expect(lines(column!, 12)).toEqual(['┌ Nao: Wait', '└ until the bell has rung', '']);
  });

  test('has a column for each that is said at the same time, and none off these rows', () => {
    const both = shotOf(
      'voice "Nao" 1..6 "Wait"\nvoice "Pim" 3..8 "No"\nsound 1..3 "bell"\nmusic 5..9 "flute"',
    );
    expect(speechColumns(both, rowsTo(12), words).map(({ heads }) => heads[0])).toEqual([
      'dialogue',
      'dialogue',
      'SE, music',
    ]);
    expect(speechColumns(both, [20, 21], words)).toEqual([]);
  });
});

describe('notes', () => {
  test('stand on their row, and go on below it up to the next', () => {
    const column = notesColumn(shotOf('note 2 "looks up at the bell"\nnote 4 "blinks"'), rowsTo(6), words)!;
    expect(lines(column, 10)).toEqual(['', 'looks up', 'at the bell', 'blinks', '', '']);
  });

  test('stand on the next row that is shown, but none before the first', () => {
    const shot = shotOf('note 3 "looks up"\nnote 6 "blinks"');
    expect(lines(notesColumn(shot, [5, 7], words)!, 10)).toEqual(['', 'blinks']);
    expect(notesColumn(shot, [8, 9], words)).toBeNull();
  });
});

describe('moves', () => {
  const column = (text: string, rows: readonly number[], width = 22) => {
    const solved = solvedCut(
      `cut 1\ntime 1+0\nA: 1..\nlevel BG free\nfield P full\nfield Q full at 40,0\n${text}\n`,
    );
    return cameraColumns(cameraPlan(solved, FORM, undefined), rows, words).map((one) => lines(one, width));
  };

  test('have their name on the first row, places on theirs', () => {
    expect(column('pan P@2 > Q@5', rowsTo(6))).toEqual([['', '┌ (P) PAN', '│', '│', '└ (Q)', '']]);
  });

  test('that leave where another arrives share its row', () => {
    const [lane] = column('pan P@1 > Q@4\npan Q@4 > P@7', rowsTo(7));
    expect(lane![3]).toMatch(/^├/);
  });
});

describe('the recording', () => {
  const column = (text: string, rows = rowsTo(12)) => {
    const samples = tone(0.5, 0, 0.5, 4000).map((one, i) => (i < 1000 ? one : one / 2));
    const { solved } = compileText(`cut 1\ntime 12\nA: 1..\n${text}\n`, {
      'a.wav': wave(samples, { rate: 4000 }),
    });
    const made = trackColumn(solved!, rows, words);
    return made && { heads: made.heads, lines: lines(made, 5) };
  };

  test('is a bar on each row, half as long where it is half as loud', () => {
    const { heads, lines } = column('track "a.wav"')!;
    expect(heads[0]).toBe('track');
    expect([lines[2], lines[9]]).toEqual(['████', '██']);
  });

  test('of rows that are left out the loudest counts', () => {
    expect(column('track "a.wav"', [1, 5, 9])!.lines).toEqual(['████', '████', '██']);
  });

  test('is none where there is none', () => {
    expect([column(''), column('track "b.wav"')]).toEqual([null, null]);
  });
});

describe('terminal levels', () => {
  // ---- A level's column in the terminal

  const levelOf = (timeline: string, frames: number) =>
    solvedCut(`cut 1\ntime ${frames}\nA "Nao": ${timeline}\n`).levels.find(({ name }) => name === 'A')!;
  const rowsTo = (last: number, from = 1) => Array.from({ length: last - from + 1 }, (_, i) => from + i);
  /** The cells with one blank for several. */
  const cells = (timeline: string, frames: number, rows: readonly number[] = rowsTo(frames)) =>
    levelColumn(levelOf(timeline, frames), rows)
      .cells(99)
      .map(([text]) => text!.replace(/ +/g, ' ').trim());

  test('keys in brackets, strokes for in-betweens, each with its number; a line while they are held', () => {
    expect(cells('1-=-2 x:2', 12)).toEqual([
      '(1) 1',
      '│',
      '- 2',
      '│',
      '= 3',
      '│',
      '- 4',
      '│',
      '(2) 5',
      '│',
      '×',
      '',
    ]);
  });

  test('an in-between out of its turn has its name', () => {
    expect(cells('1-2 1.1', 8)).toEqual(['(1) 1', '│', '- 2', '│', '(2) 3', '│', '1.1 2', '│']);
  });

  describe('a cycle', () => {
    test('has a bracket with how often it is played', () => {
      expect(cells('(1 2)*2', 8)).toEqual([
        '(1) 1 ╮*2',
        '│ ┊',
        '(2) 2 ┊',
        '│ ┊',
        '(1) 1 ┊',
        '│ ┊',
        '(2) 2 ┊',
        '│ ╯',
      ]);
    });

    test('that goes on until further notice, or there and back, says so', () => {
      expect(cells('(1 2)..', 8)[0]).toBe('(1) 1 ╮..');
      expect(cells('(1 2 3)<>*2', 16)[0]).toBe('(1) 1 ╮<>*2');
    });

    test('has no head and no foot where they are on other rows', () => {
      expect(cells('(1 2)*2', 8, [3, 4])).toEqual(['(2) 2 ┊', '│ ┊']);
    });
  });

  test('what is held since before the first row stands in square brackets', () => {
    expect(cells('1:4 2:4', 8, [3, 4, 5])).toEqual(['[1] 1', '│', '(2) 2']);
    expect(cells('1-2', 6, [4, 5])).toEqual(['[-] 2', '(2) 3']);
  });

  test('a row tells of a drawing that came since the row before it', () => {
    expect(cells('1:3 2:5', 8, [1, 5])).toEqual(['(1) 1', '(2) 2']);
  });

  test('the column has name and title, and room for the title up to sixteen', () => {
    const { heads, least, wanted } = levelColumn(levelOf('1', 2), rowsTo(2));
    expect(heads).toEqual(['A', 'Nao']);
    expect(wanted).toBe(least);
    const long = { ...levelOf('1', 2), title: 'a very long title indeed' };
    expect(levelColumn(long, rowsTo(2)).wanted).toBe(16);
  });
});
