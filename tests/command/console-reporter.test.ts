import { describe, expect, test } from 'vitest';
import { ConsoleReporter, type Format } from '../../src/command/console-reporter.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { diagnose } from '../../src/language/diagnostic.js';
import { compileText } from '../compile.js';

/** One error and one warning. */
const BOTH = compileText('cut 1\ntime 1+0\nA: 1:12\nB: x..\n');
const WARNING = compileText('cut 1\ntime 1+0\nA: 1..\nB: x..\n');

function reporter(format: Format = 'human', strict = false) {
  const host = memoryHost();
  return { host, reporter: new ConsoleReporter(host, format, strict) };
}
const report = (one: ConsoleReporter, { diagnostics, sources }: typeof BOTH) =>
  one.report(diagnostics, sources);

describe('the exit status', () => {
  const status = (compiled: typeof BOTH | null, strict = false) => {
    const one = reporter('human', strict).reporter;
    if (compiled) report(one, compiled);
    return one.finish();
  };

  test('is 0 for nothing and for warnings, 1 for errors and for warnings that count as such', () => {
    expect([status(null), status(WARNING), status(BOTH), status(WARNING, true)]).toEqual([0, 0, 1, 1]);
  });

  test('is 2 for wrong use, whatever else is wrong', () => {
    const { reporter: one } = reporter();
    report(one, BOTH);
    const nowhere = { file: 'b.cut', start: 0, end: 0 };
    one.report([diagnose('file-missing', nowhere, { variant: 'nothing', guess: null })], new Map());
    expect(one.finish()).toBe(2);
  });
});

describe('what is said', () => {
  test('is told once a run', () => {
    const { host, reporter: one } = reporter();
    report(one, BOTH);
    const said = host.complaints();
    report(one, BOTH);
    expect(host.complaints()).toBe(said);
    expect(one.tally()).toBe('1 error, 1 warning');
  });

  test('is tallied by severity, or is nothing', () => {
    const { reporter: one } = reporter();
    expect(one.tally()).toBe('nothing wrong');
    report(one, WARNING);
    expect(one.tally()).toBe('1 warning');
  });

  test('for people has the line with a caret, at once', () => {
    const { host, reporter: one } = reporter();
    report(one, BOTH);
    expect(host.complaints()).toMatch(/^Error: .*\nthis\.cut:3:4: timeline-short\n {4}A: 1:12\n {7}\^+\n/);
    one.say('1 cut checked');
    expect(host.complaints()).toMatch(/\n1 cut checked\n$/);
  });

  test('for a program is one JSON document at the end, without lines for people', () => {
    const { host, reporter: one } = reporter('json');
    report(one, BOTH);
    one.say('1 cut checked');
    expect(host.complaints()).toBe('');
    one.finish();
    const { diagnostics } = JSON.parse(host.complaints()) as { diagnostics: { code: string }[] };
    expect(diagnostics.map(({ code }) => code)).toEqual(BOTH.diagnostics.map(({ code }) => code));
  });

  test('for a pull request is an annotation a line', () => {
    const { host, reporter: one } = reporter('github');
    report(one, BOTH);
    expect(
      host
        .complaints()
        .split('\n')
        .map((line) => line.slice(0, 7))
        .filter(Boolean),
    ).toEqual(['::error', '::warni']);
  });
});

test('colour is shown on a terminal, and never with NO_COLOR', () => {
  const coloured = (colour: boolean, noColour?: string) => {
    const { host } = reporter();
    if (noColour !== undefined) host.variables.set('NO_COLOR', noColour);
    report(new ConsoleReporter(Object.assign(host, { colour }), 'human', false), BOTH);
    return host.complaints().includes('\u001b[');
  };
  expect([coloured(true), coloured(false), coloured(true, '1'), coloured(true, '')]).toEqual([
    true,
    false,
    false,
    true,
  ]);
});
