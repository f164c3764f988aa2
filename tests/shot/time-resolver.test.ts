/** Lengths, positions, ranges and marks. */

import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { bindText, withLines } from './bind.js';

function noteFrame(position: string, ...more: string[]): number | undefined {
  return withLines(`note ${position} "here"`, ...more).shot!.notes[0]?.frame;
}

describe('positions', () => {
  test.each([
    ['37', 37],
    ['4+12', 108],
    ['4+24', 120],
    ["2'03", 35],
    ['0+1', 1],
  ])('%s is frame %i', (position, frame) => {
    expect(noteFrame(position)).toBe(frame);
  });

  test('go by the speed of the cut', () => {
    expect(noteFrame('4+12', 'fps 25')).toBe(112);
  });

  test.each(['0', '0+0', "0'00"])('%s is an error: the first row is frame 1', (position) => {
    const { codes, diagnostics } = withLines(`note ${position} "here"`);
    expect(codes).toEqual(['error position-zero']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('1');
  });
});

describe('more frames than a second has', () => {
  test.each([
    ['note 3+30 "here"', '4+6'],
    ['sound 1+30..2+3 "door"', '2+6'],
    ['sound 1+1..2+40 "door"', '3+16'],
  ])('%s is hinted at, with what it becomes', (line, meant) => {
    const { codes, diagnostics } = withLines(line);
    expect(codes.filter((code) => code.includes('frames-past'))).toEqual(['hint frames-past-second']);
    const [hint] = diagnostics.filter(({ code }) => code === 'frames-past-second');
    expect(messageOf(hint!, 'en')).toContain(`is \`${meant}\`.`);
    expect(hint!.fix!.edits[0]!.text).toBe(meant);
  });

  test('is no hint for frames alone, for the last row of a second, and at another speed', () => {
    expect(withLines('note 0+30 "here"', 'note 1+24 "there"').codes).toEqual([]);
    expect(withLines('fps 30', 'note 1+30 "here"').codes).toEqual([]);
    expect(withLines('fps 25', 'note 1+26 "here"').codes).toEqual(['hint frames-past-second']);
  });
});

describe('marks', () => {
  test('name a row, and rows before and after it', () => {
    expect(noteFrame('hit', 'mark hit 2+6')).toBe(54);
    expect(noteFrame('hit+6', 'mark hit 2+6')).toBe(60);
    expect(noteFrame('hit-3', 'mark hit 2+6')).toBe(51);
  });

  test('hang on marks, in whatever order they are written', () => {
    expect(noteFrame('echo', 'mark echo hit+18', 'mark hit 12')).toBe(30);
  });

  test('may not hang on each other in a circle', () => {
    const { codes, diagnostics } = withLines('mark a b+1', 'mark b c', 'mark c a-1', 'note a "here"');
    expect(codes).toEqual(['error mark-circle']);
    expect(messageOf(diagnostics[0]!, 'en')).toContain('→');
    expect(withLines('mark a a+1', 'note a "here"').codes).toEqual(['error mark-circle']);
  });

  test('before the first row are an error', () => {
    expect(withLines('mark hit 3', 'note hit-3 "here"').codes).toEqual(['error position-zero']);
  });

  test('that are not there: did you mean', () => {
    const { codes, diagnostics } = withLines('mark strike 30', 'note stirke+2 "here"', 'note strike "there"');
    expect(codes).toEqual(['error unknown-mark']);
    expect(messageOf(diagnostics[0]!, 'en')).toContain('did you mean `strike`?');
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('strike');
  });

  test('that an unreadable statement began are not reported as unknown', () => {
    expect(withLines('mark hit ???', 'note hit "here"').codes).toEqual([]);
  });

  test('are no lengths', () => {
    expect(bindText('cut 1\ntime 48\nmark hit 9\nA: 1:hit 2..\n').codes).toContain('error length-mark');
  });

  test('that nothing uses are a hint', () => {
    expect(withLines('mark hit 2+6').codes).toEqual(['hint mark-unused']);
    expect(withLines('mark hit 2+6', 'mark echo hit+6', 'note echo "here"').codes).toEqual([]);
  });

  test('twice of one name are an error that shows both', () => {
    const { codes, diagnostics } = withLines('mark hit 6', 'mark hit 9', 'note hit "here"');
    expect(codes).toEqual(['error name-twice']);
    expect(diagnostics[0]!.notes[0]!.span).toBeDefined();
  });
});

describe('ranges', () => {
  const soundFrames = (range: string) => withLines(`sound ${range} "door"`).shot!.spoken[0]?.frames;

  test('hold both their ends', () => {
    expect(soundFrames('1+1..5+0')).toEqual({ from: 25, to: 120 });
  });

  test('without an end go to the end of the sheet', () => {
    expect(soundFrames('1+1..')).toEqual({ from: 25, to: 120 });
  });

  test('that start on the last frame of a second are asked about', () => {
    const { codes, diagnostics } = withLines('sound 1+0..2+0 "door"');
    expect(codes).toEqual(['hint range-starts-late']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('1+1');
    expect(withLines('sound 24..2+0 "door"').codes).toEqual([]);
  });

  test('may be one frame', () => {
    expect(soundFrames('12..12')).toEqual({ from: 12, to: 12 });
  });

  test('that run backwards are an error', () => {
    expect(withLines('sound 12..6 "door"').codes).toEqual(['error range-backwards']);
  });
});

describe('a length', () => {
  const frames = (time: string, fps = 24) => bindText(`cut 1\ntime ${time}\nfps ${fps}\nA: 1..\n`).shot?.time;

  test.each([
    ['37', 37],
    ['5+12', 132],
    ['5+24', 144],
    ["8'04", 132],
  ])('%s is %i frames', (time, count) => {
    expect(frames(time)).toBe(count);
  });

  test('in seconds goes by the speed of the cut, in feet by the film', () => {
    expect(frames('2+0', 30)).toBe(60);
    expect(frames("2'00", 30)).toBe(32);
  });
});

test('a chain of a thousand marks is followed', () => {
  const marks = Array.from({ length: 1000 }, (_, i) => `mark m${i} ${i === 999 ? '1' : `m${i + 1}`}`);
  const { shot, codes } = withLines(...marks, 'note m0 "x"');
  expect(codes).toEqual([]);
  expect(shot!.notes[0]!.frame).toBe(1);
});

test('a range without an end that starts behind the sheet ends where it starts', () => {
  const { shot } = withLines('fade out 130..');
  expect(shot!.camera.light).toMatchObject([{ frames: { from: 130, to: 130 } }]);
  expect(withLines('sound 130.. "x"').diagnostics[0]!.parameters).toMatchObject({
    from: 130,
    to: 130,
    rows: 120,
  });
});

test('marks that hang on each other add up, in whatever order they are asked for', () => {
  const { shot, codes } = withLines(
    'mark a 10',
    'mark b a+5',
    'mark c b-3',
    'note c "c"',
    'note b "b"',
    'note a "a"',
  );
  expect(codes).toEqual([]);
  expect(shot!.notes.map(({ frame, text }) => [frame, text])).toEqual([
    [10, 'a'],
    [12, 'c'],
    [15, 'b'],
  ]);
});

test('a range with one end that cannot be had is left out, and only that end is told', () => {
  for (const range of ['nowhere..9', '3..nowhere', 'nowhere..']) {
    const { shot, codes } = withLines(`voice "Nao" ${range} "Wait"`);
    expect(codes).toEqual(['error unknown-mark']);
    expect(shot!.spoken).toEqual([]);
  }
});
