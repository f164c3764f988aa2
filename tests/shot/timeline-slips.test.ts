import { describe, expect, test } from 'vitest';
import { actionOf } from '../../src/language/message.js';
import { parse } from '../../src/language/parse.js';
import { withEdits } from '../../src/language/statement-reader.js';
import type { Item } from '../../src/language/tree.js';
import { chartOf, silentSlip, wordForSign } from '../../src/shot/timeline-slips.js';
import { explained } from '../explained.js';

const itemsOf = (items: string): readonly Item[] => {
  const [statement] = parse('a.cut', `A: ${items}\n`).tree.statements;
  return statement?.kind === 'timeline' ? statement.items : [];
};

/** The timeline after the first mend, or what is said where there is none. */
function mended(items: string, look = wordForSign): string | null {
  const all = itemsOf(items);
  const found = all.map((_, index) => look(all, index)).find((one) => one !== null);
  if (!found) return null;
  if (!found.fix) return 'no mend';
  expect(actionOf(found.fix, 'en')).not.toBe('');
  const edits = found.fix.edits.map(({ span, text }) => ({ ...span, text }));
  return withEdits(`A: ${items}`, edits).slice(3);
}

/** What is said of a timeline of four seconds, in full. */
const told = (items: string): string[] => explained(`cut 1\ntime 4+0\nA: ${items}\n`);

describe('a word of the trade for which a timeline has a sign', () => {
  test.each<[string, string[]]>([
    ['1 hold', ['error «hold» For `hold` a timeline has signs: `1..`.', ' > write `..`: « hold» → «..»']],
    [
      '1 hold @13 2..',
      ['error «hold» For `hold` a timeline has signs: `1..`.', ' > write `..`: « hold» → «..»'],
    ],
    [
      '1 hold 12 2..',
      ['error «hold» For `hold` a timeline has signs: `1..`.', ' > write `:`: « hold » → «:»'],
    ],
    ['hold 1..', ['error «hold» For `hold` a timeline has signs: `1..`.']],
    ['1 hold 12:3 2..', ['error «hold» For `hold` a timeline has signs: `1..`.']],
    ['1 @3 hold', ['error «hold» For `hold` a timeline has signs: `1..`.']],
    ['@1 hold 2..', ['error «hold» For `hold` a timeline has signs: `1..`.']],
    ['1 on 3 hold', ['error «hold» For `hold` a timeline has signs: `1..`.']],
    ['1:2 hold:4 2..', ['error «hold» For `hold` a timeline has signs: `1..`.']],
    ['1 原画 2..', ['error «原画» For `原画` a timeline has signs: `1`.', ' > leave it out: «原画 » → «»']],
    ['原画:3 2..', ['error «原画» For `原画` a timeline has signs: `1`.']],
    ['1 動画 2..', ['error «動画» For `動画` a timeline has signs: `1--2`.']],
    [
      '(1-2-) repeat',
      ['error «repeat» For `repeat` a timeline has signs: `(1--2--)*3`.', ' > write `..`: « repeat» → «..»'],
    ],
    ['1 repeat', ['error «repeat» For `repeat` a timeline has signs: `(1--2--)*3`.']],
    ['(1-2-) repeat 3', ['error «repeat» For `repeat` a timeline has signs: `(1--2--)*3`.']],
    ['(1-2-) repeat:4', ['error «repeat» For `repeat` a timeline has signs: `(1--2--)*3`.']],
    ['(1-2-) repeat<>', ['error «repeat» For `repeat` a timeline has signs: `(1--2--)*3`.']],
    [
      '(1-2-) repeat @13 3..',
      ['error «repeat» For `repeat` a timeline has signs: `(1--2--)*3`.', ' > write `..`: « repeat» → «..»'],
    ],
    [
      '(1-2) bounce',
      [
        'error «bounce» For `bounce` a timeline has signs: `(1--2)<>`.',
        ' > write `<>..`: « bounce» → «<>..»',
      ],
    ],
    ['1 bounce', ['error «bounce» For `bounce` a timeline has signs: `(1--2)<>`.']],
    ['(1-2) bounce 3..', ['error «bounce» For `bounce` a timeline has signs: `(1--2)<>`.']],
    [
      '1-2 twos 3..',
      ['error «twos» For `twos` a timeline has signs: `on 2`.', ' > write `on 2`: «twos» → «on 2»'],
    ],
    [
      '1 ones 2..',
      ['error «ones» For `ones` a timeline has signs: `on 1`.', ' > write `on 1`: «ones» → «on 1»'],
    ],
    [
      'twos 1..',
      ['error «twos» For `twos` a timeline has signs: `on 2`.', ' > write `on 2`: «twos» → «on 2»'],
    ],
    ['1{early} late --2..', ['error «late» `late` is written `{late}` here.']],
    ['1 late 2..', ['error «late» There is no phrase `late`.']],
    [
      'late --2..',
      [
        'error «late» There is no phrase `late`.',
        'error «-» This in-between has no key to come from: there is no key before it.',
      ],
    ],
    [
      '1 late --2..',
      ['error «late» `late` is written `{late}` here.', ' > write `{late}`: « late » → «{late}»'],
    ],
    [
      'x late --2..',
      [
        'error «late» There is no phrase `late`.',
        'error «-» This in-between has no key to come from: the level is empty before it, and a passage never crosses `x`.',
      ],
    ],
    ['1(late)*2--2..', ['error «late» There is no phrase `late`.']],
    ['1(late 2)--2..', ['error «late» There is no phrase `late`.']],
    ['1(late)<>--2..', ['error «late» There is no phrase `late`.']],
    ['1(walk)--2..', ['error «walk» There is no phrase `walk`.']],
    [
      '1(後ヅメ)--2..',
      ['error «(後ヅメ)» `(後ヅメ)` is written `{late}` here.', ' > write `{late}`: «(後ヅメ)» → «{late}»'],
    ],
    ['AB12b 12c..', ['error «AB12b» `AB12b` is written `12b` here.', ' > write `12b`: «AB12b» → «12b»']],
    ['ABC1 2..', ['error «ABC1» There is no phrase `ABC1`.']],
    ['A1b 2..', ['error «A1b» `A1b` is written `1b` here.', ' > write `1b`: «A1b» → «1b»']],
    ['1:12 frames 2..', ['error «frames» `frames` is left out here.', ' > leave it out: « frames» → «»']],
    ['1 frames 2..', ['error «frames» There is no phrase `frames`.']],
    ['x:3 コマ 2..', ['error «コマ» `コマ` is left out here.', ' > leave it out: « コマ» → «»']],
    ['on 3 frames 1..', ['error «frames» There is no phrase `frames`.']],
    [
      '(1-2-) 3 times 4..',
      ['error «times» `times` is written `*3` here.', ' > write `*3`: « 3 times» → «*3»'],
    ],
    ['(1-2-)*2 3 times 4..', ['error «times» `times` is written `*3` here.']],
    ['1 3 times 4..', ['error «times» There is no phrase `times`.']],
    ['(1-2-) x times 4..', ['error «times» There is no phrase `times`.']],
    ['1 for 12 2..', ['error «for» `for` is written `:12` here.', ' > write `:`: « for » → «:»']],
    ['1 for 12:3 2..', ['error «for» There is no phrase `for`.']],
    ['x for 12 2..', ['error «for» There is no phrase `for`.']],
    ['1 at 13 2..', ['error «at» `at` is written `@13` here.', ' > write `@`: «at » → «@»']],
    ['1 at 13:4 2..', ['error «at» There is no phrase `at`.']],
    ['1 at x 2..', ['error «at» There is no phrase `at`.']],
    ['at 13 2..', ['error «at» `at` is written `@13` here.', ' > write `@`: «at » → «@»']],
    ['1 空セル:4 2..', ['error «空セル» `空セル` is written `x` here.', ' > write `x`: «空セル» → «x»']],
    ['1 X 2..', ['error «X» `X` is written `x` here.', ' > write `x`: «X» → «x»']],
  ])('%s', (items, said) => expect(told(items)).toEqual(said));

  test.each([
    ['1 hold', '1..'],
    ['1 hold 12 2..', '1:12 2..'],
    ['(1-2) bounce', '(1-2)<>..'],
    ['1 late --2', '1{late}--2'],
    ['1 walk 2..', null],
  ])('%s is mended to %s', (items, expected) => expect(mended(items)).toBe(expected));
});

describe('what is read without an error and meant otherwise', () => {
  test.each<[string, string[]]>([
    [
      '(1-2-)3 4..',
      ['hint «3» This shows key 3; was `*3` meant, the group 3 times?', ' > write `*3`: «» → «*»'],
    ],
    ['(1-2-)1 3..', []],
    [
      '(1-2-)2 3..',
      ['hint «2» This shows key 2; was `*2` meant, the group 2 times?', ' > write `*2`: «» → «*»'],
    ],
    ['(1-2-)3a 4..', []],
    ['(1-2-)*2 3 4..', []],
    ['(1-2-)*2 x 3 4..', []],
    ['(1-2)<>3 4..', []],
    ['(1-2-) 3 4..', []],
    [
      '(1-2-) x 3 4..',
      ['hint «3» This shows key 3; was `*3` meant, the group 3 times?', ' > write `*3`: « x » → «*»'],
    ],
    ['(1-2-) x 1 3..', []],
    ['(1-2-) x:4 3 4..', []],
    ['(1-2-) x.. @20 3 4..', []],
    ['1 x 2 3..', []],
    ['1(2) 3..', ['hint «(2)» This shows key 2; was `:2` meant, 2 frames?', ' > write `:2`: «(2)» → «:2»']],
    ['1(2)3..', ['hint «(2)» This shows key 2; was `:2` meant, 2 frames?', ' > write `:2`: «(2)» → «:2 »']],
    [
      '1(2)x 3 4..',
      ['hint «(2)» This shows key 2; was `:2` meant, 2 frames?', ' > write `:2`: «(2)» → «:2 »'],
    ],
    [
      '1 (2) x 3 4..',
      ['hint «3» This shows key 3; was `*3` meant, the group 3 times?', ' > write `*3`: « x » → «*»'],
    ],
    ['1 (2) 3..', []],
    ['x(2) 3..', []],
    ['1(2)*2 3..', []],
    ['1(2)<> 3..', []],
    ['1(2:3) 3..', []],
    [
      '1(2{late}) 3..',
      [
        'warning «{late}» No in-betweens follow key 2 here, so this chart of level A spaces nothing.',
        ' > take it out: «{late}» → « »',
      ],
    ],
    ['1(2 3) 4..', []],
    ['1(x) 2..', []],
    [
      '1(2)(3) 4..',
      ['hint «(2)» This shows key 2; was `:2` meant, 2 frames?', ' > write `:2`: «(2)» → «:2 »'],
    ],
  ])('%s', (items, said) => expect(told(items)).toEqual(said));

  test.each([
    ['(1-2-)3', '(1-2-)*3'],
    ['(1-2-) x 3', '(1-2-)*3'],
    ['1(12)2..', '1:12 2..'],
    ['1(12) 2', '1:12 2'],
  ])('%s is mended to %s', (items, expected) => expect(mended(items, silentSlip)).toBe(expected));
});

test('charts by the words of the trade', () => {
  expect([chartOf('先ヅメ'), chartOf('後ヅメ'), chartOf('hold')]).toEqual(['early', 'late', null]);
});
