/** Words that find no room: they go on elsewhere, and none is lost. */

import { describe, expect, it } from 'vitest';
import { sheetPages } from '../../src/sheet/sheet.js';
import { laid, lookOf, said, solvedCut, textsOf } from './laid.js';

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

const words = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '');

describe('memos', () => {
  it('go on on a further side of the first page, every word of them', () => {
    const memos = Array.from({ length: 60 }, (_, i) => `memo${i} ${`word${i} `.repeat(40)}end${i}`.trim());
    const text = `cut 1\ntime 7+0\nA: 1..\n${memos.map((memo) => `memo "${memo}"`).join('\n')}\n`;
    const pages = laid(text);
    const labels = pages.map(({ label }) => label);
    expect(labels.slice(0, 2)).toEqual(['1', '1-b']);
    expect(labels.at(-1)).toBe('2');
    const printed = words(pages.map(said).join(' '));
    for (const memo of memos)
      for (const word of new Set(words(memo)))
        expect(printed.filter((one) => one === word)).toHaveLength(
          words(memo).filter((one) => one === word).length,
        );
    expect(said(pages[0]!)).toContain('goes on on page 1-b');
  });

  it('begin with a caution where light flashes, in both languages, and nowhere else', () => {
    const lightning = 'cut 1\ntime 2+0\nA: 1..\nlevel C flash\nC: (1:2 x:4)..\n';
    const caution = /CAUTION: flashing light can trigger seizures.*no such test/;
    expect(said(laid(lightning)[0]!)).toMatch(caution);
    expect(said(laid(lightning, { labels: 'ja' })[0]!)).toContain('点滅する光');
    expect(said(laid('cut 1\ntime 2+0\nA: 1..\nfade in 1..24\n')[0]!)).not.toMatch(caution);
  });

  it('wrap Japanese without beginning a line with a stop', () => {
    const memo = '風は画面左から。綱を引くところまで、口は動かさない。'.repeat(12);
    const pages = laid(`cut 1\ntime 1+0\nA: 1..\nmemo 「${memo}」\n`, { labels: 'ja' });
    const lines = textsOf(pages[0]!.marks).filter(({ text }) => text.length > 20);
    expect(lines.length).toBeGreaterThan(2);
    for (const { text } of lines) expect(text).not.toMatch(/^[、。]/u);
    expect(lines.map(({ text }) => text.replace('· ', '')).join('')).toBe(memo);
  });

  it('are named on the other pages, whose boxes are free for the pencil', () => {
    const pages = laid('cut 1\ntime 7+0\nA: 1..\nmemo "wind from the left"\n');
    expect(said(pages[1]!)).toContain('Memo: page 1');
    expect(said(pages[1]!)).not.toContain('wind');
    const none = laid('cut 1\ntime 7+0\nA: 1..\n');
    expect(said(none[1]!)).not.toContain('Memo:');
  });
});

describe('the stack', () => {
  it('is drawn as a pile in its order, art and levels', () => {
    const [page] = laid('cut 1\ntime 1+0\nstack BG A BOOK1 B\nA: 1..\nB: 1..\n');
    const names = textsOf(page!.marks)
      .filter(({ anchor, text, x }) => anchor === 'start' && x > 150 && /^(BG|A|BOOK1|B)$/.test(text))
      .sort((a, b) => b.y - a.y)
      .map(({ text }) => text);
    expect(names).toEqual(['BG', 'A', 'BOOK1', 'B']);
  });
});

describe('many levels', () => {
  const crowd = (count: number): string =>
    `cut 1\ntime 7+0\nstack BG ${LETTERS.slice(0, count).join(' ')}\n${LETTERS.slice(0, count)
      .map((name) => `${name}: 1--2..`)
      .join('\n')}\n`;

  it('go on on further sides, none left out', () => {
    for (const paper of ['A4', 'A3', 'B5'] as const)
      for (const convention of ['japan', 'west'] as const) {
        const pages = laid(crowd(26), { paper, convention });
        for (const sheet of ['1', '2']) {
          const sides = pages.filter(({ label }) => label === sheet || label.startsWith(`${sheet}-`));
          const top = (page: (typeof pages)[number]): number => page.rows[0]!.y;
          const heads = sides.flatMap((page) =>
            textsOf(page.marks)
              .filter(({ text, y }) => /^[A-Z]$/.test(text) && y < top(page) && y > top(page) - 30)
              .map(({ text }) => text),
          );
          expect([...new Set(heads)].sort()).toEqual(LETTERS);
        }
      }
  });

  it('say in the memo where they are', () => {
    const pages = laid(crowd(26), { paper: 'A4' });
    expect(pages.map(({ label }) => label)).toEqual(['1', '1-b', '1-c', '2', '2-b', '2-c']);
    expect(said(pages[0]!)).toMatch(/Levels [A-Z]–[A-Z]: page 1-b/);
  });

  it('have dialogue and camera on the first side only', () => {
    const solved = solvedCut(`${crowd(26)}voice "Nao" 1..24 "Wait"\n`);
    const pages = sheetPages(solved, lookOf());
    expect(pages.filter((page) => said(page).includes('Wait')).map(({ label }) => label)).toEqual(['1']);
    const headed = pages.map(({ form }) => textsOf(form!.marks).some(({ text }) => text === 'camera'));
    expect(headed).toEqual([true, false, false, true, false, false]);
  });
});
