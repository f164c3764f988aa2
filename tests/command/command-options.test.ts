import { Command } from 'commander';
import { describe, expect, test } from 'vitest';
import type { UsageError } from '../../src/build/usage-error.js';
import {
  checkRows,
  choice,
  choicesOf,
  examples,
  filesOr,
  looks,
  nextCommand,
} from '../../src/command/command-options.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { defaults } from '../../src/shot/settings.js';

/** What is thrown, or nothing. */
function thrown(act: () => unknown): UsageError | null {
  try {
    act();
    return null;
  } catch (fault) {
    return fault as UsageError;
  }
}

describe('an option that takes one of a few words', () => {
  const option = choice('-p, --paper <size>', 'paper', ['A4', 'B4', 'legal']);
  const parsed = (word: string): string => {
    const command = new Command().exitOverride().addOption(option);
    return command.parse(['--paper', word], { from: 'user' }).opts<{ paper: string }>().paper;
  };

  test('takes them however they are written, and gives them as they are', () => {
    expect([parsed('A4'), parsed('a4'), parsed('LEGAL')]).toEqual(['A4', 'A4', 'legal']);
  });

  test('refuses another with all of them, and a guess where one is near', () => {
    expect(thrown(() => parsed('leagl'))).toMatchObject({
      code: 'option-value',
      word: 'leagl',
      parameters: { variant: 'choice', option: '--paper', words: ['A4', 'B4', 'legal'], guess: 'legal' },
      better: 'legal',
    });
    expect(thrown(() => parsed('zzzzzz'))).toMatchObject({ parameters: { guess: null } });
  });

  test('tells its words', () => {
    expect(choicesOf(option)).toEqual(['A4', 'B4', 'legal']);
    expect(choicesOf(new Command().option('--strict', 'x').options[0]!)).toBeUndefined();
  });
});

describe('settings of a command line', () => {
  test('are those that were said', () => {
    expect(looks({})).toEqual({});
    expect(looks({ paper: 'A3', rows: '72', labels: 'ja' })).toEqual({ paper: 'A3', rows: 72, labels: 'ja' });
  });

  test.each(['', '7.5', '-1', 'many', '12345'])('rows of %j are wrong use', (rows) => {
    expect(thrown(() => looks({ rows }))).toMatchObject({ code: 'option-value', word: rows });
  });

  test('rows must suit the sheets that come out', () => {
    const check = (rows: string, settings = {}) =>
      thrown(() => checkRows({ rows }, { ...defaults, rows: Number(rows), ...settings }));
    expect(check('72')).toBeNull();
    expect(check('80')).toMatchObject({ code: 'option-value', word: '80' });
    expect(check('80', { convention: 'west' })).toBeNull();
    expect(thrown(() => checkRows({}, { ...defaults, rows: 7 }))).toBeNull();
  });
});

describe('the files of a command line', () => {
  const host = memoryHost({ 'e/episode.yaml': '', 'e/cuts/1.cut': '' });

  test('are those that were named', async () => {
    expect(await filesOr(host, ['x.cut'], 'check')).toEqual(['x.cut']);
  });

  test('are the episode of the folder where none was', async () => {
    expect(await filesOr({ ...host, cwd: '/work/e/cuts' }, [], 'check')).toEqual(['../episode.yaml']);
  });

  test('outside an episode are missing', async () => {
    await expect(filesOr(host, [], 'check')).rejects.toMatchObject({ code: 'wrong-arguments', word: null });
  });
});

test('examples stand in two columns', () => {
  expect(examples(['cutwright check a.cut', 'one cut'], ['cutwright check', 'the episode'])).toBe(
    '\nExamples:\n  cutwright check a.cut   one cut\n  cutwright check         the episode\n',
  );
});

describe('a command to type next', () => {
  test('is called as the one before it was', () => {
    const host = memoryHost();
    expect(nextCommand(host, 'build', 'harbour')).toBe('cutwright build harbour');
    host.variables.set('npm_command', 'exec');
    expect(nextCommand(host, 'build', 'harbour')).toBe('npx cutwright build harbour');
  });

  test('has words in quotes that a shell would take apart', () => {
    expect(nextCommand(memoryHost(), 'check', 'cuts/c 1.cut', '渡し/c1.cut')).toBe(
      'cutwright check "cuts/c 1.cut" 渡し/c1.cut',
    );
  });
});
