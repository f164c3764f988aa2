/** The table of binders: one entry for each kind of statement. */

import type { Statement } from '../../language/tree.js';
import type { Binder, Binders } from '../binding.js';
import { cameraBinders } from '../camera/camera-binders.js';
import { levelBinders } from './bind-levels.js';
import { sheetBinders } from './bind-sheet.js';
import { wordBinders } from './bind-speech.js';
import { timelineBinders } from './bind-timelines.js';
import { trackBinders } from './bind-track.js';

const binders: Binders = {
  ...sheetBinders,
  ...levelBinders,
  ...timelineBinders,
  ...wordBinders,
  ...trackBinders,
  ...cameraBinders,
};

/** The binder of a statement, with its own type forgotten: the table holds the right one for each kind. */
export function binderOf(statement: Statement): Binder<Statement> {
  return binders[statement.kind] as Binder<Statement>;
}
