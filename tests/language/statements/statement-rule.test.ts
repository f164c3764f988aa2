/** What the compiler asks of the rule of a statement. The lines under `@ts-expect-error` must not compile: `tsc` is what tests them. */

import { expect, test } from 'vitest';
import type { ParsingDsl, SharedRules } from '../../../src/language/shared-rules.js';
import {
  betweenName,
  keyName,
  type StatementRule,
  statement,
} from '../../../src/language/statements/statement-rule.js';
import { statementTable, timelineRule } from '../../../src/language/statements/statement-table.js';
import type { Quote, StatementOf } from '../../../src/language/tree.js';

const quote = (dsl: ParsingDsl, { text }: SharedRules): Quote => dsl.SUBRULE(text);

test('a rule gives exactly the fields of its node', () => {
  const right: StatementRule = statement('memo', 'memo ""', (dsl, shared) => () => ({
    kind: 'memo',
    text: quote(dsl, shared),
  }));
  // @ts-expect-error: the field is called `text`
  statement('memo', 'memo ""', (dsl, shared) => () => ({ kind: 'memo', txt: quote(dsl, shared) }));
  // @ts-expect-error: `text` is missing
  statement('memo', 'memo ""', () => () => ({ kind: 'memo' }));
  // @ts-expect-error: a memo has no title
  statement('memo', 'memo ""', (dsl, all) => () => ({ kind: 'memo', text: quote(dsl, all), title: null }));
  statement('memo', 'memo ""', (dsl, shared) => () => ({
    kind: 'memo',
    text: quote(dsl, shared),
    // @ts-expect-error: the field of another statement
    path: quote(dsl, shared),
  }));
  // @ts-expect-error: a text is no number
  statement('fps', 'fps 24', (dsl, shared) => () => ({ kind: 'fps', value: quote(dsl, shared) }));
  // @ts-expect-error: there is no such statement
  statement('memo', 'memo ""', (dsl, shared) => () => ({ kind: 'mem', text: quote(dsl, shared) }));
  expect(right).toMatchObject({ word: 'memo', rule: 'memoStatement', defines: false });
});

test('kinds that share a node are each found', () => {
  const kinds: StatementOf<'sound'>['kind'][] = ['sound', 'music'];
  // @ts-expect-error: a note is no sound
  kinds.push('note');
  expect(kinds).toHaveLength(3);
});

test('what takes a length takes no position, and the other way round', () => {
  const statements = [
    statement('time', 'time 5+0', (dsl, { length }) => () => ({ kind: 'time', time: dsl.SUBRULE(length) })),
    statement('time', 'time 5+0', (dsl, { position }) => () => ({
      kind: 'time',
      // @ts-expect-error: how long the cut is, no place in it
      time: dsl.SUBRULE(position),
    })),
  ];
  expect(statements.map(({ rule }) => rule)).toEqual(['timeStatement', 'timeStatement']);
});

test('timelines are the one statement without a first word', () => {
  expect(statementTable.filter(({ word }) => word === '')).toEqual([timelineRule]);
});

test.each([
  ['3', '3'],
  ['003', '3'],
  ['0', '0'],
  ['03a', '3a'],
  ['4か\u3099', '4が'],
])('the key %s is %s', (typed, name) => {
  expect(keyName(typed)).toBe(name);
});

test.each([
  ['1.2', null, { key: '1', to: null, index: 2, letter: '' }],
  ['01.02', null, { key: '1', to: null, index: 2, letter: '' }],
  ['1.1a', null, { key: '1', to: null, index: 1, letter: 'a' }],
  ['3a.10', null, { key: '3a', to: null, index: 10, letter: '' }],
  // What stands behind the `>` of `1>3.2`.
  ['3.2', '1', { key: '1', to: '3', index: 2, letter: '' }],
])('the in-between %s behind %s', (image, from, name) => {
  expect(betweenName(image, from)).toEqual(name);
});
