/** Dissolves from cut to cut: both cuts must name the same length. */

import { type Diagnostic, diagnose, type Fix, type Note, type Span } from '../language/diagnostic.js';
import type { StatementOf, Tree } from '../language/tree.js';
import { bind } from '../shot/bind-cut.js';
import type { Settings } from '../shot/settings.js';
import type { Shot } from '../shot/shot.js';
import type { StoryCut } from './story.js';
import { mentions } from './used-files.js';

export type OverlapWay = 'in' | 'out';

/** One end of a cut, as its text has it. */
export type End =
  | { readonly kind: 'none' }
  /** A dissolve whose length cannot be had: errors of the text stand in the way. */
  | { readonly kind: 'unknown' }
  | {
      readonly kind: 'overlap';
      readonly frames: number;
      readonly fps: number;
      /** The length as written, and its place. */
      readonly written: string;
      readonly span: Span;
    };

/** An end of a cut whose shot is known. `text`: what the tree was read from. */
export function cutEndOf(way: OverlapWay, tree: Tree, shot: Shot | null, text: string): End {
  const statement = tree.statements.find((one) => one.kind === 'overlap' && one.way === way) as
    | StatementOf<'overlap'>
    | undefined;
  if (!statement) {
    return { kind: tree.broken.some(({ word }) => word === 'overlap') ? 'unknown' : 'none' };
  }
  const light = shot?.camera.light.find((one) => one.kind === 'overlap' && one.way === way);
  if (light?.kind !== 'overlap') return { kind: 'unknown' };
  const { span } = statement.length;
  return {
    kind: 'overlap',
    frames: light.length,
    fps: shot!.fps,
    written: text.slice(span.start, span.end),
    span,
  };
}

/** An end of another cut of the story, read no further than that. */
export function storyEnd(way: OverlapWay, cut: StoryCut, settings: Settings): End {
  const { text } = cut;
  if (text === null) return { kind: 'unknown' };
  if (!mentions(text, 'overlap')) return { kind: 'none' };
  return cutEndOf(way, cut.tree, bind(cut.tree, [], settings).shot, text);
}

/** The cut that is checked. */
export interface OverlapCheck {
  readonly shot: Shot;
  readonly tree: Tree;
  readonly text: string;
}

export interface Joins {
  readonly diagnostics: readonly Diagnostic[];
  /** Texts of other cuts that the messages point into, by name. */
  readonly sources: ReadonlyMap<string, string>;
}

/**
 * Checks the dissolves of a cut against its neighbours. `around` is its place in the story. What is wrong in the neighbour's own
 * text is not told here.
 */
export function checkOverlaps(
  { shot, tree, text }: OverlapCheck,
  around: { readonly before: StoryCut | null; readonly after: StoryCut | null },
): Joins {
  const diagnostics: Diagnostic[] = [];
  const sources = new Map<string, string>();
  for (const way of ['in', 'out'] as const) {
    const own = cutEndOf(way, tree, shot, text);
    const other = way === 'in' ? around.before : around.after;
    if (own.kind === 'unknown' || (own.kind === 'none' && !other)) continue;
    const facing = other && storyEnd(opposite(way), other, shot.settings);
    const found = check({ way, own, other, facing }, { shot, tree, text });
    if (!found) continue;
    diagnostics.push(found);
    if (other && found.notes.some(({ span }) => span?.file === other.name))
      sources.set(other.name, other.text ?? '');
  }
  return { diagnostics, sources };
}

interface Meeting {
  readonly way: OverlapWay;
  readonly own: End;
  /** Null at an end of the story. */
  readonly other: StoryCut | null;
  readonly facing: End | null;
}

function check({ way, own, other, facing }: Meeting, checked: OverlapCheck): Diagnostic | null {
  const back = opposite(way);
  if (own.kind !== 'overlap') {
    if (facing?.kind !== 'overlap' || !other) return null;
    return diagnose(
      'overlap-missing',
      checked.shot.spans.cut,
      { cut: other.number, way, frames: facing.frames },
      {
        notes: [{ note: 'overlaps-here', cut: other.number, span: facing.span }],
        fix: addLine(`overlap ${way} ${lengthFor(facing, checked.shot.fps)}`, checked),
      },
    );
  }
  if (!other || !facing) {
    return diagnose('overlap-alone', statementSpan(checked.tree, way), { way });
  }
  const neighbour = { cut: other.number, file: other.name };
  if (facing.kind === 'unknown') {
    return diagnose('overlap-unchecked', own.span, {
      neighbour,
      why: other.text === null ? 'unreadable' : 'errors',
    });
  }
  if (facing.kind === 'none') {
    const start = other.tree.statements.find(({ kind }) => kind === 'cut')?.span;
    const note: Note = {
      note: 'neighbour-stands',
      neighbour,
      way,
      ...(start ? { span: start } : {}),
    };
    return diagnose(
      'overlap-unanswered',
      statementSpan(checked.tree, way),
      { neighbour, way: back, length: own.written },
      { notes: [note] },
    );
  }
  const notes: Note[] = [{ note: 'says-here', neighbour, span: facing.span }];
  if (facing.fps !== own.fps) {
    return diagnose('overlap-fps', own.span, { neighbour, there: facing.fps, here: own.fps }, { notes });
  }
  if (facing.frames === own.frames) return null;
  return diagnose(
    'overlap-differs',
    own.span,
    { neighbour, there: facing.frames, here: own.frames },
    {
      notes,
      fix: { action: 'write', written: facing.written, edits: [{ span: own.span, text: facing.written }] },
    },
  );
}

/** A neighbour's length as this cut may write it. */
function lengthFor({ frames, fps, written }: End & { kind: 'overlap' }, own: number): string {
  return fps === own ? written : `${frames}`;
}

/** A line of its own below the cut's time. */
function addLine(line: string, { shot, text }: OverlapCheck): Fix {
  const { end, file } = shot.spans.time;
  const stop = /\r\n|\n|\r/.exec(text.slice(end));
  const at = stop ? end + stop.index : text.length;
  const edit = { span: { file, start: at, end: at }, text: `${stop?.[0] ?? '\n'}${line}` };
  return { action: 'add-line', line, edits: [edit] };
}

function statementSpan(tree: Tree, way: OverlapWay): Span {
  return tree.statements.find((one) => one.kind === 'overlap' && one.way === way)!.span;
}

function opposite(way: OverlapWay): OverlapWay {
  return way === 'in' ? 'out' : 'in';
}
