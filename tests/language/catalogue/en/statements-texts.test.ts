import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('a statement is named by its word, by its name as well, a timeline by its level', () => {
  expect(said('statement-twice', { statement: 'time', name: null })).toBe('`time` is said twice.');
  expect(said('statement-twice', { statement: 'level', name: 'A' })).toBe('`level A` is said twice.');
  expect(said('statement-twice', { statement: '', name: 'A' })).toBe(
    'The timeline of level `A` is said twice.',
  );
});

test('dialogue lasts too long, or starts too late', () => {
  const late = (heard: 'voice' | 'sound' | 'music', from: number) =>
    said('dialogue-past-end', { heard, from, to: 140, rows: 120 });
  expect(late('voice', 100)).toBe(
    'This dialogue lasts to frame 140, past the end of the sheet, which has 120 rows.',
  );
  expect(late('sound', 121)).toMatch(/^This sound starts on frame 121, past/);
  expect(late('music', 120)).toMatch(/^This music lasts to frame 140/);
});
