/** Dialogue in level scripts. */

import { describe, expect, it } from 'vitest';
import type { Page } from '../../../src/sheet/display-list.js';
import { spreadWords, syllables } from '../../../src/sheet/speech/latin-speech.js';
import { readStretches } from '../../../src/sheet/speech/word-places.js';
import { mouthSounds } from '../../../src/shot/mouth/mouth-sounds.js';
import type { Dictionary } from '../../../src/sound/pronunciation.js';
import { laid, lookOf, said, solvedCut, textsOf } from '../laid.js';

const { metrics } = lookOf();

const SIZES = { most: 2.2, least: 1.411 };

function stretchOf(text: string, rows: number, dictionary?: Dictionary) {
  const { shot } = solvedCut(`cut 1\ntime 4+0\nA: 1..\nvoice "Nao" 1..${rows} "${text}"\n`);
  return readStretches(shot.spoken[0]!, shot.fps, mouthSounds(dictionary))[0]!;
}
const spread = (text: string, rows: number, width: number, dictionary?: Dictionary) =>
  spreadWords(stretchOf(text, rows, dictionary), width, SIZES, metrics);
const linesOn = (text: string, rows: number, width: number, dictionary?: Dictionary) =>
  spread(text, rows, width, dictionary)?.rows.map((row) => row.text);

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
    const rows = spread('Nobody comes up these stairs', 20, 8)!.rows;
    expect(rows.map(({ text }) => text)).toEqual(['Nobody', 'comes', 'up', 'these', 'stairs']);
    expect(rows[0]!.row).toBe(0);
    expect(new Set(rows.map(({ row }) => row)).size).toBe(5);
    expect(rows.at(-1)!.row).toBeLessThan(20);
  });

  it('share rows where there are more words than rows', () => {
    const lines = linesOn('I did not do it and I will not', 4, 14)!;
    expect(lines.join(' ')).toBe('I did not do it and I will not');
    expect(lines.length).toBeLessThanOrEqual(4);
  });

  it('do not fit everywhere', () => {
    expect(spread('far too many words for a single row of this width', 1, 8)).toBeNull();
  });

  it('of a script that nobody reads here stand on their rows by their letters', () => {
    expect(linesOn('сюда иди', 24, 8)).toEqual(['сюда', 'иди']);
    expect(spread('сюда иди', 24, 8)!.rows.map(({ row }) => row)).toEqual([0, 15]);
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
    expect(['Mind', 'that', 'last', 'step'].map(inkOf)).toEqual(['black', 'black', 'light', 'black']);
    // A tick stands on the rows of the two tied words and of the first, which begins the line that was read, and on no other.
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
    expect(rows).toEqual([1, 38, 50]);
  });

  it('are turned on their side, or told in the memo, where rows are too few', () => {
    const text = 'Whatever you do, do not let go of that rope before the bell has rung three times.';
    const [turned] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice "Nao" 1..12 "${text}"\n`);
    expect(textsOf(turned!.marks).some((mark) => mark.turn === 90 && mark.text.includes('Whatever'))).toBe(
      true,
    );
    const [told] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice "Nao" 1..3 "${text}"\n`);
    expect(said(told!)).toMatch(/see memo|→ memo|→/);
    expect(said(told!)).toContain(`0+1–0+3 Nao: ${text}`.slice(0, 60));
  });
});

describe('words on their side', () => {
  /** The frame of the row on which a turned text begins, and its ink. */
  function turnedOf(page: Page) {
    return textsOf(page.marks)
      .filter(({ turn, weight }) => turn === 90 && weight !== 'bold')
      .map(({ x, y, text, ink }) => {
        const row = page.rows.find(
          (one) => x > one.x && x < one.x + one.width && y >= one.y && y < one.y + one.height,
        );
        return [text, row?.frame ?? 0, ink] as const;
      });
  }
  /** Three lanes are too narrow for words across. */
  const narrow = (voice: string) =>
    `cut 1\ntime 3+0\nA: 1..\nvoice "Nao" 1..3+0 ${voice}\nvoice "Pim" 1..3+0 "o"\nvoice "Oda" 1..3+0 "o"\nsound 1..3+0 "oars"\nmusic 1..3+0 "M3"\n`;

  it('are black where the text ties them to a row, and grey where they are spread', () => {
    for (const [convention, labels] of [
      ['japan', 'en'],
      ['japan', 'ja'],
    ] as const) {
      const [page] = laid(narrow('"Strength" @2+1 "throughout" "everything"'), {
        convention,
        labels,
        paper: 'A4',
      });
      const words = turnedOf(page!).filter(([text]) => /Strength|throughout|everything/.test(text));
      expect(words).toEqual([
        ['Strength', 1, 'black'],
        ['throughout', 49, 'black'],
        ['everything', expect.any(Number), 'light'],
      ]);
    }
  });

  it('begin on the rows over which they are spread, to the end of the line', () => {
    const [page] = laid(narrow('"Strength springs from nothing"'), { paper: 'A4' });
    const frames = turnedOf(page!).filter(([text]) => /Strength|springs|from|nothing/.test(text));
    expect(frames.map(([text, , ink]) => [text, ink])).toEqual([
      ['Strength', 'light'],
      ['springs', 'light'],
      ['from', 'light'],
      ['nothing', 'light'],
    ]);
    const rows = frames.map(([, frame]) => frame);
    expect(rows[0]).toBe(1);
    expect(rows.at(-1)).toBeGreaterThan(36);
    expect([...rows].sort((a, b) => a - b)).toEqual(rows);
  });

  it('are a block where one line is too short for them, the first one black if it is known', () => {
    const text = 'you do not let go of that rope before the bell has rung three times in a row.';
    const [page] = laid(`cut 1\ntime 2+0\nA: 1..\nvoice "Nao" 1..12 @1 "Whatever ${text}"\n`);
    const lines = textsOf(page!.marks).filter(({ turn, weight }) => turn === 90 && weight !== 'bold');
    const [first, ...rest] = lines.filter(({ text: one }) => one === 'Whatever' || text.includes(one));
    expect([first!.text, first!.ink]).toEqual(['Whatever', 'black']);
    expect(new Set(rest.map(({ ink }) => ink))).toEqual(new Set(['light']));
    expect(rest.map((one) => one.text).join(' ')).toBe(text);
    expect(rest[0]!.x).toBe(first!.x);
    expect(rest[0]!.y).toBeGreaterThan(first!.y);
    expect(new Set(rest.map(({ x }) => x)).size).toBeGreaterThan(1);
  });
});

describe('a word that is too wide', () => {
  it('is cut into its syllables, with a hyphen where it goes on in the next row', () => {
    expect(linesOn('extraordinarily', 24, 3)).toEqual(['ex-', 'tra-', 'or-', 'di-', 'na-', 'ri-', 'ly']);
    expect(linesOn('extraordinarily', 4, 6)!.join('').replaceAll('-', '')).toBe('extraordinarily');
  });

  // CMU Pronouncing Dictionary: plates P L EY1 T S.
  it('is not cut where it is one syllable: it is asked how the word is spoken', () => {
    const plates = (word: string) => (word === 'plates' ? 'P L EY1 T S' : null);
    const places = stretchOf('plates,', 24, plates);
    expect(syllables(places, { text: 'plates,', offset: 0, inWord: false }).map(({ text }) => text)).toEqual([
      'plates,',
    ]);
    expect(linesOn('plates,', 24, 2, plates)).toBeUndefined();
  });

  it('keeps its own hyphen and gets no second one', () => {
    expect(linesOn('Sora-san!', 24, 3.4)).toEqual(['So-', 'ra-', 'san!']);
    expect(linesOn('Sora-san!', 2, 5)).toEqual(['Sora-', 'san!']);
    expect(linesOn('Melon- no', 24, 3)).toEqual(['Me-', 'lon-', 'no']);
  });

  it('that ends in a hyphen is not joined to the next one', () => {
    expect(linesOn('Wait- for me', 1, 20)).toEqual(['Wait- for me']);
  });
});
