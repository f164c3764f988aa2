/** What stands in the camera column, and which moves stand beside which. */

import { describe, expect, it, test } from 'vitest';
import {
  cameraPlan,
  isConstant,
  keysOf,
  neededArtwork,
  needsCameraChart,
} from '../../../src/sheet/camera/camera-plan.js';
import { printedLengths } from '../../../src/sheet/camera/move-labels.js';
import { sheetPages } from '../../../src/sheet/exposure-sheet.js';
import type { Settings } from '../../../src/shot/settings.js';
import { lookOf, said, solvedCut, textsOf } from '../laid.js';

const HEAD =
  'cut 1\ntime 4+0\nA: 1..\nlevel A free\nlevel BG free\nfield P full\nfield Q full at 40,0\nfield R 60%\n';
const plan = (text: string, west = false) =>
  cameraPlan(
    solvedCut(HEAD + text),
    { labels: 'en', convention: west ? 'west' : 'japan', lengths: 'mm' },
    undefined,
  );

describe('lanes', () => {
  const lanesOf = (text: string) => plan(text).placed.map(({ item, lane }) => [item.first, lane]);

  test('are as many as moves run at the same time', () => {
    expect(lanesOf('pan P@1 > Q@24\nshake 2mm 12..30\nfade out 3+1..4+0\n')).toEqual([
      [1, 0],
      [12, 1],
      [73, 0],
    ]);
  });

  test('begin with the camera where it and a level begin on one row', () => {
    const { placed } = plan('sway A 5mm 1..24 every 12\npan P@1 > Q@24\n');
    expect(placed.map(({ item }) => item.names[0]!.includes('PAN'))).toEqual([true, false]);
  });

  test('of graduated moves are twice as wide', () => {
    expect(plan('pan P@1 > Q@24\n').lanes).toEqual([1]);
    expect(plan('pan P@1 > Q@24 graduated\nshake 2mm 12..30\n').lanes).toEqual([2, 1]);
  });

  test('are one for a move that leaves on the row on which another arrives at the same place', () => {
    const { placed } = plan('pan P@1 > Q@24\ntruck Q@24 > R@48\n');
    expect(placed.map(({ lane, goesOn }) => [lane, goesOn])).toEqual([
      [0, false],
      [0, true],
    ]);
  });
});

describe('an item', () => {
  test('is told in the memo with its rows, as the convention names them', () => {
    expect(plan('shake 2mm 12..30\n').items[0]!.memo).toMatch(/ {2}0\+12–1\+6$/);
    expect(plan('shake 2mm 12..30\n', true).items[0]!.memo).toMatch(/ {2}0'12–1'14$/);
  });

  test('of a graduated pull needs the row before its bar, where graduation 0 is', () => {
    const [pull] = plan('pull BG left 24mm 13..24 graduated\n').items;
    expect([pull!.from, pull!.first, pull!.last]).toEqual([12, 13, 24]);
    expect(pull!.numbers.get(12)).toMatchObject({ number: 0 });
    expect(plan('pull BG left 24mm 13..24\n').items[0]!.from).toBe(13);
  });

  test('names its places on their rows', () => {
    const [pan] = plan('pan P@13 > Q@24\n').items;
    expect([...pan!.labels]).toEqual([
      [13, 'P'],
      [24, 'Q'],
    ]);
  });
});

test('a camera that rests is fixed on its field, the standard field has no name', () => {
  expect(plan('').fixed).toBe('FIX');
  expect(plan('fix R\n').fixed).toBe('FIX R');
  expect(plan('pan P@1 > Q@24\n').fixed).toBeNull();
});

// ---- the key drawings beside a move

const CUT = solvedCut('cut 1\ntime 1+0\nA: 1:4 1-2:4 x:2 2..\nB: x:4 7..\n');
const keys = (levels: readonly string[], west = false) => [...keysOf(levels, CUT, west)];

test('stand on the rows on which they begin, in-betweens and emptiness nowhere', () => {
  expect(keys(['A'])).toEqual([
    [1, ['1']],
    [9, ['2']],
    [15, ['2']],
  ]);
});

test('are named with their level where several go along', () => {
  expect(keys(['A', 'B'])).toEqual([
    [1, ['A 1']],
    [9, ['A 2']],
    [15, ['A 2']],
    [5, ['B 7']],
  ]);
});

test('are told by their final numbers in the west', () => {
  expect(keys(['A'], true)[1]).toEqual([9, ['3']]);
  expect(keys(['B'], true)).toEqual([[5, ['1']]]);
});

test('of a level that is not there are none', () => {
  expect(keys(['C'])).toEqual([]);
});

const cut = (statements: string) =>
  solvedCut(`cut 1\ntime 2+0\nlevel BG\nfield A full\nfield B 50%\n${statements}\n`);

describe('a camera chart', () => {
  test.each([
    ['pull BG left 1mm/f 1..2+0', false],
    ['pull BG left 1mm/f 1..1+0\npull BG up 1mm/f 1+1..2+0', false],
    ['pull BG left 90mm 1..2+0 ease 4', true],
    ['pull BG left 90mm 1..2+0 on 2', true],
    ['shake 2mm 1..12', false],
    ['fix B', true],
    ['truck A@1 > B@2+0', true],
  ])('%s: %s', (statements, needed) => {
    expect(needsCameraChart(cut(statements))).toBe(needed);
  });
});

test('a speed is constant where every step is like every other, the first one too', () => {
  const constant = (statement: string) => isConstant(cut(statement).camera.moves[0]!);
  expect(constant('pull BG left 2mm/f 1..2+0')).toBe(true);
  expect(constant('pull BG left 96mm 1..2+0')).toBe(true);
  expect(constant('pull BG left 96mm 1..2+0 ease 2')).toBe(false);
  expect(constant('shake 2mm 1..12')).toBe(false);
});

describe('the artwork that a pulled level needs', () => {
  const size = (statements: string, lengths: 'mm' | 'in' = 'mm') => {
    const solved = solvedCut(`cut 1\ntime 2+0\n${statements}\n`);
    return neededArtwork(solved.shot.levels[0]!, solved, printedLengths({ lengths }));
  };
  // 254 mm of the field, and 47 steps of 2 mm from the first row to the last.
  test('is the field and its way', () => {
    expect(size('level BG\npull BG left 2mm/f 1..2+0')).toBe('348 × 142.88 mm');
    expect(size('level BG\npull BG left 2mm/f 1..2+0', 'in')).toBe('13.701 × 5.625 in');
  });
  test('is not told of a loop, whose length is', () => {
    expect(size('level BG\npull BG left 2mm/f 1..2+0 loop 300mm')).toBe('');
  });
});

describe('camera memo', () => {
  // ---- what the memo says of the camera, in both languages and measures

  const HEAD = `cut 1
time 6+0
stack BG A B C
field A full
field B full at 120,10
field C 60% at 120,10
field D 40% at 120,10
A: 1..
B: 1..
C: 1..
`;

  /** The memo's lines without their dots. */
  function memo(statements: string, settings: Partial<Settings> = {}): string[] {
    const [page] = sheetPages(solvedCut(`${HEAD}${statements}\n`, settings), lookOf(settings));
    return textsOf(page!.marks)
      .filter(({ text }) => text.startsWith('· '))
      .map(({ text }) => text.slice(2));
  }

  describe.each([
    ['', 'FIX', 'FIX'],
    ['fix C', 'FIX C', 'FIX C'],
    ['pan A@1 > B@5+0', 'PAN A→B  0+1–4+24', 'PAN A→B  0+1–4+24'],
    ['pan A@1 > B@5+0 graduated', 'graduated PAN A→B  0+1–4+24', '目盛りPAN A→B  0+1–4+24'],
    ['pan A@1 > B@5+0 carry A', 'follow PAN A→B with A  0+1–4+24', '付けPAN A→B A付け  0+1–4+24'],
    ['truck B@1 > C@2+0 > D@3+0', 'T.U B→C→D  0+1–2+24', 'T.U B→C→D  0+1–2+24'],
    ['truck C@1 > B@2+0 > C@3+0', 'T.B C→B T.U B→C  0+1–2+24', 'T.B C→B T.U B→C  0+1–2+24'],
    [
      'truck quick C@1 > B@24 fair ア@6 85%',
      'Q.T.B C→B fairing ア  0+1–0+24',
      'Q.T.B C→B フェアリング ア  0+1–0+24',
    ],
    // No chart is printed for these: the memo says how large the background must be, 254 mm and 119 steps of 3 mm.
    [
      'pull BG right 3mm/f 1..5+0',
      'BG pull → 3 mm/f (artwork at least 611 × 142.88 mm)  0+1–4+24',
      'BG 引き → 3 mm/コマ （用紙 611 × 142.88 mm 以上）  0+1–4+24',
    ],
    ['pull BG right 3mm/f 1..5+0 graduated', 'BG pull → 3 mm/f  0+1–4+24', 'BG 引き → 3 mm/コマ  0+1–4+24'],
    ['follow A left 3mm/f 1..5+0', 'A follow ← 3 mm/f  0+1–4+24', 'A フォロー ← 3 mm/コマ  0+1–4+24'],
    ['slide A,B ア(0,0)@1 > エ(-120,0)@6+0', 'A,B slide ア→エ  0+1–5+24', 'A,B スライド ア→エ  0+1–5+24'],
    ['truck level A 100%@1 > 140%@3+0', 'A level T.U 100%→140%  0+1–2+24', 'A セルT.U 100%→140%  0+1–2+24'],
    [
      'turn level A 0@1 > 90@2+0 ccw',
      'A turn 0°→90° counter-clockwise  0+1–1+24',
      'A 回転 0°→90° 左回り  0+1–1+24',
    ],
    // How a leg is spread stands with its leg.
    [
      'slide A ア(0,0)@1 > イ(30,0)@2+0 ease 12 > ウ(60,30)@4+0',
      'A slide ア→イ→ウ ease 12/12 (ア→イ)  0+1–3+24',
      'A スライド ア→イ→ウ 加減速 12/12（ア→イ）  0+1–3+24',
    ],
    [
      'slide A ア(0,0)@1 > イ(30,0)@2+0 > ウ(60,30)@4+0 ease 12',
      'A slide ア→イ→ウ ease 12/12 (イ→ウ)  0+1–3+24',
      'A スライド ア→イ→ウ 加減速 12/12（イ→ウ）  0+1–3+24',
    ],
    [
      'slide A ア(0,0)@1 > イ(30,0)@2+0 ease 12 > ウ(60,30)@4+0 ease 12 on 2',
      'A slide ア→イ→ウ ease 12/12 (each leg) on 2s  0+1–3+24',
      'A スライド ア→イ→ウ 加減速 12/12（各区間） 2コマ打ち  0+1–3+24',
    ],
    [
      'turn level A 0@1 > 9@2+0 ease 6 > 0@3+0 curve 0.42 0 0.58 1 > 9@4+0 ease 6 > 0@5+0 cw',
      'A turn 0°→9°→0°→9°→0° (+ is clockwise) ease 6/6 (leg 1, leg 3) curve 0.42 0 0.58 1 (leg 2)  0+1–4+24',
      'A 回転 0°→9°→0°→9°→0° （＋は右回り） 加減速 6/6（1区間目、3区間目） カーブ 0.42 0 0.58 1（2区間目）  0+1–4+24',
    ],
    // Typed with a minus: it turns the other way.
    [
      'turn level A 0@1 > -90@2+0 ccw about 20,-10',
      'A turn 0°→90° clockwise about 20,-10 mm  0+1–1+24',
      'A 回転 0°→90° 右回り 中心 20,-10 mm  0+1–1+24',
    ],
    [
      'turn level A 0@1 > 48@1+12 > 40@2+0 ccw',
      'A turn 0°→48°→40° (+ is counter-clockwise)  0+1–1+24',
      'A 回転 0°→48°→40° （＋は左回り）  0+1–1+24',
    ],
    [
      'turn level A 0@1 > -48@1+12 > -40@2+0 ccw',
      'A turn 0°→48°→40° (+ is clockwise)  0+1–1+24',
      'A 回転 0°→48°→40° （＋は右回り）  0+1–1+24',
    ],
    [
      'turn level A ア(0)@1 > イ(20)@1+12 > ウ(-5)@2+0 ccw',
      'A turn ア 0°→イ -20°→ウ 5° (+ is clockwise)  0+1–1+24',
      'A 回転 ア 0°→イ -20°→ウ 5° （＋は右回り）  0+1–1+24',
    ],
    [
      'turn level A -45@1+1 > -90@3+0 cw',
      'A turn 45°→90° counter-clockwise  1+1–2+24, 45° until 1+1',
      'A 回転 45°→90° 左回り  1+1–2+24, 1+1まで45°',
    ],
    [
      'truck level A 60%@1+1 > 130%@3+0',
      'A level T.U 60%→130%  1+1–2+24, 60% until 1+1',
      'A セルT.U 60%→130%  1+1–2+24, 1+1まで60%',
    ],
    [
      'turn level A 45@1+1 > 90@3+0 cw',
      'A turn 45°→90° clockwise  1+1–2+24, 45° until 1+1',
      'A 回転 45°→90° 右回り  1+1–2+24, 1+1まで45°',
    ],
    ['truck level A 100%@1+1 > 130%@3+0', 'A level T.U 100%→130%  1+1–2+24', 'A セルT.U 100%→130%  1+1–2+24'],
    [
      'level A size 260x150mm\npull A left 1mm/f 1..12',
      '! A: edge shows from row 0+4, at most 9 mm on row 0+12',
      '! A: 端が見える 0+4から、最大 9 mm（0+12）',
    ],
    [
      'turn level A 0@1 > 90@2+0 cw about 20,-10',
      'A turn 0°→90° clockwise about 20,-10 mm  0+1–1+24',
      'A 回転 0°→90° 右回り 中心 20,-10 mm  0+1–1+24',
    ],
    [
      'truck level A 100%@1 > 140%@3+0 about 20,10',
      'A level T.U 100%→140% about 20,10 mm  0+1–2+24',
      'A セルT.U 100%→140% 中心 20,10 mm  0+1–2+24',
    ],
    [
      'shake 4mm>0mm 1..12 sideways',
      'shake 4→0 mm left and right (right first)  0+1–0+12',
      '画面動 4→0 mm 左右（右から）  0+1–0+12',
    ],
    [
      'sway A 5mm 1..3+0 every 1+12 sideways',
      'A sway 5 mm left and right (right first) every 1+12  0+1–2+24',
      'A ローリング 5 mm 左右（右から） 周期 1+12  0+1–2+24',
    ],
    [
      'sway A 5mm 1..3+0 every 1+12',
      'A sway 5 mm up and down (up first) every 1+12  0+1–2+24',
      'A ローリング 5 mm 上下（上から） 周期 1+12  0+1–2+24',
    ],
    ['fade out white 5+1..6+0', 'W.O  5+1–5+24', 'W.O  5+1–5+24'],
    ['expose B 0%>100% 1..24', 'B double exposure 0%→100%  0+1–0+24', 'B WXP 0%→100%  0+1–0+24'],
    ['glow C 1..12', 'C glow  0+1–0+12', 'C T光  0+1–0+12'],
    ['effect "heat haze" A,B 1..24', 'A,B heat haze  0+1–0+24', 'A,B heat haze  0+1–0+24'],
  ])('%s', (statement, en, ja) => {
    it('is told in the sheet’s language', () => {
      expect(memo(statement)).toContain(en);
      expect(memo(statement, { labels: 'ja' })).toContain(ja);
    });
  });

  it('tells the marks of a truck and of a turn of levels with their sizes and angles', () => {
    const marked = 'truck level A ア(100%)@1 > イ(70%)@2+0 > 80%@3+0\nturn level A ア(0)@1 > イ(-20)@2+0 cw';
    expect(memo(marked).join('\n')).toContain('A level T.B ア 100%→イ 70% level T.U イ 70%→80%  0+1–2+24');
    expect(memo(marked).join('\n')).toContain('A turn ア 0°→イ 20° counter-clockwise');
    expect(memo(marked, { labels: 'ja' }).join('\n')).toContain('A セルT.B ア 100%→イ 70%');
  });

  it('tells a curved way with all its places', () => {
    const curve = 'field P full at 20,0\nfield Q full at 30,20\npan A@1 > P > Q@5+0 curved ease 24';
    expect(memo(curve)).toContain('PAN A→P→Q ease 24/24 curved  0+1–4+24');
    expect(memo(curve, { labels: 'ja' })).toContain('PAN A→P→Q 加減速 24/24 曲線  0+1–4+24');
  });

  it('tells what a pan and a truck give that run at once', () => {
    const both = 'field W 97%\npan A@1 > P@5+0 ease 12\ntruck A@1+1 > W@4+0 log';
    const cut = `field P full at 20,0\n${both}`;
    expect(memo(cut)).toContain('PAN A→P ease 12/12 gives the centre  0+1–4+24');
    expect(memo(cut)).toContain('T.U A→W gives the width equal ratios  1+1–3+24');
    expect(memo(cut, { labels: 'ja' })).toContain('PAN A→P 加減速 12/12 中心の動き  0+1–4+24');
    expect(memo(cut, { labels: 'ja' })).toContain('T.U A→W 幅の動き 等比  1+1–3+24');
    const apart = 'field P full at 20,0\nfield W 97% at 20,0\npan A@1 > P@2+0\ntruck P@2+0 > W@4+0';
    expect(memo(apart).join()).not.toContain('gives');
  });

  it('tells feet in the west', () => {
    expect(memo('pan A@1 > B@5+0', { convention: 'west' })).toContain("PAN A→B  0'01–7'08");
  });

  it('says FIX only where the camera stands still', () => {
    const fixed = (statement: string) => memo(statement).filter((text) => text.startsWith('FIX')).length;
    expect(fixed('pull BG left 1mm/f 1..24')).toBe(1);
    expect(fixed('shake 3mm 1..12')).toBe(0);
    expect(fixed('follow A left 1mm/f 1..24')).toBe(0);
  });

  it('names the cut with which it overlaps, at the cut point too', () => {
    const cut = solvedCut(`${HEAD}overlap out 1+0\n`);
    const page = sheetPages(cut, { ...lookOf(), neighbours: { after: '2A' } })
      .map(said)
      .join(' ');
    expect(page).toContain('O.L 1+0 with c2A');
    expect(page).toContain('cut point');
    expect(page.replace(/\s+/g, ' ')).toMatch(/cut point.*O\.L with c2A/);
    // Down the camera column as well, in one piece.
    expect(textsOf(sheetPages(cut, { ...lookOf(), neighbours: { after: '2A' } })[0]!.marks)).toContainEqual(
      expect.objectContaining({ text: 'O.L 1+0 with c2A', turn: 90 }),
    );
    const alone = sheetPages(cut, lookOf()).map(said).join(' ');
    expect(alone).toContain('O.L 1+0 with the next cut');
  });

  it.each([
    ['japan', 'en', 'O.L 1+0 with c0B', 'cut point, O.L with c0B', '0+12 before the cut, 0+18 after it'],
    ['japan', 'ja', 'c0BとO.L 1+0', 'カット点、c0BとO.L', '頭 0+12、尻 0+18。シート全体 7+6'],
    [
      'west',
      'en',
      "O.L 1'08 with sc. 0B",
      'cut point, O.L with sc. 0B',
      "0'12 before the scene, 1'02 after it",
    ],
    ['west', 'ja', "c0BとO.L 1'08", 'カット点、c0BとO.L', "頭 0'12、尻 1'02。シート全体 10'14"],
  ] as const)(
    'tells overlaps and handles in its measure (%s, %s)',
    (convention, labels, memoLine, note, handles) => {
      const cut = solvedCut(`${HEAD}overlap in 1+0\noverlap out 1+12\n`);
      for (const paper of ['A4', 'A3'] as const) {
        const look = lookOf({ convention, labels, paper });
        const pages = sheetPages(cut, { ...look, neighbours: { before: '0B', after: '2A' } });
        const bare = pages.map(said).join('').replace(/\s+/g, '');
        for (const text of [memoLine, note, handles, note.replace('0B', '2A')])
          expect(bare).toContain(text.replace(/\s+/g, ''));
      }
    },
  );
});
