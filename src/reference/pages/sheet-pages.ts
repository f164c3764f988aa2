import type { StatementPage } from '../statement-pages.js';

const ROWS: StatementPage['parts'][number] = [
  '1+6..2+20',
  'its rows, both included; `1+6..` goes to the end',
];
const TIED: StatementPage['parts'][number] = [
  '@1+14 "for"',
  'words that stand on a row of their own; the others are spread over the rows',
];

export const sheetPages: Readonly<Record<string, StatementPage>> = {
  voice: {
    title: 'dialogue',
    text: 'A speaker, the rows that the line takes, and its words. The dialogue column prints the speaker, a line over the rows, and the words beside it.',
    parts: [
      ['"Nao"', 'the speaker'],
      ['off', 'the speaker is out of picture'],
      ['mono', 'an inner voice'],
      ROWS,
      [
        '"Wait for me!"',
        'the words; a reading in 《》 behind kanji, as in `"行《い》く"`, moves mouths and is not printed',
      ],
      TIED,
    ],
    examples: [
      {
        text: 'A: 1..\nvoice "Nao" 1+6..2+20 "Wait for me!"\nvoice "Pim" off 3+1..3+20 "Hurry!"\n',
        says: 'Pim is out of picture.',
      },
      {
        text: 'A: 1..\nvoice "Nao" 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"\n',
        says: 'Words on the rows where the mouth says them.',
      },
    ],
    codes: [
      'missing-quotes',
      'words-outside',
      'words-not-rising',
      'dialogue-past-end',
      'line-too-fast',
      'mouth-unread',
      'range-backwards',
      'range-starts-late',
      'unknown-mark',
      'missing-glyph',
    ],
    see: ['mouth', 'sound', 'music', 'note', 'mark'],
    subject: 'words.md#dialogue-and-sound',
  },
  sound: {
    title: 'a sound effect',
    text: 'What is heard, beside its rows in the dialogue column.',
    parts: [ROWS, ['"door slams"', 'what is heard'], TIED],
    examples: [
      { text: 'A: 1..\nsound 3+1..3+8 "door slams"\n', says: 'Eight rows of the fourth second.' },
      { text: 'A: 1..\nsound 1+1..3+0 "tick" @1+12 "tock" @2+1 "tick"\n', says: 'Each beat on its row.' },
    ],
    codes: [
      'missing-quotes',
      'words-outside',
      'words-not-rising',
      'dialogue-past-end',
      'range-backwards',
      'range-starts-late',
      'unknown-mark',
      'missing-glyph',
    ],
    see: ['voice', 'music', 'mark'],
    subject: 'words.md#dialogue-and-sound',
  },
  music: {
    title: 'music',
    text: 'Which music, beside its rows in the dialogue column.',
    parts: [ROWS, ['"M3"', 'which'], TIED],
    examples: [
      { text: 'A: 1..\nmusic 1.. "M3"\n', says: 'From the first row to the last.' },
      { text: 'A: 1..\nmusic 2+1..5+0 "theme, softly"\n', says: 'Over four seconds.' },
    ],
    codes: [
      'missing-quotes',
      'words-outside',
      'words-not-rising',
      'dialogue-past-end',
      'range-backwards',
      'range-starts-late',
      'unknown-mark',
      'missing-glyph',
    ],
    see: ['voice', 'sound'],
    subject: 'words.md#dialogue-and-sound',
  },
  track: {
    title: 'the cut’s recording',
    text: 'A WAV file in the cut’s folder, in the episode’s, or below. Its first sample is heard at the beginning of row 1. The waveform is printed behind the dialogue column; `cutwright listen` finds the lines in it.',
    parts: [
      ['"sound/c012.wav"', 'the file, from the folder of the cut'],
      ['@13', 'the row on which the recording begins; 1 if nothing is said'],
      ['from 12.48s', 'begins so many seconds after the beginning of the file'],
      ['from 0:03:12:08', 'the same as hours, minutes, seconds and frames at the cut’s speed'],
    ],
    examples: [
      {
        text: 'A: 1..\ntrack "sound/c012.wav"\nvoice "Nao" 1+6..2+20 "Wait for me!"\n',
        says: 'A recording of the cut alone.',
      },
      {
        text: 'A: 1..\ntrack "sound/reel2.wav" @1+1 from 12.48s\nvoice "Nao" 2+6..3+20 "Wait for me!"\n',
        says: 'A second of silence, then a piece of a longer reel.',
      },
    ],
    codes: [
      'track-missing',
      'track-outside',
      'track-unreadable',
      'track-damaged',
      'track-length',
      'track-start',
      'track-silent',
      'track-past-end',
      'timecode-range',
      'voice-unheard',
      'sound-unwritten',
      'statement-twice',
      'missing-quotes',
      'position-zero',
      'unknown-mark',
    ],
    see: ['voice', 'sound', 'music'],
    subject: 'words.md#the-recording',
  },
  mouth: {
    title: 'a level that is a speaker’s mouth',
    text: 'Stands in place of the level’s timeline, and makes it from the voice statements of the speaker: closed where nobody speaks, for u, w, m, b, p and pauses, half open for i, e and most consonants, open for a and o. It leads the sound by a frame and never comes late. Words tied to rows are kept there; between ties sounds are spread by how long they usually last. The editor offers to make it an ordinary timeline.',
    parts: [
      [
        '"Nao"',
        'the speaker, as the voice statements have it; lines that are off or mono do not move the mouth',
      ],
      ['1 2 3', 'the drawings: closed, half open, open'],
      ['1 a 2 i 3 u 4 e 5 o 6', 'closed, then one for each vowel; one drawing may stand for several'],
      ['on 3', 'how long a drawing is exposed at least; the `on` of the cut if nothing is said'],
      ['lead 2', 'frames by which the mouth leads the sound; 1 if nothing is said'],
      [
        'flaps',
        'the words are not read: the drawings are mixed evenly while a line lasts, none twice in a row, the same every time',
      ],
    ],
    examples: [
      {
        text: 'A: 1..\nmouth C "Nao" 1 2 3 on 3\nvoice "Nao" 7..2+4 "Wait for me, I know the way!"\n',
        says: 'Three mouths on threes, as television has them.',
      },
      {
        text: 'A: 1..\nmouth C "Nao" 1 a 2 i 3 u 4 e 5 o 6 lead 2\nvoice "Nao" 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"\n',
        says: 'A mouth for each vowel, two frames ahead of a recording that was read.',
      },
      {
        text: 'A: 1..\nmouth C "ナオ" 1 2 3 on 3\nvoice "ナオ" 7..2+4 "先《さき》に行《い》ってて！"\n',
        says: 'Kanji are read by the kana behind them in 《》, which are not printed.',
      },
      {
        text: 'A: 1..\nmouth C "Nao" 1 2 3 on 3 flaps\nvoice "Nao" 7..2+4 "Wait for me, I know the way!"\n',
        says: 'The words are not read.',
      },
    ],
    codes: [
      'mouth-and-timeline',
      'mouth-drawings',
      'mouth-vowel',
      'mouth-silent',
      'mouth-unread',
      'lead-range',
      'on-range',
      'level-outside',
      'statement-twice',
      'part-twice',
      'missing-quotes',
    ],
    see: ['voice', 'track', 'timeline', 'cels'],
    subject: 'words.md#mouths',
  },
  note: {
    title: 'a remark beside a row',
    text: 'Something for whoever works on that row. It stands beside it, and where there is no room, with a number at the row and the words in the memo.',
    parts: [
      ['2+12', 'the row: a frame or a mark'],
      ['"looks up"', 'the remark'],
    ],
    examples: [
      { text: 'A: 1..\nnote 2+12 "looks up"\n', says: 'Beside row 12 of the third second.' },
      { text: 'mark hit 3+1\nA: 1..\nnote hit-2 "eyes first"\n', says: 'It moves with the mark.' },
    ],
    codes: ['position-zero', 'note-past-end', 'unknown-mark', 'missing-quotes', 'missing-glyph'],
    see: ['memo', 'mark'],
    subject: 'words.md#notes-and-memos',
  },
  memo: {
    title: 'a remark on the whole cut',
    text: 'Stands in the memo box, as many as are wanted, in the order of writing.',
    parts: [['"Wind from left."', 'the remark; `\\n` in it begins a new line']],
    examples: [
      {
        text: 'memo "Wind from screen left throughout."\nmemo "No rain after the door."\nA: 1..\n',
        says: 'Two memos, one under the other.',
      },
      { text: 'memo "She calls it \\"the road\\"."\nA: 1..\n', says: 'Quotes inside take a backslash.' },
    ],
    codes: ['missing-glyph', 'control-character', 'unclosed-text', 'unknown-escape', 'missing-quotes'],
    see: ['note'],
    subject: 'words.md#notes-and-memos',
  },
  same: {
    title: 'the cut that this one lines up with',
    text: 'The same place of the camera, the same layout. It stands in the memo, so that whoever lays the cut out takes the other one beside it. One line for each cut; a cut that the episode does not have is a warning.',
    parts: [
      ['4', 'the other cut’s number'],
      ['"the stairs"', 'what lines up. It may be left out'],
    ],
    examples: [
      { text: 'same 4 "the stairs"\nA: 1..\n', says: 'The stairs stand as in cut 4.' },
      { text: 'same 4\nsame 7B "his hands"\nA: 1..\n', says: 'Two cuts to look up.' },
    ],
    codes: ['same-unknown', 'statement-twice', 'missing-glyph', 'missing-quotes'],
    see: ['memo', 'level'],
    subject: 'words.md#same-as-another-cut',
  },
  scene: {
    title: 'which scene',
    text: 'Printed in the head of the sheet.',
    parts: [['3, 3B, "3 of 5"', 'a number, or any text']],
    examples: [
      { text: 'scene 3\nA: 1..\n', says: 'Scene 3.' },
      { text: 'scene "3 of 5"\nA: 1..\n', says: 'In words.' },
    ],
    codes: ['statement-twice', 'missing-glyph'],
    see: ['cut', 'take'],
    subject: 'words.md#which-cut-whose',
  },
  take: {
    title: 'which take',
    text: 'Printed in the head of the sheet: 2 once the cut has come back from a check.',
    parts: [['2, 2B, "2nd retake"', 'a number, or any text']],
    examples: [
      { text: 'take 2\nA: 1..\n', says: 'The second take.' },
      { text: 'take "2 (hands only)"\nA: 1..\n', says: 'In words.' },
    ],
    codes: ['statement-twice', 'missing-glyph'],
    see: ['cut', 'scene'],
    subject: 'words.md#which-cut-whose',
  },
  artist: {
    title: 'who draws the cut',
    text: 'Printed in the head of the sheet, and counted by `cutwright list`. A second `artist` names a second person. Without one, the episode’s `artists` say whose cut it is.',
    parts: [['"M. Arai"', 'the name']],
    examples: [
      { text: 'artist "M. Arai"\nA: 1..\n', says: 'One person.' },
      { text: 'artist "M. Arai"\nartist "H. Tarn"\nA: 1..\n', says: 'Two.' },
    ],
    codes: ['missing-quotes', 'missing-glyph', 'artist-without-cut'],
    see: ['cut', 'take'],
    subject: 'words.md#which-cut-whose',
  },
  accept: {
    title: 'a warning that is right for this cut',
    text: 'Silences a warning or a hint in this cut: it is not shown, and `--strict` does not count it. The reason is for whoever reads the text next; it is printed nowhere. Errors cannot be accepted.',
    parts: [
      ['strobing', 'the code of the message, as it stands behind its place: `c012.cut:9:1: strobing`'],
      ['"tried at the rushes, looks right"', 'why it is right'],
    ],
    examples: [
      {
        text: 'mark hit 2+6\nA: 1..\naccept mark-unused "for the sound of the retake"\n',
        says: 'The mark may stay, though nothing stands at it.',
      },
      {
        text: 'mark hit 2+6\nA: 1:2+5 @hit 2..\naccept mark-unused "for the sound of the retake"\n',
        says: 'Once there is nothing to silence any more, that is a hint.',
        expect: 'hint=accept-unused',
      },
    ],
    codes: ['accept-unknown', 'accept-error', 'accept-unused', 'statement-twice', 'missing-quotes'],
    see: ['memo', 'note'],
    subject: 'typing.md#warnings-that-are-right',
  },
};

export const timePages: Readonly<Record<string, StatementPage>> = {
  cut: {
    title: 'number and title of the cut',
    text: 'Once in every cut. The number is that of the storyboard; it names the file that is printed and finds the neighbours. Number and title stand in the head of every page.',
    parts: [
      ['12, 12A, B', 'the number'],
      ['"Rooftop, dusk"', 'the title; may be left out'],
    ],
    examples: [
      { text: 'cut 12A "Rooftop, dusk"\ntime 2+0\nA: 1..\n', says: 'Cut 12A, with a title.' },
      { text: 'cut 7\ntime 1+12\nA: 1--2..\n', says: 'A number alone will do.' },
    ],
    codes: ['cut-missing', 'time-missing', 'statement-twice'],
    see: ['time', 'scene', 'take', 'artist'],
    subject: 'words.md#which-cut-whose',
  },
  time: {
    title: 'how long the cut is',
    text: 'Once in every cut. The time is that of the finished cut. Where an overlap gives the cut handles, the sheet is longer by them, and its rows are counted from the first row of the sheet. The sheet prints it in its head.',
    parts: [
      ['5+12', '5 seconds and 12 frames'],
      ['132', 'frames'],
      ["8'04", '8 feet 4 frames of 35 mm film, 16 frames a foot'],
    ],
    examples: [
      { text: 'cut 4 "Quay"\ntime 5+12\nA: 1..\n', says: '132 frames at 24 a second.' },
      {
        text: 'cut 4 "Quay"\ntime 8\'04\nA: 1:2\'00 --2..\n',
        says: 'The same in feet; key 1 is held for two of them.',
      },
    ],
    codes: [
      'time-missing',
      'cut-missing',
      'time-zero',

      'time-too-long',
      'time-in-frames',
      'frames-past-second',
      'statement-twice',
      'spaced-number',
      'stops-short',
      'does-not-fit',
    ],
    see: ['cut', 'fps', 'overlap', 'mark'],
    subject: 'time.md',
  },
  fps: {
    title: 'frames a second of this cut',
    text: 'For a cut that does not run at the speed of its episode. `5+12` then means other frames: seconds are counted at this speed. Without it the episode’s `fps` holds, without an episode 24.',
    parts: [['25', 'whole frames a second']],
    examples: [
      { text: 'cut 9\nfps 25\ntime 2+0\nA: 1--2--3..\n', says: 'Two seconds are 50 frames.' },
      { text: 'cut 9\nfps 30\ntime 1+15\nA: 1:1+0 --2..\n', says: 'Key 1 is held for 30 frames.' },
    ],
    codes: ['fps-range', 'statement-twice', 'overlap-fps', 'edit-speeds'],
    see: ['time'],
    subject: 'time.md',
  },
  on: {
    title: 'how long a drawing is exposed that says nothing',
    text: 'For every timeline of the cut, from its start. Without it the episode’s `on` holds, else drawings are on twos. In a timeline `on 1` changes it from there on; a `:8` always says it for one drawing.',
    parts: [['3', 'frames']],
    examples: [
      { text: 'on 3\nA: (1--2--)..\n', says: 'Everything on threes.' },
      {
        text: 'on 3\nA: 1--2:12 on 1 --3..\n',
        time: '2+0',
        says: 'Threes, twelve frames for key 2, then ones.',
      },
    ],
    codes: ['on-range', 'statement-twice'],
    see: ['timeline'],
    subject: 'timeline.md#how-long',
  },
  mark: {
    title: 'a row with a name',
    text: 'Wherever a position may stand, the mark’s name may, with frames added or taken off without blanks: `hit`, `hit+6`, `hit-3`. A retime moves the mark, and all that hangs on it follows. A mark is no length: behind `:` it is an error.',
    parts: [
      ['hit', 'its name'],
      ['2+6', 'where it stands: a frame, or a place from another mark, `hit+18`'],
    ],
    examples: [
      {
        text: 'mark hit 2+6\nA "bell": 1 @hit (2--3--)..\nsound hit..hit+12 "bell"\n',
        says: 'The bell moves and sounds on the same row, wherever the mark stands.',
      },
      {
        text: 'mark hit 2+6\nmark echo hit+18\nA: 1 @hit-4 --2..\nnote echo "from the far bank"\n',
        says: 'A mark that hangs on another.',
      },
    ],
    codes: ['unknown-mark', 'mark-circle', 'mark-unused', 'name-twice', 'length-mark', 'position-zero'],
    see: ['timeline', 'note', 'sound'],
    subject: 'time.md#marks',
  },
};
