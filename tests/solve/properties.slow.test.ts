/** What holds for any cut. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from '../../src/language/parse.js';
import { bind } from '../../src/shot/bind-cut.js';
import { defaults } from '../../src/shot/settings.js';
import { solve } from '../../src/solve/solve-shot.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { cutTexts, generatedCuts } from '../generate.js';
import { solveText } from './shown.js';

/** All that is printed or exported, without places in the text. */
function meaning({ shot, levels, counts }: SolvedShot): unknown {
  const told = (key: string, value: unknown) =>
    key === 'span' || key === 'spans' || key.endsWith('Span') || key === 'timeline' ? undefined : value;
  return JSON.parse(JSON.stringify({ shot: { ...shot, settings: null }, levels, counts }, told));
}

function errors(codes: readonly string[]): string[] {
  return codes.filter((code) => code.startsWith('error'));
}

describe('any generated cut', () => {
  test('has no errors, and each level one exposure for each frame', () => {
    fc.assert(
      fc.property(generatedCuts(), ({ text, length, levels }) => {
        const { solved, codes } = solveText(text);
        expect(errors(codes)).toEqual([]);
        expect(solved.shot.length).toBe(length);
        const timed = solved.levels.filter((level) => level.timed);
        expect(timed.map((level) => level.name).sort()).toEqual([...levels].sort());
        for (const { exposures, drawings } of timed) {
          expect(exposures.map((each) => each.frame)).toEqual(Array.from({ length }, (_, i) => i + 1));
          const empty = exposures.filter((each) => each.kind === 'empty').length;
          expect(drawings.reduce((sum, each) => sum + each.exposedFrames, empty)).toBe(length);
        }
      }),
      { numRuns: 80 },
    );
  });

  test('gives each drawing one number and one name, first shown where it says', () => {
    fc.assert(
      fc.property(cutTexts({ words: false }), (text) => {
        for (const { exposures, drawings, lastCel } of solveText(text).solved.levels) {
          expect(new Set(drawings.map((each) => each.cel)).size).toBe(drawings.length);
          expect(new Set(drawings.map((each) => each.drawing)).size).toBe(drawings.length);
          expect(Math.max(0, ...drawings.map((each) => each.cel))).toBe(lastCel);
          for (const { cel, drawing, kind, firstFrame } of drawings) {
            expect(exposures.findIndex((each) => each.drawing === drawing) + 1).toBe(firstFrame);
            expect(exposures[firstFrame - 1]).toMatchObject({ cel, kind, starts: true });
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  test('numbers by sequence 1, 2, 3 … and by frame as first shown', () => {
    fc.assert(
      fc.property(cutTexts({ words: false }), (text) => {
        const { solved } = solveText(text);
        for (const { drawings } of solved.levels) {
          const first = [...drawings].sort((a, b) => a.firstFrame - b.firstFrame);
          expect(drawings).toEqual(first);
          const wanted =
            solved.shot.numbering === 'frame'
              ? first.map((each) => each.firstFrame)
              : first.map((_, i) => i + 1);
          expect(drawings.map((each) => each.cel)).toEqual(wanted);
        }
      }),
      { numRuns: 50 },
    );
  });

  test('pinned as it is numbered, numbers itself the same', () => {
    fc.assert(
      fc.property(cutTexts({ words: false, levels: { max: 2 } }), (text) => {
        const { solved } = solveText(text);
        // Names of a passage's second count cannot be written.
        const nameable = solved.levels.filter(
          (level) => !level.drawings.some((each) => each.drawing.includes('/')),
        );
        const cels = nameable
          .filter((level) => level.drawings.length > 0)
          .map(({ name, drawings, lastCel }) => {
            const line = Array.from({ length: lastCel }, () => '_');
            for (const { cel, drawing } of drawings) line[cel - 1] = drawing;
            return `cels ${name} ${line.join(' ')}`;
          });
        const { solved: pinned, codes } = solveText(`${text}${cels.join('\n')}\n`);
        const counts = codes.filter((code) => code === 'error cels-count');
        // A passage that the end cuts short has in-betweens that were never drawn: those cannot be pinned, and it says so.
        fc.pre(counts.length === 0);
        expect(errors(codes)).toEqual([]);
        expect(pinned.levels.map((level) => level.exposures)).toEqual(
          solved.levels.map((level) => level.exposures),
        );
      }),
      { numRuns: 50 },
    );
  });
});

describe('what changes nothing', () => {
  test('the order of the statements, where the stack is given (memos keep theirs)', () => {
    const shuffled = generatedCuts({ stack: true }).chain((cut) =>
      fc.shuffledSubarray([...cut.statements], { minLength: cut.statements.length }).map((mixed) => {
        const memos = cut.statements.filter((each) => each.startsWith('memo'));
        return { cut, mixed: mixed.map((each) => (each.startsWith('memo') ? memos.shift()! : each)) };
      }),
    );
    fc.assert(
      fc.property(shuffled, ({ cut, mixed }) => {
        expect(meaning(solveText(mixed.join('\n')).solved)).toEqual(meaning(solveText(cut.text).solved));
      }),
      { numRuns: 50 },
    );
  });

  test('phrases instead of groups written out', () => {
    fc.assert(
      fc.property(generatedCuts(), ({ statements, text, phrases }) => {
        const inline = statements
          .filter((each) => !each.startsWith('phrase '))
          .map((each) => {
            if (!/^\p{L}( |:)/u.test(each)) return each;
            return [...phrases].reduce(
              (now, [name, items]) => now.replace(new RegExp(`\\b${name}\\b`, 'g'), `(${items})`),
              each,
            );
          });
        expect(meaning(solveText(inline.join('\n')).solved)).toEqual(meaning(solveText(text).solved));
      }),
      { numRuns: 50 },
    );
  });

  test('phrases in another file that the cut uses', () => {
    fc.assert(
      fc.property(generatedCuts(), ({ statements, text }) => {
        const shared = statements.filter((each) => each.startsWith('phrase '));
        const own = ['use "house.cut"', ...statements.filter((each) => !each.startsWith('phrase '))].join(
          '\n',
        );
        const bound = bind(
          parse('this.cut', own).tree,
          [parse('house.cut', shared.join('\n')).tree],
          defaults,
        );
        expect(meaning(solve(bound.shot!))).toEqual(meaning(solveText(text).solved));
      }),
      { numRuns: 50 },
    );
  });

  test('full-width typing, folding over several lines, comments', () => {
    const wide = (statement: string) =>
      statement
        .split(/("[^"]*"|「[^」]*」)/)
        .map((part, i) =>
          i % 2 === 1
            ? part
            : [...part]
                .map((c) =>
                  c === ' '
                    ? '\n\u3000'
                    : c > ' ' && c <= '~'
                      ? String.fromCharCode(c.charCodeAt(0) + 0xfee0)
                      : c,
                )
                .join(''),
        )
        .join('');
    fc.assert(
      fc.property(generatedCuts(), ({ statements, text }) => {
        const typed = statements.map((each) => `${wide(each)}  # a remark\n\n`).join('');
        expect(meaning(solveText(typed).solved)).toEqual(meaning(solveText(text).solved));
      }),
      { numRuns: 50 },
    );
  });
});

describe('any items at all', () => {
  const atoms = [
    '1',
    '2',
    '3a',
    '-',
    '--',
    '=',
    'x',
    '(',
    ')',
    '*3',
    '..',
    '<>',
    ':4',
    ':0',
    '@9',
    '@hit',
    '1.1',
    '1>2.1',
    'on 1',
    'walk',
    ' ',
    '{late}',
    '{1/2}',
    '*999999999',
    '2:1+0',
    ":1'04",
  ];
  test('never throw, and give as many rows as the sheet has', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...atoms), { maxLength: 25 }),
        fc.nat({ max: 60 }),
        (parts, frames) => {
          const text = `cut 1\ntime ${frames + 1}\nphrase walk = 1--2-\nmark hit 7\ncels A 1 1.1 2\nA: ${parts.join('')}\nB: ${parts.join(' ')}\n`;
          for (const level of solveText(text).solved.levels) {
            if (level.timed) expect(level.exposures).toHaveLength(frames + 1);
          }
        },
      ),
      { numRuns: 600 },
    );
  });
});
