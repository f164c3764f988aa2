/** The camera's lines of the memo: one for each move and each light, or that nothing moves. */

import type { CameraPlan } from './plan.js';

export function cameraMemo({ fixed, items }: CameraPlan): string[] {
  return [...(fixed === null ? [] : [fixed]), ...items.map(({ memo }) => memo)];
}
