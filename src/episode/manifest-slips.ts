/** Keys of a manifest that lack their colon and blank: `fps：24`, `fps=24`, `fps:24`, `fps 24`. */

import type { TextRange } from '../language/source.js';

export interface KeySlip {
  /** What stands for the colon, in the text as typed. */
  readonly range: TextRange;
  /** The line, or the entry, as it is meant. */
  readonly written: string;
}

const SIGNED =
  /^(\s*)(\p{L}[\p{L}\p{M}\p{N}_.-]*(?: [\p{L}\p{M}\p{N}_.-]+)*)[ \t\u3000]*(：|=|:(?=[^\s/\\]))[ \t\u3000]*(?=[^\s=:：])/u;
/** Most of these are no slip, but text that goes on: only keys that a manifest has are looked for in them. */
const BARE = /^()([a-z]+)([ \t\u3000]+)(?=[^\s=:：])/u;
/** Inside braces on one line: the names behind `{` and `,`. */
const ENTRY = /(?<=[{,])\s*([\p{L}\p{N}_. -]+?)[ \u3000]*(：)[ \u3000]*(?=[^\s：])/gu;

/**
 * Entries of a manifest's text that look like keys without a colon. `all`: whether the text is no YAML as it is; otherwise only those
 * that YAML reads as something else without a word, inside braces.
 */
export function keySlips(text: string, keys: readonly string[], all: boolean): KeySlip[] {
  const slips: KeySlip[] = [];
  let start = 0;
  for (const line of text.split('\n')) {
    const found = all ? (SIGNED.exec(line) ?? BARE.exec(line)) : null;
    const [head = '', indent = '', key = '', sign = ''] = found ?? [];
    const known = indent === '' && keys.includes(key);
    if (found && (known || sign === '：' || indent !== '')) {
      const from = start + indent.length + key.length;
      const value = line
        .slice(head.length)
        .replace(/\s+#.*$/, '')
        .trimEnd();
      slips.push({ range: { start: from, end: start + head.length }, written: `${key}: ${value}` });
    }
    for (const braces of line.matchAll(/\{[^{}"'#]*/g)) {
      for (const { 0: whole, 1: name, index } of braces[0].matchAll(ENTRY)) {
        const end = start + braces.index + index + whole.length;
        const from = start + braces.index + index + whole.indexOf(name!) + name!.length;
        const value = /^[^,{}]*/.exec(text.slice(end, start + line.length))![0].trim();
        slips.push({ range: { start: from, end }, written: `${name}: ${value}` });
      }
    }
    start += line.length + 1;
  }
  return slips;
}

/** The text with a colon and a blank at each of them, and where a place of it stands in the text as typed. */
export function withoutSlips(
  text: string,
  slips: readonly KeySlip[],
): { text: string; typed: (at: number) => number } {
  const sorted = slips.toSorted((a, b) => a.range.start - b.range.start);
  let mended = '';
  let at = 0;
  /** Each: where it ends in the mended text, and how much longer the text is up to there. */
  const ends: { readonly end: number; readonly more: number }[] = [];
  for (const { range } of sorted) {
    mended += `${text.slice(at, range.start)}: `;
    at = range.end;
    ends.push({ end: mended.length, more: mended.length - at });
  }
  return {
    text: mended + text.slice(at),
    typed: (place) => place - (ends.findLast(({ end }) => end <= place)?.more ?? 0),
  };
}
