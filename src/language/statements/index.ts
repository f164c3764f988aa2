/** The table of statements: everything that a text may say. */

import { fieldStatements } from './fields.js';
import { levelStatements } from './levels.js';
import { lightStatements } from './light.js';
import { moveStatements } from './moves.js';
import { sheetStatements } from './sheet.js';
import type { StatementRule } from './statement.js';
import { timeStatements } from './time.js';
import { timelineStatements } from './timelines.js';

export type { StatementRule } from './statement.js';
export { timelineRule } from './timelines.js';

export const statementTable: readonly StatementRule[] = [
  ...timelineStatements,
  ...timeStatements,
  ...levelStatements,
  ...sheetStatements,
  ...fieldStatements,
  ...moveStatements,
  ...lightStatements,
];

/** The statements by their first word; timelines have none. */
export const byWord: ReadonlyMap<string, StatementRule> = new Map(
  statementTable.filter(({ word }) => word !== '').map((entry) => [entry.word, entry]),
);
