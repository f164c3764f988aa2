/** The moves of camera and levels. */

import type { Move } from '../shot/camera/camera-model.js';
import { fieldLegs, givenOf } from '../shot/camera/move-facts.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { match } from './align.js';
import type { CameraChange, Change } from './change.js';
import { MovePair } from './move-pair.js';
import { placeNamesOf, seenMove, sheetRowsOf } from './seen-move.js';

/** `fields`, `levels`: what those of the old version are called now. */
export function moveChanges(
  old: SolvedShot,
  now: SolvedShot,
  fields: ReadonlyMap<string, string>,
  levels: ReadonlyMap<string, string>,
): Change[] {
  const renamed = (names: readonly string[]) => names.map((name) => levels.get(name) ?? name).sort();
  const betweenFields = (move: Move) => fieldLegs(move).length > 0;
  const routeOf = (move: Move) =>
    betweenFields(move) ? placeNamesOf(move).map((name) => fields.get(name) ?? name) : placeNamesOf(move);
  const length = Math.max(old.shot.length, now.shot.length);
  const pairs = match(old.camera.moves, now.camera.moves, (a, b) => {
    const kinds =
      a.move.kind === b.move.kind ? 0 : betweenFields(a.move) && betweenFields(b.move) ? 0.4 : null;
    if (kinds === null) return null;
    const [mine, theirs] = [renamed(a.move.target.levels), [...b.move.target.levels].sort()];
    if (mine.length > 0 && !mine.some((name) => theirs.includes(name))) return null;
    const time = (Math.abs(a.start - b.start) + Math.abs(a.end - b.end)) / length;
    const route = routeOf(a.move).join() === placeNamesOf(b.move).join() ? 0 : 0.5;
    return kinds + time + route + (mine.join() === theirs.join() ? 0 : 0.4);
  });
  const changes: Change[] = [];
  const [kept, stay] = [new Set(pairs.map(([i]) => i)), new Set(pairs.map(([, j]) => j))];
  const add = (body: CameraChange, rows: Frames | null) =>
    changes.push({
      ...body,
      place: { kind: 'camera' },
      rows: rows && within(rows, now.shot.length),
    } as Change);
  for (const [i, j] of pairs) {
    const [was, is] = [old.camera.moves[i]!, now.camera.moves[j]!];
    const both = new MovePair(was, is, {
      route: routeOf(was.move),
      levels: [renamed(was.move.target.levels).join(','), [...is.move.target.levels].sort().join(',')],
      carry: [renamed(carryOf(was.move)).join(','), [...carryOf(is.move)].sort().join(',')],
      toEnd: was.end === old.shot.length && is.end === now.shot.length,
    });
    for (const body of both.changes()) add(body, sheetRowsOf(is));
  }
  for (const [j, move] of now.camera.moves.entries())
    if (!stay.has(j))
      add({ kind: 'move-added', frames: sheetRowsOf(move), ...seenMove(move.move) }, sheetRowsOf(move));
  for (const [i, move] of old.camera.moves.entries())
    if (!kept.has(i))
      add({ kind: 'move-dropped', frames: sheetRowsOf(move), ...seenMove(move.move) }, sheetRowsOf(move));
  return changes.sort((a, b) => (a.rows?.from ?? 0) - (b.rows?.from ?? 0));
}

export function within({ from, to }: Frames, length: number): Frames | null {
  return from > length ? null : { from, to: Math.min(to, length) };
}

const carryOf = (move: Move): readonly string[] => givenOf(move, 'levels') ?? [];
