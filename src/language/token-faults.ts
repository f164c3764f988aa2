/** Faults of single tokens: numbers with something glued on, dots too many, blanks inside a time, characters of no use. */

import type { Message, Messages } from './catalogue/index.js';
import {
  type FixCandidate,
  graphemeAt,
  insertFix,
  placeOf,
  replaceFix,
  type StatementFault,
  typedAt,
} from './fault-fixes.js';
import { tokenize } from './lexer.js';
import { isTimeUnit } from './rewordings.js';
import type { TextRange } from './source.js';
import { startsTimeline } from './statement-reader.js';
import { nearest } from './suggest.js';
import {
  Degrees,
  Dots,
  Feet,
  Glued,
  Integer,
  Length,
  Percent,
  Rate,
  Seconds,
  SizeText,
  type Token,
  type TokenType,
  Unknown,
} from './tokens.js';

const UNITS = ['mm', 'cm', 'in', 'deg'];

/** What characters that look like signs of the language were probably meant as. */
const LOOKALIKES = new Map([
  ['[', '('],
  [']', ')'],
  ['〔', '('],
  ['〕', ')'],
  ['〜', '..'],
  ['～', '..'],
  ['~', '..'],
  ['…', '..'],
  ['‥', '..'],
  ['→', '>'],
  ['✕', 'x'],
  ['✖', 'x'],
  ['╳', 'x'],
  ['☓', 'x'],
  ['‐', '-'],
  ['‑', '-'],
  ['‒', '-'],
  ['―', '-'],
  ['─', '-'],
  ['′', "'"],
  ['‘', "'"],
]);

/** Signs of drawings as they stand on Japanese sheets (common practice): a filled circle is an in-between. */
const DRAWN_LOOKALIKES = new Map([['●', '-']]);

/** The first of each row of circled numbers, what it stands for, and how many there are. */
const CIRCLED: readonly (readonly [first: number, value: number, count: number])[] = [
  [0x24ea, 0, 1],
  [0x2460, 1, 20],
  [0x3251, 21, 15],
  [0x32b1, 36, 15],
  [0x2776, 1, 10],
  [0x24eb, 11, 10],
];

/** `①` → `1`: keys are circled on Japanese sheets (common practice). */
function circledNumber(character: string): string | undefined {
  const code = character.codePointAt(0) ?? 0;
  const row = CIRCLED.find(([first, , count]) => code >= first && code < first + count);
  return row && String(row[1] + code - row[0]);
}

/** The fault of the token at `at`, if the token itself is what is wrong. */
export function faultyToken(tokens: readonly Token[], at: number, typed: string): StatementFault | null {
  const token = tokens[at]!;
  switch (token.type) {
    case Glued:
      return glued(token, tokens[at + 1], typed);
    case Dots:
      return dots(placeOf(token), '..');
    case Unknown:
      return spaced(tokens, at) ?? unknown(tokens, at, typed);
    default:
      return spaced(tokens, at);
  }
}

function dots(place: TextRange, instead: string): StatementFault {
  return {
    message: { code: 'stray-dot', parameters: { variant: 'too-many' } },
    place,
    candidates: [replaceFix(place, instead, { action: 'write-two-dots' })],
  };
}

const UNITED = new Map<TokenType, Messages['spaced-number']['parts']>([
  [Seconds, 'seconds'],
  [Feet, 'feet'],
  ...[SizeText, Rate, Length, Degrees, Percent].map((kind) => [kind, 'unit'] as const),
]);

/** `5 + 0` as the sheet prints it, `8 '04`, `560 x 200 mm`: one number once the blanks are gone. */
function spaced(tokens: readonly Token[], at: number): StatementFault | null {
  for (const first of [at - 1, at]) {
    for (let last = Math.min(first + 3, tokens.length - 1); first >= 0 && last > first; last--) {
      const images = tokens.slice(first, last + 1).map(({ image }) => image);
      if (/\d \d/.test(images.join(' '))) continue;
      const joined = images.join('');
      const whole = tokenize(joined, 0, joined.length);
      const parts = whole.length === 1 ? UNITED.get(whole[0]!.type) : undefined;
      if (parts) return together(tokens[first]!, tokens[last]!, joined, parts);
    }
  }
  return null;
}

function together(
  first: Token,
  last: Token,
  joined: string,
  parts: Messages['spaced-number']['parts'],
): StatementFault {
  const place = { start: first.start, end: placeOf(last).end };
  return {
    message: { code: 'spaced-number', parameters: { parts, joined } },
    place,
    candidates: [replaceFix(place, joined, { action: 'leave-blanks-out' })],
  };
}

function glued(token: Token, next: Token | undefined, typed: string): StatementFault {
  const { image } = token;
  const place = placeOf(token);
  if (image.startsWith('x')) {
    return {
      message: { code: 'times-sign', parameters: { times: image.slice(1) } },
      place,
      candidates: [replaceFix(place, `*${image.slice(1)}`, { action: 'write-star' })],
    };
  }
  if (/\d{10}/.test(image)) {
    return {
      message: { code: 'number-too-large', parameters: { found: typedAt(token, typed) } },
      place,
      candidates: [],
    };
  }
  if (/^\d+'$/.test(image)) {
    if (next?.type === Integer) return together(token, next, `${image}${next.image}`, 'feet');
    return {
      message: { code: 'glued-number', parameters: { variant: 'feet-alone', found: typedAt(token, typed) } },
      place,
      candidates: [replaceFix(place, `${image}00`, { action: 'add-no-frames' })],
    };
  }
  if (image.startsWith('.')) {
    return {
      message: { code: 'stray-dot', parameters: { variant: 'leading', number: `0${image}` } },
      place,
      candidates: [replaceFix(place, `0${image}`, { action: 'write-nought' })],
    };
  }
  if (/\.{3}/.test(image)) return dots(place, image.replace(/\.{3,}/g, '..'));
  return {
    message: { code: 'glued-number', parameters: { variant: 'glued', found: typedAt(token, typed) } },
    place,
    candidates: ungluing(image, place),
  };
}

function ungluing(image: string, place: TextRange): FixCandidate[] {
  const [, number = '', rest = ''] = /^(.*\d)(\D*)$/su.exec(image) ?? [];
  const unit = nearest(rest, UNITS);
  const found: FixCandidate[] = [];
  if (unit) found.push(replaceFix(place, number + unit, { action: 'write-plain', written: number + unit }));
  if (/^\p{L}{2,}/u.test(rest) && !isTimeUnit(rest))
    found.push(insertFix(place.start + number.length, ' ', { action: 'blank-between' }));
  if (rest !== rest.toLowerCase())
    found.push(replaceFix(place, image.toLowerCase(), { action: 'write-small' }));
  return found;
}

/** Two words or numbers must not become one: `1;2`. */
function withoutCharacter(place: TextRange, typed: string): FixCandidate[] {
  const joins =
    /[\p{L}\p{N}_]$/u.test(typed.slice(0, place.start)) && /^[\p{L}\p{N}_]/u.test(typed.slice(place.end));
  return [
    joins
      ? replaceFix(place, ' ', { action: 'blank-instead' })
      : replaceFix(place, '', { action: 'leave-out' }),
  ];
}

function unknown(tokens: readonly Token[], at: number, typed: string): StatementFault {
  const token = tokens[at]!;
  const place = placeOf(token);
  if (token.image === '.') {
    return {
      message: { code: 'stray-dot', parameters: { variant: 'single' } },
      place,
      candidates: [
        replaceFix(place, '..', { action: 'write-two-dots' }),
        replaceFix(place, '', { action: 'leave-out' }),
      ],
      wholeOnly: true,
    };
  }
  const drawn = startsTimeline(tokens, 0);
  const alike = (one: Token): string | undefined => {
    const character = typed.slice(one.start, one.end);
    const sign = LOOKALIKES.get(character) ?? (drawn ? DRAWN_LOOKALIKES.get(character) : undefined);
    // Between two drawings it may be in-betweens or a hold: nobody knows.
    return sign === '..' && drawn && one !== tokens.at(-1) ? undefined : (sign ?? circledNumber(character));
  };
  const meant = alike(token);
  const candidates =
    meant !== undefined || LOOKALIKES.has(typed.slice(token.start, token.end))
      ? []
      : withoutCharacter(wholeCharacter(tokens, token, typed), typed);
  if (meant !== undefined) {
    // `[1--2]` is mended as a whole: one bracket alone would only move the fault.
    const edits = tokens.flatMap((one, index) => {
      const text = one.type === Unknown ? alike(one) : undefined;
      if (text === undefined) return [];
      const before = tokens[index - 1];
      // `①②` are two drawings.
      const apart = before?.end === one.start && /\d$/.test(text) && endsInDigit(before, typed);
      return [{ ...placeOf(one), text: apart ? ` ${text}` : text }];
    });
    candidates.unshift({ action: 'write-each', written: edits.map(({ text }) => text.trim()), edits });
  }
  const found = typedAt(token, typed);
  const message = (guess: string | null): Message => ({
    code: 'unknown-character',
    parameters: { found, guess },
  });
  return {
    message: message(null),
    ...(meant !== undefined ? { mended: message(meant) } : {}),
    place,
    candidates,
  };
}

const endsInDigit = ({ start, end }: Token, typed: string): boolean =>
  /[\d\p{No}]$/u.test(typed.slice(start, end));

/** A character with all that is seen as one with it, as far as nothing in that is a token of use. */
function wholeCharacter(tokens: readonly Token[], token: Token, typed: string): TextRange {
  const whole = graphemeAt(typed, token.start);
  const within = tokens.filter(({ start }) => start >= whole.start && start < whole.end);
  return within.every(({ type }) => type === Unknown) ? whole : placeOf(token);
}
