import { describe, expect, test } from 'vitest';
import { inLanguage, languageBehind } from '../../src/command/language-option.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { userLanguage } from '../../src/language/user-language.js';
import { CUT, run, runOn } from './run.js';

const LONG = { 'c1.cut': 'cut 1\ntime 5 + 0\nA: 1..\n' };

describe('--language', () => {
  test.each([
    [['check', 'a.cut', '--language', 'ja'], 'ja'],
    [['--language', 'ja', 'check', 'a.cut'], 'ja'],
    [['check', '--language=ja', 'a.cut'], 'ja'],
    [['check', 'a.cut'], 'en'],
    [['check', 'a.cut', '--language'], 'en'],
  ])('%j is heard wherever it stands', (argv, language) => {
    expect(userLanguage(inLanguage(memoryHost(), argv))).toBe(language);
  });

  test('before the command it is moved behind all else', () => {
    expect(languageBehind(['--language', 'ja', 'check', 'a.cut'])).toEqual([
      'check',
      'a.cut',
      '--language',
      'ja',
    ]);
    expect(languageBehind(['--language=ja', 'check', 'a.cut'])).toEqual(['check', 'a.cut', '--language=ja']);
    expect(languageBehind(['--language', 'ja'])).toEqual([]);
    expect(languageBehind(['check', 'a.cut'])).toEqual(['check', 'a.cut']);
  });

  test('says messages in Japanese; places, codes and the exit status stay', async () => {
    const english = await runOn(LONG, 'check', 'c1.cut');
    const japanese = await runOn(LONG, 'check', 'c1.cut', '--language', 'ja');
    expect(japanese.status).toBe(english.status);
    expect(english.error).toContain(
      'Error: Seconds and frames are written with no blanks between: 5+0.\nc1.cut:2:6: spaced-number\n',
    );
    expect(japanese.error).toContain(
      '誤り: 秒とコマの間に空白は入れません。5+0 と書きます。\nc1.cut:2:6: spaced-number\n',
    );
  });

  test('JSON is the same in every language', async () => {
    const english = await runOn(LONG, 'check', '--format', 'json', 'c1.cut');
    const japanese = await runOn(LONG, '--language', 'ja', 'check', '--format', 'json', 'c1.cut');
    expect(japanese).toEqual(english);
  });

  test('the variable and the system are asked where the line says nothing', async () => {
    const host = memoryHost(LONG);
    host.variables.set('LANG', 'ja_JP.UTF-8');
    expect((await run(host, 'check', 'c1.cut')).error).toContain('誤り');
    host.variables.set('CUTWRIGHT_LANGUAGE', 'en');
    expect((await run(host, 'check', 'c1.cut')).error).toContain('Error');
    expect((await run(host, 'check', 'c1.cut', '--language', 'ja')).error).toContain('誤り');
  });

  test('faults of the command line are told in it as well', async () => {
    expect((await runOn({}, 'check', '--language', 'ja', '--nonsense')).error).toContain(
      'というオプションはありません',
    );
    const fault = await runOn({ 'c1.cut': CUT }, 'check', 'c1.cut', '--language', 'fr');
    expect(fault.status).toBe(2);
    expect(fault.error).toContain('`--language` takes en or ja');
  });
});
