/** Inlay hints: the running frame at the end of every line of a timeline. */

import { type InlayHint, InlayHintKind } from 'vscode-languageserver';
import { secondsAndFrames } from '../shot/time.js';
import type { Stretch } from './text.js';
import { laid } from './timeline.js';
import type { Analysis } from './workspace.js';

/** Those of lines that touch the stretch. A line that ends inside a group has none: a group is counted at its end. */
export function hintsIn(analysis: Analysis, within: Stretch): InlayHint[] {
  const { compiled, text } = analysis;
  const hints: InlayHint[] = [];
  for (const statement of compiled?.tree?.statements ?? []) {
    if (statement.kind !== 'timeline') continue;
    if (statement.span.end < within.start || statement.span.start > within.end) continue;
    const timeline = laid(analysis, statement);
    if (!timeline) continue;
    const { placed, shot } = timeline;
    const ends = new Map<number, { at: number; frame: number }>();
    const inside = new Set<number>();
    for (const { item, start, frames } of placed) {
      if (item.span.file !== analysis.name) continue;
      const first = text.lineAt(item.span.start);
      const last = text.lineAt(item.span.end);
      for (let line = first; line < last; line++) inside.add(line);
      ends.set(last, { at: item.span.end, frame: start + frames - 1 });
    }
    for (const [line, { frame }] of ends) {
      if (inside.has(line)) continue;
      const at = lastOf(text.text, text.line(line), statement.span.end);
      if (at < within.start || at > within.end) continue;
      hints.push({
        position: text.position(at),
        label: `= ${frame} (${secondsAndFrames(frame, shot.fps)})`,
        kind: InlayHintKind.Type,
        paddingLeft: true,
      });
    }
  }
  return hints;
}

/** Where the items of a line end, before blanks and a comment. */
function lastOf(text: string, { start, end }: Stretch, statement: number): number {
  const typed = text.slice(start, Math.min(end, Math.max(start, statement)));
  const comment = typed.search(/[#＃]/);
  return start + (comment < 0 ? typed : typed.slice(0, comment)).trimEnd().length;
}
