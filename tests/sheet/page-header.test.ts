/** The head of every page. */

import { describe, expect, it } from 'vitest';
import type { Settings } from '../../src/shot/settings.js';
import { laid, said, textsOf } from './laid.js';

const cut = (more = ''): string =>
  `cut 12A "Rooftop, dusk"\ntime 5+0\nscene 3\ntake 2\nartist "M. Arai"\nA "Nao": 1--2..\n${more}`;

describe('heads', () => {
  it('say the cut, its time, scene, take and artist', () => {
    const text = said(laid(cut(), { title: 'Saltbox Winter', episode: '7' })[0]!);
    for (const word of ['12A', '5 + 0', 'Saltbox Winter', '“Rooftop, dusk”', '7', '3', '2', 'M. Arai'])
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
});
