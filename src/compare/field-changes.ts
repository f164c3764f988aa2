/** The fields of the camera, and where it rests. */

import type { Field } from '../shot/camera/camera-model.js';
import { fieldLegs } from '../shot/camera/move-facts.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { CameraChange, Change } from './change.js';

export interface Fields {
  readonly changes: readonly Change[];
  /** What fields of the old version are called now. */
  readonly names: ReadonlyMap<string, string>;
}

/** Numbers of a text have six decimals at most. */
export const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

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
