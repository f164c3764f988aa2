/** Which drawing an in-between is, and what references mean. */

import { describe, expect, test } from 'vitest';
import { explained } from '../explained.js';
import { shown } from './shown.js';

describe('an in-between belongs to its passage', () => {
  test('the same two keys with as many in-betweens are the same drawings', () => {
    const { runs, level } = shown(20, '1--2 x:4 1--2');
    expect(runs).toBe('1*2 1.1*2 1.2*2 2*2 x*4 1*2 1.1*2 1.2*2 2*2');
    expect(level.drawings).toHaveLength(4);
  });

  test('also in other exposure, and with an @ between', () => {
    expect(shown(24, '1--2 x:4 on 1 1- @20 -2..').level.drawings).toHaveLength(4);
  });

  test('the way back is another passage, and a hint offers the old drawings', () => {
    const { level, codes, diagnostics } = shown(14, '1--2--1');
    expect(level.drawings.map((each) => each.drawing)).toEqual(['1', '1.1', '1.2', '2', '2.1', '2.2']);
    expect(codes).toEqual(['hint way-back']);
    expect(diagnostics[0]!.fix!.edits.map((edit) => edit.text)).toEqual([' 1.2 ', ' 1.1 ']);
  });

  test('no edit is offered where the new drawings are shown by themselves elsewhere', () => {
    const { diagnostics } = shown(24, '1--2--1 2.1..');
    expect(diagnostics.map((each) => [each.code, each.fix])).toEqual([['way-back', undefined]]);
  });

  test('a cycle of two keys gives no such hint', () => {
    expect(shown(24, '(1--2--)..').codes).toEqual([]);
  });

  test('different counts are other drawings, with a warning', () => {
    const { level, codes } = shown(16, '1--2 x:2 1-2');
    expect(codes).toEqual(['warning two-counts']);
    expect(level.drawings.map((each) => each.drawing)).toEqual(['1', '1>2.1', '1>2.2', '2', '1>2.1/1']);
  });

  test('a breakdown needs its mark once', () => {
    const { level } = shown(24, '1-=-2 x:4 1---2');
    expect(level.exposures[4]!.kind).toBe('breakdown');
    expect(level.exposures[18]!).toMatchObject({ kind: 'breakdown', drawing: '1.2' });
    expect(shown(24, '1---2 x:4 1-=-2').level.exposures[4]!.kind).toBe('breakdown');
  });

  test('a reference is seen through', () => {
    const { runs, codes } = shown(14, '1--1.1-2:4');
    expect(runs).toBe('1*2 1.1*2 1.2*2 1.1*2 1.3*2 2*4');
    expect(codes).toEqual([]);
  });
});

describe('in a cycle', () => {
  test('what stands behind the last key leads to the first key of the group', () => {
    expect(shown(26, '(1-2-)*3 3').level.drawings.map((each) => each.drawing)).toEqual([
      '1',
      '1.1',
      '2',
      '2.1',
      '3',
    ]);
  });

  test('also in a shortened last pass', () => {
    expect(shown(20, '(1-2--)..').runs).toBe("1*2 1.1*2 2*2 2.1*2 2.2*2 1'*2 1.1'*2 2'*2 2.1'*2 2.2'*2");
    expect(shown(20, '(1-2--):18 3').runs).toBe("1*2 1.1*2 2*2 2.1*2 2.2*2 1'*2 1.1'*2 2'*2 2.1'*2 3*2");
  });

  test('in-betweens before it lead to its first key', () => {
    expect(shown(14, '1--(2-3-)*1').runs).toBe('1*2 1.1*2 1.2*2 2*2 2.1*2 3*2 3.1*2');
  });

  test('a nested group leads to its own first key, the outer one to its', () => {
    expect(shown(28, '((1-2-)*1 3-)*2 4:4').level.drawings.map((each) => each.drawing)).toEqual([
      '1',
      '1.1',
      '2',
      '2.1',
      '3',
      '3.1',
      '4',
    ]);
    expect(shown(28, '((1-2-)*1 3-)*2 4:4').level.passages.map(({ from, to }) => `${from}>${to}`)).toEqual([
      '1>2',
      '2>1',
      '3>1',
    ]);
  });

  test('a key alone leads to itself', () => {
    expect(shown(12, '(1--)*2').level.passages).toMatchObject([
      { from: '1', to: '1', drawings: ['1.1', '1.2'] },
    ]);
  });
});

describe('where no passage can be', () => {
  const cases: [string, string, string][] = [
    ['nothing before it', '-1..', 'between-from'],
    ['nothing after it', '1--', 'between-to'],
    ['an empty level before it', '1 x - 2..', 'between-from'],
    ['an empty level after it', '1 - x 2..', 'between-to'],
    ['a group that ended in one before it', '(1-2-)*1 - 3..', 'between-from'],
    ['a group cut short before it', '(1-2-):6 - 3..', 'between-from'],
    ['an open group cut short before it', '(1-2-).. @7 - 3..', 'between-from'],
    ['a way there and back before it', '(1-2)<> - 3..', 'between-from'],
    ['a group that begins with an empty level after it', '1-(x 2)*2 3..', 'between-to'],
    ['a group without a key at its beginning', '(x 1-)*2 2..', 'between-to'],
    ['a group that begins with it', '1 (-2)*2 3..', 'group-begins-between'],
  ];
  test.each(cases)('%s: %s', (_, items, code) => {
    expect(shown(48, items).codes.filter((each) => each.startsWith('error'))).toContain(`error ${code}`);
  });

  test('a stretch of them is said once', () => {
    expect(shown(24, '----1..').codes).toEqual(['error between-from']);
  });

  test('after a group whose last pass is whole, one may follow its last key', () => {
    expect(shown(16, '(1-2):12 -3').codes).toEqual([]);
    expect(shown(16, '(1-2).. @13 -3').codes).toEqual([]);
    expect(shown(16, '(1-2)*2 -3').runs).toBe("1*2 1.1*2 2*2 1'*2 1.1'*2 2'*2 2.1*2 3*2");
  });

  test('there and back needs keys at its ends', () => {
    expect(shown(24, '(1--2--)<>..').codes).toEqual(['error bounce-ends']);
    expect(shown(24, '(1.1 1--2)<>..').codes).toEqual(['error bounce-ends']);
  });
});

describe('what is said of in-betweens, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'different counts between two keys',
      'time 1+0\nA: 1--2 x:2 1-2..',
      [
        'warning «-» From key 1 to key 2 there is 1 in-between here and 2 in-betweens before; they are other drawings.',
        ' + «-» 2 in-betweens here',
      ],
    ],
    [
      'one with nothing before it',
      'time 1+0\nA: -1..',
      ['error «-» This in-between has no key to come from: there is no key before it.'],
    ],
    [
      'several with nothing before them',
      'time 1+0\nA: ---1 x -2..',
      [
        'error «-» This in-between has no key to come from: there is no key before it.',
        'error «-» This in-between has no key to come from: the level is empty before it, and a passage never crosses `x`.',
      ],
    ],
    [
      'one with nothing after it',
      'time 1+0\nA: 1--',
      [
        'error «-» This in-between has no key to lead to: there is no key after it.',
        'error «-» Level A shows 6 of 24 frames: 18 frames missing, from frame 7 on.',
        ' > hold it until there: «» → «..»',
      ],
    ],
    [
      'one after an empty level',
      'time 1+0\nA: 1 x -2..',
      [
        'error «-» This in-between has no key to come from: the level is empty before it, and a passage never crosses `x`.',
      ],
    ],
    [
      'one before an empty level',
      'time 1+0\nA: 1- x 2..',
      [
        'error «-» This in-between has no key to lead to: the level is empty after it, and a passage never crosses `x`.',
      ],
    ],
    [
      'one after a group that ends in one',
      'time 1+0\nA: (1-2-)*1 -3..',
      [
        'error «-» This in-between has no key to come from: the group before it ends in an in-between; write a key first.',
      ],
    ],
    [
      'one after a group that ends empty',
      'time 1+0\nA: (1-2 x)*1 -3..',
      [
        'error «-» This in-between has no key to come from: the level is empty before it, and a passage never crosses `x`.',
      ],
    ],
    [
      'one after a group cut short',
      'time 1+0\nA: (1-2-):6 -3..',
      [
        'error «-» This in-between has no key to come from: the last pass of the group before it is cut short; write a key first.',
      ],
    ],
    [
      'one after a group within a group cut short',
      'time 1+0\nA: ((1-2):3 ) -3..',
      [
        'warning «2» Key 2 of level A would come after the end, and is never seen.',
        'error «-» This in-between has no key to come from: the last pass of the group before it is cut short; write a key first.',
      ],
    ],
    [
      'one before a group that begins empty',
      'time 1+0\nA: 1-(x 2) 3..',
      [
        'error «-» This in-between has no key to lead to: the group after it begins with `x`, and a passage never crosses that.',
      ],
    ],
    [
      'one before a group that begins with one',
      'time 1+0\nA: 1-(-2) 3..',
      [
        'error «-» This in-between has no key to lead to: the group after it begins with an in-between.',
        'error «(-2)» A group cannot begin with an in-between; begin it with the key that it leads to, or put the in-between before it.',
      ],
    ],
    [
      'a group that begins with one',
      'time 1+0\nA: 1 (-2)*2 3..',
      [
        'error «(-2)*2» A group cannot begin with an in-between; begin it with the key that it leads to, or put the in-between before it.',
      ],
    ],
    [
      'a group within a group that begins with one',
      'time 1+0\nA: 1 ((-2) 3)*2 4..',
      [
        'error «((-2) 3)*2» A group cannot begin with an in-between; begin it with the key that it leads to, or put the in-between before it.',
        'error «(-2)» A group cannot begin with an in-between; begin it with the key that it leads to, or put the in-between before it.',
      ],
    ],
    [
      'one at the end of a group that begins empty',
      'time 1+0\nA: (x 1-)*2 2..',
      [
        'error «-» This in-between has no key to lead to: its group does not begin with a key that it could lead back to.',
      ],
    ],
    ['one at the end of a group that begins with a reference', 'time 1+0\nA: 1-2 (1.1 2-)*2 3..', []],
    ['a group of references is passed through', 'time 1+0\nA: 1-2-(1.1)-3..', []],
    [
      'there and back from an in-between',
      'time 1+0\nA: (1--2--)<>..',
      [
        'error «(1--2--)<>..» What goes there and back begins and ends with a key, so that it can turn round on it.',
      ],
    ],
    [
      'there and back from a reference',
      'time 1+0\nA: (1.1 1--2)<>..',
      [
        'error «(1.1 1--2)<>..» What goes there and back begins and ends with a key, so that it can turn round on it.',
      ],
    ],
    [
      'one after there and back',
      'time 1+0\nA: (1-2)<> -3..',
      [
        'error «-» This in-between has no key to come from: the group before it ends in an in-between; write a key first.',
      ],
    ],
    ['one after there and back of keys', 'time 1+0\nA: (1 2)<> -3..', []],
    ['one after there and back three times', 'time 1+0\nA: (1 2)<>*3 -3..', []],
    [
      'one after there and back of an empty level',
      'time 1+0\nA: (1 x 2)<>*1 -3..',
      [
        'error «-» This in-between has no key to come from: the level is empty before it, and a passage never crosses `x`.',
      ],
    ],
    [
      'a chart with no in-betweens',
      'time 1+0\nA: 1{late} 2..',
      [
        'warning «{late}» No in-betweens follow key 1 here, so this chart of level A spaces nothing.',
        ' > take it out: «{late}» → « »',
      ],
    ],
    [
      'a chart before a length',
      'time 1+0\nA: 1{late}:4 2..',
      [
        'warning «{late}» No in-betweens follow key 1 here, so this chart of level A spaces nothing.',
        ' > take it out: «{late}» → «»',
      ],
    ],
    ['a chart that one pass uses and another does not', 'time 1+0\nA: (1{late}-2)*2 3..', []],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
