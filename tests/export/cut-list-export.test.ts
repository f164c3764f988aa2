import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { cutListCsv, cutListJson } from '../../src/export/cut-list-export.js';
import { listOf, row } from '../count/rows.js';

const schema = JSON.parse(readFileSync('src/export/cut-list.schema.json', 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);

function faults(value: unknown): string[] {
  validate(value);
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

const ODD = 'Rope, wet; "let go",\r\nand =1+1';

const list = listOf(
  [
    row(
      '1',
      {
        time: 100,
        levels: 2,
        counts: { keys: 3, breakdowns: 1, inbetweens: 4, drawings: 8, reused: 2, backgrounds: 0 },
        moves: ['PAN', 'O.L'],
        rhythm: {
          moving: [{ from: 1, to: 20 }],
          spoken: [{ from: 5, to: 9 }],
          fresh: [1, 1, 3, 9, 9, 9, 9, 9],
        },
        overlap: { in: 0, out: 12 },
      },
      { title: ODD, artists: ['H. Tarn', 'Quoy, L.'], scene: '2' },
    ),
    row(
      '2A',
      { time: 48, overlap: { in: 12, out: 0 } },
      { title: '渡し場', problems: { errors: 0, warnings: 3 } },
    ),
    row('3', null, { sound: false, pages: null, problems: { errors: 1, warnings: 0 } }),
  ],
  { overlap: 'full', budget: 140 },
);

describe('the CSV', () => {
  const text = cutListCsv(list);
  // RFC 4180: lines end with CR LF, the header line has as many fields as the others.
  const records: string[][] = parse(text, { record_delimiter: '\r\n' });
  const [header, ...rows] = records as [string[], ...string[][]];
  const of = (i: number) => Object.fromEntries(header.map((name, at) => [name, rows[i]![at]]));

  test('is read by an independent reader, whatever stands in a title', () => {
    expect(text.endsWith('\r\n')).toBe(true);
    expect(rows).toHaveLength(3);
    expect(of(0)).toMatchObject({ cut: '1', title: ODD, artists: 'H. Tarn; Quoy, L.', camera: 'PAN; O.L' });
  });

  test('has frames, seconds and feet of a time', () => {
    // 100 frames are 4+04 and 6 ft 4 (16 frames a foot).
    expect(of(0)).toMatchObject({ frames: '100', time: '4+4', feet: "6'04", rows: '100' });
  });

  test('says where a cut begins and what it adds', () => {
    expect([0, 1].map((i) => [of(i).start, of(i).running])).toEqual([
      ['0', '94'],
      ['94', '42'],
    ]);
  });

  test('leaves empty what is not known', () => {
    const { cut, errors, warnings, artists, title, scene, ...rest } = of(2);
    expect({ cut, errors, warnings }).toEqual({ cut: '3', errors: '1', warnings: '0' });
    expect(new Set(Object.values(rest))).toEqual(new Set(['']));
  });
});

describe('the JSON', () => {
  const text = cutListJson(list);
  const good = () => JSON.parse(text);

  test('fits the schema', () => {
    expect(faults(good())).toEqual([]);
  });

  test('has what the CSV has, and the totals', () => {
    expect(good()).toMatchObject({
      version: 1,
      overlap: 'full',
      budget: 140,
      totals: { cuts: 3, time: 148, running: 136, over: -4, untimed: 1, unsound: 1 },
      cuts: [
        { title: ODD, counted: { seconds: '4+4', feet: "6'04", running: 94 } },
        { cut: '2A' },
        { counted: null },
      ],
    });
  });

  // biome-ignore lint/suspicious/noExplicitAny: any value is spoiled
  test.each<[string, (value: any) => void]>([
    ['a further key', (value) => (value.more = 1)],
    ['a further key in a cut', (value) => (value.cuts[0].counted.more = 1)],
    ['a missing total', (value) => delete value.totals.running],
    ['another version', (value) => (value.version = 2)],
    ['a budget below nothing', (value) => (value.budget = -1)],
    ['a time without its plus', (value) => (value.cuts[0].counted.seconds = '4:4')],
    ['frame 0', (value) => (value.cuts[0].counted.rhythm.fresh[0] = 0)],
    ['a nameless artist', (value) => (value.artists[0].name = '')],
  ])('the schema refuses %s', (_, change) => {
    const value = good();
    change(value);
    expect(faults(value)).not.toEqual([]);
  });
});
