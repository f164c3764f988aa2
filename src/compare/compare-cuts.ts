/**
 * Two solved versions of a cut → what differs, in the order in which a retake note tells it: the cut, its levels from the bottom to
 * the top and each by its rows, dialogue and notes, camera, light, memos. Pure; how the texts are written never matters.
 */

import type { SolvedShot } from '../solve/solved-shot.js';
import { align } from './align.js';
import { fieldChanges, lightChanges, moveChanges } from './camera-changes.js';
import type { Change, HeadChange } from './change.js';
import { compareLevels } from './level-changes.js';
import { noteChanges, speechChanges } from './speech-changes.js';

export type { Change } from './change.js';

export function compare(old: SolvedShot, now: SolvedShot): readonly Change[] {
  const levels = compareLevels(old, now);
  const fields = fieldChanges(old, now);
  return [
    ...headChanges(old, now),
    ...levels.changes,
    ...speechChanges(old, now),
    ...noteChanges(old, now),
    ...fields.changes,
    ...moveChanges(old, now, fields.names, levels.names),
    ...lightChanges(old, now, levels.names),
    ...memoChanges(old, now),
  ];
}

// ---- what stands in the header and the memo

const whole = (body: HeadChange): Change => ({ ...body, place: null, rows: null });

export function headChanges({ shot: old }: SolvedShot, { shot: now }: SolvedShot): Change[] {
  const changes: HeadChange[] = [];
  if (plain(old.cut) !== plain(now.cut)) changes.push({ kind: 'cut', old: old.cut, now: now.cut });
  if (old.time !== now.time) changes.push({ kind: 'time', old: old.time, now: now.time });
  // An overlap that comes, goes or lasts otherwise is said with the light, and brings its handles.
  const overlaps = ({ camera }: SolvedShot['shot']) =>
    camera.light
      .flatMap((light) => (light.kind === 'overlap' ? [`${light.way} ${light.length}`] : []))
      .join();
  const handles = old.handles.head !== now.handles.head || old.handles.tail !== now.handles.tail;
  if (handles && overlaps(old) === overlaps(now))
    changes.push({ kind: 'handles', old: ends(old.handles), now: ends(now.handles) });
  if (old.fps !== now.fps) changes.push({ kind: 'fps', old: old.fps, now: now.fps });
  const [was, is] = [old.settings.field, now.settings.field];
  if (was.widthMm !== is.widthMm || was.heightMm !== is.heightMm)
    changes.push({ kind: 'standard-field', old: was, now: is });
  for (const kind of ['title', 'scene', 'take'] as const)
    if (old[kind] !== now[kind]) changes.push({ kind, old: old[kind], now: now[kind] });
  if (old.artists.join('\n') !== now.artists.join('\n'))
    changes.push({ kind: 'artist', old: old.artists, now: now.artists });
  const [before, after] = [old, now].map(({ lineUps }) =>
    lineUps.map(({ cut, text }) => `${plain(cut)} ${text}`.trim()),
  ) as [string[], string[]];
  if (before.join('\n') !== after.join('\n')) changes.push({ kind: 'line-up', old: before, now: after });
  return changes.map(whole);
}

/** Full-width forms and leading zeros make no other number. */
const plain = (cut: string) =>
  cut
    .normalize('NFKC')
    .replace(/^0+(?=\d)/, '')
    .toUpperCase();

const ends = ({ head, tail }: { head: number; tail: number }) => ({ head, tail });

/** Memos have no place but their order: what stands in another's place is that one, reworded. */
export function memoChanges({ shot: old }: SolvedShot, { shot: now }: SolvedShot): Change[] {
  const [before, after] = [old, now].map(({ memos }) =>
    memos.map(({ text }) => ({ symbol: text, frames: 1 })),
  ) as [{ symbol: string; frames: number }[], { symbol: string; frames: number }[]];
  const changes: HeadChange[] = [];
  let [i, j] = [0, 0];
  for (const [nextI, nextJ] of [...align(before, after), [before.length, after.length] as const]) {
    while (i < nextI || j < nextJ) {
      const [was, is] = [i < nextI ? before[i++]!.symbol : null, j < nextJ ? after[j++]!.symbol : null];
      changes.push({ kind: 'memo', old: was, now: is });
    }
    i = nextI + 1;
    j = nextJ + 1;
  }
  return changes.map(whole);
}
