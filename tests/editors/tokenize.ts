/** The grammar as an editor uses it: the published TextMate engine, and which scopes stand on each character. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const oniguruma = require('vscode-oniguruma') as typeof import('vscode-oniguruma');
const textmate = require('vscode-textmate') as typeof import('vscode-textmate');

export interface ScopedToken {
  readonly start: number;
  readonly end: number;
  /** Without the one of the whole file and without `.cut` behind. */
  readonly scopes: readonly string[];
}

export interface ScopedLine {
  readonly text: string;
  /** The offset of its first character in the whole text. */
  readonly offset: number;
  readonly tokens: readonly ScopedToken[];
}

export type Tokenizer = (text: string) => ScopedLine[];

export async function tokenizer(json: string): Promise<Tokenizer> {
  const wasm = readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm'));
  await oniguruma.loadWASM(wasm);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(json, 'cutwright.tmLanguage.json'),
  });
  const grammar = await registry.loadGrammar('source.cut');
  if (!grammar) throw new Error('The grammar has no scope source.cut.');
  return (text) => {
    let state = textmate.INITIAL;
    return lines(text).map(({ text: line, offset }) => {
      const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
      state = ruleStack;
      return {
        text: line,
        offset,
        tokens: tokens
          .filter(({ startIndex }) => startIndex < line.length)
          .map(({ startIndex, endIndex, scopes }) => ({
            start: startIndex,
            end: Math.min(endIndex, line.length),
            scopes: scopes.slice(1).map((scope) => scope.replace(/\.cut$/, '')),
          })),
      };
    });
  };
}

/** Lines as an editor has them, without their ends. */
function lines(text: string): { text: string; offset: number }[] {
  const found: { text: string; offset: number }[] = [];
  let offset = 0;
  for (const end of text.matchAll(/\r\n|\n|\r|$/g)) {
    found.push({ text: text.slice(offset, end.index), offset });
    offset = end.index + end[0].length;
  }
  return found;
}

/** Scopes by offset in the whole text; none at line ends. */
export function scopesAt(scoped: readonly ScopedLine[]): Map<number, readonly string[]> {
  const found = new Map<number, readonly string[]>();
  for (const { offset, tokens } of scoped)
    for (const { start, end, scopes } of tokens)
      for (let at = start; at < end; at++) found.set(offset + at, scopes);
  return found;
}

/** For people: each line, and beneath it what each piece of it is. Blanks with no scope of their own are left out. */
export function listing(scoped: readonly ScopedLine[]): string {
  const out: string[] = [];
  for (const { text, tokens } of scoped) {
    out.push(text);
    for (const { start, end, scopes } of tokens) {
      const own = scopes.filter((scope) => !scope.startsWith('meta.statement'));
      const piece = text.slice(start, end);
      if (own.length > 0 || piece.trim() !== '') out.push(`    ${piece}  ${own.join(' ') || '(plain)'}`);
    }
  }
  return `${out.join('\n').trimEnd()}\n`;
}
