/** Head and foot of pages. */

import { describe, expect, it } from 'vitest';
import { laid, textsOf } from './laid.js';

const cut = (more = ''): string =>
  `cut 12A "Rooftop, dusk"\ntime 5+0\nscene 3\ntake 2\nartist "M. Arai"\nA "Nao": 1--2..\n${more}`;

describe('the foot', () => {
  it('names cut, page and what was printed', () => {
    const page = laid(cut())[0]!;
    const foot = textsOf(page.marks).filter(({ y }) => y > page.heightMm - 12);
    expect(foot.map(({ text }) => text)).toEqual(['Rooftop, dusk', 'cut 12A  page 1 / 1', '1a2b3c4d']);
  });
});
