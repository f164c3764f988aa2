import { describe, expect, test } from 'vitest';
import { cameraPlan } from '../../src/sheet/camera/camera-plan.js';
import { cameraChartPages } from '../../src/sheet/camera-pages/camera-chart.js';
import { overlayPages } from '../../src/sheet/camera-pages/field-overlay.js';
import { moveTablePages } from '../../src/sheet/camera-pages/move-table.js';
import { stripPages } from '../../src/sheet/camera-pages/scale-strip.js';
import type { Page } from '../../src/sheet/display-list.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { smallestTextMm } from '../../src/sheet/sheet-geometry.js';
import { PAPERS } from '../../src/shot/settings.js';
import { compileText } from '../compile.js';
import { testFonts } from '../fonts.js';
import { everyMark, offThePaper, textClashes, tooSmall } from './clashes.js';
import { said } from './laid.js';

const CUTS = {
  'follow pan': `cut 12 "Harbour"
time 5+0
level BG size 560x200mm at 120,0
level A size 300x200mm
field A full
field B 100% at 240,20
field C 60% at 40,-12 cw 5
pan A@1+1 > B@5+0 ease 12 graduated carry A
`,
  'quick truck, slide and shake': `cut 13
time 5+0
level BG size 320x220mm
level A
field A full
field B 50% at 40,20 cw 5
truck quick A@1 > B@24 fair ア@6 60% graduated
slide A ア(0,0)@36 > エ(-120,10)@5+0 graduated
shake 4mm>0mm 3+1..3+20
`,
  'pulls of three layers': `cut 14
time 5+0
level BG
level BOOK
level C
level A
stack BG BOOK C A
pull BG right 1mm/f 1..5+0 graduated
pull BOOK right 360mm 1..3+0 loop 420mm graduated
pull C right 5mm/f 1..5+0
turn level A 0@1 > 30@2+0 cw about 0,0
`,
  'field chart': `cut 15
time 4+0
level BG size 400x250mm
field A full
field B 8F at 2N 3E
field C 6F at 4S 4W
truck B@1 > C@4+0 log
`,
  'many fields': `cut 16
time 4+0
level BG size 900x400mm
${[...'ABCDEFGHJKLM'].map((name, i) => `field ${name} ${40 + 5 * i}% at ${i * 20 - 100},${(i % 3) * 12}`).join('\n')}
truck A@1 > B@1+0 > C@2+0 > M@4+0 graduated
`,
  'ten metres': `cut 17
time 60+0
level BG
pull BG left 10000mm 1..60+0 graduated
`,
};

describe.each(Object.entries(CUTS))('camera pages: %s', (name, text) => {
  const solved = compileText(text).solved!;
  const papers = name === 'ten metres' ? (['A4'] as const) : PAPERS;
  test.each(papers.flatMap((paper) => [[paper, 'japan', 'ja'] as const, [paper, 'west', 'en'] as const]))(
    'can be read on %s (%s, %s)',
    (paper, convention, labels) => {
      const settings = {
        ...solved.shot.settings,
        paper,
        convention,
        labels,
        pegs: 'flat-round-flat' as const,
      };
      const look = { settings, metrics: testFonts().metrics, stamp: '1a2b3c4d' };
      const pages = [cameraChartPages, moveTablePages, stripPages, overlayPages].flatMap((layout) =>
        layout(solved, look),
      );
      expect(pages.length).toBeGreaterThan(0);
      for (const page of pages) {
        const problems = [
          ...offThePaper(page),
          ...tooSmall(page, smallestTextMm(paper)),
          ...textClashes(everyMark(page)),
        ];
        expect(problems, page.label).toEqual([]);
      }
    },
  );
});

describe('the name of a move', () => {
  const solved = compileText(`cut 18
time 5+0
stack BG A B C
level BG size 560x300mm
field A full
field B full at 120,10
field C 60% at 120,10
A: 1..
B: 1..
C: 1..
pan A@1 > B@2+0 ease 6 12 graduated carry A
truck B@2+0 > C@4+0 > B@5+0
pull BG right 300mm 1..5+0 loop 260mm graduated
slide B (0,0)@1 > (30,0)@2+0 graduated
turn level C 0@1 > 90@2+0 ccw
truck level C 100%@2+1 > 140%@3+0 log
shake 3mm 4+1..4+12
sway A 2mm 1..24 every 24
`).solved!;

  test.each([
    ['japan', 'ja', 'A4'],
    ['japan', 'en', 'A3'],
    ['west', 'en', 'letter'],
    ['west', 'ja', 'B5'],
  ] as const)(
    'is the same in memo, chart and strip, with its rows (%s, %s, %s)',
    (convention, labels, paper) => {
      const settings = { ...solved.shot.settings, convention, labels, paper };
      const look = { settings, metrics: testFonts().metrics, stamp: '' };
      const bare = (pages: readonly Page[]): string => pages.map(said).join(' ').replace(/\s+/g, '');
      const [sheet, chart, strip] = [sheetPages, cameraChartPages, stripPages].map((make) =>
        bare(make(solved, look)),
      );
      const plan = cameraPlan(solved, settings, undefined);
      expect(plan.items).toHaveLength(8);
      for (const { memo } of plan.items) {
        const [, name, first, last] = /^(.*) {2}(\S+)–(\S+)$/.exec(memo)!;
        expect(sheet).toContain(memo.replace(/\s+/g, ''));
        expect(chart).toContain(`${name}${first}–${last}(`.replace(/\s+/g, ''));
      }
      expect(chart).toContain(labels === 'ja' ? 'Bスライド(0,0)→(30,0)' : 'Bslide(0,0)→(30,0)');
      for (const name of [
        ['followPANA→B', '付けPANA→B'],
        ['Bslide(0,0)→(30,0)', 'Bスライド(0,0)→(30,0)'],
        ['BGpull→300mmloop260mm', 'BG引き→300mmループ260mm'],
      ])
        expect(strip).toContain(name[labels === 'ja' ? 1 : 0]);
    },
  );
});
