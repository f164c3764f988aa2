import { expect } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { type Parsed, parse } from '../../src/language/parse.js';
import { withEdits } from '../../src/language/statement-reader.js';
import type { Statement, StatementOf } from '../../src/language/tree.js';

/** Reads a text that must be without fault. */
export function readAll(text: string): Parsed {
  const parsed = parse('this.cut', text);
  expect(parsed.diagnostics.map((one) => messageOf(one, 'en'))).toEqual([]);
  return parsed;
}

/** The one statement of a text without fault. */
export function readOne<K extends Statement['kind']>(kind: K, text: string): StatementOf<K> {
  const { statements } = readAll(text).tree;
  expect(statements.map((one) => one.kind)).toEqual([kind]);
  return statements[0] as StatementOf<K>;
}

/** A tree without its places, for comparison; a part that is only a place becomes `true`. */
export function bare(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (key, part) => {
      const isPlace = typeof part === 'object' && part !== null && 'file' in part && 'start' in part;
      if (!isPlace) return part;
      return key === 'span' || key === 'word' ? undefined : true;
    }),
  );
}

export interface Told {
  readonly code: string;
  readonly message: string;
  /** What was typed at the place. */
  readonly at: string;
  /** The text with the offered edit applied, or null where none is offered. */
  readonly mended: string | null;
}

/** Everything said of a text, in order. */
export function told(text: string): Told[] {
  return parse('this.cut', text).diagnostics.map(({ code, parameters, span, fix }) => ({
    code,
    message: messageOf({ code, parameters }, 'en'),
    at: text.slice(span.start, span.end),
    mended: fix
      ? withEdits(
          text,
          fix.edits.map((edit) => ({ ...edit.span, text: edit.text })),
        )
      : null,
  }));
}
