import { describe, expect, test } from 'vitest';
import { explained } from '../../explained.js';
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

describe('what is said of times and words, in full', () => {
  test.each<[string, string, string[]]>([
    ['a time of nothing', 'time 0+0\nA: 1..', ['error «0+0» A cut lasts for at least one frame.']],
    [
      'a time in frames',
      'time 2\nA: 1..',
      ['hint «2» This cut lasts 2 frames; were seconds meant, `2+0`?', ' > write `2+0`: «2» → «2+0»'],
    ],
    ['half a second in frames', 'time 12\nA: 1..', []],
    [
      'eleven frames',
      'time 11\nA: 1..',
      ['hint «11» This cut lasts 11 frames; were seconds meant, `11+0`?', ' > write `11+0`: «11» → «11+0»'],
    ],
    [
      'eleven minutes',
      'time 660+0\nA: 1..',
      [
        'error «660+0» A cut lasts for ten minutes at most (`600+0`); is this one in frames or in seconds + frames?',
      ],
    ],
    ['ten minutes', 'time 600+0\nA: 1..', []],
    [
      'ten minutes and a frame',
      'time 600+1\nA: 1..',
      [
        'error «600+1» A cut lasts for ten minutes at most (`600+0`); is this one in frames or in seconds + frames?',
      ],
    ],
    [
      'no frames a second',
      'time 1+0\nfps 0',
      ['error «0» `fps` takes a whole number of frames a second from 1 to 120.'],
    ],
    [
      'too many frames a second',
      'time 1+0\nfps 121',
      ['error «121» `fps` takes a whole number of frames a second from 1 to 120.'],
    ],
    ['as many as there may be', 'time 1+0\nfps 120', []],
    ['on nothing', 'time 1+0\non 0', ['error «0» `on` takes a whole number of frames from 1 to 240.']],
    ['on too many', 'time 1+0\non 241', ['error «241» `on` takes a whole number of frames from 1 to 240.']],
    ['on as many as there may be', 'time 1+0\non 240', []],
    [
      'numbers by something else',
      'time 1+0\nnumbering fram',
      [
        'error «fram» Drawings are numbered by `sequence` or by `frame`, not by `fram`.',
        ' > write `frame`: «fram» → «frame»',
      ],
    ],
    [
      'numbers by nothing known',
      'time 1+0\nnumbering x',
      ['error «x» Drawings are numbered by `sequence` or by `frame`, not by `x`.'],
    ],
    ['a mark that nobody uses', 'time 1+0\nmark hit 5', ['hint «hit» Nothing stands at mark `hit`.']],
    ['marks that hang on marks', 'time 1+0\nmark hit 5\nmark after hit+3\nnote after "here"', []],
    [
      'marks of which one is used by none',
      'time 1+0\nmark hit 5\nmark after hit+3',
      ['hint «after» Nothing stands at mark `after`.'],
    ],
    [
      'marks that go round',
      'time 1+0\nmark a b+1\nmark b c+1\nmark c a+1\nnote a "x"\nnote b "y"',
      ['error «a+1» These marks hang on each other in a circle: `a` → `b` → `c` → `a`.'],
    ],
    [
      'a mark before the first frame',
      'time 1+0\nmark a 3\nnote a-3 "x"\nnote a-4 "y"',
      [
        'error «a-3» This is 1 before the first row, which is frame 1.',
        'error «a-4» This is 2 before the first row, which is frame 1.',
      ],
    ],
    [
      'a mark on frame nothing',
      'time 1+0\nmark a 0\nnote a "x"',
      [
        'error «0» There is no frame 0; the first row of the sheet is frame 1.',
        ' > write frame 1: «0» → «1»',
      ],
    ],
    [
      'a mark with a name that is nearly right',
      'time 1+0\nmark hit 5\nnote hti+2 "x"\nnote hit "y"',
      ['error «hti+2» There is no mark `hti`; did you mean `hit`?', ' > write `hit`: «hti» → «hit»'],
    ],
    [
      'a length that is a mark',
      'time 1+0\nmark hit 5\nA: 1:hit 2..',
      [
        'hint «hit» Nothing stands at mark `hit`.',
        'error «hit» A mark is a place, not a length; to go on until `hit`, write `..` and then `@hit` before the next item.',
      ],
    ],
    [
      'a range that starts late',
      'time 2+0\nvoice "Nao" 1+0..2+0 "Wait here"',
      [
        'hint «1+0» `1+0` is the last frame of a second; was `1+1`, the first of the next, meant?',
        ' > start on `1+1`: «1+0» → «1+1»',
      ],
    ],
    ['a range that starts with a frame more', 'time 2+0\nvoice "Nao" 1+1..2+0 "Wait here"', []],
    [
      'a range from nothing',
      'time 2+0\nvoice "Nao" 0+0..2+0 "Wait here"',
      [
        'error «0+0» There is no frame 0; the first row of the sheet is frame 1.',
        ' > write frame 1: «0+0» → «1»',
      ],
    ],
    [
      'a range that runs back',
      'time 2+0\nvoice "Nao" 20..10 "Wait here"',
      ['error «20..10» This range ends on frame 10, before it starts on frame 20.'],
    ],
    ['a range to the end', 'time 2+0\nvoice "Nao" 20.. "Wait"', []],
    [
      'a range to the end from behind it',
      'time 2+0\nvoice "Nao" 60.. "Wait"',
      [
        'warning «60..» This dialogue starts on frame 2+12 (60), past the end of the sheet, which has 48 rows.',
      ],
    ],
    [
      'a line past the end',
      'time 2+0\nvoice "Nao" 40..60 "Wait"',
      [
        'warning «40..60» This dialogue lasts to frame 2+12 (60), past the end of the sheet, which has 48 rows.',
      ],
    ],
    [
      'a line that begins past the end',
      'time 2+0\nsound 49..60 "bell"',
      ['warning «49..60» This sound starts on frame 2+1 (49), past the end of the sheet, which has 48 rows.'],
    ],
    [
      'words outside their line',
      'time 2+0\nvoice "Nao" 10..40 @9 "Wait" @41 "here"',
      [
        'error «9» These words are tied to frame 9, outside their range, frames 0+10 to 1+16 (10 to 40).',
        'error «41» These words are tied to frame 1+17 (41), outside their range, frames 0+10 to 1+16 (10 to 40).',
      ],
    ],
    [
      'words that go back',
      'time 2+0\nvoice "Nao" 10..40 @20 "Wait" @20 "here" @30 "now"',
      ['error «20» These words are tied to frame 20, but the words before them to frame 20.'],
    ],
    ['words at the edges of their line', 'time 2+0\nvoice "Nao" 10..40 @10 "Wait here" @40 "now"', []],
    [
      'a note past the end',
      'time 2+0\nnote 49 "x"',
      ['warning «49» This note stands beside frame 2+1 (49), past the end of the sheet, which has 48 rows.'],
    ],
    [
      'the same cut as itself',
      'time 1+0\nsame 1 "x"',
      ['warning «1» Cut 1 is this cut; `same` names the other one.'],
    ],
    [
      'the same cut twice',
      'time 1+0\nsame 2 "x"\nsame 2 "y"',
      ['error «same 2 "y"» `same 2` is said twice.', ' + «same 2 "x"» the first is here'],
    ],
    [
      'a silenced error',
      'time 1+0\naccept unknown-level "so"\nA: 1..',
      [
        'error «unknown-level» `unknown-level` is an error: it has to be mended, only warnings and hints can be accepted.',
      ],
    ],
    [
      'a silenced nothing',
      'time 1+0\naccept key-onder "so"\nA: 1..',
      ['error «key-onder» There is no message `key-onder`.'],
    ],
    [
      'a silenced nothing without a guess',
      'time 1+0\naccept qqqqqqqq "so"\nA: 1..',
      ['error «qqqqqqqq» There is no message `qqqqqqqq`.'],
    ],
    [
      'a second scene',
      'time 1+0\nscene 1\nscene 2',
      ['error «scene 2» `scene` is said twice.', ' + «scene 1» the first is here'],
    ],
    [
      'a second time',
      'time 1+0\ntime 2+0',
      ['error «time 2+0» `time` is said twice.', ' + «time 1+0» the first is here'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
