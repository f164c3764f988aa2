/** The form: papers, rules, heads, blanks. */

import { describe, expect, it } from 'vitest';
import { blankPages } from '../../src/sheet/blank.js';
import { NO_GUTTERS } from '../../src/sheet/columns.js';
import { lightRule } from '../../src/sheet/form.js';
import { geometry, mostRows, rowsOfBlocks } from '../../src/sheet/geometry.js';
import { defaults, PAPERS, type Settings } from '../../src/shot/settings.js';
import { laid, linesOf, lookOf, said, textsOf } from './laid.js';

const cut = (more = ''): string =>
  `cut 12A "Rooftop, dusk"\ntime 5+0\nscene 3\ntake 2\nartist "M. Arai"\nA "Nao": 1--2..\n${more}`;

describe('the ruled form', () => {
  it('is shared by the pages of a cut and by cuts of the same build', () => {
    const forms = [...laid('cut 1\ntime 20+0\nA: 1..\n'), ...laid('cut 2\ntime 3+0\nB: 1..\n')].map(
      ({ form }) => form,
    );
    expect(new Set(forms).size).toBe(1);
  });

  it('is another one where the rows begin elsewhere in their second', () => {
    const [first, second] = laid('cut 1\ntime 8+0\nA: 1..\n', { rows: 100 });
    expect(first!.form!.id).not.toBe(second!.form!.id);
  });

  it('numbers every row within its second, or its foot', () => {
    const numbers = (convention: 'japan' | 'west'): string[] => {
      const { form, rows } = laid('cut 1\ntime 3+0\nA: 1..\n', { convention })[0]!;
      const top = rows[0]!.y;
      return textsOf(form!.marks)
        .filter(({ y, text }) => y > top && /^\d+$/.test(text))
        .map(({ text }) => text);
    };
    // Beside the keys and beside the cels.
    expect(numbers('japan').filter((text) => text === '24')).toHaveLength(12);
    expect(numbers('west').filter((text) => text === '16')).toHaveLength(12);
    expect(numbers('west')).not.toContain('17');
  });

  it('rules a second heavily, its half less, every six frames lightly', () => {
    const { form, rows } = laid('cut 1\ntime 3+0\nA: 1..\n')[0]!;
    const width = (frame: number): number => {
      const { x, y } = rows[frame - 1]!;
      return linesOf(form!.marks).find(({ x1, y1, y2 }) => x1 === x && Math.abs(y1 - y) < 1e-6 && y1 === y2)!
        .stroke.widthMm;
    };
    expect(width(25)).toBeGreaterThan(width(13));
    expect(width(13)).toBeGreaterThan(width(7));
    expect(width(7)).toBeGreaterThan(width(8));
    expect(width(19)).toBe(width(7));
  });

  it('rules other rates at parts of their half', () => {
    expect([24, 16, 25, 30, 12, 48].map(lightRule)).toEqual([6, 4, 5, 5, 3, 6]);
  });

  it('prints form lines in the one pale ink', () => {
    const { form } = laid(cut())[0]!;
    expect(new Set(linesOf(form!.marks).map(({ stroke }) => stroke.ink))).toEqual(new Set(['form']));
  });
});

describe('heads', () => {
  it('say the cut, its time, scene, take and artist', () => {
    const text = said(laid(cut(), { title: 'Harbour Lights', episode: '7' })[0]!);
    for (const word of ['12A', '5 + 0', 'Harbour Lights', '“Rooftop, dusk”', '7', '3', '2', 'M. Arai'])
      expect(text).toContain(word);
  });

  it('say feet and frames as well in the west', () => {
    expect(said(laid(cut(), { convention: 'west' })[0]!)).toContain("7'08");
    expect(said(laid(cut())[0]!)).not.toContain("7'08");
  });

  it('name the page and how many there are, a Japanese form in Japanese the total first, in words', () => {
    const long = 'cut 1\ntime 7+0\nA: 1..\n';
    const pages = (settings: Partial<Settings>): string[][] =>
      laid(long, settings).map((page) =>
        textsOf(page.marks)
          .map(({ text }) => text)
          .filter((text) => /^\d \/ \d$|枚の/.test(text)),
      );
    expect(pages({})).toEqual([['1 / 2'], ['2 / 2']]);
    expect(pages({ convention: 'west' })).toEqual([['1 / 2'], ['2 / 2']]);
    expect(pages({ convention: 'west', labels: 'ja' })[0]).toContain('1 / 2');
    // In the head, and at the foot behind the cut.
    expect(pages({ labels: 'ja' })).toEqual([
      ['2枚の1', 'カット 1  2枚の1'],
      ['2枚の2', 'カット 1  2枚の2'],
    ]);
  });

  it('call a cut a scene in the west', () => {
    const western = said(laid(cut('level A reuse 8/C\n'), { convention: 'west' })[0]!);
    expect(western).toContain('A: reuse of scene 8, level C');
    expect(western).toContain('scene 12A  page 1 / 2');
    expect(western).not.toMatch(/\bcut\b/);
  });

  it('have boxes to sign', () => {
    const captions = textsOf(laid(cut())[0]!.form!.marks).map(({ text }) => text);
    for (const who of ['layout', 'key', 'director', 'animation director', 'checker', 'in-between'])
      expect(captions).toContain(who);
    const japanese = textsOf(laid(cut(), { labels: 'ja' })[0]!.form!.marks).map(({ text }) => text);
    for (const who of ['作品名', '話数', 'カット', '尺', '枚', '担当', 'メモ', 'カメラ', '原画', '作画監督'])
      expect(japanese).toContain(who);
  });

  it('count each level over its column, with what is new, missing and reused', () => {
    const pinned = said(laid('cut 1\ntime 1+0\nA: 1--2-3..\ncels A 1 1.1 1.2 2 4\n')[0]!);
    expect(pinned).toMatch(/A 6 7 added A6–7, no A5/);
    const reused = said(laid('cut 1\ntime 1+0\nC: 1-2..\nlevel C reuse 8/C\n')[0]!);
    expect(reused).toContain('C: reuse of cut 8, level C');
  });

  it('stand bottom-first in Japan and top-first in the west', () => {
    const three = 'cut 1\ntime 1+0\nstack BG A B C\nA: 1..\nB: 1..\nC: 1..\n';
    const order = (convention: 'japan' | 'west'): string => {
      const { marks, rows } = laid(three, { convention })[0]!;
      return textsOf(marks)
        .filter(({ text, y }) => /^[ABC]$/.test(text) && y > rows[0]!.y - 25 && y < rows[0]!.y)
        .sort((a, b) => a.x - b.x)
        .slice(0, 3)
        .map(({ text }) => text)
        .join('');
    };
    expect(order('japan')).toBe('ABC');
    expect(order('west')).toBe('CBA');
  });
});

describe('the foot', () => {
  it('names cut, page and what was printed', () => {
    const page = laid(cut())[0]!;
    const foot = textsOf(page.marks).filter(({ y }) => y > page.heightMm - 12);
    expect(foot.map(({ text }) => text)).toEqual(['Rooftop, dusk', 'cut 12A  page 1 / 1', '1a2b3c4d']);
  });
});

describe('geometry', () => {
  const wanted = {
    levels: 5,
    main: true,
    bracketMm: 1.6,
    voices: 1,
    sounds: 1,
    cameraLanes: 1,
    gutters: NO_GUTTERS,
  };

  it.each(PAPERS)('fills %s without running over', (paper) => {
    for (const convention of ['japan', 'west'] as const) {
      const place = geometry({ ...defaults, paper, convention }, 24, wanted);
      for (const { x, width, columns, rows } of place.blocks) {
        const all = [
          columns.labels,
          columns.numbers,
          ...columns.keys,
          columns.dialogue!,
          columns.numbersAgain,
          ...columns.cels,
          columns.camera!,
          columns.notes,
        ];
        all.slice(1).forEach((column, i) => {
          expect(column.x).toBeCloseTo(all[i]!.x + all[i]!.width, 6);
        });
        expect(all[0]!.x).toBeCloseTo(x, 6);
        expect(columns.notes.x + columns.notes.width).toBeCloseTo(x + width, 6);
        expect(Math.min(...columns.keys.map((key) => key.width - 1.6))).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(Math.min(...columns.cels.map((cel) => cel.width))).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(columns.cels.length).toBeGreaterThan(5);
        expect(place.top + rows * place.rowMm).toBeLessThanOrEqual(place.foot.y + 1e-9);
      }
      expect(place.foot.y + place.foot.height).toBeLessThan(place.heightMm - 5);
    }
  });

  it('knows the rows that a paper can hold', () => {
    for (const paper of PAPERS)
      for (const convention of ['japan', 'west'] as const) {
        const most = mostRows({ ...defaults, paper, convention });
        const settings = { ...defaults, paper, convention, rows: most };
        const place = geometry(settings, 24, wanted);
        expect(most).toBeGreaterThanOrEqual(
          rowsOfBlocks({ ...settings, rows: null }, 24).reduce((a, b) => a + b),
        );
        expect(place.foot.y + place.foot.height).toBeLessThan(place.heightMm - 5);
      }
  });
});

describe('blank forms', () => {
  it('are the same form with nothing in it', () => {
    const [blank, ...more] = blankPages(lookOf({ paper: 'B4', labels: 'ja' }), { levels: 5 });
    expect(more).toEqual([]);
    expect(blank).toMatchObject({ part: 'blank', widthMm: 257, heightMm: 364, rows: [] });
    expect(textsOf(blank!.form!.marks).map(({ text }) => text)).toContain('カット');
    expect(textsOf(blank!.marks).map(({ text }) => text)).toEqual(['1a2b3c4d']);
  });

  it('take further sides for many levels', () => {
    const pages = blankPages(lookOf({ paper: 'A4' }), { levels: 26 });
    expect(pages.map(({ label }) => label)).toEqual(['1', '1-b', '1-c']);
  });

  it.each(PAPERS)('have rows of at least 3 mm on %s', (paper) => {
    for (const convention of ['japan', 'west'] as const) {
      const [blank] = blankPages(lookOf({ paper, convention }), { levels: 4 });
      const numbers = textsOf(blank!.form!.marks).filter(({ text }) => text === '1' || text === '2');
      const [one, two] = ['1', '2'].map((row) => numbers.find(({ text }) => text === row)!.y);
      expect(two! - one!).toBeGreaterThanOrEqual(3);
    }
  });
});
