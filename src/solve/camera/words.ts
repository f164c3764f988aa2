/** Numbers as messages say them. */

import { figure } from '../../words/number.js';

/** Two decimals at most, no unit. */
export const millimetres = (mm: number) => figure(mm);
export const percent = (share: number) => `${figure(share * 100, { decimals: 1 })} %`;
export const degrees = (d: number) => `${figure(d)}°`;

/** `frame 3`, `frames 3-7, 12, 15-20 and others`. */
export function frameList(frames: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const frame of frames) {
    const run = runs[runs.length - 1];
    if (run && frame === run[1] + 1) run[1] = frame;
    else runs.push([frame, frame]);
  }
  const texts = runs.slice(0, 4).map(([a, b]) => (a === b ? `${a}` : `${a}-${b}`));
  const more = runs.length > 4 ? ' and others' : '';
  return `${frames.length === 1 ? 'frame' : 'frames'} ${texts.join(', ')}${more}`;
}
