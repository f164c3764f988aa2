/** Which words of the language a statement may hold, taken from the grammar itself. */

import type { ISerializedGast } from 'chevrotain';
import { theGrammar } from './parser.js';
import type { StatementRule } from './statements/index.js';

let found: Map<string, readonly string[]> | null = null;

/** The words that may stand in a statement after its first one. */
export function wordsOf(entry: StatementRule): readonly string[] {
  found ??= collect();
  return (found.get(entry.rule) ?? []).filter((word) => word !== entry.word);
}

function collect(): Map<string, readonly string[]> {
  const rules = theGrammar().getSerializedGastProductions();
  const direct = new Map<string, { words: Set<string>; calls: Set<string> }>();
  for (const rule of rules) {
    const own = { words: new Set<string>(), calls: new Set<string>() };
    walk(rule, own);
    direct.set((rule as ISerializedGast & { name: string }).name, own);
  }
  const all = new Map<string, readonly string[]>();
  for (const name of direct.keys()) {
    const words = new Set<string>();
    const seen = new Set<string>();
    const visit = (rule: string): void => {
      if (seen.has(rule)) return;
      seen.add(rule);
      const own = direct.get(rule);
      for (const word of own?.words ?? []) words.add(word);
      for (const call of own?.calls ?? []) visit(call);
    };
    visit(name);
    all.set(name, [...words]);
  }
  return all;
}

/** Words of the language are the tokens whose names stand in single quotes. */
function walk(node: ISerializedGast, own: { words: Set<string>; calls: Set<string> }): void {
  const { type, name, definition } = node as ISerializedGast & { name?: string };
  if (type === 'NonTerminal' && name) own.calls.add(name);
  if (type === 'Terminal' && name?.startsWith("'")) own.words.add(name.slice(1, -1));
  for (const child of definition ?? []) walk(child, own);
}
