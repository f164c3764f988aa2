/** The camera's lines of the memo: one for each move and each light, or that nothing moves; before them the levels whose edge shows. */

import type { CameraPlan } from './lane-assignment.js';

export function cameraMemo({ edges, fixed, items }: CameraPlan): string[] {
  return [...edges, ...(fixed === null ? [] : [fixed]), ...items.map(({ memo }) => memo)];
}
