/** How lengths on the artwork are printed: in millimetres, or in inches where the settings say so. */

import type { Settings } from '../shot/settings.js';
import { figure } from '../words/number-format.js';

const MM_AN_INCH = 25.4;

export interface PrintedLengths {
  readonly unit: 'mm' | 'in';
  /** The number alone, without noughts at its end: `12.7`. */
  figure(mm: number): string;
  /** With the unit: `12.7 mm`, `0.5 in`. */
  text(mm: number): string;
  /** With as many decimals as its neighbours in a column: two for mm, three for inches. */
  aligned(mm: number): string;
  /** The same, whole numbers bare. */
  step(mm: number): string;
  /** `560 × 200 mm` */
  area(widthMm: number, heightMm: number): string;
  /** A size that will do: never rounded down. */
  up(mm: number): number;
}

export function printedLengths({ lengths: unit }: Pick<Settings, 'lengths'>): PrintedLengths {
  const factor = unit === 'in' ? MM_AN_INCH : 1;
  const decimals = unit === 'in' ? 3 : 2;
  const number = (mm: number): string => figure(mm / factor, { decimals });
  return {
    unit,
    figure: number,
    text: (mm) => `${number(mm)} ${unit}`,
    aligned: (mm) => figure(mm / factor, { decimals, zeros: 'always' }),
    step: (mm) => figure(mm / factor, { decimals, zeros: 'unlessWhole' }),
    area: (width, height) => `${number(width)} × ${number(height)} ${unit}`,
    up: (mm) => (Math.ceil((mm / factor) * 10 ** decimals - 1e-6) / 10 ** decimals) * factor,
  };
}
