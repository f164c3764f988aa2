/** Which rows of which cuts a film shows, frame by frame: one sheet from its first row to its last, or an episode with its dissolves. Pure. */

export interface FilmPicture {
  /** The place of the cut among those of the film. */
  readonly cut: number;
  /** The row of its sheet, from 1. */
  readonly row: number;
}

export interface FilmFrame {
  readonly shown: FilmPicture;
  /** The cut in whose time it lies: up to the cut point the outgoing one, then the incoming one. */
  readonly own: FilmPicture;
  /** In a dissolve: the incoming cut, painted over the outgoing one with the share that its own picture has. */
  readonly incoming: FilmPicture | null;
}

/** A cut's own part of the film. */
export interface FilmPart {
  /** Frames of the film before it. */
  readonly before: number;
  readonly frames: number;
  /** Rows of its sheet before what is shown. */
  readonly rowsBefore: number;
}

export interface FilmOrder {
  readonly fps: number;
  readonly frames: number;
  /** One a cut, in order. */
  readonly parts: readonly FilmPart[];
  /** `frame`: of the film, from 1. */
  at(frame: number): FilmFrame;
}

/** A cut as an edit lays it (`EditCut`), in whole frames from 0. */
export interface LaidCut {
  readonly source: { readonly from: number; readonly frames: number };
  readonly record: number;
  readonly dissolve: { readonly before: number; readonly after: number } | null;
}

export interface LaidFilm {
  readonly fps: number;
  readonly frames: number;
  readonly cuts: readonly LaidCut[];
}

/** All rows of one sheet, with the handles. */
export function sheetOrder({ fps, length }: { readonly fps: number; readonly length: number }): FilmOrder {
  return {
    fps,
    frames: length,
    parts: [{ before: 0, frames: length, rowsBefore: 0 }],
    at(frame) {
      const shown = { cut: 0, row: frame };
      return { shown, own: shown, incoming: null };
    },
  };
}

/** From cut point to cut point; of the handles only what a dissolve needs is seen. */
export function editOrder({ fps, frames, cuts }: LaidFilm): FilmOrder {
  const parts = cuts.map(
    ({ source, record }): FilmPart => ({ before: record, frames: source.frames, rowsBefore: source.from }),
  );
  const picture = (cut: number, frame: number): FilmPicture => {
    const { before, rowsBefore } = parts[cut]!;
    return { cut, row: frame - before + rowsBefore };
  };
  return {
    fps,
    frames,
    parts,
    at(frame) {
      let cut = 0;
      while (cut + 1 < parts.length && frame > parts[cut + 1]!.before) cut++;
      const own = picture(cut, frame);
      const into = cuts[cut]!.dissolve;
      if (into && frame - parts[cut]!.before <= into.after)
        return { shown: picture(cut - 1, frame), own, incoming: own };
      const out = cuts[cut + 1]?.dissolve;
      if (out && frame > parts[cut + 1]!.before - out.before)
        return { shown: own, own, incoming: picture(cut + 1, frame) };
      return { shown: own, own, incoming: null };
    },
  };
}
