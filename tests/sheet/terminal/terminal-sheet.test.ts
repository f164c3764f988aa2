import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cameraPlan } from '../../../src/sheet/camera/camera-plan.js';
import {
  headLines,
  NARROWEST_TERMINAL,
  type TerminalLook,
  terminalSheet,
} from '../../../src/sheet/terminal/terminal-sheet.js';
import { defaults, type Settings } from '../../../src/shot/settings.js';
import type { Exposure, SolvedShot } from '../../../src/solve/solved-shot.js';
import { wordsOf } from '../../../src/words/words.js';
import { generatedCuts } from '../../generate.js';
import { solveText } from '../../solve/shown.js';
import { solvedCut } from '../laid.js';
import { columnsOf, readLevel, readSheet, type Seen, type Table } from './reader.js';

const WIDE: TerminalLook = { width: 200, labels: 'en' };

function sheet(solved: SolvedShot, look: Partial<TerminalLook> = {}) {
  const lines = terminalSheet(solved, { ...WIDE, ...look });
  return { lines, ...readSheet(lines) };
}

const text = (cut: string, look: Partial<TerminalLook> = {}) => sheet(solveText(cut).solved, look);

/** The cells of a column by its head, without the blanks at their ends. */
function column(tables: readonly Table[], head: string): string[] {
  const table = tables.find(({ heads }) => heads.includes(head))!;
  return [...table.rows.values()].map((cells) => cells[table.heads.indexOf(head)]!.trim());
}

function agrees(seen: Seen, { kind, drawing, cel }: Exposure): boolean {
  if (seen.kind === 'empty') return kind === 'empty';
  if (seen.cel !== cel) return false;
  switch (seen.kind) {
    case 'key':
      return kind === 'key' && seen.name === drawing;
    case 'named':
      return kind !== 'key' && seen.name === drawing;
    case 'again':
      return kind === 'inbetween' || kind === 'breakdown';
    case 'held':
      return true;
    default:
      return kind === seen.kind;
  }
}

const looks = fc.record({
  width: fc.integer({ min: NARROWEST_TERMINAL, max: 220 }),
  labels: fc.constantFrom('en' as const, 'ja' as const),
  from: fc.option(fc.integer({ min: 1, max: 60 }), { nil: undefined }),
  every: fc.constantFrom(undefined, 1, 2, 3, 5),
  west: fc.boolean(),
});

describe('random cuts', () => {
  test('read back from the text, each level shows on each row what it shows on that frame', () => {
    fc.assert(
      fc.property(generatedCuts({ words: true }), looks, (cut, { west, ...look }) => {
        const { solved } = solveText(cut.text, {}, west ? { ...defaults, convention: 'west' } : {});
        const { tables } = sheet(solved, look);
        for (const level of solved.levels.filter(({ timed }) => timed)) {
          const expected = level.exposures.filter(
            ({ frame }) => frame >= (look.from ?? 1) && (frame - (look.from ?? 1)) % (look.every ?? 1) === 0,
          );
          if (expected.length === 0) continue;
          const seen = readLevel(tables, level.name);
          expect([...seen.keys()]).toEqual(expected.map(({ frame }) => frame));
          for (const exposure of expected) {
            const one = seen.get(exposure.frame)!;
            expect(agrees(one, exposure), `${level.name} ${JSON.stringify([one, exposure])}`).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('no line is wider than asked for, and all lines of a table are as wide', () => {
    fc.assert(
      fc.property(generatedCuts({ words: true }), looks, (cut, { west, ...look }) => {
        const { solved } = solveText(cut.text, {}, west ? { ...defaults, convention: 'west' } : {});
        const { lines, tables } = sheet(solved, look);
        for (const line of lines) expect(columnsOf(line), line).toBeLessThanOrEqual(look.width);
        for (const table of tables) expect(new Set(table.lines.map(columnsOf)).size).toBe(1);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the rows', () => {
  test('are named by second and frame, with a line over each second', () => {
    const { tables } = text('cut 1\ntime 2+0\nA: 1..');
    const names = [...tables[0]!.rows.values()].map(([name]) => name!.trim());
    expect([names[0], names[23], names[24], names[47]]).toEqual([
      '0+01   1',
      '0+24  24',
      '1+01  25',
      '1+24  48',
    ]);
    expect(tables[0]!.lines.filter((line) => line.startsWith('├'))).toHaveLength(2);
  });

  test('are named by foot and frame in the west, and the top level stands first', () => {
    const { solved } = solveText("cut 1\ntime 2'00\nA: 1..\nB: 1..", {}, { convention: 'west' });
    const { tables } = sheet(solved);
    expect(tables[0]!.rows.get(17)![0]!.trim()).toBe("1'01  17");
    expect(tables[0]!.heads).toEqual(["ft'f no.", 'B', 'A']);
  });

  test('from and to leave the others out, and what is held there stands in square brackets', () => {
    const { tables } = text('cut 1\ntime 1+0\nA: 1:10 2:14', { from: 6, to: 12 });
    expect([...tables[0]!.rows.keys()]).toEqual([6, 7, 8, 9, 10, 11, 12]);
    expect(column(tables, 'A')).toEqual(['[1]  1', '│', '│', '│', '│', '(2)  2', '│']);
  });

  test('every second one tells of a drawing that came between them, if it is still there', () => {
    const { tables } = text('cut 1\ntime 12\non 1\nA: 1-2:2 3:8', { every: 2 });
    expect(column(tables, 'A')).toEqual(['(1)  1', '(2)  3', '(3)  4', '│', '│', '│']);
  });

  test('beyond the end there is no table', () => {
    const { tables, others } = text('cut 1\ntime 1+0\nA: 1..', { from: 25 });
    expect(tables).toEqual([]);
    expect(others[0]).toBe('cut 1');
  });

  test('a double line stands at the cut points', () => {
    const { tables } = text('cut 1\ntime 1+0\nA: 1..\noverlap in 12\noverlap out 8');
    // 6 rows before the cut, then 24, then 4.
    expect(tables[0]!.cutPoints).toEqual([7, 31]);
  });
});

describe('marks', () => {
  test('are those of the trade for keys, in-betweens, breakdowns and emptiness', () => {
    const { tables } = text('cut 1\ntime 16\nA: 1-=2 x 3a:4 x..');
    expect(column(tables, 'A')).toEqual([
      '(1)   1',
      '│',
      '-    2',
      '│',
      '=    3',
      '│',
      '(2)   4',
      '│',
      '×',
      '',
      '(3a)  5',
      '│',
      '│',
      '│',
      '×',
      '',
    ]);
  });

  test('a cycle has its bracket with its count, and its in-betweens are rings after the first pass', () => {
    const { tables } = text('cut 1\ntime 12\non 1\nA: (1-2-)*2 3..');
    expect(column(tables, 'A')).toEqual([
      '(1)  1 ╮*2',
      '-   2 ┊',
      '(2)  3 ┊',
      '-   4 ┊',
      '(1)  1 ┊',
      'o   2 ┊',
      '(2)  3 ┊',
      'o   4 ╯',
      '(3)  5',
      '│',
      '│',
      '│',
    ]);
  });

  test.each([
    ['(1-2-)..', '╮..'],
    ['(1--2)<>..', '╮<>..'],
    ['(1--2)<>*2', '╮<>*2'],
  ])('%s begins with %s', (items, bracket) => {
    const { tables } = text(`cut 1\ntime 24\nA: ${items}${items.endsWith('..') ? '' : ' 3..'}`);
    expect(column(tables, 'A')[0]).toBe(`(1)  1 ${bracket}`);
  });

  test('a cycle in a cycle has its bracket inside', () => {
    const { tables } = text('cut 1\ntime 18\non 1\nA: (1 (2-3)*2)*2 4..');
    expect(column(tables, 'A').slice(0, 8)).toEqual([
      '(1)  1    ╮*2',
      '(2)  2 ╮*2┊',
      '-   3 ┊  ┊',
      '(3)  4 ┊  ┊',
      '(2)  2 ┊  ┊',
      'o   3 ┊  ┊',
      '(3)  4 ╯  ┊',
      '(1)  1    ┊',
    ]);
  });
});

describe('words and camera', () => {
  test('a line begins with who speaks, goes on down its rows, and words tied to a row stand there', () => {
    const { tables } = text('cut 1\ntime 12\nA: 1..\nvoice "Pim" off 2..9 "Wait" @5 "for me!"');
    expect(column(tables, 'dialogue')).toEqual([
      '',
      '┌ Pim OFF: Wait',
      '│',
      '│',
      '│ for me!',
      '│',
      '│',
      '│',
      '└',
      '',
      '',
      '',
    ]);
  });

  test('two who speak at once stand side by side', () => {
    const { tables } = text('cut 1\ntime 12\nA: 1..\nvoice "Pim" 2..9 "Wait"\nvoice "Oda" 3..5 "No"');
    expect(tables[0]!.heads).toEqual(['s+f  no.', 'A', 'dialogue', 'dialogue']);
  });

  test('a line that finds no room beside its rows is whole over the table', () => {
    const long = 'One night the marsh took it back, road and gate and all.';
    const { others, tables } = text(`cut 1\ntime 12\nA: 1..\nvoice "Oda" 2..3 "${long}"`);
    expect(others.join('\n')).toContain(long);
    expect(column(tables, 'dialogue')[2]).toMatch(/^└ .*…$/);
  });

  test('a move has its name and its fields on their rows', () => {
    const { tables, others } = text(
      'cut 1\ntime 12\nA: 1..\nfield B 50% at 10,0\ntruck full@2 > B@9\nlevel A free',
    );
    expect(column(tables, 'camera')).toEqual([
      '',
      '┌ (full) T.U',
      '│',
      '│',
      '│',
      '│',
      '│',
      '│',
      '└ (B)',
      '',
      '',
      '',
    ]);
    expect(others).toContain('camera T.U full→B  0+2–0+9');
  });

  test('graduations stand on every row', () => {
    const { tables } = text(
      'cut 1\ntime 12\nA: 1..\nfield B full at 30,0\npan full@1 > B@4 graduated carry A\nlevel BG free',
    );
    expect(
      column(tables, 'camera')
        .slice(0, 4)
        .map((cell) => cell.replace(/ +/g, ' ')),
    ).toEqual(['┌ (full) 0 follow PAN', '│ 1 10', '│ 2 10', '└ (B) 3 10']);
  });

  test('notes stand beside their rows', () => {
    const { tables } = text('cut 1\ntime 12\nA: 1..\nnote 5 "looks up, no move of the head"');
    expect(column(tables, 'notes').filter((cell) => cell !== '')).toEqual([
      'looks up, no move of the',
      'head',
    ]);
    expect(column(tables, 'notes')[4]).toBe('looks up, no move of the');
  });
});

describe('the width', () => {
  test('levels that find no place go on in another table, each with the names of the rows', () => {
    const levels = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'];
    const { tables } = text(`cut 1\ntime 12\n${levels.map((one) => `${one}: 1-2..`).join('\n')}`, {
      width: 60,
    });
    expect(tables.length).toBe(2);
    expect(tables.flatMap(({ heads }) => heads.slice(1))).toEqual(levels);
    for (const table of tables)
      expect([...table.rows.keys()]).toEqual(Array.from({ length: 12 }, (_, i) => i + 1));
  });

  test('only the levels that are asked for are shown', () => {
    const { tables } = text('cut 1\ntime 12\nA: 1..\nB: 1..\nC: 1..', { shows: (name) => name !== 'B' });
    expect(tables[0]!.heads.slice(1)).toEqual(['A', 'C']);
  });

  test('nothing of a text reaches the terminal as an order', () => {
    const { lines } = text('cut 1\ntime 12\nA "x\u001b[31my": 1..\nmemo "a\u0007b"');
    expect(lines.join('\n')).not.toMatch(/(?!\n)\p{Cc}/u);
  });
});

// ---- what stands over the rows in the terminal

function head(text: string, { feet = false, width = 200, settings = {} as Partial<Settings> } = {}) {
  const solved = solvedCut(text, settings);
  const words = wordsOf({ labels: 'en', convention: feet ? 'west' : 'japan' }).sheet;
  const camera = cameraPlan(
    solved,
    { labels: 'en', convention: feet ? 'west' : 'japan', lengths: 'mm' },
    undefined,
  );
  return headLines({ solved, words, camera, lent: [], unit: feet ? 16 : 24, feet }, width);
}

const CUT = `cut 12A "Rooftop"
time 2+12
scene 3
artist "M. Arai"
stack BG A
A "Nao": 1--2..
`;

test('a fact stands on a line, what is not said has none', () => {
  expect(head(CUT)).toEqual([
    'cut 12A “Rooftop”',
    expect.stringMatching(/^time .* · 60 frames · 24 a second$/),
    'scene 3',
    'artist M. Arai',
    'drawings 4: 2 keys, 2 in-betweens',
    'stack BG < A',
    'A “Nao”: drawings 4, last no. 4',
    'camera FIX',
  ]);
});

test('feet are told as well in the west', () => {
  expect(head(CUT, { feet: true })[1]).toContain(" · 3'12 · ");
});

test('title and episode stand on one line', () => {
  expect(head(CUT, { settings: { title: 'Saltbox Winter', episode: '7' } })).toContain('Saltbox Winter 7');
});

test('numbers that are missing, and levels that are reused, are told', () => {
  const lines = head('cut 1\ntime 1+0\nA: 1--2-3..\ncels A 1 1.1 1.2 2 4\nC: 1..\nlevel C reuse 8/C\n');
  expect(lines).toContain('A: drawings 6, last no. 7, not used 5');
  expect(lines).toContain('C: reuse of cut 8, level C');
});

describe('words', () => {
  const lines = head(
    `${CUT}voice "Nao" off 1..12 "Wait" @6 "here"\nsound 13..18 "bell"\nnote 25 "looks  up"\nmemo "No  rain."\n`,
  );

  test('are told whole, with their rows, kind and speaker', () => {
    expect(lines).toContain('0+1–0+12 Nao OFF: “Wait here”');
    expect(lines).toContain('0+13–0+18 SE “bell”');
    expect(lines).toContain('1+1 notes looks up');
  });

  test('of a memo are one line', () => expect(lines).toContain('memo No rain.'));
});

test('a line that is too long goes on, set in', () => {
  const lines = head(`${CUT}memo "Wind from screen left throughout, no rain"\n`, { width: 30 });
  const at = lines.findIndex((line) => line.startsWith('memo'));
  expect(lines.slice(at, at + 2)).toEqual(['memo Wind from screen left', '    throughout, no rain']);
});

describe('beside each other', () => {
  const CUT = 'cut 1\ntime 5+3\nA: 1-2-3-4-5-6-7-8:2+0 9..\n';
  const shown = (look: Partial<TerminalLook>) => text(CUT, look).lines;

  test('stand as many parts as the width has room for, of whole seconds, with the rows of the one table', () => {
    const below = shown({});
    const beside = shown({ beside: true });
    const parts = beside.find((line) => line.includes('0+01'))!.match(/\d\+01/g)!;
    expect(parts.length).toBeGreaterThan(1);
    for (const line of beside) expect(line.length).toBeLessThanOrEqual(200);
    const rows = (lines: readonly string[]): string[] =>
      lines.flatMap((line) => line.match(/│ \d\+\d\d .*?│(?= {2}│|$| *$| {2}└| {2}├)/g) ?? []).sort();
    expect(rows(beside)).toEqual(rows(below));
    expect(rows(below)).toHaveLength(123);
  });

  test('is nothing where there is room for one, or where there is only one second', () => {
    expect(shown({ beside: true, width: 40 })).toEqual(shown({ width: 40 }));
    expect(shown({ beside: true, to: 24 })).toEqual(shown({ to: 24 }));
  });

  test('every so many frames, the seconds stay whole', () => {
    const [line] = shown({ beside: true, every: 6, width: 60 }).filter((one) => one.includes('0+01'));
    expect(line).toMatch(/0\+01 .*\d\+01 /);
  });
});
