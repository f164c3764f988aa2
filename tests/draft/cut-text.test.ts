import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CutText, cutText } from '../../src/draft/cut-text.js';
import { type ExposureRun, notationOf, type TableLevel } from '../../src/draft/exposure-runs.js';
import { defaults } from '../../src/shot/settings.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { compileFiles, compileText, said } from '../compile.js';
import { generatedCuts } from '../generate.js';

/** What the table of a cut says, from its exposures alone. */
function drawn({ levels }: SolvedShot): TableLevel[] {
  return levels
    .filter(({ timed }) => timed)
    .map(({ name, exposures }) => {
      const runs: ExposureRun[] = [];
      const cels = new Map<string, number>();
      for (const { drawing, kind, cel, starts } of exposures) {
        if (drawing !== null) cels.set(drawing, cel!);
        if (starts) runs.push({ drawing, kind, frames: 1 });
        else runs.push({ ...runs.at(-1)!, frames: runs.pop()!.frames + 1 });
      }
      return { name, runs, cels };
    });
}

const rows = ({ levels }: SolvedShot) =>
  levels
    .filter(({ timed }) => timed)
    .map(({ name, exposures }) => ({
      name,
      rows: exposures.map(({ drawing, kind, cel }) => `${drawing} ${kind} ${cel}`),
    }));

function again(
  solved: SolvedShot,
): CutText & { readonly solved: SolvedShot | null; readonly said: string[] } {
  const { shot } = solved;
  const settings = { ...defaults, fps: shot.fps };
  const made = cutText({ cut: '1', title: '', levels: drawn(solved) }, settings);
  const text = shot.fps === 24 ? made.text : made.text.replace(/^cut.*/, `$&\nfps ${shot.fps}`);
  const { solved: back, diagnostics } = compileText(text);
  return { ...made, solved: back, said: said(diagnostics) };
}

/** The items of a text's first level, after a round trip. */
function items(timeline: string, time: string, more = ''): string {
  const { solved, diagnostics } = compileText(`cut 1\ntime ${time}\n${more}A: ${timeline}\n`);
  expect(said(diagnostics).filter((one) => one.startsWith('error'))).toEqual([]);
  const { text, unlike } = again(solved!);
  expect(unlike).toEqual([]);
  return text
    .split('\n')
    .filter((line) => !/^(cut|time) /.test(line) && line !== '')
    .join('\n');
}

describe('what was typed comes back', () => {
  test.each([
    ['1:12 1--2-3:1+0 (4-5-)*3 6..', '5+0', 'A: 1:14--2-3:1+0 (4-5-)*3 6..'],
    ['x:24 (1--2--)..', '5+0', 'A: x:1+0 (1--2--)..'],
    ['1--2:8 (3=4-)*3 x..', '2+0', 'A: 1--2:8 (3=4-)*3 x..'],
    ['1--(2-3--) x..', '2+0', 'A: 1--2-(3--) x..'],
    ['(1--2)<>*2 3..', '2+0', 'A: (1--2)<>*2 3..'],
    ['(1--2--3)<>..', '3+0', 'A: (1--2--3)<>..'],
    ['on 3 (1-2-)..', '2+0', 'A: on 3 (1-2-)..'],
    ['((1 2)*3 3-4)*2 5..', '2+0', 'A: ((1 2)*3 3-4)*2 5..'],
    ['1-2:4 1.1 1:4 2..', '1+0', 'A: 1-2:4 1.1 1:4 2..'],
    ['1 on 1 2---3---4---5 on 2 6--7--8..', '2+0', 'A: 1 on 1 2---3---4---5 on 2 6--7--8..'],
  ])('%s', (typed, time, back) => {
    expect(items(typed, time)).toBe(back);
  });

  test('pinned numbers as a cels line, numbers by frame as a word', () => {
    expect(items('1---2..', '1+0', 'cels A 1 1.1 1.2 2 1.1a\n')).toBe(
      'A: 1---2..\ncels A 1 1>2.1 1>2.2 2 1>2.1a',
    );
    expect(items('1--2..', '1+0', 'numbering frame\n')).toBe('numbering frame\nA: 1--2..');
  });

  test('a cycle that several levels play is a phrase', () => {
    const { solved } = compileText(
      'cut 1\ntime 5+0\nphrase walk = 1--2--3--4--5--6--\nA: walk..\nB: x:1+0 walk*2 7..\n',
    );
    expect(again(solved!).text).toBe(
      'cut 1\ntime 5+0\n\nphrase cycle1 = 1--2--3--4--5--6--\n\nA: cycle1..\nB: x:1+0 cycle1*2 7..\n',
    );
  });
});

describe('every exposure and number comes back', () => {
  test('of the examples and of the small cuts', async () => {
    const small = readdirSync('tests/cuts', { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.cut'))
      .map((file) => compileText(readFileSync(`tests/cuts/${file}`, 'utf8')).solved!);
    const examples = [...(await compileFiles('examples/saltmarsh', 'examples/west')).values()];
    const all = [...small, ...examples.flatMap(({ solved }) => solved ?? [])].filter(({ levels }) =>
      levels.some(({ timed }) => timed),
    );
    expect(all.length).toBeGreaterThan(30);
    for (const solved of all) {
      const back = again(solved);
      expect({ unlike: back.unlike, rows: back.solved && rows(back.solved) }, back.text + back.said).toEqual({
        unlike: [],
        rows: rows(solved),
      });
    }
  });

  test('of random cuts', () => {
    let told = 0;
    let levels = 0;
    fc.assert(
      fc.property(generatedCuts({ phrases: true }), ({ text }) => {
        const { solved } = compileText(text);
        const back = again(solved!);
        // Where a group is cut in its first pass, a passage stands nowhere as a whole: the level comes back, or is named.
        const whole = new Set(
          drawn(solved!).flatMap(({ name, runs }) => (notationOf(runs).whole ? [name] : [])),
        );
        expect(back.unlike.filter((name) => whole.has(name))).toEqual([]);
        // A name says where it leads only while it must: what no frame shows does not come back.
        const short = (one: SolvedShot | null) =>
          one &&
          rows(one).flatMap((level) =>
            back.unlike.includes(level.name)
              ? []
              : [{ ...level, rows: level.rows.map((row) => row.replace(/>\w+(?=\.)|\/\d+/g, '')) }],
          );
        expect(short(back.solved), back.text + back.said).toEqual(short(solved!));
        told += back.unlike.length;
        levels += back.solved!.levels.length;
      }),
      { numRuns: 60 },
    );
    expect(told / levels).toBeLessThan(0.1);
  });
});
