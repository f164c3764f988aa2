import { describe, expect, test } from 'vitest';
import '../../src/language/statements/statement-table.js';
import { tokenize } from '../../src/language/lexer.js';
import { isKind, Key, languageWords, Name, PhraseName, word } from '../../src/language/tokens.js';

const first = (text: string) => tokenize(text, 0, text.length)[0]!;

describe('categories', () => {
  test.each(['3', '3a', '8F', '2N'])('%s may name a key', (text) => {
    expect(isKind(first(text), Key)).toBe(true);
  });

  test.each(['1.2', 'A', '60%', '8.5F'])('%s may not', (text) => {
    expect(isKind(first(text), Key)).toBe(false);
  });

  test('words of the language are names too; x and on play no phrase', () => {
    for (const text of ['level', 'walk', 'x', 'on']) expect(isKind(first(text), Name)).toBe(true);
    expect(['level', 'walk', 'x', 'on'].map((text) => isKind(first(text), PhraseName))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('a pattern', () => {
  test('reads the same in text that is all ASCII and in text that is not', () => {
    const kinds = (text: string) =>
      tokenize(text, 0, text.length).map(({ image, type }) => `${type.name} ${image}`);
    for (const text of ['3a', '1.1a', '560x200mm', '12abc', 'BOOK1', "8'04"])
      expect(kinds(`${text} é`).slice(0, -1)).toEqual(kinds(text));
    // Straight behind, a letter of any script is glued on.
    expect(kinds('12é')).toEqual(['KeyName 12é']);
    expect(kinds('12mmé')).toEqual(['Glued 12mmé']);
  });

  test('is tried where it may begin: an offset inside a text', () => {
    expect(tokenize('é 12', 2, 4).map(({ type }) => type.name)).toEqual(['Integer']);
  });
});

test('a word of the language is made once', () => {
  expect(word('size')).toBe(word('size'));
  expect(languageWords().get('size')).toBe(word('size'));
});
