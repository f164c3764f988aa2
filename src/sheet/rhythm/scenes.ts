import type { CutList } from '../../count/list.js';

/** Places in the list of the cuts that begin another scene than that of the cut before; not the first. Only what runs is seen. */
export function newScenes({ rows, placed }: CutList): ReadonlySet<number> {
  const found = new Set<number>();
  let scene: string | null = null;
  rows.forEach((row, i) => {
    if (placed[i]!.frames <= 0) return;
    if (scene !== null && row.scene !== scene) found.add(i);
    scene = row.scene;
  });
  return found;
}
