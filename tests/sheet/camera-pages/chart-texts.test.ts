/** What the camera chart says of moves and sheets, and what the panels of levels are marked with. */

import { describe, expect, test } from 'vitest';
import { cameraChartPages } from '../../../src/sheet/camera-pages/camera-chart.js';
import { chartPanels } from '../../../src/sheet/camera-pages/chart-panels.js';
import { captionOf, chartTexts, roundSteps } from '../../../src/sheet/camera-pages/chart-texts.js';
import { moveTablePages } from '../../../src/sheet/camera-pages/move-table.js';
import { stripPages } from '../../../src/sheet/camera-pages/scale-strip.js';
import type { Page } from '../../../src/sheet/display-list.js';
import type { Settings } from '../../../src/shot/settings.js';
import { lookOf, said, solvedCut } from '../laid.js';

const CUT = `cut 7
time 6+0
stack BG A B
level A free
level B free
A: 1..
B: 1..
field A full
field B 60% at 60,30
`;

const pages = (layout: typeof stripPages, statements: string, settings: Partial<Settings> = {}): string =>
  layout(solvedCut(`${CUT}${statements}\n`, settings), lookOf(settings))
    .map((page: Page) => said(page))
    .join('\n');

describe('the chart', () => {
  test('names the first run of rows with the largest step', () => {
    const slide = 'slide A ア(0,0)@1 > イ(-96,0)@5+0 ease 24 24';
    expect(pages(cameraChartPages, slide)).toContain('(rows 1+2–3+24)');
    expect(pages(cameraChartPages, slide, { labels: 'ja' })).toContain('（1+2–3+24）');
  });

  test('names the row on which the camera stands on no field of the cut', () => {
    const moving = pages(cameraChartPages, 'pan A@1 > B@6+0\nslide A ア(0,0)@1+1 > イ(9,0)@2+0');
    expect(moving).toContain('camera on row 1+1');
    expect(moving).toContain('camera on row 1+24');
    const still = pages(cameraChartPages, 'slide A ア(0,0)@1+1 > イ(9,0)@2+0');
    expect(still).not.toContain('camera on row');
  });

  test('tells from which row the edge of a sheet shows, and on which it is worst', () => {
    const short = 'level BG size 300x160mm\npan A@1 > B@6+0\npull BG left 1mm/f 1..6+0';
    expect(pages(cameraChartPages, short)).toMatch(
      /edge shows from row \d\+\d+, at most [\d.]+ mm on row 5\+24/,
    );
  });

  test('says which corner graduations run along', () => {
    expect(pages(cameraChartPages, 'truck A@1 > B@6+0')).toMatch(
      /graduated along the (upper|lower) (left|right) corner/,
    );
    expect(pages(cameraChartPages, 'pan A@1 > B@6+0')).not.toContain('graduated along');
  });

  test('tells of graduations in width how far it changes and the largest step', () => {
    const truck = 'field C 244mm\ntruck A@1 > C@6 steps 1 2 4 2 1';
    const said = (labels: 'en' | 'ja', convention: 'japan' | 'west' = 'japan', lengths: 'mm' | 'in' = 'mm') =>
      pages(cameraChartPages, truck, { labels, convention, lengths });
    expect(said('en')).toContain('T.U A→C graduated in width');
    expect(said('en')).toContain('width changes by 10 mm, largest step 4 mm a frame (row 0+4)');
    expect(said('ja')).toContain('幅の変化 10 mm、1コマ最大 4 mm（0+4）');
    expect(said('en', 'west', 'in')).toContain('width changes by 0.394 in, largest step 0.157 in a frame');
    expect(pages(cameraChartPages, 'field C 244mm\ntruck A@1 > C@6')).not.toContain('width changes');
  });

  test('says which is meant where a field and a level have one name', () => {
    const text = (statements: string, labels: 'en' | 'ja' = 'en') =>
      pages(cameraChartPages, `level BG size 400x200mm\n${statements}`, { labels });
    const pan = 'pan A@1 > B@6+0 carry A\nfield C 80%';
    expect(text(pan)).toContain('field A  100 %');
    expect(text(pan)).toContain('level A: paper');
    expect(text(pan)).toContain('level BG: paper');
    expect(text(pan)).toContain('field C  80 %');
    expect(text(pan, 'ja')).toContain('フレーム A  100 %');
    expect(text('slide A (0,0)@1 > (9,0)@6+0')).toContain('level A   scale');
    const apart = solvedCut('cut 7\ntime 1+0\nA: 1..\nfield C 80%\nfix C\n');
    expect(cameraChartPages(apart, lookOf()).map(said).join(' ')).not.toContain('field C');
  });

  test('says beside its name that a field is not used', () => {
    const text = pages(cameraChartPages, 'field C 80% at 10,10\npan A@1 > B@6+0');
    expect(text).toContain('C (not used)');
    expect(text).not.toContain('B (not used)');
  });
});

test('the point of a turn is marked where the level lies', () => {
  const panel = (statements: string) => chartPanels(solvedCut(`${CUT}${statements}\n`), false).at(-1)!;
  expect(panel('turn level A 0@1 > 90@2+0 cw about 20,10').pivots).toEqual([[20, 10]]);
  expect(panel('turn level A 0@1 > 90@2+0 cw').pivots).toEqual([]);
  const [pivot] = panel('truck level A 50%@1 > 90%@2+0 about 20,10').pivots;
  expect(pivot![0]).toBeCloseTo(20, 9);
  expect(pivot![1]).toBeCloseTo(10, 9);
});

test('turns and scales of levels have no strip', () => {
  expect(pages(stripPages, 'turn level A 0@1 > 90@2+0 cw')).toBe('');
  // The lower left corner goes 110.8 mm right and 58.6 mm up.
  expect(pages(stripPages, 'truck A@1 > B@2+0')).toContain('leads 28° up to the right');
});

test('constant moves that stand on their first row move from the next one on; swings have no step', () => {
  const eased = 'slide B ア(0,0)@1 > イ(-9,0)@2+0 ease 6 6';
  const table = (statement: string) => pages(moveTablePages, `${eased}\n${statement}`);
  expect(table('turn level A 0@1 > 94@2+0 cw')).toContain('+2° on each frame from row 0+2 on');
  expect(table('pull A left 2mm/f 1..2+0')).toContain('2 mm on each frame, the first one too');
  expect(table('sway A 2mm 1..2+0 every 1+0')).not.toContain('sway');
});

test('rows are numbered at parts of a second or a foot', () => {
  expect(roundSteps(16)).toEqual([1, 2, 4, 8, 16, 32, 64, 160, 320, 960]);
});

describe('the lines over a panel', () => {
  const captions = (statements: string) => {
    const solved = solvedCut(`cut 7\ntime 2+0\nA: 1..\n${statements}\n`);
    return chartPanels(solved, false).map((panel) =>
      captionOf(panel, 4, solved, chartTexts(solved, lookOf())),
    );
  };

  test('give fields of the field chart in its own measures, from the middle to where they lie', () => {
    // A 12 field is 254 × 142.875 mm, and reaches 12 parts to each side: 2 of 12 N are 11.91 mm, 3 of 12 E are 31.75 mm.
    const [lines] = captions(
      'field A full\nfield B 8F at 2N 3E\nfield C 6F at 4S 4W\nfield D 6F at 3E\nfield E 6F\ntruck B@1 > C@2+0 log',
    );
    expect(lines!.slice(3, 9)).toEqual([
      'standard field 254 × 142.88 mm',
      'field A  100 % 254 mm, centre 0, 0 (not used)',
      'field B  8F 169.33 mm, centre 31.75, 11.91 (2N 3E)',
      'field C  6F 127 mm, centre -42.33, -23.81 (4S 4W)',
      'field D  6F 127 mm, centre 31.75, 0 (3E) (not used)',
      'field E  6F 127 mm, centre 0, 0 (not used)',
    ]);
  });

  test('say how a field is turned, and what graduations count from', () => {
    const [lines] = captions('field A full\nfield C 60% at 40,-12 cw 5\npan A@1+1 > C@2+0 graduated');
    expect(lines).toContain('field C  60 % 152.4 mm, centre 40, -12, turned 5°');
    expect(lines).toContain('field A  100 % 254 mm, centre 0, 0');
    expect(lines).toContain('graduations: 0 = row 1+1');
  });

  test('give the paper of each level that no panel of its own shows, the smallest that will do, and where its edge shows', () => {
    // The camera goes 60 mm right in 47 steps, so that it sees 314 mm about 30. Paper of 297 mm ends at 148.5, which a field of
    // 254 mm passes once its middle is beyond 21.5: after 17 steps; at the end by 38.5 mm.
    const [camera, level] = captions(
      'field P full\nfield Q full at 60,0\nlevel BG size 400x200mm at 30,0\nlevel L free\nL: 1..\nslide L ア(0,0)@1 > イ(-96,0)@1+1\npan P@1 > Q@2+0',
    );
    expect(camera!.slice(-2)).toEqual([
      'BG: paper 400 × 200 mm, centre 30, 0; smallest that will do 314 × 142.88 mm, centre 30, 0',
      'A: paper 297 × 210 mm, centre 0, 0; smallest that will do 314 × 142.88 mm, centre 30, 0; ! edge shows from row 0+18, at most 38.5 mm on row 1+24',
    ]);
    // What is free of the field may be as large as one likes.
    expect(level).toEqual([
      'L   scale 1:4',
      'L slide ア→イ  0+1–1+1 (1–25)',
      'distance 96 mm, largest step 4 mm a frame (rows 0+2–1+1)',
      'L: paper 297 × 210 mm, centre 0, 0',
    ]);
  });

  test('give the length of a loop, and no way of what stays where it is', () => {
    expect(captions('level BG size 400x200mm\npull BG left 1mm/f 1..2+0 loop 300mm')).toEqual([
      [
        'BG   scale 1:4',
        'BG pull ← 1 mm/f loop 300 mm  0+1–1+24 (1–48)',
        'distance 48 mm, largest step 1 mm a frame (rows 0+1–1+24)',
        'BG: paper 400 × 200 mm, centre 0, 0; loop 300 mm; smallest that will do 300 × 142.88 mm, centre 0, 0',
      ],
    ]);
    const [still] = captions('level L free\nL: 1..\nslide L ア(0,0)@1 > イ(0,0)@2+0');
    expect(still!.join()).not.toContain('distance');
  });
});
