/** Where the drawings of a cut lie: as its levels say (`level BG picture "bg.png"`), or else as its episode does (`drawings:`). */

import { dirname, join, relative } from 'node:path';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import type { Tree } from '../language/tree.js';
import { scanName } from '../shot/scan-names.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { Episode } from './episode.js';
import { isInReach } from './used-files.js';

export interface ScanFile {
  /** Absolute. */
  readonly path: string;
  /** What messages call it: as it is written. */
  readonly name: string;
}

/** Errors for scans that would lie outside the cut's folder and its episode. `place`: absolute path of the cut, the first of the trees. */
export function scansOutside(
  host: Host,
  place: string,
  trees: readonly Tree[],
  root: string | null,
): Diagnostic[] {
  const [main] = trees;
  return trees.flatMap(({ file, statements }) =>
    statements.flatMap((one) => {
      if (one.kind !== 'level' || one.picture === null) return [];
      const { text, span } = one.picture;
      if (isInReach(host, text, folderOf(place, main!.file, file), root)) return [];
      return [diagnose('scan-outside', span, { path: text, inEpisode: root !== null })];
    }),
  );
}

/**
 * The file in which a drawing lies if it is drawn, whether it is there or not; null: nothing says where. `file`: what messages call
 * the cut that lies at `place`. A drawing of another cut's level lies with that cut's.
 */
export function scanFileOf(
  host: Host,
  { place, file }: { readonly place: string; readonly file: string },
  { shot, levels }: SolvedShot,
  episode: Episode,
  level: number,
  number: number | null,
): ScanFile | null {
  const solved = levels[level]!;
  const { picture, reuse } = shot.levels[level]!;
  const reused =
    reuse && (number === null || solved.drawings.some((one) => one.cel === number && one.reused));
  const wanted = reused
    ? { cut: reuse.cut, level: reuse.level, number }
    : { cut: shot.cut, level: solved.name, number };
  if (picture) {
    const folder = folderOf(place, file, picture.span.file);
    const name = scanName(picture.text, wanted);
    return isInReach(host, name, folder, episode.folder) ? { path: join(folder, name), name } : null;
  }
  if (!episode.drawings || episode.folder === null) return null;
  const name = scanName(episode.drawings.text, wanted);
  return isInReach(host, name, episode.folder, episode.folder)
    ? { path: join(episode.folder, name), name }
    : null;
}

/** The folder of a file that a cut uses: names of used files lead from the name of the cut. */
function folderOf(place: string, cut: string, file: string): string {
  return join(dirname(place), relative(dirname(cut), dirname(file)));
}
