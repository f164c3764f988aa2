/** What all printers of diagnostics do first: sort, leave out what was told already, stop a flood. */

import type { Code } from '../catalogue/index.js';
import type { Diagnostic, Severity } from '../diagnostic.js';
import { reportTexts } from '../message.js';
import type { UserLanguage } from '../user-language.js';

/** The texts that diagnostics point into, by file name. */
export type Sources = ReadonlyMap<string, string>;

/** Diagnostics of one severity that are printed of one file. */
export const MOST_PRINTED = 100;

/** Stands behind a thousand others, and says that there may be more. */
const ALWAYS: Code = 'reading-stopped';

/** What was left out of one file. */
export interface LeftOut {
  readonly file: string;
  readonly severity: Severity;
  readonly count: number;
}

const compare = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

/**
 * By file, then by place, then by code: the same order in every run. Files come in the order of `sources`, others after them by
 * name. Of two that say the same of one place the second is left out.
 */
export function inOrder(diagnostics: readonly Diagnostic[], sources: Sources): Diagnostic[] {
  const rank = new Map([...sources.keys()].map((file, index) => [file, index]));
  const rankOf = (file: string): number => rank.get(file) ?? rank.size;
  const sorted = [...diagnostics].sort(
    (a, b) =>
      rankOf(a.span.file) - rankOf(b.span.file) ||
      compare(a.span.file, b.span.file) ||
      a.span.start - b.span.start ||
      a.span.end - b.span.end ||
      compare(a.code, b.code) ||
      compare(JSON.stringify(a.parameters), JSON.stringify(b.parameters)),
  );
  return sorted.filter((one, index) => {
    const last = sorted[index - 1];
    return !(
      last &&
      last.code === one.code &&
      JSON.stringify(last.parameters) === JSON.stringify(one.parameters) &&
      last.span.file === one.span.file &&
      last.span.start === one.span.start &&
      last.span.end === one.span.end
    );
  });
}

/** In order, and at most a hundred of a severity a file. */
export function limited(
  diagnostics: readonly Diagnostic[],
  sources: Sources,
): { shown: Diagnostic[]; leftOut: LeftOut[] } {
  const counts = new Map<string, { file: string; severity: Severity; count: number }>();
  const shown = inOrder(diagnostics, sources).filter(({ code, span: { file }, severity }) => {
    if (code === ALWAYS) return true;
    const key = `${severity} ${file}`;
    const entry = counts.get(key) ?? { file, severity, count: 0 };
    counts.set(key, entry);
    entry.count++;
    return entry.count <= MOST_PRINTED;
  });
  const leftOut = [...counts.values()]
    .filter(({ count }) => count > MOST_PRINTED)
    .map((entry) => ({ ...entry, count: entry.count - MOST_PRINTED }));
  return { shown, leftOut };
}

/** "57 more errors of c012.cut are not shown: mend the first hundred and look again". */
export function saidOfLeftOut(one: LeftOut, language: UserLanguage): string {
  return reportTexts(language).leftOut({ ...one, most: MOST_PRINTED });
}

/** Keeps the line tables of the texts, so that each is made once. */
export function tableOf<T>(sources: Sources, make: (text: string) => T): (file: string) => T | undefined {
  const made = new Map<string, T>();
  return (file) => {
    const text = sources.get(file);
    if (text === undefined) return undefined;
    const known = made.get(file);
    if (known !== undefined) return known;
    const fresh = make(text);
    made.set(file, fresh);
    return fresh;
  };
}
