/** The colours of placeholders: each level of a stack has its own hue, whatever the others are. */

export interface Tint {
  /** Of the sheet: pale enough that several on top of each other stay readable. */
  readonly pale: string;
  /** Of its edge and lines. */
  readonly line: string;
  /** Of its number. */
  readonly dark: string;
}

/** Hues one golden angle apart stay apart however many there are. */
const GOLDEN_DEGREES = 137.508;

export function tintOf(index: number): Tint {
  const hue = Math.round((210 + index * GOLDEN_DEGREES) % 360);
  return {
    pale: `hsl(${hue}, 80%, 97.5%)`,
    line: `hsl(${hue}, 40%, 75%)`,
    dark: `hsl(${hue}, 60%, 35%)`,
  };
}
