/** What was read and solved of a cut before, for an editor that compiles it again at every keystroke. */

import type { Diagnostic, Span } from '../language/diagnostic.js';
import { movedSpans, ReadingCache } from '../language/parse.js';
import type { Statement, Tree } from '../language/tree.js';
import type { Level, Shot } from '../shot/shot.js';
import type { Recall } from '../solve/solve-shot.js';
import type { SolvedLevel } from '../solve/solved-shot.js';

interface Solved {
  readonly span: Span;
  readonly level: SolvedLevel;
  readonly diagnostics: readonly Diagnostic[];
}

/** Statements that may change what a level shows, beside its own timeline. */
const MATTERS = new Set<Statement['kind']>(['phrase', 'mark', 'use']);

/** Of one cut. */
export class CutCache {
  readonly readings = new ReadingCache();
  private context = '';
  private levels = new Map<string, Solved>();

  /**
   * Solves a level only where its timeline, or anything else that it hangs on, has changed. Levels with numbers of their own on
   * paper, or of another cut, and mouths hang on more and are always solved.
   */
  recall(shot: Shot, main: Tree, used: readonly Tree[], sources: ReadonlyMap<string, string>): Recall {
    const text = sources.get(main.file) ?? '';
    const context = contextOf(shot, main, used, sources, text);
    const known = context === this.context ? this.levels : new Map<string, Solved>();
    const fresh = new Map<string, Solved>();
    this.context = context;
    this.levels = fresh;
    return (level, solve, report) => {
      const id = idOf(level, main, text);
      const before = id === null ? undefined : known.get(id);
      if (before) {
        const { span } = level.timeline!;
        const by = span.start - before.span.start;
        const own = ({ file, start, end }: Span): boolean =>
          file === span.file && start >= before.span.start && end <= before.span.end;
        const solved: Solved =
          by === 0
            ? before
            : {
                span,
                level: { ...before.level, passages: movedSpans(before.level.passages, by, own) },
                diagnostics: movedSpans(before.diagnostics, by, own),
              };
        fresh.set(id!, solved);
        for (const diagnostic of solved.diagnostics) report(diagnostic);
        return solved.level;
      }
      const diagnostics: Diagnostic[] = [];
      const solved = solve((diagnostic) => {
        diagnostics.push(diagnostic);
        report(diagnostic);
      });
      if (id !== null) fresh.set(id, { span: level.timeline!.span, level: solved, diagnostics });
      return solved;
    };
  }
}

function idOf(
  { name, timeline, mouth, pinned, reuse, span }: Level,
  main: Tree,
  text: string,
): string | null {
  if (!timeline || mouth || pinned || reuse || timeline.span.file !== main.file || span.file !== main.file)
    return null;
  // Named first in its timeline, it moves with it; anywhere else it is part of what the solution tells.
  const first = span.start === timeline.span.start ? '' : span.start;
  return `${name}\n${first}\n${timeline.whole}\n${text.slice(timeline.span.start, timeline.span.end)}`;
}

/** Everything that all levels hang on, as one text. What a phrase shows is told at its place, so that counts too. */
function contextOf(
  { settings, fps, on, numbering, time, length, handles }: Shot,
  { statements, broken }: Tree,
  used: readonly Tree[],
  sources: ReadonlyMap<string, string>,
  text: string,
): string {
  const own = statements
    .filter(({ kind }) => MATTERS.has(kind))
    .map(({ kind, span }) => `${kind === 'phrase' ? span.start : ''} ${text.slice(span.start, span.end)}`);
  const others = used.map(({ file }) => `${file}\n${sources.get(file)}`);
  const lost = broken.map(({ word, name }) => `${word} ${name}`);
  return JSON.stringify([settings, fps, on, numbering, time, length, handles, own, others, lost]);
}
