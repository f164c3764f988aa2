/** The table of statements: everything that a text may say. */

import { fieldStatements, lightStatements } from './field-and-light-statements.js';
import { levelStatements } from './level-statements.js';
import { moveStatements } from './move-statements.js';
import { sheetStatements, timeStatements } from './sheet-statements.js';
import type { StatementRule } from './statement-rule.js';
import { timelineStatements } from './timeline-statements.js';

export type { StatementRule } from './statement-rule.js';
export { timelineRule } from './timeline-statements.js';

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
