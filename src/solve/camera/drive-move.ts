/** Which function drives which kind of move; everything else of a kind stands in the table of moves. */

import type { Move, MoveKind } from '../../shot/camera/camera-model.js';
import { kindOf } from '../../shot/camera/move-facts.js';
import type { Stage } from './camera-tracks.js';
import { fieldDrives } from './field-moves.js';
import type { Driver, Path } from './move-path.js';
import { swingDrives } from './swing-moves.js';
import { levelDrives } from './value-moves.js';
import { placeDrives, wayDrives } from './way-moves.js';

const drives: { readonly [K in MoveKind]: Driver<K> } = {
  ...fieldDrives,
  ...wayDrives,
  ...placeDrives,
  ...levelDrives,
  ...swingDrives,
};

/** Writes the frames of a move into the tracks, and gives its own way. */
export function driveMove(move: Move, stage: Stage): Path {
  const drive = drives[move.kind] as unknown as (move: Move, stage: Stage) => Path;
  return drive(move, stage);
}

/** What the move drives, as keys: `camera field`, `A slide`. A level cannot be called `camera field`: names hold no blank. */
export function drivenBy(move: Move): string[] {
  const { target, quantity } = kindOf(move);
  return target === 'camera'
    ? [`camera ${quantity}`]
    : move.target.levels.map((name) => `${name} ${quantity}`);
}
