/** What binding a cut works on: the draft that fills up, and the table's form of a statement. */

import type { Message } from '../language/catalogue/index.js';
import type { Report, Span } from '../language/diagnostic.js';
import type { Guess } from '../language/suggest.js';
import type { Statement, StatementOf, Word } from '../language/tree.js';
import { type CameraDraft, startCamera } from './camera/camera-model.js';
import type { Pronounce } from './mouth/line-sounds.js';
import type { Settings } from './settings.js';
import type { Level, LineUp, Mouth, RowNote, Spoken, Timeline, Track } from './shot.js';
import type { Clock } from './time-resolver.js';
import type { BoundTimeline, Phrases } from './timeline-items.js';

/** A level while it is put together. */
export interface LevelDraft {
  readonly name: string;
  readonly span: Span;
  title: string;
  timeline: Timeline | null;
  mouth: Mouth | null;
  pinned: Level['pinned'];
  /** The cut's own `level` statement, or else that of a used file. */
  stated: StatementOf<'level'> | null;
}

export interface Draft {
  cut: { readonly number: string; readonly title: string; readonly span: Span } | null;
  time: { readonly frames: number; readonly span: Span } | null;
  readonly handles: { head: number; tail: number };
  /** Whose time a dissolve belongs to. */
  readonly overlap: Settings['overlap'];
  /** Lengths of the dissolves, frames. */
  readonly overlaps: { in: number | null; out: number | null };
  fps: number;
  on: number;
  numbering: 'sequence' | 'frame';
  scene: string;
  take: string;
  readonly artists: string[];
  readonly memos: { readonly text: string; readonly span: Span }[];
  readonly lineUps: LineUp[];
  readonly notes: RowNote[];
  readonly spoken: Spoken[];
  track: Track | null;
  stack: StatementOf<'stack'> | null;
  /** In the order in which they are first named. */
  readonly levels: Map<string, LevelDraft>;
  readonly phrases: Map<string, StatementOf<'phrase'>>;
  readonly marks: Map<string, StatementOf<'mark'>>;
  readonly camera: CameraDraft;
  /** `level` statements of used files, by name. */
  readonly shared: Map<string, StatementOf<'level'>>;
}

export function startDraft(settings: Settings): Draft {
  return {
    cut: null,
    time: null,
    handles: { head: 0, tail: 0 },
    overlap: settings.overlap,
    overlaps: { in: null, out: null },
    fps: settings.fps,
    on: settings.on,
    numbering: settings.numbering,
    scene: '',
    take: '',
    artists: [],
    memos: [],
    lineUps: [],
    notes: [],
    spoken: [],
    track: null,
    stack: null,
    levels: new Map(),
    phrases: new Map(),
    marks: new Map(),
    camera: startCamera(),
    shared: new Map(),
  };
}

/** The draft's level of that name, made where it is first named. */
export function levelOf(draft: Draft, word: Word): LevelDraft {
  let level = draft.levels.get(word.text);
  if (!level) {
    level = {
      name: word.text,
      span: word.span,
      title: '',
      timeline: null,
      mouth: null,
      pinned: null,
      stated: null,
    };
    draft.levels.set(word.text, level);
  }
  return level;
}

export interface Binding {
  readonly settings: Settings;
  readonly draft: Draft;
  readonly clock: Clock;
  readonly phrases: Phrases;
  readonly recall: RecallTimeline;
  /** Rows of the sheet, or null where the time is not known. */
  readonly rows: number | null;
  /** Names that unreadable statements began: no other message speaks of them. */
  readonly broken: ReadonlySet<string>;
  /** First words of statements of the cut that could not be read. */
  readonly unread: ReadonlySet<string>;
  readonly guess: Guess;
  /** How words are read, for mouths. */
  readonly pronounce: Pronounce;
  readonly report: Report;
}

/** Gives a timeline that was bound before, where all that it hangs on is as it was; or binds it. */
export type RecallTimeline = (statement: StatementOf<'timeline'>, binding: Binding) => BoundTimeline;

/** What may be said only once: the message where it is said again. */
export type Once = Extract<Message, { readonly code: 'statement-twice' | 'name-twice' }>;

/**
 * How one kind of statement is bound, in three rounds over the whole text, since statements may stand in any order.
 * `declare` takes names and settings that nothing else is needed for; `settle` what needs units (the cut's time); `bind` the rest.
 */
export interface Binder<S> {
  readonly once?: (statement: S) => Once;
  readonly declare?: (statement: S, draft: Draft, report: Report) => void;
  /** Takes it from a used file; without it such a statement is not shared. */
  readonly share?: (statement: S, draft: Draft) => void;
  readonly settle?: (statement: S, draft: Draft, clock: Clock, report: Report) => void;
  readonly bind?: (statement: S, binding: Binding) => void;
}

export type Binders = { readonly [K in Statement['kind']]: Binder<Statement & { readonly kind: K }> };
