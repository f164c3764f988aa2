/** What is beyond any sheet is refused with its number and its place, before anything is computed. */

import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { compiled } from '../fuzz/ways.js';

const many = (n: number, line: (i: number) => string, join = '\n'): string =>
  Array.from({ length: n }, (_, i) => line(i)).join(join);
const cut = (time: string, lines: string): string => `cut 1\n${time}\nA: 1..\n${lines}\n`;

/** The errors of size, as `message @ what is typed there`, and whether the cut was solved all the same. */
function refused(text: string): { errors: string[]; solved: boolean } {
  const { diagnostics, solved } = compiled(text);
  const errors = diagnostics
    .filter(({ code }) =>
      ['cut-too-large', 'levels-too-many', 'text-too-long', 'file-too-large'].includes(code),
    )
    .map((one) => `${messageOf(one, 'en')} @ ${text.slice(one.span.start, one.span.end).slice(0, 20)}`);
  return { errors, solved: solved !== null };
}

const ofSize = (message: string) => ({ errors: [message], solved: false });

describe('refused unsolved is', () => {
  test('a text over 2 MB', () => {
    expect(refused('#'.repeat(2 * 1024 * 1024 + 1))).toEqual(
      ofSize('The file is larger than 2 MB, too much for a text. @ '),
    );
  });

  test('a statement that is too long, be it dashes, names or blanks', () => {
    for (const part of ['-', ' L', ' ', '\n '])
      expect(refused(cut('time 1+0', `B: 1${part.repeat(160_000)}2..`)).errors.join()).toMatch(
        /^A statement of \d+ characters is too long to be read; it may have 150000\. @ B: 1/,
      );
  });

  test('what follows more words and signs than a text may have', () => {
    const { errors } = refused(
      cut(
        'time 1+0',
        many(4, (i) => `L${i}: ${'-'.repeat(120_000)}`),
      ),
    );
    expect(errors).toContain(
      'Here the text comes to more than 300000 words and signs; the rest is not read. @ L3: ----------------',
    );
  });

  test('more than 10,000 statements of one kind, in the text or in what it uses', () => {
    expect(
      refused(
        cut(
          'time 1+0',
          many(10_001, (i) => `artist "${i}"`),
        ),
      ),
    ).toEqual(
      ofSize('A cut may have 10000 statements of one kind; this is one more of `artist`. @ artist "10000"'),
    );
    expect(
      refused(
        cut(
          'time 1+0',
          many(10_000, (i) => `artist "${i}"`),
        ),
      ).errors,
    ).toEqual([]);
  });

  test('more items in timelines than any sheet has rows', () => {
    const { errors, solved } = refused(
      cut(
        'time 1+0',
        many(3, (i) => `L${i}: ${'-'.repeat(40_000)}`),
      ),
    );
    expect(errors).toEqual([
      'Here the timelines come to 120001 items; a cut may have 100000. @ L2: ----------------',
    ]);
    expect(solved).toBe(false);
  });

  test('a move of more than 10,000 legs', () => {
    const legs = many(10_001, (i) => `> F@${i + 2}`, ' ');
    expect(refused(cut('time 500+0', `field F 50%\npan F@1 ${legs}`))).toEqual(
      ofSize('The move has 10001 legs; it may have 10000. @ F@10002'),
    );
  });

  test('a cut of more than 200 levels', () => {
    expect(
      refused(
        cut(
          'time 1+0',
          many(300, (i) => `L${i}: 1..`),
        ),
      ),
    ).toEqual(ofSize('The cut has 302 levels; it may have 200. @ L198'));
  });

  test('levels times rows', () => {
    expect(
      refused(
        cut(
          'fps 120\ntime 600+0',
          many(100, (i) => `L${i}: 1..`),
        ),
      ),
    ).toEqual(ofSize('102 levels on 72000 rows come to 7344000 cells; a cut may have 300000. @ time 600+0'));
  });

  test('moves times frames, at the move that is one too many', () => {
    const { errors, solved } = refused(
      cut(
        'fps 120\ntime 600+0',
        many(9, (i) => `pull A left ${i + 1}mm 1..600+0`),
      ),
    );
    expect(errors).toEqual([
      'Here the moves of the cut come to more than 300000 frames, counted once for each level. @ pull A left 5mm 1..6',
    ]);
    expect(solved).toBe(false);
    const short = cut(
      'fps 120\ntime 600+0',
      many(2000, (i) => `pull A left 1mm ${i + 1}..${i + 1}`),
    );
    expect(refused(short).errors).toEqual([
      'Here moves times rows of the sheet come to more than 120000000, too much to be computed. @ pull A left 1mm 1667',
    ]);
  });
});

test('a crowd of 199 levels on a minute is solved', () => {
  expect(
    refused(
      cut(
        'time 60+0',
        many(198, (i) => `L${i}: 1..`),
      ),
    ),
  ).toEqual({ errors: [], solved: true });
});
