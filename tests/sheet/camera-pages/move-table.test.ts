import { describe, expect, test } from 'vitest';
import { moveTable, moveTablePages } from '../../../src/sheet/camera-pages/move-table.js';
import type { Mark, Page } from '../../../src/sheet/display-list.js';
import type { Settings } from '../../../src/shot/settings.js';
import { offThePaper, textClashes } from '../clashes.js';
import { lookOf, said, solvedCut, textsOf } from '../laid.js';

/** The usual field is 254 × 142.875 mm, and a second has 24 frames. */
const FIELDS = 'A: 1..\nfield A full\nfield B full at 48,0\nfield C 50%\n';
const solved = (lines: string, time: string, settings: Partial<Settings> = {}) =>
  solvedCut(`cut 7\ntime ${time}\n${lines}\n`, settings);

/** The table's rows: their texts from left to right. */
function rowsOf(marks: readonly Mark[]): string[][] {
  const rows = new Map<number, { x: number; text: string }[]>();
  for (const { x, y, text } of textsOf(marks)) {
    const at = Math.round(y * 100);
    rows.set(at, [...(rows.get(at) ?? []), { x, text }]);
  }
  return [...rows]
    .sort(([a], [b]) => a - b)
    .map(([, cells]) => cells.sort((a, b) => a.x - b.x).map(({ text }) => text));
}

const wide = { x: 0, y: 0, width: 400, height: 400 };
function tableOf(lines: string, time = '0+6', settings: Partial<Settings> = {}): string[][] {
  const table = moveTable(solved(lines, time, settings), lookOf(settings));
  return table ? rowsOf(table.within(wide)!.marks()) : [];
}
/** Rows that begin with a time. */
const figures = (rows: readonly string[][]) => rows.filter(([first]) => /\(\d/.test(first ?? ''));

describe('rows', () => {
  test('tell place and step of a pan whose steps were typed, and are one where nothing changes', () => {
    expect(figures(tableOf(`${FIELDS}pan A@1 > B@5 steps 1 2 2 1`, '1+0'))).toEqual([
      ['0+1 (1)', '0.00'],
      // A sixth of 48 mm, two sixths twice, a sixth.
      ['0+2 (2)', '8.00', '8.00'],
      ['0+3 (3)', '24.00', '16.00'],
      ['0+4 (4)', '40.00', '16.00'],
      ['0+5 (5)', '48.00', '8.00'],
      ['0+6–0+24 (6–24)', '48.00'],
    ]);
  });

  test.each([
    ['japan', 'ja', '秒+コマ', '0+2 (2)'],
    ['west', 'ja', 'フィート', "0'02 (2)"],
    ['japan', 'en', 'time', '0+2 (2)'],
    ['west', 'en', 'time', "0'02 (2)"],
  ] as const)('on a form of %s in %s stand under what they count', (convention, labels, head, second) => {
    const rows = tableOf(`${FIELDS}pan A@1 > B@5 steps 1 2 2 1`, '1+0', { convention, labels });
    expect(rows.some(([first]) => first === head)).toBe(true);
    expect(figures(rows)[1]![0]).toBe(second);
  });

  test('tell width, percent and steps of a truck whose steps are the same share each', () => {
    // 254 mm × (1/2)^(i/2): 254, 179.605, 127; each row 29.29 % less than the one before.
    expect(figures(tableOf(`${FIELDS}truck A@1 > C@3 log`, '0+3'))).toEqual([
      ['0+1 (1)', '254.00', '100.0'],
      ['0+2 (2)', '179.61', '70.7', '-74.39', '-29.29'],
      ['0+3 (3)', '127.00', '50.0', '-52.61', '-29.29'],
    ]);
  });

  test('tell the place of a level that moves by itself, and its turn in degrees', () => {
    const lines = 'level A free\nA: 1..\n';
    expect(figures(tableOf(`${lines}slide A (0,0)@1 > (12,-6)@3 steps 1 2`, '0+3'))).toEqual([
      ['0+1 (1)', '0.00', '0.00'],
      ['0+2 (2)', '4.00', '-2.00', '4.47'],
      ['0+3 (3)', '12.00', '-6.00', '8.94'],
    ]);
    expect(figures(tableOf(`${lines}turn level A 0@1 > 9@3 cw steps 1 2`, '0+3'))).toEqual([
      ['0+1 (1)', '0.00'],
      ['0+2 (2)', '3.00', '+3.00'],
      ['0+3 (3)', '9.00', '+6.00'],
    ]);
  });

  test('have only the columns of what changes', () => {
    const heads = (lines: string) =>
      tableOf(lines).find((row) => row.includes('x') || row.includes('y')) ?? [];
    expect(heads(`${FIELDS}pan A@1 > B@5 steps 1 2 2 1`)).toContain('x');
    expect(heads(`${FIELDS}pan A@1 > B@5 steps 1 2 2 1`)).not.toContain('y');
    expect(heads('A: 1..\nfield A full\nfield B full at 0,48\npan A@1 > B@5 steps 1 2 2 1')).not.toContain(
      'x',
    );
  });
});

describe('levels', () => {
  const two = (second: string) =>
    `stack A B\nlevel A free\nlevel B free\nA: 1..\nB: 1..\nslide A (0,0)@1 > (12,0)@3 steps 1 2\nslide B (0,0)@1 > ${second}@3 steps 1 2`;

  test('that lie alike on every frame are one group, others each their own', () => {
    expect(tableOf(two('(12,0)')).flat()).toContain('A, B');
    expect(figures(tableOf(two('(12,0)'), '0+3'))[2]).toEqual(['0+3 (3)', '12.00', '8.00']);
    const apart = tableOf(two('(0,9)'), '0+3');
    expect(apart.flat()).not.toContain('A, B');
    expect(figures(apart)[2]).toEqual(['0+3 (3)', '12.00', '8.00', '9.00', '6.00']);
  });
});

describe('a move at constant speed', () => {
  test('has no table of its own, and is a line of words over that of another', () => {
    expect(tableOf(`${FIELDS}pan A@1 > B@5`)).toEqual([]);
    const lines = `level A free\n${FIELDS}slide A (0,0)@1 > (12,0)@3 steps 1 2\npan A@1 > B@5`;
    const words = tableOf(lines)
      .map((row) => row.join(' '))
      .filter((row) => row.startsWith('PAN'));
    expect(words).toEqual([
      expect.stringMatching(/^PAN A→B {2}0\+1–0\+5: 12 mm on each frame from row 0\+2 on$/),
    ]);
    expect(tableOf(lines).flat()).not.toContain('camera');
  });

  test('is not told where it swings', () => {
    expect(tableOf(`${FIELDS}shake 2mm 1..6`)).toEqual([]);
  });
});

describe('the area that it takes', () => {
  const table = moveTable(solved(`${FIELDS}pan A@1 > B@2+0 ease 12 12`, '2+0'), lookOf())!;

  test('holds all that it writes, and is enough for the same again', () => {
    const within = table.within(wide)!;
    expect(within.height).toBeLessThan(wide.height);
    const again = table.within({ x: 30, y: 20, width: within.width + 0.1, height: within.height + 0.1 })!;
    expect([again.width, again.height].map((mm) => mm.toFixed(3))).toEqual(
      [within.width, within.height].map((mm) => mm.toFixed(3)),
    );
    for (const { x, y } of textsOf(again.marks())) {
      expect(x >= 30 && x <= 30 + again.width).toBe(true);
      expect(y >= 20 && y <= 20 + again.height).toBe(true);
    }
    expect(textClashes(again.marks())).toEqual([]);
  });

  test('is split into sets side by side where it is low, and is none where it is too small', () => {
    const within = table.within(wide)!;
    const low = table.within({ ...wide, height: within.height / 2 + 6 })!;
    expect(low.height).toBeLessThan(within.height / 2 + 6.01);
    expect(low.width).toBeGreaterThan(within.width);
    expect(table.within({ ...wide, width: 60, height: 60 })).toBeNull();
  });
});

describe('pages of its own', () => {
  const pages = (time: string, settings: Partial<Settings> = {}): Page[] =>
    moveTablePages(solved(`${FIELDS}pan A@1 > B@${time} ease 48 48`, time, settings), lookOf(settings));

  test('have every row once, in order, and nothing over another', () => {
    const all = pages('20+0');
    expect(all.length).toBeGreaterThan(1);
    expect(all.map(({ label, part }) => [label, part])).toEqual(
      all.map((_, i) => [`table ${i + 1}`, 'table']),
    );
    const numbers = all.flatMap((page) =>
      [...said(page).matchAll(/\d+\+\d+ \((\d+)(?:–(\d+))?\)/g)].flatMap(([, from, to = from]) =>
        Array.from({ length: Number(to) - Number(from) + 1 }, (_, i) => Number(from) + i),
      ),
    );
    expect(numbers).toEqual(Array.from({ length: 480 }, (_, i) => i + 1));
    for (const page of all) {
      expect(textClashes(page.marks)).toEqual([]);
      expect(offThePaper(page)).toEqual([]);
    }
  });

  test('give rows as feet and frames in the west', () => {
    // 16 frames a foot: frame 100 is the fourth of the seventh foot.
    const all = pages('20+0', { convention: 'west' });
    expect(all.map(said).join(' ')).toContain(" 6'04 (100) ");
  });

  test('are none where nothing moves', () => {
    expect(moveTablePages(solved(FIELDS, '1+0'), lookOf())).toEqual([]);
  });
});

describe('the line over the table', () => {
  const free = 'level A free\nA: 1..\n';
  const way = 'slide A (0,0)@1 > (12,-6)@3 steps 1 2\n';
  const slid = `${free}${way}`;
  const camera = 'field B full at 48,0\npan full@1 > B@5 steps 1 2 2 1';
  const line = (lines: string, settings: Partial<Settings> = {}) =>
    tableOf(lines, '0+6', settings).find(([first]) => /artwork|clockwise|作画|回転は/.test(first!))![0];
  const pan = `${FIELDS}pan A@1 > B@5 steps 1 2 2 1`;

  test('says of camera and levels what they are counted from, of nothing that the table has not', () => {
    expect(line(pan)).toBe(
      'mm on the artwork, x to the right, y up; camera from the centre of the standard field',
    );
    expect(line(slid, { lengths: 'in' })).toBe(
      'in on the artwork, x to the right, y up; A: centre of the artwork from its home',
    );
    expect(line('level A free\nA: 1..\nturn level A 0@1 > 9@3 cw steps 1 2')).toBe('degrees clockwise');
    expect(line(`${FIELDS}truck A@1 > C@3 log`)).toBe('mm on the artwork');
  });

  test.each([
    [`${slid}sway A 2mm 1..6 every 6`, 'A: centre of the artwork from its home, sway included'],
    [
      `${slid}${camera} carry A\nshake 2mm 2..3`,
      'camera from the centre of the standard field, shake included; A: centre of the artwork from its home, carry included',
    ],
    [
      `level A free carry\nA: 1..\n${way}${camera}\nshake 2mm 2..3`,
      'camera from the centre of the standard field, shake included; A: centre of the artwork from its home, carry and shake included',
    ],
    [`${slid}pull A left 1mm/f 2..3`, 'A: centre of the artwork from its home, pull included'],
  ])('of %j says what is in the places and not in the steps', (lines, said) => {
    expect(line(lines)).toBe(`mm on the artwork, x to the right, y up; ${said}; steps of the one move alone`);
  });

  test('says it in Japanese', () => {
    expect(line(`${slid}sway A 2mm 1..6 every 6`, { labels: 'ja' })).toBe(
      '作画上の mm、x は右、y は上が正。A は作画の中央、動かさないときの位置から（ローリングを含む）。1コマはその動きだけ',
    );
  });
});

test('nothing has no sign in any column', () => {
  const lines =
    'level A free\nA: 1..\nslide A (0,0)@1 > (12,-0.001)@3 ease 1\nturn level A 0@1 > 0.001@3 ccw ease 1';
  expect(tableOf(lines, '0+3').flat().join(' ')).not.toContain('-0.00');
});
