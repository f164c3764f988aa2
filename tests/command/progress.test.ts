import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { demoFiles, demoWorld } from './demo.js';
import { CUT, run } from './run.js';

type Row = Record<string, string>;
const records = (text: string): Row[] => parse(text, { columns: true, record_delimiter: ['\r\n', '\n'] });

describe('the demo episode', () => {
  let host: MemoryHost;
  let rows: Row[];
  let drawings: Row[];
  const table = demoFiles()['progress.csv']!;

  beforeAll(async () => {
    host = demoWorld();
    rows = records((await run(host, 'progress', '--csv', '--date', '2027-04-05')).out);
    drawings = records((await run(host, 'list', '--csv')).out);
  });

  test('pays each person what the table and the cut list come to, worked out apart', async () => {
    // By hand: rates of the manifest in hundredths; the first `done` of a cut and stage is paid.
    const rates: Record<string, [number, (of: Row) => number]> = {
      layout: [6000, () => 1],
      key: [1400, (of) => Number(of.keys)],
      'in-between': [350, (of) => Number(of.breakdowns) + Number(of.inbetweens)],
      finish: [225, (of) => Number(of.drawings)],
    };
    const owed = new Map<string, number>();
    const paid = new Set<string>();
    for (const { cut, stage, state, person } of records(table)) {
      if (state !== 'done' || !rates[stage!] || paid.has(`${cut} ${stage}`)) continue;
      paid.add(`${cut} ${stage}`);
      const [amount, of] = rates[stage!]!;
      const counted = drawings.find((one) => one.cut!.normalize('NFKC') === cut)!;
      owed.set(person!, (owed.get(person!) ?? 0) + amount * of(counted));
    }
    const said = new Map<string, number>();
    for (const { paidTo, pay } of rows)
      if (pay !== '') said.set(paidTo!, (said.get(paidTo!) ?? 0) + Math.round(Number(pay) * 100));
    expect(paid.size).toBeGreaterThan(30);
    expect([...said].sort()).toEqual([...owed].sort());
  });

  test('has the last state of each cut and stage before anything sent it back', () => {
    const state = (cut: string, stage: string) =>
      rows.find((row) => row.cut!.normalize('NFKC') === cut && row.stage === stage)!.state;
    expect([state('2', 'in-between'), state('2', 'finish')]).toEqual(['retake', 'open']);
    expect([state('12', 'key'), state('1', 'shoot'), state('27', 'layout')]).toEqual([
      'started',
      'done',
      'open',
    ]);
  });

  test('is clean', async () => {
    const { status, error } = await run(host, 'check', 'episode.yaml');
    expect([status, error.includes('progress')]).toEqual([0, false]);
  });
});

const HEAD = 'cut,stage,state,date,person,note\n';
const world = (files: Record<string, string> = {}) =>
  memoryHost({ 'episode.yaml': '', 'c1.cut': CUT, 'c2.cut': CUT.replace('cut 1', 'cut 12A'), ...files });
const text = (host: MemoryHost): string => Buffer.from(host.files.get('/work/progress.csv')!).toString();

describe('a row', () => {
  test('has the local day of today, and who did it', async () => {
    const host = world();
    host.clock = new Date(2027, 2, 9, 0, 30);
    const { status, error } = await run(host, 'progress', '１２ａ', 'layout', 'done', '--by', ' L. Quoy ');
    expect([status, error]).toEqual([0, 'progress.csv: cut 12A: layout done, 2027-03-09, L. Quoy\n']);
    expect(text(host)).toBe(`${HEAD}12A,layout,done,2027-03-09,L. Quoy,\n`.replaceAll('\n', '\r\n'));
  });

  test('is written for several cuts, into the episode that is named', async () => {
    const host = memoryHost({
      'ep/episode.yaml': '',
      'ep/1.cut': CUT,
      'ep/2.cut': CUT.replace('cut 1', 'cut 2'),
    });
    const { status } = await run(
      host,
      ...['progress', 'ep', '2,1', 'layout', 'started', '--date', '2027/3/9', '--note', 'from the "pile"'],
    );
    expect(status).toBe(0);
    expect(records(Buffer.from(host.files.get('/work/ep/progress.csv')!).toString())).toMatchObject([
      { cut: '2', state: 'started', date: '2027-03-09', note: 'from the "pile"' },
      { cut: '1' },
    ]);
  });

  test('is refused with the reason where it makes no sense, and leaves with 1', async () => {
    const host = world({ 'progress.csv': `${HEAD}1,layout,done,2027-03-01,,\n` });
    const before = text(host);
    const { status, error } = await run(host, 'progress', '1', 'layout', 'done');
    expect(status).toBe(1);
    expect(error).toContain('progress.csv:2:3: progress-twice');
    expect(error).toContain('progress.csv: nothing was written');
    expect(text(host)).toBe(before);
  });

  test('shows a hint at its own place', async () => {
    const host = world({ 'progress.csv': HEAD });
    const { status, error } = await run(host, 'progress', '1', 'key', 'done', '--date', '2027-03-09');
    expect(status).toBe(0);
    expect(error).toContain('progress.csv:2:3: progress-order');
    expect(error).toContain('but layout, which comes before it, is not done by then.');
  });

  test('is not written while the manifest has errors', async () => {
    const host = world({ 'episode.yaml': 'stages: [2d]\n' });
    expect((await run(host, 'progress', '1', 'layout', 'done')).status).toBe(1);
    expect(host.files.has('/work/progress.csv')).toBe(false);
  });
});

describe('the table', () => {
  test('is one of the stages, the people and what is late', async () => {
    const host = world({
      'episode.yaml':
        'stages: [key, shoot]\ndue: { key: 2027-03-01, 1: 2027-05-01 }\nrates: { key: 2.5 EUR per key }\n',
      'progress.csv': `${HEAD}1,key,started,2027-02-20,,\n`,
    });
    expect((await run(host, 'progress', '--date', '2027-03-03')).out).toBe(
      [
        'cut  title  key        shoot',
        '---  -----  ---------  -----',
        '1           started !',
        '12A         !',
        '',
        'stage  done  started  retake  open  late  drawings  rate',
        '-----  ----  -------  ------  ----  ----  --------  ---------------',
        'key       0        1       0     1     2    0 of 4  2.5 EUR per key',
        'shoot     0        0       0     2     0         -',
        '',
        '2 cuts on 2027-03-03: 0 through the last stage, 0 retakes',
        'late by 2 days: key, due 2027-03-01: 1, 12A',
        '',
      ].join('\n'),
    );
  });

  test('holds rows against the cuts, and goes on', async () => {
    const host = world({ 'progress.csv': `${HEAD}7,layout,done,2027-03-01,,\n1,layout,done,soon,,\n` });
    const { status, out, error } = await run(host, 'progress');
    expect(status).toBe(1);
    expect(error).toContain('progress.csv:2:1: progress-cut');
    expect(error).toContain('progress.csv:3:15: progress-faulty');
    expect(out).toContain('2 cuts on');
  });

  test('says nothing of cuts that it does not list', async () => {
    const host = world({ 'progress.csv': `${HEAD}12A,layout,done,2027-03-01,,\n` });
    expect(await run(host, 'progress', 'c1.cut')).toMatchObject({ status: 0, error: '' });
  });

  test('counts a cut with errors for nobody', async () => {
    const host = world({
      'c1.cut': 'cut 1\ntime 1+0\nA: 1--2--\n',
      'episode.yaml': 'rates: { key: 1 EUR per key }\n',
      'progress.csv': `${HEAD}1,key,done,2027-03-01,Tarn,\n1,layout,done,2027-03-01,Tarn,\n`,
    });
    const { status, out } = await run(host, 'progress', '--csv', '--date', '2027-03-05');
    expect(status).toBe(1);
    expect(records(out).find(({ cut, stage }) => cut === '1' && stage === 'key')).toMatchObject({
      state: 'done',
      drawings: '',
      pay: '',
    });
  });

  test('is never written over the table that it is made of', async () => {
    const host = world({ 'progress.csv': HEAD });
    expect((await run(host, 'progress', '--csv', '-o', 'progress.csv')).status).toBe(2);
    expect(text(host)).toBe(HEAD);
  });
});
