/** Moves in the camera column. */

import { describe, expect, test } from 'vitest';
import { sheetPages } from '../../../src/sheet/exposure-sheet.js';
import { laid, lookOf, said, solvedCut, textsOf } from '../laid.js';

const HEAD = 'stack BG A\nA: 1..\nlevel BG free\nfield P full\nfield Q full at 120,10\n';
const cut = (time: string, text: string) => `cut 1\ntime ${time}\n${HEAD}${text}\n`;

/** Texts that read down the column. */
const down = (text: string, time: string) =>
  laid(cut(time, text)).map((page) =>
    textsOf(page.marks)
      .filter(({ turn }) => turn === 90)
      .map((mark) => mark.text),
  );

describe('the name of a move', () => {
  test('reads down its lane', () => {
    expect(down('pan P@1 > Q@3+0', '3+0')).toEqual([['PAN']]);
  });

  test('begins on the row below the direction, if the move has one', () => {
    const rowOfName = (text: string) => {
      const [page] = laid(cut('3+0', text));
      const name = textsOf(page!.marks).find(({ turn }) => turn === 90)!;
      return page!.rows.find(({ y, height }) => name.y >= y && name.y < y + height)!.frame;
    };
    expect([rowOfName('pull BG left 60mm 1..3+0'), rowOfName('shake 3mm 1..3+0')]).toEqual([2, 1]);
  });

  test('says on the next page from which page it comes', () => {
    const [first, second] = down('pan P@1 > Q@8+0', '8+0');
    expect(first).toEqual(['PAN', 'PAN']);
    expect(second).toEqual(['PAN', 'from p.1']);
  });

  test('of a short move goes on beside the rows below, up to the next move of its lane', () => {
    expect(down('shake 3mm 1+1..1+1', '3+0')).toEqual([['shake 3 mm']]);
    const [both] = down('shake 3mm 1+1..1+1\nshake 3mm 1+2..1+24', '3+0');
    expect(both).toHaveLength(1);
  });

  test('is not run through by the rule of a cut point', () => {
    const solved = solvedCut(cut('3+0', 'pull BG left 60mm 1..3+0'), {}, (shot) => ({
      ...shot,
      handles: { head: 2, tail: 0 },
    }));
    const [page] = sheetPages(solved, lookOf());
    const name = textsOf(page!.marks).find(({ turn, text }) => turn === 90 && text.includes('pull'))!;
    expect(name.y).toBeGreaterThan(page!.rows[2]!.y);
  });
});

test('moves that find no lane are told in the memo', () => {
  const levels = Array.from({ length: 24 }, (_, i) => String.fromCharCode(66 + i));
  const moves = levels.map((name) => `sway ${name} 3mm 1..2+0 every 12`).join('\n');
  const text = `cut 1\ntime 2+0\n${levels.map((name) => `${name}: 1..\nlevel ${name} free`).join('\n')}\n${moves}\n`;
  expect(laid(text, { paper: 'B5' }).map(said).join(' ').replace(/\s+/g, ' ')).toContain(
    'No room in the camera column: Y sway',
  );
});
