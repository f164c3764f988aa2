import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { progressTable } from '../../src/count/count-stages.js';
import { progressCsv, progressJson, toExportedProgress } from '../../src/export/progress-export.js';
import { stageRows } from '../count/stages.js';

const schema = JSON.parse(readFileSync('src/export/progress.schema.json', 'utf8'));
const fits = new Ajv({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);

const counts = { keys: 3, breakdowns: 0, inbetweens: 4, drawings: 7 };
const TABLE = progressTable(
  [
    { cut: '1', key: '1', title: 'Pier, "dusk"', payable: { counts, time: 48, fps: 24 } },
    { cut: '2', key: '2', title: '', payable: null },
  ],
  stageRows('1 layout done 2027-03-01 Tarn', '1 key done 2027-03-12', '1 key retake 2027-03-14 Falk'),
  {
    stages: ['layout', 'key'],
    due: [{ stage: 'key', cut: null, date: '2027-03-10' }],
    rates: new Map([['key', { amount: 150, decimals: 2, currency: 'EUR', unit: 'key' }]]),
  },
  '2027-03-15',
);

test('CSV has a row a cut and stage, empty where there is nothing to say', () => {
  const rows: Record<string, string>[] = parse(progressCsv(TABLE), {
    columns: true,
    record_delimiter: '\r\n',
  });
  expect(rows.map(({ cut, stage, state }) => [cut, stage, state])).toEqual([
    ['1', 'layout', 'done'],
    ['1', 'key', 'retake'],
    ['2', 'layout', 'open'],
    ['2', 'key', 'open'],
  ]);
  expect(rows[1]).toMatchObject({
    ...{ title: 'Pier, "dusk"', date: '2027-03-14', person: 'Falk', due: '2027-03-10', daysLate: '5' },
    ...{ drawings: '3', paidTo: '', pay: '4.50', currency: 'EUR' },
  });
  expect(rows[2]).toMatchObject({ date: '', due: '', daysLate: '', pay: '', drawings: '' });
});

test('JSON says the same, and fits its schema', () => {
  const exported = JSON.parse(progressJson(TABLE));
  expect(fits(exported), JSON.stringify(fits.errors)).toBe(true);
  expect(exported).toEqual(JSON.parse(JSON.stringify(toExportedProgress(TABLE))));
  expect(exported.cuts[0].retakes).toEqual([{ stage: 'key', date: '2027-03-14', person: 'Falk', note: '' }]);
  expect(exported.cuts[1].counted).toBe(false);
  expect(exported.pay).toEqual([{ amount: '4.50', currency: 'EUR' }]);
});
