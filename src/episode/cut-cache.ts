/** What was read, bound and solved of a cut before, for an editor that compiles it again at every keystroke. */

import type { Diagnostic, Span } from '../language/diagnostic.js';
import { movedSpans, ReadingCache } from '../language/parse.js';
import { withoutMark } from '../language/source.js';
import type { Statement, Tree } from '../language/tree.js';
import type { Binding, RecallTimeline } from '../shot/binding.js';
import type { Level, Shot, ShotItem } from '../shot/shot.js';
import type { AskedOutside, BoundTimeline } from '../shot/timeline-items.js';
import type { Recall } from '../solve/solve-shot.js';
import type { SolvedLevel } from '../solve/solved-shot.js';

/** A timeline with nothing to be said of it. */
interface Bound {
  readonly span: Span;
  readonly timeline: BoundTimeline & { readonly asked: AskedOutside };
}

interface Solved {
  readonly span: Span;
  readonly level: SolvedLevel;
  readonly diagnostics: readonly Diagnostic[];
}

/** What is kept of one text, all of it found in the same context. */
interface Kept {
  readonly context: string;
  readonly timelines: Map<string, Bound>;
  readonly levels: Map<string, Solved>;
}

/** Statements that may change what a level shows, beside its own timeline. */
const MATTERS = new Set<Statement['kind']>(['phrase', 'mark', 'use']);

/** The texts of a cut, read. */
interface ReadTexts {
  readonly main: Tree;
  readonly used: readonly Tree[];
  readonly sources: ReadonlyMap<string, string>;
}

/** Of one cut. */
export class CutCache {
  readonly readings = new ReadingCache();
  private kept = keepNothing('');

  /**
   * Binds a timeline and solves a level only where the timeline, or anything else that it hangs on, has changed. Levels with numbers
   * of their own on paper, or of another cut, and mouths hang on more and are always solved. What is kept stands where it stood
   * when it was made; what is given stands where it stands now.
   */
  recall(texts: ReadTexts): { readonly timeline: RecallTimeline; readonly level: (shot: Shot) => Recall } {
    const { main } = texts;
    const text = withoutMark(texts.sources.get(main.file) ?? '');
    const typed = ({ start, end }: Span): string => text.slice(start, end);
    let known: Kept | null = null;
    let fresh: Kept | null = null;
    const open = (world: World): { known: Kept; fresh: Kept } => {
      if (known && fresh) return { known, fresh };
      const context = contextOf(world, texts, typed);
      known = context === this.kept.context ? this.kept : keepNothing(context);
      fresh = keepNothing(context);
      this.kept = fresh;
      return { known, fresh };
    };
    return {
      timeline: (statement, binding) => {
        const { span } = statement;
        const { known, fresh } = open(worldOf(binding));
        const id = typed(span);
        const before = known.timelines.get(id);
        if (before) {
          fresh.timelines.set(id, before);
          binding.phrases.again(before.timeline.asked);
          return movedTimeline(before, span);
        }
        const timeline = binding.phrases.timeline(statement.items, binding.draft.on);
        const { asked } = timeline;
        if (asked) fresh.timelines.set(id, { span, timeline: { ...timeline, asked } });
        return timeline;
      },
      level: (shot) => (level, solve, report) => {
        const { known, fresh } = open(shot);
        const id = idOf(level, main, typed);
        const before = id === null ? undefined : known.levels.get(id);
        if (before) {
          fresh.levels.set(id!, before);
          const solved = movedLevel(before, level.timeline!.span);
          for (const diagnostic of solved.diagnostics) report(diagnostic);
          return solved.level;
        }
        const diagnostics: Diagnostic[] = [];
        const solved = solve((diagnostic) => {
          diagnostics.push(diagnostic);
          report(diagnostic);
        });
        if (id !== null) fresh.levels.set(id, { span: level.timeline!.span, level: solved, diagnostics });
        return solved;
      },
    };
  }
}

function keepNothing(context: string): Kept {
  return { context, timelines: new Map(), levels: new Map() };
}

function movedTimeline({ span, timeline }: Bound, to: Span): BoundTimeline {
  if (to.start === span.start) return timeline;
  let items: readonly ShotItem[] | null = null;
  return {
    ...timeline,
    get items() {
      items ??= movedItems(timeline.items, to.start - span.start);
      return items;
    },
  };
}

/** Items of phrases stand where they stood: phrases have not moved, and their items are shared by all that play them. */
function movedItems(items: readonly ShotItem[], by: number): readonly ShotItem[] {
  return items.map((item) => {
    if (item.kind !== 'group') return movedSpans(item, by);
    const inner = item.phrase === null ? movedItems(item.items, by) : item.items;
    return { ...movedSpans({ ...item, items: [] }, by), items: inner };
  });
}

function movedLevel(before: Solved, to: Span): Pick<Solved, 'level' | 'diagnostics'> {
  const { span, level, diagnostics } = before;
  const by = to.start - span.start;
  if (by === 0) return before;
  const own = ({ file, start, end }: Span): boolean =>
    file === span.file && start >= span.start && end <= span.end;
  let passages: SolvedLevel['passages'] | null = null;
  return {
    level: {
      ...level,
      get passages() {
        passages ??= movedSpans(level.passages, by, own);
        return passages;
      },
    },
    diagnostics: movedSpans(diagnostics, by, own),
  };
}

function idOf(
  { name, timeline, mouth, pinned, reuse, span }: Level,
  main: Tree,
  typed: (span: Span) => string,
): string | null {
  if (!timeline || mouth || pinned || reuse || timeline.span.file !== main.file || span.file !== main.file)
    return null;
  // Named first in its timeline, it moves with it; anywhere else it is part of what the solution tells.
  const first = span.start === timeline.span.start ? '' : span.start;
  return `${name}\n${first}\n${timeline.whole}\n${typed(timeline.span)}`;
}

/** What holds for all levels of a cut. */
type World = Pick<Shot, 'settings' | 'fps' | 'on' | 'numbering' | 'handles'> & {
  /** Null while it is not known. */
  readonly time: number | null;
  readonly length: number | null;
};

function worldOf({ settings, rows, draft }: Binding): World {
  const { fps, on, numbering, handles, time } = draft;
  return { settings, fps, on, numbering, handles, time: time?.frames ?? null, length: rows };
}

/** Everything that all levels hang on, as one text. What a phrase shows is told at its place, so that counts too. */
function contextOf(
  { settings, fps, on, numbering, time, length, handles }: World,
  { main: { statements, broken }, used, sources }: ReadTexts,
  typed: (span: Span) => string,
): string {
  const own = statements
    .filter(({ kind }) => MATTERS.has(kind))
    .map(({ kind, span }) => `${kind === 'phrase' ? span.start : ''} ${typed(span)}`);
  const others = used.map(({ file }) => `${file}\n${sources.get(file)}`);
  const lost = broken.map(({ word, name }) => `${word} ${name}`);
  return JSON.stringify([settings, fps, on, numbering, time, length, handles, own, others, lost]);
}
