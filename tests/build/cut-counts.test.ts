import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import type { ExportedList } from '../../src/export/cut-list-export.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run, runOn } from '../command/run.js';

type Row = Record<string, string>;
const records = (text: string): Row[] => parse(text, { columns: true, record_delimiter: '\r\n' });
const listed = (text: string): ExportedList => JSON.parse(text) as ExportedList;

describe('cuts with errors', () => {
  const files = {
    'episode.yaml': 'budget: 10+0\nartists: { R. Esk: [3] }\n',
    'c1.cut': CUT,
    // The timeline is too short, which leaves its time and some drawings known.
    'c2.cut': 'cut 2 "Short"\ntime 2+0\nA: 1--2\nB: 1-2..\n',
    // Without a time there is nothing to count.
    'c3.cut': 'cut 3 "Timeless"\nscene 4\nA: 1..\n',
    'c4.cut': `zzz\n${CUT.replace('cut 1', 'cut 4')}zzz\n`,
  };

  test('stay in the list with what is known', async () => {
    const { out, status } = await runOn(files, 'list', '--json');
    const { cuts, totals } = listed(out);
    expect(status).toBe(1);
    expect(cuts.map(({ cut, sound, errors }) => [cut, sound, errors])).toEqual([
      ['1', true, 0],
      ['2', false, 1],
      ['3', false, 1],
      ['4', false, 2],
    ]);
    expect(cuts[1]).toMatchObject({
      pages: null,
      counted: { time: 48, levels: 2, counts: { keys: 4, inbetweens: 3 } },
    });
    expect(cuts[2]).toMatchObject({
      title: 'Timeless',
      scene: '4',
      artists: ['R. Esk'],
      counted: null,
      pages: null,
    });
    expect(totals).toMatchObject({ running: 24 + 48 + 24, unsound: 3, untimed: 1, errors: 4 });
  });

  test('are marked in the table, and named once each on standard error', async () => {
    const { out, error } = await runOn(files, 'list');
    expect(out).toMatch(/^2 ! +Short/m);
    expect(out).toMatch(/^3 ! +Timeless +4 +\? +\? +-/m);
    expect(out).toContain(
      '3 cuts with errors (!): counted as far as could be read, not printed; the time of 1 is not known',
    );
    expect(error.match(/^Error: /gm)).toHaveLength(3);
    expect(error).toContain('Error: Cut 4 has 2 errors, so its figures may change; `cutwright check c4.cut`');
    expect(error).not.toContain('zzz');
  });

  test('have the artist whom their text names, not the one whom the manifest gives the cut', async () => {
    const untitled = listed((await runOn({ ...files, 'c3.cut': 'cut 3\nA: 1..\n' }, 'list', '--json')).out);
    expect(untitled.cuts[2]).toMatchObject({ cut: '3', title: '', scene: '' });
    const named = { ...files, 'c3.cut': 'cut 3 "Timeless"\nartist "M. Arai"\nartist "Shiomi"\nA: 1..\n' };
    const { cuts } = listed((await runOn(named, 'list', '--json')).out);
    expect(cuts[2]).toMatchObject({ artists: ['M. Arai', 'Shiomi'], counted: null });
  });

  test('make --check fail even under the budget', async () => {
    expect((await runOn(files, 'list', '--check')).status).toBe(1);
  });

  test('warnings are counted, and are errors with --strict', async () => {
    const warned = { 'episode.yaml': '', 'c1.cut': 'cut 1\ntime 1+0\nA: 1--2..\nB: x..\n' };
    const plain = await runOn(warned, 'list', '--json');
    expect([plain.status, plain.error, listed(plain.out).totals.warnings]).toEqual([0, '', 1]);
    const strict = await runOn(warned, 'list', '--strict');
    expect(strict.status).toBe(1);
    expect(strict.error).toContain('Cut 1 has 1 warning, so');
  });

  test('a file that cannot be read is told in full, and is in the list', async () => {
    const host = memoryHost(files);
    host.locked.add('/work/c1.cut');
    const { status, out, error } = await run(host, 'list', '--csv');
    expect(status).toBe(2);
    expect(error).toContain('c1.cut: file-unreadable');
    expect(records(out)[0]).toMatchObject({ cut: 'c1', frames: '', errors: '1' });
  });

  test('two cuts of one number are both listed', async () => {
    const twice = { 'episode.yaml': '', 'c1.cut': CUT, 'c1b.cut': CUT };
    const { status, out } = await runOn(twice, 'list', '--json');
    expect(status).toBe(0);
    expect(listed(out)).toMatchObject({ totals: { cuts: 2, warnings: 1 } });
  });

  test('a broken manifest is told, and its cuts are listed all the same', async () => {
    const broken = { ...files, 'episode.yaml': 'budgt: 10+0\nfps: fast\n' };
    const { status, out, error } = await runOn(
      { ...broken, 'c3.cut': '', 'c2.cut': CUT.replace('1', '2') },
      'list',
      '--csv',
    );
    expect(status).toBe(1);
    expect(error).toContain('episode.yaml:1:1: episode-key');
    expect(error).toContain('episode.yaml:2:6: episode-value');
    expect(records(out)).toHaveLength(4);
    // What is wrong in the manifest is not the fault of its cuts.
    expect(records(out)[0]).toMatchObject({ errors: '0', warnings: '0' });
  });
});

test('pages are counted as they would be printed, those of the sheet besides', async () => {
  // 13 s are three pages of sheet; an uneven passage has a chart.
  const cuts = {
    'episode.yaml': '',
    'c1.cut': 'cut 1\ntime 13+0\nA: 1{late}--2..\n',
    'c2.cut': 'cut 2\ntime 1+0\nA: 1..\n',
  };
  const { out } = await runOn(cuts, 'list', '--json');
  expect(listed(out).cuts.map(({ pages }) => pages)).toEqual([
    { sheet: 3, all: 4 },
    { sheet: 1, all: 1 },
  ]);
});

test('a file that cuts share is no row of the list', async () => {
  const files = { 'episode.yaml': '', 'a.cut': 'phrase p = 1--2\n', 'b.cut': `use "a.cut"\n${CUT}` };
  expect(listed((await runOn(files, 'list', '--json')).out).cuts.map(({ cut }) => cut)).toEqual(['1']);
});
