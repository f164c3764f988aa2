import { expect, test } from 'vitest';
import { CutPrinter } from '../../src/build/cut-printer.js';
import { CutPageStore, placeOf, rowsAt } from '../../src/lsp/cut-pages.js';
import { DocumentText } from '../../src/lsp/document-text.js';
import { opened, uri } from './opened.js';

const CUT = 'cut 1 "Roof"\ntime 2+0\nA: 1:6 (2 3)*2 4..\nB: 9..\nfield near 90%\ntruck full@1 > near@24\n';

test('pages are those of the text in the editor, with a rectangle a row and the columns of the levels', async () => {
  const { host, workspace, analysis } = await opened(CUT, { 'c1.cut': 'cut 1\ntime 9+0\nA: 1..\n' });
  const store = new CutPageStore(workspace, async () => CutPrinter.open(host));
  const { title, broken, pages } = await store.pagesOf(analysis);
  expect([title, broken]).toEqual(['1  Roof', false]);
  expect(pages[0]!.svg.match(/data-frame="(\d+)"/g)).toHaveLength(48);
  expect(new Set(pages[0]!.columns.map(({ level }) => level))).toEqual(new Set(['A', 'B']));
  for (const { x, width } of pages[0]!.columns) expect(x + width).toBeLessThan(pages[0]!.width);
});

test('while the text has errors the last good pages stay', async () => {
  const { host, workspace, analysis } = await opened(CUT);
  const store = new CutPageStore(workspace, async () => CutPrinter.open(host));
  const { pages } = await store.pagesOf(analysis);
  workspace.put(uri('c1.cut'), 2, new DocumentText('cut 1\ntime 2+0\nA: 1\n', 'utf-16'));
  const after = await store.pagesOf((await workspace.analysis(uri('c1.cut')))!);
  expect(after).toEqual({ title: '1  Roof', broken: true, pages });
  store.closed(uri('c1.cut'));
  expect(await store.pagesOf((await workspace.analysis(uri('c1.cut')))!)).toMatchObject({ pages: [] });
});

test('a place in the text has the rows of its item on its level', async () => {
  const { analysis, at } = await opened(CUT);
  expect(rowsAt(analysis, at('1:6'))).toEqual([{ level: 'A', from: 1, to: 6 }]);
  expect(rowsAt(analysis, at('3)*2'))).toEqual([
    { level: 'A', from: 9, to: 10 },
    { level: 'A', from: 13, to: 14 },
  ]);
  expect(rowsAt(analysis, at('truck'))).toEqual([{ level: null, from: 1, to: 24 }]);
  expect(rowsAt(analysis, at('time'))).toEqual([]);
});

test('a row leads to the drawing of its level, or to what else is said of it', async () => {
  const { workspace, analysis } = await opened(CUT);
  const typed = (frame: number, level: string | null) => {
    const place = placeOf(workspace, analysis, { frame, level });
    return (
      place &&
      analysis.text.text.slice(analysis.text.offset(place.range.start), analysis.text.offset(place.range.end))
    );
  };
  expect(typed(13, 'A')).toBe('3');
  expect(typed(20, 'A')).toBe('4..');
  expect(typed(20, null)).toBe('truck full@1 > near@24');
  expect(typed(30, null)).toBe('4..');
  expect(typed(99, 'A')).toBe(null);
});
