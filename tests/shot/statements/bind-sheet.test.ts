import { describe, expect, test } from 'vitest';
import { bindText, withLines } from '../bind.js';

describe('a setting of the cut', () => {
  test.each([
    ['fps 0', 'fps-range'],
    ['on 0', 'on-range'],
    ['numbering frames', 'unknown-numbering'],
  ])('%s gives %s', (line, code) => {
    expect(withLines(line).codes).toEqual([`error ${code}`]);
  });

  test('stands before that of the episode; a wrong one leaves that', () => {
    const of = (line: string) =>
      bindText(`cut 1\ntime 5\n${line}\nA: 1..\n`, [], { fps: 25, on: 3, numbering: 'frame' }).shot!;
    expect(of('fps 30')).toMatchObject({ fps: 30, on: 3, numbering: 'frame' });
    expect(of('fps 0').fps).toBe(25);
    expect(of('on 1').on).toBe(1);
    expect(of('on 0').on).toBe(3);
    expect(of('numbering sequence').numbering).toBe('sequence');
    expect(of('numbering frames').numbering).toBe('frame');
  });

  test('of frames a second is 1 to 120, whole', () => {
    expect(withLines('fps 1').codes).toEqual([]);
    expect(withLines('fps 120').codes).toEqual([]);
    expect(withLines('fps 121').codes).toEqual(['error fps-range']);
  });

  test('that is misspelt is guessed at, where it is near', () => {
    const fix = (line: string) => withLines(line).diagnostics[0]!.fix?.edits.map(({ text }) => text);
    expect(fix('numbering frames')).toEqual(['frame']);
    expect(fix('numbering backwards')).toBeUndefined();
  });
});

test('the header says what is written, artists by name', () => {
  const { shot } = bindText(
    'cut 12A "Rooftop"\ntime 5+0\nscene 3\ntake "3 of 5"\nartist "B"\nartist "A"\nA: 1..\n',
  );
  expect(shot).toMatchObject({
    cut: '12A',
    title: 'Rooftop',
    scene: '3',
    take: '3 of 5',
    artists: ['A', 'B'],
  });
});

describe('the time of a cut', () => {
  const codes = (time: string) => bindText(`cut 1\n${time}\nA: 1..\n`).codes;

  test('is wanted, and at least one frame', () => {
    expect(codes('')).toEqual(['error time-missing']);
    expect(codes('time 0+0')).toEqual(['error time-zero']);
    expect(codes('time 0+1')).toEqual([]);
  });

  test('of a few frames is probably one of seconds', () => {
    expect(codes('time 5')).toEqual(['hint time-in-frames']);
    expect(codes('time 12')).toEqual([]);
    expect(codes("time 0'05")).toEqual([]);
  });

  test('is ten minutes at most', () => {
    expect(codes('time 600+0')).toEqual([]);
    expect(codes('time 600+1')).toEqual(['error time-too-long']);
    expect(codes('time 3600+0')).toEqual(['error time-too-long']);
  });

  test('that cannot be read is not called missing', () => {
    expect(codes('time "five"')).toEqual([]);
  });
});

describe('an accepted message', () => {
  test('must be one that there is: did you mean', () => {
    const { codes, diagnostics } = withLines('accept mark-unsed "for the retake"');
    expect(codes).toEqual(['error accept-unknown']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('mark-unused');
    expect(withLines('accept whatever-it-is "why not"').diagnostics[0]!.fix).toBeUndefined();
  });

  test('is no error', () => {
    expect(withLines('accept timeline-short "drawn later"').codes).toEqual(['error accept-error']);
  });

  test('is accepted once', () => {
    expect(withLines('accept mark-unused "a"', 'accept mark-unused "b"').codes).toEqual([
      'error statement-twice',
    ]);
  });
});

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
