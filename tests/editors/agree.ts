/** Which scopes each kind of token of the program's lexer may have in an editor. */

import type { Span } from '../../src/language/diagnostic.js';
import { laterWordsOf } from '../../src/language/grammar-queries.js';
import { type EditorToken, parse } from '../../src/language/parse.js';
import { byWord } from '../../src/language/statements/statement-table.js';

/** Those of names, and of names of charts where a brace stands before. */
const NAMES = ['variable.other', 'entity.name', 'keyword.other.chart'];
const NUMBERS = ['constant.numeric', 'variable.other.enummember.key', 'variable.other.property.inbetween'];
const OWN = ['keyword.other.option', 'constant.language.empty'];
const LEVEL = 'entity.name.type.level';
const STATEMENT = 'keyword.other.statement';
const UNKNOWN = 'invalid.illegal.unknown-statement';
const SIGNS = ['keyword.operator', 'punctuation'];

const KINDS: Readonly<Record<string, readonly string[]>> = {
  Text: ['string.quoted.double', 'string.quoted.other'],
  UnclosedText: ['string.quoted.unclosed'],
  Size: ['constant.numeric.size'],
  Rate: ['constant.numeric.rate'],
  Length: ['constant.numeric.length'],
  Degrees: ['constant.numeric.degrees'],
  Percent: ['constant.numeric.percent'],
  FieldNumber: ['constant.numeric.field', 'variable.other.enummember.key'],
  ChartStep: ['constant.numeric.field', 'variable.other.enummember.key'],
  FieldPart: ['constant.numeric.field'],
  ChartPart: ['constant.numeric.field'],
  Seconds: ['constant.numeric.time'],
  Feet: ['constant.numeric.time'],
  WholeSeconds: ['constant.numeric.time', 'variable.other.enummember.key'],
  PartSeconds: ['constant.numeric.time', 'variable.other.property.inbetween'],
  Timecode: ['constant.numeric.time'],
  Fraction: ['constant.numeric.fraction'],
  Decimal: ['constant.numeric.decimal', 'variable.other.property.inbetween'],
  BetweenName: ['variable.other.property.inbetween'],
  KeyName: ['variable.other.enummember.key'],
  Integer: NUMBERS,
  Glued: ['invalid.illegal.number', 'invalid.illegal.times-sign'],
  Dots: ['invalid.illegal.dots'],
  Unknown: ['invalid.illegal.character'],
  Word: NAMES,
  DotDot: ['keyword.operator.range', 'keyword.operator.hold'],
  Bounce: ['keyword.operator.bounce'],
  Colon: ['punctuation.separator', 'keyword.operator.length'],
  Dash: ['keyword.operator.inbetween', 'keyword.operator.minus', 'keyword.operator.offset'],
  Equals: ['keyword.operator.breakdown', 'keyword.operator.assignment'],
  At: ['keyword.operator.at'],
  Greater: ['keyword.operator.to'],
  Star: ['keyword.operator.times'],
  Comma: ['punctuation.separator.comma'],
  Underscore: ['constant.language.unused'],
};

/** One sentence for each token whose characters have other scopes than its kind may have. */
export function disagreements(text: string, scopes: ReadonlyMap<number, readonly string[]>): string[] {
  const { tokens, comments } = parse('', text);
  const found: string[] = [];
  const check = (kind: string, { start, end }: Span, allowed: readonly string[]): void => {
    for (let at = start; at < end; at++) {
      const own = scopes.get(at) ?? [];
      if (own.some((scope) => allowed.some((one) => scope === one || scope.startsWith(`${one}.`)))) continue;
      found.push(`${kind} ${JSON.stringify(text.slice(start, end))} at ${start} is ${own.join(' ')}`);
      return;
    }
  };
  for (const span of comments) check('comment', span, ['comment.line.number-sign']);
  let words: readonly string[] | null = [];
  for (const [index, { kind, span }] of tokens.entries()) {
    const word = kind.startsWith("'") ? kind.slice(1, -1) : null;
    if (span.start > 0 && !/[\n\r]/.test(text[span.start - 1]!)) {
      if (word === null) check(kind, span, KINDS[kind] ?? SIGNS);
      else check(kind, span, words === null || words.includes(word) ? [...OWN, ...NAMES] : NAMES);
      continue;
    }
    const colon = colonOf(tokens.slice(index));
    const entry = word !== null && !colon ? byWord.get(word) : undefined;
    words = entry ? laterWordsOf(entry) : ['x', 'on'];
    if (entry) check(kind, span, [STATEMENT]);
    else if (word === null && kind !== 'Word') check(kind, span, KINDS[kind] ?? SIGNS);
    else if (colon && !/[\n\r]/.test(text.slice(span.start, colon.start))) check(kind, span, [LEVEL]);
    else {
      // The grammar reads line by line, and sees no timeline where the colon is on another line than the name.
      check(kind, span, colon ? [LEVEL, UNKNOWN, STATEMENT] : [LEVEL, UNKNOWN]);
      words = null;
    }
  }
  return found;
}

/** Where the colon stands that makes a timeline of the statement which begins with these tokens. */
function colonOf([, second, third]: readonly EditorToken[]): Span | null {
  if (second?.kind === 'Colon') return second.span;
  return second?.kind === 'Text' && third?.kind === 'Colon' ? third.span : null;
}
