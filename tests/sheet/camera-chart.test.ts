import { describe, expect, test } from 'vitest';
import { cameraChartPages } from '../../src/sheet/camera-chart.js';
import { moveTablePages } from '../../src/sheet/move-table.js';
import { overlayPages } from '../../src/sheet/overlay.js';
import { smallestTextMm } from '../../src/sheet/papers.js';
import { stripPages } from '../../src/sheet/strip.js';
import { PAPERS } from '../../src/shot/settings.js';
import { compileText } from '../compile.js';
import { testFonts } from '../fonts.js';
import { everyMark, offThePaper, textClashes, tooSmall } from './clashes.js';

const CUTS = {
  'follow pan': `cut 12 "Harbour"
time 5+0
level BG size 560x200mm at 120,0
level A size 300x200mm
field A full
field B 100% at 240,20
field C 60% at 40,-12 cw 5
pan A@1+1 > B@5+0 ease 12 ticks carry A
`,
  'quick truck, slide and shake': `cut 13
time 5+0
level BG size 320x220mm
level A
field A full
field B 50% at 40,20 cw 5
truck quick A@1 > B@24 fair ア@6 60% ticks
slide A ア(0,0)@36 > エ(-120,10)@5+0 ticks
shake 4mm>0mm 3+1..3+20
`,
  'pulls of three layers': `cut 14
time 5+0
level BG
level BOOK
level C
level A
stack BG BOOK C A
pull BG right 1mm/f 1..5+0 ticks
pull BOOK right 360mm 1..3+0 loop 420mm ticks
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
truck A@1 > B@1+0 > C@2+0 > M@4+0 ticks
`,
  'ten metres': `cut 17
time 60+0
level BG
pull BG left 10000mm 1..60+0 ticks
`,
};

describe.each(Object.entries(CUTS))('camera pages: %s', (name, text) => {
  const solved = compileText(text).solved!;
  const papers = name === 'ten metres' ? (['A4'] as const) : PAPERS;
  test.each(papers.flatMap((paper) => [[paper, 'japan', 'ja'] as const, [paper, 'west', 'en'] as const]))(
    'can be read on %s (%s, %s)',
    (paper, convention, labels) => {
      const settings = { ...solved.shot.settings, paper, convention, labels, pegs: 'acme' as const };
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
