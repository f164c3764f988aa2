/** What a move may say, while it is being typed, and where in it the cursor stands. */

import type { SignatureHelp } from 'vscode-languageserver';
import { statementAtCursor } from '../language/grammar-queries.js';
import { movePages } from '../reference/pages/move-pages.js';
import { pageIn } from '../reference/reference-language.js';
import { holdsWord } from '../reference/statement-pages.js';
import type { Analysis } from './workspace.js';

/** The parts of the move's page in their order, each with its meaning; null outside of moves. */
export function moveSignatureAt({ text, language }: Analysis, cursor: number): SignatureHelp | null {
  const begun = statementAtCursor(text.text, cursor);
  const word = begun?.entry?.word ?? '';
  if (!begun || begun.quoted !== null || !Object.hasOwn(movePages, word)) return null;
  const { title, parts } = pageIn(word, language);
  let label = word;
  const parameters = parts.map(([written, meaning]) => {
    const start = label.length + 1;
    label += ` ${written}`;
    return {
      label: [start, label.length] as [number, number],
      documentation: { kind: 'markdown' as const, value: meaning },
    };
  });
  const typed = begun.tokens.slice(1).map(({ image }) => image.normalize('NFKC'));
  return {
    signatures: [{ label, documentation: title, parameters }],
    activeSignature: 0,
    activeParameter: partAt(
      parts.map(([written]) => written),
      typed,
    ),
  };
}

/** The part that the last word of the language before the cursor belongs to; behind a second `>` that of further legs. */
function partAt(parts: readonly string[], typed: readonly string[]): number {
  const legs = typed.filter((one) => one === '>').length;
  for (const one of [...typed].reverse()) {
    if (one === '>')
      return legs > 1
        ? Math.max(
            0,
            parts.findIndex((part) => part.startsWith('>')),
          )
        : 0;
    const found = /^[a-z]+$/.test(one) ? parts.findIndex((part) => holdsWord(part, one)) : -1;
    if (found >= 0) return found;
  }
  return 0;
}
