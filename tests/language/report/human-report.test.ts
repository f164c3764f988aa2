import { describe, expect, test } from 'vitest';
import { type Diagnostic, diagnose } from '../../../src/language/diagnostic.js';
import { human } from '../../../src/language/report/human-report.js';
import { displayWidth } from '../../../src/language/source.js';
import { FILE, plain, read } from './read-report.js';

describe('for people', () => {
  test('sentence, place, line, carets and what mends it', () => {
    expect(plain('cut 12\ntime 5 + 0  # short\n')).toBe(
      [
        'Error: Seconds and frames are written with no blanks between: 5+0.',
        'c012.cut:2:6: spaced-number',
        '    time 5 + 0  # short',
        '         ^^^^^',
        '    to mend: leave the blanks out',
        '    time 5+0  # short',
        '',
      ].join('\n'),
    );
  });

  test('of an empty line there is nothing to show', () => {
    expect(plain('cut 12 "Rooftop\n').split('\n').length).toBeGreaterThan(2);
    const span = { file: FILE, start: 0, end: 0 };
    const empty = diagnose('cut-missing', span, 'Which cut is it?');
    expect(human([empty], new Map([[FILE, '\ntime 1+0\n']]), { colour: false, language: 'en' })).toMatch(
      /^Error: .*\nc012\.cut:1:1: cut-missing\n$/,
    );
  });

  test('of a very long line only what stands about the fault is measured', () => {
    for (const filler of ['x', '\t', '\u0301', '屋']) {
      const long = filler.repeat(200_000);
      const text = `${long} fault ${long}`;
      const span = { file: FILE, start: long.length + 1, end: long.length + 6 };
      const fault = diagnose('missing-glyph', span, { character: 'f' });
      const [, , line = '', carets = ''] = human([fault], new Map([[FILE, text]]), {
        colour: false,
        language: 'en',
      }).split('\n');
      expect(line).toContain(' fault ');
      expect(carets.trim()).toBe('^^^^^');
    }
  });

  /** Which columns of the printed line the carets stand under. */
  function underlined(text: string): string {
    const [, , line = '', carets = ''] = plain(text).split('\n');
    const [from, to] = [carets.indexOf('^'), carets.lastIndexOf('^') + 1];
    let at = 0;
    let under = '';
    for (const character of line) {
      if (at >= from && at < to) under += character;
      at += displayWidth(character);
    }
    return under;
  }

  test.each([
    ['A: 1--2 60%', '60%'],
    ['A「ナオ」：１ーー２　60%', '60%'],
    ['A:\t1\t60%\t2', '60%'],
    ['A "か\u3099":\t６０％', '６０％'],
    [`A: ${'1-'.repeat(200)} 60% ${'-2'.repeat(200)}`, '60%'],
    [`A "${'雨'.repeat(90)}": 60% ${'-2'.repeat(200)}`, '60%'],
    [`A "${'雨'.repeat(91)}\t": 60%`, '60%'],
  ])('carets stand under the fault: %s', (text, expected) => {
    expect(underlined(text)).toBe(expected);
  });

  test('at the end of a line one caret stands behind it', () => {
    const [, , line, carets] = plain('time').split('\n');
    expect(line).toBe('    time');
    expect(carets).toBe('        ^');
  });

  test('no line is longer than a hundred columns and its indent', () => {
    for (const text of [
      `A: ${'1-'.repeat(300)} ?`,
      `A: "${'雨'.repeat(300)}"`,
      `memo ${'ア'.repeat(150)} ?`,
    ]) {
      for (const line of plain(text).split('\n').slice(2))
        expect(displayWidth(line)).toBeLessThanOrEqual(104);
    }
  });

  test('characters of control are not printed', () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    expect(plain('memo "a\u0007\u001b[31mb"')).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
  });

  test('colour only when asked for', () => {
    const { all, sources } = read('tmie 5');
    expect(human(all, sources, { colour: false, language: 'en' })).not.toContain('\u001b');
    expect(human(all, sources, { colour: true, language: 'en' })).toContain('\u001b[');
  });

  test('a file without text is named alone', () => {
    const missing: Diagnostic = {
      code: 'unknown-word',
      severity: 'warning',
      span: { file: 'gone.cut', start: 0, end: 0 },
      parameters: { found: 'gone', guess: null },
      notes: [{ note: 'stands-here', span: { file: FILE, start: 4, end: 5 } }],
    };
    expect(human([missing], new Map([[FILE, 'cut 1\n']]), { colour: false, language: 'en' })).toBe(
      'Warning: `gone` is no word of the language.\ngone.cut: unknown-word\n    note: c012.cut:1:5: it stands here\n',
    );
  });

  test('columns count the text after a byte-order mark', () => {
    expect(plain('\ufefftime 5 + 0')).toContain('c012.cut:1:6:');
  });

  test('nothing to say is nothing printed', () => {
    expect(plain('cut 1')).toBe('');
  });
});
