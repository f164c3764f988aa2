import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { type Code, catalogue } from '../../src/language/catalogue/index.js';
import { wordsOf } from '../../src/language/grammar-queries.js';
import { aboutCode } from '../../src/language/message.js';
import { byWord } from '../../src/language/statements/statement-table.js';
import { statementPages } from '../../src/reference/statement-pages.js';
import { CUT, run, runOn } from './run.js';

const COMMANDS = ['check', 'build', 'export', 'show', 'blank', 'explain'];

describe('help', () => {
  test('is asked for on standard output, and given unasked on standard error', async () => {
    for (const argv of [['--help'], ['-h'], ['help']]) {
      const { status, out, error } = await runOn({}, ...argv);
      expect({ status, error }).toEqual({ status: 0, error: '' });
      for (const command of COMMANDS) expect(out).toContain(`\n  ${command} `);
    }
    expect(await runOn({})).toMatchObject({ status: 2, out: '' });
  });

  test.each(COMMANDS)('of %s teaches by example, and the examples are no wrong use', async (command) => {
    const { status, out } = await runOn({}, command, '--help');
    expect(status).toBe(0);
    expect((await runOn({}, 'help', command)).out).toBe(out);
    const lines = [...out.split('Examples:')[1]!.matchAll(/^ {2}cutwright (.*?)(?: {3}.*)?$/gm)].map(
      ([, line]) => line!,
    );
    expect(lines.length).toBeGreaterThanOrEqual(2);
    for (const line of lines) {
      const files = {
        // With in-betweens and graduations, so that every part of it can be printed.
        'c012.cut': `${CUT}field B full at 20,0\npan full@1 > B@1+0 ticks\n`,
        'cuts/c1.cut': CUT,
        'cuts/c2.cut': CUT.replace('1', '2'),
        'episode.yaml': 'cuts: "cuts/*.cut"',
      };
      const host = memoryHost(files);
      host.revisions.set('HEAD~1', memoryHost(files));
      host.input = Buffer.from(CUT);
      const argv = line.replace(/ [<>] \S+/g, '').split(' ');
      const { status, error } = await run(host, ...argv);
      expect({ line, status, error: error.match(/error\[.*/g) }).toEqual({ line, status: 0, error: null });
    }
  });

  test('--version', async () => {
    expect(await runOn({}, '--version')).toMatchObject({
      status: 0,
      out: expect.stringMatching(/^cutwright \d+\.\d+\.\d+\n$/),
    });
  });
});

describe('a wrong command line leaves with 2 and points at the word', () => {
  const underlined = (error: string) => {
    const [, line, carets] = error.split('\n');
    return line!.slice(carets!.indexOf('^'), carets!.lastIndexOf('^') + 1);
  };

  test.each([
    [['biuld', 'a.cut'], 'unknown-command', 'biuld', 'did you mean `build`?'],
    [['a.cut'], 'unknown-command', 'a.cut', 'did you mean `cutwright build a.cut`?'],
    [['frobnicate'], 'unknown-command', 'frobnicate', 'the commands are check, build, '],
    [['constructor'], 'unknown-command', 'constructor', 'no command'],
    [['--paper', 'A4', 'build'], 'unknown-option', '--paper', 'stands first'],
    [['help', 'biuld'], 'unknown-command', 'biuld', '`build`'],
    [['build', 'a.cut', '--papper', 'A4'], 'unknown-option', '--papper', '`--paper`'],
    [['build', 'a.cut', '--outptu=x'], 'unknown-option', '--outptu=x', 'no option'],
    [['check', 'a.cut', '--paper', 'A4'], 'unknown-option', '--paper', 'no option'],
    [['check', 'a.cut', '--strict=yes'], 'option-value', '--strict=yes', 'takes no value'],
    [['build', 'a.cut', '--paper', 'A44'], 'option-value', 'A44', '`A4`'],
    [['build', 'a.cut', '--paper=A44'], 'option-value', 'A44', '`A4`'],
    [['build', 'a.cut', '--convention', 'jpn'], 'option-value', 'jpn', 'japan or west'],
    [['build', 'a.cut', '--labels', 'fr'], 'option-value', 'fr', 'en or ja'],
    [['build', 'a.cut', '--only', 'chart'], 'option-value', 'chart', '`charts`'],
    [['build', 'a.cut', '--format', 'xml'], 'option-value', 'xml', 'human, json or github'],
    [['build', 'a.cut', '--rows', '100'], 'option-value', '100', '96 would do'],
    [['build', 'a.cut', '--rows', 'many'], 'option-value', 'many', 'a number of rows'],
    [['build', 'a.cut', '-c', 'west', '--rows', '100'], 'option-value', '100', 'feet of 16 rows'],
    [['build', 'a.cut', '--pages', '0'], 'option-value', '0', 'counted from 1'],
    [['build', 'a.cut', '--pages', '3-2'], 'option-value', '3-2', 'counted from 1'],
    [['build', 'a.cut', '--pages', 'two'], 'option-value', 'two', 'counted from 1'],
    [['build', 'a.cut', '--pages', '7'], 'option-value', '7', 'no page'],
    [['build', 'x.cut', '--only', 'charts'], 'option-value', 'charts', 'no chart'],
    [['build', 'a.cut', 'x.cut', '-o', '-'], 'wrong-arguments', '-', '2 cuts do not go into standard output'],
    [['build', 'a.cut', 'x.cut', '-o', 'one.pdf'], 'wrong-arguments', 'one.pdf', 'one file'],
    [['export', 'a.cut', '--table', 'drawing'], 'option-value', 'drawing', '`drawings`'],
    [['blank', 'a.cut'], 'wrong-arguments', 'a.cut', 'fewer words'],
    [['blank', '--levels', '27'], 'option-value', '27', '1 to 26'],
    [['blank', '--pages', '0'], 'option-value', '0', '1 to 500'],
    [['blank', '-o', 'a.cut'], 'output-is-input', 'a.cut', 'not written over'],
    [['explain', 'timeline-shrt'], 'wrong-arguments', 'timeline-shrt', '`timeline-short`'],
    [['explain', '__proto__'], 'wrong-arguments', '__proto__', 'lists all'],
    [['build', 'a b.cut', '--papper'], 'unknown-option', '--papper', '`--paper`'],
  ])('%j', async (argv, code, word, words) => {
    const { status, out, error } = await runOn(
      { 'a.cut': CUT, 'x.cut': 'cut 2\ntime 1+0\nA: 1..\n' },
      ...argv,
    );
    expect(out).toBe('');
    expect(error).toMatch(new RegExp(`^command line:1:\\d+: error\\[${code}\\]: `));
    expect(error.split('\n')[0]).toContain(words);
    expect(underlined(error)).toBe(word);
    expect(status).toBe(2);
  });

  test.each([
    [['build'], 'wrong-arguments'],
    [['build', 'a.cut', '--paper'], 'option-value'],
    [['export', 'a.cut', 'x.cut'], 'wrong-arguments'],
  ])('%j: at its end', async (argv, code) => {
    const { status, error } = await runOn({ 'a.cut': CUT, 'x.cut': CUT }, ...argv);
    expect(error).toContain(`error[${code}]`);
    const [, line, carets] = error.split('\n');
    expect(carets).toHaveLength(line!.length + 1);
    expect(status).toBe(2);
  });

  test('control characters of a command line do not reach the terminal', async () => {
    const { error } = await runOn({}, 'bui\u001b[31mld\u0007', '\r\n');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    expect(error).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f]/);
  });

  test('is told as JSON where that was asked for', async () => {
    const { status, error } = await runOn({}, 'build', '--papper', '--format', 'json');
    expect(status).toBe(2);
    expect(JSON.parse(error).diagnostics).toMatchObject([
      {
        code: 'unknown-option',
        place: { file: 'command line', start: { line: 1, column: 17 } },
        fix: { edits: [{ text: '--paper' }] },
      },
    ]);
  });
});

describe('explain', () => {
  test('without a word lists every statement and every code once', async () => {
    const { status, out } = await runOn({}, 'explain');
    expect(status).toBe(0);
    const words = out.split('\n').flatMap((line) => /^([a-z][a-z-]*) {2}/.exec(line)?.[1] ?? []);
    expect(words).toEqual([...Object.keys(statementPages), ...Object.keys(catalogue)]);
  });

  test('says how a statement is written, what a word inside one means, and which of both goes before a code', async () => {
    const pan = (await runOn({}, 'explain', 'pan')).out;
    expect(pan).toContain('pan FIELD@TIME ( > FIELD@TIME [ HOW ] )…');
    expect(pan).toContain('    pan full@1 > B@5+0 ease 12');
    const ease = (await runOn({}, 'explain', 'EASE')).out;
    expect(ease).toContain('In pan, truck, pull, follow, slide, turn:');
    for (const word of byWord.keys()) expect(Object.keys(catalogue)).not.toContain(word);
  });

  test('tells of every word of the language', async () => {
    for (const word of new Set([...byWord.values()].flatMap(wordsOf))) {
      const { status, out } = await runOn({}, 'explain', word);
      expect(status, word).toBe(0);
      expect(out, word).toContain(word);
    }
  });

  test('guesses what was meant', async () => {
    expect((await runOn({}, 'explain', 'truk')).error).toContain('did you mean `truck`?');
    expect((await runOn({}, 'explain', 'sideway')).error).toContain('did you mean `sideways`?');
    expect((await runOn({}, 'explain', 'nothing-like-it')).error).toContain('lists all of them');
  });

  test('says what every code means, with both examples, in lines that fit a terminal', async () => {
    for (const [code, { example }] of Object.entries(catalogue)) {
      const { status, out } = await runOn({}, 'explain', code);
      expect(status).toBe(0);
      const flat = out.replace(/\s+/g, ' ');
      for (const text of [aboutCode(code as Code, 'en').explanation, example.failing, example.mended]) {
        expect(flat, code).toContain(text.replace(/\s+/g, ' ').trim());
      }
      const words = out.split('\n\n')[1]!;
      for (const line of words.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    }
  });

  test('takes a code as it is printed', async () => {
    expect((await runOn({}, 'explain', '[Timeline-Short]')).out).toBe(
      (await runOn({}, 'explain', 'timeline-short')).out,
    );
  });
});
