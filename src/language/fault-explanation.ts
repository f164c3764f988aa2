/** What to say of a statement that could not be read, in the words of the trade, and what could be tried to mend it. */

import type { Message, Messages } from './catalogue/index.js';
import type { Misplaced, Wanted } from './catalogue/message-terms.js';
import { type Diagnostic, diagnose, type Note } from './diagnostic.js';
import {
  type FixCandidate,
  type FixTester,
  insertFix,
  placeOf,
  replaceFix,
  type StatementFault,
  typedAt,
} from './fault-fixes.js';
import { laterWordsOf } from './grammar-queries.js';
import { slip } from './slip-faults.js';
import type { TextRange } from './source.js';
import { DEEPEST, isName, type ReadingFailure } from './statement-reader.js';
import { exampleOf } from './statements/statement-forms.js';
import { byWord, type StatementRule, timelineRule } from './statements/statement-table.js';
import { nearest } from './suggest.js';
import { faultyToken } from './token-faults.js';
import {
  Bounce,
  Close,
  Colon,
  Comma,
  Dash,
  DotDot,
  Equals,
  Glued,
  Greater,
  Open,
  OpenBrace,
  Plus,
  Seconds,
  SizeText,
  Star,
  Text,
  type Token,
  type TokenType,
  UnclosedText,
  Word,
} from './tokens.js';
import {
  called,
  inSmallLetters,
  leadingTradeWord,
  levelWordFault,
  rewordedFault,
  spokenLine,
  titleWithoutQuotes,
  tradeWordFault,
} from './trade-word-faults.js';
import { tradeWord } from './trade-words.js';

/** All that is known of a statement that could not be read. */
export interface UnreadStatement {
  readonly failure: ReadingFailure;
  readonly tokens: readonly Token[];
  readonly piece: TextRange;
  /** The statement before it, if any. */
  readonly before: TextRange | null;
  /** The text as typed. */
  readonly typed: string;
}

/** Turns a failure into its one diagnostic. */
export function explainFailure(unread: UnreadStatement, mender: FixTester): Diagnostic {
  const usual = faultOf(unread, mender);
  const whole = mender.choose(usual.candidates, usual.within ?? unread.piece, { start: 0, end: 0 });
  // A statement that reads once it is worded otherwise says more than a fix that only moves the fault.
  const reworded = whole ? null : rewordedFault(unread, mender);
  const fault = reworded
    ? { ...reworded, ...(saysWhy(usual) ? { message: usual.message, place: usual.place } : {}) }
    : usual;
  const partly = (): FixCandidate | undefined =>
    fault.wholeOnly ? undefined : mender.choose(fault.candidates, fault.within ?? unread.piece, fault.place);
  const chosen = whole ?? (reworded ? reworded.candidates[0] : partly());
  const notes = fault.note ? [fault.note] : [];
  const span = { file: mender.source.file, ...fault.place };
  const { code, parameters } = chosen && fault.mended ? fault.mended : fault.message;
  return diagnose(code, span, parameters, { notes, fix: mender.fix(chosen) });
}

/** Whether a message says more than that something does not fit. */
function saysWhy({ message: { code, parameters } }: StatementFault): boolean {
  if (code === 'does-not-fit') return parameters.variant === 'misplaced';
  return code !== 'stops-short' && code !== 'unknown-character';
}

function faultOf(unread: UnreadStatement, mender: FixTester): StatementFault {
  const { failure, tokens, typed } = unread;
  switch (failure.reason) {
    case 'first-word':
      return firstWord(unread);
    case 'unknown-word':
      return unknownWord(unread, mender);
    case 'too-deep':
      return {
        message: { code: 'nested-too-deep', parameters: { most: DEEPEST } },
        place: placeOf(tokens[failure.at]!),
        candidates: [],
      };
    case 'misfit': {
      const worded = levelWordFault(unread) ?? spokenLine(unread) ?? tradeWordFault(unread);
      if (worded) return worded;
      const token = tokens[failure.at];
      const broken = tokens.find(({ type }) => type === UnclosedText);
      if (broken) return unclosedText(broken, token === broken, typed);
      const glued = token?.type === Glued ? tradeWord(typedAt(token, typed)) : undefined;
      if (glued)
        return {
          message: { code: 'trade-word', parameters: called(glued, typedAt(token!, typed)) },
          place: placeOf(token!),
          candidates: [],
        };
      const special = token && faultyToken(tokens, failure.at, typed);
      if (special) return special;
      if (!token) return tooShort(unread);
      return slip(unread, token, mender) ?? general(unread, token, mender);
    }
  }
}

function firstWord({ tokens, before, piece, typed }: UnreadStatement): StatementFault {
  const token = tokens[0]!;
  const candidates = before ? [insertFix(piece.start, '    ', { action: 'indent-line' })] : [];
  const within = before ? { start: before.start, end: piece.end } : piece;
  const special = faultyToken(tokens, 0, typed);
  return {
    message: { code: 'statement-start', parameters: { found: typedAt(token, typed) } },
    place: special?.place ?? placeOf(token),
    candidates,
    within,
  };
}

/** The word that was probably meant by an unknown first word. */
export function meantWord(image: string): string | undefined {
  const trade = leadingTradeWord(image);
  const here = trade?.as === 'statement' ? trade.page : undefined;
  return here ?? nearest(image, byWord.keys());
}

/** Signs that only drawings have. */
const DRAWN: ReadonlySet<TokenType> = new Set([Dash, Open, Star]);

function unknownWord(unread: UnreadStatement, mender: FixTester): StatementFault {
  const { tokens, piece, typed } = unread;
  const token = tokens[0]!;
  const place = placeOf(token);
  const found = typedAt(token, typed);
  const broken = tokens.find(({ type }) => type === UnclosedText);
  if (broken) return unclosedText(broken, false, typed);
  const worded = levelWordFault(unread) ?? titleWithoutQuotes(unread, mender) ?? spokenLine(unread);
  if (worded) return worded;
  const meant = nearest(token.image, byWord.keys());
  const write = (word: string) => replaceFix(place, word, { action: 'write', written: word });
  const words: FixCandidate[] = meant ? [write(meant), ...(meant === 'fix' ? [write('fix full')] : [])] : [];
  const inCapitals = meant !== undefined && meant === token.image.toLowerCase();
  if (inCapitals) words.push(...inSmallLetters(unread, meant));
  const reads = (candidates: readonly FixCandidate[]): boolean =>
    mender.choose(candidates, piece, { start: 0, end: 0 }) !== undefined;
  const titled = tokens[1]?.type === Text;
  const name = placeOf(titled ? tokens[1]! : token);
  const behind = tokens[titled ? 2 : 1];
  const colon =
    behind?.type === Equals
      ? [replaceFix({ start: name.end, end: placeOf(behind).end }, ':', { action: 'write', written: ':' })]
      : [insertFix(name.end, ':', { action: 'add-colon' })];
  const drawings = tokens.some(({ type }) => DRAWN.has(type)) || tokens.at(-1)!.type === DotDot;
  const trade = tradeWordFault(unread);
  if (trade && (!drawings || reads(trade.candidates) || !reads(colon))) return trade;
  if (
    !reads(words) &&
    !inCapitals &&
    tokens.length > 1 &&
    (drawings || /^\p{Lu}/u.test(token.image)) &&
    reads(colon)
  ) {
    return {
      message: { code: 'missing-colon', parameters: { found } },
      place,
      candidates: colon,
    };
  }
  if (!meant) {
    return {
      message: { code: 'unknown-word', parameters: { found, guess: null } },
      place,
      candidates: [],
      note: { note: 'timeline-colon', example: timelineRule.example },
    };
  }
  return {
    message: { code: 'unknown-word', parameters: { found, guess: meant } },
    place,
    candidates: words,
    note: writtenSo(byWord.get(meant)!, tokens),
  };
}

function unclosedText(token: Token, first: boolean, typed: string): StatementFault {
  const { start, end } = placeOf(token);
  const text = typed.slice(start, end).trimEnd();
  const closing = new Map([
    ['「', '」'],
    ['｢', '｣'],
    ['“', '”'],
  ]).get(text[0]!);
  const place = { start, end: start + text.length };
  const close = insertFix(place.end, closing ?? text[0]!, { action: 'close-text' });
  return {
    message: { code: 'unclosed-text', parameters: { variant: first ? 'text' : 'statement' } },
    place,
    candidates: first ? [close] : [],
  };
}

/** Whether one of these could have stood where the statement stopped to fit. */
function isWanted({ wanted }: ReadingFailure, ...terms: readonly Wanted[]): boolean {
  return wanted.some((one) => terms.includes(one));
}

/** An example of the form of the statement that was begun. */
function writtenSo(entry: StatementRule, tokens: readonly Token[], guessed: readonly string[] = []): Note {
  return { note: 'written-so', example: exampleOf(entry, tokens, guessed) };
}

function tooShort({ failure, tokens, typed }: UnreadStatement): StatementFault {
  const entry = failure.entry!;
  const end = placeOf(tokens.at(-1)!).end;
  const open = unclosedGroups(tokens);
  if (open[0] && isWanted(failure, '`)`', 'drawing-or-group-end')) {
    return {
      message: { code: 'unclosed-group', parameters: {} },
      place: placeOf(open[0]),
      // `(1-2-..` is a cycle to the end.
      candidates: [
        ...(open.length === 1 && tokens.at(-1)!.type === DotDot ? [tokens.at(-1)!.start] : []),
        end,
      ].map((at) => insertFix(at, ')'.repeat(open.length), { action: 'close-group' })),
    };
  }
  const last = typedAt(tokens.at(-1)!, typed);
  const commented = /^[^\S\r\n]*#(?=[\p{L}\p{N}])/u.exec(typed.slice(end))?.[0];
  if (commented !== undefined) {
    const place = { start: end + commented.length - 1, end: end + commented.length };
    return {
      message: { code: 'trade-word', parameters: { variant: 'left-out', found: '#' } },
      place,
      candidates: [replaceFix(place, '', { action: 'leave-out' })],
      wholeOnly: true,
      note: writtenSo(entry, tokens),
    };
  }
  if (entry.word === 'fix')
    return {
      message: { code: 'stops-short', parameters: { statement: entry.word, wanted: failure.wanted, last } },
      place: { start: end, end },
      candidates: [insertFix(end, ' full', { action: 'write', written: 'fix full' })],
      note: writtenSo(entry, tokens),
    };
  return {
    message: { code: 'stops-short', parameters: { statement: entry.word, wanted: failure.wanted, last } },
    place: { start: end, end },
    candidates: isWanted(failure, '`}`', 'chart-end') ? [insertFix(end, '}', { action: 'close-chart' })] : [],
    note: writtenSo(entry, tokens),
  };
}

function unclosedGroups(tokens: readonly Token[]): Token[] {
  const open: Token[] = [];
  for (const token of tokens) {
    if (token.type === Open) open.push(token);
    else if (token.type === Close) open.pop();
  }
  return open;
}

/** Tokens that have a place in a timeline, but not here. */
const OUT_OF_PLACE = new Map<TokenType, Misplaced>([
  [Colon, 'length'],
  [Star, 'repeat'],
  [Bounce, 'bounce'],
  [OpenBrace, 'chart'],
  [DotDot, 'open'],
  [Greater, 'arrow'],
  [Plus, 'offset'],
  [Comma, 'comma'],
  [Close, 'group-end'],
  [Seconds, 'seconds'],
]);

/** The word before the fault where it was taken for the mark that a range begins at, and no such mark is set. */
function noMark({ failure, tokens }: UnreadStatement, { source }: FixTester): Token | undefined {
  const before = tokens[failure.at - 1];
  if (!isWanted(failure, 'range-dots') || !isName(before)) return undefined;
  const set = source.text.matchAll(/^mark\s+([\p{L}\p{N}_]+)/gmu);
  return [...set].some(([, name]) => name === before.image) ? undefined : before;
}

function general(unread: UnreadStatement, stopped: Token, mender: FixTester): StatementFault {
  const { failure, tokens, piece, typed } = unread;
  const entry = failure.entry!;
  const unmarked = noMark(unread, mender);
  const token = unmarked ?? stopped;
  const wanted: readonly Wanted[] = unmarked ? ['range'] : failure.wanted;
  const place = placeOf(token);
  const found = typedAt(token, typed);
  const drawings = entry === timelineRule || entry.word === 'phrase';
  const anyDrawing =
    drawings && (wanted.length === 0 || isWanted(failure, 'drawing', 'drawings', 'drawing-or-group-end'));
  const candidates: FixCandidate[] = [];
  const guessed: string[] = [];
  let mended: Message | undefined;
  const words = laterWordsOf(entry);
  const trade = token.type === Word ? tradeWord(token.image) : undefined;
  if (
    trade &&
    (trade.as === 'word' || trade.as === 'item') &&
    (drawings ? trade.as === 'item' : trade.as === 'word')
  )
    return {
      message: { code: 'trade-word', parameters: called(trade, found) },
      place,
      candidates: [],
      note: writtenSo(entry, tokens),
    };
  for (const near of [token, tokens[failure.at - 1]]) {
    const meant = near?.type === Word ? nearest(near.image, words) : undefined;
    if (!meant) continue;
    guessed.push(meant);
    candidates.push(replaceFix(placeOf(near!), meant, { action: 'write', written: meant }));
    mended ??= {
      code: 'does-not-fit',
      parameters: { variant: 'word-meant', found: typedAt(near!, typed), guess: meant },
    };
  }
  if (isWanted(failure, '`=`', 'phrase-equals')) {
    const colon = token.type === Colon;
    candidates.push(
      colon
        ? replaceFix(place, ' =', { action: 'write', written: '=' })
        : insertFix(place.start, '= ', { action: 'add-equals' }),
    );
  }
  const blank = replaceFix(place, /^\s/.test(typed.slice(place.end)) ? '' : ' ', { action: 'blank-instead' });
  if (token.type === Comma) candidates.push(blank);
  if (token.type === Close) candidates.push(replaceFix(place, '', { action: 'leave-out' }));
  if (anyDrawing && token.type === Seconds)
    candidates.push(insertFix(place.start, ':', { action: 'write-as-length' }));
  if (anyDrawing && token.type === SizeText) {
    candidates.push(replaceFix(place, token.image.replace('x', ' x '), { action: 'blanks-around-x' }));
  }
  let why: Misplaced | undefined;
  if (anyDrawing) why = OUT_OF_PLACE.get(token.type);
  else if (token.type === Comma && wanted.length === 0 && mender.choose([blank], piece, place))
    why = 'comma-for-blank';
  const parameters = (): Messages['does-not-fit'] => {
    if (why) return { variant: 'misplaced', found, why };
    if (anyDrawing) return { variant: 'not-shown', found };
    if (wanted.length === 0) return { variant: 'too-much', found, statement: entry.word };
    return { variant: 'wanted', found, wanted };
  };
  const message: Message = { code: 'does-not-fit', parameters: parameters() };
  const note = why ? {} : { note: writtenSo(entry, tokens, guessed) };
  const wholeOnly = token.type === Comma;
  return { message, place, ...(mended ? { mended } : {}), candidates, wholeOnly, ...note };
}
