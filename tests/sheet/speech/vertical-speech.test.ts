/** Dialogue in Japanese, from top to bottom. */

import { describe, expect, it } from 'vitest';
import type { Page } from '../../../src/sheet/display-list.js';
import { framed } from '../../../src/sheet/speech/vertical-speech.js';
import { verticalCells } from '../../../src/sheet/vertical-text.js';
import { laid, lookOf, textsOf } from '../laid.js';

const { metrics } = lookOf();

/** The row (from 1) of each text that stands on one. */
function rowOf(page: Page, text: string): number[] {
  return textsOf(page.marks)
    .filter((mark) => mark.text === text)
    .map(
      ({ x, y }) =>
        page.rows.find((row) => x > row.x && x < row.x + row.width && y > row.y && y < row.y + row.height)
          ?.frame ?? 0,
    );
}

describe('Japanese', () => {
  const cells = (text: string) => verticalCells(text, (one) => metrics.width(one, 1, 'regular'));

  // Small ya, yu, yo are heard with the kana before them; っ, ん and ー have a beat of their own (mora counts as in
  // Japanese phonology teaching: とうきょう 4, コンピューター 6).
  it('spreads beats, not characters', () => {
    const frames = (text: string, to: number) =>
      framed(cells(text), { from: 1, to, text, tied: false, parts: [], places: null }).map(
        ({ frame }) => frame,
      );
    expect(frames('とうきょう', 16)).toEqual([1, 5, 9, 10, 13]);
    expect(frames('コンピューター', 12)).toEqual([1, 3, 5, 6, 7, 9, 11]);
    expect(frames('はい。', 6)).toEqual([1, 4, 5]);
  });

  it('stands one a row, in the rows of its line', () => {
    const [page] = laid('cut 1\ntime 3+0\nA: 1..\nvoice 「ピム」 25..48 「かきかき」\n');
    expect(rowOf(page!, 'か')).toEqual([25, 37]);
    expect(rowOf(page!, 'き')).toEqual([31, 43]);
  });

  it('closes up and takes several columns where there are more characters than rows', () => {
    const long = 'いま行くってばすぐ行くから待っててよ';
    const [page] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice 「ナオ」 1..12 「${long}」\n`);
    const marks = textsOf(page!.marks).filter(({ text }) => long.includes(text) && text.length === 1);
    expect(marks.length).toBeGreaterThanOrEqual([...long].length);
    for (const { x, y } of marks) expect(y < page!.rows[12]!.y + 0.5 || x < page!.rows[0]!.x).toBe(true);
  });

  it('is black where it is known to begin and grey behind that, however closely it is set', () => {
    const long = 'いま行くってばすぐ行くから待っててよ';
    for (const rows of [12, 7]) {
      const [page] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice 「ナオ」 1..${rows} @1 「${long}」\n`);
      const marks = textsOf(page!.marks).filter(
        ({ text, weight }) => weight !== 'bold' && text.length === 1 && long.includes(text),
      );
      expect(marks.map(({ text }) => text).join('')).toBe(long);
      expect(marks.map(({ ink }) => ink)).toEqual(['black', ...[...long].slice(1).map(() => 'light')]);
    }
  });

  it('stands on its rows beside a foreign word as well, as far as there is room', () => {
    const [page] = laid('cut 1\ntime 3+0\nA: 1..\nvoice 「ピム」 1..48 「はいOKOKさよ」\n');
    expect(rowOf(page!, 'は')).toEqual([1]);
    expect(rowOf(page!, 'よ')[0]).toBeGreaterThan(36);
  });
});
