import { describe, expect, test } from 'vitest';
import { memoryHost } from '../src/host/memory-host.js';
import { compileCut } from '../src/index.js';
import { run } from './command/run.js';

const PLAIN = 'cut 12 "Rooftop"\ntime 3+0\nA "girl": 1--2--3..\n';

function printable(text: string, options?: Parameters<typeof compileCut>[1]) {
  const cut = compileCut(text, options);
  if (!cut.printable) throw new Error(JSON.stringify(cut.report().diagnostics));
  return cut;
}

describe('the library', () => {
  test('gives the PDF that `build` writes', async () => {
    const host = memoryHost({ 'c012.cut': PLAIN });
    expect((await run(host, 'build', 'c012.cut', '--paper', 'A3')).status).toBe(0);
    const pdf = await printable(PLAIN, { name: 'c012.cut', settings: { paper: 'A3' } }).pdf();
    expect(Buffer.from(pdf).equals(Buffer.from(host.files.get('/work/c012.pdf')!))).toBe(true);
  });

  test('gives what `export` writes', async () => {
    const host = memoryHost({ 'c012.cut': PLAIN });
    const json = await run(host, 'export', 'c012.cut');
    expect(printable(PLAIN, { name: 'c012.cut' }).json()).toEqual(JSON.parse(json.out));
    const csv = await run(host, 'export', 'c012.cut', '--table', 'exposures');
    expect(printable(PLAIN).csv('exposures')).toBe(csv.out);
  });

  test('gives pages of one part, each as SVG', () => {
    const cut = printable(PLAIN);
    const parts = (pages: ReturnType<typeof cut.pages>) => new Set(pages.map(({ part }) => part));
    // Even passages need no chart, unless it is asked for.
    expect(parts(cut.pages())).toEqual(new Set(['sheet']));
    expect(parts(cut.pages({ only: 'charts' }))).toEqual(new Set(['charts']));
    const [sheet, ...more] = cut.pages({ only: 'sheet' });
    expect(more).toEqual([]);
    expect(cut.svg(sheet!)).toMatch(/^<svg[\s\S]*<\/svg>\s*$/);
  });

  test('reports what is wrong, with its place, and prints nothing', () => {
    const cut = compileCut('cut 12\ntime 3+0\nA: 1--\n\tB: q\n', { name: 'c012.cut' });
    expect(cut.printable).toBe(false);
    const [first] = cut.report().diagnostics;
    expect(first).toMatchObject({ severity: 'error', place: { file: 'c012.cut', start: { line: 3 } } });
  });

  test('reads the texts that a cut uses, and says where one is missing', () => {
    const text = `use "house.cut"\n${PLAIN.replace('1--2--3..', 'walk..')}`;
    const files = { 'house.cut': 'phrase walk = 1--2--\n' };
    expect(printable(text, { files }).solved.counts.drawings).toBeGreaterThan(0);
    expect(
      compileCut(text)
        .report()
        .diagnostics.map(({ code }) => code),
    ).toContain('use-missing');
  });

  test('has no page for a text that only holds what others use', () => {
    const house = compileCut('phrase walk = 1--2--\n');
    expect([house.printable, house.report().diagnostics]).toEqual([false, []]);
  });
});
