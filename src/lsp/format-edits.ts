/** The formatter's layout as edits of the lines that change. */

import { diffArrays } from 'diff';
import type { TextEdit } from 'vscode-languageserver';
import { format } from '../language/format/format-text.js';
import type { TextRange } from '../language/source.js';
import type { Analysis } from './workspace.js';

/** `within`: only edits that touch it. */
export function formatEdits(
  { text, name, episode, compiled }: Analysis,
  within: TextRange | null = null,
): TextEdit[] {
  if (!compiled) return [];
  const { fps, on } = episode.settings;
  const formatted = format(name, text.text, { fps, on }).text;
  const before = linesOf(text.text);
  const after = linesOf(formatted);
  const edits: TextEdit[] = [];
  let at = 0;
  let line = 0;
  let pending: { start: number; end: number; text: string } | null = null;
  const flush = (): void => {
    if (pending && (!within || (pending.start <= within.end && pending.end >= within.start)))
      edits.push(
        text.textEdit({ span: { file: name, start: pending.start, end: pending.end }, text: pending.text }),
      );
    pending = null;
  };
  const skip = (count: number): void => {
    for (const end = line + count; line < end; line++) at += before[line]!.length;
  };
  for (const { value, count, added, removed } of diffArrays(before, after, { comparator: sameLine })) {
    if (!added && !removed) {
      flush();
      skip(count);
      continue;
    }
    pending ??= { start: at, end: at, text: '' };
    if (added) pending.text += value.join('');
    else {
      skip(count);
      pending.end = at;
    }
  }
  flush();
  return edits;
}

/** CR LF counts as LF: an edit is given the line ends of the text. */
function sameLine(one: string, other: string): boolean {
  return one.replace(/\r\n?$/, '\n') === other.replace(/\r\n?$/, '\n');
}

/** Lines with their ends. */
function linesOf(text: string): string[] {
  return text.match(/[^\r\n]*(?:\r\n|\n|\r)|[^\r\n]+$/g) ?? [];
}
