/** The camera column as it comes back from the printed file. */

import { describe, expect, it } from 'vitest';
import { rowsOfBlocks } from '../../../src/sheet/sheet-geometry.js';
import { defaults, type Settings } from '../../../src/shot/settings.js';
import { readCameraColumn, type Slant } from '../../readback/camera-column.js';
import { layOut, printAndOpen } from '../../readback/print.js';
import { readSheet } from '../../readback/sheet.js';
import { solvedCut } from '../laid.js';
import { CAMERAS, PAN } from './cuts.js';

const LOOKS: Partial<Settings>[] = [
  { paper: 'A4', convention: 'japan', labels: 'ja' },
  { paper: 'A3', convention: 'japan', labels: 'en' },
  { paper: 'A4', convention: 'west', labels: 'en' },
  { paper: 'B5', convention: 'west', labels: 'ja' },
];

async function columns(text: string, look: Partial<Settings>) {
  const settings = { ...defaults, ...look };
  const laid = layOut({ name: 'camera', solved: solvedCut(text, settings), settings }, false);
  const [papers] = await printAndOpen([laid]);
  return papers!.map((paper) => readCameraColumn(readSheet(paper)));
}

describe.each(LOOKS)('$paper $convention $labels', (look) => {
  it('has the graduations of a pan on their rows, first and last in rings', async () => {
    const pages = await columns(PAN, look);
    expect(pages.length).toBeGreaterThan(1);
    const numbers = pages.flatMap(({ texts }) =>
      texts.filter(
        ({ text, frame }, i, all) => /^\d+$/.test(text) && all.findIndex((one) => one.frame === frame) === i,
      ),
    );
    // A on frame 25, B on frame 168: 143 steps.
    expect(numbers.map(({ frame, text }) => [frame, Number(text)])).toEqual(
      Array.from({ length: 144 }, (_, i) => [25 + i, i]),
    );
    expect(numbers.filter(({ ringed }) => ringed).map(({ text }) => text)).toEqual(['0', '143']);
    const bars = pages.flatMap((page) => page.bars).map(({ frame, at }) => `${at} ${frame}`);
    expect(bars).toEqual(['top 25', 'bottom 168']);
  });

  it('has the steps beside them that the solver gives, where they change', async () => {
    const pages = await columns(PAN, look);
    const steps = pages
      .flatMap(({ texts }) => texts)
      .filter(({ text }) => /^\d+\.\d\d$/.test(text))
      .map(({ frame, text }) => [frame, text] as const);
    const { graduations } = solvedCut(PAN).camera.moves[0]!;
    for (const [frame, text] of steps)
      expect(Math.abs(graduations.find((one) => one.frame === frame)!.stepMm - Number(text))).toBeLessThan(
        0.0051,
      );
    // Twelve frames up, twelve down, the constant speed at their joint.
    expect(steps.length).toBeGreaterThanOrEqual(20);
  });

  it('names the fields where they are reached, and again after a break', async () => {
    const pages = await columns(PAN, look);
    const named = (frame: number): string[] =>
      pages.flatMap(({ texts }) => texts.filter((text) => text.frame === frame).map(({ text }) => text));
    expect(named(25)).toContain('A');
    expect(named(168)).toContain('B');
    // The first row of the second block.
    const block = rowsOfBlocks({ ...defaults, ...look }, 24)[0]! + 1;
    expect(named(block)).toContain('[A→B]');
    const { down, texts } = pages[1]!;
    // Japanese stands upright, a character a place.
    const upright = texts.map(({ text }) => text).filter((text) => /^[枚目から]$/u.test(text));
    expect(look.labels === 'ja' ? upright.join('') : down.join(' ')).toContain(
      look.labels === 'ja' ? '枚目から' : 'from p.1',
    );
  });
});

it.each(LOOKS)(
  'has the steps of width beside the graduations of a truck ($convention $labels)',
  async (look) => {
    const mm = [0.5, 1.25, 2.5, 2.5, 1.75];
    const text = `cut 1\ntime 1+0\nA: 1..\nfield B 245.5mm\ntruck full@1 > B@6 steps ${mm.join(' ')}\n`;
    const [page] = await columns(text, { ...look, lengths: 'mm' });
    // Each step that differs from the one above it; a step of the row before is not said again.
    const steps = page!.texts.filter(({ text: one }) => /^\d+\.\d\d?$/.test(one));
    expect(steps.map(({ frame, text: one }) => [frame, Number(one)])).toEqual([
      [2, 0.5],
      [3, 1.25],
      [4, 2.5],
      [6, 1.75],
    ]);
    expect(page!.texts.some(({ text: one }) => one.includes('%'))).toBe(false);
  },
);

it('has the bars of every move on its first and last row', async () => {
  const [first, second] = await columns(CAMERAS['four lanes']!, { paper: 'A3' });
  const bars = [...first!.bars, ...second!.bars].map(({ frame, at }) => `${at} ${frame}`).sort();
  expect(bars).toEqual(
    [
      ...['top 25', 'bottom 120'],
      ...['top 120', 'bottom 168'],
      ...['top 25', 'bottom 144'],
      ...['top 25', 'bottom 144'],
      // A fade's base only: in at its end, out at its start.
      ...['bottom 24', 'top 169'],
      ...['top 169', 'bottom 188'],
    ].sort(),
  );
});

const way = ({ topFrame, bottomFrame, rightMm }: Slant): string =>
  `${topFrame}-${bottomFrame} ${rightMm > 0 ? 'right' : 'left'}`;

it('opens a fade in and closes a fade out', async () => {
  const [page] = await columns('cut 1\ntime 3+0\nA: 1..\nfade in 1..24\nfade out 2+1..3+0\n', {});
  const [a, b, c, d] = [...page!.slants].sort((one, two) => one.topFrame - two.topFrame);
  expect([a, b].map((one) => way(one!)).sort()).toEqual(['1-24 left', '1-24 right']);
  expect([c, d].map((one) => way(one!)).sort()).toEqual(['49-72 left', '49-72 right']);
  const bars = page!.bars.map(({ frame, at }) => `${at} ${frame}`);
  expect(bars.sort()).toEqual(['bottom 24', 'top 49']);
});

describe.each(LOOKS)('$paper $convention $labels, what covers the picture', (look) => {
  it('has a line across the frames of a wipe, which leans one way in and the other out', async () => {
    const text = 'cut 1\ntime 3+0\nA: 1..\nwipe in right 1..18\nwipe out up 2+7..3+0\n';
    const [page] = await columns(text, look);
    expect(page!.slants.map(way)).toEqual(['1-18 right', '55-72 left']);
    expect(page!.bars.map(({ frame, at }) => `${at} ${frame}`).sort()).toEqual(
      ['top 1', 'bottom 18', 'top 55', 'bottom 72'].sort(),
    );
    // Japanese stands upright, a character a place.
    const upright = page!.texts.map(({ text: one }) => one).join('');
    expect(look.labels === 'ja' ? upright : page!.down.join('')).toBe(
      look.labels === 'ja' ? 'ワイプイン右ワイプアウト上' : 'WIPE IN to the rightWIPE OUT up',
    );
  });

  it('goes on with a wipe behind a break where it was before it', async () => {
    const block = rowsOfBlocks({ ...defaults, ...look }, 24)[0]!;
    const text = `cut 1\ntime ${2 * block}\nA: 1..\nwipe in down ${block - 11}..${block + 12}\n`;
    const slants = (await columns(text, look)).flatMap((page) => page.slants);
    expect(slants.map(way)).toEqual([`${block - 11}-${block} right`, `${block + 1}-${block + 12} right`]);
    // Half of the rows on each side: half of the way.
    expect(slants[0]!.rightMm).toBeCloseTo(slants[1]!.rightMm, 2);
  });

  it('has a ring where an iris shows all, at its end in and at its start out', async () => {
    const text = 'cut 1\ntime 3+0\nA: 1..\niris in 1..20 at -30,12\niris out 2+5..3+0\n';
    const [page] = await columns(text, look);
    expect(page!.rings).toEqual([20, 53]);
    expect(page!.slants.map(way).sort()).toEqual(
      ['1-20 left', '1-20 right', '53-72 left', '53-72 right'].sort(),
    );
  });
});
