import { describe, expect, it } from 'vitest';
import { acceptableCodes } from '../../src/language/catalogue/index.js';
import { parse } from '../../src/language/parse.js';
import { currentCode, currentWord, RETIRED_CODES, RETIRED_WORDS } from '../../src/language/retired-words.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { languageWords } from '../../src/language/tokens.js';

const HEAD = 'cut 31\ntime 2+0\n';
const read = (body: string) => parse('c031.cut', HEAD + body);

describe('a word under its old name', () => {
  it.each([
    ['a statement', 'roll', 'roll A 7mm 1..2+0 every 1+0\n'],
    ['an option of a move', 'ticks', 'pull BG up 0.8mm/f 7..1+18 ticks\n'],
  ])('reads as before, with a hint and a fix: %s', (_, old, body) => {
    const text = HEAD + body;
    const { tree, diagnostics } = read(body);
    expect(diagnostics).toMatchObject([
      {
        code: 'word-renamed',
        severity: 'hint',
        parameters: { word: old, written: currentWord(old) },
        span: { start: text.indexOf(old), end: text.indexOf(old) + old.length },
      },
    ]);
    const edits = diagnostics[0]!.fix!.edits.map(({ span, text }) => ({ ...span, text }));
    const mended = parse('c031.cut', withEdits(text, edits));
    expect(mended.diagnostics).toEqual([]);
    expect(mended.tree.statements.map(({ kind }) => kind)).toEqual(tree.statements.map(({ kind }) => kind));
    expect(tree.broken).toEqual([]);
  });

  it('stays a name like any other', () => {
    const { tree, diagnostics } = read('roll "logs": 1..\nphrase ticks = 1-2-\nA: ticks..\n');
    expect(diagnostics).toEqual([]);
    expect(tree.statements[2]).toMatchObject({ kind: 'timeline', level: { text: 'roll' } });
  });

  it('is known as a statement that cannot be read', () => {
    expect(read('roll A 7mm every 1+0\n').tree.broken).toMatchObject([{ word: 'sway' }]);
  });
});

it('each is called by a word of the language, and is none itself', () => {
  read('A: 1..\n');
  const words = languageWords();
  for (const [old, now] of RETIRED_WORDS) {
    expect([old, words.has(old)]).toEqual([old, false]);
    expect([now, words.has(now)]).toEqual([now, true]);
  }
});

it('a code is one of the messages now that can be accepted, and was not kept under its old name', () => {
  const codes = new Set<string>(acceptableCodes());
  for (const [old, now] of RETIRED_CODES) {
    expect([old, codes.has(old)]).toEqual([old, false]);
    expect([now, codes.has(now)]).toEqual([now, true]);
    expect([currentCode(old), currentCode(now)]).toEqual([now, now]);
  }
});
