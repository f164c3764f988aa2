import { figure, plural } from '../../../words/number-format.js';
import type { ShortTexts } from '../catalogue-entry.js';
import type { Fixes, Notes } from '../message-notes.js';
import { neighbourName, oneOf } from './terms-texts.js';

export const notes: ShortTexts<Notes> = {
  'stands-here': () => 'it stands here',
  'written-so': ({ example }) => `written like this: ${example}`,
  'timeline-colon': ({ example }) => `a timeline has a colon after its level: ${example}`,
  'first-here': () => 'the first is here',
  'stack-here': () => 'the stack is given here',
  'stands-first-here': () => 'it stands first here',
  'phrase-here': ({ phrase }) => `phrase \`${phrase}\` is here`,
  'item-before': () => 'the item before',
  'pinned-here': () => 'numbers are pinned here',
  'other-chart': () => 'the other chart',
  'new-name': () =>
    'a new in-between is named by its place, as 1.1a comes after 1.1, and stands at the end of that line',
  'dropped-name': () => 'a drawing that is dropped leaves `_` in that line, so that the other numbers stay',
  'count-here': ({ inbetweens }) => `${plural(inbetweens, 'in-between')} here`,
  'pinned-even': ({ inbetweens }) =>
    `${plural(inbetweens, 'in-between')} ${inbetweens === 1 ? 'was' : 'were'} pinned here, evenly spaced where no chart says how`,
  'drawn-for': ({ drawings, cut }) => `${drawings === 1 ? 'it was' : 'they were'} drawn for cut ${cut}`,
  'overlaps-here': ({ cut }) => `cut ${cut} overlaps here`,
  'neighbour-stands': ({ neighbour, way }) =>
    `${neighbourName(neighbour)} stands ${way === 'in' ? 'before' : 'after'} this cut`,
  'says-here': ({ neighbour }) => `${neighbourName(neighbour)} says it here`,
  'manifest-keys': ({ keys }) => `the keys are ${keys.join(', ')}`,
  'stands-already': () => 'it stands here already',
  takes: ({ words }) => `it takes ${oneOf(words)}`,
  'other-one-here': () => 'the other one is here',
  'spread-here': () => 'it is spread here already',
  'other-one': () => 'The other one.',
  'other-pull': () => 'The other pull.',
  'move-ends-there': () => 'The move before ends there.',
  'camera-rests-there': () => 'The camera rests there.',
  'slide-before': () => 'The slide before.',
  'even-speed': () => 'An ease on both legs, or other frames, would make it even.',
  'flashes-counted': () =>
    'This is a count of what the text says (fades, exposures, glows, levels marked as flashing) and no measurement of the picture; the test of the broadcaster decides.',
  'named-here': ({ level }) => `${level} is first named here.`,
  artwork: ({ level, width, height, x, y }) =>
    `Its artwork is ${figure(width)} x ${figure(height)} mm with its centre at ${figure(x)}, ${figure(y)}; \`level ${level} free\` says that its edges may show.`,
  'enough-dpi': ({ dpi }) => `${dpi} dpi would be enough.`,
  'fairing-speed': ({ power }) =>
    `The fairing keeps the speed that the move has at its mark (k = ${figure(power)}; 2 is even slowing down). Less done at the mark, or a later mark, makes it longer.`,
  'safe-speeds': ({ widthMm }) =>
    `Up to ${figure(widthMm / 120)} mm a frame it is safe, and from ${figure(widthMm / 48)} mm it is a zip pan (0.1 in and 0.25 in on a 12 in field).`,
  'speed-limit': ({ speed }) => `${figure(speed)} mm a frame is the limit on this field.`,
  'cut-here': ({ cut }) => `cut ${cut} is here`,
  'neighbour-here': () => 'the neighbour is here',
  'own-key': ({ key }) =>
    `give both places the same count, or let one lead to a key of its own, such as ${key}`,
};

export const fixes: ShortTexts<Fixes> = {
  write: ({ written }) => `write \`${written}\``,
  'indent-line': () => 'indent the line, so that it goes on with the one above',
  'add-colon': () => 'put a colon after the level',
  'close-text': () => 'close the text',
  'close-group': () => 'close the group',
  'close-chart': () => 'close the chart',
  'add-equals': () => 'put `=` between',
  'blank-instead': () => 'leave a blank instead',
  'leave-out': () => 'leave it out',
  'write-as-length': () => 'write it as a length',
  'blanks-around-x': () => 'put blanks around the `x`',
  'to-left-edge': () => 'move it to the left edge',
  'quote-text': () => 'put the text in quotes',
  'leave-colon-out': () => 'leave the colon out',
  'write-two-dots': () => 'write two dots',
  'leave-blanks-out': () => 'leave the blanks out',
  'write-star': () => 'write a star',
  'add-no-frames': () => 'add no frames',
  'write-nought': () => 'write the nought',
  'blank-between': () => 'leave a blank between',
  'write-small': () => 'write a small letter',
  'double-backslash': () => 'type the backslash twice',
  'leave-quick-out': () => 'leave `quick` out',
  'place-field': ({ field, place }) => `put field ${field} at ${place}, where the graduations end`,
  'size-field': ({ field, size }) => `make field ${field} ${size} wide`,
  'write-plain': ({ written }) => `write ${written}`,
  'write-each': ({ written }) => `write \`${written.join('` and `')}\``,
  'write-frame-1': () => 'write frame 1',
  'take-out-here': () => 'take it out here',
  'leave-number': () => 'mark the number as not used',
  'take-out': () => 'take it out',
  'end-on': ({ time }) => `end on \`${time}\``,
  'start-on': ({ time }) => `start on \`${time}\``,
  'put-on-stack': ({ level }) => `put \`${level}\` on top of the stack`,
  'repeat-until': () => 'repeat it until there',
  'hold-until': () => 'hold it until there',
  'take-this-out': () => 'take this one out',
  'show-backwards': () => 'show the old ones backwards',
  'expose-for': ({ frames }) => `expose it for ${plural(frames, 'frame')}`,
  'name-drawings': ({ count, name }) =>
    count === 1 ? `name it \`${name}\`` : `name them \`${name}\` and so on`,
  'pin-names': ({ names }) => `add ${names.join(' ')} to the pinned numbers`,
  'unpin-names': ({ names }) =>
    `mark the number${names.length === 1 ? '' : 's'} of ${names.join(' ')} as not used`,
  'add-line': ({ line }) => `add \`${line}\``,
  'turn-clockwise': () => 'turn it clockwise',
  'paint-on': ({ size }) => `paint it on ${size}`,
};
