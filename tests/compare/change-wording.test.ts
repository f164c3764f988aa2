/** A change as one sentence. */

import { describe, expect, test } from 'vitest';
import type { ChangeOf, MoveSeen } from '../../src/compare/change.js';
import {
  markedLadders,
  moveName,
  ON_PAPER,
  parameterText,
  sentence,
  telling,
} from '../../src/compare/change-wording.js';
import { compare } from '../../src/compare/compare-cuts.js';
import type { Convention } from '../../src/shot/settings.js';
import { wordsOf } from '../../src/words/words.js';
import { solved } from './say.js';

const cut = (convention: Convention, fps = 24) => {
  const it = solved(`cut 1\nfps ${fps}\ntime 2+0\nA: 1..\n`);
  return { ...it, shot: { ...it.shot, settings: { ...it.shot.settings, convention } } };
};

describe('times and rows', () => {
  test('are seconds and frames on a Japanese form', () => {
    const t = telling(cut('japan'), 'en');
    expect([t.length(36), t.row(37)]).toEqual(['1+12', '1+13']);
  });

  test('are feet and frames on a western form, 16 frames a foot', () => {
    const t = telling(cut('west'), 'en');
    expect([t.length(36), t.row(37)]).toEqual(["2'04", "2'05"]);
  });

  test('are long from a second on, whatever a second has', () => {
    const t = telling(cut('japan', 30), 'en');
    expect([t.long(29), t.long(30), t.long(-30)]).toEqual([false, true, true]);
  });
});

describe('a text that is quoted', () => {
  test('is one line', () => {
    expect(telling(cut('japan'), 'en').brief('wind\n  from left')).toBe('wind from left');
  });

  test('is cut where it has more letters than asked for', () => {
    const t = telling(cut('japan'), 'en', ON_PAPER);
    expect(t.brief('a'.repeat(40))).toBe('a'.repeat(40));
    expect(t.brief('a'.repeat(41))).toBe(`${'a'.repeat(38)} …`);
  });

  test('keeps the part that differs from what it stands for, with a little before it', () => {
    const { brief } = telling(cut('japan'), 'en', ON_PAPER);
    const memo = (end: string) => `The door turns on its lower hinge and ${end}`;
    expect(brief(memo('falls.'), memo('stays there.'))).toBe('… hinge and falls.');
    expect(brief(memo('stays there.'), memo('falls.'))).toBe('… hinge and stays there.');
    expect(brief(memo('falls.'), '')).toBe('The door turns on its lower hinge and …');
    // What differs stands in what is shown anyway; or has no end that could be shown.
    expect(brief(`Shut ${memo('falls.')}`, `Open ${memo('falls.')}`)).toBe(
      'Shut The door turns on its lower hinge …',
    );
    expect(brief(memo('a'.repeat(60)), memo('b'.repeat(60)))).toBe(`… hinge and ${'a'.repeat(26)} …`);
    expect(brief(`${'霜'.repeat(40)}は育つ`, `${'霜'.repeat(40)}が育つ`)).toBe(`… ${'霜'.repeat(12)}は育つ`);
    expect(brief(memo('falls.'), `${memo('falls.')} At last.`)).toBe('… and falls.');
    for (const text of [memo('x'.repeat(99)), memo('falls and lies there.'), '霜'.repeat(99)])
      for (let at = 0; at < text.length; at += 7)
        expect([...brief(text, `${text.slice(0, at)}!${text.slice(at)}`)].length).toBeLessThanOrEqual(
          ON_PAPER,
        );
  });

  test('is not cut within a letter of two code units', () => {
    expect(telling(cut('japan'), 'en', 4).brief('𠮷𠮷𠮷𠮷𠮷')).toBe('𠮷𠮷 …');
  });
});

test('a sentence is one line without control characters', () => {
  const change = { kind: 'scene', old: '1', now: 'a\n b\u0007', place: null, rows: null } as const;
  expect(sentence(change, telling(cut('japan'), 'en'))).toBe('scene a b? (was 1)');
});

test('a western form has its own terms', () => {
  const change = { kind: 'fix', old: 'A', now: 'B', place: null, rows: null } as const;
  const time = { kind: 'cut', old: '1', now: '2', place: null, rows: null } as const;
  expect(sentence(time, telling(cut('west'), 'en'))).toBe('scene 2 (was 1)');
  expect(sentence(time, telling(cut('japan'), 'ja'))).toBe('カット 2（旧 1）');
  expect(sentence(change, telling(cut('west'), 'en'))).toBe('FIX on B (was A)');
});

const seen = (more: Partial<MoveSeen> & Pick<MoveSeen, 'move'>): MoveSeen => ({
  levels: [],
  places: [],
  sense: null,
  quick: false,
  ...more,
});
const en = wordsOf({ labels: 'en', convention: 'japan' });
const ja = wordsOf({ labels: 'ja', convention: 'japan' });

test('a move is called by its levels, its word and its way', () => {
  const truck = seen({ move: 'truck', places: ['P', 'Q'], sense: 'in', quick: true });
  expect(moveName(truck, en.moves)).toBe('Q.T.U P→Q');
  expect(moveName({ ...truck, sense: null, quick: false }, en.moves)).toBe('T.U/T.B P→Q');
  const level = seen({ move: 'levelTruck', levels: ['A', 'B'], places: ['100%', '140%'], sense: 'out' });
  expect(moveName(level, en.moves)).toBe('A,B level T.B 100%→140%');
  expect(moveName(level, ja.moves)).toBe('A,B セルT.B 100%→140%');
  expect(moveName(seen({ move: 'shake' }), ja.moves)).toBe('画面動');
});

test('values have their units, and nothing is told as such', () => {
  const text = (move: MoveSeen['move'], manner: string, value: string | number | boolean | null) =>
    parameterText({ move, manner } as ChangeOf<'move-manner'>, value, en.moves, (frames) => `0+${frames}`);
  expect(text('shake', 'size', '4>0')).toBe('4 to 0 mm');
  expect(text('sway', 'size', '5')).toBe('5 mm');
  expect(text('sway', 'period', 36)).toBe('every 0+36');
  expect(text('pull', 'loop', 420)).toBe('loop of 420 mm');
  expect(text('pull', 'loop', null)).toBe('no loop');
  expect(text('pull', 'direction', 'left')).toBe('to the left');
  expect(text('pull', 'direction', '30°')).toBe('30°');
  expect(text('turn', 'about', '10,20')).toBe('about 10,20');
  expect(text('turn', 'sense', 'ccw')).toBe('counter-clockwise');
  expect(text('sway', 'sideways', false)).toBe('up and down');
});

test('a ladder is marked where its drawings, their places or their kind differ', () => {
  const cut = (line: string) => `cut 1\ntime 2+0\nA: ${line}\n`;
  const ladders = (old: string, now: string) =>
    markedLadders(compare(solved(cut(old)), solved(cut(now))), solved(cut(now))).map(
      ({ level, from, to }) => `${level} ${from}>${to}`,
    );
  expect(ladders('1--2--3..', '1{late}--2--3..')).toEqual(['A 1>2']);
  expect(ladders('1--2--3..', '1--2---3..')).toEqual(['A 2>3']);
  expect(ladders('1--2--3..', '1--2-=3..')).toEqual(['A 2>3']);
  expect(ladders('1--2--3..', '1:12--2--3..')).toEqual([]);
});
