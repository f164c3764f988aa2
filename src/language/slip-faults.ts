/** Slips of the hand that make a statement unreadable in a way that shows what was meant. */

import type { UnreadStatement } from './fault-explanation.js';
import type { FixCandidate, FixTester } from './fault-fixes.js';
import { insertFix, placeOf, replaceFix, type StatementFault, typedAt } from './fault-fixes.js';
import type { TextRange } from './source.js';
import { isName, startsTimeline } from './statement-reader.js';
import { byWord, timelineRule } from './statements/statement-table.js';
import {
  Colon,
  Comma,
  Dash,
  DotDot,
  Equals,
  Feet,
  Greater,
  Seconds,
  type Token,
  type TokenType,
} from './tokens.js';
import { withoutColon } from './trade-word-faults.js';

/** The slip that was made, or null. `token`: the first that does not fit. */
export function slip(unread: UnreadStatement, token: Token, mender: FixTester): StatementFault | null {
  return (
    indented(unread, token, mender) ??
    withoutQuotes(unread, token, mender) ??
    withColon(unread, mender) ??
    ofLevel(unread, token, mender)
  );
}

/** A statement that was indented by mistake, and so was taken for more of the one above. */
function indented(
  { failure, tokens, piece, typed }: UnreadStatement,
  token: Token,
  mender: FixTester,
): StatementFault | null {
  // `B: 1..` on a line of its own is read as a phrase of that length, and fails only behind it.
  const started = tokens.findLastIndex(
    (_, i) =>
      i > 0 && i < failure.at && startsTimeline(tokens, i) && marginOf(tokens[i]!, piece, typed) !== null,
  );
  const word =
    isName(token) && (byWord.has(token.image) || startsTimeline(tokens, failure.at))
      ? token
      : tokens[started];
  const margin = word && marginOf(word, piece, typed);
  if (!margin) return null;
  const candidates = [replaceFix(margin, '', { action: 'to-left-edge' })];
  if (!mender.choose(candidates, piece, placeOf(token))) return null;
  return {
    message: {
      code: 'indented-statement',
      parameters: { variant: 'unread', found: typedAt(word, typed), statement: failure.entry!.word },
    },
    place: placeOf(word),
    candidates,
  };
}

/** The blanks before a token that begins an indented line. */
function marginOf({ start: end }: Token, piece: TextRange, typed: string): TextRange | null {
  const blanks = /[\r\n]([^\S\r\n]+)$/.exec(typed.slice(piece.start, end))?.[1];
  return blanks === undefined ? null : { start: end - blanks.length, end };
}

/** `truck A 100%@1 > …`: of a level, where only the word `level` is missing. */
function ofLevel(
  { failure, tokens, piece, typed }: UnreadStatement,
  token: Token,
  mender: FixTester,
): StatementFault | null {
  const { entry } = failure;
  const name = tokens[1];
  if ((entry?.word !== 'truck' && entry?.word !== 'turn') || !isName(name)) return null;
  const candidates = [
    insertFix(placeOf(name).start, 'level ', { action: 'write', written: `${entry.word} level` }),
  ];
  if (!mender.choose(candidates, piece, { start: 0, end: 0 })) return null;
  return {
    message: {
      code: 'does-not-fit',
      parameters: { variant: 'level-meant', found: typedAt(token, typed), statement: entry.word },
    },
    place: placeOf(token),
    candidates,
  };
}

/** What begins no text: signs, and times, which stand before it. */
const NO_TEXT: ReadonlySet<TokenType> = new Set([Colon, Comma, Dash, DotDot, Equals, Greater, Seconds, Feet]);

function withoutQuotes(
  { failure, tokens, piece, typed }: UnreadStatement,
  token: Token,
  mender: FixTester,
): StatementFault | null {
  const wanted = failure.wanted.some((one) => one === 'text' || one === 'quoted-words');
  if (!wanted && failure.entry !== byWord.get('cut')) return null;
  if (NO_TEXT.has(token.type)) return null;
  const line = typed.slice(token.start, piece.end).search(/[\r\n]/);
  const whole = { start: token.start, end: line < 0 ? piece.end : token.start + line };
  const last = tokens.findLast(({ start }) => start < whole.end)!;
  whole.end = placeOf(last).end;
  const plain = (place: TextRange): boolean => !/["「」]/.test(typed.slice(place.start, place.end));
  // Two edits, so that what is said of the text itself, such as a file that is not there, is no fault of the quotes.
  const candidates = [placeOf(token), whole].filter(plain).map(
    (place): FixCandidate => ({
      action: 'quote-text',
      edits: [
        { start: place.start, end: place.start, text: '"' },
        ...[...typed.slice(place.start, place.end).matchAll(/\\/g)].map(({ index }) => {
          const at = place.start + index;
          return { start: at, end: at, text: '\\' };
        }),
        { start: place.end, end: place.end, text: '"' },
      ],
    }),
  );
  if (!mender.choose(candidates, piece, placeOf(token))) return null;
  return {
    message: { code: 'missing-quotes', parameters: { found: typedAt(token, typed) } },
    place: placeOf(token),
    candidates,
  };
}

/** `time: 5+0`: a word of the language with a colon is taken for a level. */
function withColon(unread: UnreadStatement, mender: FixTester): StatementFault | null {
  const { failure, tokens, piece, typed } = unread;
  const [word, colon] = tokens;
  if (failure.entry !== timelineRule || !byWord.has(word!.image) || colon?.type !== Colon) return null;
  const candidates = [
    replaceFix(placeOf(colon), '', { action: 'leave-colon-out' }),
    ...withoutColon(unread, placeOf(colon)),
  ];
  const place = placeOf(colon);
  if (!mender.choose(candidates, piece, { start: 0, end: 0 })) return null;
  return {
    message: {
      code: 'does-not-fit',
      parameters: { variant: 'word-with-colon', word: typedAt(word!, typed) },
    },
    place,
    candidates,
  };
}
