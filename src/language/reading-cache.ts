/** Statements that were read before, so that a text that is being typed is not read whole at every keystroke. */

import type { Diagnostic, Span } from './diagnostic.js';
import type { Token } from './parse.js';
import type { Statement } from './tree.js';

export interface CachedStatement {
  /** Where it stood. */
  readonly start: number;
  readonly statement: Statement;
  readonly tokens: readonly Token[];
  readonly problems: readonly Diagnostic[];
}

/** Of one file. A statement is known by what was typed: nothing outside it changes how it is read. */
export class ReadingCache {
  private last = new Map<string, CachedStatement>();
  private current = new Map<string, CachedStatement>();

  /** Only what the text before this one held is kept. */
  begin(): void {
    this.last = this.current;
    this.current = new Map();
  }

  /** The statement as it reads at `start`, every place in it moved there. */
  find(typed: string, start: number): CachedStatement | null {
    const known = this.current.get(typed) ?? this.last.get(typed);
    if (!known) return null;
    const read = known.start === start ? known : { ...movedSpans(known, start - known.start), start };
    this.keep(typed, read);
    return read;
  }

  keep(typed: string, read: CachedStatement): void {
    this.current.set(typed, read);
  }
}

/** A copy in which every span that `within` holds for is moved. For plain data without circles. */
export function movedSpans<T>(value: T, by: number, within: (span: Span) => boolean = () => true): T {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((each) => movedSpans(each, by, within)) as T;
  const copy: Record<string, unknown> = {};
  for (const key in value) copy[key] = movedSpans(value[key], by, within);
  const { file, start, end } = copy as unknown as Span;
  if (
    typeof file === 'string' &&
    typeof start === 'number' &&
    typeof end === 'number' &&
    within(copy as unknown as Span)
  ) {
    copy.start = start + by;
    copy.end = end + by;
  }
  return copy as T;
}
