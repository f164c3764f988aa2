/** Small lies put into the marks of a page before it is printed. The read-back must tell each of them. */

import type { Mark, Page } from '../../src/sheet/display-list.js';
import { readBars } from './bars.js';
import type { ReadBlock, ReadPage } from './sheet.js';

type TextMark = Extract<Mark, { kind: 'text' }>;
type LineMark = Extract<Mark, { kind: 'line' }>;

/** A page with one thing wrong, or null where the page has nothing of the kind. `pick` chooses below n. */
export type Lie = (page: Page, read: ReadPage, pick: (n: number) => number) => Page | null;

const rowMm = (block: ReadBlock): number => block.grid.edges[1]! - block.grid.edges[0]!;

const without = (page: Page, lost: Mark): Page => ({
  ...page,
  marks: page.marks.filter((mark) => mark !== lost),
});

const instead = (page: Page, old: Mark, made: Mark): Page => ({
  ...page,
  marks: page.marks.map((mark) => (mark === old ? made : mark)),
});

interface Spot {
  readonly block: ReadBlock;
  readonly group: 'cels' | 'keys';
  readonly cell: string;
  readonly x: number;
  readonly y: number;
}

/** Every word in the level columns of a page. */
function spots(read: ReadPage): Spot[] {
  return read.blocks.flatMap((block) =>
    (['cels', 'keys'] as const).flatMap((group) =>
      block[group].flatMap(({ column }) =>
        column.sources.map(({ cell, x, y }) => ({ block, group, cell, x, y })),
      ),
    ),
  );
}

function textAt(page: Page, { x, y }: Spot): TextMark | undefined {
  return page.marks.find(
    (mark): mark is TextMark =>
      mark.kind === 'text' &&
      mark.anchor === 'middle' &&
      !mark.turn &&
      Math.abs(mark.x - x) < 0.05 &&
      Math.abs(mark.y - 0.37 * mark.sizeMm - y) < 0.05,
  );
}

function someSpot(read: ReadPage, pick: (n: number) => number, wanted: (spot: Spot) => boolean): Spot | null {
  const all = spots(read).filter(wanted);
  return all[pick(all.length)] ?? null;
}

const onText =
  (wanted: (spot: Spot) => boolean, change: (page: Page, mark: TextMark, spot: Spot) => Page): Lie =>
  (page, read, pick) => {
    const spot = someSpot(read, pick, wanted);
    const mark = spot && textAt(page, spot);
    return mark ? change(page, mark, spot) : null;
  };

const onHold =
  (change: (page: Page, mark: LineMark, block: ReadBlock) => Page | null): Lie =>
  (page, read, pick) => {
    const all = read.blocks.flatMap((block) =>
      (['cels', 'keys'] as const).flatMap((group) =>
        block[group].flatMap(({ column }) => column.holds.map(({ line }) => ({ block, line }))),
      ),
    );
    const chosen = all[pick(all.length)];
    if (!chosen) return null;
    const { block, line } = chosen;
    const mark = page.marks.find(
      (one): one is LineMark =>
        one.kind === 'line' &&
        Math.abs(one.x1 - line.x1) < 0.01 &&
        Math.abs(one.x2 - line.x1) < 0.01 &&
        Math.abs(one.y1 - Math.min(line.y1, line.y2)) < 0.01,
    );
    return mark ? change(page, mark, block) : null;
  };

const onHatch =
  (rows: number): Lie =>
  (page, read) => {
    const block = read.blocks.find((one) => one.hatched !== null && one.hatched > 0);
    const mark = page.marks.find(
      (one) => one.kind === 'hatch' && block !== undefined && Math.abs(one.x - block.grid.left) < 0.05,
    );
    if (!block || mark?.kind !== 'hatch') return null;
    const down = rows * rowMm(block);
    const made = { ...mark, y: mark.y + down, height: mark.height - down };
    return made.height > 0.01 ? instead(page, mark, made) : without(page, mark);
  };

type PathMark = Extract<Mark, { kind: 'path' }>;

const onBar =
  (change: (page: Page, mark: PathMark, block: ReadBlock) => Page | null): Lie =>
  (page, read, pick) => {
    const bars = readBars(read);
    const bar = bars[pick(bars.length)];
    const mark =
      bar &&
      page.marks.find(
        (one): one is PathMark =>
          one.kind === 'path' &&
          one.fill === 'black' &&
          Math.hypot(one.points[0]![0] - bar.box.x, one.points[0]![1] - bar.box.y) < 0.01,
      );
    const block = bar && read.blocks.find(({ grid }) => grid.left < bar.box.x && grid.right > bar.box.x);
    return mark && block ? change(page, mark, block) : null;
  };

const shifted = (mark: PathMark, right: number, down: number): PathMark => ({
  ...mark,
  points: mark.points.map(([x, y]) => [x + right, y + down] as const),
});

/** A word beside the line of a hold, its letters as marks. */
const onHoldWord =
  (change: (page: Page, letters: readonly TextMark[], block: ReadBlock) => Page): Lie =>
  (page, read, pick) => {
    const all = read.blocks.flatMap((block) =>
      block.keys.flatMap(({ column }) => column.holdWords.map(({ letters }) => ({ block, letters }))),
    );
    const chosen = all[pick(all.length)];
    if (!chosen) return null;
    const marks = chosen.letters.flatMap(([x, y]) =>
      page.marks.filter(
        (mark): mark is TextMark =>
          mark.kind === 'text' &&
          Math.abs(mark.x - x) < 0.05 &&
          Math.abs(mark.y - 0.37 * mark.sizeMm - y) < 0.05,
      ),
    );
    return marks.length === chosen.letters.length ? change(page, marks, chosen.block) : null;
  };

const isNumber = ({ group, cell }: Spot): boolean => group === 'cels' && /^\d+$/.test(cell);

export const LIES: Readonly<Record<string, Lie>> = {
  'a number one row too low': onText(isNumber, (page, mark, { block }) =>
    instead(page, mark, { ...mark, y: mark.y + rowMm(block) }),
  ),
  'a number one row too high': onText(isNumber, (page, mark, { block }) =>
    instead(page, mark, { ...mark, y: mark.y - rowMm(block) }),
  ),
  'a number in the next column': onText(isNumber, (page, mark, { block }) => {
    const [band] = block.grid.groups.get('cels')!;
    return instead(page, mark, { ...mark, x: mark.x + band!.to - band!.from });
  }),
  'another number': onText(isNumber, (page, mark) =>
    instead(page, mark, { ...mark, text: String(Number(mark.text) + 1) }),
  ),
  'a number lost': onText(isNumber, without),
  'a × lost': onText(({ cell }) => cell === '×', without),
  'a bracketed number lost': onText(({ cell }) => cell.startsWith('['), without),
  'a bracketed number without its brackets': onText(
    ({ cell }) => cell.startsWith('['),
    (page, mark) => instead(page, mark, { ...mark, text: mark.text.slice(1, -1) }),
  ),
  'a key without its ring': (page, read, pick) => {
    const spot = someSpot(read, pick, ({ cell }) => /^\(.*[^-]\)$/.test(cell));
    const ring =
      spot &&
      page.marks.find(
        (mark) => mark.kind === 'circle' && Math.hypot(mark.x - spot.x, mark.y - spot.y) < 0.05,
      );
    return ring ? without(page, ring) : null;
  },
  'a key one row too low, ring and all': (page, read, pick) => {
    const spot = someSpot(read, pick, ({ cell }) => /^\(.*[^-]\)$/.test(cell));
    const text = spot && textAt(page, spot);
    const ring =
      spot &&
      page.marks.find(
        (mark) => mark.kind === 'circle' && Math.hypot(mark.x - spot.x, mark.y - spot.y) < 0.05,
      );
    if (!text || ring?.kind !== 'circle') return null;
    const down = rowMm(spot.block);
    return instead(instead(page, text, { ...text, y: text.y + down }), ring, { ...ring, y: ring.y + down });
  },
  'an in-between lost from the key column': (page, read, pick) => {
    const spot = someSpot(read, pick, ({ cell }) => cell === '-' || cell === 'o');
    const mark =
      spot &&
      page.marks.find(
        (one) =>
          (one.kind === 'line' &&
            Math.hypot((one.x1 + one.x2) / 2 - spot.x, (one.y1 + one.y2) / 2 - spot.y) < 0.02) ||
          (one.kind === 'circle' && Math.hypot(one.x - spot.x, one.y - spot.y) < 0.02),
      );
    return mark ? without(page, mark) : null;
  },
  'a hold line lost': onHold(without),
  'a hold line one row short': onHold((page, mark, block) =>
    mark.y2 - mark.y1 > rowMm(block) ? instead(page, mark, { ...mark, y2: mark.y2 - rowMm(block) }) : null,
  ),
  'a hold line one row long': onHold((page, mark, block) =>
    instead(page, mark, { ...mark, y2: mark.y2 + rowMm(block) }),
  ),
  'a hold line that begins a row late': onHold((page, mark, block) =>
    mark.y2 - mark.y1 > rowMm(block) ? instead(page, mark, { ...mark, y1: mark.y1 + rowMm(block) }) : null,
  ),
  'the word beside a hold lost': onHoldWord((page, letters) => letters.reduce(without, page)),
  'a letter of the word beside a hold lost': onHoldWord((page, [first]) => without(page, first!)),
  'another word beside a hold': onHoldWord((page, [first]) =>
    instead(page, first!, { ...first!, text: '中' }),
  ),
  'the word beside a hold two rows low': onHoldWord((page, letters, block) =>
    letters.reduce((so, letter) => instead(so, letter, { ...letter, y: letter.y + 2 * rowMm(block) }), page),
  ),
  'the word of a long hold beside the finished cels': onHoldWord((page, letters, { grid }) => {
    const right = grid.groups.get('cels')![0]!.from - grid.groups.get('keys')![0]!.from;
    return letters.reduce((so, letter) => instead(so, letter, { ...letter, x: letter.x + right }), page);
  }),
  'a hatch a row late': onHatch(1),
  'a hatch a row early': onHatch(-1),
  'a double line a row late': (page, read) => {
    const block = read.blocks.find((one) => one.end !== null);
    if (!block) return null;
    const y = block.grid.edges[block.end!]!;
    const down = rowMm(block);
    return {
      ...page,
      marks: page.marks.map((mark) =>
        mark.kind === 'line' &&
        Math.abs(mark.x1 - block.grid.left) < 0.05 &&
        mark.y1 > y - 0.01 &&
        mark.y1 < y + 1
          ? { ...mark, y1: mark.y1 + down, y2: mark.y2 + down }
          : mark,
      ),
    };
  },
  'the tone of a handle a row late': (page, read) => {
    const block = read.blocks.find((one) => one.toned.length > 0);
    const mark =
      block && page.marks.find((one) => one.kind === 'tint' && Math.abs(one.x - block.grid.left) < 0.05);
    return mark?.kind === 'tint' ? instead(page, mark, { ...mark, y: mark.y + rowMm(block!) }) : null;
  },
  'a cut point a row late': (page, read) => {
    const block = read.blocks.find((one) => one.cutPoints.length > 0);
    const mark =
      block &&
      page.marks.find((one) => one.kind === 'line' && one.stroke.dash && one.x1 < block.grid.left + 0.05);
    if (mark?.kind !== 'line') return null;
    return instead(page, mark, { ...mark, y1: mark.y1 + rowMm(block!), y2: mark.y2 + rowMm(block!) });
  },
  'two levels with each other’s names': (page, read) => {
    const [first, second] = read.blocks[0]!.cels;
    if (!second) return null;
    const swap: Readonly<Record<string, string>> = { [first!.name]: second.name, [second.name]: first!.name };
    const top = read.blocks[0]!.grid.edges[0]!;
    return {
      ...page,
      marks: page.marks.map((mark) =>
        mark.kind === 'text' && mark.weight === 'bold' && mark.y < top && mark.y > top - 40 && swap[mark.text]
          ? { ...mark, text: swap[mark.text]! }
          : mark,
      ),
    };
  },
  'a change bar lost': onBar(without),
  'a change bar a row late': onBar((page, mark, block) =>
    instead(page, mark, shifted(mark, 0, rowMm(block))),
  ),
  'a change bar a row too long': onBar((page, mark, block) => {
    const [[, top]] = mark.points as [readonly [number, number]];
    const points = mark.points.map(([x, y]) => [x, y > top ? y + rowMm(block) : y] as const);
    return instead(page, mark, { ...mark, points });
  }),
  'a change bar in the next column': onBar((page, mark, { grid }) => {
    const [, next] = grid.groups.get('cels')!;
    return instead(page, mark, shifted(mark, next!.to - next!.from, 0));
  }),
  'a change bar through the numbers': onBar((page, mark, { grid }) => {
    const [band] = grid.groups.get('cels')!;
    return instead(page, mark, shifted(mark, (band!.to - band!.from) / 2, 0));
  }),
  'a change bar as thin as a hold': onBar((page, mark) => {
    const [[left]] = mark.points as [readonly [number, number]];
    const points = mark.points.map(([x, y]) => [x > left ? left + 0.24 : x, y] as const);
    return instead(page, mark, { ...mark, points });
  }),
  'a line of the changes lost': (page, read) => {
    const mark = page.marks.find(
      (one): one is TextMark => one.kind === 'text' && one.text.startsWith('· line 0'),
    );
    return mark && readBars(read).length > 0 ? without(page, mark) : null;
  },
  'a frame number beside another row': (page, read) => {
    const { grid, firstFrame } = read.blocks[0]!;
    const mark = page.marks.find(
      (one): one is TextMark =>
        one.kind === 'text' && one.text === String(firstFrame) && one.x < grid.labels.to && one.x > grid.left,
    );
    return mark ? instead(page, mark, { ...mark, y: mark.y + rowMm(read.blocks[0]!) }) : null;
  },
};
