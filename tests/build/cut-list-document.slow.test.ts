/** The printed list, read back from its PDF by pdf.js, against the CSV of the same episode. */

import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, test } from 'vitest';
import { run } from '../command/run.js';
import { generateEpisode } from '../episode/whole/generate.js';
import { edit, worldOf } from '../episode/whole/world.js';
import { openPrinted, type Paper, type PaperText, type Printed } from '../pdf.js';

/** Columns of the CSV under the heads that the page gives them, in both languages; 0 is left blank where `blank`. */
const NUMBERS: readonly { csv: string; en: string; ja: string; blank?: boolean }[] = [
  { csv: 'time', en: 'time', ja: '尺' },
  { csv: 'frames', en: 'frames', ja: 'コマ' },
  { csv: 'feet', en: 'feet', ja: 'フィート' },
  { csv: 'rows', en: 'rows', ja: '行数' },
  { csv: 'levels', en: 'levels', ja: 'セル' },
  { csv: 'keys', en: 'keys', ja: '原画' },
  { csv: 'breakdowns', en: 'downs', ja: '参考', blank: true },
  { csv: 'inbetweens', en: 'tweens', ja: '中割り' },
  { csv: 'drawings', en: 'ings', ja: '動画', blank: true },
  { csv: 'reused', en: 'reused', ja: '兼用', blank: true },
  { csv: 'sheetPages', en: 'sheet', ja: 'シート' },
  { csv: 'pages', en: 'all', ja: '全' },
];

/** From a head's right edge to its figures': paddings differ a little. */
const NEAR = 0.7;

const world = () => {
  const host = worldOf(generateEpisode({ cuts: 60, seed: 3 }).files);
  // One cut without a time, of which next to nothing is known.
  edit(host, 'e/cuts/c003.cut', (text) => text.replace(/^time .*$/m, ''));
  return host;
};

describe.each([
  ['A4', 'japan', 'en'],
  ['letter', 'west', 'en'],
  ['B4', 'japan', 'ja'],
  ['A3', 'west', 'ja'],
] as const)('%s %s %s', (paper, convention, labels) => {
  let printed: Printed;
  let rows: Record<string, string>[];
  let lists: readonly Paper[];
  let words: readonly string[];

  beforeAll(async () => {
    const host = world();
    const look = ['--paper', paper, '--convention', convention, '--labels', labels];
    const { out } = await run(host, 'list', 'e', '--csv', ...look);
    rows = parse(out, { columns: true, record_delimiter: '\r\n' });
    await run(host, 'list', 'e', '--output', 'list.pdf', ...look);
    printed = await openPrinted(host.files.get('/work/list.pdf')!);
    lists = printed.pages.slice(0, -1);
    words = printed.pages.at(-1)!.texts.map(({ text }) => text);
  });

  /** The texts in line with a cut's number, page by page. */
  const lineOf = (number: string): readonly PaperText[] => {
    const found = lists.flatMap(({ texts }) => {
      const left = Math.min(...texts.filter(({ y }) => y > 20).map(({ x }) => x));
      const cut = texts.find(({ text, x, weight }) => text === number && x < left + 2.5 && weight === 'bold');
      return cut ? [texts.filter(({ y }) => Math.abs(y - cut.y) < 0.05)] : [];
    });
    expect(found, number).toHaveLength(1);
    return found[0]!;
  };
  const under = (line: readonly PaperText[], column: (typeof NUMBERS)[number]): string => {
    const head = lists[0]!.texts.find(({ text }) => text === column[labels])!;
    return line.find(({ endX }) => Math.abs(endX - head.endX) < NEAR)?.text ?? '';
  };

  test('every figure of every cut is that of the CSV', () => {
    for (const row of rows) {
      const sound = row.errors === '0';
      const line = lineOf(sound ? row.cut! : `${row.cut} !`);
      for (const column of NUMBERS) {
        const figure = row[column.csv]!;
        const shown = figure === '' ? /^[–?]$/ : column.blank && figure === '0' ? /^0?$/ : null;
        const found = under(line, column);
        if (shown) expect(found, `${row.cut} ${column.csv}`).toMatch(shown);
        else expect(found, `${row.cut} ${column.csv}`).toBe(figure);
      }
    }
  });

  test('the totals are the sums of the CSV', () => {
    const word = labels === 'en' ? 'total' : '合計';
    const totals = lists.flatMap(({ texts }) => {
      const found = texts.filter(({ text, weight, x }) => text === word && weight === 'bold' && x < 60);
      return found.map(({ y }) => texts.filter((one) => Math.abs(one.y - y) < 0.05));
    })[0]!;
    for (const column of NUMBERS.filter(({ csv }) => !['time', 'feet', 'levels'].includes(csv))) {
      const sum = rows.reduce((all, row) => all + Number(row[column.csv]), 0);
      expect(under(totals, column), column.csv).toBe(String(sum));
    }
  });

  test('cuts stand in story order, and none is left out', () => {
    const known = new Set(rows.map(({ cut, errors }) => (errors === '0' ? cut! : `${cut} !`)));
    const shown = lists.flatMap(({ texts }) => {
      const left = Math.min(...texts.filter(({ y }) => y > 20).map(({ x }) => x));
      return texts.filter(({ text, x, weight }) => x < left + 2.5 && weight === 'bold' && known.has(text));
    });
    expect(shown.map(({ text }) => text)).toEqual([...known]);
  });

  test('the picture names the cuts, and says which it cannot draw', () => {
    const named = rows.filter(({ cut }) => words.includes(cut!)).length;
    expect(named).toBeGreaterThan(50);
    expect(words.some((text) => /(Not drawn, time not known: |尺が不明のため図にない：)3$/.test(text))).toBe(
      true,
    );
  });

  test('bookmarks, page labels, title and language', () => {
    const [list, rhythm] =
      labels === 'en'
        ? [convention === 'west' ? 'Scene list' : 'Cut list', 'Rhythm']
        : ['カット表', 'リズム表'];
    const one = list!.toLowerCase();
    expect(printed.outline.map(({ title, page }) => [title, page])).toEqual([
      [list, 0],
      [rhythm, lists.length],
    ]);
    expect(printed.outline[0]!.children.map(({ page }) => page)).toEqual(
      lists.length > 1 ? lists.map((_, i) => i) : [],
    );
    expect(printed.labels).toEqual([...lists.map((_, i) => `${one} ${i + 1}`), rhythm]);
    expect(printed.title).toBe(`Samphire Ferry 3 · ${list}`);
    expect(printed.language).toBe(labels);
  });
});
