import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CsvTable, TABLES, toCsv } from '../../src/export/cut-csv.js';
import { toJson } from '../../src/export/cut-json.js';
import { compileText } from '../compile.js';
import { records } from './records.js';

const cut = compileText('cut 12\ntime 0+8\nB: 1-2..\nA: x:2 1..\n').solved!;

/** A table as objects by its header. */
function table(text: string): Record<string, string>[] {
  const [header, ...rows] = records(text);
  return rows.map((row) => {
    expect(row).toHaveLength(header!.length);
    return Object.fromEntries(row.map((cell, i) => [header![i], cell]));
  });
}

describe('tables', () => {
  test('exposures: one row a level and frame, as in the JSON', () => {
    const rows = table(toCsv(cut, 'exposures'));
    const expected = toJson(cut, []).levels.flatMap(({ name, exposures }) =>
      exposures.map(({ frame, kind, drawing, cel, starts }) => ({
        cut: '12',
        level: name,
        frame: String(frame),
        kind,
        drawing: drawing ?? '',
        cel: cel === null ? '' : String(cel),
        starts: String(starts),
      })),
    );
    expect(rows).toEqual(expected);
    expect(rows).toHaveLength(16);
  });

  test('drawings: one row a drawing, with the frames that it is seen for', () => {
    expect(table(toCsv(cut, 'drawings')).map((row) => Object.values(row))).toEqual([
      ['12', 'B', '1', '1', 'key', '1', '2'],
      ['12', 'B', '2', '1.1', 'inbetween', '3', '2'],
      ['12', 'B', '3', '2', 'key', '5', '4'],
      ['12', 'A', '1', '1', 'key', '3', '6'],
    ]);
  });

  test('camera and placement: the numbers of the JSON in full precision', () => {
    const moving = compileText('cut 1\ntime 1+0\nfield B 50% at 10,-5\ntruck full@1 > B@1+0\nA: 1..\n')
      .solved!;
    const { camera, placement } = toJson(moving, []);
    const numbers = (row: Record<string, string>) =>
      Object.fromEntries(
        Object.entries(row)
          .filter(([key]) => key !== 'cut' && key !== 'level')
          .map(([key, cell]) => [key, Number(cell)]),
      );
    expect(table(toCsv(moving, 'camera')).map(numbers)).toEqual(camera);
    // Half of the field's width on screen is half of the picture's width, and likewise in height.
    const { field, output } = moving.shot.settings;
    const pixels = table(toCsv(moving, 'placement', { pixels: true }));
    expect(pixels.length).toBeGreaterThan(0);
    for (const { screenX, screenY, pixelX, pixelY } of pixels) {
      expect(Number(pixelX) / (output.width / 2)).toBeCloseTo(Number(screenX) / (field.widthMm / 2), 9);
      expect(Number(pixelY) / (output.height / 2)).toBeCloseTo(Number(screenY) / (field.heightMm / 2), 9);
    }
    const rows = table(toCsv(moving, 'placement'));
    for (const [name, frames] of Object.entries(placement)) {
      expect(rows.filter(({ level }) => level === name).map(numbers)).toEqual(frames);
    }
    expect(camera.at(-1)).toMatchObject({ x: 10, y: -5, width: 127, percent: 50 });
  });

  test('of many cuts are those of each below one header row', () => {
    const other = compileText('cut 13\ntime 0+4\nA: 1..\n').solved!;
    for (const name of TABLES) {
      if (name === 'sheet') continue;
      const [header, ...rows] = records(toCsv(cut, name));
      const [, ...more] = records(toCsv(other, name));
      expect(header![0]).toBe('cut');
      expect(records(new CsvTable(name).add(cut).add(other).text)).toEqual([header, ...rows, ...more]);
    }
  });

  test('of many cuts with levels of their own have the columns of all', () => {
    const other = compileText('cut 13\ntime 0+4\nC: 5..\nA: 1..\n').solved!;
    for (const both of [
      [cut, other],
      [other, cut],
    ]) {
      const joined = new CsvTable('sheet');
      for (const one of both) joined.add(one);
      const rows = table(joined.text);
      for (const one of both) {
        const own = table(toCsv(one, 'sheet'));
        const there = rows.filter((row) => row.cut === one.shot.cut);
        expect(there).toHaveLength(own.length);
        own.forEach((row, i) => {
          expect(there[i]).toMatchObject(row);
          for (const name of Object.keys(there[i]!)) if (!(name in row)) expect(there[i]![name]).toBe('');
        });
      }
    }
  });

  test('of no cut are empty', () => {
    expect(new CsvTable('sheet').text).toBe('');
  });
});

// Source: RFC 4180, section 2: CR LF ends each record; fields with line breaks, quotes or commas are quoted, a quote is doubled.
describe('RFC 4180', () => {
  test('every record ends in CR LF', () => {
    for (const name of TABLES) expect(toCsv(cut, name).replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
  });

  test('any text comes back', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('a', '"', ',', '\r', '\n', ' ', 'あ') }), (number) => {
        const odd = { ...cut, shot: { ...cut.shot, cut: number } };
        const rows = table(toCsv(odd, 'drawings'));
        expect(rows.map((row) => row.cut)).toEqual([number, number, number, number]);
      }),
    );
  });
});
