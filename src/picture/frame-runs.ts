/** The pictures of a cut as they go to a browser: what is seen again and again is sent once. Pure. */

import type { CutPicture, PictureFrame, PictureLayer } from './frame-picture.js';

/** A picture of one frame or of many: its layers by their places in `layers`. */
export interface SeenPicture extends Omit<PictureFrame, 'frame' | 'layers'> {
  readonly layers: readonly number[];
}

export interface PackedPicture extends Omit<CutPicture, 'frames'> {
  readonly layers: readonly PictureLayer[];
  readonly seen: readonly SeenPicture[];
  /** From the first row on: a place in `seen`, and for how many rows. */
  readonly runs: readonly (readonly [place: number, rows: number])[];
}

/** A picture with its frames; those that look alike are one object, but for their numbers. */
export interface UnpackedPicture {
  readonly cut: CutPicture;
  /** For each frame, which picture it is: equal where equal pictures are seen. */
  readonly places: readonly number[];
}

export function packPicture({ frames, ...cut }: CutPicture): PackedPicture {
  const layers = new Distinct<PictureLayer>();
  const seen = new Distinct<SeenPicture>();
  const runs: [number, number][] = [];
  for (const { frame: _, ...picture } of frames) {
    const own = picture.layers.map((layer) =>
      layers.placeOf({ ...layer, matrix: layer.matrix.map(rounded) as unknown as PictureLayer['matrix'] }),
    );
    const place = seen.placeOf({ ...picture, layers: own });
    const last = runs.at(-1);
    if (last?.[0] === place) last[1] += 1;
    else runs.push([place, 1]);
  }
  return { ...cut, layers: layers.all, seen: seen.all, runs };
}

export function unpackPicture({ layers, seen, runs, ...cut }: PackedPicture): UnpackedPicture {
  const pictures = seen.map((one) => ({ ...one, layers: one.layers.map((place) => layers[place]!) }));
  const places = runs.flatMap(([place, rows]) => Array.from({ length: rows }, () => place));
  const frames = places.map((place, i): PictureFrame => ({ ...pictures[place]!, frame: i + 1 }));
  return { cut: { ...cut, frames }, places };
}

/** A millionth of a millimetre is seen by nobody. */
function rounded(value: number): number {
  return Math.round(value * 1e6) / 1e6 + 0;
}

class Distinct<T> {
  readonly all: T[] = [];
  private readonly places = new Map<string, number>();

  placeOf(one: T): number {
    const key = JSON.stringify(one);
    const known = this.places.get(key);
    if (known !== undefined) return known;
    this.places.set(key, this.all.length);
    return this.all.push(one) - 1;
  }
}
