/** How the in-betweens of a passage lie; `fractions`: as its author marked them. */
export type ChartSpacing = 'even' | 'early' | 'late' | 'both' | 'fractions';

/** What the in-between charts say beside their numbers. */
export interface ChartWords {
  /** Heads of a ladder's columns. */
  readonly headings: {
    readonly number: string;
    readonly drawing: string;
    readonly way: string;
    readonly frames: string;
  };
  readonly goesOn: string;
  /** What the n-th page of charts is called in head and foot. */
  page(n: number): string;
  count(inbetweens: number): string;
  /** Passages of a level that have no chart, since their in-betweens are even: `1→2 ×3`. */
  even(passages: readonly string[]): string;
  /** The same where there are too many to name. */
  evenOnes(passages: number): string;
  /** The line under a ladder's title: how many, how they are spaced, where the passage is first seen. */
  remark(inbetweens: number, spacing: ChartSpacing, first: string): string;
}
