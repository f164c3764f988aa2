/** Words of the memo. */

import { describe, expect, it } from 'vitest';
import { diagramMarks, stackWidth } from '../../src/sheet/memo-box.js';
import { laid, said, textsOf } from './laid.js';
import { plainMetrics } from './plain-metrics.js';

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

// ---- the stack as a pile of sheets

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

describe('a pile', () => {
  const levels = (count: number) => Array.from({ length: count }, (_, i) => ({ name: `${i}`, art: i === 0 }));
  const marks = (count: number, height: number) =>
    diagramMarks(levels(count), { x: 0, y: 0, width: 60, height }, 1, 1.4, plainMetrics);

  it('stands on the foot of its box, the bottom level first, and keeps inside it', () => {
    const names = textsOf(marks(5, 20));
    expect(names.map(({ text }) => text)).toEqual(['0', '1', '2', '3', '4']);
    expect(names.every(({ y }, i) => i === 0 || y < names[i - 1]!.y)).toBe(true);
    for (const { y } of names) expect(y).toBeLessThan(20);
  });

  it('has art drawn heavier, its name lighter', () => {
    const sheets = marks(2, 20).flatMap((mark) => (mark.kind === 'path' ? [mark.stroke!.widthMm] : []));
    expect(sheets).toEqual([0.4, 0.15]);
    expect(textsOf(marks(2, 20)).map(({ weight }) => weight)).toEqual(['regular', 'bold']);
  });

  it('that is too high goes on at the foot of another one, with an arrow to it', () => {
    // (10 − 1) / (1.4 × 1.12): five names on a pile.
    expect([5, 6, 10, 11].map((count) => stackWidth(count, 10, 1, 1.4))).toEqual(
      [17.5, 34.6, 34.6, 51.7].map((mm) => expect.closeTo(mm)),
    );
    const arrows = marks(6, 10).filter((mark) => mark.kind === 'path' && mark.fill === 'black');
    expect(arrows).toHaveLength(1);
    const [x0, , , x3] = textsOf(marks(6, 10)).map(({ x }) => x);
    expect(x3! - x0!).toBeCloseTo(17.1);
  });
});
