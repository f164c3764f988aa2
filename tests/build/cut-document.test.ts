import { beforeAll, describe, expect, test } from 'vitest';
import { hasTrueSize, selectPages } from '../../src/build/cut-document.js';
import { memoryHost } from '../../src/host/memory-host.js';
import type { Page } from '../../src/sheet/display-list.js';
import { type Looked, lookInto } from '../command/pdf.js';
import { run } from '../command/run.js';

describe('the document', () => {
  const LONG = 'cut 12 "Rooftop & dusk"\ntime 13+0\nartist "M. Arai"\nA "Nao": (1{late}--2--)..\n';
  let pdf: Looked;

  const built = async (...argv: string[]) => {
    const host = memoryHost({ 'c.cut': LONG, 'episode.yaml': 'title: Saltbox Winter\nepisode: 7\n' });
    const { status, error } = await run(host, 'build', 'c.cut', ...argv);
    expect({ status, error: error.match(/error.*/) }).toEqual({ status: 0, error: null });
    return lookInto(host.files.get('/work/c.pdf')!, { texts: false });
  };

  beforeAll(async () => {
    pdf = await built();
  });

  test('is titled, and names its author and language', () => {
    expect(pdf).toMatchObject({
      title: 'Saltbox Winter 7 · Cut 12 Rooftop & dusk',
      author: 'M. Arai',
      language: 'en',
    });
  });

  test('has the sheet, then the charts, with labels', () => {
    expect(pdf.labels).toEqual(['1', '2', '3', 'charts 1']);
  });

  test('has an outline of cut, parts and pages', () => {
    expect(pdf.outline).toEqual([
      {
        title: 'Cut 12 Rooftop & dusk',
        page: 0,
        children: [
          {
            title: 'Sheet',
            page: 0,
            children: ['1', '2', '3'].map((title, page) => ({ title, page, children: [] })),
          },
          { title: 'In-between charts', page: 3, children: [{ title: 'charts 1', page: 3, children: [] }] },
        ],
      },
    ]);
  });

  test('prints chosen pages and parts', async () => {
    expect((await built('--pages', '2-3')).labels).toEqual(['2', '3']);
    expect((await built('--pages', '3-')).labels).toEqual(['3', 'charts 1']);
    expect((await built('--pages', '1,4')).labels).toEqual(['1', 'charts 1']);
    expect((await built('--only', 'sheet')).labels).toEqual(['1', '2', '3']);
    expect((await built('--only', 'charts')).labels).toEqual(['charts 1']);
    expect(
      (await built('--only', 'charts', '--pages', '1')).outline[0]!.children.map(({ title }) => title),
    ).toEqual(['In-between charts']);
  });

  test('looks as the command line says', async () => {
    // Sizes in points: mm × 72 / 25.4. Source: ISO 216 (A4 210 × 297, A3 297 × 420), CSS page sizes (legal 215.9 × 355.6).
    const size = ({ sizes }: Looked) => sizes[0]!.map((points) => Math.round((points * 25.4) / 7.2) / 10);
    expect(size(pdf)).toEqual([210, 297]);
    expect(size(await built('--paper', 'A3'))).toEqual([297, 420]);
    const west = await built('--convention', 'west', '--paper', 'legal');
    expect(size(west)).toEqual([215.9, 355.6]);
    // 13 s are 312 rows: 96 a page in the west, 144 in Japan.
    expect(west.labels.filter((label) => !label.startsWith('charts'))).toHaveLength(4);
    expect((await built('--rows', '72')).labels).toContain('5');
    const ja = await built('--labels', 'ja');
    expect(ja.language).toBe('ja');
    expect(ja.outline[0]!.title).toBe('カット 12 Rooftop & dusk');
    expect(ja.outline[0]!.children.map(({ title }) => title)).toEqual(['シート', '中割り']);
  });
});

describe('the pages of a cut', () => {
  const page = (part: Page['part'], label: string) => ({ part, label }) as Page;
  const cut = (...parts: Page['part'][]) => ({
    title: 'Cut 1',
    parts: parts.map((part, i) => ({ title: part, pages: [page(part, `${i}a`), page(part, `${i}b`)] })),
  });

  test.each(['strip', 'overlay'] as const)('are to be printed at 100 %% where one is a %s', (part) => {
    expect(hasTrueSize(cut('sheet', part))).toBe(true);
    expect(hasTrueSize(selectPages(cut('sheet', part), (number) => number < 3))).toBe(false);
    expect(hasTrueSize(selectPages(cut('sheet', part), (number) => number === 4))).toBe(true);
  });

  test('are counted through its parts; a part without any is left out', () => {
    const { parts } = selectPages(cut('sheet', 'charts', 'camera'), (number) => number === 2 || number > 4);
    expect(parts.map(({ title, pages }) => [title, pages.map(({ label }) => label)])).toEqual([
      ['sheet', ['0b']],
      ['camera', ['2a', '2b']],
    ]);
  });
});
