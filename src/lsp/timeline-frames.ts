/** Timelines of the text beside what the solver makes of them, and inlay hints: the running frame at the end of every line. */

import { type InlayHint, InlayHintKind } from 'vscode-languageserver';
import type { TextRange } from '../language/source.js';
import type { StatementOf } from '../language/tree.js';
import type { Level, Shot } from '../shot/shot.js';
import { secondsAndFrames } from '../shot/time-notation.js';
import { lay, type PlacedItem } from '../solve/item-placement.js';
import type { SolvedLevel } from '../solve/solved-shot.js';
import type { Analysis } from './workspace.js';

/** Those of lines that touch the stretch. A line that ends inside a group has none: a group is counted at its end. */
export function hintsIn(analysis: Analysis, within: TextRange): InlayHint[] {
  const { compiled, text } = analysis;
  const hints: InlayHint[] = [];
  for (const statement of compiled?.tree?.statements ?? []) {
    if (statement.kind !== 'timeline') continue;
    if (statement.span.end < within.start || statement.span.start > within.end) continue;
    const timeline = solvedTimeline(analysis, statement);
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
function lastOf(text: string, { start, end }: TextRange, statement: number): number {
  const typed = text.slice(start, Math.min(end, Math.max(start, statement)));
  const comment = typed.search(/[#＃]/);
  return start + (comment < 0 ? typed : typed.slice(0, comment)).trimEnd().length;
}

// ---- the timeline beside what the solver makes of it

export interface SolvedTimeline {
  readonly shot: Shot;
  readonly level: Level;
  readonly solved: SolvedLevel | null;
  readonly placed: readonly PlacedItem[];
  /** The last frame that the timeline says something for; 0 for none. */
  readonly filled: number;
}

/** Null where the timeline is not the one that its level has, or could not be bound whole. */
export function solvedTimeline(
  { compiled }: Pick<Analysis, 'compiled'>,
  statement: StatementOf<'timeline'>,
): SolvedTimeline | null {
  const shot = compiled?.shot;
  const level = shot?.levels.find(({ name }) => name === statement.level.text);
  const timeline = level?.timeline;
  if (!shot || !level || !timeline?.whole) return null;
  if (timeline.span.start !== statement.span.start || timeline.span.file !== statement.span.file) return null;
  const placed = lay(level, timeline, shot, () => {});
  const last = placed.at(-1);
  const solved = compiled.solved?.levels.find(({ name }) => name === level.name) ?? null;
  return { shot, level, solved, placed, filled: last ? last.start + last.frames - 1 : 0 };
}
