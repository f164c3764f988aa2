/** Places on a sheet as options take them. */

import { UsageError } from '../build/usage-error.js';
import { FRAMES_A_FOOT } from '../shot/settings.js';

/** A frame, once the speed is known. */
export type SheetPlace = (fps: number) => number;

/** A time as the text of a cut writes it: `37`, `1+12`, `2'08`. */
export function sheetPlace(flag: string, text: string | undefined): SheetPlace | undefined {
  if (text === undefined) return undefined;
  const [, big, sign, small] = /^(\d{1,6})(?:([+'])(\d{1,6}))?$/.exec(text.normalize('NFKC')) ?? [];
  const frame: SheetPlace = (fps) => {
    if (sign === undefined) return Number(big);
    return Number(big) * (sign === '+' ? fps : FRAMES_A_FOOT) + Number(small);
  };
  if (big === undefined || frame(1) < 1) {
    throw new UsageError('option-value', text, { variant: 'sheet-place', option: flag });
  }
  return frame;
}

/** `--from` and `--to`; refuses an end before the beginning, whatever the speed. */
export function sheetRange(options: {
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}): {
  readonly from: SheetPlace | undefined;
  readonly to: SheetPlace | undefined;
} {
  const from = sheetPlace('--from', options.from);
  const to = sheetPlace('--to', options.to);
  if (from && to && [1, 1000].every((fps) => to(fps) < from(fps)))
    throw new UsageError('option-value', options.to!, {
      variant: 'to-before-from',
      from: options.from!,
      to: options.to!,
    });
  return { from, to };
}
