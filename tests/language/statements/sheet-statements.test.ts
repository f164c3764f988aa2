import { describe, expect, test } from 'vitest';
import { bare, readOne, told } from '../read-text.js';

describe('dialogue', () => {
  test('who speaks and how', () => {
    expect(readOne('voice', 'voice "Nao" 1..9 "a"').manner).toBe('on');
    expect(readOne('voice', 'voice "Nao" off 1..9 "a"').manner).toBe('off');
    expect(readOne('voice', 'voice "Nao" mono 1..9 "a"').manner).toBe('mono');
  });

  test.each(['off..9', 'mono..9', 'off+3..9', 'mono-3..9'])('a mark may be called so: %s', (range) => {
    const voice = readOne('voice', `voice "Nao" ${range} "a"`);
    expect([voice.manner, voice.range.from.form]).toEqual(['on', 'mark']);
  });

  test('words tied to rows', () => {
    expect(bare(readOne('voice', 'voice "Nao" 1+6..2+20 "Wait" @1+14 "for" @40 "me!"').words)).toEqual([
      { text: 'Wait', at: null },
      { text: 'for', at: { kind: 'position', form: 'seconds', seconds: 1, frames: 14 } },
      { text: 'me!', at: { kind: 'position', form: 'frames', frames: 40 } },
    ]);
  });
});

test('cuts, scenes and takes have numbers with letters, or text', () => {
  expect(readOne('cut', 'cut 12A "Rooftop"').number.text).toBe('12A');
  expect(readOne('scene', 'scene B').value.text).toBe('B');
  expect(readOne('take', 'take "3 of 5"').value.text).toBe('3 of 5');
});

describe('an accepted message', () => {
  test('is one name, hyphens and all', () => {
    const accept = readOne('accept', 'accept range-starts-late "as drawn"');
    expect([accept.code.text, accept.reason.text]).toEqual(['range-starts-late', 'as drawn']);
  });

  test('has no blanks inside', () => {
    expect(told('accept range - starts "as drawn"')).toMatchObject([{ code: 'does-not-fit', at: '-' }]);
  });
});

test('words of a sound may be tied to rows, the first as well', () => {
  expect(bare(readOne('sound', 'sound 1..9 @3 "tap" @6 "tap"').words)).toMatchObject([
    { text: 'tap', at: { frames: 3 } },
    { text: 'tap', at: { frames: 6 } },
  ]);
});
