/**
 * What an episode says once for all its cuts, and what holds without an episode. Only looks and standards: nothing here
 * changes which drawing is seen when, but `fps`, `on` and `numbering`, which a cut may overrule.
 */

import { LABELS, type LabelLanguage } from '../words/labels.js';

export type Convention = 'japan' | 'west';
export const PAPERS = ['A4', 'A3', 'B4', 'B5', 'letter', 'legal', 'tabloid', 'C4', 'kaku2'] as const;
export type Paper = (typeof PAPERS)[number];
export type Numbering = 'sequence' | 'frame';

export const LENGTH_UNITS = ['mm', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

export interface Settings {
  readonly title: string;
  readonly episode: string;
  readonly convention: Convention;
  readonly labels: LabelLanguage;
  readonly paper: Paper;
  /** Rows a page; null: as the convention has it (six seconds in Japan, six feet in the west). */
  readonly rows: number | null;
  readonly fps: number;
  readonly on: number;
  readonly numbering: Numbering;
  /** Standard field in mm. */
  readonly field: { readonly widthMm: number; readonly heightMm: number };
  /** Lines of the field chart: 12 or 16. */
  readonly fields: number;
  /** Sheets that the levels are drawn on, mm. */
  readonly artwork: { readonly widthMm: number; readonly heightMm: number };
  /** Pixels of the finished picture. */
  readonly output: { readonly width: number; readonly height: number };
  readonly scanDpi: number;
  readonly overlap: 'half' | 'full';
  /** Two flat holes with a round one between them, or no holes. */
  readonly pegs: 'flat-round-flat' | 'none';
  /** In which lengths are printed and told. */
  readonly lengths: LengthUnit;
}

const INCH = 25.4;

/**
 * What an episode has by its convention where it says nothing else. Japan: the recommended 16:9 layout paper of Japan's producers'
 * association (10 x 5.625 in on A4). West: a 12 field is 12 in wide (the field number is the width in inches), 16:9 gives
 * 6.75 in; its paper is 12.5 x 10.5 in (common practice).
 */
export const CONVENTIONAL: {
  readonly [C in Convention]: Pick<Settings, 'field' | 'artwork' | 'lengths'>;
} = {
  japan: {
    field: { widthMm: 254, heightMm: 142.875 },
    artwork: { widthMm: 297, heightMm: 210 },
    lengths: 'mm',
  },
  west: {
    field: { widthMm: 12 * INCH, heightMm: 6.75 * INCH },
    artwork: { widthMm: 12.5 * INCH, heightMm: 10.5 * INCH },
    lengths: 'in',
  },
};

export const defaults: Settings = {
  title: '',
  episode: '',
  convention: 'japan',
  labels: LABELS[0],
  paper: 'A4',
  rows: null,
  fps: 24,
  on: 2,
  numbering: 'sequence',
  ...CONVENTIONAL.japan,
  fields: 12,
  output: { width: 1920, height: 1080 },
  scanDpi: 200,
  overlap: 'half',
  pegs: 'none',
};

/** Rows of one foot of 35 mm film, 4 perforations a frame. Source: 35 mm technical specifications (16 frames a foot). */
export const FRAMES_A_FOOT = 16;

/** The longest cut that is accepted, in seconds: ten minutes, some hundred pages. Longer ones are slips of the hand. */
export const LONGEST_CUT_SECONDS = 600;
