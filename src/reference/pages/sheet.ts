import type { StatementPage } from '../page.js';

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
      ['"Wait for me!"', 'the words'],
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
      'range-backwards',
      'range-starts-late',
      'unknown-mark',
      'missing-glyph',
    ],
    see: ['sound', 'music', 'note', 'mark'],
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
};
