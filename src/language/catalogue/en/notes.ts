import type { Notes } from '../notes.js';
import type { ShortTexts } from '../texts.js';

export const notes: ShortTexts<Notes> = {
  'stands-here': () => 'it stands here',
};
