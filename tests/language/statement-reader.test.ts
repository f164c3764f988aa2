import { describe, expect, test } from 'vitest';
import { tokenize } from '../../src/language/lexer.js';
import { readStatement, readsUpTo, startsTimeline, withEdits } from '../../src/language/statement-reader.js';
import { bare, readOne } from './read-text.js';

test('a level may be called like a word of the language', () => {
  for (const name of ['note', 'time', 'voice', 'x', 'on', 'cut']) {
    expect(readOne('timeline', `${name} "title": 1--2`).level.text).toBe(name);
  }
  expect(bare(readOne('stack', 'stack note time BG').levels)).toEqual([
    { text: 'note' },
    { text: 'time' },
    { text: 'BG' },
  ]);
});

test('how far a text reads', () => {
  expect(readsUpTo('cut 1\ntime 5+0')).toBe(14);
  expect(readsUpTo('cut 1\ntime ?')).toBe(11);
  expect(readsUpTo(' cut 1')).toBe(0);
});

const tokens = (text: string) => tokenize(text, 0, text.length);

describe('a statement that cannot be read', () => {
  const failure = (text: string) => {
    const reading = readStatement(tokens(text), { file: 'this.cut', text });
    if (!('failure' in reading)) throw new Error('it was read');
    const { reason, entry, at, wanted } = reading.failure;
    return { reason, word: entry?.word ?? null, at, wanted };
  };

  test('says why, at which token, and what was wanted there', () => {
    expect(failure('3 1')).toEqual({ reason: 'first-word', word: null, at: 0, wanted: [] });
    expect(failure('tmie 5')).toEqual({ reason: 'unknown-word', word: null, at: 0, wanted: [] });
    expect(failure('time 60%')).toEqual({ reason: 'misfit', word: 'time', at: 1, wanted: ['time'] });
    expect(failure(`A: ${'('.repeat(41)}`)).toMatchObject({ reason: 'too-deep', word: '', at: 42 });
  });

  test('that stops too soon fails behind its last token', () => {
    expect(failure('memo')).toEqual({ reason: 'misfit', word: 'memo', at: 1, wanted: ['text'] });
  });

  test('that goes on when it was complete wanted nothing', () => {
    expect(failure('time 5+0 6')).toEqual({ reason: 'misfit', word: 'time', at: 2, wanted: [] });
  });
});

test.each([
  ['A: 1', true],
  ['A "Nao": 1', true],
  ['A 1', false],
  ['A "Nao" 1', false],
  ['3: 1', false],
  ['note: 1', true],
])('%s starts a timeline: %s', (text, starts) => {
  expect(startsTimeline(tokens(text), 0)).toBe(starts);
});

test('edits are made where they were meant, in whatever order they are given', () => {
  const edits = [
    { start: 0, end: 1, text: 'long' },
    { start: 4, end: 5, text: '' },
    { start: 2, end: 2, text: 'x' },
  ];
  expect(withEdits('a b c', edits)).toBe('long xb ');
});
