/** `SolvedShot` → what is seen on each frame, out of the same numbers as the sheet and the export. Pure. */

import type { Light } from '../shot/camera/camera-model.js';
import type { Level } from '../shot/shot.js';
import { counterClockwise, turnOf } from '../solve/camera/plane-turns.js';
import { exposureOn, fadedOn, rulingOn } from '../solve/camera/solve-light.js';
import type { Artwork, CameraFrame, PlacementFrame } from '../solve/camera/solved-camera.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import type {
  CutPicture,
  Matrix,
  PictureFrame,
  PictureLayer,
  PictureLevel,
  PictureOpening,
  SheetBox,
} from './frame-picture.js';

export function pictureOf({ shot, levels, camera }: SolvedShot): CutPicture {
  const { field, fields } = shot.settings;
  const { light } = shot.camera;
  const fades = light.filter((one) => one.kind === 'fade');
  const black = fades.filter(({ white }) => !white);
  const white = fades.filter((fade) => fade.white);
  const openings = light.filter((one) => one.kind === 'wipe' || one.kind === 'iris');
  const dissolves = camera.light.filter((one) => one.light.kind === 'overlap');
  const standard = field.widthMm;
  const sources = levels.map((solved, index): LevelSource => {
    const level = shot.levels[index]!;
    return {
      index,
      level,
      solved,
      placement: camera.placement.get(solved.name)!,
      exposures: light.filter((one) => one.kind === 'expose' && one.levels.includes(solved.name)),
      glows: light.filter((one) => one.kind === 'glow' && one.levels.includes(solved.name)),
      hides: level.masks.map((name) => levels.findIndex((one) => one.name === name)),
    };
  });
  const frames = camera.frames.map((seen): PictureFrame => {
    const { frame } = seen;
    const share = dissolves.reduce(
      (all, { shares }) => all * (shares.find((one) => one.frame === frame)?.share ?? 1),
      1,
    );
    return {
      frame,
      layers: sources.flatMap((source) => layerOf(source, seen, standard) ?? []),
      black: fadedOn(black, frame),
      white: fadedOn(white, frame),
      share,
      opening: openingOn(openings, frame, field),
    };
  });
  return {
    cut: shot.cut,
    fps: shot.fps,
    field,
    fields,
    handles: shot.handles,
    levels: sources.map(({ level, solved }) =>
      levelOf(level, solved, camera.artwork.get(solved.name)!, field),
    ),
    frames,
  };
}

/**
 * An edge that travels to the left and uncovers the picture leaves what is right of it, one that covers it what is left of it. A circle is
 * all of the picture where it reaches the corner that is farthest from its centre.
 */
function openingOn(
  openings: readonly (Light & { kind: 'wipe' | 'iris' })[],
  frame: number,
  field: { readonly widthMm: number; readonly heightMm: number },
): PictureOpening | null {
  const ruling = rulingOn(openings, frame);
  if (!ruling) return null;
  const { light, way } = ruling;
  const share = light.way === 'in' ? way : 1 - way;
  if (share >= 1) return null;
  if (light.kind === 'iris') {
    const { xMm, yMm } = light;
    const farthest = Math.hypot(Math.abs(xMm) + field.widthMm / 2, Math.abs(yMm) + field.heightMm / 2);
    return { form: 'circle', xMm, yMm, radiusMm: share * farthest };
  }
  const ahead = ({ left: 'left', right: 'right', up: 'top', down: 'bottom' } as const)[light.towards];
  const behind = ({ left: 'right', right: 'left', up: 'bottom', down: 'top' } as const)[light.towards];
  return { form: 'edge', from: light.way === 'in' ? behind : ahead, share };
}

interface LevelSource {
  readonly index: number;
  readonly level: Level;
  readonly solved: SolvedLevel;
  readonly placement: readonly PlacementFrame[];
  readonly exposures: readonly Light[];
  readonly glows: readonly Light[];
  readonly hides: readonly number[];
}

function layerOf(
  { index, level, solved, placement, exposures, glows, hides }: LevelSource,
  seen: CameraFrame,
  standard: number,
): PictureLayer | null {
  const { frame } = seen;
  const shown = solved.timed ? solved.exposures[frame - 1] : null;
  if (shown?.kind === 'empty' || shown === undefined) return null;
  return {
    level: index,
    number: shown?.cel ?? null,
    matrix: matrixOf(placement[frame - 1]!, level.homeMm, seen, standard),
    opacity: exposureOn(exposures, frame),
    glow: glows.some(({ frames }) => frame >= frames.from && frame <= frames.to),
    ...(hides.length > 0 ? { hides } : {}),
  };
}

/**
 * A point q of the artwork lies at P = home + (x, y) + scale R q, and is seen at (W/w) Rcam⁻¹ (P − c). The level's way seen from
 * the camera is taken as the solver has it (`screenX`, `screenY`), where what both go together is taken out before the difference is made.
 */
export function matrixOf(
  at: PlacementFrame,
  home: Level['homeMm'],
  seen: CameraFrame,
  standard: number,
): Matrix {
  const zoom = standard / seen.width;
  const turn = turnOf(at.rotation - seen.rotation);
  const scale = zoom * at.scale;
  const own = counterClockwise(turnOf(seen.rotation), home.xMm, home.yMm);
  return [
    scale * turn.cos,
    0 - scale * turn.sin,
    scale * turn.sin,
    scale * turn.cos,
    at.screenX + zoom * own.x,
    at.screenY + zoom * own.y,
  ];
}

function levelOf(
  level: Level,
  { name, title, background, timed }: SolvedLevel,
  artwork: Artwork,
  field: CutPicture['field'],
): PictureLevel {
  return { name, title, background, timed, sheet: sheetOf(level, artwork, field), loop: artwork.loop };
}

function sheetOf({ homeMm }: Level, artwork: Artwork, field: CutPicture['field']): SheetBox {
  const { width, height, needed } = artwork;
  if (width !== null && height !== null) return { xMm: 0, yMm: 0, widthMm: width, heightMm: height };
  if (!needed) return { xMm: 0, yMm: 0, ...field };
  return {
    xMm: needed.x - homeMm.xMm,
    yMm: needed.y - homeMm.yMm,
    widthMm: needed.width,
    heightMm: needed.height,
  };
}
