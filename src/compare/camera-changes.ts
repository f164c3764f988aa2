/** What differs in the camera: moves, light and fields. */

import type { Field, Light, Move } from '../shot/camera/camera-model.js';
import { fieldLegs, givenOf } from '../shot/camera/move-kinds.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { figure } from '../words/number-format.js';
import { match } from './align.js';
import type { CameraChange, Change, LightManner, LightSeen, MannerValue } from './change.js';
import { MovePair, near, placeNamesOf, seenMove, sheetRowsOf } from './move-pair.js';

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
    betweenFields(move) ? placeNamesOf(move).map((names) => renamedRoute(names, fields)) : placeNamesOf(move);
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

// ---- fades, overlaps, exposures, light and effects

const levelsOf = (light: Light): readonly string[] => ('levels' in light ? light.levels : []);

function seenLight(light: Light): LightSeen {
  return {
    light: light.kind,
    way: 'way' in light ? light.way : null,
    white: light.kind === 'fade' && light.white,
    levels: levelsOf(light),
    text: light.kind === 'effect' ? light.text : '',
  };
}

const framesOf = ({ frames: { from, to } }: Light): Frames => ({ from, to });

/** `levels`: what those of the old version are called now. */
export function lightChanges(
  { shot: old }: SolvedShot,
  { shot: now }: SolvedShot,
  levels: ReadonlyMap<string, string>,
): Change[] {
  const renamed = (light: Light) =>
    levelsOf(light)
      .map((name) => levels.get(name) ?? name)
      .sort()
      .join(',');
  const sorted = (light: Light) => [...levelsOf(light)].sort().join(',');
  const length = Math.max(old.length, now.length);
  const pairs = match(old.camera.light, now.camera.light, (a, b) => {
    if (a.kind !== b.kind || ('way' in a && 'way' in b && a.way !== b.way)) return null;
    const text = a.kind === 'effect' && b.kind === 'effect' && a.text !== b.text ? 0.7 : 0;
    const time = (Math.abs(a.frames.from - b.frames.from) + Math.abs(a.frames.to - b.frames.to)) / length;
    const cost = text + time + (renamed(a) === sorted(b) ? 0 : 0.7);
    return cost < 1.4 ? cost : null;
  });
  const [kept, stay] = [new Set(pairs.map(([i]) => i)), new Set(pairs.map(([, j]) => j))];
  const changes: Change[] = [];
  const add = (body: CameraChange, rows: Frames) =>
    changes.push({ ...body, place: { kind: 'camera' }, rows: within(rows, now.length) } as Change);
  for (const [i, j] of pairs) {
    const [was, is] = [old.camera.light[i]!, now.camera.light[j]!];
    const seen = seenLight(is);
    const toEnd =
      was.frames.to === old.length && is.frames.to === now.length && was.frames.from === is.frames.from;
    const sameTime = was.frames.from === is.frames.from && was.frames.to === is.frames.to;
    // An overlap lies at its end of the sheet, wherever that is; what is as strong throughout goes on to the end.
    const goesOn =
      toEnd && (is.kind === 'glow' || is.kind === 'effect' || (is.kind === 'expose' && near(is.from, is.to)));
    if (is.kind !== 'overlap' && !sameTime && !goesOn)
      add({ kind: 'light-time', frames: { old: framesOf(was), now: framesOf(is) }, ...seen }, is.frames);
    for (const [manner, before, after] of manners(was, is, renamed(was), sorted(is)))
      if (before !== after)
        add({ kind: 'light-manner', manner, old: before, now: after, ...seen }, is.frames);
  }
  for (const [j, light] of now.camera.light.entries())
    if (!stay.has(j))
      add({ kind: 'light-added', frames: framesOf(light), ...seenLight(light) }, light.frames);
  for (const [i, light] of old.camera.light.entries())
    if (!kept.has(i))
      add({ kind: 'light-dropped', frames: framesOf(light), ...seenLight(light) }, light.frames);
  return changes.sort((a, b) => (a.rows?.from ?? 0) - (b.rows?.from ?? 0));
}

function manners(
  was: Light,
  is: Light,
  levelsOld: string,
  levelsNow: string,
): [LightManner, MannerValue, MannerValue][] {
  const all: [LightManner, MannerValue, MannerValue][] = [['levels', levelsOld, levelsNow]];
  if (was.kind === 'fade' && is.kind === 'fade') all.push(['white', was.white, is.white]);
  if (was.kind === 'wipe' && is.kind === 'wipe') all.push(['towards', was.towards, is.towards]);
  if (was.kind === 'iris' && is.kind === 'iris') all.push(['centre', centre(was), centre(is)]);
  if (was.kind === 'overlap' && is.kind === 'overlap') all.push(['length', was.length, is.length]);
  if (was.kind === 'effect' && is.kind === 'effect') all.push(['text', was.text, is.text]);
  if (was.kind === 'expose' && is.kind === 'expose') all.push(['shares', shares(was), shares(is)]);
  return all;
}

const centre = ({ xMm, yMm }: { xMm: number; yMm: number }): string => `${figure(xMm)},${figure(yMm)}`;

const shares = ({ from, to }: { from: number; to: number }): string => {
  const percent = (share: number) => `${figure(share * 100, { decimals: 1 })}%`;
  return near(from, to) ? percent(from) : `${percent(from)}>${percent(to)}`;
};

// ---- the fields of the camera, and where it rests

export interface Fields {
  readonly changes: readonly Change[];
  /** What fields of the old version are called now. */
  readonly names: ReadonlyMap<string, string>;
}

const sameView = (a: Field, b: Field): boolean =>
  near(a.xMm, b.xMm) && near(a.yMm, b.yMm) && near(a.widthMm, b.widthMm) && near(a.turnDeg, b.turnDeg);

export function fieldChanges({ shot: old }: SolvedShot, { shot: now }: SolvedShot): Fields {
  const [before, after] = [old, now].map(
    ({ camera }) =>
      new Map(camera.fields.filter(({ name }) => name !== 'full').map((field) => [field.name, field])),
  ) as [Map<string, Field>, Map<string, Field>];
  const names = new Map<string, string>([['full', 'full']]);
  for (const name of before.keys()) if (after.has(name)) names.set(name, name);
  const come = [...after.values()].filter(({ name }) => !before.has(name));
  const taken = new Set<string>();
  for (const field of before.values()) {
    if (names.has(field.name)) continue;
    const twin = come.find((one) => !taken.has(one.name) && sameView(one, field));
    if (!twin) continue;
    names.set(field.name, twin.name);
    taken.add(twin.name);
  }
  const changes: CameraChange[] = [];
  for (const [name, is] of names) {
    if (name === 'full') continue;
    changes.push(...ofField(before.get(name)!, after.get(is)!, now.settings.field.widthMm));
  }
  const gone = new Set(names.keys());
  const known = new Set(names.values());
  for (const field of after.values())
    if (!known.has(field.name)) changes.push({ kind: 'field-added', ...plain(field) });
  for (const field of before.values())
    if (!gone.has(field.name)) changes.push({ kind: 'field-dropped', ...plain(field) });
  const moves = [old, now].some(({ camera }) => camera.moves.some((move) => fieldLegs(move).length > 0));
  const [rested, rests] = [old.camera.rest.name, now.camera.rest.name];
  if (!moves && (names.get(rested) ?? rested) !== rests)
    changes.push({ kind: 'fix', old: rested, now: rests });
  return {
    changes: changes.map((body): Change => ({ ...body, place: { kind: 'camera' }, rows: null }) as Change),
    names,
  };
}

const plain = ({ name, xMm, yMm, widthMm }: Field) => ({ field: name, xMm, yMm, widthMm });

function ofField(was: Field, is: Field, standardMm: number): CameraChange[] {
  const field = is.name;
  const changes: CameraChange[] = [];
  if (was.name !== field) changes.push({ kind: 'field-renamed', field, old: was.name });
  if (!near(was.xMm, is.xMm) || !near(was.yMm, is.yMm)) {
    changes.push({
      kind: 'field-moved',
      field,
      by: { xMm: is.xMm - was.xMm, yMm: is.yMm - was.yMm },
      old: { xMm: was.xMm, yMm: was.yMm },
      now: { xMm: is.xMm, yMm: is.yMm },
    });
  }
  if (!near(was.widthMm, is.widthMm)) {
    changes.push({
      kind: 'field-resized',
      field,
      old: was.widthMm,
      now: is.widthMm,
      percent: { old: (was.widthMm / standardMm) * 100, now: (is.widthMm / standardMm) * 100 },
    });
  }
  if (!near(was.turnDeg, is.turnDeg))
    changes.push({ kind: 'field-turned', field, old: was.turnDeg, now: is.turnDeg });
  return changes;
}

/** A place, or several that a curve passes: `B→C`. */
const renamedRoute = (names: string, fields: ReadonlyMap<string, string>): string =>
  names
    .split('→')
    .map((name) => fields.get(name) ?? name)
    .join('→');
