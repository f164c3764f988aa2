/** Warnings that help, and that stay away from what is normal. */

import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { explained } from '../explained.js';
import { shown } from './shown.js';

describe('a one-frame flash', () => {
  test.each([
    ['a drawing between two holds', '1:12 2:1 1..'],
    ['emptiness between two holds', '1:12 x:1 2..'],
    ['what an @ leaves', '1:12 2 @14 3..'],
  ])('%s', (_, items) => {
    expect(shown(24, items).codes).toContain('warning one-frame-flash');
  });

  test.each([
    ['on ones by intent', '1:12 on 1 2 1..'],
    ['an in-between of a fast move', '1:12 -:1 2..'],
    ['on ones throughout', 'on 1 1-2-3-4-5-6-7-8-9..'],
    ['between short neighbours', '(1:3 2:1)..'],
    ['alone on an empty level', 'x:12 1:1 x..'],
    ['the last frame', '1:23 2:1'],
  ])('not: %s', (_, items) => {
    expect(shown(24, items).codes).not.toContain('warning one-frame-flash');
  });

  test('is said once for a cycle', () => {
    const { codes } = shown(48, '(1:6 2:1 3:6)..');
    expect(codes.filter((code) => code === 'warning one-frame-flash')).toHaveLength(1);
  });
});

describe('key numbers', () => {
  test('that jump', () => {
    const { codes, diagnostics } = shown(24, '1--3..');
    expect(codes).toEqual(['warning key-jump']);
    expect(messageOf(diagnostics[0]!, 'en')).toContain('there is no key 2');
  });

  test('that run backwards at first appearance', () => {
    expect(shown(24, '1 3 2..').codes).toEqual(['warning key-backwards']);
    expect(shown(24, '1 2b 2a..').codes).toEqual(['warning key-backwards']);
  });

  test.each([
    ['keys put in later', '1 2 3 3a 3b 4..', ''],
    ['keys that come back', '1 2 3 1 2 4..', ''],
    ['a level that starts at another number', '5 6..', ''],
    ['a key that is dropped, but on paper', '1 3..', 'cels A 1 2 3'],
    ['a reused level', '4 2 9..', 'level A reuse 8/C'],
    ['cycles', '(1-2-3-)*2 4..', ''],
  ])('are fine in %s', (_, items, lines) => {
    expect(shown(48, items, lines).codes).toEqual([]);
  });
});

describe('what is never seen', () => {
  test('a level that is always empty', () => {
    expect(shown(24, 'x..').codes).toEqual(['warning level-empty']);
    expect(shown(24, '@9 x..').codes).toEqual(['warning level-empty']);
  });

  test('a key that a cycle does not come to', () => {
    const { codes, diagnostics } = shown(24, '(1:12 2:12 3)..');
    expect(codes).toEqual(['warning drawing-never-seen']);
    expect(messageOf(diagnostics[0]!, 'en')).toContain('Key 3');
  });

  test('not in-betweens that a cycle does not come to', () => {
    expect(shown(24, '(1:12 2:12--)..').codes).toEqual([]);
  });

  test('counts nothing that is not drawn', () => {
    expect(shown(24, '(1:12 2:12--)..').level.drawings).toHaveLength(2);
  });
});

describe('what looks like a slip, in full', () => {
  test.each<[string, string, string[]]>([
    ['a level that shows nothing', 'time 1+0\nA: x..', ['warning «A: x..» Level A never shows anything.']],
    [
      'a key that no frame reaches',
      'time 1+0\nA: (1-2-3-4-):8 @9 5..',
      ['warning «3» Keys 3, 4 of level A would come after the end, and are never seen.'],
    ],
    [
      'keys of a group cut short',
      'time 1+0\nA: (1 2 3 4 5):6 6..',
      ['warning «4» Keys 4, 5 of level A would come after the end, and are never seen.'],
    ],
    [
      'a drawing for one frame between two held ones',
      'time 1+0\nA: 1:4 2:1 3..',
      ['warning «2:1» Drawing 2 of level A is seen for 1 frame only, frame 5, between two holds.'],
    ],
    ['the same between drawings that are not held', 'time 1+0\nA: 1:3 2:1 3..', []],
    ['the same where the next one is not held', 'time 1+0\nA: 1:4 2:1 3:3 4..', []],
    ['the same on ones', 'time 1+0\nA: on 1 1:4 2 3..', []],
    [
      'emptiness for one frame',
      'time 1+0\nA: 1:4 x:1 2..',
      ['warning «x:1» Level A is empty for 1 frame only, frame 5, between two holds.'],
    ],
    ['an in-between on its way for one frame', 'time 1+0\nA: 1:4 -:1 2..', []],
    [
      'an in-between of another way for one frame',
      'time 1+0\nA: 1-2 3:4 1.1:1 4..',
      ['warning «1.1:1» Drawing 1.1 of level A is seen for 1 frame only, frame 11, between two holds.'],
    ],
    ['an in-between between two of its own way', 'time 1+0\nA: 1-:4 -:1 -:4 2..', []],
    ['one frame at the start and one at the end', 'time 1+0\nA: 1:1 2:22 3:1', []],
    [
      'a key that is not there',
      'time 1+0\nA: 1 2 4..',
      ['warning «4..» Key 4 of level A follows key 2; there is no key 3.'],
    ],
    [
      'keys that are not there',
      'time 1+0\nA: 1 2 6..',
      ['warning «6..» Key 6 of level A follows key 2; keys 3 to 5 are not there.'],
    ],
    [
      'a key that is seen later',
      'time 1+0\nA: 1 3 2..',
      ['warning «2..» Key 2 of level A is first seen on frame 5, after key 3.'],
    ],
    [
      'a key before its time',
      'time 1+0\nA: 2 1 3..',
      ['warning «1» Key 1 of level A is first seen on frame 3, after key 2.'],
    ],
    [
      'a key with a letter before the one without',
      'time 1+0\nA: 1 2b 2a 3..',
      ['warning «2a» Key 2a of level A is first seen on frame 5, after key 2b.'],
    ],
    ['a level that begins with any key', 'time 1+0\nA: 7 8 9..', []],
    ['keys that are on paper only', 'time 1+0\nA: 1 4..\ncels A 1 2 3 4', []],
    ['keys in another order on paper', 'time 1+0\nA: 1 3 2..\ncels A 1 3 2', []],
    [
      'a way back as new drawings',
      'time 1+0\nA: 1--2--1..',
      [
        'hint «-» From key 2 back to key 1 level A has 2 new drawings; `<>` or 1.2 1.1 would show the old ones backwards.',
        ' > show the old ones backwards: «-» → « 1.2 »',
        ' > show the old ones backwards: «-» → « 1.1 »',
      ],
    ],
    [
      'a way back of another count',
      'time 1+0\nA: 1--2-1..',
      [
        'hint «-» From key 2 back to key 1 level A has 1 new drawing; `<>` or 1.2 1.1 would show the old ones backwards.',
      ],
    ],
    [
      'a way back with lengths of its own',
      'time 1+0\nA: 1--2-:4-1..',
      [
        'hint «-:4» From key 2 back to key 1 level A has 2 new drawings; `<>` or 1.2 1.1 would show the old ones backwards.',
        ' > show the old ones backwards: «-» → « 1.2»',
        ' > show the old ones backwards: «-» → « 1.1 »',
      ],
    ],
    ['a way back in a cycle', 'time 1+0\nA: (1--2--)..', []],
    ['a way back that is on paper', 'time 1+0\nA: 1-2-1..\ncels A 1 1.1 2 2.1', []],
    [
      'a way back of which one drawing is on paper',
      'time 1+0\nA: 1--2--1..\ncels A 1 1.1 1.2 2 2.1',
      [
        'error «-» From key 2 to key 1 there are 2 in-betweens here, but 1 on paper (2.1).',
        ' + «cels A 1 1.1 1.2 2 2.1» numbers are pinned here',
        ' + a new in-between is named by its place, as 1.1a comes after 1.1, and stands at the end of that line',
        ' > add 2.1a to the pinned numbers: «» → « 2.1a»',
        'hint «-» From key 2 back to key 1 level A has 2 new drawings; `<>` or 1.2 1.1 would show the old ones backwards.',
        ' > show the old ones backwards: «-» → « 1.2 »',
        ' > show the old ones backwards: «-» → « 1.1 »',
      ],
    ],
    [
      'a way back that is shown again',
      'time 1+0\nA: 1-2-1 2.1..',
      [
        'hint «-» From key 2 back to key 1 level A has 1 new drawing; `<>` or 1.1 would show the old ones backwards.',
      ],
    ],
    ['a way there and back to itself', 'time 1+0\nA: 1-1-1..', []],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('a flash on a way of another pair of keys, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'an in-between of one way between those of another',
      'time 2+0\nA: 1---2 1-3:2 1>2.1:4 1>3.1:1 1>2.2:4 4..',
      ['warning «1>3.1:1» Drawing 1>3.1 of level A is seen for 1 frame only, frame 21, between two holds.'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

describe('a key with the number 0', () => {
  test('is a hint, and an empty level its mend', () => {
    const { codes, diagnostics } = shown(24, '1 0:12 2..');
    expect(codes).toEqual(['hint key-zero']);
    expect(diagnostics[0]!.fix!.edits).toEqual([
      { span: { file: 'this.cut', start: 19, end: 20 }, text: 'x' },
    ]);
    expect(shown(24, '1 x:12 2..').codes).toEqual([]);
  });

  test('is none where it is on paper, or has a letter', () => {
    expect(shown(24, '0:12 1..', 'cels A 0 1').codes).toEqual([]);
    expect(shown(24, '0a:12 1..').codes).toEqual([]);
  });
});
