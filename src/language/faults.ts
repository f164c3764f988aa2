/** What to say of a statement that could not be read, in the words of the trade, and what could be tried to mend it. */

import type { IToken } from 'chevrotain';
import { type Diagnostic, diagnose, type Note } from './diagnostic.js';
import { type Fault, insert, placeOf, quoted, replace, subject } from './fault.js';
import type { Candidate, Mender } from './mend.js';
import type { Range } from './normal.js';
import { faultyToken } from './numbers.js';
import { DEEPEST, type Failure } from './read.js';
import { slip } from './slips.js';
import { byWord, type StatementRule, timelineRule } from './statements/index.js';
import { nearest } from './suggest.js';
import {
  Bounce,
  Close,
  Colon,
  Comma,
  DotDot,
  Greater,
  Open,
  OpenBrace,
  Plus,
  Seconds,
  SizeText,
  Star,
  Text,
  UnclosedText,
  Word,
} from './tokens.js';
import { wordsOf } from './vocabulary.js';

/** All that is known of a statement that could not be read. */
export interface Unread {
  readonly failure: Failure;
  readonly tokens: readonly IToken[];
  readonly piece: Range;
  /** The statement before it, if any. */
  readonly before: Range | null;
  /** The text as typed. */
  readonly typed: string;
}

/** Turns a failure into its one diagnostic. */
export function explain(unread: Unread, mender: Mender): Diagnostic {
  const fault = find(unread, mender);
  const chosen = mender.choose(fault.candidates, fault.within ?? unread.piece, fault.place);
  const notes: Note[] = fault.note ? [{ message: fault.note }] : [];
  const span = { file: mender.source.file, ...fault.place };
  const message = chosen && fault.mended ? fault.mended : fault.message;
  return diagnose(fault.code, span, message, { notes, fix: mender.fix(chosen) });
}

function find(unread: Unread, mender: Mender): Fault {
  const { failure, tokens, typed } = unread;
  switch (failure.reason) {
    case 'first-word':
      return firstWord(unread);
    case 'unknown-word':
      return unknownWord(unread, mender);
    case 'too-deep':
      return {
        code: 'nested-too-deep',
        place: placeOf(tokens[failure.at]!),
        message: `Groups stand in groups more than ${DEEPEST} deep here.`,
        candidates: [],
      };
    case 'misfit': {
      const token = tokens[failure.at];
      const broken = tokens.find(({ tokenType }) => tokenType === UnclosedText);
      if (broken) return unclosedText(broken, token === broken, typed);
      const special = token && faultyToken(tokens, failure.at, typed);
      if (special) return special;
      if (!token) return tooShort(unread);
      return slip(unread, token, mender) ?? general(unread, token);
    }
  }
}

function firstWord({ tokens, before, piece, typed }: Unread): Fault {
  const token = tokens[0]!;
  const candidates = before
    ? [insert(piece.start, '    ', 'indent the line, so that it goes on with the one above')]
    : [];
  const within = before ? { start: before.start, end: piece.end } : piece;
  const special = faultyToken(tokens, 0, typed);
  return {
    code: 'statement-start',
    place: special?.place ?? placeOf(token),
    message: `A line that starts at the left edge says something new and starts with a word, but this one starts with ${quoted(token, typed)}.`,
    candidates,
    within,
  };
}

/** The word that was probably meant by an unknown first word. */
export function meantWord(image: string): string | undefined {
  return nearest(image, byWord.keys());
}

function unknownWord({ tokens, piece, typed }: Unread, mender: Mender): Fault {
  const token = tokens[0]!;
  const place = placeOf(token);
  const found = quoted(token, typed);
  const meant = meantWord(token.image);
  const words = meant ? [replace(place, meant, `write \`${meant}\``)] : [];
  const reads = (candidates: readonly Candidate[]): boolean =>
    mender.choose(candidates, piece, { start: 0, end: 0 }) !== undefined;
  const titled = tokens[1]?.tokenType === Text;
  const colon = [insert(placeOf(titled ? tokens[1]! : token).end, ':', 'put a colon after the level')];
  if (!reads(words) && tokens.length > 1 && reads(colon)) {
    return {
      code: 'missing-colon',
      place,
      message: `${found} is no word of the language; a timeline has a colon after its level.`,
      candidates: colon,
    };
  }
  if (!meant) {
    return {
      code: 'unknown-word',
      place,
      message: `${found} is no word of the language.`,
      candidates: [],
      note: `a timeline has a colon after its level: ${timelineRule.example}`,
    };
  }
  return {
    code: 'unknown-word',
    place,
    message: `${found} is no word of the language; did you mean \`${meant}\`?`,
    candidates: words,
    note: writtenSo(byWord.get(meant)!),
  };
}

function unclosedText(token: IToken, first: boolean, typed: string): Fault {
  const { start, end } = placeOf(token);
  const text = typed.slice(start, end).trimEnd();
  const closing = new Map([
    ['「', '」'],
    ['｢', '｣'],
    ['“', '”'],
  ]).get(text[0]!);
  const place = { start, end: start + text.length };
  const close = insert(place.end, closing ?? text[0]!, 'close the text');
  return {
    code: 'unclosed-text',
    place,
    message: first
      ? 'This text has no closing quote on its line.'
      : 'The quotes of this statement do not pair up: one is missing.',
    candidates: first ? [close] : [],
  };
}

function writtenSo(entry: StatementRule): string {
  return `written like this: ${entry.example}`;
}

function tooShort({ failure, tokens, typed }: Unread): Fault {
  const entry = failure.entry!;
  const end = placeOf(tokens.at(-1)!).end;
  const open = unclosedGroup(tokens);
  if (open && failure.wanted.includes('`)`')) {
    return {
      code: 'unclosed-group',
      place: placeOf(open),
      message: 'This group is never closed: its `)` is missing.',
      candidates: [insert(end, ')', 'close the group')],
    };
  }
  const last = quoted(tokens.at(-1)!, typed);
  return {
    code: 'stops-short',
    place: { start: end, end },
    message: `The ${subject(entry)} stops too soon: ${failure.wanted} should follow ${last}.`,
    candidates: failure.wanted.includes('`}`') ? [insert(end, '}', 'close the chart')] : [],
    note: writtenSo(entry),
  };
}

function unclosedGroup(tokens: readonly IToken[]): IToken | undefined {
  const open: IToken[] = [];
  for (const token of tokens) {
    if (token.tokenType === Open) open.push(token);
    else if (token.tokenType === Close) open.pop();
  }
  return open[0];
}

/** Remarks on tokens that have a place in a timeline, but not here. */
const OUT_OF_PLACE = new Map([
  [Colon, 'a length such as `:8` comes once, after a drawing or a group, and before `..`'],
  [Star, 'a repeat such as `*3` comes once, after the `)` of a group or the name of a phrase'],
  [Bounce, '`<>` comes after the `)` of a group or the name of a phrase, and before `*3`'],
  [OpenBrace, 'a chart such as {late} comes once, straight after a key drawing'],
  [DotDot, '`..` comes once, after a drawing or a group'],
  [Greater, '`>` stands between a key and an in-between, as in 1>3.2'],
  [Plus, 'an offset stands straight after the name of a mark, as in hit+6'],
  [Comma, 'drawings have blanks between them, no commas'],
  [Close, 'it closes no group'],
  [Seconds, 'how long a drawing stays is written with a colon, as in 3:1+0'],
]);

function general({ failure, tokens, typed }: Unread, token: IToken): Fault {
  const entry = failure.entry!;
  const { wanted } = failure;
  const place = placeOf(token);
  const found = quoted(token, typed);
  const drawings = entry === timelineRule || entry.word === 'phrase';
  const anyDrawing = drawings && (wanted === '' || wanted.startsWith('a drawing'));
  const candidates: Candidate[] = [];
  let mended: string | undefined;
  const words = wordsOf(entry);
  for (const near of [token, tokens[failure.at - 1]]) {
    const meant = near?.tokenType === Word ? nearest(near.image, words) : undefined;
    if (!meant) continue;
    candidates.push(replace(placeOf(near!), meant, `write \`${meant}\``));
    mended ??= `${quoted(near!, typed)} does not fit here; did you mean \`${meant}\`?`;
  }
  if (wanted.includes('`=`')) {
    const colon = token.tokenType === Colon;
    candidates.push(colon ? replace(place, ' =', 'write `=`') : insert(place.start, '= ', 'put `=` between'));
  }
  if (token.tokenType === Comma) candidates.push(replace(place, ' ', 'leave a blank instead'));
  if (token.tokenType === Close) candidates.push(replace(place, '', 'leave it out'));
  if (anyDrawing && token.tokenType === Seconds)
    candidates.push(insert(place.start, ':', 'write it as a length'));
  if (anyDrawing && token.tokenType === SizeText) {
    candidates.push(replace(place, token.image.replace('x', ' x '), 'put blanks around the `x`'));
  }
  let remark: string | undefined;
  if (anyDrawing) remark = OUT_OF_PLACE.get(token.tokenType);
  else if (token.tokenType === Comma && wanted === '') remark = 'names have blanks between them, no commas';
  let message = `${found} does not fit here, where ${wanted} should stand.`;
  if (remark) message = `${found} does not fit here: ${remark}.`;
  else if (anyDrawing) message = `${found} is nothing that a timeline can show.`;
  else if (wanted === '') message = `${found} is too much: the ${subject(entry)} is complete before it.`;
  const note = remark ? {} : { note: writtenSo(entry) };
  return { code: 'does-not-fit', place, message, ...(mended ? { mended } : {}), candidates, ...note };
}
