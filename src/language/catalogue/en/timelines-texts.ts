import { plural, share } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { TimelineMessages } from '../timelines-codes.js';
import { meant, noKeyAfter, noKeyBefore, sheetRows } from './terms-texts.js';

export const timelines: Texts<TimelineMessages> = {
  'timeline-short': {
    title: 'a timeline that ends before the cut',
    explanation:
      'Every level says what it shows until the last row, so that nobody has to guess whether it is held or empty. Hold the last drawing with `..`, or go on with `x..` if the level is empty from there.',
    message: ({ level, shown, time, rows }, _, row) =>
      shown === 0
        ? `Level ${level} shows nothing on any of ${sheetRows(time, rows)} frames: name its drawings, or write \`x..\` where it stays empty.`
        : `Level ${level} shows ${shown} of ${sheetRows(time, rows)} frames: ${plural(rows - shown, 'frame')} missing, from ${row(shown + 1)} on.`,
  },
  'timeline-long': {
    title: 'a timeline that goes on after the cut',
    explanation:
      'The level shows more frames than the sheet has rows. Shorten a hold, take drawings out, or lengthen the cut with `time`.',
    message: ({ level, shown, time, rows }) =>
      shown === null
        ? `Level ${level} shows far more frames than there are, from here on: the sheet has ${sheetRows(time, rows)}.`
        : `Level ${level} shows ${shown} frames, but the sheet has ${sheetRows(time, rows)}: ${plural(shown - rows, 'frame')} too many, from here on.`,
  },
  'key-after-group': {
    title: 'a number right behind a group or in brackets',
    explanation:
      'How often a group plays is said with a star, `(1-2-)*3`, and how long a drawing stays with a colon, `1:12`. A number without one is a key drawing; leave blanks around it if that is meant.',
    message: {
      times: ({ key }) => `This shows key ${key}; was \`*${key}\` meant, the group ${key} times?`,
      length: ({ key }) => `This shows key ${key}; was \`:${key}\` meant, ${key} frames?`,
    },
  },
  'at-backwards': {
    title: 'an `@` that goes back',
    explanation:
      '`@` says on which row the next item starts. What is written before it must have begun by then, and cannot be on the sheet for longer than until then.',
    message: {
      unseen: ({ frame, seen }, _, row) =>
        `This starts the next item on ${row(frame)}, but what is before it is first seen on ${row(seen)}.`,
      exposed: ({ frame, until }, _, row) =>
        `This starts the next item on ${row(frame)}, but the item before it is exposed until ${row(until)}.`,
    },
  },
  'at-gap': {
    title: 'nothing between an item and the next `@`',
    explanation:
      'The item before the `@` has a length of its own, and that ends too early. Leave the length out, and the item is held until the `@`; or say what the level shows between.',
    message: ({ last, frame }, _, row) =>
      `The item before stops on ${row(last)}, and nothing is said for the ${plural(frame - 1 - last, 'frame')} before ${row(frame)}.`,
  },
  'at-nothing': {
    title: 'an `@` with nothing behind it',
    explanation: '`@` says on which row the next item starts, so an item follows it.',
    message: () => 'Nothing starts at this `@`; write what is shown from there on.',
  },
  'at-past-end': {
    title: 'an `@` after the end of the cut',
    explanation:
      'The sheet has no such row. Perhaps the cut was shortened: then what stood there must go or move forward.',
    message: ({ frame, time, rows }, _, row) =>
      `${row(frame).replace(/^f/, 'F')} lies past the end of the sheet, which has ${sheetRows(time, rows)} rows.`,
  },
  'at-in-group': {
    title: 'an `@` inside a group or phrase',
    explanation:
      'What stands in a group or a phrase may be shown many times, in many places. An `@` is one row of the sheet, so it stands outside.',
    message: () => 'An `@` stands for a row of the sheet, so it cannot stand in a group or a phrase.',
  },
  'direct-misplaced': {
    title: '`direct` that does not stand between two keys',
    explanation:
      '`1 direct 2` says that key 2 follows key 1 with no in-betweens, and that this is meant. So it stands between two different keys, with nothing to be drawn between them.',
    message: () => '`direct` stands between two different keys, as in `1 direct 2`.',
  },
  'after-open': {
    title: 'something behind `..`',
    explanation:
      '`..` goes on to the next `@` or to the end of the cut. What stands behind it could never start, unless an `@` says on which row it does.',
    message: () => 'After `..` only an `@` may follow, which says until when it goes on.',
  },
  'open-in-group': {
    title: '`..` inside something that is repeated',
    explanation:
      'A group that ends in `..` never comes to its second pass. Give its last drawing a length, or repeat the group itself with `..`.',
    message: () =>
      'What this repeats ends in `..`, which goes on to the end; give its last item a length instead.',
  },
  'length-and-open': {
    title: 'a length and `..` on one item',
    explanation: 'A length says when the item ends; `..` says that it goes on. One of them is meant.',
    message: () => 'A length and `..` say two different things; keep one of them.',
  },
  'length-zero': {
    title: 'an item for no frames',
    explanation:
      'The shortest exposure is one frame. To show nothing, take the item out; to make the level empty, write `x`.',
    message: () => 'Nothing can be shown for no frames; the shortest is 1.',
  },
  'repeat-zero': {
    title: 'a group played no times',
    explanation: 'A group is played at least once. Take it out if it is not wanted.',
    message: () => 'Zero times shows nothing; take it out or say how many times.',
  },
  'group-empty': {
    title: 'a group that shows nothing',
    explanation:
      'There is no drawing in the group, only an `on`. That counts inside its own group only: move it out, or fill the group.',
    message: ({ phrase }) =>
      phrase === null ? 'This group shows nothing.' : `Phrase \`${phrase}\` shows nothing.`,
  },
  'too-deep': {
    title: 'phrases in phrases without end',
    explanation: 'Groups and phrases may stand in each other, up to fifty deep. Nobody could read more.',
    message: ({ most }) =>
      `Groups and phrases stand here in each other more than ${most} deep; write it flatter.`,
  },
  'between-from': {
    title: 'an in-between with no key before it',
    explanation:
      'An in-between leads from one key to another. Before this one there is no key, or the level was empty, or a group ended in an in-between or was cut short, so that the key before it is not certain.',
    message: ({ why }) => `This in-between has no key to come from: ${noKeyBefore[why]}.`,
  },
  'between-to': {
    title: 'an in-between with no key after it',
    explanation:
      'An in-between leads from one key to another. After this one no key comes, or the level is empty first. Write the key that it leads to.',
    message: ({ why }) => `This in-between has no key to lead to: ${noKeyAfter[why]}.`,
  },
  'group-begins-between': {
    title: 'a group that begins with an in-between',
    explanation:
      'In the second pass the in-betweens at its beginning would come from another key than in the first. Begin the group with a key; in-betweens behind its last key lead back to that.',
    message: () =>
      'A group cannot begin with an in-between; begin it with the key that it leads to, or put the in-between before it.',
  },
  'bounce-ends': {
    title: 'there and back without a key at the end',
    explanation: '`<>` turns round on the last drawing and on the first, so both are keys.',
    message: () => 'What goes there and back begins and ends with a key, so that it can turn round on it.',
  },
  'two-counts': {
    title: 'one passage with two counts of in-betweens',
    explanation:
      'The same two keys with as many in-betweens are the same drawings wherever they stand again. With another count they are other drawings, drawn and paid anew. If the same ones are meant, write as many.',
    message: ({ from, to, here, before }) =>
      `From key ${from} to key ${to} there ${here === 1 ? 'is' : 'are'} ${plural(here, 'in-between')} here and ${plural(before, 'in-between')} before; they are other drawings.`,
  },
  'way-back': {
    title: 'the way back as new drawings',
    explanation:
      '`2--1` after `1--2` are other drawings, which may be meant: hair and cloth do not come back as they went. If the same ones are meant, `1.2 1.1` shows them backwards, or `(1--2)<>` plays there and back.',
    message: ({ level, from, to, count, names }) =>
      `From key ${from} back to key ${to} level ${level} has ${plural(count, 'new drawing')}; \`<>\` or ${names.slice(0, 4).join(' ')} would show the old ones backwards.`,
  },
  'reference-missing': {
    title: 'a drawing that is not there',
    explanation:
      '`1.2` shows the second in-between after key 1 again. The level must have it: in some passage, or in its `cels` line.',
    message: ({ level, drawing, key, to, way, count }) => {
      const why =
        count === 0
          ? `no in-between leads from key ${key}${to === null ? '' : ` to key ${to}`}`
          : `from key ${key} to key ${way} there ${count === 1 ? 'is' : 'are'} ${plural(count, 'in-between')}`;
      return `Level ${level} has no drawing ${drawing}: ${why}.`;
    },
  },
  'reference-ambiguous': {
    title: 'a drawing that could be of several passages',
    explanation:
      'Where key 1 leads to several keys, `1.2` does not say which passage. Write `1>3.2`: the second on the way from 1 to 3.',
    message: ({ level, drawing, key, keys }) => {
      const listed = keys.length > 5 ? `${keys.slice(0, 5).join(', ')} …` : keys.join(', ');
      return `Key ${key} of level ${level} leads to several keys (${listed}), so ${drawing} could be any of theirs.`;
    },
  },
  'unknown-chart': {
    title: 'a chart that is not there',
    explanation:
      'A chart is `even`, `early` (crowds the earlier key), `late` (crowds the later one), `both`, or the fractions themselves.',
    message: ({ name, guess }) =>
      `There is no chart \`${name}\`${meant(guess, '; it is one of `even`, `early`, `late`, `both`, or fractions.')}`,
  },
  'chart-count': {
    title: 'fractions that are not as many as the in-betweens',
    explanation: 'A chart in fractions has one for each in-between of its passage.',
    message: ({ fractions, inbetweens, from, to }) =>
      `The chart has ${plural(fractions, 'fraction')} for ${plural(inbetweens, 'in-between')} from key ${from} to key ${to}.`,
  },
  'chart-not-rising': {
    title: 'fractions out of order',
    explanation:
      'The fractions of a chart rise: each in-between lies farther on the way than the one before.',
    message: () => 'The fractions of a chart rise from the first key to the second one.',
  },
  'chart-outside': {
    title: 'a fraction outside its passage',
    explanation: '0 is the first key and 1 the second; an in-between lies between them.',
    message: () => 'A fraction of a chart lies between 0, the first key, and 1, the second one.',
  },
  'chart-narrow': {
    title: 'a gap that hardly anyone can draw',
    explanation:
      'Two drawings lie nearer than a sixteenth of the way. On paper that is often less than the width of a line. Fewer in-betweens, or a chart in fractions, may do better.',
    message: ({ from, to }) =>
      `A gap of this chart is under 1/16 of the way from key ${from} to key ${to}; hardly anyone can draw it.`,
  },
  'chart-drawn': {
    title: 'a chart that moves a drawing that exists',
    explanation:
      'The drawing was made for another place on the way: with the in-betweens that were there when it was pinned, or for the cut that is reused. Draw it anew under a new number (`number --gone` and `--new`), or let the chart say where it lies. A chart with one fraction for each in-between that was there says how those were spaced; a new one then lies half-way between its neighbours.',
    message: ({ level, from, to, moved }) => {
      const [first = '', ...others] = moved.map(
        ({ cel, name, was }, i) =>
          `${level}${cel} (${name}) ${i === 0 ? 'lies ' : ''}at ${share(was)}${i === 0 ? ` of the way from key ${from} to key ${to}` : ''}`,
      );
      return `On paper ${[first, ...others].join(', ')}; this chart says ${moved.map(({ is }) => share(is)).join(', ')}.`;
    },
  },
  'chart-twice': {
    title: 'two charts for one passage',
    explanation:
      'The same two keys with as many in-betweens are the same drawings wherever they stand, so they are spaced once. Take one chart out; where the passage stands again it need not be written.',
    message: ({ from, to }) => `The passage from key ${from} to key ${to} has another chart already.`,
  },
  'chart-unused': {
    title: 'a chart that spaces nothing',
    explanation:
      'A chart belongs to the in-betweens that follow its key. Here the next thing is not an in-between.',
    message: ({ key, level }) =>
      `No in-betweens follow key ${key} here, so this chart of level ${level} spaces nothing.`,
  },
  'cels-count': {
    title: 'a pinned passage with more or fewer in-betweens',
    explanation:
      'The `cels` line says which in-betweens of this passage exist on paper, and the timeline shows another number of them. A new one is named by its place (`1.1a` comes after 1.1, `1.0a` before it) at the end of the line; one that is dropped leaves `_`.',
    message: ({ from, to, shown, pinned }) =>
      `From key ${from} to key ${to} there ${shown === 1 ? 'is' : 'are'} ${plural(shown, 'in-between')} here, but ${pinned.length} on paper (${pinned.join(' ')}).`,
  },
  'cels-ambiguous': {
    title: 'a pinned name that fits several passages',
    explanation:
      'Where key 1 leads to several keys, `1.1` is on the way to the key that stands behind it in the line. Here none of them does, so it does not say in which passage the drawing lies. Write `1>2.1`: the first on the way from 1 to 2.',
    message: ({ key, keys }) =>
      `Key ${key} leads to several keys (${keys.join(', ')}); name its in-betweens with the key that they lead to.`,
  },
  'cels-passage': {
    title: 'a pinned name that may belong to another passage',
    explanation:
      'A `cels` line names drawings in the order in which they were first shown, so in-betweens stand before the key that they lead to. Here they stand before another key than the one that their key leads to now. In a cycle that is as it should be. After a retime, when a key was taken out, they may be drawings of the old way, and those of the new one are not on paper yet. Say which: `2>1.1` is the first on the way from 2 back to 1.',
    message: ({ key, to, drawing, next }) =>
      `Key ${key} leads to key ${to}, but in this line ${drawing} stands before key ${next}: is it the passage to ${to} that is on paper?`,
  },
  'reuse-number': {
    title: 'a pinned number against that of the other cut',
    explanation:
      'The level reuses drawings of another cut, and those have their numbers on paper already. The `cels` line beside it may only go on from them.',
    message: {
      number: ({ drawing, number, level, cut, pinned }) =>
        `Drawing ${drawing} is number ${number} of level ${level} in cut ${cut}, not ${pinned}.`,
      drawing: ({ pinned, level, cut, there, drawing }) =>
        `Number ${pinned} of level ${level} in cut ${cut} is drawing ${there}, not ${drawing}.`,
    },
  },
  'reuse-count': {
    title: 'another count than in the cut that is reused',
    explanation:
      'The same two keys with another number of in-betweens are other drawings, so these cannot be taken from the other cut. Write as many as there, or accept that they are drawn.',
    message: ({ from, to, level, cut, there, here }) =>
      `From key ${from} to key ${to} level ${level} of cut ${cut} has ${plural(there, 'in-between')}; ${here === 1 ? 'this one is' : `these ${here} are`} drawn anew.`,
  },
  'level-empty': {
    title: 'a level that never shows anything',
    explanation:
      'The timeline says that the level is empty on every frame. If it is not needed, take the timeline out.',
    message: ({ level }) => `Level ${level} never shows anything.`,
  },
  'drawing-never-seen': {
    title: 'a key that comes after the end',
    explanation:
      'The cut, or what is repeated, is over before the key is shown. It would be drawn for nothing. Perhaps the cut was shortened, or a hold before it is too long.',
    message: ({ level, keys }) =>
      keys.length === 1
        ? `Key ${keys[0]} of level ${level} would come after the end, and is never seen.`
        : `Keys ${keys.slice(0, 10).join(', ')}${keys.length > 10 ? ' …' : ''} of level ${level} would come after the end, and are never seen.`,
  },
  'one-frame-flash': {
    title: 'one frame between two holds',
    explanation:
      'A drawing that is seen for a single frame between two held ones, or a level that is empty for one, reads as a mistake on the screen. If it is meant, `on 1` before it says so.',
    message: ({ level, drawing, frame }, _, row) => {
      const what =
        drawing === null ? `Level ${level} is empty` : `Drawing ${drawing} of level ${level} is seen`;
      return `${what} for 1 frame only, ${row(frame)}, between two holds.`;
    },
  },
  'key-jump': {
    title: 'a key number that is left out',
    explanation:
      'Keys are numbered in the order in which they are drawn, and one is missing here. Perhaps a key was forgotten, or dropped in a retime; if it is on paper, a `cels` line says so.',
    message: ({ key, level, after, first, last }) =>
      `Key ${key} of level ${level} follows key ${after}; ${first === last ? `there is no key ${first}` : `keys ${first} to ${last} are not there`}.`,
  },
  'key-zero': {
    title: 'a key with the number 0',
    explanation:
      'Keys are numbered from 1, and an empty level is `x`: `x:12` shows nothing for 12 frames. `0:12` is read as a drawing that is called 0, which is counted and printed. If there is such a drawing, its number in a `cels` line says so.',
    message: ({ level }) => `Level ${level} shows a drawing with the number 0; an empty level is \`x\`.`,
  },
  'key-backwards': {
    title: 'key numbers that run backwards',
    explanation:
      'A key is first seen after one with a higher number. Perhaps two were exchanged. A key that was put in later takes a letter: 3a lies between 3 and 4.',
    message: ({ key, level, frame, after }, _, row) =>
      `Key ${key} of level ${level} is first seen on ${row(frame)}, after key ${after}.`,
  },
};
