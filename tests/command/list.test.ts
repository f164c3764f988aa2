import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, test } from 'vitest';
import type { ExportedList } from '../../src/export/cut-list-export.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { demoFiles, demoWorld } from './demo.js';
import { CUT, isPdf, run, runOn } from './run.js';

type Row = Record<string, string>;
const records = (text: string): Row[] => parse(text, { columns: true, record_delimiter: '\r\n' });
const listed = (text: string): ExportedList => JSON.parse(text) as ExportedList;

const schema = JSON.parse(readFileSync('src/export/cut-list.schema.json', 'utf8'));
const fits = new Ajv({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);

describe('the demo episode', () => {
  const host = demoWorld();
  let rows: Row[];
  let drawings: Row[];
  let exposures: Row[];
  let list: ExportedList;

  beforeAll(async () => {
    rows = records((await run(host, 'list', '--csv')).out);
    drawings = records((await run(host, 'export', 'episode.yaml', '-t', 'drawings')).out);
    exposures = records((await run(host, 'export', 'episode.yaml', '-t', 'exposures')).out);
    list = listed((await run(host, 'list', 'episode.yaml', '--json')).out);
  });

  test('is found from the folder, in story order', () => {
    expect(rows.map(({ cut }) => cut)).toEqual(Array.from({ length: 27 }, (_, i) => String(i + 1)));
  });

  test('has the levels and rows of its exported exposures', () => {
    const own = (cut: string) => exposures.filter((one) => one.cut === cut);
    for (const row of rows) {
      const all = own(row.cut!);
      expect(row.levels, row.cut).toBe(String(new Set(all.map(({ level }) => level)).size));
      expect(row.rows, row.cut).toBe(String(Math.max(...all.map(({ frame }) => Number(frame)))));
    }
  });

  test('has the drawings of its exported table, each counted once', () => {
    // A drawing of a level that the text takes from another cut is reused where that level has one of its name.
    const lenders = new Map(
      Object.entries(demoFiles()).flatMap(([name, text]) => {
        const cut = /^cut\s+(\w+)/m.exec(text.normalize('NFKC'))?.[1];
        if (!name.startsWith('cuts/') || cut === undefined) return [];
        return [...text.matchAll(/^level (\w+) reuse (\w+)\/(\w+)/gm)].map(
          ([, level, other, from]): [string, string] => [`${cut}/${level}`, `${other}/${from}`],
        );
      }),
    );
    expect(lenders.size).toBeGreaterThan(2);
    const shown = new Set(drawings.map(({ cut, level, drawing }) => `${cut}/${level} ${drawing}`));
    const kinds = { keys: 'key', breakdowns: 'breakdown', inbetweens: 'inbetween' } as const;
    for (const row of rows) {
      const all = drawings.filter(({ cut }) => cut === row.cut);
      const lent = all.filter(({ cut, level, drawing }) =>
        shown.has(`${lenders.get(`${cut}/${level}`)} ${drawing}`),
      );
      const own = all.filter((one) => !lent.includes(one));
      expect(row.reused, row.cut).toBe(String(lent.length));
      expect(row.drawings, row.cut).toBe(String(own.length));
      for (const [column, kind] of Object.entries(kinds))
        expect(row[column], `${row.cut} ${column}`).toBe(
          String(own.filter((one) => one.kind === kind).length),
        );
    }
  });

  test('has the times that its texts say, and what they come to', () => {
    const texts = Object.entries(demoFiles()).filter(([name]) => name.startsWith('cuts/'));
    const times = texts.map(([, text]) => {
      const [, seconds, frames] = /^time\s+(\d+)\+(\d+)/m.exec(text.normalize('NFKC'))!;
      return Number(seconds) * 24 + Number(frames);
    });
    const running = times.reduce((sum, one) => sum + one, 0);
    expect(rows.map(({ frames }) => Number(frames)).sort()).toEqual(times.sort());
    // Its overlaps run under `overlap: half`: times add up.
    expect(list.totals).toMatchObject({ time: running, running, over: running - 120 * 24 });
    expect(list.budget).toBe(120 * 24);
  });

  test('has the pages that a build of it prints', async () => {
    const some = [rows[0]!, rows[5]!, rows[11]!, rows[23]!];
    const file = ({ cut }: Row) => `c${cut!.padStart(3, '0')}`;
    const built = demoWorld();
    await run(built, 'build', ...some.map((row) => `cuts/${file(row)}.cut`), '--output', 'out');
    const { openPrinted } = await import('../pdf.js');
    for (const row of some) {
      const name = `/work/out/${file(row)}.pdf`;
      const { pages, outline } = await openPrinted(built.files.get(name)!);
      expect(row.pages, name).toBe(String(pages.length));
      const parts = outline[0]!.children.length > 0 ? outline[0]!.children : outline;
      expect(row.sheetPages, name).toBe(String((parts[1]?.page ?? pages.length) - parts[0]!.page));
    }
  });

  test('has artists whose drawings add up to the whole', () => {
    const sum = (of: (one: ExportedList['artists'][number]) => number) =>
      list.artists.reduce((all, one) => all + of(one), 0);
    expect(list.artists.every(({ shared }) => shared === 0)).toBe(true);
    expect([sum((one) => one.cuts), sum((one) => one.running), sum((one) => one.drawings)]).toEqual([
      27,
      list.totals.running,
      list.totals.counts.drawings,
    ]);
  });

  test('fits the schema', () => {
    expect(fits(list), JSON.stringify(fits.errors)).toBe(true);
  });
});

describe('against the budget', () => {
  const world = (budget: string) => ({
    'episode.yaml': budget,
    'c1.cut': CUT,
    'c2.cut': CUT.replace('cut 1', 'cut 2'),
  });

  test.each([
    ['budget: 2+0\n', 0, 'to the frame'],
    ['budget: 3+6\n', 0, '1+6 under'],
    ['budget: 1+12\n', 0, '0+12 over'],
  ])('%j: the table says so, and is no error', async (budget, status, words) => {
    const ran = await runOn(world(budget), 'list');
    expect(ran.status).toBe(status);
    expect(ran.out).toContain(words);
  });

  test('--check fails where it runs over, names by how much, and points at the line', async () => {
    const { status, out, error } = await runOn(world('title: T\nbudget: 1+12\n'), 'list', '--check');
    expect({ status, out }).toEqual({ status: 1, out: '' });
    expect(error).toContain('episode.yaml:2:9: list-over-budget\n');
    expect(error).toContain('0+12 (12 frames) over the budget of 1+12');
    expect(error).toContain("2 cuts, running time 2+0 (3'00); budget 1+12: 0+12 over");
  });

  test.each(['budget: 2+0\n', 'budget: 9+0\n', ''])('--check is content with %j', async (budget) => {
    const { status, error } = await runOn(world(budget), 'list', '--check');
    expect({ status, errors: error.includes('error') }).toEqual({ status: 0, errors: false });
  });

  test('--check with --csv gives both', async () => {
    const { status, out } = await runOn(world('budget: 1+0\n'), 'list', '--check', '--csv');
    expect(status).toBe(1);
    expect(records(out)).toHaveLength(2);
  });

  test('a budget says nothing of some of the cuts', async () => {
    const { out, status } = await runOn(world('budget: 0+12\n'), 'list', 'c1.cut', '--json', '--check');
    expect(status).toBe(0);
    expect(listed(out)).toMatchObject({ budget: null, totals: { cuts: 1, over: null } });
  });

  test('under full times, overlaps run once', async () => {
    const files = {
      'episode.yaml': 'overlap: full\nbudget: 144\n',
      'c1.cut': 'cut 1\ntime 4+0\nA: 1..\noverlap out 24\n',
      'c2.cut': 'cut 2\ntime 3+0\nA: 1..\noverlap in 24\n',
    };
    const { out, status } = await runOn(files, 'list', '--json', '--check');
    // 96 + 72 − 24 = 144 (common practice).
    expect(listed(out).totals).toMatchObject({ time: 168, running: 144, over: 0 });
    expect(status).toBe(0);
  });
});

describe('where it goes', () => {
  const small = () =>
    memoryHost({ 'episode.yaml': 'title: T\n', 'c1.cut': CUT, 'c2.cut': CUT.replace('1', '2') });

  test.each([
    ['x.csv', /^cut,title,/],
    ['x.json', /^\{\n {2}"version": 1/],
    ['x.pdf', /^%PDF-/],
  ])('the ending of %s says what is written', async (name, start) => {
    const host = small();
    const { status, out, error } = await run(host, 'list', '--output', name);
    expect({ status, out }).toEqual({ status: 0, out: '' });
    expect(error).toMatch(new RegExp(`^wrote ${name}: (2 cuts|2 pages)\n$`));
    expect(Buffer.from(host.files.get(`/work/${name}`)!).toString('latin1')).toMatch(start);
  });

  test('- is standard output', async () => {
    const host = small();
    expect((await run(host, 'list', '--output', '-')).status).toBe(0);
    expect(isPdf(host.printedBytes())).toBe(true);
    expect((await run(small(), 'list', '--json', '--output', '-')).out).toMatch(/^\{/);
  });

  test.each([
    [['--csv', '--json'], '`--csv` and `--json` do not go together'],
    [['--csv', '--output', 'x.pdf'], '`--csv` and `x.pdf` do not go together'],
    [['--json', '--output', 'x.csv'], '`--json` and `x.csv` do not go together'],
    [['--output', 'list.txt'], 'ends in .pdf, .csv or .json'],
    [['--output', 'out/'], 'ends in .pdf, .csv or .json'],
    [['--only', 'rhythm'], '`--only` says what to print'],
    [['--only', 'rythm', '--output', 'x.pdf'], 'did you mean `rhythm`?'],
    [['--output', 'episode.yaml', '--csv'], 'is read by this run'],
    [['--rows', '7'], '`--rows 7` does not do'],
  ])('%j is refused', async (argv, words) => {
    const host = small();
    const before = new Map(host.files);
    const { status, error, out } = await run(host, 'list', ...argv);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(error).toContain(words);
    expect(host.files).toEqual(before);
  });

  test('cuts of two episodes make no list', async () => {
    const files = { 'a/episode.yaml': '', 'a/c1.cut': CUT, 'b/episode.yaml': '', 'b/c1.cut': CUT };
    const { status, error } = await runOn(files, 'list', 'a', 'b');
    expect(status).toBe(2);
    expect(error).toContain(
      'A list is of one episode, and these cuts belong to 2: `a/episode.yaml`, `b/episode.yaml`.',
    );
  });

  test('outside any episode, and of a house file, there is nothing to list', async () => {
    expect((await runOn({ 'a.txt': '' }, 'list')).status).toBe(2);
    const house = await runOn({ 'house.cut': 'phrase walk = 1--2--\n' }, 'list', 'house.cut');
    expect(house.status).toBe(2);
    expect(house.error).toContain(': no-cuts\n');
  });

  test('files without a manifest are listed', async () => {
    const { status, out } = await runOn({ 'c1.cut': CUT }, 'list', 'c1.cut', '--csv');
    expect(status).toBe(0);
    expect(records(out)).toHaveLength(1);
  });

  test('the same bytes whatever the clock says', async () => {
    const [one, other] = [small(), small()];
    other.clock = new Date(Date.UTC(2031, 5, 5));
    for (const host of [one, other]) await run(host, 'list', '--output', 'x.pdf');
    expect(one.files.get('/work/x.pdf')).toEqual(other.files.get('/work/x.pdf'));
  });
});
