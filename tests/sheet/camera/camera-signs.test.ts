/** Each kind of move stands in the camera column with a sign, bars at both ends, and a name. */

import { expect, test } from 'vitest';
import type { Mark } from '../../../src/sheet/display-list.js';
import { sheetPages } from '../../../src/sheet/exposure-sheet.js';
import type { MoveKind } from '../../../src/shot/camera/camera-model.js';
import { moveKinds } from '../../../src/shot/camera/move-kinds.js';
import { lookOf, solvedCut } from '../laid.js';

const BARE = 'cut 1\ntime 4+0\nfield P full\nfield Q full at 20,0\nfield R 80%\nlevel A free\nA: 1..\n';

/** From row 13 to row 48. */
const TYPED: { readonly [K in MoveKind]: string } = {
  pan: 'pan P@13 > Q@48',
  truck: 'truck P@13 > R@48',
  pull: 'pull A right 1mm/f 13..48',
  follow: 'follow A right 1mm/f 13..48',
  slide: 'slide A (0,0)@13 > (20,0)@48',
  levelTruck: 'truck level A 100%@13 > 120%@48',
  turn: 'turn level A 0@13 > 90@48 cw',
  shake: 'shake 4mm>1mm 13..48',
  roll: 'roll A 5mm 13..48 every 12',
};

const linesOf = (text: string): Mark[] =>
  sheetPages(solvedCut(text), lookOf({})).flatMap(({ marks }) => marks.filter(({ kind }) => kind !== 'text'));

const textOf = (mark: Mark): string => JSON.stringify(mark);

test.each(Object.keys(moveKinds) as MoveKind[])('%s', (kind) => {
  const before = new Set(linesOf(BARE).map(textOf));
  const added = linesOf(`${BARE}${TYPED[kind]}\n`).filter((mark) => !before.has(textOf(mark)));
  const points = added.map((mark) =>
    mark.kind === 'line'
      ? ([
          [mark.x1, mark.y1],
          [mark.x2, mark.y2],
        ] as const)
      : mark.kind === 'path'
        ? mark.points
        : [],
  );
  const level = (one: (typeof points)[number]) => one.length === 2 && one[0]![1] === one[1]![1];
  // Bars above and below, arrows between them, and a sign that reaches from one bar to the other.
  const heights = points.filter(level).map(([start]) => start![1]);
  const [top, bottom] = [Math.min(...heights), Math.max(...heights)];
  expect(bottom - top).toBeGreaterThan(30);
  expect(points.some((one) => one.some(([, y]) => y === top) && one.some(([, y]) => y === bottom))).toBe(
    true,
  );
});
