/**
 * The cuts of an episode laid end to end, as the cutting room takes them over. Everything in whole frames from 0: `source` on a
 * cut's own sheet, `record` in the running time. Pure.
 */

import { placeCuts, type Timed } from '../count/count-episode.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { handleOf } from '../shot/camera/bind-light.js';
import type { Light } from '../shot/camera/camera-model.js';
import type { Shot } from '../shot/shot.js';
import type { SolvedShot } from '../solve/solved-shot.js';

/** A cross-dissolve around a cut point: how much of it lies before the point, and how much after it. */
export interface Dissolve {
  readonly length: number;
  readonly before: number;
  readonly after: number;
}

/** What is handed over of a cut; not its frames, of which an episode has too many to keep. */
export type Handed = Pick<SolvedShot, 'shot' | 'counts'>;

export interface EditCut {
  readonly solved: Handed;
  /** Number and title: `24 Empty causeway, evening`. */
  readonly name: string;
  /** The rows of the sheet between its two cut points; the rows outside of them are handles. */
  readonly source: { readonly from: number; readonly frames: number };
  /** Its cut point in the running time. */
  readonly record: number;
  /** With the cut before, around that point. */
  readonly dissolve: Dissolve | null;
}

export interface EpisodeEdit {
  /** Work and episode. */
  readonly title: string;
  readonly fps: number;
  readonly cuts: readonly EditCut[];
  /** The running time: where dissolves are counted in full by both cuts, they are taken off once. */
  readonly frames: number;
}

/** `name`: what it is called where the episode has no title. Null where the cuts do not go into one edit; the diagnostics, all errors, say why. There is at least one cut. */
export function editOf(
  cuts: readonly Handed[],
  name = '',
): {
  edit: EpisodeEdit | null;
  diagnostics: readonly Diagnostic[];
} {
  const shots = cuts.map(({ shot }) => shot);
  const faults = [...otherSpeeds(shots), ...unevenDissolves(shots)];
  if (faults.length > 0) return { edit: null, diagnostics: faults };
  const { title, episode, overlap } = shots[0]!.settings;
  const placed = placeCuts(shots.map(timed), overlap, shots[0]!.fps);
  const laid = cuts.map(
    (solved, i): EditCut => ({
      solved,
      name: nameOf(solved.shot),
      source: { from: placed[i]!.before, frames: placed[i]!.frames },
      record: placed[i]!.start,
      dissolve: dissolveBetween(shots[i - 1], solved.shot),
    }),
  );
  const crowded = laid.flatMap((cut, i) => crowding(cut, laid[i + 1]));
  if (crowded.length > 0) return { edit: null, diagnostics: crowded };
  return {
    edit: {
      title: [title, episode].filter(Boolean).join(' ') || name,
      fps: shots[0]!.fps,
      cuts: laid,
      frames: placed.reduce((sum, { frames }) => sum + frames, 0),
    },
    diagnostics: [],
  };
}

/** A cut as people name it. */
function nameOf({ cut, title }: Shot): string {
  return [cut, title.replace(/\s+/gu, ' ').trim()].filter(Boolean).join(' ');
}

type Overlap = Extract<Light, { kind: 'overlap' }>;

function overlapOf({ camera }: Shot, way: 'in' | 'out'): Overlap | null {
  const found = camera.light.find((one) => one.kind === 'overlap' && one.way === way);
  return found?.kind === 'overlap' ? found : null;
}

function timed(shot: Shot): Timed {
  const length = (way: 'in' | 'out'): number => overlapOf(shot, way)?.length ?? 0;
  const { fps, time, handles } = shot;
  return { counted: { fps, time, handles, overlap: { in: length('in'), out: length('out') } } };
}

/** Under both rules the cut point lies in the middle of a dissolve; the odd frame of an odd length is before it. */
function dissolveBetween(before: Shot | undefined, after: Shot): Dissolve | null {
  const out = before && overlapOf(before, 'out');
  if (!out || !overlapOf(after, 'in')) return null;
  const { length } = out;
  return { length, before: handleOf('in', length, 'half'), after: handleOf('out', length, 'half') };
}

function otherSpeeds(shots: readonly Shot[]): Diagnostic[] {
  const [first] = shots;
  return shots
    .filter(({ fps }) => fps !== first!.fps)
    .map(({ cut, fps, spans }) =>
      diagnose(
        'edit-speeds',
        spans.cut,
        { cut, fps, first: first!.cut, firstFps: first!.fps },
        { notes: [{ note: 'cut-here', cut: first!.cut, span: first!.spans.cut }] },
      ),
    );
}

/** Neighbours of which only one dissolves, or each over another length. */
function unevenDissolves(shots: readonly Shot[]): Diagnostic[] {
  return shots.slice(1).flatMap((after, i) => {
    const before = shots[i]!;
    const [out, into] = [overlapOf(before, 'out'), overlapOf(after, 'in')];
    if (out?.length === into?.length) return [];
    const at = into ?? out!;
    const other = into ? before.spans.cut : after.spans.cut;
    return [
      diagnose(
        'edit-overlap',
        at.span,
        {
          variant: 'uneven',
          before: before.cut,
          out: out?.length ?? null,
          after: after.cut,
          into: into?.length ?? null,
        },
        { notes: [{ note: 'neighbour-here', span: into && out ? out.span : other }] },
      ),
    ];
  });
}

/** Two dissolves of one cut may meet, but not run at the same time. */
function crowding({ solved, source, dissolve }: EditCut, next: EditCut | undefined): Diagnostic[] {
  const over = (dissolve?.after ?? 0) + (next?.dissolve?.before ?? 0) - source.frames;
  if (over <= 0) return [];
  const { shot } = solved;
  const span = overlapOf(shot, 'out')?.span ?? shot.spans.time;
  return [diagnose('edit-overlap', span, { variant: 'crowded', cut: shot.cut, over })];
}
