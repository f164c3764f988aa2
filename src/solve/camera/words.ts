/** Numbers as messages say them. */

const trimmed = (value: number, digits: number) => {
  const text = value.toFixed(digits).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
};

/** Two decimals at most, no unit. */
export const millimetres = (mm: number) => trimmed(mm, 2);
export const percent = (share: number) => `${trimmed(share * 100, 1)} %`;
export const degrees = (d: number) => `${trimmed(d, 2)}°`;

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

export const plural = (n: number, one: string) => `${n} ${one}${n === 1 ? '' : 's'}`;
