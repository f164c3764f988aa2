/** The stack as a pile of sheets. */

import { describe, expect, it } from 'vitest';
import { laid, textsOf } from './laid.js';

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
