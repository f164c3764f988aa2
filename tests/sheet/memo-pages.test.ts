/** The memo over the pages of a cut. */

import { expect, it } from 'vitest';
import { laid, said } from './laid.js';

const words = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '');

it('memos go on on a further side of the first page, every word of them', () => {
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
  expect(said(pages[0]!)).toContain('continued on page 1-b');
});

it('memos are named on the other pages, whose boxes are free for the pencil', () => {
  const pages = laid('cut 1\ntime 7+0\nA: 1..\nmemo "wind from the left"\n');
  expect(said(pages[1]!)).toContain('Memo: page 1');
  expect(said(pages[1]!)).not.toContain('wind');
  const none = laid('cut 1\ntime 7+0\nA: 1..\n');
  expect(said(none[1]!)).not.toContain('Memo:');
});
