import { describe, expect, test } from 'vitest';
import type { PartSelection } from '../../src/build/print-plan.js';
import { cutPages } from '../../src/build/printed-parts.js';
import type { Settings } from '../../src/shot/settings.js';
import { lookOf, said, solvedCut } from '../sheet/laid.js';

const HEAD = `cut 1
time 3+0
stack BG A
level BG size 900x300mm
field A full
field B full at 60,0
A: 1:2 (2):2 3..
`;

function parts(more: string, selection: PartSelection = {}, settings: Partial<Settings> = {}): string[] {
  const printed = cutPages(solvedCut(`${HEAD}${more}\n`), lookOf(settings), selection);
  return printed.parts.flatMap(({ pages }) => [...new Set(pages.map(({ part }) => part))]);
}

describe('what is printed of a cut', () => {
  test.each([
    ['', ['sheet']],
    ['pull BG left 2mm/f 1..3+0', ['sheet']],
    ['follow A left 2mm/f 1..3+0', ['sheet']],
    ['shake 3mm 1..12', ['sheet']],
    ['sway A 2mm 1..3+0 every 24', ['sheet']],
    ['fade out 2+1..3+0', ['sheet']],
    ['fix full', ['sheet']],
    ['fix B', ['sheet', 'camera']],
    ['pull BG left 2mm/f 1..3+0 graduated', ['sheet', 'camera']],
    ['pull BG left 200mm 1..3+0 ease 12', ['sheet', 'camera']],
    ['pan A@1 > B@3+0', ['sheet', 'camera']],
    ['slide A (0,0)@1 > (40,0)@3+0', ['sheet', 'camera']],
    ['turn level A 0@1 > 30@3+0 cw', ['sheet', 'camera']],
  ])('by default, with %s: %j', (statement, wanted) => {
    expect(parts(statement)).toEqual(wanted);
  });

  test('a table of moves has pages of its own only where it does not stand on the chart', () => {
    const eased = 'pull BG left 200mm 1..3+0 ease 12';
    const { pages } = cutPages(solvedCut(`${HEAD}${eased}\n`), lookOf()).parts.find(
      ({ pages: [page] }) => page!.part === 'camera',
    )!;
    expect(said(pages[0]!)).toContain('2+24 (72)');
    expect(parts(eased, { only: 'table' })).toEqual(['table']);
    const long = solvedCut(`cut 2\ntime 60+0\nlevel BG\npull BG left 9000mm 1..60+0 ease 900 540\n`);
    const made = cutPages(long, lookOf()).parts.map(({ pages: [page] }) => page!.part);
    expect(made).toEqual(['sheet', 'camera', 'table']);
  });

  test('charts of passages that are not even; all of them when asked for', () => {
    const cut = (chart: string) => solvedCut(`cut 1\ntime 3+0\nA: 1-2-3..\nB: ${chart}\n`);
    const names = (chart: string, selection: PartSelection = {}) =>
      cutPages(cut(chart), lookOf({ labels: 'en' }), selection).parts.flatMap(({ pages }) =>
        pages.filter(({ part }) => part === 'charts').map(said),
      );
    expect(names('1--2..')).toEqual([]);
    const [uneven] = names('1{late}--2--3..');
    expect(uneven).toContain('1 → 2');
    expect(uneven).not.toContain('2 → 3');
    expect(uneven).toContain('A  even: 1→2 ×1, 2→3 ×1');
    expect(uneven).toContain('B  even: 2→3 ×2');
    expect(names('1--2..', { only: 'charts' })[0]).toContain('1 → 2');
    expect(names('1--2..', { parts: 'all' })[0]).toContain('1 → 2');
  });

  test('everything, when asked for', () => {
    expect(parts('pan A@1 > B@3+0 ease 12', { parts: 'all' })).toEqual([
      'sheet',
      'camera',
      'strip',
      'overlay',
    ]);
    expect(parts('pull BG left 2mm/f 1..3+0', { parts: 'all' })).toContain('camera');
    expect(parts('pan A@1 > B@3+0', { trueSize: true })).toEqual(['sheet', 'camera', 'strip', 'overlay']);
  });
});
