/** Who and what is heard, in the dialogue column. */

import { describe, expect, it } from 'vitest';
import { laid, linesOf, said, textsOf } from '../laid.js';

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

it('a sound and a music beside a voice are not told in the smallest print', () => {
  const levels = ['A', 'B', 'C', 'D'].map((name) => `${name} "what it is": (1-2-)..\n`).join('');
  const heard = 'voice "Pim" mono 1..4+0 "The bell stops"\nsound 1.. "oars"\nmusic 1.. "M3, goes on"\n';
  const [page] = laid(`cut 1\ntime 5+0\n${levels}${heard}`);
  const labels = textsOf(page!.marks).filter(({ text }) => /oars|M3/.test(text));
  expect(labels.length).toBeGreaterThan(1);
  for (const { sizeMm, squeeze = 1 } of labels) expect(sizeMm * squeeze).toBeGreaterThan(2.1);
});

describe('who and what is heard', () => {
  it('marks off and inner voice', () => {
    const [page] = laid(
      'cut 1\ntime 4+0\nA: 1..\nvoice "Oda" off 1..24 "Hm."\nvoice "Pim" mono 1+1..1+24 "Hm."\n',
    );
    expect(said(page!)).toContain('Oda OFF');
    expect(said(page!)).toContain('Pim inner voice');
  });

  it('says once in the memo what grey words are, where there are any', () => {
    const texts = (voice: string, labels: 'en' | 'ja') =>
      laid(`cut 1\ntime 14+0\nA: 1..\nvoice "Nao" 5..200 ${voice}\n`, { labels }).map(said);
    const [page, ...more] = texts('"Wait for me"', 'en');
    expect(page!.split('words in grey: spread over their rows, not read')).toHaveLength(2);
    for (const other of more) expect(other).not.toMatch(/grey|Memo/);
    expect(texts('"まって"', 'ja')[0]).toContain('灰色の字：行に割り振ったもの');
    expect(texts('@5 "Wait"', 'en')[0]).not.toContain('grey');
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

  it('does not bar the end of what goes on over the end of the cut', () => {
    const bars = (range: string) =>
      linesOf(laid(`cut 1\ntime 2+0\nA: 1..\nmusic ${range} "M3"\n`)[0]!.marks).filter(
        ({ y1, y2, stroke }) => y1 === y2 && stroke.widthMm > 0.29 && stroke.widthMm < 0.31,
      ).length;
    expect([bars('1..48'), bars('1..')]).toEqual([2, 1]);
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
});
