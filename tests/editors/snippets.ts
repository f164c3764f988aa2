/** Snippets for VS Code, one a statement: its example, with a stop at everything that the writer puts in its place. */

import { exampleParts } from '../../src/language/grammar-queries.js';
import { statementTable } from '../../src/language/statements/statement-table.js';

export interface Snippet {
  readonly prefix: string;
  readonly body: string;
  readonly description: string;
}

export function snippets(): Record<string, Snippet> {
  return Object.fromEntries(
    statementTable.map(({ word, example }) => {
      let stop = 0;
      const body = exampleParts(example)
        .map(({ text, fixed }, index) => {
          const plain = text.replace(/[\\$}]/g, '\\$&');
          // A timeline begins with its level's name, and that is for the writer too.
          return fixed && !(word === '' && index === 0) ? plain : `\${${++stop}:${plain}}`;
        })
        .join('');
      return [word || 'timeline', { prefix: word || 'timeline', body, description: example }];
    }),
  );
}
