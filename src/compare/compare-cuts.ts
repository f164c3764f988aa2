/**
 * Two solved versions of a cut → what differs, in the order in which a retake note tells it: the cut, its levels from the bottom to
 * the top and each by its rows, dialogue and notes, camera, light, memos. Pure; how the texts are written never matters.
 */

import type { SolvedShot } from '../solve/solved-shot.js';
import type { Change } from './change.js';
import { fieldChanges } from './field-changes.js';
import { headChanges, memoChanges } from './header-changes.js';
import { compareLevels } from './level-changes.js';
import { lightChanges } from './light-changes.js';
import { moveChanges } from './move-changes.js';
import { noteChanges, speechChanges } from './speech-changes.js';

export type { Change } from './change.js';

export function compare(old: SolvedShot, now: SolvedShot): readonly Change[] {
  const levels = compareLevels(old, now);
  const fields = fieldChanges(old, now);
  return [
    ...headChanges(old, now),
    ...levels.changes,
    ...speechChanges(old, now),
    ...noteChanges(old, now),
    ...fields.changes,
    ...moveChanges(old, now, fields.names, levels.names),
    ...lightChanges(old, now, levels.names),
    ...memoChanges(old, now),
  ];
}
