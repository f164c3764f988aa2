import { describe, expect, test } from 'vitest';
import { userLanguage } from '../../src/language/user-language.js';

const spoken = (variables: Readonly<Record<string, string>>, editor?: string) =>
  userLanguage({ env: (name) => variables[name] }, editor);

describe('the language of the user', () => {
  test('is English where nothing says another', () => {
    expect(spoken({})).toBe('en');
    expect(spoken({ LANG: 'C' })).toBe('en');
    expect(spoken({ LANG: 'POSIX' })).toBe('en');
    expect(spoken({ LANG: 'fr_FR.UTF-8' })).toBe('en');
    // Java and Javanese are no Japanese.
    expect(spoken({ LANG: 'jav_ID.UTF-8' })).toBe('en');
  });

  test.each(['ja', 'ja_JP', 'ja-JP', 'ja_JP.UTF-8', 'ja_JP.utf8', 'JA_jp.utf-8@x'])(
    'is Japanese under %s',
    (name) => {
      expect(spoken({ LANG: name })).toBe('ja');
      expect(spoken({ CUTWRIGHT_LANGUAGE: name })).toBe('ja');
    },
  );

  test.each(['jp', 'JP', 'jpn', 'japanese'])('%s is meant for Japanese', (name) => {
    expect(spoken({ CUTWRIGHT_LANGUAGE: name })).toBe('ja');
  });

  test('LC_ALL counts more than LC_MESSAGES, and that more than LANG; empty ones do not count', () => {
    expect(spoken({ LC_ALL: 'C', LC_MESSAGES: 'ja_JP.UTF-8', LANG: 'ja_JP.UTF-8' })).toBe('en');
    expect(spoken({ LC_MESSAGES: 'ja_JP.UTF-8', LANG: 'en_GB.UTF-8' })).toBe('ja');
    expect(spoken({ LC_ALL: '', LC_MESSAGES: '', LANG: 'ja_JP.UTF-8' })).toBe('ja');
  });

  test('a terminal in another encoding gets English, unless Japanese is asked for', () => {
    expect(spoken({ LANG: 'ja_JP.eucJP' })).toBe('en');
    expect(spoken({ LANG: 'ja_JP.SJIS' })).toBe('en');
    expect(spoken({ LANG: 'ja_JP.eucJP', CUTWRIGHT_LANGUAGE: 'ja' })).toBe('ja');
  });

  test('the variable of our own counts most, but for a language that is none of ours', () => {
    expect(spoken({ CUTWRIGHT_LANGUAGE: 'en', LANG: 'ja_JP.UTF-8' })).toBe('en');
    expect(spoken({ CUTWRIGHT_LANGUAGE: 'xx', LANG: 'ja_JP.UTF-8' })).toBe('ja');
  });

  test("an editor's language counts more than the system's", () => {
    expect(spoken({ LANG: 'ja_JP.UTF-8' }, 'en-us')).toBe('en');
    expect(spoken({ LANG: 'C' }, 'ja')).toBe('ja');
    expect(spoken({ LANG: 'ja_JP.UTF-8' }, 'fr')).toBe('en');
    expect(spoken({ CUTWRIGHT_LANGUAGE: 'en' }, 'ja')).toBe('en');
  });
});
