/** One error a statement, at its exact place, with an edit that mends it where there is one. */

import { describe, expect, test } from 'vitest';
import { MOST_BROKEN, parse } from '../../src/language/parse.js';
import { DEEPEST } from '../../src/language/statement-reader.js';
import { type Case, check, only } from './fault-check.js';
import { told } from './read-text.js';

describe('first words', () => {
  test.each<Case>([
    ['tmie 5+0', 'unknown-word', 'tmie', 'time 5+0'],
    ['Time 5+0', 'unknown-word', 'Time', 'time 5+0'],
    ['phrse walk = 1--2', 'unknown-word', 'phrse', 'phrase walk = 1--2'],
    ['gibberish', 'unknown-word', 'gibberish', null],
    ['A 1--2', 'missing-colon', 'A', 'A: 1--2'],
    ['note1 "Nao" 1--2', 'missing-colon', 'note1', 'note1 "Nao": 1--2'],
    ['"text"', 'statement-start', '"text"', null],
    ['A: 1--2\n3..', 'statement-start', '3', 'A: 1--2\n    3..'],
    ['cut 1\n3..', 'statement-start', '3', null],
    ['  cut 1', 'indented-start', 'cut 1', 'cut 1'],
  ])('%s', (...one) => check(one));
});

test('an edit is offered where another fault stands behind the one that it mends', () => {
  const { mended } = only('tmie 5+0 ?');
  expect(mended).toBe('time 5+0 ?');
  expect(only(mended!)).toMatchObject({ code: 'unknown-character', at: '?' });
});

describe('texts', () => {
  test.each<Case>([
    ['memo "open', 'unclosed-text', '"open', 'memo "open"'],
    ['memo "open  \ncut 1', 'unclosed-text', '"open', 'memo "open"  \ncut 1'],
    ['memo 「雨', 'unclosed-text', '「雨', 'memo 「雨」'],
    ['memo “雨', 'unclosed-text', '“雨', 'memo “雨”'],
    ['memo "a" b"', 'unclosed-text', '"', null],
    ['memo "C:\\q"', 'unknown-escape', '\\q', 'memo "C:\\\\q"'],
  ])('%s', (...one) => check(one));
});

describe('characters', () => {
  test.each<Case>([
    ['memo "a\u0000\u0001b"', 'control-character', '\u0000\u0001', 'memo "ab"'],
    ['cut 1\u0007', 'control-character', '\u0007', 'cut 1'],
    ['cut 1\uffff', 'control-character', '\uffff', 'cut 1'],
    ['cut 1\n\uffff', 'control-character', '\uffff', 'cut 1\n'],
    ['cut 1\ufdd0', 'control-character', '\ufdd0', 'cut 1'],
    ['memo "\ud83d"', 'control-character', '\ud83d', 'memo ""'],
  ])('%s', (...one) => check(one));
});

describe('timelines', () => {
  test.each<Case>([
    ['A: (1--2', 'unclosed-group', '(', 'A: (1--2)'],
    ['A: 1--2)', 'does-not-fit', ')', 'A: 1--2'],
    ['A: 1{late', 'stops-short', '', 'A: 1{late}'],
    ['A: 1{early}{late}', 'does-not-fit', '{', null],
    ['A: 1-{late}2', 'does-not-fit', '{', null],
    ['A: 1:8:8', 'does-not-fit', ':', null],
    ['A: 1..:8', 'does-not-fit', ':', null],
    ['A: 1*3', 'does-not-fit', '*', null],
    ['A: 1 1+0', 'does-not-fit', '1+0', 'A: 1 :1+0'],
    ['A: 1x2', 'does-not-fit', '1x2', 'A: 1 x 2'],
    ['A: 1,2', 'does-not-fit', ',', 'A: 1 2'],
    ['A: 1 "text"', 'does-not-fit', '"text"', null],
    ['A: on 1+0 3', 'does-not-fit', '1+0', null],
    ['A:', 'stops-short', '', null],
    ['A: 1:', 'stops-short', '', null],
    ['phrase walk 1--2', 'does-not-fit', '1', 'phrase walk = 1--2'],
    ['phrase walk: 1--2', 'does-not-fit', ':', 'phrase walk = 1--2'],
  ])('%s', (...one) => check(one));

  test('groups may be deep, but not endless', () => {
    const nested = (depth: number): string => `A: ${'('.repeat(depth)}1${')'.repeat(depth)}`;
    expect(told(nested(DEEPEST))).toEqual([]);
    expect(only(nested(DEEPEST + 1))).toMatchObject({ code: 'nested-too-deep' });
    // More tokens than any statement may have are counted before they are read.
    expect(only(nested(200_000))).toMatchObject({ code: 'cut-too-large' });
  });
});

describe('other statements', () => {
  test.each<Case>([
    ['time', 'stops-short', '', null],
    ['time 60%', 'does-not-fit', '60%', null],
    ['time 5+0 6', 'does-not-fit', '6', null],
    ['mark hit', 'stops-short', '', null],
    ['stack A, B', 'does-not-fit', ',', 'stack A B'],
    ['voice "Nao" of 1+6..2 "x"', 'does-not-fit', 'of', 'voice "Nao" off 1+6..2 "x"'],
    ['voice "Nao" 1+6 "x"', 'does-not-fit', '"x"', null],
    ['voice "Nao" 1+6..2+0', 'stops-short', '', null],
    ['level BG siez 560x200mm', 'does-not-fit', 'siez', 'level BG size 560x200mm'],
    ['sway A 5mm every 1+0', 'does-not-fit', 'every', null],
    ['glow A hit 1+0', 'does-not-fit', 'hit', null],
    ['glow A 1+1 1+0', 'does-not-fit', '1+0', null],
    ['level A masked by B', 'trade-word', 'A masked by B', 'level B masks A'],
    ['level BG free free', 'part-twice', 'free', null],
  ])('%s', (...one) => check(one));
});

test('a mark that is set begins a range, of which the dots are wanted', () => {
  const found = told('cut 1\nmark hit 3\nglow A hit 12\n');
  expect(found.map(({ code, at }) => [code, at])).toEqual([['does-not-fit', '12']]);
});

test('a broken statement never harms the next one', () => {
  const { tree, diagnostics } = parse('this.cut', 'cut ?\nA: (((\ntime 5+0\n!\n  ?\nB: 1..\nmemo "');
  expect(tree.statements.map(({ kind }) => kind)).toEqual(['time', 'timeline']);
  expect(diagnostics).toHaveLength(4);
});

test('what unreadable statements began to say is kept', () => {
  const { broken } = parse('this.cut', 'tmie 5 5\nA "Nao": ?\nmark hit ?\nphrase walk\nfoo ?\n?').tree;
  expect(broken.map(({ word, name }) => [word, name])).toEqual([
    ['time', null],
    ['A', 'A'],
    ['mark', 'hit'],
    ['phrase', 'walk'],
    ['foo', 'foo'],
    ['', null],
  ]);
});

test('a thousand unreadable statements are enough', () => {
  const { diagnostics, tree } = parse('this.cut', '?\n'.repeat(MOST_BROKEN + 50));
  expect(diagnostics).toHaveLength(MOST_BROKEN + 1);
  expect(diagnostics.at(-1)!.code).toBe('reading-stopped');
  expect(tree.broken).toHaveLength(MOST_BROKEN);
});

test('one line of controls is one error', () => {
  expect(told(`cut 1\nmemo "${'\u0000a'.repeat(500)}"\ntime 1+0`).map(({ code }) => code)).toEqual([
    'control-character',
  ]);
});
