import { describe, expect, test } from 'vitest';
import { withLines } from '../bind.js';

describe('words on the sheet', () => {
  test('keep speaker, manner, rows and ties', () => {
    const { shot, codes } = withLines('voice "Nao" off 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"');
    expect(codes).toEqual([]);
    expect(shot!.spoken).toMatchObject([
      {
        kind: 'voice',
        speaker: 'Nao',
        manner: 'off',
        frames: { from: 30, to: 68 },
        parts: [
          { text: 'Wait', frame: null },
          { text: 'for', frame: 38 },
          { text: 'me!', frame: 44 },
        ],
      },
    ]);
  });

  test('stand in the order of their rows, memos in that of writing', () => {
    const { shot } = withLines(
      'sound 60..70 "late"',
      'voice "Nao" 1..10 "early"',
      'note 9 "b"',
      'note 3 "a"',
      'memo "z"',
      'memo "a"',
    );
    expect(shot!.spoken.map((each) => each.kind)).toEqual(['voice', 'sound']);
    expect(shot!.notes.map((each) => each.text)).toEqual(['a', 'b']);
    expect(shot!.memos.map((each) => each.text)).toEqual(['z', 'a']);
  });

  test('past the end are a warning, and stop at the last row', () => {
    const { shot, codes } = withLines(
      'voice "Nao" 4+1..6+0 "Wait" @5+12 "for me!"',
      'sound 130.. "door"',
      'note 130 "wind"',
    );
    expect(codes).toEqual([
      'warning dialogue-past-end',
      'warning dialogue-past-end',
      'warning note-past-end',
    ]);
    expect(shot!.spoken).toMatchObject([
      { frames: { from: 97, to: 120 }, parts: [{}, { text: 'for me!', frame: null }] },
    ]);
    expect(shot!.notes).toEqual([]);
  });

  test('tied outside their rows, or backwards, are errors', () => {
    expect(withLines('voice "Nao" 6..12 "Wait" @18 "for me!"').codes).toEqual(['error words-outside']);
    expect(withLines('voice "Nao" 6..20 "Wait" @18 "for" @12 "me!"').codes).toEqual([
      'error words-not-rising',
    ]);
  });
});

describe('a tied word', () => {
  test('on the first and on the last row of its range is inside', () => {
    const parts = (at: number) => withLines(`voice "N" 6..12 "a" @${at} "b"`);
    expect(parts(6).codes).toEqual([]);
    expect(parts(12).codes).toEqual([]);
    expect(parts(5).codes).toEqual(['error words-outside']);
    expect(parts(13).codes).toEqual(['error words-outside']);
  });

  test('that is wrong is left without a row, the words stay', () => {
    const { shot } = withLines('voice "N" 6..20 "a" @18 "b" @12 "c" @19 "d"');
    expect(shot!.spoken[0]!.parts.map(({ text, frame }) => [text, frame])).toEqual([
      ['a', null],
      ['b', 18],
      ['c', null],
      ['d', 19],
    ]);
  });
});

test('a note stands on the last row, not behind it', () => {
  expect(withLines('note 120 "x"').shot!.notes).toMatchObject([{ frame: 120, text: 'x' }]);
  expect(withLines('note 121 "x"').codes).toEqual(['warning note-past-end']);
});
