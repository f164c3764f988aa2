/** `same 4`: the other cut has to be in the episode. */

import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import type { Shot } from '../shot/shot.js';
import type { StoryOrder } from './story.js';

export function unknownLineUps({ lineUps }: Shot, story: StoryOrder): Diagnostic[] {
  return lineUps
    .filter(({ cut }) => story.find(cut) === null)
    .map(({ cut, span }) => diagnose('same-unknown', span, { variant: 'no-cut', cut }));
}
