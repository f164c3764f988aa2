/** Cut numbers over their bars: across where the bar is as wide as they are, else upwards, else left out. */

export interface Labelled {
  readonly text: string;
  readonly x: number;
  /** Never upwards. */
  readonly across?: boolean;
  /** A line stands at its x that no label before it may cross. */
  readonly walled?: boolean;
}

export interface SetLabel {
  readonly text: string;
  readonly x: number;
  readonly upwards: boolean;
}

export interface Room {
  /** Right end of the strip. */
  readonly end: number;
  /** Height of a line, which one that stands upwards takes across. */
  readonly lineMm: number;
  /** The longest that one may be that stands upwards. */
  readonly highest: number;
  width(text: string): number;
}

/** `labels` of one strip, from left to right. */
export function setLabels(labels: readonly Labelled[], { end, lineMm, highest, width }: Room): SetLabel[] {
  const set: SetLabel[] = [];
  let free = Number.NEGATIVE_INFINITY;
  labels.forEach(({ text, x, across = false }, i) => {
    if (x < free) return;
    const long = width(text);
    const next = labels[i + 1]?.x ?? end;
    const lies = x + long <= next - lineMm * 0.1;
    const stands = !across && long <= highest && x + lineMm <= end + lineMm * 0.5 && !wallWithin(i);
    if (!lies && !stands) return;
    set.push({ text, x, upwards: !lies });
    free = x + (lies ? long : lineMm);
  });
  return set;

  function wallWithin(i: number): boolean {
    for (let at = i + 1; at < labels.length && labels[at]!.x < labels[i]!.x + lineMm; at++)
      if (labels[at]!.walled) return true;
    return false;
  }
}
