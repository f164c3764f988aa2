/** Words of the memo. */

import { describe, expect, it } from 'vitest';
import { laid, said, textsOf } from './laid.js';

describe('memos', () => {
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
});
