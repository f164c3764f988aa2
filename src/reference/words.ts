import { wordsOf } from '../language/vocabulary.js';
import { ruleOf, statementPages } from './index.js';

/** The words that the grammar lets stand in a statement, and that its page gives no meaning: all moves share one tail. */
export function idle(name: string): string[] {
  const { parts } = statementPages[name]!;
  return wordsOf(ruleOf(name)).filter((word) => !parts.some(([written]) => holds(written, word)));
}

/** Whether a word of the language stands in a piece of code. */
export function holds(written: string, word: string): boolean {
  return new RegExp(`(?<![\\p{L}\\p{N}])${word}(?![\\p{L}\\p{N}])`, 'u').test(written);
}
