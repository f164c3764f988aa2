/** What the reference says of a word of the language. */

import { byWord } from '../../language/statements/index.js';
import type { Statement } from '../../language/tree.js';
import { holdsWord, ruleOf, statementPages } from '../../reference/statement-pages.js';
import { touches } from '../names.js';
import type { Analysis } from '../workspace.js';

/** A statement's first word: what it says, an example, what may stand in it. */
export function statementText(word: string): string | null {
  const name = word.normalize('NFKC');
  const page = byWord.has(name) ? statementPages[name] : undefined;
  if (!page) return null;
  const parts = page.parts.map(([written, meaning]) => `- \`${written}\`: ${meaning}`);
  return [
    `**${name}**: ${page.title}`,
    `\`\`\`cut\n${ruleOf(name).example}\n\`\`\``,
    page.text,
    parts.join('\n'),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

/** A word inside a statement, such as `ease`; null where the cursor is on none, or on a name that is spelt like one. */
export function wordInside(
  { parsed, index, text }: Analysis,
  statement: Statement,
  offset: number,
): string | null {
  const token = parsed.tokens.find(({ kind, span }) => kind.startsWith("'") && touches(span, offset));
  if (!token || token.span.start === statement.word.start) return null;
  if (index.names.some(({ span }) => span.start === token.span.start)) return null;
  const word = token.kind.slice(1, -1);
  const first = text.text.slice(statement.word.start, statement.word.end).normalize('NFKC');
  const page = statementPages[statement.kind === 'timeline' ? 'timeline' : first];
  const part = page?.parts.find(([written]) => holdsWord(written, word));
  return part ? `\`${part[0]}\`: ${part[1]}` : null;
}
