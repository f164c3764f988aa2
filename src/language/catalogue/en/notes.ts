import type { Notes } from '../notes.js';
import type { ShortTexts } from '../texts.js';
import { neighbourName, oneOf, plural } from './phrases.js';

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
};
