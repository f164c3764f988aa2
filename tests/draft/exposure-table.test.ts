import { describe, expect, test } from 'vitest';
import { cutText } from '../../src/draft/cut-text.js';
import { readExposureTable } from '../../src/draft/exposure-table.js';
import { toCsv } from '../../src/export/cut-csv.js';
import { messageOf } from '../../src/language/message.js';
import { defaults } from '../../src/shot/settings.js';
import { compileFiles, compileText } from '../compile.js';

const HEADER = 'cut,level,frame,kind,drawing,cel,starts\r\n';

describe('an exported table', () => {
  test('comes back as the same table, for every cut of the examples', async () => {
    for (const { solved } of (await compileFiles('examples/saltmarsh', 'examples/west')).values()) {
      if (!solved) continue;
      const table = toCsv(solved, 'exposures');
      const { cuts, diagnostics } = readExposureTable('t.csv', table);
      expect(diagnostics).toEqual([]);
      const { text } = cutText(cuts[0]!, { ...defaults, fps: solved.shot.fps });
      const typed = solved.shot.fps === 24 ? text : text.replace(/^cut.*/, `$&\nfps ${solved.shot.fps}`);
      expect(toCsv(compileText(typed).solved!, 'exposures'), typed).toBe(table);
    }
  });

  test('of several cuts gives each, also with a byte-order mark, LF and quotes', () => {
    const rows = '7,A,1,key,1,1,true\n7,A,2,key,1,1,false\n"8","A",1,empty,,,true\n';
    const { cuts, diagnostics } = readExposureTable('t.csv', `\uFEFF${HEADER.replace('\r', '')}${rows}`);
    expect(diagnostics).toEqual([]);
    expect(cuts.map(({ cut, levels }) => [cut, levels[0]!.runs])).toEqual([
      ['7', [{ drawing: '1', kind: 'key', frames: 2 }]],
      ['8', [{ drawing: null, kind: 'empty', frames: 1 }]],
    ]);
  });
});

describe('a grid', () => {
  test('is held where a cell is empty', () => {
    const { cuts } = readExposureTable('g.csv', 'frame,A,ア\n1,1,x\n2,,\n3,1.1=,1\n4,1.2,\n5,2,x\n');
    expect(cutText({ ...cuts[0]!, cut: '3' }, defaults).text).toBe(
      'cut 3\ntime 0+5\n\nA:  1 on 1 =-2\nア: x 1 x..\n',
    );
  });
});

describe('a fault is told once, with row and column, and points at the cell', () => {
  test.each([
    ['', 'The table is empty'],
    ['\n', 'The table is empty'],
    ['frame,A\n', 'The table has no row below its header.'],
    ['frame,A\n1,1\n2\n', 'Row 3, column 1: This row has 1 columns; the header has 2.'],
    ['frame,A\n1,1\n1,2\n', 'Row 3, column 1: Frame 1 of the sheet stands here again; frame 2 was to come.'],
    ['frame,A\n1,1\n3,2\n', 'Row 3, column 1: Frame 2 of the sheet is missing before frame 3.'],
    ['frame,A\n0,1\n', 'Row 2, column 1: `0` is no frame'],
    ['frame,A\n1,hold\n', 'Row 2, column 2: `hold` is no drawing'],
    ['frame,1A\n1,1\n', 'Row 1, column 2: `1A` is no name of a level'],
    ['frame,A,A\n1,1,1\n', 'Row 1, column 3: Level A has two columns.'],
    ['frames,A\n1,1\n', 'Row 1, column 1: The first row names no column `frame`'],
    ['frame;A\n1;1\n', 'Row 1, column 1: The first row names no column `frame`'],
    ['frame,A\n1,"1\n2,2\n', 'A quote that is opened here is never closed.'],
    [
      'cut,level,frame,drawng\n1,A,1,1\n',
      'Row 1, column 4: The table has no use for a column `drawng`; did you mean `drawing`?',
    ],
    ['cut,level,drawing\n1,A,1\n', 'The table has no column `frame`.'],
    [`${HEADER}1,A,1,key,1.1,1,true\n`, 'Drawing 1.1 cannot be `key`.'],
    [`${HEADER}1,A,1,held,1,1,true\n`, '`held` is none of key, breakdown'],
    [`${HEADER}1,A,1,key,1,0,true\n`, '`0` is no number of a finished drawing.'],
    [`${HEADER}1,A,1,key,1,1,true\n1,A,2,key,2,1,true\n`, 'Drawing 2 has had another number'],
    [
      `${HEADER}1,A,1,key,1,1,true\n1,A,2,key,1,1,false\n1,B,1,key,1,1,true\n`,
      'Level B of cut 1 has 1 frames, level A 2.',
    ],
    [`${HEADER}1/2,A,1,key,1,1,true\n`, '`1/2` is no number of a cut.'],
  ])('%j', (text, message) => {
    const { cuts, diagnostics } = readExposureTable('t.csv', text);
    expect(cuts).toEqual([]);
    expect(diagnostics).toHaveLength(1);
    expect(messageOf(diagnostics[0]!, 'en')).toContain(message);
    const cell = /column \d+: `([^`]*)` is (?:no|none)/.exec(messageOf(diagnostics[0]!, 'en'))?.[1];
    const { start, end } = diagnostics[0]!.span;
    if (cell !== undefined) expect(text.slice(start, end)).toBe(cell);
    expect(end).toBeLessThanOrEqual(Math.max(text.length, 1));
  });
});

test('ten minutes on ones of a level with a long cycle take no more steps than a short one a frame', () => {
  const rows = (count: number) =>
    Array.from({ length: count }, (_, i) => `${i + 1},${i % 97 === 96 ? 'x' : (i * 7) % 89}`).join('\n');
  const { cuts } = readExposureTable('g.csv', `frame,A\n${rows(14_400)}\n`.replaceAll(',0\n', ',89\n'));
  const { text, unlike } = cutText({ ...cuts[0]!, cut: '1' }, defaults);
  expect(unlike).toEqual([]);
  expect(compileText(text).solved!.shot.length).toBe(14_400);
});

test('a fault is data: what is wrong, and in which cell, counted from 1', () => {
  const parameters = (text: string) => readExposureTable('t.csv', text).diagnostics[0]!.parameters;
  expect(parameters('frame,A\n1,1\n3,2\n')).toEqual({
    variant: 'frame-missing',
    frame: 3,
    wanted: 2,
    level: null,
    row: 3,
    column: 1,
  });
  expect(parameters('cut,level,frame,drawng\n1,A,1,1\n')).toEqual({
    variant: 'unknown-column',
    name: 'drawng',
    guess: 'drawing',
    row: 1,
    column: 4,
  });
  expect(parameters('')).toEqual({ variant: 'empty' });
});
