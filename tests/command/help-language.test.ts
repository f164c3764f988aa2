import type { Command } from 'commander';
import { describe, expect, test } from 'vitest';
import { choicesOf } from '../../src/command/command-options.js';
import { HELP_WIDTH, plainDescription, translatedText } from '../../src/command/help-language.js';
import { help } from '../../src/command/ja/help-texts-ja.js';
import { allCommands } from '../../src/command/main.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { displayWidth } from '../../src/language/source.js';
import { englishIn } from '../japanese-text.js';
import { runOn } from './run.js';

function shown(command: Command): string {
  let text = '';
  command.configureOutput({ writeOut: (more) => (text += more) }).outputHelp();
  return text;
}

/** Everything that a command's help says in English: each is a key of a table. */
function textsOf(command: Command): string[] {
  const behind = shown(command).split(/\n {2}-h, --help .*\n/)[1]!;
  const paragraphs = behind.split(/\n{2,}/).map((one) => one.replace(/^\n|\n$/g, ''));
  return [
    command.description(),
    ...command.registeredArguments.map(({ description }) => description),
    ...command.options.map((option) => plainDescription(option.description, choicesOf(option) ?? ['-'])),
    ...paragraphs.flatMap((one) => {
      const [first = '', ...lines] = one.split('\n');
      if (help.titles[first] === undefined) return [[first, ...lines].join(' ')];
      return first === 'Marks:' ? lines : lines.map((line) => /^ {2}\S.*? {3,}(\S.*)$/.exec(line)?.[1] ?? '');
    }),
  ].filter((one) => one !== '');
}

const english = await allCommands(memoryHost());
const texts = [...new Set(english.flatMap(textsOf)), 'this text', 'how it is used, with examples'];

const inJapanese = memoryHost();
inJapanese.variables.set('CUTWRIGHT_LANGUAGE', 'ja');
const japanese = await allCommands(inJapanese);

test('every text of the English help has a Japanese one, and nothing else is in the table', () => {
  expect(texts.filter((one) => help.lines[one] === undefined)).toEqual([]);
  expect(Object.keys(help.lines).filter((one) => !texts.includes(one))).toEqual([]);
});

describe.each(japanese.map((command) => [command.name(), command] as const))('%s --help', (name, command) => {
  const text = shown(command);
  const typed = JSON.stringify([english.map(shown), command.options.map(choicesOf)]);

  test('is Japanese, but for what is typed', () => {
    const told = text.split('\n').filter((line) => !line.startsWith('使い方：'));
    const words = told.map((line) => /^ {2}\S.*? {2,}(\S.*)$/.exec(line)?.[1] ?? line);
    for (const one of words) expect(one, one).toMatch(/^$|[\u3040-\u30ff\u4e00-\u9fff]|^[ -~、（）]*$/);
    expect(text).toMatch(/^使い方：cutwright|^使い方： cutwright/);
    expect(text).toContain('例：');
    expect(text).not.toMatch(/choices:|default:/);
    expect(help.lines).toBeDefined();
    for (const one of Object.values(help.lines)) expect(englishIn(one, typed), one).toEqual([]);
  });

  test('keeps within the columns, and its texts begin in one column', () => {
    const lines = text.split('\n');
    const usage = lines.indexOf('');
    for (const line of lines
      .slice(usage)
      .filter((one) => !one.startsWith('  cutwright') && !one.startsWith('  git')))
      expect(displayWidth(line), line).toBeLessThanOrEqual(HELP_WIDTH);
    const options = lines.slice(lines.indexOf('オプション：') + 1);
    const starts = options
      .slice(0, options.indexOf(''))
      .map((line) => /^( {2}-.*? {2,})\S/.exec(line)?.[1])
      .filter((one) => one !== undefined)
      .map((one) => displayWidth(one));
    expect(new Set(starts).size, name).toBe(1);
  });
});

test('examples keep their commands; a paragraph that is not known stays', () => {
  const some = { ...help, lines: { 'one cut': '1つのカット', 'Two lines are one text.': '2行で1つ。' } };
  expect(translatedText('\nExamples:\n  cutwright check a.cut   one cut\n  x   other\n', some)).toBe(
    '\n例：\n  cutwright check a.cut   1つのカット\n  x   other\n',
  );
  expect(translatedText('\nTwo lines\nare one text.\n\nUnknown.\n', some)).toBe('\n2行で1つ。\n\nUnknown.\n');
});

test('the help of the program is Japanese as well', async () => {
  const { out } = await runOn({}, '--help', '--language', 'ja');
  expect(out).toContain('  check       カットの誤りを調べます\n');
  expect(out).not.toContain('undefined');
});
