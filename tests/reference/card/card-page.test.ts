/** The card: one page on each paper, readable. */

import { describe, expect, test } from 'vitest';
import { USER_LANGUAGES } from '../../../src/language/user-language.js';
import { sections } from '../../../src/reference/card/card-content.js';
import { cardPage } from '../../../src/reference/card/card-page.js';
import { loadReference } from '../../../src/reference/reference-language.js';
import { PAPERS } from '../../../src/shot/settings.js';
import { testFonts } from '../../fonts.js';
import { everyMark, offThePaper, struckOut, textClashes, tooSmall } from '../../sheet/clashes.js';

await loadReference('ja');

const { metrics } = testFonts();
/** As many as there are, of the usual length. */
const COMMANDS = Array.from(
  { length: 16 },
  (_, i) => [`command${i}`, 'say what differs between two versions of a cut'] as const,
);
/** 6 pt. */
const LEAST_MM = 2.11;

const cases = USER_LANGUAGES.flatMap((language) => PAPERS.map((paper) => [language, paper] as const));

/** Without blanks, which stand at the ends of lines or do not. */
const together = (text: string): string => text.replace(/\s/g, '');

describe.each(cases)('in %s on %s', (language, paper) => {
  const page = cardPage(paper, language, COMMANDS, metrics);

  test('it is one page whose texts are large enough, on the paper and apart from each other', () => {
    expect(offThePaper(page)).toEqual([]);
    expect(textClashes(everyMark(page))).toEqual([]);
    const written = {
      ...page,
      marks: page.marks.filter((mark) => mark.kind !== 'text' || mark.y > page.heightMm / 3),
    };
    expect(tooSmall(written, LEAST_MM)).toEqual([]);
    expect(struckOut({ ...page, marks: written.marks })).toEqual([]);
  });

  test('every row of it is there in full', () => {
    const flat = page.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join('');
    for (const { title, rows } of sections(language, COMMANDS))
      for (const text of [title, ...rows.flat()]) expect(together(flat)).toContain(together(text));
  });
});

test('it is landscape, and the print is as large as the paper allows', () => {
  const sizeOf = (paper: 'A4' | 'A3') => {
    const { marks, widthMm, heightMm } = cardPage(paper, 'en', COMMANDS, metrics);
    expect(widthMm).toBeGreaterThan(heightMm);
    const title = marks.find((mark) => mark.kind === 'text' && mark.text === 'Times');
    return title?.kind === 'text' ? title.sizeMm : 0;
  };
  expect(sizeOf('A3')).toBeGreaterThan(sizeOf('A4'));
});

test('what would have to be smaller than can be read is refused', () => {
  const many = Array.from({ length: 200 }, (_, i): [string, string] => [`command${i}`, 'say what differs']);
  expect(() => cardPage('A4', 'en', many, metrics)).toThrow('the card does not fit on A4');
});
