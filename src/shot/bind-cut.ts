/** Tree → `Shot`: names are bound, units resolved, whatever the order of the statements. */

import { type Diagnostic, diagnose, reportOnce, type Span } from '../language/diagnostic.js';
import { makeGuess } from '../language/suggest.js';
import type { Statement, StatementOf, Tree } from '../language/tree.js';
import type { CameraStatement } from '../language/tree-camera.js';
import type { Dictionary } from '../sound/pronunciation.js';
import {
  type Binder,
  type Binders,
  type Binding,
  type Draft,
  type LevelDraft,
  type Once,
  type RecallTimeline,
  startDraft,
} from './binding.js';
import { fieldBinders, finishCamera } from './camera/bind-fields.js';
import { lightBinders } from './camera/bind-light.js';
import { moveBinders } from './camera/bind-moves.js';
import type { CameraNode } from './camera/camera-model.js';
import { mouthSounds } from './mouth/mouth-sounds.js';
import type { Settings } from './settings.js';
import type { Level, Shot, Spoken } from './shot.js';
import { levelBinders, timelineBinders } from './statements/bind-levels.js';
import { mouthBinders } from './statements/bind-mouth.js';
import { sheetBinders, wordBinders } from './statements/bind-sheet.js';
import { trackBinders } from './statements/bind-track.js';
import { checkLines } from './statements/check-lines.js';
import { makeClock } from './time-resolver.js';
import { makePhrases } from './timeline-items.js';

export interface Bound {
  /** Null where the cut's time cannot be had; a missing number stands as ''. */
  readonly shot: Shot | null;
  readonly diagnostics: Diagnostic[];
}

/**
 * `used`: the trees of all files that the text uses, by whatever way, already found and read. They give phrases and levels; where the
 * cut defines the same name itself, its own stands. `unread`: some used file could not be had, which has been reported, so
 * that unknown phrases are not reported again. `dictionary`: how English words are pronounced; without it, by their spelling. `recall`: asked instead of binding a timeline.
 */
export function bind(
  main: Tree,
  used: readonly Tree[],
  settings: Settings,
  {
    unread = false,
    dictionary,
    recall = afresh,
  }: { unread?: boolean; dictionary?: Dictionary; recall?: RecallTimeline } = {},
): Bound {
  const diagnostics: Diagnostic[] = [];
  const report = reportOnce(diagnostics);

  const files = [...new Map(used.map((tree) => [tree.file, tree])).values()].filter(
    (tree) => tree.file !== main.file,
  );
  const draft = startDraft(settings);
  const broken = new Set<string>();
  for (const tree of [main, ...files]) for (const each of tree.broken) if (each.name) broken.add(each.name);

  const first = new Map<string, { readonly span: Span; readonly own: boolean }>();
  /** False where it has been said before. A used file's definition that the cut overrules is no fault. */
  const isFirst = (once: Once | undefined, span: Span, own: boolean): boolean => {
    if (!once) return true;
    const id = onceId(once);
    const before = first.get(id);
    if (!before) {
      first.set(id, { span, own });
      return true;
    }
    if (before.own === own) {
      report(
        diagnose(once.code, span, once.parameters, { notes: [{ note: 'first-here', span: before.span }] }),
      );
    }
    return false;
  };

  const own = main.statements.filter((statement) =>
    isFirst(binderOf(statement).once?.(statement), statement.span, true),
  );
  for (const statement of own) binderOf(statement).declare?.(statement, draft, report);
  for (const tree of files) {
    for (const statement of tree.statements) {
      const { share, once } = binderOf(statement);
      if (share && isFirst(once?.(statement), statement.span, false)) share(statement, draft);
    }
  }

  const rows = () => draft.time && draft.time.frames + draft.handles.head + draft.handles.tail;
  const guess = makeGuess();
  const clock = makeClock({ fps: draft.fps, marks: draft.marks, broken, rows, guess, report });
  for (const statement of own) binderOf(statement).settle?.(statement, draft, clock, report);

  const phrases = makePhrases({ phrases: draft.phrases, broken, unread, clock, guess, report });
  const pronounce = mouthSounds(dictionary);
  const binding: Binding = {
    settings,
    draft,
    clock,
    phrases,
    recall,
    rows: rows(),
    broken,
    unread: new Set(main.broken.map(({ word }) => word)),
    guess,
    pronounce,
    report,
  };
  // Marks and phrases come last: by then it is known which ones are used; and mouths, when all lines are bound.
  const late = ({ kind }: Statement) => kind === 'mark' || kind === 'phrase' || kind === 'mouth';
  for (const statement of own) if (!late(statement)) binderOf(statement).bind?.(statement, binding);
  const asked = new Set(clock.asked);
  checkLines(
    own.flatMap((one) => (one.kind === 'voice' ? [one] : [])),
    binding,
    dictionary,
  );
  for (const statement of own) if (late(statement)) binderOf(statement).bind?.(statement, binding);
  unusedMarks(draft, asked, report);
  unusedPhrases(own, phrases.played, report);

  missing(main, draft, report);
  return { shot: finish(draft, settings, main), diagnostics };
}

const afresh: RecallTimeline = ({ items }, { phrases, draft }) => phrases.timeline(items, draft.on);

function onceId({ code, parameters }: Once): string {
  const of = 'of' in parameters ? parameters.of : parameters.statement;
  return parameters.name === null ? `${code} ${of}` : `${code} ${of} ${parameters.name}`;
}

/** A phrase that only unused phrases play is part of them: one hint for each chain is enough. */
function unusedPhrases(
  own: readonly Statement[],
  played: ReadonlySet<string>,
  report: (diagnostic: Diagnostic) => void,
): void {
  for (const statement of own) {
    if (statement.kind !== 'phrase' || played.has(statement.name.text)) continue;
    report(diagnose('phrase-unused', statement.name.span, { phrase: statement.name.text }));
  }
}

/** A mark that only other unused marks hang on is unused as well, but one hint for each chain is enough. */
function unusedMarks(
  draft: Draft,
  asked: ReadonlySet<string>,
  report: (diagnostic: Diagnostic) => void,
): void {
  const hangs = new Set<string>();
  for (const { position } of draft.marks.values()) if (position.form === 'mark') hangs.add(position.name);
  for (const { name } of draft.marks.values()) {
    if (asked.has(name.text) || hangs.has(name.text)) continue;
    report(diagnose('mark-unused', name.span, { mark: name.text }));
  }
}

function missing(main: Tree, draft: Draft, report: (diagnostic: Diagnostic) => void): void {
  const begun = (kind: string) =>
    main.broken.some((each) => each.word === kind) || main.statements.some((each) => each.kind === kind);
  const start: Span = { file: main.file, start: 0, end: 0 };
  if (!draft.cut && !begun('cut')) {
    report(diagnose('cut-missing', start, {}));
  }
  if (!draft.time && !begun('time')) {
    report(diagnose('time-missing', draft.cut?.span ?? start, {}));
  }
}

function finish(draft: Draft, settings: Settings, main: Tree): Shot | null {
  if (!draft.time) return null;
  const { frames, span } = draft.time;
  const { cut, handles } = draft;
  const levels = stacked(draft);
  const flashing = levels.flatMap(({ name }) => (statedOf(draft, name)?.flash ? [name] : []));
  const whole = cut?.span ?? { file: main.file, start: 0, end: 0 };
  return {
    cut: cut?.number ?? '',
    title: cut?.title ?? '',
    settings,
    fps: draft.fps,
    on: draft.on,
    numbering: draft.numbering,
    time: frames,
    length: frames + handles.head + handles.tail,
    handles,
    scene: draft.scene,
    take: draft.take,
    artists: [...draft.artists].sort(byCodePoint),
    memos: draft.memos,
    lineUps: draft.lineUps,
    notes: [...draft.notes].sort((a, b) => a.frame - b.frame || byCodePoint(a.text, b.text)),
    spoken: [...draft.spoken].sort(bySpoken),
    track: draft.track,
    levels,
    camera: finishCamera(draft.camera, flashing, settings, whole),
    spans: { cut: whole, time: span },
  };
}

function byCodePoint(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** By first row; ties by what is said, so that the order of writing does not matter. */
function bySpoken(a: Spoken, b: Spoken): number {
  const words = ({ kind, speaker, manner, parts }: Spoken) =>
    JSON.stringify([kind, speaker, manner, parts.map((part) => [part.text, part.frame])]);
  return a.frames.from - b.frames.from || a.frames.to - b.frames.to || byCodePoint(words(a), words(b));
}

/** The given stack, or `BG` and then the levels in the order of writing; levels outside a given stack (an error) on top. */
function stacked(draft: Draft): Level[] {
  const levels = new Map<string, LevelDraft>();
  for (const word of draft.stack?.levels ?? []) levels.set(word.text, draft.levels.get(word.text)!);
  if (!draft.stack) {
    const span = draft.cut?.span ?? draft.time!.span;
    levels.set(
      'BG',
      draft.levels.get('BG') ?? {
        name: 'BG',
        span,
        title: '',
        timeline: null,
        mouth: null,
        pinned: null,
        stated: null,
      },
    );
  }
  for (const level of draft.levels.values()) levels.set(level.name, level);
  const stated = new Map([...levels.keys()].map((name) => [name, statedOf(draft, name)]));
  const pairs = drawnTogether(stated);
  return [...levels.values()].map((level) => ({
    ...finishLevel(level, stated.get(level.name) ?? null),
    drawnWith: [...(pairs.get(level.name) ?? [])],
  }));
}

/** The cut's own `level` statement, or that of a used file. */
function statedOf(draft: Draft, name: string): StatementOf<'level'> | null {
  return draft.levels.get(name)?.stated ?? draft.shared.get(name) ?? null;
}

/** The levels that each is drawn to: those that it names, and those that name it. */
function drawnTogether(stated: ReadonlyMap<string, StatementOf<'level'> | null>): Map<string, Set<string>> {
  const pairs = new Map<string, Set<string>>();
  const put = (one: string, other: string): void =>
    void pairs.set(one, (pairs.get(one) ?? new Set()).add(other));
  for (const [name, statement] of stated) {
    for (const { text: other } of statement?.with ?? []) {
      if (other === name || !stated.has(other)) continue;
      put(name, other);
      put(other, name);
    }
  }
  return pairs;
}

function finishLevel(level: LevelDraft, stated: StatementOf<'level'> | null): Omit<Level, 'drawnWith'> {
  const size = stated?.size;
  return {
    name: level.name,
    title: level.title,
    span: level.span,
    timeline: level.timeline,
    mouth: level.mouth,
    pinned: level.pinned,
    reuse: stated?.reuse ?? null,
    sizeMm:
      size && size.widthMm > 0 && size.heightMm > 0
        ? { widthMm: size.widthMm, heightMm: size.heightMm, span: size.span }
        : null,
    homeMm: { xMm: stated?.at?.xMm ?? 0, yMm: stated?.at?.yMm ?? 0 },
    free: (stated?.free ?? null) !== null,
    carry: (stated?.carry ?? null) !== null,
    picture: stated?.picture ?? null,
    masks: [...new Set(stated?.masks?.map(({ text }) => text))].filter((other) => other !== level.name),
  };
}

// ---- the binders of the camera's statements: one entry for each kind

const cameraBinders: { readonly [K in CameraStatement['kind']]: Binder<CameraNode<K>> } = {
  ...fieldBinders,
  ...moveBinders,
  ...lightBinders,
};

// ---- the table of binders: one entry for each kind of statement

const binders: Binders = {
  ...sheetBinders,
  ...levelBinders,
  ...timelineBinders,
  ...wordBinders,
  ...mouthBinders,
  ...trackBinders,
  ...cameraBinders,
};

/** The binder of a statement, with its own type forgotten: the table holds the right one for each kind. */
function binderOf(statement: Statement): Binder<Statement> {
  return binders[statement.kind] as Binder<Statement>;
}
