/** The rules of the grammar as plain data, taken from the parser itself: for whoever writes them down. */

import type { ISerializedGast } from 'chevrotain';
import { theGrammar } from './parser.js';

export type Piece =
  /** Typed as it stands: a word of the language, or a sign. */
  | { readonly kind: 'literal'; readonly text: string }
  /** A kind of token, by its name in the lexer: `Integer`, `Text`. */
  | { readonly kind: 'token'; readonly name: string }
  | { readonly kind: 'rule'; readonly name: string }
  | { readonly kind: 'sequence'; readonly pieces: readonly Piece[] }
  | { readonly kind: 'choice'; readonly pieces: readonly Piece[] }
  /** May be left out; any number of times, none too; once or more. */
  | { readonly kind: 'optional' | 'many' | 'some'; readonly piece: Piece };

type Node = ISerializedGast & { readonly name?: string; readonly pattern?: unknown };

let rules: ReadonlyMap<string, Piece> | null = null;

/** Every rule by its name, in the order in which the grammar was put together. */
export function productions(): ReadonlyMap<string, Piece> {
  rules ??= new Map(
    (theGrammar().getSerializedGastProductions() as Node[]).map((rule) => [rule.name!, inside(rule)]),
  );
  return rules;
}

function inside({ definition = [] }: Node): Piece {
  const pieces = definition.map(pieceOf);
  return pieces.length === 1 ? pieces[0]! : { kind: 'sequence', pieces };
}

function pieceOf(node: Node): Piece {
  switch (node.type) {
    case 'Terminal': {
      const name = node.name!;
      if (name.startsWith("'")) return { kind: 'literal', text: name.slice(1, -1) };
      return typeof node.pattern === 'string'
        ? { kind: 'literal', text: node.pattern }
        : { kind: 'token', name };
    }
    case 'NonTerminal':
      return { kind: 'rule', name: node.name! };
    case 'Alternation':
      return { kind: 'choice', pieces: (node.definition ?? []).map(inside) };
    case 'Option':
      return { kind: 'optional', piece: inside(node) };
    case 'Repetition':
      return { kind: 'many', piece: inside(node) };
    case 'RepetitionMandatory':
      return { kind: 'some', piece: inside(node) };
    default:
      return inside(node);
  }
}
