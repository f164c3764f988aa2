/** The sheet as a table: read by a reader of RFC 4180, held against the solved cut; and by the scripts of the hand-over page. */

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { episodeOf } from '../../src/episode/find-cuts.js';
import { toCsv } from '../../src/export/cut-csv.js';
import { memoryHost } from '../../src/host/memory-host.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { compileText } from '../compile.js';
import { records } from './records.js';

type Row = Record<string, string>;

function tableOf(solved: SolvedShot): Row[] {
  const [header, ...rows] = records(toCsv(solved, 'sheet'));
  expect(new Set(header).size).toBe(header!.length);
  return rows.map((row) => {
    expect(row).toHaveLength(header!.length);
    return Object.fromEntries(row.map((cell, i) => [header![i]!, cell]));
  });
}

async function sheetOf(manifest: string, text: string): Promise<Row[]> {
  const host = memoryHost({ 'episode.yaml': manifest, 'this.cut': text });
  const { solved, diagnostics } = compile(host, '/work/this.cut', await episodeOf(host, '/work'), {
    name: 'this.cut',
  });
  expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  return tableOf(solved!);
}
const column = (rows: readonly Row[], name: string): string[] => rows.map((row) => row[name]!);

const FERRY = `cut 21 "The ferry turns"
time 0+12
overlap in 4
overlap out 4
stack BG A B
A: x:4 (1--2:1)*3 x..
B: 1..
field N full at 30,10
field M 60% at -20,-5
pan N@0+2 > M@0+10 ease 3 2
voice "Quoy" 0+3..0+7 "Hold" @0+5 "on!"
voice "Brine" off 0+6..0+9 "What?"
sound 0+2..0+4 "bell"
music 0+1.. "waltz"
note 0+4 "splash, see C20"
`;

describe('a row a frame', () => {
  const { solved } = compileText(FERRY);
  const rows = tableOf(solved!);

  test('names the frame as the sheet does, and the handles', async () => {
    expect(column(rows, 'frame')).toEqual(rows.map((_, i) => String(i + 1)));
    expect(rows).toHaveLength(16);
    expect(column(rows, 'handle')).toEqual(['head', 'head', ...new Array(12).fill(''), 'tail', 'tail']);
    expect(rows[15]!.time).toBe('0+16');
    expect((await sheetOf('convention: west\n', "cut 2\ntime 2'01\nA: 1..\n"))[16]!.time).toBe("1'01");
  });

  test('has a finished number only where it changes, and x where the level is empty', () => {
    for (const { name, exposures } of solved!.levels) {
      if (exposures.length === 0) continue;
      let before: number | null | undefined;
      column(rows, `level ${name}`).forEach((cell, i) => {
        const { cel } = exposures[i]!;
        expect(cell, `${name} ${i + 1}`).toBe(cel === before ? '' : cel === null ? 'x' : String(cel));
        before = cel;
      });
    }
    expect(Object.keys(rows[0]!)).not.toContain('level BG');
  });

  test('has words where they begin, and a line while they last', () => {
    expect(column(rows, 'dialogue').slice(2, 10)).toEqual([
      'Quoy: Hold',
      '|',
      'on!',
      'Brine OFF: What?',
      '|',
      '|',
      '|',
      '',
    ]);
    expect(column(rows, 'sound').slice(0, 5)).toEqual(['', 'bell', '|', '|', '']);
    expect(column(rows, 'music')).toEqual(['waltz', ...new Array(15).fill('|')]);
    expect(column(rows, 'notes')[3]).toBe('splash, see C20');
    expect(column(rows, 'notes').filter(Boolean)).toHaveLength(1);
  });

  test('names the move where it begins, and the field where it arrives', () => {
    const camera = column(rows, 'camera');
    expect(camera[1]).toMatch(/PAN.*\(N\)$/);
    expect(camera[9]).toMatch(/\(M\)$/);
    expect(camera.slice(2, 9)).toEqual(new Array(7).fill('|'));
    expect(camera[10]).toBe('');
  });

  test('has the camera in mm and in pixels of the picture: a 60 % field is 60 % as wide', () => {
    const { field, output } = solved!.shot.settings;
    const last = rows[15]!;
    expect([last.x, last.y].map(Number)).toEqual([-20, -5]);
    expect(Number(last.width)).toBeCloseTo(field.widthMm * 0.6, 3);
    expect(Number(last.pixelWidth)).toBeCloseTo(output.width * 0.6, 2);
    // Pixels a millimetre across, by the picture's own width.
    expect(Number(last.pixelX)).toBeCloseTo((-20 / field.widthMm) * output.width, 2);
    expect(Number(last.pixelY)).toBeCloseTo((-5 / field.heightMm) * output.height, 2);
    rows.forEach((row, i) => {
      expect(Number(row.x)).toBeCloseTo(solved!.camera.frames[i]!.x, 3);
      expect(Number(row.rotation)).toBeCloseTo(solved!.camera.frames[i]!.rotation, 3);
    });
  });

  test('is in the words of the sheet', async () => {
    const text = 'cut 3\ntime 0+9\nA: 1..\nfield N full at 90,0\npan full@1 > N@0+6 carry A\n';
    const [english, japanese] = await Promise.all([sheetOf('', text), sheetOf('labels: ja\n', text)]);
    expect([english[0]!.camera, japanese[0]!.camera]).toEqual(['follow PAN (full)', '付けPAN (full)']);
  });
});

describe('the scripts of the hand-over page', () => {
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-sheet-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const page = readFileSync('grammar/handover.md', 'utf8');
  const script = (language: string): string => page.split(`\`\`\`${language}\n`)[1]!.split('```')[0]!;
  const { solved } = compileText(FERRY);
  writeFileSync(join(folder, 'c012.csv'), toCsv(solved!, 'sheet'));

  test('JavaScript prints where the camera stands', () => {
    const file = join(folder, 'where.mjs');
    const library = import.meta.resolve('csv-parse/sync');
    writeFileSync(file, script('js').replace("'csv-parse/sync'", `'${library}'`));
    const printed = execFileSync(process.execPath, [file], { cwd: folder, encoding: 'utf8' })
      .trimEnd()
      .split('\n');
    expect(printed).toHaveLength(16);
    expect(printed).toEqual(
      tableOf(solved!).map((row) => [row.cut, row.frame, row.pixelX, row.pixelY, row.pixelWidth].join(' ')),
    );
  });

  const python = ['python3', 'python'].find((name) => spawnSync(name, ['--version']).status === 0);

  test.skipIf(python === undefined)('Python prints what is seen on each frame', () => {
    const file = join(folder, 'seen.py');
    writeFileSync(file, script('python'));
    const printed = execFileSync(python!, [file], { cwd: folder, encoding: 'utf8' }).trimEnd().split(/\r?\n/);
    const levels = solved!.levels.filter(({ exposures }) => exposures.length > 0);
    expect(printed).toEqual(
      solved!.camera.frames.map(({ frame }) => {
        const seen = levels.map(({ name, exposures }) => `'${name}': ${exposures[frame - 1]!.cel ?? 'None'}`);
        return `21 ${frame} {${seen.join(', ')}}`;
      }),
    );
  });
});
