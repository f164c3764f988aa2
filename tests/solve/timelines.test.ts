/** What a timeline shows: lengths, holds, `@`, `..`, groups, there and back, phrases. */

import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { shown, solveText } from './shown.js';

describe('the whole cut of the reference', () => {
  const { solved, codes } = solveText(`cut 12 "Rooftop, dusk"
time 5+0
artist "M. Arai"
memo "Wind from screen left throughout."
stack BG A BOOK1 B
A "Nao":  1:12 1--2-3:1+0 (4-5-)*3 6..
B "scarf": x:24 (1--2--)..
voice "Nao" 1+6..2+20 "Wait for me!"
sound 3+1..3+8 "door slams"
level BG size 560x200mm at 130,0
`);

  test('has 8 keys, 9 in-betweens, 17 drawings, and nothing to be said', () => {
    expect(solved.counts).toEqual({
      keys: 8,
      breakdowns: 0,
      inbetweens: 9,
      drawings: 17,
      reused: 0,
      backgrounds: 0,
    });
    expect(codes).toEqual([]);
  });

  test('has its stack from bottom to top', () => {
    expect(solved.levels.map((level) => [level.name, level.timed])).toEqual([
      ['BG', false],
      ['A', true],
      ['BOOK1', false],
      ['B', true],
    ]);
  });

  test('shows one thing on each of its 120 frames', () => {
    for (const level of solved.levels.filter((each) => each.timed)) {
      expect(level.exposures.map((each) => each.frame)).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
    }
  });
});

describe('exposure', () => {
  test('an item that says nothing is exposed on twos', () => {
    expect(shown(8, '1--2').runs).toBe('1*2 1.1*2 1.2*2 2*2');
  });

  test('a statement `on 3` changes that for the cut', () => {
    expect(shown(6, '1-:1 2:2', 'on 3').runs).toBe('1*3 1.1*1 2*2');
  });

  test('`on` counts from where it stands to the end of its group', () => {
    expect(shown(16, '1 on 1 - (on 3 2 3) 4 on 2 5..').runs).toBe('1*2 1.1*1 2*3 3*3 4*1 5*6');
  });

  test('a length of its own goes for one item, in `1---:3` for the last dash', () => {
    expect(shown(11, '1---:3 2').runs).toBe('1*2 1.1*2 1.2*2 1.3*3 2*2');
  });

  test('lengths may be seconds and frames, or feet and frames', () => {
    expect(shown(24 + 6 + 36, "1:1+6 2:2'04").runs).toBe('1*30 2*36');
  });

  test('shown again straight after itself, a drawing is one hold', () => {
    expect(shown(20, '1:12 1--2').runs).toBe('1*14 1.1*2 1.2*2 2*2');
    expect(shown(6, '(1)*3').runs).toBe('1*6');
    expect(shown(6, 'x:2 x:2 x').runs).toBe('x*6');
  });
});

describe('until an @', () => {
  test('the item before is held', () => {
    expect(shown(12, '1 @7 2..').runs).toBe('1*6 2*6');
    expect(shown(12, '1- @7 2..').runs).toBe('1*2 1.1*4 2*6');
  });

  test('first in the line, the level is empty until then', () => {
    expect(shown(12, '@7 1..').runs).toBe('x*6 1*6');
  });

  test('an item that says nothing may be cut shorter than `on` says', () => {
    expect(shown(6, 'on 3 1 2 @5 3..').runs).toBe('1*3 2*1 3*2');
  });

  test('`..` goes on, holding or repeating', () => {
    expect(shown(12, '1.. @7 2..').runs).toBe('1*6 2*6');
    expect(shown(12, '(1-2-).. @7 3..').runs).toBe('1*2 1.1*2 2*2 3*6');
  });

  test('the last drawing of a group that has been played is held', () => {
    expect(shown(14, '(1 2)*2 @11 3..').runs).toBe("1*2 2*2 1'*2 2'*4 3*4");
  });

  test('going backwards is an error', () => {
    expect(shown(12, '1 2 3 @5 4..').codes).toEqual(['error at-backwards']);
    expect(shown(12, '1:6 @5 2..').codes).toEqual(['error at-backwards']);
    expect(shown(12, '(1-2-)*2 @9 3..').codes).toEqual(['error at-backwards']);
  });

  test('a length that stops short of it is an error that offers the right one', () => {
    const { codes, diagnostics } = shown(12, '1:4 @9 2..');
    expect(codes).toEqual(['error at-gap']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('8');
    expect(shown(12, '(1-2-):6 @9 3..').diagnostics[0]!.fix!.edits[0]!.text).toBe('..');
  });

  test('a phrase that ends in `..` is held until then', () => {
    expect(shown(12, 'stop @9 3..', 'phrase stop = 1-2..').runs).toBe('1*2 1.1*2 2*4 3*4');
  });

  test('past the end of the sheet it is an error', () => {
    expect(shown(12, '1 @13 2..').codes).toContain('error at-past-end');
  });
});

describe('filling the sheet', () => {
  test('too short says by how much and where, and offers to hold the last drawing', () => {
    const { diagnostics, codes } = shown(24, '1--2');
    expect(codes).toEqual(['error timeline-short']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe(
      'Level A shows 8 of 24 frames: 16 frames missing, from frame 9 on.',
    );
    const edit = diagnostics[0]!.fix!.edits[0]!;
    expect([edit.text, edit.span.start, edit.span.end]).toEqual([
      '..',
      'cut 1\ntime 24\nA: 1--2'.length,
      'cut 1\ntime 24\nA: 1--2'.length,
    ]);
  });

  test('too short with a length of its own offers the length that fits', () => {
    expect(shown(24, '1--2:4').diagnostics[0]!.fix!.edits[0]!.text).toBe('18');
    expect(shown(24, '(1-2-)*2').diagnostics[0]!.fix!.edits[0]!.text).toBe('..');
    expect(shown(24, '(1-2)<>').diagnostics[0]!.fix!.edits[0]!.text).toBe('..');
  });

  test('too long says by how much and at which item', () => {
    const { diagnostics, codes } = shown(10, '1--2--3');
    expect(codes).toEqual(['error timeline-long', 'warning drawing-never-seen']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe(
      'Level A shows 14 frames, but the sheet has 10: 4 frames too many, from here on.',
    );
  });

  test('names the handles of the sheet', () => {
    const text = 'cut 1\ntime 4+0\noverlap out 24\nA: 1:12 2\n';
    const { diagnostics } = solveText(text);
    const short = diagnostics.find((each) => each.code === 'timeline-short');
    expect(messageOf(short!, 'en')).toBe(
      'Level A shows 14 of 96 + 12 handle frames: 94 frames missing, from frame 15 on.',
    );
    expect(solveText(text.replace('1:12 2', '1:12 2:96')).codes).toEqual([]);
  });

  test('one frame is a frame', () => {
    expect(messageOf(shown(9, '1--2').diagnostics[0]!, 'en')).toContain('1 frame missing');
  });

  test('nothing is said of the length where an item could not be read', () => {
    expect(shown(24, '1 wlk 2').codes).toEqual(['error unknown-phrase']);
  });
});

describe('groups', () => {
  test('are played so many times, or for so long, the last pass cut short', () => {
    expect(shown(16, '(1-2-)*2').runs).toBe("1*2 1.1*2 2*2 2.1*2 1'*2 1.1'*2 2'*2 2.1'*2");
    expect(shown(13, '(1-2-):13').runs).toBe("1*2 1.1*2 2*2 2.1*2 1'*2 1.1'*2 2'*1");
    expect(shown(5, '(1-2-)..').runs).toBe('1*2 1.1*2 2*1');
  });

  test('stand in groups', () => {
    expect(shown(12, '((1)*2 (2 3)*2)*2', 'on 1').runs).toBe(
      "1*2 2*1 3*1 2'*1 3'*1 1'*2 2'*1 3'*1 2'*1 3'*1",
    );
  });

  test('are cycles where they are played more than once', () => {
    expect(shown(24, '(1-2-)*2 3:4 (4-):4').level.cycles).toEqual([
      { firstFrame: 1, lastFrame: 16, passFrames: 8, times: 2, bounce: false, depth: 0 },
    ]);
    expect(shown(24, 'x:3 (1-2-)..').level.cycles).toEqual([
      { firstFrame: 4, lastFrame: 24, passFrames: 8, times: null, bounce: false, depth: 0 },
    ]);
    expect(shown(20, '((1 2)*2 3)*2').level.cycles).toEqual([
      { firstFrame: 1, lastFrame: 20, passFrames: 10, times: 2, bounce: false, depth: 0 },
      { firstFrame: 1, lastFrame: 8, passFrames: 4, times: 2, bounce: false, depth: 1 },
      { firstFrame: 11, lastFrame: 18, passFrames: 4, times: 2, bounce: false, depth: 1 },
    ]);
  });

  test('that are played once are no cycle', () => {
    expect(shown(8, '(1-2-)').level.cycles).toEqual([]);
    expect(shown(8, '(1-2-)').level.exposures.some((each) => each.again)).toBe(false);
  });
});

describe('there and back', () => {
  test('does not double its ends', () => {
    expect(shown(24, '(1--2)<>*2').runs).toBe(
      "1*2 1.1*2 1.2*2 2*2 1.2*2 1.1*2 1'*2 1.1'*2 1.2'*2 2'*2 1.2'*2 1.1'*2",
    );
  });

  test('alone is once', () => {
    expect(shown(14, '(1--2)<> 1').runs).toBe(shown(14, '(1--2)<>*1 1').runs);
  });

  test('keeps the lengths of its drawings on the way back', () => {
    expect(shown(16, '(1:4-:1-2:3)<> 1:3').runs).toBe('1*4 1.1*1 1.2*2 2*3 1.2*2 1.1*1 1*3');
  });

  test('costs no drawings', () => {
    expect(shown(48, '(1--2)<>..').level.drawings.map((each) => each.drawing)).toEqual([
      '1',
      '1.1',
      '1.2',
      '2',
    ]);
  });

  test('of one drawing is that drawing, of two one after the other', () => {
    expect(shown(6, '(1)<>*3').runs).toBe('1*6');
    expect(shown(8, '(1 2)<>*2').runs).toBe("1*2 2*2 1'*2 2'*2");
  });

  test('turns round groups inside', () => {
    expect(shown(18, '((1-2-)*1 3)<> 1..').runs).toBe('1*2 1.1*2 2*2 2.1*2 3*2 2.1*2 2*2 1.1*2 1*2');
  });

  test('a count of passes is cut by the end of the sheet', () => {
    expect(shown(9, '(1--2)<>..').runs).toBe('1*2 1.1*2 1.2*2 2*2 1.2*1');
  });
});

describe('phrases', () => {
  test('are their items in parentheses, exposed as the timeline that plays them says', () => {
    const phrase = 'phrase walk = 1--2--';
    expect(shown(12, 'walk', phrase).runs).toBe(shown(12, '(1--2--)').runs);
    expect(shown(24, 'walk*2', phrase).runs).toBe(shown(24, '(1--2--)*2').runs);
    expect(shown(18, 'on 3 walk', phrase).runs).toBe(shown(18, 'on 3 (1--2--)').runs);
  });

  test('play phrases', () => {
    expect(
      shown(16, 'both*2', 'phrase both = one two\nphrase one = 1-\nphrase two = 2-').level.drawings,
    ).toHaveLength(4);
  });
});

test('a timeline that names no drawing is too short', () => {
  const { codes, diagnostics } = shown(10, 'on 1');
  expect(codes).toEqual(['error timeline-short']);
  expect(messageOf(diagnostics[0]!, 'en')).toBe(
    'Level A shows nothing on any of 10 frames: name its drawings, or write `x..` where it stays empty.',
  );
});

test('what a background or an overlay shows is counted by itself', () => {
  const cut = 'cut 1\ntime 1+0\nstack BG BGX2 A BOOK1 BOOKER\n';
  const { solved } = solveText(`${cut}BG: 1:12 2..\nBGX2: 1..\nA: 1--2..\nBOOK1: 1..\nBOOKER: 1..\n`);
  expect(solved.counts).toEqual({
    keys: 3,
    breakdowns: 0,
    inbetweens: 2,
    drawings: 5,
    reused: 0,
    backgrounds: 4,
  });
  expect(solved.levels.map(({ background }) => background)).toEqual([true, true, false, true, false]);
});
