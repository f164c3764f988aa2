import type { Texts } from '../catalogue-entry.js';
import type { StatementMessages } from '../statements-codes.js';
import { around, meant } from './terms-texts.js';

export const statements: Texts<StatementMessages> = {
  'cut-missing': {
    title: 'no number of the cut',
    explanation:
      'Every file says which cut it is, with `cut` and the number as the storyboard has it. Without it nobody down the line would know where the paper belongs.',
    message: () => 'The text does not say which cut it is; begin it with `cut` and the number.',
  },
  'time-missing': {
    title: 'no time of the cut',
    explanation:
      'Every cut says how long it is, with `time` and its length in seconds + frames, in frames, or in feet. The sheet has as many rows.',
    message: () => 'The cut has no time; say how long it is, as in `time 5+0`.',
  },
  'time-zero': {
    title: 'a cut with no frames',
    explanation: 'A cut lasts for at least one frame. Write its length, as in `time 5+0`.',
    message: () => 'A cut lasts for at least one frame.',
  },
  'time-too-long': {
    title: 'a cut of more than ten minutes',
    explanation:
      'Ten minutes of one cut would be a hundred pages, so this is taken for a slip: minutes for seconds, or a number of frames written as seconds. Longer material is split into several cuts.',
    message: ({ longest }) =>
      `A cut lasts for ten minutes at most (\`${longest}\`); is this one in frames or in seconds + frames?`,
  },
  'statement-twice': {
    title: 'a statement that a cut has once stands twice',
    explanation:
      'A cut has one number, one time, one stack, and each level has one timeline, one `level` and one `cels` line. Which of the two holds cannot be guessed; the first is taken, so that the rest can be checked.',
    message: ({ statement, name }) =>
      statement === ''
        ? `The timeline of level \`${name}\` is said twice.`
        : `\`${name === null ? statement : `${statement} ${name}`}\` is said twice.`,
  },
  'name-twice': {
    title: 'one name for two marks or two phrases',
    explanation:
      'A mark is one place, a phrase one piece of timing. Give the second another name, and use that where it is meant.',
    message: ({ of, name }) => `There are two of ${of} \`${name}\`.`,
  },
  'position-zero': {
    title: 'a row before the first',
    explanation:
      'The first row of the sheet is frame 1; there is no frame 0 and none before it. A mark with a distance taken off it must stay on the sheet too.',
    message: {
      zero: () => 'There is no frame 0; the first row of the sheet is frame 1.',
      before: ({ frames }) => `This is ${frames} before the first row, which is frame 1.`,
    },
  },
  'length-mark': {
    title: 'a mark where a length stands',
    explanation:
      'A mark is a place on the sheet. A length says for how many frames something lasts. To go on until a mark, put `@` and the mark before the next item.',
    message: ({ mark }) =>
      `A mark is a place, not a length; to go on until \`${mark}\`, write \`..\` and then \`@${mark}\` before the next item.`,
  },
  'unknown-mark': {
    title: 'a mark that is not there',
    explanation: 'A name that stands for a row is made with `mark` and a position, as in `mark hit 2+6`.',
    message: ({ name, guess }) =>
      `There is no mark \`${name}\`${meant(guess, '; say where it is with `mark`.')}`,
  },
  'mark-circle': {
    title: 'marks that hang on each other',
    explanation:
      'A mark may be placed by another mark, so that both move together. But one of them must stand on a row of its own.',
    message: ({ marks }) => `These marks hang on each other in a circle: ${around(marks)}.`,
  },
  'mark-unused': {
    title: 'a mark that nothing uses',
    explanation:
      'Nothing stands at this mark. That does no harm; it may be left over, or a name elsewhere is another.',
    message: ({ mark }) => `Nothing stands at mark \`${mark}\`.`,
  },
  'range-backwards': {
    title: 'a range that ends before it starts',
    explanation: 'In `a..b` both are rows of the sheet, counted from its first; `b` is not a length.',
    message: ({ from, to }, _, row) => `This range ends on ${row(to)}, before it starts on ${row(from)}.`,
  },
  'time-in-frames': {
    title: 'a cut of a few frames',
    explanation:
      'A number alone counts frames: `time 5` is five frames, less than a quarter of a second. Five seconds are `5+0`. If the cut is as short as that, write its seconds too, as in `0+5`.',
    message: ({ frames, seconds }) =>
      `This cut lasts ${frames} frame${frames === 1 ? '' : 's'}; were seconds meant, \`${seconds}\`?`,
  },
  'frames-past-second': {
    title: 'more frames than a second has',
    explanation:
      'Behind the `+` stand the frames that are left over, so they are fewer than a second has: 24, or what `fps` says. `3+30` is read as three seconds and 30 frames, which is `4+6`. Perhaps a slip, or a time in another count.',
    message: ({ seconds, frames, fps, meant }) =>
      `A second has ${fps} frames: \`${seconds}+${frames}\` is \`${meant}\`.`,
  },
  'range-starts-late': {
    title: 'a range that starts on the last frame of a second',
    explanation:
      'The row `1+0` is the last one of the first second. What starts with the next second starts on `1+1`. Where the last frame is meant, write its number, as in `24`.',
    message: ({ seconds }) =>
      `\`${seconds}+0\` is the last frame of a second; was \`${seconds}+1\`, the first of the next, meant?`,
  },
  'fps-range': {
    title: 'a speed that no film runs at',
    explanation: '`fps` takes whole frames a second, as in `fps 24` or `fps 25`.',
    message: ({ most }) => `\`fps\` takes a whole number of frames a second from 1 to ${most}.`,
  },
  'on-range': {
    title: 'an exposure that `on` cannot have',
    explanation:
      '`on 2` exposes each drawing for two frames. It takes whole frames, at least 1; what stands longer is a hold, and is written behind its drawing, as in `3:1+0`.',
    message: ({ most }) => `\`on\` takes a whole number of frames from 1 to ${most}.`,
  },
  'unknown-numbering': {
    title: 'a numbering that is not there',
    explanation:
      'Finished drawings are numbered 1, 2, 3 … as they are first shown (`numbering sequence`), or by the frame on which they are first shown (`numbering frame`).',
    message: ({ name }) => `Drawings are numbered by \`sequence\` or by \`frame\`, not by \`${name}\`.`,
  },
  'unknown-level': {
    title: 'a level that the cut does not have',
    explanation:
      'A level is there as soon as it has a timeline, or stands in the stack or in a `level` line.',
    message: ({ name, guess }) => `This cut has no level \`${name}\`${meant(guess)}`,
  },
  'level-outside': {
    title: 'a level that is not in the stack',
    explanation:
      'Where the cut gives its stack, that is the whole of it. A level outside it would lie nowhere. Put its name where it lies, from bottom to top.',
    message: ({ name, guess }) => `Level \`${name}\` is not in the stack${meant(guess)}`,
  },
  'stack-twice': {
    title: 'a level twice in the stack',
    explanation: 'A level lies in one place. Take out the one that is wrong.',
    message: ({ level }) => `Level \`${level}\` stands in the stack twice.`,
  },
  'size-zero': {
    title: 'artwork with no size',
    explanation:
      'The size of a level is the width and the height of its paper, in millimetres unless it says cm or in.',
    message: ({ level }) => `The artwork of level \`${level}\` has no size.`,
  },
  'reuse-self': {
    title: 'a level that reuses itself',
    explanation:
      '`reuse` takes the drawings of another cut, or of another level of this one. A level has its own drawings anyway.',
    message: ({ level }) => `Level \`${level}\` cannot reuse its own drawings.`,
  },
  'level-to-itself': {
    title: 'a level that names itself',
    explanation:
      '`with` names the other levels that a level is drawn to, and `masks` those that it hides. Leave its own name out.',
    message: ({ part, level }) =>
      part === 'with'
        ? `Level \`${level}\` cannot be drawn to itself; name the other level.`
        : `Level \`${level}\` cannot mask itself; name the level that it hides.`,
  },
  'cels-twice': {
    title: 'one drawing with two numbers',
    explanation:
      'In a `cels` line the place is the number: the third name is number 3. A drawing has one number. If one of the two is not used, write `_` there, so that the others keep theirs.',
    message: ({ drawing }) => `Drawing ${drawing} stands in this line twice; a drawing has one number.`,
  },
  'words-outside': {
    title: 'words tied to a row outside their range',
    explanation:
      'Words that are tied to a row with `@` stand between the first and the last row of their dialogue.',
    message: ({ frame, from, to }, _, row) =>
      `These words are tied to ${row(frame)}, outside their range, ${row(from, to)}.`,
  },
  'words-not-rising': {
    title: 'words tied to rows in the wrong order',
    explanation:
      'Words are spoken in the order in which they are written, so each tie lies after the one before.',
    message: ({ frame, before }, _, row) =>
      `These words are tied to ${row(frame)}, but the words before them to ${row(before)}.`,
  },
  'dialogue-past-end': {
    title: 'dialogue or sound past the end',
    explanation:
      'The words go on when the cut is over. The sheet shows them up to its last row. Shorten them, lengthen the cut, or give the rest to the next cut.',
    message: ({ heard, from, to, rows }, _, row) =>
      `This ${heard === 'voice' ? 'dialogue' : heard} ${from > rows ? `starts on ${row(from)}` : `lasts to ${row(to)}`}, past the end of the sheet, which has ${rows} rows.`,
  },
  'note-past-end': {
    title: 'a note past the end',
    explanation: 'The sheet has no such row, so the note is not printed. Move it, or make it a `memo`.',
    message: ({ frame, rows }, _, row) =>
      `This note stands beside ${row(frame)}, past the end of the sheet, which has ${rows} rows.`,
  },
  'unknown-phrase': {
    title: 'a phrase that is not there',
    explanation:
      'A word among the drawings of a timeline is a phrase, made with `phrase` in this file or in one that it uses.',
    message: ({ name, guess }) => `There is no phrase \`${name}\`${meant(guess)}`,
  },
  'phrase-circle': {
    title: 'a phrase that plays itself',
    explanation:
      'A phrase may play other phrases, but never itself, not even by a detour: it would never end. The message shows the way round.',
    message: ({ phrases }) => `A phrase cannot play itself: ${around(phrases)}.`,
  },
  'phrase-unused': {
    title: 'a phrase that nothing plays',
    explanation: 'No timeline of this cut plays the phrase. That does no harm; it may be left over.',
    message: ({ phrase }) => `Nothing plays phrase \`${phrase}\`.`,
  },
  'accept-unknown': {
    title: 'a warning that is not there',
    explanation:
      '`accept` names a warning or a hint by its code, which stands behind its place: `c012.cut:9:1: strobing`. `cutwright explain` lists all of them.',
    message: ({ name, guess }) => `There is no message \`${name}\`${meant(guess)}`,
  },
  'accept-error': {
    title: 'an error cannot be accepted',
    explanation:
      'A cut with an error cannot be printed, so nobody can do with it as it is. Warnings and hints are accepted, because somebody may know better.',
    message: ({ accepted }) =>
      `\`${accepted}\` is an error: it has to be mended, only warnings and hints can be accepted.`,
  },
  'accept-unused': {
    title: 'an `accept` that silences nothing',
    explanation:
      'The cut no longer gives this warning. Take the line out: if it stays, it silences the next warning of this code, of which nobody has thought.',
    message: ({ accepted }) => `This cut gives no \`${accepted}\`, so there is nothing to accept.`,
  },
};
