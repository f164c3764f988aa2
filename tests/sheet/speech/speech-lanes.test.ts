/** Lanes of the dialogue column, and the rows that words are spread over. */

import { expect, it } from 'vitest';
import { laid, said, textsOf } from '../laid.js';

it('gives lines at the same time lanes of their own, and tells the memo what finds none', () => {
  const voices = ['Ann', 'Bo', 'Cy', 'Di'].map((name) => `voice "${name}" 1..24 "yes"`).join('\n');
  const [page] = laid(`cut 1\ntime 1+0\nA: 1..\n${voices}\n`);
  const xs = textsOf(page!.marks)
    .filter(({ text }) => text === 'yes')
    .map(({ x }) => x);
  expect(new Set(xs).size).toBe(3);
  expect(said(page!)).toContain('0+1–0+24 Di: yes');
});
