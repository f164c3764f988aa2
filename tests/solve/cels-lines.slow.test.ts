/** Pinned numbers, on random cuts. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unpinnable } from '../../src/solve/cels-lines.js';
import type { SolvedLevel } from '../../src/solve/solved-shot.js';
import { compileText, said } from '../compile.js';
import { generatedCuts } from '../generate.js';
import { pin } from './pin.js';

/** A timeline's name and title, up to its first item. */
const HEADING = /^(\S+(?: ["「][^"」]*["」])?:) /;
/** Put in at the beginning of a timeline, and how many frames that is: a key, or two keys and their in-between. */
const RETIMES = [
  { items: '901:3', frames: 3 },
  { items: '902-903 x:2', frames: 8 },
  { items: '1-904 x:2', frames: 8 },
];

describe('over random cuts', () => {
  const cuts = generatedCuts({ levels: { min: 1, max: 3 }, pieces: 5 });
  const all = (text: string) => {
    const { solved, diagnostics } = compileText(text);
    const errors = diagnostics.filter(({ severity }) => severity === 'error');
    return { solved: solved!, errors };
  };
  const numbers = (levels: readonly SolvedLevel[]) =>
    levels.map(({ name, drawings }) => [
      name,
      drawings.map(({ cel, drawing, kind, firstFrame, exposedFrames }) => [
        cel,
        drawing,
        kind,
        firstFrame,
        exposedFrames,
      ]),
    ]);

  test('pinning changes no number, name or frame, and pinning again nothing at all', () => {
    let pinnedOnes = 0;
    fc.assert(
      fc.property(cuts, ({ text }) => {
        const before = all(text).solved;
        if (before.levels.some(unpinnable)) return;
        pinnedOnes++;
        const after = pin(text);
        const { solved, errors } = all(after);
        expect(said(errors)).toEqual([]);
        expect(numbers(solved.levels)).toEqual(numbers(before.levels));
        expect(solved.levels.flatMap(({ drawings }) => drawings.filter(({ added }) => added))).toEqual([]);
        expect(pin(after)).toBe(after);
      }),
      { numRuns: 40 },
    );
    expect(pinnedOnes).toBeGreaterThan(20);
  });

  test('after a retime every drawing that existed has its number, and the rest of the text its bytes', () => {
    let retimed = 0;
    fc.assert(
      fc.property(cuts, fc.nat(), fc.nat(), ({ text, length }, which, how) => {
        const before = all(text).solved;
        if (before.levels.some(unpinnable)) return;
        const paper = pin(text);
        const { items, frames } = RETIMES[how % RETIMES.length]!;
        let timelines = paper.split('\n').filter((line) => HEADING.test(line)).length;
        const chosen = which % timelines;
        const longer = paper
          .replace(/^time .*$/m, `time ${length + frames}`)
          .split('\n')
          .map((line) => {
            if (!HEADING.test(line)) return line;
            if (--timelines === chosen) return line.replace(HEADING, `$1 ${items} `);
            return `${line.replace(/:\d+$/, '').replace(/\.\.$/, '')}..`;
          })
          .join('\n');
        const { solved, errors } = all(longer);
        // A place that is given by its frame may now come too early: then nothing is written at all.
        if (errors.length > 0 || solved.levels.some(unpinnable)) return;
        retimed++;
        const after = pin(longer);
        const now = all(after);
        expect(said(now.errors)).toEqual([]);
        for (const level of before.levels) {
          const here = now.solved.levels.find(({ name }) => name === level.name)!;
          const short = (name: string) => name.replace(/>.*\./, '.');
          const numbered = new Map(
            [...here.drawings, ...here.missing].map(({ cel, drawing }) => [cel, short(drawing)]),
          );
          for (const { cel, drawing } of level.drawings)
            expect([cel, numbered.get(cel)]).toEqual([cel, short(drawing)]);
          const places = (of: SolvedLevel) =>
            of.passages.flatMap(({ from, to, drawings: names }) =>
              of.drawings
                .filter(
                  ({ cel, drawing }) =>
                    names.includes(drawing) && level.drawings.some((each) => each.cel === cel),
                )
                .map(
                  ({ cel, drawing }) => `${cel} ${from}>${to} ${names.indexOf(drawing)} of ${names.length}`,
                ),
            );
          // What is still shown lies where it lay.
          expect(places(level)).toEqual(expect.arrayContaining(places(here)));
          expect(here.drawings.filter(({ added }) => added)).toEqual([]);
        }
        // Names and line folds added to `cels` lines, and nothing else.
        const rest = (whole: string) => whole.split('\n').filter((one) => !/^cels |^ {7}/.test(one));
        expect(rest(after)).toEqual(rest(longer));
      }),
      { numRuns: 80 },
    );
    expect(retimed).toBeGreaterThan(20);
  });
});
