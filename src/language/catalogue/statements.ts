/** What can be wrong with a cut's statements taken together: names, times, settings. */

import { entries } from './entry.js';

const HEAD = 'cut 1\ntime 1+0\n';
const BODY = 'A: 1--2..\n';

const text = (failing: string, mended: string, files?: Readonly<Record<string, string>>) =>
  ({ kind: 'text', failing, mended, ...(files ? { files } : {}) }) as const;

export const statements = entries({
  'cut-missing': {
    severity: 'error',
    title: 'no number of the cut',
    explanation:
      'Every file says which cut it is, with `cut` and the number as the storyboard has it. Without it nobody down the line would know where the paper belongs.',
    example: text(`time 1+0\n${BODY}`, `${HEAD}${BODY}`),
  },
  'time-missing': {
    severity: 'error',
    title: 'no time of the cut',
    explanation:
      'Every cut says how long it is, with `time` and its length in seconds + frames, in frames, or in feet. The sheet has as many rows.',
    example: text(`cut 1\n${BODY}`, `${HEAD}${BODY}`),
  },
  'time-zero': {
    severity: 'error',
    title: 'a cut with no frames',
    explanation: 'A cut lasts for at least one frame. Write its length, as in `time 5+0`.',
    example: text(`cut 1\ntime 0+0\n${BODY}`, `${HEAD}${BODY}`),
  },
  'time-too-long': {
    severity: 'error',
    title: 'a cut of more than ten minutes',
    explanation:
      'Ten minutes of one cut would be a hundred pages, so this is taken for a slip: minutes for seconds, or a number of frames written as seconds. Longer material is split into several cuts.',
    example: text(`cut 1\ntime 3600+0\n${BODY}`, `cut 1\ntime 36+0\n${BODY}`),
  },
  'statement-twice': {
    severity: 'error',
    title: 'a statement that a cut has once stands twice',
    explanation:
      'A cut has one number, one time, one stack, and each level has one timeline, one `level` and one `cels` line. Which of the two holds cannot be guessed; the first is taken, so that the rest can be checked.',
    example: text(`${HEAD}time 2+0\n${BODY}`, `${HEAD}${BODY}`),
  },
  'name-twice': {
    severity: 'error',
    title: 'one name for two marks or two phrases',
    explanation:
      'A mark is one place, a phrase one piece of timing. Give the second another name, and use that where it is meant.',
    example: text(
      `${HEAD}mark hit 9\nmark hit 12\nA: 1 @hit 2..\n`,
      `${HEAD}mark hit 9\nmark echo 12\nA: 1 @hit 2 @echo 3..\n`,
    ),
  },
  'position-zero': {
    severity: 'error',
    title: 'a row before the first',
    explanation:
      'The first row of the sheet is frame 1; there is no frame 0 and none before it. A mark with a distance taken off it must stay on the sheet too.',
    example: text(`${HEAD}${BODY}note 0 "wind"\n`, `${HEAD}${BODY}note 1 "wind"\n`),
  },
  'length-mark': {
    severity: 'error',
    title: 'a mark where a length stands',
    explanation:
      'A mark is a place on the sheet. A length says for how many frames something lasts. To go on until a mark, put `@` and the mark before the next item.',
    example: text(`${HEAD}mark hit 9\nA: 1:hit 2..\n`, `${HEAD}mark hit 9\nA: 1 @hit 2..\n`),
  },
  'unknown-mark': {
    severity: 'error',
    title: 'a mark that is not there',
    explanation: 'A name that stands for a row is made with `mark` and a position, as in `mark hit 2+6`.',
    example: text(`${HEAD}mark hit 9\nA: 1 @hitt 2..\n`, `${HEAD}mark hit 9\nA: 1 @hit 2..\n`),
  },
  'mark-circle': {
    severity: 'error',
    title: 'marks that hang on each other',
    explanation:
      'A mark may be placed by another mark, so that both move together. But one of them must stand on a row of its own.',
    example: text(
      `${HEAD}mark hit echo-6\nmark echo hit+6\nA: 1 @hit 2 @echo 3..\n`,
      `${HEAD}mark hit 9\nmark echo hit+6\nA: 1 @hit 2 @echo 3..\n`,
    ),
  },
  'mark-unused': {
    severity: 'hint',
    title: 'a mark that nothing uses',
    explanation:
      'Nothing stands at this mark. That does no harm; it may be left over, or a name elsewhere is another.',
    example: text(`${HEAD}mark hit 9\n${BODY}`, `${HEAD}mark hit 9\nA: 1 @hit 2..\n`),
  },
  'range-backwards': {
    severity: 'error',
    title: 'a range that ends before it starts',
    explanation: 'In `a..b` both are rows of the sheet, counted from its first; `b` is not a length.',
    example: text(`${HEAD}${BODY}sound 12..6 "door"\n`, `${HEAD}${BODY}sound 12..18 "door"\n`),
  },
  'range-starts-late': {
    severity: 'hint',
    title: 'a range that starts on the last frame of a second',
    explanation:
      'The row `1+0` is the last one of the first second. What starts with the next second starts on `1+1`. Where the last frame is meant, write its number, as in `24`.',
    example: text(
      `cut 1\ntime 3+0\n${BODY}sound 1+0..2+0 "waves"\n`,
      `cut 1\ntime 3+0\n${BODY}sound 1+1..2+0 "waves"\n`,
    ),
  },
  'fps-range': {
    severity: 'error',
    title: 'a speed that no film runs at',
    explanation: '`fps` takes whole frames a second, as in `fps 24` or `fps 25`.',
    example: text(`${HEAD}fps 0\n${BODY}`, `${HEAD}fps 25\n${BODY}`),
  },
  'on-range': {
    severity: 'error',
    title: 'an exposure that `on` cannot have',
    explanation:
      '`on 2` exposes each drawing for two frames. It takes whole frames, at least 1; what stands longer is a hold, and is written behind its drawing, as in `3:1+0`.',
    example: text(`${HEAD}on 0\n${BODY}`, `${HEAD}on 3\n${BODY}`),
  },
  'unknown-numbering': {
    severity: 'error',
    title: 'a numbering that is not there',
    explanation:
      'Finished drawings are numbered 1, 2, 3 … as they are first shown (`numbering sequence`), or by the frame on which they are first shown (`numbering frame`).',
    example: text(`${HEAD}numbering frames\n${BODY}`, `${HEAD}numbering frame\n${BODY}`),
  },
  'unknown-level': {
    severity: 'error',
    title: 'a level that the cut does not have',
    explanation:
      'A level is there as soon as it has a timeline, or stands in the stack or in a `level` line.',
    example: text(`${HEAD}${BODY}cels B 1 1.1 1.2 2\n`, `${HEAD}${BODY}cels A 1 1.1 1.2 2\n`),
  },
  'level-outside': {
    severity: 'error',
    title: 'a level that is not in the stack',
    explanation:
      'Where the cut gives its stack, that is the whole of it. A level outside it would lie nowhere. Put its name where it lies, from bottom to top.',
    example: text(`${HEAD}stack BG A\n${BODY}B: 1..\n`, `${HEAD}stack BG A B\n${BODY}B: 1..\n`),
  },
  'stack-twice': {
    severity: 'error',
    title: 'a level twice in the stack',
    explanation: 'A level lies in one place. Take out the one that is wrong.',
    example: text(`${HEAD}stack BG A A\n${BODY}`, `${HEAD}stack BG A\n${BODY}`),
  },
  'size-zero': {
    severity: 'error',
    title: 'artwork with no size',
    explanation:
      'The size of a level is the width and the height of its paper, in millimetres unless it says cm or in.',
    example: text(`${HEAD}${BODY}level BG size 0x200mm\n`, `${HEAD}${BODY}level BG size 560x200mm\n`),
  },
  'reuse-self': {
    severity: 'error',
    title: 'a level that reuses itself',
    explanation:
      '`reuse` takes the drawings of another cut, or of another level of this one. A level has its own drawings anyway.',
    example: text(`${HEAD}${BODY}level A reuse 1/A\n`, `${HEAD}${BODY}level A reuse 8/C\n`),
  },
  'cels-twice': {
    severity: 'error',
    title: 'one drawing with two numbers',
    explanation:
      'In a `cels` line the place is the number: the third name is number 3. A drawing has one number. If one of the two is not used, write `_` there, so that the others keep theirs.',
    example: text(`${HEAD}A: 1-2..\ncels A 1 1.1 2 1\n`, `${HEAD}A: 1-2..\ncels A 1 1.1 2 _\n`),
  },
  'words-outside': {
    severity: 'error',
    title: 'words tied to a row outside their range',
    explanation:
      'Words that are tied to a row with `@` stand between the first and the last row of their dialogue.',
    example: text(
      `${HEAD}${BODY}voice "Nao" 6..12 "Wait" @18 "for me!"\n`,
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait" @18 "for me!"\n`,
    ),
  },
  'words-not-rising': {
    severity: 'error',
    title: 'words tied to rows in the wrong order',
    explanation:
      'Words are spoken in the order in which they are written, so each tie lies after the one before.',
    example: text(
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait" @18 "for" @12 "me!"\n`,
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait" @12 "for" @18 "me!"\n`,
    ),
  },
  'dialogue-past-end': {
    severity: 'warning',
    title: 'dialogue or sound past the end',
    explanation:
      'The words go on when the cut is over. The sheet shows them up to its last row. Shorten them, lengthen the cut, or give the rest to the next cut.',
    example: text(
      `${HEAD}${BODY}voice "Nao" 6..30 "Wait for me!"\n`,
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait for me!"\n`,
    ),
  },
  'note-past-end': {
    severity: 'warning',
    title: 'a note past the end',
    explanation: 'The sheet has no such row, so the note is not printed. Move it, or make it a `memo`.',
    example: text(`${HEAD}${BODY}note 30 "wind"\n`, `${HEAD}${BODY}note 20 "wind"\n`),
  },
  'unknown-phrase': {
    severity: 'error',
    title: 'a phrase that is not there',
    explanation:
      'A word among the drawings of a timeline is a phrase, made with `phrase` in this file or in one that it uses.',
    example: text(`${HEAD}phrase walk = 1--2--\nA: wakl..\n`, `${HEAD}phrase walk = 1--2--\nA: walk..\n`),
  },
  'phrase-circle': {
    severity: 'error',
    title: 'a phrase that plays itself',
    explanation:
      'A phrase may play other phrases, but never itself, not even by a detour: it would never end. The message shows the way round.',
    example: text(
      `${HEAD}phrase step = 1-- turn\nphrase turn = 2-- step\nA: step..\n`,
      `${HEAD}phrase step = 1-- turn\nphrase turn = 2--\nA: step..\n`,
    ),
  },
  'phrase-unused': {
    severity: 'hint',
    title: 'a phrase that nothing plays',
    explanation: 'No timeline of this cut plays the phrase. That does no harm; it may be left over.',
    example: text(`${HEAD}phrase walk = 1--2--\n${BODY}`, `${HEAD}phrase walk = 1--2--\nA: walk..\n`),
  },
});
