import { describe, expect, test } from 'vitest';
import { BuildSummary, cutName, errorsOf } from '../../src/build/build-summary.js';
import type { PrintPlan } from '../../src/build/print-plan.js';
import type { Reporter } from '../../src/build/reporter.js';
import { UsageError } from '../../src/build/usage-error.js';
import type { Compiled } from '../../src/episode/compile-cut.js';
import { noEpisode } from '../../src/episode/episode.js';
import type { Found, Job } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { messageOf, runTexts } from '../../src/language/message.js';
import { compileText } from '../compile.js';

const PLAN: PrintPlan = {
  output: undefined,
  strict: false,
  settings: {},
  selection: {},
  against: { kind: 'nothing' },
  changedPagesOnly: false,
  pages: null,
  oneFile: false,
  coversAPage: null,
  markedAgainst: null,
  threads: null,
};
const job = (name: string): Job => ({ path: `/work/${name}`, name, episode: noEpisode, named: true });
const target = (name: string) => ({ path: `/work/${name}`, name });

/** What is said of `count` cuts, line by line, and the sentences of what is reported. */
function summary(count: number, gather: (summary: BuildSummary, jobs: readonly Job[]) => void, plan = PLAN) {
  const jobs = Array.from({ length: count }, (_, i) => job(`c${i + 1}.cut`));
  const found: Found = { jobs, episodes: [], whole: [], diagnostics: [] };
  const all = new BuildSummary(found);
  gather(all, jobs);
  const lines: string[] = [];
  const reporter: Reporter = {
    words: runTexts('en'),
    report: (diagnostics) => void lines.push(...diagnostics.map((one) => messageOf(one, 'en'))),
    say: (line) => void lines.push(line),
    tally: () => '',
    finish: () => 0,
  };
  all.report(reporter, memoryHost(), plan);
  return lines;
}

describe('what was written', () => {
  test('is one file with its pages', () => {
    expect(
      summary(1, (all, [one]) => {
        all.addFile(target('c1.pdf'), 3);
        all.setResult(one!, 'printed');
      }),
    ).toEqual(['wrote c1.pdf: 3 pages']);
  });

  test('is many files with the folder that they share, if they do', () => {
    const files = (...names: readonly string[]) =>
      summary(names.length, (all, jobs) => {
        for (const [i, name] of names.entries()) {
          all.addFile(target(name), 2);
          all.setResult(jobs[i]!, 'printed');
        }
      });
    expect(files('out/a.pdf', 'out/b.pdf')).toEqual(['wrote 2 files, 4 pages, in out']);
    expect(files('a/a.pdf', 'b/b.pdf')).toEqual(['wrote 2 files, 4 pages']);
  });

  test('may be standard output', () => {
    expect(
      summary(1, (all, [one]) => {
        all.addFile({ path: null, name: 'standard output' }, 1);
        all.setResult(one!, 'printed');
      }),
    ).toEqual(['wrote 1 page to standard output']);
  });
});

describe('cuts that were not printed', () => {
  test('are named with the reason, up to twelve of them', () => {
    const failed = (count: number) =>
      summary(count, (all, jobs) => {
        for (const [i, one] of jobs.entries()) all.setFailed(one, `cut ${i + 1}`, '1 error');
      });
    expect(failed(2)).toEqual(['not printed: cut 1 (1 error), cut 2 (1 error)']);
    expect(failed(12)[0]).toMatch(/cut 12 \(1 error\)$/);
    expect(failed(14)[0]).toMatch(/cut 12 \(1 error\) and 2 more$/);
  });

  test('of which nothing was said fell to a fault of the program', () => {
    expect(summary(1, () => {})).toEqual(['not printed: c1.cut (fault of the program)']);
  });

  test('have the last word that was said of them', () => {
    expect(
      summary(1, (all, [one]) => {
        all.setFailed(one!, 'cut 1', 'fault of the program');
        all.setResult(one!, 'same');
        expect(all.unchanged(one!)).toBe(true);
      }),
    ).toEqual(['1 cut unchanged']);
  });

  test('as they are unchanged say since when', () => {
    const plan: PrintPlan = { ...PLAN, against: { kind: 'revision', rev: 'HEAD~1' } };
    expect(summary(2, (all, jobs) => jobs.forEach((one) => void all.setResult(one, 'same')), plan)).toEqual([
      '2 cuts unchanged since HEAD~1',
    ]);
  });
});

describe('a part or a range without a page', () => {
  const empty = (all: BuildSummary, jobs: readonly Job[]) =>
    jobs.forEach((one) => void all.setResult(one, 'empty'));
  const camera: PrintPlan = { ...PLAN, selection: { only: 'camera' } };

  test('of every cut is wrong use, at the word that was typed', () => {
    const faultOf = (count: number, plan: PrintPlan): unknown => {
      try {
        return summary(count, empty, plan);
      } catch (fault) {
        expect(fault).toBeInstanceOf(UsageError);
        return fault;
      }
    };
    const pages: PrintPlan = { ...PLAN, pages: { range: '9-', includes: () => false } };
    expect(faultOf(2, camera)).toMatchObject({
      ...{ code: 'option-value', word: 'camera' },
      parameters: { variant: 'part-empty', part: 'camera', cuts: 2 },
    });
    expect(faultOf(1, pages)).toMatchObject({
      ...{ code: 'option-value', word: '9-' },
      parameters: { variant: 'pages-empty', pages: '9-', cuts: 1 },
    });
  });

  test('of some cuts is said', () => {
    expect(
      summary(
        2,
        (all, [one, other]) => {
          all.addFile(target('c1.pdf'), 1);
          all.setResult(one!, 'printed');
          all.setResult(other!, 'empty');
        },
        camera,
      ),
    ).toEqual(['wrote c1.pdf: 1 page', 'No camera work, so no camera chart, in 1 cut.']);
  });
});

test('lines come first, in the order in which they were said', () => {
  expect(
    summary(1, (all, [one]) => {
      all.addLine('cut 1: page 2 of 4');
      all.addLine('cut 9: no cut of the episode any more');
      all.setResult(one!, 'same');
    }),
  ).toEqual(['cut 1: page 2 of 4', 'cut 9: no cut of the episode any more', '1 cut unchanged']);
});

test('only shared files are no cuts to print', () => {
  const shared = (all: BuildSummary, [one]: readonly Job[]) => void all.setResult(one!, 'shared');
  expect(summary(1, shared)).toEqual([
    'This file only holds what other cuts use; there is nothing to print.',
  ]);
});

describe('a cut in the summary', () => {
  test('is called by its number, or by its file', () => {
    expect(cutName({ cut: '012' }, job('a.cut'), runTexts('en'))).toBe('cut 012');
    expect(cutName({ cut: null }, job('a.cut'), runTexts('en'))).toBe('a.cut');
  });

  test('has its errors counted; with warnings only where they count as errors', () => {
    const errors = (text: string, strict = false) =>
      errorsOf(compileText(text), job('this.cut'), strict, runTexts('en'));
    expect(errors('cut 1\ntime 1+0\nA: 1\nB: 2\n')).toBe('2 errors');
    expect(errors('cut 1\ntime 1+0\nA: 1..\nB: x..\n', true)).toBe('1 warning');
    // A field that is scanned too small is a hint only.
    expect(errors('cut 1\ntime 1+0\nfield A 60%\nfix A\nA: 1..\nB: x..\n', true)).toBe('1 warning');
    expect(errors('cut 1\ntime 1+0\nA: 1..\nB: x..\n')).toBe('nothing to print');
  });

  test('with errors of its manifest alone sends there', () => {
    const episode = { ...noEpisode, file: 'episode.yaml' };
    const { diagnostics } = compileText('cut 1\ntime 1+0\nA: 1\n');
    const moved = diagnostics.map((one) => ({ ...one, span: { ...one.span, file: 'episode.yaml' } }));
    const compiled = { diagnostics: moved } as unknown as Compiled;
    for (const strict of [false, true])
      expect(errorsOf(compiled, { ...job('a.cut'), episode }, strict, runTexts('en'))).toBe(
        'see episode.yaml',
      );
  });
});
