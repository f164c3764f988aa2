/** The page of every statement, by its word; that of timelines is called `timeline`. */

import { type StatementRule, statementTable } from '../language/statements/index.js';
import type { StatementPage } from './page.js';
import { fieldPages } from './pages/fields.js';
import { levelPages } from './pages/levels.js';
import { lightPages } from './pages/light.js';
import { movePages } from './pages/moves.js';
import { sheetPages } from './pages/sheet.js';
import { timePages } from './pages/time.js';
import { timelinePages } from './pages/timelines.js';

export type { PageExample, StatementPage } from './page.js';

/** By subject, in the order of the table of statements. */
export const statementPages: Readonly<Record<string, StatementPage>> = {
  ...timelinePages,
  ...timePages,
  ...levelPages,
  ...sheetPages,
  ...fieldPages,
  ...movePages,
  ...lightPages,
};

/** What a page is called by which a statement is looked up. */
export const pageName = ({ word }: StatementRule): string => word || 'timeline';

/** The statement of a page's name. */
export function ruleOf(name: string): StatementRule {
  return statementTable.find((entry) => pageName(entry) === name)!;
}
