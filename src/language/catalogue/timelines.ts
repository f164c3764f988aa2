/** What can be wrong with timelines, their drawings and numbers. */

import { entries } from './entry.js';

const HEAD = 'cut 1\ntime 1+0\n';

const lines = (failing: string, mended: string) =>
  ({ kind: 'text', failing: `${HEAD}${failing}\n`, mended: `${HEAD}${mended}\n` }) as const;

export const timelines = entries({
  'timeline-short': {
    severity: 'error',
    title: 'a timeline that ends before the cut',
    explanation:
      'Every level says what it shows until the last row, so that nobody has to guess whether it is held or empty. Hold the last drawing with `..`, or go on with `x..` if the level is empty from there.',
    example: lines('A: 1--2', 'A: 1--2..'),
  },
  'timeline-long': {
    severity: 'error',
    title: 'a timeline that goes on after the cut',
    explanation:
      'The level shows more frames than the sheet has rows. Shorten a hold, take drawings out, or lengthen the cut with `time`.',
    example: lines('A: 1:12--2:12', 'A: 1:12--2..'),
  },
  'at-backwards': {
    severity: 'error',
    title: 'an `@` that goes back',
    explanation:
      '`@` says on which row the next item starts. What is written before it must have begun by then, and cannot be on the sheet for longer than until then.',
    example: lines('A: 1--2 @6 3..', 'A: 1--2 @9 3..'),
  },
  'at-gap': {
    severity: 'error',
    title: 'nothing between an item and the next `@`',
    explanation:
      'The item before the `@` has a length of its own, and that ends too early. Leave the length out, and the item is held until the `@`; or say what the level shows between.',
    example: lines('A: 1:6 @12 2..', 'A: 1 @12 2..'),
  },
  'at-nothing': {
    severity: 'error',
    title: 'an `@` with nothing behind it',
    explanation: '`@` says on which row the next item starts, so an item follows it.',
    example: lines('A: 1.. @12', 'A: 1.. @12 2..'),
  },
  'at-past-end': {
    severity: 'error',
    title: 'an `@` after the end of the cut',
    explanation:
      'The sheet has no such row. Perhaps the cut was shortened: then what stood there must go or move forward.',
    example: lines('A: 1 @30 2..', 'A: 1 @20 2..'),
  },
  'at-in-group': {
    severity: 'error',
    title: 'an `@` inside a group or phrase',
    explanation:
      'What stands in a group or a phrase may be shown many times, in many places. An `@` is one row of the sheet, so it stands outside.',
    example: lines('A: (1 @6 2)..', 'A: (1:5 2)..'),
  },
  'after-open': {
    severity: 'error',
    title: 'something behind `..`',
    explanation:
      '`..` goes on to the next `@` or to the end of the cut. What stands behind it could never start, unless an `@` says on which row it does.',
    example: lines('A: 1.. 2', 'A: 1.. @12 2..'),
  },
  'open-in-group': {
    severity: 'error',
    title: '`..` inside something that is repeated',
    explanation:
      'A group that ends in `..` never comes to its second pass. Give its last drawing a length, or repeat the group itself with `..`.',
    example: lines('A: (1 2..)*3', 'A: (1 2:6)*3'),
  },
  'length-and-open': {
    severity: 'error',
    title: 'a length and `..` on one item',
    explanation: 'A length says when the item ends; `..` says that it goes on. One of them is meant.',
    example: lines('A: 1:6..', 'A: 1..'),
  },
  'length-zero': {
    severity: 'error',
    title: 'an item for no frames',
    explanation:
      'The shortest exposure is one frame. To show nothing, take the item out; to make the level empty, write `x`.',
    example: lines('A: 1:0 2..', 'A: 1:1 2..'),
  },
  'repeat-zero': {
    severity: 'error',
    title: 'a group played no times',
    explanation: 'A group is played at least once. Take it out if it is not wanted.',
    example: lines('A: (1-2-)*0 3..', 'A: (1-2-)*1 3..'),
  },
  'group-empty': {
    severity: 'error',
    title: 'a group that shows nothing',
    explanation:
      'There is no drawing in the group, only an `on`. That counts inside its own group only: move it out, or fill the group.',
    example: lines('A: (on 3) 1..', 'A: on 3 1..'),
  },
  'too-deep': {
    severity: 'error',
    title: 'phrases in phrases without end',
    explanation: 'Groups and phrases may stand in each other, up to fifty deep. Nobody could read more.',
    example: {
      kind: 'text',
      failing: `${HEAD}${chain(60)}A: p0..\n`,
      mended: `${HEAD}${chain(20)}A: p0..\n`,
    },
  },
  'between-from': {
    severity: 'error',
    title: 'an in-between with no key before it',
    explanation:
      'An in-between leads from one key to another. Before this one there is no key, or the level was empty, or a group ended in an in-between or was cut short, so that the key before it is not certain.',
    example: lines('A: --1..', 'A: 1--2..'),
  },
  'between-to': {
    severity: 'error',
    title: 'an in-between with no key after it',
    explanation:
      'An in-between leads from one key to another. After this one no key comes, or the level is empty first. Write the key that it leads to.',
    example: lines('A: 1-- x..', 'A: 1--2 x..'),
  },
  'group-begins-between': {
    severity: 'error',
    title: 'a group that begins with an in-between',
    explanation:
      'In the second pass the in-betweens at its beginning would come from another key than in the first. Begin the group with a key; in-betweens behind its last key lead back to that.',
    example: lines('A: 1(--2-3)*2 4..', 'A: 1--(2-3)*2 4..'),
  },
  'bounce-ends': {
    severity: 'error',
    title: 'there and back without a key at the end',
    explanation: '`<>` turns round on the last drawing and on the first, so both are keys.',
    example: lines('A: (1--2--)<>..', 'A: (1--2)<>..'),
  },
  'two-counts': {
    severity: 'warning',
    title: 'one passage with two counts of in-betweens',
    explanation:
      'The same two keys with as many in-betweens are the same drawings wherever they stand again. With another count they are other drawings, drawn and paid anew. If the same ones are meant, write as many.',
    example: lines('A: 1--2 x:2 1-2..', 'A: 1--2 x:2 1--2..'),
  },
  'way-back': {
    severity: 'hint',
    title: 'the way back as new drawings',
    explanation:
      '`2--1` after `1--2` are other drawings, which may be meant: hair and cloth do not come back as they went. If the same ones are meant, `1.2 1.1` shows them backwards, or `(1--2)<>` plays there and back.',
    example: lines('A: 1--2--1..', 'A: 1--2 1.2 1.1 1..'),
  },
  'reference-missing': {
    severity: 'error',
    title: 'a drawing that is not there',
    explanation:
      '`1.2` shows the second in-between after key 1 again. The level must have it: in some passage, or in its `cels` line.',
    example: lines('A: 1--2 1.3..', 'A: 1--2 1.2..'),
  },
  'reference-ambiguous': {
    severity: 'error',
    title: 'a drawing that could be of several passages',
    explanation:
      'Where key 1 leads to several keys, `1.2` does not say which way. Write `1>3.2`: the second on the way from 1 to 3.',
    example: lines('A: 1-2:6 x:2 1-3 1.1..', 'A: 1-2:6 x:2 1-3 1>3.1..'),
  },
  'unknown-chart': {
    severity: 'error',
    title: 'a chart that is not there',
    explanation:
      'A chart is `even`, `early` (crowds the earlier key), `late` (crowds the later one), `both`, or the fractions themselves.',
    example: lines('A: 1{lates}--2..', 'A: 1{late}--2..'),
  },
  'chart-count': {
    severity: 'error',
    title: 'fractions that are not as many as the in-betweens',
    explanation: 'A chart in fractions has one for each in-between of its passage.',
    example: lines('A: 1{1/4 1/2}---2..', 'A: 1{1/4 1/2 7/8}---2..'),
  },
  'chart-not-rising': {
    severity: 'error',
    title: 'fractions out of order',
    explanation:
      'The fractions of a chart rise: each in-between lies farther on the way than the one before.',
    example: lines('A: 1{1/2 1/4}--2..', 'A: 1{1/4 1/2}--2..'),
  },
  'chart-outside': {
    severity: 'error',
    title: 'a fraction outside its passage',
    explanation: '0 is the first key and 1 the second; an in-between lies between them.',
    example: lines('A: 1{1/2 3/2}--2..', 'A: 1{1/2 3/4}--2..'),
  },
  'chart-narrow': {
    severity: 'hint',
    title: 'a gap that hardly anyone can draw',
    explanation:
      'Two drawings lie nearer than a sixteenth of the way. On paper that is often less than the width of a line. Fewer in-betweens, or a chart in fractions, may do better.',
    example: lines('A: 1{late}-----2..', 'A: 1{late}---2..'),
  },
  'chart-twice': {
    severity: 'error',
    title: 'two charts for one passage',
    explanation:
      'The same two keys with as many in-betweens are the same drawings wherever they stand, so they are spaced once. Take one chart out; where the passage stands again it need not be written.',
    example: lines('A: 1{late}--2 x:2 1{early}--2..', 'A: 1{late}--2 x:2 1--2..'),
  },
  'chart-drawn': {
    severity: 'warning',
    title: 'a chart that moves a drawing that exists',
    explanation:
      'The drawing was made for another place on the way: with the in-betweens that were there when it was pinned, or for the cut that is reused. Draw it anew under a new number (`number --gone` and `--new`), or let the chart say where it lies. A chart with one fraction for each in-between that was there says how those were spaced; a new one then lies half-way between its neighbours.',
    example: lines(
      'A: 1{1/4 1/2 3/4}---2..\ncels A 1 1.1 1.2 2 1.2a',
      'A: 1{1/3 2/3 5/6}---2..\ncels A 1 1.1 1.2 2 1.2a',
    ),
  },
  'chart-unused': {
    severity: 'warning',
    title: 'a chart that spaces nothing',
    explanation:
      'A chart belongs to the in-betweens that follow its key. Here the next thing is not an in-between.',
    example: lines('A: 1{late} 2..', 'A: 1{late}--2..'),
  },
  'cels-count': {
    severity: 'error',
    title: 'a pinned passage with more or fewer in-betweens',
    explanation:
      'The `cels` line says which in-betweens of this passage exist on paper, and the timeline shows another number of them. A new one is named by its place (`1.1a` comes after 1.1, `1.0a` before it) at the end of the line; one that is dropped leaves `_`.',
    example: lines('A: 1---2..\ncels A 1 1.1 1.2 2', 'A: 1---2..\ncels A 1 1.1 1.2 2 1.1a'),
  },
  'cels-ambiguous': {
    severity: 'error',
    title: 'a pinned name that fits several passages',
    explanation:
      'Where key 1 leads to several keys, `1.1` is on the way to the key that stands behind it in the line. Here none of them does, so it does not say on which way the drawing lies. Write `1>2.1`: the first on the way from 1 to 2.',
    example: lines('A: 1--2 x:2 1-3..\ncels A 1 2 1.1 1.2', 'A: 1--2 x:2 1-3..\ncels A 1 2 1>2.1 1>2.2'),
  },
  'cels-way': {
    severity: 'warning',
    title: 'a pinned name that may belong to another way',
    explanation:
      'A `cels` line names drawings in the order in which they were first shown, so in-betweens stand before the key that they lead to. Here they stand before another key than the one that their key leads to now. In a cycle that is as it should be. After a retime, when a key was taken out, they may be drawings of the old way, and those of the new one are not on paper yet. Say which: `2>1.1` is the first on the way from 2 back to 1.',
    example: lines('A: (1-2-)*2 3..\ncels A 1 1.1 2 2.1 3', 'A: (1-2-)*2 3..\ncels A 1 1.1 2 2>1.1 3'),
  },
  'reuse-number': {
    severity: 'error',
    title: 'a pinned number against that of the other cut',
    explanation:
      'The level reuses drawings of another cut, and those have their numbers on paper already. The `cels` line beside it may only go on from them.',
    example: {
      kind: 'situation',
      failing:
        'cut 9 has `level C reuse 8/C` and `cels C 1 2`, and number 2 of level C in cut 8 is drawing 1.1',
      mended: 'the `cels` line left out, or begun as the other cut numbers its drawings: `cels C 1 1.1 2`',
    },
  },
  'reuse-count': {
    severity: 'warning',
    title: 'another count than in the cut that is reused',
    explanation:
      'The same two keys with another number of in-betweens are other drawings, so these cannot be taken from the other cut. Write as many as there, or accept that they are drawn.',
    example: {
      kind: 'situation',
      failing: 'cut 9 has `level C reuse 8/C` and shows `1---2`, and cut 8 has `1--2` on its level C',
      mended: 'cut 9 shows `1--2`',
    },
  },
  'level-empty': {
    severity: 'warning',
    title: 'a level that never shows anything',
    explanation:
      'The timeline says that the level is empty on every frame. If it is not needed, take the timeline out.',
    example: lines('A: x..', 'A: x:6 1..'),
  },
  'drawing-never-seen': {
    severity: 'warning',
    title: 'a key that comes after the end',
    explanation:
      'The cut, or what is repeated, is over before the key is shown. It would be drawn for nothing. Perhaps the cut was shortened, or a hold before it is too long.',
    example: lines('A: (1:12 2:12 3)..', 'A: (1:12 2:8 3)..'),
  },
  'one-frame-flash': {
    severity: 'warning',
    title: 'one frame between two holds',
    explanation:
      'A drawing that is seen for a single frame between two held ones, or a level that is empty for one, reads as a mistake on the screen. If it is meant, `on 1` before it says so.',
    example: lines('A: 1:12 2:1 1..', 'A: 1:12 2:2 1..'),
  },
  'key-jump': {
    severity: 'warning',
    title: 'a key number that is left out',
    explanation:
      'Keys are numbered in the order in which they are drawn, and one is missing here. Perhaps a key was forgotten, or dropped in a retime; if it is on paper, a `cels` line says so.',
    example: lines('A: 1--3..', 'A: 1--2..'),
  },
  'key-backwards': {
    severity: 'warning',
    title: 'key numbers that run backwards',
    explanation:
      'A key is first seen after one with a higher number. Perhaps two were exchanged. A key that was put in later takes a letter: 3a lies between 3 and 4.',
    example: lines('A: 1--3--2..', 'A: 1--2--3..'),
  },
});

/** Phrases that each play the next one. */
function chain(length: number): string {
  const names = Array.from({ length }, (_, i) => `phrase p${i} = p${i + 1}\n`);
  return `${names.join('')}phrase p${length} = 1-2-\n`;
}
