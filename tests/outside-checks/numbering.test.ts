/** Finished numbers, against how the trade numbers drawings. */

import { describe, expect, test } from 'vitest';
import { shown } from '../solve/shown.js';

describe('numbers of finished drawings', () => {
  test('a drawing added later to A1 … A20 is A21, wherever it stands', () => {
    // Source: listeningside a_side03.
    const names = Array.from({ length: 5 }, (_, key) => [
      `${key + 1}`,
      ...[1, 2, 3].map((i) => `${key + 1}.${i}`),
    ]).flat();
    expect(names).toHaveLength(20);
    const cels = `cels A ${names.join(' ')}`;
    const last = shown(96, '1---2---3---4---5--- 1 6..', cels);
    expect(last.level.drawings.filter((each) => each.added)).toMatchObject([{ drawing: '6', cel: 21 }]);
    const inside = shown(96, '6:8 x:2 1---2---3---4---5--- 1..', cels);
    expect(inside.level.drawings.filter((each) => each.added)).toMatchObject([
      { drawing: '6', cel: 21, firstFrame: 1 },
    ]);
  });

  test('are integers from 1, in the order in which they are first shown', () => {
    // Source: listeningside a_side03.
    expect(shown(24, '1--2-3..').cels).toBe('1*2 2*2 3*2 4*2 5*2 6*14');
  });

  test('in the West, on twos: odd numbers, and an even one is an added drawing', () => {
    // Sources: messyoptics hints; an excerpt attributed to The Animator's Survival Kit.
    const { level } = shown(24, '1--2--3..', 'numbering frame');
    expect(level.drawings.map((each) => each.cel)).toEqual([1, 3, 5, 7, 9, 11, 13]);
    const ones = shown(24, '1 on 1 -- on 2 2..', 'numbering frame');
    expect(ones.level.drawings.map((each) => each.cel)).toEqual([1, 3, 4, 5]);
  });

  test('a number that is no longer used is named', () => {
    // Source: animationpost.co.uk doping pages.
    const { level } = shown(24, '1--2..', 'cels A 1 1.1 1.2 3 2');
    expect(level.missing).toEqual([{ cel: 4, drawing: '3' }]);
    expect(level.drawings.map((each) => each.cel)).toEqual([1, 2, 3, 5]);
  });

  test('a cycle is written out in full with the same numbers', () => {
    // Source: ameblo lapislazuli2019.
    expect(shown(16, '(1-2-)..').cels).toBe('1*2 2*2 3*2 4*2 1*2 2*2 3*2 4*2');
  });
});
