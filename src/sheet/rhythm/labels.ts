/** Cut numbers over their bars: across where the bar is as wide as they are, else upwards, else left out. */

export interface Labelled {
  readonly text: string;
  readonly x: number;
}

export interface SetLabel extends Labelled {
  readonly upwards: boolean;
}

/** `labels` of one strip, from left to right; `width` measures a text, `heightMm` is a line's. */
export function setLabels(
  labels: readonly Labelled[],
  end: number,
  width: (text: string) => number,
  heightMm: number,
): SetLabel[] {
  const set: SetLabel[] = [];
  let free = Number.NEGATIVE_INFINITY;
  labels.forEach((label, i) => {
    const next = labels[i + 1]?.x ?? end;
    if (label.x < free) return;
    const across = label.x + width(label.text) <= next - heightMm * 0.1;
    if (!across && label.x + heightMm > end + heightMm * 0.5) return;
    set.push({ ...label, upwards: !across });
    free = label.x + (across ? width(label.text) : heightMm);
  });
  return set;
}
