/** What is beyond any sheet is refused with its number and its place, before anything is computed. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { compiled, hasErrors, printed } from '../fuzz/ways.js';

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

// ---- what `check` passes, `build` prints: whatever stands in a text or a name

const CUT = 'cut 1\ntime 1+0\nA: 1..\n';

/** Every place where a text stands that is printed. */
const TEXTS: Readonly<Record<string, (text: string) => string>> = {
  'cut title': (text) => `cut 1 "${text}"\ntime 1+0\nA: 1..\n`,
  'level title': (text) => `cut 1\ntime 1+0\nA "${text}": 1..\n`,
  speaker: (text) => `${CUT}voice "${text}" 1..9 "x"\n`,
  dialogue: (text) => `${CUT}voice "x" 1..9 "a" @4 "${text}"\n`,
  sound: (text) => `${CUT}sound 1..9 "${text}"\n`,
  music: (text) => `${CUT}music 1..9 "${text}"\n`,
  note: (text) => `${CUT}note 3 "${text}"\n`,
  memo: (text) => `${CUT}memo "${text}"\n`,
  scene: (text) => `${CUT}scene "${text}"\n`,
  take: (text) => `${CUT}take "${text}"\n`,
  artist: (text) => `${CUT}artist "${text}"\n`,
  effect: (text) => `${CUT}effect "${text}" 1..9\n`,
};

const NAMES: Readonly<Record<string, (name: string) => string>> = {
  'cut number': (name) => `cut 1${name}\ntime 1+0\nA: 1..\n`,
  level: (name) => `cut 1\ntime 1+0\nA${name}: 1..\n`,
  key: (name) => `cut 1\ntime 1+0\nA: 1 2${name}..\n`,
  'key of a phrase': (name) => `cut 1\ntime 1+0\nphrase p = 1 2${name}\nA: p x..\n`,
  reference: (name) => `cut 1\ntime 1+0\nA: 1-2${name} 2${name}:2 1.1..\n`,
  'pinned key': (name) => `cut 1\ntime 1+0\nA: 1 2..\ncels A 1 2${name}\n`,
  'lent level': (name) => `${CUT}level B reuse 3/${name}\nB: 1..\n`,
  'lending cut': (name) => `${CUT}level B reuse 3${name}/B\nB: 1..\n`,
  field: (name) => `${CUT}field F${name} 50%\npan F${name}@1 > F${name}@20\n`,
  scene: (name) => `${CUT}scene 3${name}\n`,
};

const MANIFEST: Readonly<Record<string, (text: string) => string>> = {
  title: (text) => `title: "${text}"\n`,
  episode: (text) => `episode: "${text}"\n`,
  artist: (text) => `artists:\n  "${text}": [1]\n`,
};

const glyphErrors = (text: string, manifest?: string): string[] => {
  const { diagnostics, sources } = compiled(text, manifest);
  return diagnostics
    .filter(({ code }) => code === 'missing-glyph')
    .map(({ span }) => sources.get(span.file)!.slice(span.start, span.end));
};

describe('a character that the font lacks is an error at its place', () => {
  test.each(Object.entries(TEXTS))('in the text of a %s', (_, text) => {
    expect(glyphErrors(text('a☔b'))).toEqual(['☔']);
  });

  test.each(Object.entries(NAMES))('in the name of a %s', (_, text) => {
    const errors = glyphErrors(text('ع'));
    expect(errors.length).toBeGreaterThan(0);
    expect(new Set(errors)).toEqual(new Set(['ع']));
  });

  test.each(Object.entries(MANIFEST))('in the %s of a manifest', (_, text) => {
    expect(glyphErrors(CUT, text('a☔b'))).toEqual(['☔']);
  });
});

test('a line break may stand in what is laid out in lines, and in no title or name', () => {
  const lines = new Set(['dialogue', 'sound', 'music', 'note', 'memo']);
  for (const [name, text] of Object.entries(TEXTS))
    expect(glyphErrors(text('a\\nb')), name).toEqual(lines.has(name) ? [] : ['\\n']);
  for (const name of ['title', 'episode'] as const)
    expect(glyphErrors(CUT, MANIFEST[name]!('a\\nb'))).toEqual(['\\n']);
  const [fault] = compiled(TEXTS.speaker!('a\\nb')).diagnostics;
  expect(messageOf(fault!, 'en')).toBe(
    'A title or a name stands on one line, so it cannot have a line break.',
  );
});

test('names that are never printed may have any letter', () => {
  expect(glyphErrors(`${CUT}mark ع 3\nnote ع "x"\n`)).toEqual([]);
  expect(glyphErrors('cut 1\ntime 1+0\nphrase ع = 1 2\nA: ع x..\n')).toEqual([]);
});

const ODD = [
  ...['\\n', '\\\\', '\t', '\u0001', '\u007f', '\u0085', '\u00a0', '\u00ad', '\u200b', '\u200d', '\u202e'],
  ...[
    '\u2028',
    '\u2029',
    '\ufe0f',
    '\ufeff',
    '\u{e0100}',
    '\u0301',
    'e\u0301',
    'か\u3099',
    '\u3099',
    'ع',
    'ı',
  ],
  ...[
    '\u0958',
    '\u1100\u1161',
    '🇩🇪',
    '👩‍👩‍👧',
    '☔',
    'ﬁ',
    '①',
    'ｱ',
    'ー',
    '𠮷',
    '\ud83c',
    '\udc00',
    '　',
    'A',
    'あ',
  ],
] as const;

test('a cut with any text anywhere has an error or is printed', async () => {
  const where: ((odd: string) => readonly [text: string, manifest?: string])[] = [
    ...[...Object.values(TEXTS), ...Object.values(NAMES)].map(
      (text) => (odd: string) => [text(odd)] as const,
    ),
    ...Object.values(MANIFEST).map((text) => (odd: string) => [CUT, text(odd)] as const),
  ];
  let sheets = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...where),
      fc.array(fc.constantFrom(...ODD), { minLength: 1, maxLength: 3 }),
      async (text, odd) => {
        const cut = compiled(...text(odd.join('')));
        if (hasErrors(cut)) return;
        sheets += 1;
        await printed(cut);
      },
    ),
    { numRuns: 80 },
  );
  expect(sheets).toBeGreaterThan(5);
});

test('a shake swings: one of nothing is an error', () => {
  const codes = (shake: string) => compiled(`${CUT}${shake}\n`).diagnostics.map(({ code }) => code);
  expect(codes('shake 0mm 1..12')).toContain('number-senseless');
  expect(codes('shake 0mm>4mm 1..12')).not.toContain('number-senseless');
  expect(codes('shake 4mm>0mm 1..12')).not.toContain('number-senseless');
});
