/** Places and graduations beside a move's line. */

import { describe, expect, test } from 'vitest';
import type { Page } from '../../../src/sheet/display-list.js';
import { laid, solvedCut, textsOf } from '../laid.js';

const HEAD = 'stack BG A\nA: 1..\nlevel BG free\nfield P full\nfield Q full at 120,10\n';
const pages = (time: string, text: string) =>
  laid(`cut 1\ntime ${time}\n${HEAD}${text}\n`, { convention: 'west', paper: 'legal' });

/** What stands in the right half of the row of a frame. */
function beside(page: Page, frame: number): string[] {
  const row = page.rows.find((one) => one.frame === frame)!;
  return textsOf(page.marks)
    .filter(({ x, y, turn }) => !turn && y > row.y && y < row.y + row.height && x > page.widthMm / 2)
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text);
}

describe('graduations', () => {
  const [page] = pages('3+0', 'pull BG left 24mm 13..24 graduated');

  test('are numbered on every row, from 0 on the row before the first', () => {
    const numbers = Array.from({ length: 13 }, (_, i) => beside(page!, 12 + i)[0]);
    expect(numbers).toEqual(Array.from({ length: 13 }, (_, i) => String(i)));
    expect(beside(page!, 25)).toEqual([]);
  });

  test('say a step once while it stays the same', () => {
    const steps = Array.from({ length: 13 }, (_, i) => beside(page!, 12 + i)[1]).filter(
      (text) => text !== undefined,
    );
    expect(new Set(steps).size).toBe(steps.length);
    expect(steps.join(' ')).toMatch(/2(\.00?)?/);
  });

  test('are bold, for the ring about them, on the first and the last', () => {
    const bold = textsOf(page!.marks).filter(
      ({ x, y, weight, text }) =>
        weight === 'bold' && y > page!.rows[0]!.y && x > page!.widthMm / 2 && /^\d+$/.test(text),
    );
    expect(bold.map(({ text }) => text)).toEqual(['0', '12']);
  });
});

// A4 has the narrowest lanes.
test.each([
  ['west', 'A4'],
  ['west', 'A3'],
  ['japan', 'A4'],
  ['japan', 'B4'],
] as const)(
  'each step of a %s sheet on %s stands on its row, with keys of two levels and a name beside it',
  (convention, paper) => {
    const text =
      'stack BG A B\nlevel BG free\nA: 1:24 on 2 (2-3-4-)..\nB: on 3 (1-2-3-)..\nfield TUNNEL full at 9in,0\npan full@1 > TUNNEL@2+12 ease 16 24 graduated carry A,B\n';
    const all = laid(`cut 1\ntime 2+12\n${text}`, { convention, paper, lengths: 'in' });
    const [pan] = solvedCut(`cut 1\ntime 2+12\n${text}`).camera.moves;
    const texts = new Map(
      all.flatMap(({ rows, marks }) =>
        rows.map(({ frame, ...row }) => {
          const here = textsOf(marks).filter(
            ({ x, y }) => y > row.y && y < row.y + row.height && x > row.x && x < row.x + row.width,
          );
          return [frame, here.map(({ text }) => text).join(' ')] as const;
        }),
      ),
    );
    let before = '';
    for (const { frame, stepMm } of pan!.graduations.slice(1)) {
      const step = (stepMm / 25.4).toFixed(3);
      if (step !== before) expect(texts.get(frame), `frame ${frame}`).toContain(step);
      before = step;
    }
  },
);

describe('places', () => {
  test('are named on their rows', () => {
    const [page] = pages('3+0', 'pan P@13 > Q@2+0');
    expect([beside(page!, 13), beside(page!, 48), beside(page!, 30)]).toEqual([['P'], ['Q'], []]);
  });

  test('are named again after a break: from where to where', () => {
    const [, second] = pages("8'00", 'pan P@13 > Q@5+0');
    expect(beside(second!, 97)[0]).toBe('[P→Q]');
  });
});
