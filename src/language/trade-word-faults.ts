/** Statements in the words of the trade, or with times and lengths as they are written elsewhere: what they would be here. */

import type { Messages } from './catalogue/index.js';
import type { UnreadStatement } from './fault-explanation.js';
import {
  type FixCandidate,
  type FixTester,
  placeOf,
  replaceFix,
  type StatementFault,
  typedAt,
} from './fault-fixes.js';
import { foldCharacters, tokenize } from './lexer.js';
import { type Reworded, rewordings } from './rewordings.js';
import type { TextRange } from './source.js';
import { isName, startsTimeline, withEdits } from './statement-reader.js';
import { exampleOf } from './statements/statement-forms.js';
import { byWord, timelineRule } from './statements/statement-table.js';
import { Colon, Text, type Token } from './tokens.js';
import { type TradeWord, tradeWord, tradeWordKey, tradeWordsByKey } from './trade-words.js';

/** Statements that end in a text. */
const TEXTS: ReadonlySet<string> = new Set(['sound', 'music', 'voice', 'note', 'memo', 'artist', 'cut']);
/** Characters of the longest word of the table, with dots and blanks between its letters. */
const LONGEST = 40;
/** What may be written in one statement at a time. */
const MOST_EDITS = 40;
/** Characters of a statement that is looked at: more is no statement that anybody typed. */
const LONGEST_STATEMENT = 2000;

/** A trade word at the start of a statement that has another word here, with the statement made of it where that reads. */
export function tradeWordFault(unread: UnreadStatement): StatementFault | null {
  const { tokens, piece, typed } = unread;
  const folded = foldedPiece(unread);
  const titled = startsTimeline(tokens, 0);
  const lead = leading(folded);
  if (!lead || folded.length > LONGEST_STATEMENT) return null;
  const { entry, length } = lead;
  const first = placeOf(tokens[0]!);
  // A word of the language as it is: only what is longer, as `track in`, can be another one of the trade.
  if (byWord.has(tokens[0]!.image) && piece.start + length <= first.end) return null;
  const colon = titled ? tokens.find(({ type }) => type === Colon)! : null;
  const place = { start: piece.start, end: colon ? placeOf(colon).end : piece.start + length };
  const found = typed.slice(piece.start, piece.start + length);
  if (found.replace(/\s+/g, ' ') === entry.here) return null;
  const rest = rewordings(folded, { start: place.end - piece.start, end: folded.length }, false).map((one) =>
    shifted(one, piece.start),
  );
  // A speaker without quotes.
  const speaker = entry.page === 'voice' ? tokens.find(({ start }) => start >= place.end) : undefined;
  if (speaker && isName(speaker))
    rest.unshift({ ...placeOf(speaker), found: speaker.image, text: `"${typedAt(speaker, typed)}"` });
  // `兼用 B 6/B`: the word of the language stands behind the level.
  const [, later] = / (reuse) /.exec(entry.here) ?? [];
  const named = later === undefined ? undefined : tokens.find(({ start }) => start >= place.end);
  if (isName(named)) rest.unshift({ start: named.end, end: named.end, found: '', text: ` ${later}` });
  // Words at the end that are no word of the language: a text without quotes.
  const tail = TEXTS.has(entry.page) ? /(?<=[\s\d])\p{L}[^"「」\r\n]*$/u.exec(folded) : null;
  if (tail && piece.start + tail.index >= place.end)
    rest.push({
      start: piece.start + tail.index,
      end: piece.end,
      found: tail[0],
      text: `"${typed.slice(piece.start + tail.index, piece.end)}"`,
    });
  const starts = entry.as === 'statement' ? (entry.starts ?? [entry.here]) : [];
  const blank = /^[\s]|^$/.test(folded.slice(place.end - piece.start)) ? '' : ' ';
  const candidates = starts.flatMap((start) => {
    const begins = { ...place, text: start + blank };
    return [
      replaceFix(place, begins.text, { action: 'write', written: start }),
      ...(rest.length > 0 ? [writing([begins, ...rest])] : []),
    ];
  });
  // `camera: pan A@1 > …`: what follows is a statement by itself.
  if (colon)
    candidates.push(
      replaceFix({ ...place, end: afterBlanks(typed, place.end) }, '', { action: 'leave-out' }),
    );
  const rule = byWord.get(entry.page);
  return {
    message: { code: 'trade-word', parameters: called(entry, found) },
    place: { start: piece.start, end: piece.start + length },
    candidates,
    wholeOnly: true,
    ...(rule && entry.as === 'statement'
      ? {
          note: {
            note: 'written-so',
            example: exampleOf(rule, [tokens[0]!, ...tokensOf(entry.here), ...tokens.slice(1)]),
          },
        }
      : {}),
  };
}

const tokensOf = (text: string): Token[] => tokenize(text, 0, text.length);

/** What the message says of a trade word. */
export function called({ as, here }: TradeWord, found: string): Messages['trade-word'] {
  const variant = (
    {
      statement: 'called',
      word: 'called',
      item: 'drawn',
      manifest: 'manifest',
      effect: 'instead',
      command: 'command',
    } as const
  )[as];
  return { variant, found, here };
}

/** `Level A: 1..`: the word before a level's name is too much. */
export function levelWordFault({ tokens, piece, typed }: UnreadStatement): StatementFault | null {
  const [word, name] = tokens;
  if (!word || !name || !startsTimeline(tokens, 1)) return null;
  const level = word.image.toLowerCase() === 'level' || tradeWord(word.image)?.here === 'level';
  if (!level) return null;
  const place = { start: piece.start, end: placeOf(name).start };
  return {
    message: {
      code: 'trade-word',
      parameters: {
        variant: 'written',
        found: typed.slice(place.start, placeOf(name).end),
        here: `${typed.slice(name.start, placeOf(name).end)}:`,
      },
    },
    place: placeOf(word),
    candidates: [replaceFix(place, '', { action: 'leave-out' })],
    wholeOnly: true,
  };
}

/** `A Pim: 1..`, `A (Pim): 1..`: a title without quotes. */
export function titleWithoutQuotes(
  { tokens, piece, typed }: UnreadStatement,
  mender: FixTester,
): StatementFault | null {
  const colon = tokens.findIndex(({ type }) => type === Colon);
  if (colon < 2 || colon > 6) return null;
  const place = { start: placeOf(tokens[0]!).end, end: tokens[colon]!.start };
  const title = typed.slice(place.start, place.end);
  if (/["「」\r\n]/.test(title)) return null;
  const bare = title.trim().replace(/^['([{‘]|['\])}’]$/g, '');
  const candidates = [replaceFix(place, ` "${bare}"`, { action: 'quote-text' })];
  // `A, B: 1..` is no title: two names are listed there.
  if (bare === '' || /^\s*[,、，]/u.test(title) || !mender.choose(candidates, piece, place)) return null;
  return {
    message: { code: 'missing-quotes', parameters: { found: title.trim() } },
    place: { start: place.end - title.trimStart().length, end: place.end },
    candidates,
  };
}

/** Who works on a cut, in Japanese: no characters of a film. */
const ROLES: ReadonlySet<string> = new Set(
  '監督 演出 作監 作画監督 総作監 総作画監督 原画 第二原画 動画 動検 仕上 仕上げ 美術 背景 撮影 編集 制作 進行 脚本 絵コンテ コンテ レイアウト 音響 作品 題名'.split(
    ' ',
  ),
);

/** `Pim: "Wait!"`: a line of dialogue as a script has it. When it is spoken nobody knows. */
export function spokenLine({ tokens, piece, typed }: UnreadStatement): StatementFault | null {
  const [name, ...rest] = tokens.filter(({ type }) => type !== Colon);
  if (!isName(name) || byWord.has(name.image) || rest.length !== 1 || rest[0]!.type !== Text) return null;
  // Names of people are not written small; what is may be the word of another program or of a form.
  if (leadingTradeWord(name.image) || ROLES.has(name.image) || /^\p{Ll}/u.test(name.image)) return null;
  const [speaker, line] = [name, rest[0]!].map((one) => typed.slice(one.start, placeOf(one).end));
  return {
    message: {
      code: 'trade-word',
      parameters: {
        variant: 'written',
        found: typed.slice(piece.start, piece.end),
        here: `voice "${speaker}" 1+1..2+0 ${line}`,
      },
    },
    place: piece,
    candidates: [],
  };
}

/** The ease that is called in or out: people of the trade mean opposite ends by it. */
const EASE_IN_OUT = /(?<=\s)(?:ease|slow|cushion)[- ]?(?:in|out)(?![\p{L}])/u;

/** A statement that reads once its times, lengths, directions or signs are written as they are here; null where it does not. */
export function rewordedFault(unread: UnreadStatement, mender: FixTester): StatementFault | null {
  const { failure, piece, tokens } = unread;
  const { entry } = failure;
  if (!entry || piece.end - piece.start > LONGEST_STATEMENT) return null;
  const drawn = entry === timelineRule || entry.word === 'phrase';
  const folded = foldedPiece(unread);
  const from = placeOf(tokens[0]!).end - piece.start;
  const ease = drawn ? null : EASE_IN_OUT.exec(folded);
  const found = rewordings(folded, { start: 0, end: folded.length }, drawn)
    .filter(({ start }) => start >= from)
    .map((one) => shifted(one, piece.start));
  if (!ease && (found.length === 0 || found.length > MOST_EDITS)) return null;
  const alike = (a: Reworded, b: Reworded): boolean => a.text === b.text && a.found.trim() === b.found.trim();
  const sets: Reworded[][] = [
    ...found.filter((one, i) => found.findIndex((other) => alike(one, other)) === i).map((one) => [one]),
    ...found
      .filter((one, i) => found.findIndex((other) => alike(one, other)) === i)
      .map((one) => found.filter((other) => alike(one, other))),
    found,
  ];
  for (const set of sets) {
    // What is left out may leave a range to be said: for the whole cut.
    for (const tail of entry.word === 'pull' || entry.word === 'follow' ? ['', ' 1..'] : ['']) {
      const edits = tail ? [...set, { start: piece.end, end: piece.end, found: '', text: tail }] : set;
      const candidate = writing(edits);
      if (!mender.choose([candidate], piece, { start: 0, end: 0 })) continue;
      const first = set[0]!;
      return {
        message: { code: 'trade-word', parameters: wordedSo(first) },
        place: { start: first.start + leadingBlanks(first.found), end: first.end },
        candidates: [candidate],
        wholeOnly: true,
      };
    }
  }
  const whole = twiceReworded(unread, folded, from, drawn);
  if (whole && mender.choose([whole.candidate], piece, { start: 0, end: 0 })) {
    const { first } = whole;
    return {
      message: { code: 'trade-word', parameters: wordedSo(first) },
      place: { start: first.start + leadingBlanks(first.found), end: first.end },
      candidates: [whole.candidate],
      wholeOnly: true,
    };
  }
  if (!ease) return null;
  return {
    message: { code: 'trade-word', parameters: { variant: 'either-end', found: ease[0] } },
    place: { start: piece.start + ease.index, end: piece.start + ease.index + ease[0].length },
    candidates: [],
  };
}

/** What comes of a statement when what was reworded is looked at again: `from black 24 frames`, `24`, `1..24`. */
function twiceReworded(
  { piece, typed }: UnreadStatement,
  folded: string,
  from: number,
  drawn: boolean,
): { readonly candidate: FixCandidate; readonly first: Reworded } | null {
  // Offsets would not hold where a character was folded.
  if (folded !== typed.slice(piece.start, piece.end)) return null;
  let text = folded;
  let first: Reworded | null = null;
  for (let round = 0; round < 3; round++) {
    const found = rewordings(text, { start: 0, end: text.length }, drawn).filter(
      ({ start }) => start >= from,
    );
    if (found.length === 0 || found.length > MOST_EDITS) break;
    first ??= shifted(found[0]!, piece.start);
    text = withEdits(text, found);
  }
  if (!first) return null;
  const written = text.slice(from).trim();
  const edit = { start: piece.start + from, end: piece.end, text: ` ${written}` };
  return { candidate: { action: 'write', written, edits: [edit] }, first };
}

/** A statement of which a colon is left out, reworded behind it: `stack: BG, A`. */
export function withoutColon(unread: UnreadStatement, colon: TextRange): FixCandidate[] {
  const { piece } = unread;
  const whole = foldedPiece(unread);
  const at = colon.start - piece.start;
  const folded = `${whole.slice(0, at)} ${whole.slice(at + 1)}`;
  const rest = rewordings(folded, { start: 0, end: folded.length }, false)
    .filter(({ start }) => start > at)
    .map((one) => shifted(one, piece.start));
  return rest.length > 0 ? [writing([{ ...colon, text: '' }, ...rest])] : [];
}

/** A statement whose first word is right but for its capitals, reworded behind it. */
export function inSmallLetters(unread: UnreadStatement, word: string): FixCandidate[] {
  const { tokens, piece } = unread;
  const place = placeOf(tokens[0]!);
  const folded = word + foldedPiece(unread).slice(place.end - piece.start);
  const rest = rewordings(folded, { start: 0, end: folded.length }, false)
    .filter(({ start }) => start >= word.length)
    .map((one) => shifted(one, piece.start));
  return rest.length > 0 ? [writing([{ ...place, text: word }, ...rest])] : [];
}

function wordedSo({ found, text, towards }: Reworded): Messages['trade-word'] {
  const [typed, here] = [found.trim(), text.trim()];
  if (towards) return { variant: 'towards', found: typed, here };
  return here === '' ? { variant: 'left-out', found: typed } : { variant: 'written', found: typed, here };
}

const leadingBlanks = (text: string): number => text.length - text.trimStart().length;

function writing(edits: readonly (TextRange & { readonly text: string })[]): FixCandidate {
  const written = edits.map(({ text }) => text.trim()).filter((text) => text !== '');
  if (written.length === 0) return { action: 'leave-out', edits };
  if (written.length === 1) return { action: 'write', written: written[0]!, edits };
  return { action: 'write-each', written, edits };
}

const foldedPiece = ({ piece, typed }: UnreadStatement): string =>
  foldCharacters(typed.slice(piece.start, piece.end)).text;

const shifted = (one: Reworded, by: number): Reworded => ({
  ...one,
  start: one.start + by,
  end: one.end + by,
});

function afterBlanks(typed: string, at: number): number {
  let after = at;
  while (/[^\S\r\n]/.test(typed[after] ?? '')) after++;
  return after;
}

/** The trade word that a folded text begins with. */
export const leadingTradeWord = (folded: string): TradeWord | undefined => leading(folded)?.entry;

/** The longest trade word that a folded statement begins with. */
function leading(folded: string): { readonly entry: TradeWord; readonly length: number } | null {
  const words = tradeWordsByKey();
  let best: { entry: TradeWord; length: number } | null = null;
  const most = Math.min(LONGEST, folded.length, (folded.search(/[\r\n"「:@]/) + 1 || folded.length + 1) - 1);
  for (let length = 1; length <= most; length++) {
    const [last = '', next = ''] = [folded[length - 1], folded[length]];
    if (/\s/.test(last) || continues(last, next)) continue;
    const entry = words.get(tradeWordKey(folded.slice(0, length)));
    if (entry) best = { entry, length };
  }
  return best;
}

/** Whether a word goes on: kana and kanji end where letters and digits of ASCII begin. */
function continues(last: string, next: string): boolean {
  if (!/[\p{L}\p{N}\p{M}_ー]/u.test(next)) return false;
  const ascii = (one: string): boolean => one.charCodeAt(0) < 0x80;
  return ascii(last) === ascii(next) && /[\p{L}\p{N}_.ー]/u.test(last);
}
