import type { Notes } from '../notes.js';
import type { ShortTexts } from '../texts.js';

export const notes: ShortTexts<Notes> = {
  'stands-here': () => 'it stands here',
  'written-so': ({ example }) => `written like this: ${example}`,
  'timeline-colon': ({ example }) => `a timeline has a colon after its level: ${example}`,
  'first-here': () => 'the first is here',
  'stack-here': () => 'the stack is given here',
  'stands-first-here': () => 'it stands first here',
  'phrase-here': ({ phrase }) => `phrase \`${phrase}\` is here`,
};
