import { describe, expect, test } from 'vitest';
import { diagnose } from '../../src/language/diagnostic.js';
import { problemsOf } from '../../src/preview/shown-cut.js';
import { compileText } from '../compile.js';

const problems = (text: string) => {
  const { diagnostics, sources } = compileText(text);
  return problemsOf(diagnostics, sources, 'en');
};

describe('a problem', () => {
  test('has its place, its sentence, and what would mend it', () => {
    const [one, ...more] = problems('cut 1\ntime 1+0\nA: 1:12 2\n');
    expect(more).toEqual([]);
    expect(one).toMatchObject({
      severity: 'error',
      code: 'timeline-short',
      message: expect.stringMatching(/^Level A shows \d+ of 24 frames/),
      fix: 'hold it until there',
      file: 'this.cut',
      line: 3,
      column: 9,
    });
  });

  test('is shown with two lines before and after it', () => {
    const [one] = problems('cut 1\ntime 1+0\n# a\n# b\nA: 1:12 2\n# c\n# d\n# e\n');
    expect(one!.excerpt).toEqual([
      { line: 3, text: '# a' },
      { line: 4, text: '# b' },
      { line: 5, text: 'A: 1:12 2' },
      { line: 6, text: '# c' },
      { line: 7, text: '# d' },
    ]);
  });

  test('at an end of the text has as many lines as there are', () => {
    expect(problems('A: 1..\nzzz')[0]!.excerpt.map(({ line }) => line)).toEqual([1, 2]);
  });

  test('behind a tab has the column where it is shown', () => {
    const [one] = problems('cut 1\ntime 1+0\nA:\t1:12 2\n');
    const { text } = one!.excerpt.at(-2)!;
    expect([text.includes('\t'), one!.column]).toEqual([false, text.lastIndexOf('2') + 1]);
  });

  test('of a long line is shown with its first 400 characters', () => {
    const [one] = problems(`zzz ${'x'.repeat(500)}\n`);
    expect(one!.excerpt[0]!.text).toHaveLength(400);
  });
});

test('a problem of a file whose text is not known has no place in it', () => {
  const fault = diagnose('internal-fault', { file: 'a.cut', start: 5, end: 6 }, { onCut: true, error: 'x' });
  expect(problemsOf([fault], new Map(), 'en')[0]).toMatchObject({
    file: 'a.cut',
    line: null,
    column: null,
    excerpt: [],
  });
});

test('no more than a hundred are shown', () => {
  const fault = diagnose('internal-fault', { file: 'a.cut', start: 5, end: 6 }, { onCut: true, error: 'x' });
  expect(problemsOf(Array(101).fill(fault), new Map(), 'en')).toHaveLength(100);
});
