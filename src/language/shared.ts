/** The rules that statements share: times, ranges, text, names, numbers, points. */

import type { IToken } from 'chevrotain';
import { diagnose } from './diagnostic.js';
import { type Kit, type Rule, touches } from './kit.js';
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

export interface Shared {
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
  'ease curve steps fair on ticks log carry about cw ccw loop sideways every white'.split(' ').map(word),
);

const MM = { mm: 1, cm: 10, in: 25.4 } as const;

/** Millimetres of `12`, `1.5in`, `3cm`. */
export function millimetres(image: string, unit?: string): number {
  const match = /^([\d.]+)(mm|cm|in)?$/.exec(image);
  if (!match) return Number.NaN;
  return Number(match[1]) * MM[(match[2] ?? unit ?? 'mm') as keyof typeof MM];
}

const QUOTE_ESCAPES = '"“”＂」｣\\';

/** The text between the quotes at `span`, escapes resolved; an unknown escape is reported and kept as typed. */
function unquote(kit: Kit, token: IToken): Quote {
  const span = kit.place(token);
  const body = kit.typed({ ...span, start: span.start + 1, end: span.end - 1 });
  const text = body.replace(/\\([\s\S])/g, (pair, character: string, index: number) => {
    if (character === 'n') return '\n';
    if (QUOTE_ESCAPES.includes(character)) return character;
    const start = span.start + 1 + index;
    const place = { ...span, start, end: start + pair.length };
    kit.report(
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

export function sharedRules(kit: Kit): Shared {
  const { place } = kit;

  const name = kit.RULE('name', (): Word => {
    const token = kit.CONSUME(Name);
    return { span: place(token), text: token.image.normalize('NFC') };
  });

  const names = kit.RULE('names', () => {
    const found: Word[] = [];
    kit.AT_LEAST_ONE({ DEF: () => void found.push(kit.SUBRULE(name)), ERR_MSG: 'level-names' });
    return found;
  });

  const text = kit.RULE('text', (): Quote => {
    const token = kit.CONSUME(Text);
    return kit.ACTION(() => unquote(kit, token));
  });

  const label = kit.RULE('label', (): Word => {
    const token = kit.OR({
      DEF: [{ ALT: () => kit.CONSUME(Key) }, { ALT: () => kit.CONSUME(Name) }],
      ERR_MSG: 'cut-number',
    });
    return kit.ACTION((): Word => ({ span: place(token), text: token.image.normalize('NFC') }));
  });

  const whole = kit.RULE('whole', (): Numeral => {
    const token = kit.CONSUME(Integer);
    return { span: place(token), value: Number(token.image) };
  });

  /** `hit-3` is one place only where nothing stands between. */
  const offsetFollows = (): boolean =>
    kit.LA(2).tokenType === Integer && touches(kit.LA(0), kit.LA(1)) && touches(kit.LA(1), kit.LA(2));

  const mark = kit.RULE('mark', (): TypedTime => {
    const token = kit.CONSUME(Name);
    let offset = 0;
    kit.OPTION({
      GATE: offsetFollows,
      DEF: () => {
        const direction = kit.OR([{ ALT: () => kit.CONSUME(Plus) }, { ALT: () => kit.CONSUME(Dash) }]);
        const frames = Number(kit.CONSUME(Integer).image);
        offset = direction.image === '-' ? -frames : frames;
      },
    });
    return { span: kit.since(token), form: 'mark', name: token.image.normalize('NFC'), offset };
  });

  const time = kit.RULE('time', () =>
    kit.OR<TypedTime>({
      DEF: [
        {
          ALT: (): TypedTime => {
            const token = kit.CONSUME(Integer);
            return { span: place(token), form: 'frames', frames: Number(token.image) };
          },
        },
        {
          ALT: (): TypedTime => {
            const token = kit.CONSUME(Seconds);
            const [seconds = 0, frames = 0] = token.image.split('+').map(Number);
            return { span: place(token), form: 'seconds', seconds, frames };
          },
        },
        {
          ALT: (): TypedTime => {
            const token = kit.CONSUME(Feet);
            const [feet = 0, frames = 0] = token.image.split("'").map(Number);
            return { span: place(token), form: 'feet', feet, frames };
          },
        },
        { ALT: () => kit.SUBRULE(mark) },
      ],
      ERR_MSG: 'time',
    }),
  );

  /** `1.. ease 12` is open, with an option; `1..ease` ends at the mark `ease`. */
  const lastFollows = (): boolean => !OPTIONS.has(kit.LA(1).tokenType) || touches(kit.LA(0), kit.LA(1));

  const length = kit.RULE('length', (): TreeLength => ({ ...kit.SUBRULE(time), kind: 'length' }));
  const position = kit.RULE('position', (): Position => ({ ...kit.SUBRULE(time), kind: 'position' }));

  const range = kit.RULE('range', (): Range => {
    const first = kit.LA(1);
    const from = kit.SUBRULE(position);
    kit.CONSUME(DotDot, { ERR_MSG: 'range-dots' });
    const to = kit.OPTION({ GATE: lastFollows, DEF: () => kit.SUBRULE1(position) }) ?? null;
    return { span: kit.since(first), from, to };
  });

  const size = kit.RULE('size', (): Size => {
    const token = kit.CONSUME(SizeText);
    const [width = '', height = ''] = token.image.split('x');
    const unit = /[a-z]+$/.exec(height)?.[0];
    return { span: place(token), widthMm: millimetres(width, unit), heightMm: millimetres(height) };
  });

  const signed = kit.RULE('signed', (): Numeral => {
    const first = kit.LA(1);
    const minus = kit.OPTION(() => kit.CONSUME(Dash));
    const token = kit.OR({
      DEF: [
        { ALT: () => kit.CONSUME(Integer) },
        { ALT: () => kit.CONSUME(Decimal) },
        { ALT: () => kit.CONSUME(Length) },
      ],
      ERR_MSG: 'millimetres',
    });
    const value = millimetres(token.image);
    return { span: kit.since(first), value: minus && value !== 0 ? -value : value };
  });

  const point = kit.RULE('point', (): Point => {
    const first = kit.LA(1);
    const x = kit.SUBRULE(signed);
    kit.CONSUME(Comma, { ERR_MSG: 'place-comma' });
    const y = kit.SUBRULE1(signed);
    return { span: kit.since(first), xMm: x.value, yMm: y.value };
  });

  return { length, position, range, text, name, names, label, whole, size, signed, point };
}
