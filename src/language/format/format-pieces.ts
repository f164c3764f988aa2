/** A text cut into what a formatter lays out: statements with the comments and blank lines inside them, and what lies between. */

import { foldCharacters, splitStatements, tokenize } from '../lexer.js';
import type { TextRange } from '../source.js';
import { readStatement } from '../statement-reader.js';
import type { Token } from '../tokens.js';
import type { Statement } from '../tree.js';

/** A token as it is to be written: plain characters outside quotes, names in NFC. */
export interface WrittenToken {
  /** Its kind in the grammar. */
  readonly kind: string;
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Typed in another line than the token before it. */
  readonly startsLine: boolean;
}

/** A line of its own: a comment with its `#`, or '' for a blank one. */
export interface LooseLine {
  readonly text: string;
  /** Typed behind blanks. */
  readonly indented: boolean;
}

/** Tokens that may share lines, the comment behind the last of them, and the lines between it and the next segment. */
export interface FormatSegment {
  /** Indices of the statement's tokens: the first, and the one behind the last. */
  readonly from: number;
  readonly to: number;
  readonly comment: string | null;
  readonly between: readonly LooseLine[];
}

export type FormatPiece =
  | {
      readonly kind: 'statement';
      readonly statement: Statement;
      readonly tokens: readonly WrittenToken[];
      readonly segments: readonly FormatSegment[];
      /** As typed, to the end of its last line. */
      readonly typed: string;
    }
  /** What could not be read, to the end of its last line. */
  | { readonly kind: 'left'; readonly text: string }
  /** Between statements; runs of blank lines are one. */
  | ({ readonly kind: 'line' } & LooseLine);

/** `text` without its byte-order mark. Every character but blanks stands in one of the pieces. */
export function piecesOf(file: string, text: string): FormatPiece[] {
  const folded = foldCharacters(text);
  const { statements, stray } = splitStatements(folded.text);
  const comments = new Comments(folded.comments);
  const controls = folded.controls.filter(({ start }) => !comments.at(start));
  let passed = 0;
  // Asked in the order of the text.
  const broken = (from: number, to: number): boolean => {
    while (passed < controls.length && controls[passed]!.end <= from) passed++;
    return passed < controls.length && controls[passed]!.start < to;
  };
  const pieces: FormatPiece[] = [];
  let end = 0;
  const lines = (to: number): void => {
    for (const line of linesBetween(text, end, to)) {
      if (broken(line.start, line.end)) pieces.push({ kind: 'left', text: text.slice(line.start, line.end) });
      else if (line.text !== '' || !isBlank(pieces.at(-1)))
        pieces.push({ kind: 'line', text: line.text, indented: line.indented });
    }
  };
  const left = (from: number, to: number): void => {
    end = lineEnd(text, to);
    pieces.push({ kind: 'left', text: text.slice(from, end) });
  };
  if (stray) {
    const start = lineStart(text, stray.start);
    lines(start);
    left(start, stray.end);
  }
  for (const piece of statements) {
    lines(piece.start);
    const stop = lineEnd(text, piece.end);
    const tokens = tokenize(folded.text, piece.start, piece.end);
    const reading = broken(piece.start, stop) ? null : readStatement(tokens, { file, text });
    if (reading && 'statement' in reading) {
      const made = segmentsOf(text, tokens, stop);
      pieces.push({
        kind: 'statement',
        statement: reading.statement,
        tokens: tokens.map((token, i) => written(text, token, tokens[i - 1])),
        segments: made,
        typed: text.slice(piece.start, stop),
      });
      end = stop;
    } else left(piece.start, piece.end);
  }
  lines(text.length);
  return pieces;
}

class Comments {
  constructor(private readonly ranges: readonly TextRange[]) {}

  /** Whether an offset lies in a comment. */
  at(offset: number): boolean {
    let low = 0;
    let high = this.ranges.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.ranges[middle]!.start <= offset) low = middle;
      else high = middle - 1;
    }
    const range = this.ranges[low];
    return range !== undefined && range.start <= offset && offset < range.end;
  }
}

function written(typed: string, { type, image, start, end }: Token, before: Token | undefined): WrittenToken {
  const kind = type.name;
  return {
    kind,
    text: kind === 'Text' ? image : image.normalize('NFC'),
    start,
    end,
    startsLine: before !== undefined && /[\r\n]/.test(typed.slice(before.end, start)),
  };
}

/** A comment, and a blank line, end a segment. `stop`: the end of the statement's last line. */
function segmentsOf(text: string, tokens: readonly Token[], stop: number): FormatSegment[] {
  const segments: FormatSegment[] = [];
  let from = 0;
  for (const [i, token] of tokens.entries()) {
    const next = tokens[i + 1];
    const start = token.end;
    if (next && next.start - start < 2) continue;
    const gap = text.slice(start, next ? next.start : stop);
    const hasLines = /[\r\n]/.test(gap);
    if (next && !hasLines) continue;
    const comment = commentIn(gap.split(/[\r\n]/, 1)[0]!);
    const between = next ? once(linesBetween(text, start, next.start)) : [];
    if (next && comment === null && between.length === 0) continue;
    segments.push({ from, to: i + 1, comment, between });
    from = i + 1;
  }
  return segments;
}

function isBlank(piece: FormatPiece | undefined): boolean {
  return piece?.kind === 'line' && piece.text === '';
}

/** Runs of blank lines as one. */
function once(lines: readonly LooseLine[]): LooseLine[] {
  return lines.filter(({ text }, i) => text !== '' || lines[i - 1]?.text !== '');
}

/** The whole lines that begin and end between two offsets; of the last one only its end counts, at the end of the text. */
function linesBetween(text: string, from: number, to: number): (TextRange & LooseLine)[] {
  const found: (TextRange & LooseLine)[] = [];
  let start = from;
  for (;;) {
    const end = lineEnd(text, start);
    const first = start === from && from > 0 && !isLineEnd(text, from - 1);
    if (!first && (end < to || (to === text.length && end > start))) {
      const typed = text.slice(start, end);
      const line = commentIn(typed) ?? '';
      const indented = line !== '' && !/^[#＃]/.test(typed);
      found.push({ start, end, text: line, indented });
    }
    if (end >= to || end >= text.length) return found;
    start = end + (text.startsWith('\r\n', end) ? 2 : 1);
  }
}

/** The comment in a line that holds nothing else. */
function commentIn(line: string): string | null {
  const at = line.search(/[#＃]/);
  return at < 0 ? null : `#${line.slice(at + 1).trimEnd()}`;
}

function isLineEnd(text: string, at: number): boolean {
  return text[at] === '\n' || text[at] === '\r';
}

function lineStart(text: string, from: number): number {
  return Math.max(text.lastIndexOf('\n', from), text.lastIndexOf('\r', from)) + 1;
}

export function lineEnd(text: string, from: number): number {
  let end = from;
  while (end < text.length && !isLineEnd(text, end)) end++;
  return end;
}
