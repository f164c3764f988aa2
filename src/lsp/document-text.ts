/** A text as an editor counts it: lines from 0, characters in the unit that client and server have agreed on. */

import type { Position, Range } from 'vscode-languageserver';
import type { SourceEdit } from '../language/diagnostic.js';
import { type Lines, lines, type TextRange, withoutMark } from '../language/source.js';

export type Encoding = 'utf-16' | 'utf-8';

export class DocumentText {
  /** Without a byte-order mark. */
  readonly text: string;
  /** 1 where the editor holds the mark as a character of its text. */
  private readonly mark: number;
  private table: Lines | null = null;

  constructor(
    /** As the editor holds it. */
    readonly raw: string,
    readonly encoding: Encoding,
  ) {
    this.text = withoutMark(raw);
    this.mark = raw.length - this.text.length;
  }

  private get lines(): Lines {
    this.table ??= lines(this.raw);
    return this.table;
  }

  get lineCount(): number {
    return this.lines.starts.length;
  }

  /** The offsets of a line (from 0), without its end; an empty stretch behind the text for a line that is not there. */
  line(index: number): TextRange {
    const { starts } = this.lines;
    const start = starts[index] ?? this.raw.length;
    let end = starts[index + 1] ?? this.raw.length;
    while (end > start && /[\r\n]/.test(this.raw[end - 1]!)) end--;
    return { start: Math.max(0, start - this.mark), end: Math.max(0, end - this.mark) };
  }

  /** The line (from 0) that an offset stands on. */
  lineAt(offset: number): number {
    const wanted = offset + this.mark;
    const { starts } = this.lines;
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= wanted) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  position(offset: number): Position {
    const bounded = Math.max(0, Math.min(offset, this.text.length));
    const line = this.lineAt(bounded);
    const start = this.lines.starts[line]!;
    const end = bounded + this.mark;
    const character =
      this.encoding === 'utf-8' ? Buffer.byteLength(this.raw.slice(start, end), 'utf8') : end - start;
    return { line, character };
  }

  /** A place beyond the text or its line is moved to the nearest one inside. */
  offset({ line, character }: Position): number {
    if (!(line >= 0)) return 0;
    if (line >= this.lineCount) return this.text.length;
    const start = this.lines.starts[Math.floor(line)]!;
    const stretch = this.line(Math.floor(line));
    const length = stretch.end + this.mark - start;
    const units = this.encoding === 'utf-8' ? this.unitsOf(start, length, character) : character;
    return Math.max(0, start - this.mark + Math.max(0, Math.min(units || 0, length)));
  }

  /** UTF-16 units that so many bytes of a line take; a place inside a character is moved before it. */
  private unitsOf(start: number, length: number, bytes: number): number {
    let units = 0;
    let left = bytes;
    for (const character of this.raw.slice(start, start + length)) {
      left -= Buffer.byteLength(character, 'utf8');
      if (left < 0) break;
      units += character.length;
    }
    return units;
  }

  range({ start, end }: TextRange): Range {
    return { start: this.position(start), end: this.position(end) };
  }

  /** With a stretch replaced, as the editor says it; without a range all of it is. */
  changed(range: Range | undefined, text: string): DocumentText {
    if (!range) return new DocumentText(text, this.encoding);
    const start = this.rawOffset(range.start);
    const end = Math.max(start, this.rawOffset(range.end));
    return new DocumentText(this.raw.slice(0, start) + text + this.raw.slice(end), this.encoding);
  }

  /** Like `offset`, but a place before the mark stays there. */
  private rawOffset(position: Position): number {
    if (this.mark === 1 && position.line === 0 && position.character === 0) return 0;
    return this.offset(position) + this.mark;
  }

  textEdit({ span, text }: SourceEdit): { range: Range; newText: string } {
    return { range: this.range(span), newText: this.lineEnds(text) };
  }

  /** A text with the line ends that this one has. */
  lineEnds(text: string): string {
    return this.raw.includes('\r\n') ? text.replace(/\r?\n/g, '\r\n') : text;
  }
}
