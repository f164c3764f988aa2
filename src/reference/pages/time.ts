import type { StatementPage } from '../page.js';

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
    text: 'Once in every cut. The time is that of the finished cut. Where a dissolve gives the cut handles, the sheet is longer by them, and its rows are counted from the first row of the sheet. The sheet prints it in its head.',
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
