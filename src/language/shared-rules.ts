/** The rules of the grammar that many statements use, and what a rule is written with. */

import type { Expected } from './catalogue/message-terms.js';
import { diagnose, type Report, type Span } from './diagnostic.js';
import type { Rule } from './grammar-rule.js';
import {
  Comma,
  Dash,
  Decimal,
  DotDot,
  Feet,
  Integer,
  Key,
  Length,
  Name,
  Plus,
  Seconds,
  SizeText,
  Text,
  type Token,
  type TokenType,
  word,
} from './tokens.js';
import type {
  Numeral,
  Point,
  Position,
  Quote,
  Range,
  Size,
  Length as TreeLength,
  TypedTime,
  Word,
} from './tree.js';

/** What a message says was wanted. */
export interface Wanting {
  readonly ERR_MSG?: Expected;
}

interface Alternative<T> {
  readonly ALT: () => T;
  readonly GATE?: () => boolean;
}
export type Alternatives<T> = Alternative<T>[] | ({ readonly DEF: Alternative<T>[] } & Wanting);
export type Part<T> = (() => T) | { readonly DEF: () => T; readonly GATE?: () => boolean };
export type AtLeastOne = { readonly DEF: () => void } & Wanting;

/**
 * What rules are written with. A rule runs once while it is recorded, with empty tokens and results: what it builds must come from
 * tokens, or stand in an ACTION. Each run makes the same calls in the same order; what depends on tokens stands in a GATE, a choice or
 * a repetition.
 */
export interface ParsingDsl {
  RULE<T>(name: string, body: () => T): Rule<T>;
  /** @returns nothing while a rule is recorded. */
  ACTION<T>(body: () => T): T;
  /** The token that comes next (1), those behind it, the last one read (0). */
  LA(howMuch: number): Token;
  CONSUME(kind: TokenType, options?: Wanting): Token;
  SUBRULE<T>(rule: Rule<T>): T;
  OPTION<T>(part: Part<T>): T | undefined;
  OR<T>(alternatives: Alternatives<T>): T;
  MANY(part: Part<void>): void;
  AT_LEAST_ONE(part: AtLeastOne): void;

  /** The place of a token. */
  place(token: Token): Span;
  /** From a token to the last one read. */
  since(first: Token): Span;
  /** What was typed, before folding. */
  typed(span: Span): string;
  /** For faults that leave a statement readable. */
  readonly report: Report;
}

/** Whether a token stands straight after another, with nothing between. */
export function touches(before: Token, after: Token): boolean {
  return before.end === after.start;
}

// ---- the rules that statements share: times, ranges, text, names, numbers, points

export interface SharedRules {
  readonly length: Rule<TreeLength>;
  readonly position: Rule<Position>;
  readonly range: Rule<Range>;
  readonly text: Rule<Quote>;
  readonly name: Rule<Word>;
  /** Names with blanks between. */
  readonly names: Rule<Word[]>;
  /** What numbers a cut, scene or take: `12`, `12A`, `B`. */
  readonly label: Rule<Word>;
  readonly whole: Rule<Numeral>;
  readonly size: Rule<Size>;
  /** A length with its sign, in mm. */
  readonly signed: Rule<Numeral>;
  readonly point: Rule<Point>;
}

/** What may stand behind a range. */
const OPTIONS = new Set(
  'ease curve steps fair on graduated log carry about cw ccw loop sideways curved every white at'
    .split(' ')
    .map(word),
);

/** Millimetres of the units that lengths are typed in (an inch is 25.4 mm: ISO 31-1). */
export const MM = { mm: 1, cm: 10, in: 25.4 } as const;

/** Millimetres of `12`, `1.5in`, `3cm`. */
export function millimetres(image: string, unit?: string): number {
  const match = /^([\d.]+)(mm|cm|in)?$/.exec(image);
  if (!match) return Number.NaN;
  return Number(match[1]) * MM[(match[2] ?? unit ?? 'mm') as keyof typeof MM];
}

const QUOTE_ESCAPES = '"“”＂」｣\\';

/** The text between the quotes at `span`, escapes resolved; an unknown escape is reported and kept as typed. */
function unquote(dsl: ParsingDsl, token: Token): Quote {
  const span = dsl.place(token);
  const body = dsl.typed({ ...span, start: span.start + 1, end: span.end - 1 });
  const text = body.replace(/\\([\s\S])/g, (pair, character: string, index: number) => {
    if (character === 'n') return '\n';
    if (QUOTE_ESCAPES.includes(character)) return character;
    const start = span.start + 1 + index;
    const place = { ...span, start, end: start + pair.length };
    dsl.report(
      diagnose(
        'unknown-escape',
        place,
        { pair },
        {
          fix: { action: 'double-backslash', edits: [{ span: place, text: `\\${pair}` }] },
        },
      ),
    );
    return pair;
  });
  return { span, text: text.normalize('NFC') };
}

export function sharedRules(dsl: ParsingDsl): SharedRules {
  const { place } = dsl;

  const name = dsl.RULE('name', (): Word => {
    const token = dsl.CONSUME(Name);
    return { span: place(token), text: token.image.normalize('NFC') };
  });

  const names = dsl.RULE('names', () => {
    const found: Word[] = [];
    dsl.AT_LEAST_ONE({ DEF: () => void found.push(dsl.SUBRULE(name)), ERR_MSG: 'level-names' });
    return found;
  });

  const text = dsl.RULE('text', (): Quote => {
    const token = dsl.CONSUME(Text);
    return dsl.ACTION(() => unquote(dsl, token));
  });

  const label = dsl.RULE('label', (): Word => {
    const token = dsl.OR({
      DEF: [{ ALT: () => dsl.CONSUME(Key) }, { ALT: () => dsl.CONSUME(Name) }],
      ERR_MSG: 'cut-number',
    });
    return dsl.ACTION((): Word => ({ span: place(token), text: token.image.normalize('NFC') }));
  });

  const whole = dsl.RULE('whole', (): Numeral => {
    const token = dsl.CONSUME(Integer);
    return { span: place(token), value: Number(token.image) };
  });

  /** `hit-3` is one place only where nothing stands between. */
  const offsetFollows = (): boolean =>
    dsl.LA(2).type === Integer && touches(dsl.LA(0), dsl.LA(1)) && touches(dsl.LA(1), dsl.LA(2));

  const mark = dsl.RULE('mark', (): TypedTime => {
    const token = dsl.CONSUME(Name);
    let offset = 0;
    dsl.OPTION({
      GATE: offsetFollows,
      DEF: () => {
        const direction = dsl.OR([{ ALT: () => dsl.CONSUME(Plus) }, { ALT: () => dsl.CONSUME(Dash) }]);
        const frames = Number(dsl.CONSUME(Integer).image);
        offset = direction.image === '-' ? -frames : frames;
      },
    });
    return { span: dsl.since(token), form: 'mark', name: token.image.normalize('NFC'), offset };
  });

  const time = dsl.RULE('time', () =>
    dsl.OR<TypedTime>({
      DEF: [
        {
          ALT: (): TypedTime => {
            const token = dsl.CONSUME(Integer);
            return { span: place(token), form: 'frames', frames: Number(token.image) };
          },
        },
        {
          ALT: (): TypedTime => {
            const token = dsl.CONSUME(Seconds);
            const [seconds = 0, frames = 0] = token.image.split('+').map(Number);
            return { span: place(token), form: 'seconds', seconds, frames };
          },
        },
        {
          ALT: (): TypedTime => {
            const token = dsl.CONSUME(Feet);
            const [feet = 0, frames = 0] = token.image.split("'").map(Number);
            return { span: place(token), form: 'feet', feet, frames };
          },
        },
        { ALT: () => dsl.SUBRULE(mark) },
      ],
      ERR_MSG: 'time',
    }),
  );

  /** `1.. ease 12` is open, with an option; `1..ease` ends at the mark `ease`. */
  const lastFollows = (): boolean => !OPTIONS.has(dsl.LA(1).type) || touches(dsl.LA(0), dsl.LA(1));

  const length = dsl.RULE('length', (): TreeLength => ({ ...dsl.SUBRULE(time), kind: 'length' }));
  const position = dsl.RULE('position', (): Position => ({ ...dsl.SUBRULE(time), kind: 'position' }));

  const range = dsl.RULE('range', (): Range => {
    const first = dsl.LA(1);
    const from = dsl.SUBRULE(position);
    dsl.CONSUME(DotDot, { ERR_MSG: 'range-dots' });
    const to = dsl.OPTION({ GATE: lastFollows, DEF: () => dsl.SUBRULE(position) }) ?? null;
    return { span: dsl.since(first), from, to };
  });

  const size = dsl.RULE('size', (): Size => {
    const token = dsl.CONSUME(SizeText);
    const [width = '', height = ''] = token.image.split('x');
    const unit = /[a-z]+$/.exec(height)?.[0];
    return { span: place(token), widthMm: millimetres(width, unit), heightMm: millimetres(height) };
  });

  const signed = dsl.RULE('signed', (): Numeral => {
    const first = dsl.LA(1);
    const minus = dsl.OPTION(() => dsl.CONSUME(Dash));
    const token = dsl.OR({
      DEF: [
        { ALT: () => dsl.CONSUME(Integer) },
        { ALT: () => dsl.CONSUME(Decimal) },
        { ALT: () => dsl.CONSUME(Length) },
      ],
      ERR_MSG: 'millimetres',
    });
    const value = millimetres(token.image);
    return { span: dsl.since(first), value: minus && value !== 0 ? -value : value };
  });

  const point = dsl.RULE('point', (): Point => {
    const first = dsl.LA(1);
    const x = dsl.SUBRULE(signed);
    dsl.CONSUME(Comma, { ERR_MSG: 'place-comma' });
    const y = dsl.SUBRULE(signed);
    return { span: dsl.since(first), xMm: x.value, yMm: y.value };
  });

  return { length, position, range, text, name, names, label, whole, size, signed, point };
}
