/** Forms with nothing in them. */

import { describe, expect, it } from 'vitest';
import { blankPages } from '../../src/sheet/blank-form.js';
import { PAPERS } from '../../src/shot/settings.js';
import { lookOf, textsOf } from './laid.js';

describe('blank forms', () => {
  it('are the same form with nothing in it', () => {
    const [blank, ...more] = blankPages(lookOf({ paper: 'B4', labels: 'ja' }), { levels: 5 });
    expect(more).toEqual([]);
    expect(blank).toMatchObject({ part: 'blank', widthMm: 257, heightMm: 364, rows: [] });
    expect(textsOf(blank!.form!.marks).map(({ text }) => text)).toContain('カット');
    expect(textsOf(blank!.marks).map(({ text }) => text)).toEqual(['1a2b3c4d']);
  });

  it('take further sides for many levels', () => {
    const pages = blankPages(lookOf({ paper: 'A4' }), { levels: 26 });
    expect(pages.map(({ label }) => label)).toEqual(['1', '1-b', '1-c']);
  });

  it.each(PAPERS)('have rows of at least 3 mm on %s', (paper) => {
    for (const convention of ['japan', 'west'] as const) {
      const [blank] = blankPages(lookOf({ paper, convention }), { levels: 4 });
      const numbers = textsOf(blank!.form!.marks).filter(({ text }) => text === '1' || text === '2');
      const [one, two] = ['1', '2'].map((row) => numbers.find(({ text }) => text === row)!.y);
      expect(two! - one!).toBeGreaterThanOrEqual(3);
    }
  });
});
