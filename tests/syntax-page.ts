/** grammar/syntax.md and its diagrams, written out of the parser's own rules. */

import { createRequire } from 'node:module';
import { productions } from '../src/language/grammar-queries.js';
import type { Piece, Production } from '../src/language/grammar-rule.js';
import { statementTable } from '../src/language/statements/statement-table.js';
import { pageName } from '../src/reference/statement-pages.js';

/** A kind of token in words, and texts that are one. */
interface Token {
  readonly name: string;
  readonly words: string;
  readonly examples: readonly string[];
  /** Texts that look like one, and are not. */
  readonly not: readonly string[];
}

export const TOKENS: readonly Token[] = [
  {
    name: 'Text',
    words: 'text in "…" or 「…」 on one line; in it `\\"`, `\\n`, `\\\\`',
    examples: ['"Wait!"', '「待って」', '"a \\"b\\""'],
    not: ['"open', "'a'"],
  },
  {
    name: 'Name',
    words:
      'a letter of any script, then letters, digits and `_`; words of the language too: none is reserved',
    examples: ['A', 'BOOK1', '空', 'pan'],
    not: ['1A', '_a'],
  },
  { name: 'PhraseName', words: 'a Name, but not `x` or `on`', examples: ['walk', 'pan'], not: ['x', 'on'] },
  { name: 'Integer', words: 'one to nine digits', examples: ['3', '0012'], not: ['3.', '1234567890', '3mm'] },
  { name: 'Decimal', words: 'digits, a dot, digits', examples: ['1.5', '0.25'], not: ['.5', '1.'] },
  {
    name: 'Seconds',
    words: 'seconds, `+`, frames, without blanks',
    examples: ['5+12', '0+1'],
    not: ['5 + 12', '5+'],
  },
  {
    name: 'WholeSeconds',
    words: 'digits and `s`: seconds of a recording',
    examples: ['12s'],
    not: ['12S', '12.5s'],
  },
  { name: 'PartSeconds', words: 'a number with a dot and `s`', examples: ['12.48s'], not: ['12s', '.5s'] },
  {
    name: 'Timecode',
    words: 'hours, minutes, seconds and frames with `:` between, two digits each; one will do for the hours',
    examples: ['0:03:12:08', '01:00:00:00'],
    not: ['3:12:08', '0:3:12:08'],
  },
  { name: 'Feet', words: "feet, `'`, frames, without blanks", examples: ["8'04"], not: ["8'", "8' 04"] },
  { name: 'Fraction', words: 'digits, `/`, digits', examples: ['1/2', '7/8'], not: ['1 /2'] },
  {
    name: 'Key',
    words: 'digits, or digits and one letter of any script but x',
    examples: ['3', '3a', '8F', '3ア'],
    not: ['3x', '3ab'],
  },
  {
    name: 'Between',
    words: 'a key, a dot, digits, and perhaps a small letter but x',
    examples: ['1.2', '1.1a', '3a.1'],
    not: ['1.x', '1.2.3'],
  },
  {
    name: 'Length',
    words: 'a number and `mm`, `cm` or `in`',
    examples: ['120mm', '1.5in', '3cm'],
    not: ['120 mm', '3m'],
  },
  {
    name: 'Size',
    words: 'two numbers with an `x` between, each perhaps with a unit',
    examples: ['560x200mm', '22inx8in', '560x200'],
    not: ['560 x 200'],
  },
  { name: 'Rate', words: 'a length and `/f`: so much a frame', examples: ['1.5mm/f', '1in/f'], not: ['3/f'] },
  { name: 'Percent', words: 'a number and `%`', examples: ['60%', '87.5%'], not: ['60 %'] },
  { name: 'Degrees', words: 'a number and `deg`', examples: ['30deg', '7.5deg'], not: ['30°'] },
  {
    name: 'FieldNumber',
    words: 'digits and `F`: lines of the field chart',
    examples: ['8F'],
    not: ['8f', '8.5F'],
  },
  { name: 'FieldPart', words: 'a number and `F`', examples: ['8.5F'], not: ['8.5f'] },
  {
    name: 'ChartStep',
    words: 'digits and `N`, `S`, `E` or `W`: steps on the field chart',
    examples: ['2N', '3E'],
    not: ['2n', '2X'],
  },
  { name: 'ChartPart', words: 'a number and `N`, `S`, `E` or `W`', examples: ['2.5N'], not: ['2.5n'] },
];

/** Which rules begin a section, after the statements: all that they call and that is not yet written down follows them. */
const SECTIONS = [
  { title: 'What a timeline holds', roots: ['items'] },
  { title: 'Behind a move', roots: ['tail'] },
  {
    title: 'Times, places, names',
    roots: [
      'time',
      'range',
      'text',
      'name',
      'names',
      'list',
      'label',
      'whole',
      'size',
      'signed',
      'point',
      'measure',
      'percent',
      'degrees',
      'moment',
      'recordingTime',
    ],
  },
] as const;

const SHARED = new Set<string>(
  SECTIONS.flatMap(({ roots }) => [...roots, ...roots.flatMap((root) => reached(root))]),
);

/** Every rule in the order of the page: each statement with the rules that are its own, then the sections. */
function sections(): { title: string; rules: string[] }[] {
  const written = new Set<string>();
  const take = (rules: readonly string[]): string[] =>
    rules.filter((rule) => !written.has(rule) && written.add(rule));
  const statements = statementTable.map((entry) => ({
    title: pageName(entry),
    rules: take([entry.rule, ...reached(entry.rule).filter((rule) => !SHARED.has(rule))]),
  }));
  const rest = [...SECTIONS].map(({ title, roots }) => ({
    title,
    rules: [...roots, ...roots.flatMap((root) => reached(root))],
  }));
  // What two sections share is written in the later one.
  const last = (rule: string, i: number) => !rest.slice(i + 1).some(({ rules }) => rules.includes(rule));
  return [
    ...statements,
    ...rest.map(({ title, rules }, i) => ({ title, rules: take(rules.filter((rule) => last(rule, i))) })),
  ];
}

function reached(rule: string, seen: Set<string> = new Set()): string[] {
  for (const call of calls(productions().get(rule)!)) {
    if (seen.has(call)) continue;
    seen.add(call);
    reached(call, seen);
  }
  return [...seen];
}

function calls({ pieces }: Production): string[] {
  return pieces.flatMap((piece) => {
    if (piece.kind === 'rule') return [piece.rule.name];
    if (piece.kind === 'choice') return piece.ways.flatMap(calls);
    return piece.kind === 'token' ? [] : calls(piece.part);
  });
}

export function syntaxPage(): string {
  const all = sections();
  const statements = all.slice(0, statementTable.length);
  return `${[
    '# Syntax',
    'Written out of the parser itself; do not edit. What each statement means stands on [its page](README.md#every-statement).',
    [
      "The notation is that of the W3C’s XML recommendation (EBNF, section 6): `'pan'` is typed as it stands; `A?` may be left out, `A*` is any",
      'number of times, `A+` once or more; `A | B` is one of both. Names in small letters are rules, names that start with a capital are',
      '[tokens](#tokens). Blanks may stand between tokens, never inside one. In the diagrams round boxes are typed as they stand; edged',
      'ones are rules and tokens.',
    ].join('\n'),
    '## Text',
    [
      'A statement starts at the left edge and goes on through the indented lines under it. Blank lines and comments (`#` to the end of the',
      'line) stand anywhere. See [typing](typing.md).',
    ].join('\n'),
    fence([
      'file ::= statement*',
      `statement ::= ${statementTable.map(({ rule }) => rule).join('\n            | ')}`,
    ]),
    'A name, perhaps a text, and `:` make a `timeline` whatever the name is; else the first word says which statement it is.',
    ...statements.flatMap(({ title, rules }) => [
      `## ${title}`,
      fence(rules.map(production)),
      picture(rules[0]!),
      ...(NOTES[rules[0]!] ? [NOTES[rules[0]!]!] : []),
      `What it means: [${title}](statements/${title}.md).`,
    ]),
    ...all
      .slice(statementTable.length)
      .flatMap(({ title, rules }) => [
        `## ${title}`,
        ...rules.flatMap((rule) => [
          fence([production(rule)]),
          ...(plain(rule) ? [] : [picture(rule)]),
          ...(NOTES[rule] ? [NOTES[rule]] : []),
        ]),
      ]),
    '## Tokens',
    [
      '| token | is | such as |',
      '| --- | --- | --- |',
      ...TOKENS.map(
        ({ name, words, examples }) =>
          `| ${name} | ${words} | ${examples.map((one) => `\`${one}\``).join(' ')} |`,
      ),
    ].join('\n'),
    [
      'No blanks stand inside a token: `5+12` is one. A number has no leading or trailing dot, so `1..5` is 1 `..` 5.',
      'Outside text, full-width forms mean their plain twins ([typing](typing.md#full-width-and-japanese-input)).',
    ].join('\n'),
  ].join('\n\n')}\n`;
}

/** Where the rule alone lets more through than the language does. */
const NOTES: Readonly<Record<string, string>> = {
  truckStatement:
    'With `level` the sizes of `scaleLegs` follow, without it the fields of `truckLegs`. A field may be called `level` or `quick`: before `@` it is a field.',
  fieldStatement: 'Chart steps of several directions add up.',
  keyItem: 'The length stands once, before or behind the chart. Behind `>` there is no chart.',
  mark: 'No blanks about the sign: `hit - 3` is no place.',
};

/** The diagrams, by rule: one for each statement, its own rules drawn into it, and one for each shared rule of some shape. */
export function diagrams(): Map<string, string> {
  const [statements, rest] = [
    sections().slice(0, statementTable.length),
    sections().slice(statementTable.length),
  ];
  const drawn = [
    ...statements.map(({ rules }) => rules[0]!),
    ...rest.flatMap(({ rules }) => rules.filter((rule) => !plain(rule))),
  ];
  return new Map(drawn.map((rule) => [rule, diagram(rule)]));
}

export const everyRule = (): string[] => sections().flatMap(({ rules }) => rules);
export const tokensUsed = (): string[] => [...new Set([...productions().values()].flatMap(tokens))].sort();

const fence = (lines: readonly string[]): string => `\`\`\`ebnf\n${lines.join('\n')}\n\`\`\``;
const picture = (rule: string): string => `![${rule}](pictures/syntax/${rule}.svg)`;
const production = (rule: string): string => `${rule} ::= ${ebnf(productions().get(rule)!)}`;
/** Whether it is only another name for something. */
function plain(rule: string): boolean {
  const { pieces } = productions().get(rule)!;
  return pieces.length === 1 && ['token', 'rule'].includes(pieces[0]!.kind);
}

function tokens({ pieces }: Production): string[] {
  return pieces.flatMap((piece) => {
    if (piece.kind === 'token') return piece.type.text === null ? [piece.type.name] : [];
    if (piece.kind === 'choice') return piece.ways.flatMap(tokens);
    return piece.kind === 'rule' ? [] : tokens(piece.part);
  });
}

export function ebnf({ pieces }: Production): string {
  const alone = pieces.length === 1;
  return pieces
    .map((piece) => (piece.kind === 'choice' && !alone ? `( ${ebnfPiece(piece)} )` : ebnfPiece(piece)))
    .join(' ');
}

function ebnfPiece(piece: Piece): string {
  switch (piece.kind) {
    case 'token':
      return piece.type.text === null ? piece.type.name : `'${piece.type.text}'`;
    case 'rule':
      return piece.rule.name;
    case 'choice':
      return piece.ways.map(ebnf).join(' | ');
    default: {
      const sign = { optional: '?', many: '*', some: '+' }[piece.kind];
      const inner = ebnf(piece.part);
      const { pieces } = piece.part;
      return pieces.length > 1 || pieces[0]!.kind === 'choice' ? `( ${inner} )${sign}` : inner + sign;
    }
  }
}

/** What the drawing library makes; `toString` gives SVG. */
type Drawn = object;
interface Library {
  Diagram(...items: Drawn[]): Drawn;
  Sequence(...items: Drawn[]): Drawn;
  Choice(usual: number, ...items: Drawn[]): Drawn;
  Optional(item: Drawn): Drawn;
  OneOrMore(item: Drawn): Drawn;
  ZeroOrMore(item: Drawn): Drawn;
  Terminal(text: string): Drawn;
  NonTerminal(text: string): Drawn;
}
const library = createRequire(import.meta.url)('railroad-diagrams') as Library;

const STYLE =
  'path{stroke:#000;stroke-width:1.5;fill:none}rect{stroke:#000;stroke-width:1.5;fill:#fff}text{font:14px monospace;text-anchor:middle;fill:#000}';

function diagram(rule: string): string {
  const svg = String(library.Diagram(drawn(productions().get(rule)!)));
  const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(svg)!;
  return svg
    .replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" ')
    .replace(
      '>',
      `>\n<style>${STYLE}</style>\n<rect width="${width}" height="${height}" style="stroke:none"/>`,
    )
    .replace(/\n{2,}/g, '\n')
    .concat('\n');
}

function drawn({ pieces }: Production): Drawn {
  return pieces.length === 1 ? drawnPiece(pieces[0]!) : library.Sequence(...pieces.map(drawnPiece));
}

function drawnPiece(piece: Piece): Drawn {
  switch (piece.kind) {
    case 'token':
      return piece.type.text === null
        ? library.NonTerminal(piece.type.name)
        : library.Terminal(piece.type.text);
    case 'rule': {
      const { name, production } = piece.rule;
      return SHARED.has(name) ? library.NonTerminal(name) : drawn(production);
    }
    case 'choice':
      return library.Choice(0, ...piece.ways.map(drawn));
    case 'optional':
      return library.Optional(drawn(piece.part));
    case 'many':
      return library.ZeroOrMore(drawn(piece.part));
    case 'some':
      return library.OneOrMore(drawn(piece.part));
  }
}
