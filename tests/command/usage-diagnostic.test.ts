import { describe, expect, test } from 'vitest';
import { CUT, runOn } from './run.js';

describe('a wrong command line leaves with 2 and points at the word', () => {
  const underlined = (error: string) => {
    const [, , line, carets] = error.split('\n');
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
    expect(error).toMatch(new RegExp(`^Error: .*\ncommand line:1:\\d+: ${code}\n`));
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
    expect(error).toContain(`: ${code}\n`);
    const [, , line, carets] = error.split('\n');
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
