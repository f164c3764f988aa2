/** Slips of the hand that make a statement unreadable in a way that shows what was meant. */

import type { IToken } from 'chevrotain';
import { type Fault, insert, placeOf, quoted, replace, subject } from './fault.js';
import type { Unread } from './faults.js';
import type { Mender } from './mend.js';
import type { Range } from './normal.js';
import { isName, startsTimeline } from './read.js';
import { byWord, timelineRule } from './statements/index.js';
import { Colon } from './tokens.js';

/** The slip that was made, or null. `token`: the first that does not fit. */
export function slip(unread: Unread, token: IToken, mender: Mender): Fault | null {
  return (
    indented(unread, token, mender) ??
    withoutQuotes(unread, token, mender) ??
    withColon(unread, mender) ??
    ofLevel(unread, token, mender)
  );
}

/** A statement that was indented by mistake, and so was taken for more of the one above. */
function indented({ failure, tokens, piece, typed }: Unread, token: IToken, mender: Mender): Fault | null {
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
  const candidates = [replace(margin, '', 'move it to the left edge')];
  if (!mender.choose(candidates, piece, placeOf(token))) return null;
  return {
    code: 'indented-statement',
    place: placeOf(word),
    message: `${quoted(word, typed)} is indented, and so goes on with the ${subject(failure.entry!)} above, where it does not fit.`,
    candidates,
  };
}

/** The blanks before a token that begins an indented line. */
function marginOf({ startOffset: end }: IToken, piece: Range, typed: string): Range | null {
  const blanks = /[\r\n]([^\S\r\n]+)$/.exec(typed.slice(piece.start, end))?.[1];
  return blanks === undefined ? null : { start: end - blanks.length, end };
}

/** `truck A 100%@1 > …`: of a level, where only the word `level` is missing. */
function ofLevel({ failure, tokens, piece, typed }: Unread, token: IToken, mender: Mender): Fault | null {
  const { entry } = failure;
  const name = tokens[1];
  if ((entry?.word !== 'truck' && entry?.word !== 'turn') || !isName(name)) return null;
  const candidates = [insert(placeOf(name).start, 'level ', `write \`${entry.word} level\``)];
  if (!mender.choose(candidates, piece, { start: 0, end: 0 })) return null;
  const other = entry.word === 'truck' ? ', and `truck` alone moves the camera from field to field' : '';
  return {
    code: 'does-not-fit',
    place: placeOf(token),
    message: `${quoted(token, typed)} does not fit here; a level is meant, with the word \`level\` before it${other}.`,
    candidates,
  };
}

function withoutQuotes(
  { failure, tokens, piece, typed }: Unread,
  token: IToken,
  mender: Mender,
): Fault | null {
  if (!failure.wanted.includes('in quotes') && failure.entry !== byWord.get('cut')) return null;
  const line = typed.slice(token.startOffset, piece.end).search(/[\r\n]/);
  const whole = { start: token.startOffset, end: line < 0 ? piece.end : token.startOffset + line };
  const last = tokens.findLast(({ startOffset }) => startOffset < whole.end)!;
  whole.end = placeOf(last).end;
  const candidates = [placeOf(token), whole].map((place) =>
    replace(
      place,
      `"${typed.slice(place.start, place.end).replace(/["\\]/g, '\\$&')}"`,
      'put the text in quotes',
    ),
  );
  if (!mender.choose(candidates, piece, placeOf(token))) return null;
  return {
    code: 'missing-quotes',
    place: placeOf(token),
    message: `Text stands in quotes, but ${quoted(token, typed)} has none.`,
    candidates,
  };
}

/** `time: 5+0`: a word of the language with a colon is taken for a level. */
function withColon({ failure, tokens, piece, typed }: Unread, mender: Mender): Fault | null {
  const [word, colon] = tokens;
  if (failure.entry !== timelineRule || !byWord.has(word!.image) || colon?.tokenType !== Colon) return null;
  const candidates = [replace(placeOf(colon), '', 'leave the colon out')];
  const place = placeOf(colon);
  if (!mender.choose(candidates, piece, { start: 0, end: 0 })) return null;
  return {
    code: 'does-not-fit',
    place,
    message: `With its colon this is the timeline of a level called ${quoted(word!, typed)}; the ${subject(byWord.get(word!.image)!)} has none.`,
    candidates,
  };
}
