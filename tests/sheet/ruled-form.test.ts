/** The ruled form. */

import { describe, expect, it } from 'vitest';
import { lightRule } from '../../src/sheet/ruled-form.js';
import { PAPERS, type Settings } from '../../src/shot/settings.js';
import { wordsOf } from '../../src/words/words.js';
import { laid, linesOf, lookOf, textsOf } from './laid.js';

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

  it('has whole words over the columns of levels, the longest that have room', () => {
    const heads = (lines: string, settings: Partial<Settings>) => {
      const { form } = laid(`cut 1\ntime 4+0\nA: 1--2..\n${lines}`, settings)[0]!;
      const bold = textsOf(form!.marks).filter(({ weight, text }) => weight === 'bold' && /[a-z]/.test(text));
      const of = (words: readonly string[]) => bold.filter(({ text }) => words.includes(text))[0]?.text;
      const { keys, cels } = wordsOf(lookOf().settings).sheet;
      return [of(keys), of(cels)];
    };
    const voices = (count: number) =>
      Array.from({ length: count }, (_, i) => `voice "N${i}" 1..24 "x"\n`).join('');
    const sounds = Array.from({ length: 3 }, (_, i) => `sound 1..24 "s${i}"\n`).join('');
    // So many moves that the columns of levels are as narrow as may be.
    const moves =
      'level A free\nfield Z 60%\ntruck full@1 > Z@2+0 log\nslide A (0,0)@1 > (60,40)@1+12 graduated\nturn level A 0@1 > 70@1+8 cw\ntruck level A 60%@1 > 120%@2+0\nexpose A 100%>0% 1+13..2+0\nshake 6mm 1..1+9\neffect "rain" A 1..1+12\n';
    expect(heads('', { paper: 'B5' })).toEqual(['key drawings', 'finished cels']);
    expect(heads(`${voices(2)}${sounds}`, { paper: 'B5' })).toEqual(['key', 'cels']);
    for (const paper of PAPERS)
      for (const convention of ['japan', 'west'] as const)
        for (const more of ['', voices(2), `${voices(4)}${sounds}`, `${voices(1)}sound 1..6 "s"\n${moves}`])
          for (const word of heads(more, { paper, convention })) expect(word).toBeDefined();
  });
});
