import { expect, test } from 'vitest';
import { actionOf } from '../../src/language/message.js';
import { parse } from '../../src/language/parse.js';
import { withEdits } from '../../src/language/statement-reader.js';
import type { Item } from '../../src/language/tree.js';
import { chartOf, silentSlip, wordForSign } from '../../src/shot/timeline-slips.js';

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

test.each([
  ['1 hold', '1..'],
  ['1 hold @13 2..', '1.. @13 2..'],
  ['1 hold 12 2..', '1:12 2..'],
  ['hold 1', 'no mend'],
  ['1 blank..', '1 x..'],
  ['1 空セル:4 2..', '1 x:4 2..'],
  ['(1-2-) repeat', '(1-2-)..'],
  ['(1-2-) repeat 3', 'no mend'],
  ['(1-2) bounce', '(1-2)<>..'],
  ['1 late --2', '1{late}--2'],
  ['1(late)--2', '1{late}--2'],
  ['1(後ヅメ)--2', '1{late}--2'],
  ['A1 2..', '1 2..'],
  ['1:12 frames 2..', '1:12 2..'],
  ['(1-2-) 3 times 4..', '(1-2-)*3 4..'],
  ['1 at 13 2..', '1 @13 2..'],
  ['twos 1-2..', 'on 2 1-2..'],
  ['1 walk 2..', null],
])('%s', (items, expected) => expect(mended(items)).toBe(expected));

test.each([
  ['(1-2-)3', '(1-2-)*3'],
  ['(1-2-) x 3', '(1-2-)*3'],
  ['1(12) 2', '1:12 2'],
  ['1(12)2..', '1:12 2..'],
  ['(1-2-) 3', null],
  ['(1-2-)*2 3', null],
  ['1 (12) 2', null],
  ['(1-2-) x:4 3', null],
])('%s is read without an error', (items, expected) => expect(mended(items, silentSlip)).toBe(expected));

test('charts by the words of the trade', () => {
  expect([chartOf('先ヅメ'), chartOf('後ヅメ'), chartOf('hold')]).toEqual(['early', 'late', null]);
});
