import { describe, expect, it } from 'vitest';
import type { Page } from '../../src/sheet/marks.js';
import { spreadWords, syllables } from '../../src/sheet/speech/latin-speech.js';
import { framed } from '../../src/sheet/speech/vertical-speech.js';
import { verticalCells } from '../../src/sheet/vertical.js';
import { laid, linesOf, lookOf, said, textsOf } from './laid.js';

const { metrics } = lookOf();
const SIZES = { most: 2.2, least: 1.411 };

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

describe('words of Latin scripts', () => {
  it('stand one a row where there are rows enough', () => {
    const spread = spreadWords('Nobody comes up these stairs', 20, 8, SIZES, metrics)!;
    expect(spread.rows.map(({ text }) => text)).toEqual(['Nobody', 'comes', 'up', 'these', 'stairs']);
    const rows = spread.rows.map(({ row }) => row);
    expect(rows[0]).toBe(0);
    expect(new Set(rows).size).toBe(5);
    expect(rows.at(-1)).toBeLessThan(20);
  });

  it('share rows where there are more words than rows', () => {
    const spread = spreadWords('I did not do it and I will not', 4, 14, SIZES, metrics)!;
    expect(spread.rows.map(({ text }) => text).join(' ')).toBe('I did not do it and I will not');
    expect(spread.rows.length).toBeLessThanOrEqual(4);
  });

  it('are cut into syllables where a whole word is too wide', () => {
    expect(syllables('extraordinarily').join('')).toMatch(/-/);
    expect(syllables('there')).toEqual(['there']);
    const spread = spreadWords('extraordinarily', 10, 4, SIZES, metrics)!;
    expect(spread.rows.map(({ text }) => text.replace(/-$/, '')).join('')).toBe('extraordinarily');
    expect(spread.rows.length).toBeGreaterThan(1);
  });

  it('do not fit everywhere', () => {
    expect(spreadWords('far too many words for a single row of this width', 1, 8, SIZES, metrics)).toBeNull();
  });

  it('stand on the rows that they are tied to', () => {
    const [page] = laid('cut 1\ntime 3+0\nA: 1..\nvoice "Nao" 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"\n');
    expect(rowOf(page!, 'Wait')).toEqual([30]);
    expect(rowOf(page!, 'for')).toEqual([38]);
    expect(rowOf(page!, 'me!')).toEqual([44]);
  });

  it('look exact only where the text ties them to a row', () => {
    const [page] = laid(
      'cut 1\ntime 3+0\nA: 1..\nvoice "Ines" 1..2+20 "Mind" @1+14 "that last" @2+2 "step"\n',
      { convention: 'west', paper: 'legal' },
    );
    const inkOf = (word: string) => textsOf(page!.marks).find(({ text }) => text === word)!.ink;
    expect(['Mind', 'that', 'last', 'step'].map(inkOf)).toEqual(['light', 'black', 'light', 'black']);
    // A tick stands on the rows of the two tied words, and on no other.
    const ticks = page!.marks.flatMap((mark) =>
      mark.kind === 'path' && mark.closed && mark.fill === 'black' && mark.points.length === 3
        ? [mark.points[1]!]
        : [],
    );
    const rows = ticks.map(
      ([x, y]) =>
        page!.rows.find((row) => x > row.x && x < row.x + row.width && y > row.y && y < row.y + row.height)
          ?.frame,
    );
    expect(rows).toEqual([38, 50]);
  });

  it('are turned on their side, or told in the memo, where rows are too few', () => {
    const text = 'Whatever you do, do not let go of that rope before the bell has rung three times.';
    const [turned] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice "Nao" 1..6 "${text}"\n`);
    expect(textsOf(turned!.marks).some((mark) => mark.turn === 90 && mark.text.includes('Whatever'))).toBe(
      true,
    );
    const [told] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice "Nao" 1..3 "${text}"\n`);
    expect(said(told!)).toContain('see memo');
    expect(said(told!)).toContain(`0+1–0+3 Nao: ${text}`.slice(0, 60));
  });
});

describe('a sound', () => {
  const cut = (more: string) =>
    `cut 1\ntime 4+0\nA: 1..\nsound 1+1..2+0 "ice cracks under the sledge"\n${more}`;
  const turned = (text: string) =>
    textsOf(laid(cut(text), { convention: 'west', paper: 'legal' })[0]!.marks).some(
      (mark) => mark.turn === 90 && mark.text.includes('ice cracks'),
    );

  it('has the width of the column where nobody speaks', () => {
    expect(turned('')).toBe(false);
    expect(turned('voice "Ines" 3+1..4+0 "Back!"\n')).toBe(false);
  });

  it('stands down the edge of the column where somebody does', () => {
    expect(turned('voice "Ines" 1+12..2+12 "Back!"\n')).toBe(true);
  });
});

describe('Japanese', () => {
  const cells = (text: string) => verticalCells(text, (one) => metrics.width(one, 1, 'regular'));

  it('lays long vowels, dashes and brackets down, and moves stops and small kana', () => {
    const forms = Object.fromEntries(cells('「コーッ、と」').map(({ text, form }) => [text, form]));
    expect(forms).toEqual({
      '「': 'turned',
      コ: 'upright',
      ー: 'turned',
      ッ: 'small',
      '、': 'raised',
      と: 'upright',
      '」': 'turned',
    });
  });

  it('stands two figures side by side and lays longer words down', () => {
    expect(cells('第12話 lantern').map(({ text, form }) => `${text}:${form}`)).toEqual([
      '第:upright',
      '12:upright',
      '話:upright',
      ':upright',
      'lantern:turned',
    ]);
  });

  it('lays words with stops, signs and figures down in one piece', () => {
    const forms = (text: string) => cells(text).map(({ text, form }) => `${text}:${form}`);
    expect(forms('セルT.U')).toEqual(['セ:upright', 'ル:upright', 'T.U:turned']);
    expect(forms('c11AとO.L 1+12')).toEqual([
      'c11A:turned',
      'と:upright',
      'O.L:turned',
      ':upright',
      '1+12:turned',
    ]);
    expect(forms('A,B付け85%')).toEqual(['A,B:turned', '付:upright', 'け:upright', '85%:turned']);
    expect(forms('終わり.')).toEqual(['終:upright', 'わ:upright', 'り:upright', '.:raised']);
  });

  // Small ya, yu, yo are heard with the kana before them; っ, ん and ー have a beat of their own (mora counts as in
  // Japanese phonology teaching: とうきょう 4, コンピューター 6).
  it('spreads beats, not characters', () => {
    const frames = (text: string, to: number) =>
      framed(cells(text), { from: 1, to, text, tied: false }).map(({ frame }) => frame);
    expect(frames('とうきょう', 16)).toEqual([1, 5, 9, 10, 13]);
    expect(frames('コンピューター', 12)).toEqual([1, 3, 5, 6, 7, 9, 11]);
    expect(frames('はい。', 6)).toEqual([1, 4, 5]);
  });

  it('stands one a row, in the rows of its line', () => {
    const [page] = laid('cut 1\ntime 3+0\nA: 1..\nvoice 「ピム」 25..48 「いまいく」\n');
    expect(rowOf(page!, 'い')).toEqual([25, 37]);
    expect(rowOf(page!, 'ま')).toEqual([31]);
    expect(rowOf(page!, 'く')).toEqual([43]);
  });

  it('closes up and takes several columns where there are more characters than rows', () => {
    const long = 'いま行くってばすぐ行くから待っててよ';
    const [page] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice 「ナオ」 1..12 「${long}」\n`);
    const marks = textsOf(page!.marks).filter(({ text }) => long.includes(text) && text.length === 1);
    expect(marks.length).toBeGreaterThanOrEqual([...long].length);
    for (const { x, y } of marks) expect(y < page!.rows[12]!.y + 0.5 || x < page!.rows[0]!.x).toBe(true);
  });
});

describe('who and what is heard', () => {
  it('marks off and inner voice', () => {
    const [page] = laid(
      'cut 1\ntime 4+0\nA: 1..\nvoice "Oda" off 1..24 "Hm."\nvoice "Pim" mono 1+1..1+24 "Hm."\n',
    );
    expect(said(page!)).toContain('Oda OFF');
    expect(said(page!)).toContain('Pim inner voice');
  });

  it('repeats the speaker in brackets after a break', () => {
    const pages = laid('cut 1\ntime 7+0\nA: 1..\nvoice "Oda" 5+12..6+12 "There was a road here once"\n');
    expect(said(pages[0]!)).not.toContain('(Oda)');
    expect(said(pages[1]!)).toContain('(Oda)');
  });

  it('bars the start and the end of a line at its first and last rows', () => {
    const [page] = laid('cut 1\ntime 2+0\nA: 1..\nvoice "Nao" 5..20 "Wait"\n');
    const [first, last] = [page!.rows[4]!, page!.rows[19]!];
    const bars = linesOf(page!.marks).filter(
      ({ y1, y2, stroke }) => y1 === y2 && stroke.widthMm > 0.29 && stroke.widthMm < 0.31,
    );
    expect(bars.map(({ y1 }) => y1)).toEqual([
      expect.closeTo(first.y + 0.18, 5),
      expect.closeTo(last.y + last.height - 0.18, 5),
    ]);
  });

  it('tells sounds from voices by a zigzag and music by a double line', () => {
    const zigzags = (kind: string): number =>
      laid(`cut 1\ntime 2+0\nA: 1..\n${kind} 1..24 "bell"\n`)[0]!.marks.filter(
        (mark) => mark.kind === 'path' && !mark.closed && mark.points.length > 20,
      ).length;
    expect(zigzags('sound')).toBe(1);
    expect(zigzags('music')).toBe(0);
    expect(said(laid('cut 1\ntime 2+0\nA: 1..\nsound 1.. "bell"\n')[0]!)).toContain('SE bell');
  });

  it('gives lines at the same time lanes of their own, and tells the memo what finds none', () => {
    const voices = ['Ann', 'Bo', 'Cy', 'Di'].map((name) => `voice "${name}" 1..24 "yes"`).join('\n');
    const [page] = laid(`cut 1\ntime 1+0\nA: 1..\n${voices}\n`);
    const xs = textsOf(page!.marks)
      .filter(({ text }) => text === 'yes')
      .map(({ x }) => x);
    expect(new Set(xs).size).toBe(3);
    expect(said(page!)).toContain('0+1–0+24 Di: yes');
  });
});
