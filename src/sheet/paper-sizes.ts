import type { Paper } from '../shot/settings.js';

/** Upright sizes in mm. Sources: ISO 216 (A), JIS P 0138 (B4, B5), ANSI sizes as in CSS paged media (the others). */
export const PAPER_MM: Readonly<Record<Paper, { readonly widthMm: number; readonly heightMm: number }>> = {
  A4: { widthMm: 210, heightMm: 297 },
  A3: { widthMm: 297, heightMm: 420 },
  B4: { widthMm: 257, heightMm: 364 },
  B5: { widthMm: 182, heightMm: 257 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
  legal: { widthMm: 215.9, heightMm: 355.6 },
  tabloid: { widthMm: 279.4, heightMm: 431.8 },
};

const MM_A_POINT = 25.4 / 72;

/** How much larger print may be than on A4: 1 to 1.4. */
export function largerPrint(paper: Paper): number {
  const { widthMm, heightMm } = PAPER_MM[paper];
  return Math.min(1.4, Math.max(1, Math.min(widthMm / 210, heightMm / 297)));
}

/** The smallest em that is printed, mm: 5 pt on the big papers, which are often copied down, 5.5 pt on the others. */
export function smallestTextMm(paper: Paper): number {
  return (paper === 'A3' || paper === 'tabloid' ? 5 : 5.5) * MM_A_POINT;
}
