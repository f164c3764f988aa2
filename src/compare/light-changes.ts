/** Fades, overlaps, exposures, light and effects. */

import type { Light } from '../shot/camera/camera-model.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { figure } from '../words/number-format.js';
import { match } from './align.js';
import type { CameraChange, Change, LightManner, LightSeen, MannerValue } from './change.js';
import { near } from './field-changes.js';
import { within } from './move-changes.js';

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
  if (was.kind === 'overlap' && is.kind === 'overlap') all.push(['length', was.length, is.length]);
  if (was.kind === 'effect' && is.kind === 'effect') all.push(['text', was.text, is.text]);
  if (was.kind === 'expose' && is.kind === 'expose') all.push(['shares', shares(was), shares(is)]);
  return all;
}

const shares = ({ from, to }: { from: number; to: number }): string => {
  const percent = (share: number) => `${figure(share * 100, { decimals: 1 })}%`;
  return near(from, to) ? percent(from) : `${percent(from)}>${percent(to)}`;
};
