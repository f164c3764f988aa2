/** The forms of statements that have several: which of them somebody has begun to write. */

import { tokenize } from '../lexer.js';
import { Greater, type Token } from '../tokens.js';
import { tradeWord } from '../trade-words.js';
import type { StatementRule } from './statement-rule.js';

/** Statements as they should look, by their first words, besides the examples of the table of statements. */
export const STATEMENT_FORMS: Readonly<Record<string, readonly string[]>> = {
  fade: ['fade out 4+1..5+0', 'fade out white 4+1..5+0'],
  wipe: ['wipe out left 4+1..5+0'],
  iris: ['iris out 4+1..5+0 at 40,-10'],
  overlap: ['overlap in 24'],
  field: ['field C 8F at 2N 3E', 'field A full at 10,0'],
  level: [
    'level B free',
    'level B carry',
    'level C reuse 8/C',
    'level A with B',
    'level M masks A',
    'level C flash',
    'level BOOK1 picture "c012_book1.png"',
  ],
  voice: ['voice "Nao" off 1+6..2+20 "Wait for me!"', 'voice "Nao" mono 1+6..2+20 "Wait for me!"'],
  mouth: ['mouth C "Nao" 1 2 3 on 2', 'mouth C "Nao" 1 2 3 flaps', 'mouth C "Nao" 1 2 3 lead 2'],
  pan: [
    'pan A@1+1 > B@5+0 ease 6 12',
    'pan A@1+1 > B@5+0 carry C,D',
    'pan A@1+1 > B@5+0 graduated',
    'pan A@1+1 > B right steps 1 2 4*20 2 1',
  ],
  truck: [
    'truck A@1 > B@3+0 ease 6 12',
    'truck A@1 > B@3+0 log',
    'truck quick A@1 > B@30 fair ア@9 65%',
    'truck level A 100%@1 > 140%@3+0 about 10,20',
  ],
  pull: ['pull BG down 480mm 1..10+0 loop 420mm', 'pull BG down 480mm 1..10+0 ease 6 12'],
  follow: ['follow A up 90mm 9..3+12 ease 6 12'],
  slide: ['slide A (0,0)@1 > (-120,0)@6+0 ease 6 12'],
  shake: ['shake 4mm 1+1..1+12 sideways'],
};

/** Sizes and places of a field chart: `8F`, `2N`. */
const CHART = /^[\d.]+[FNSEW]$/;

/** What was typed, and what it means in words of the language. */
function meant(image: string): string[] {
  if (CHART.test(image)) return ['chart'];
  if (image === 'to' || image === '->' || image === '→') return ['>'];
  return [image, ...(tradeWord(image)?.here.split(' ') ?? [])];
}

/** What tells the forms of a statement from each other: its words, the sign between two places or shares, a field chart. */
function keysOf(example: string): Set<string> {
  const keys = tokenize(example, 0, example.length)
    .slice(1)
    .filter(({ type, image }) => type === Greater || CHART.test(image) || /^[a-z]{2,}$/.test(image));
  return new Set(keys.map(({ image }) => (CHART.test(image) ? 'chart' : image)));
}

/**
 * The example that has most in common with what was typed: its words, and those that are probably meant. Where no form has more than
 * the statement's own example, that is the one.
 */
export function exampleOf(
  { word, example }: StatementRule,
  typed: readonly Pick<Token, 'image'>[],
  guessed: readonly string[] = [],
): string {
  const words = new Set([...typed.slice(1).flatMap(({ image }) => meant(image)), ...guessed]);
  let best = { example, shared: -1 };
  for (const one of [example, ...(STATEMENT_FORMS[word] ?? [])]) {
    const shared = [...keysOf(one)].filter((key) => words.has(key)).length;
    if (shared > best.shared) best = { example: one, shared };
  }
  return best.example;
}
