/** What is counted of a cut at a stage, and what is paid for it. Pure; amounts are whole numbers of the smallest coin that is said. */

import { FRAMES_A_FOOT } from '../shot/settings.js';
import type { Counts } from '../solve/solved-shot.js';

/** What a rate is paid for. `key`, `in-between` (with breakdowns) and `drawing` (all of them) are new drawings of the cut. */
export type RateUnit = 'cut' | 'key' | 'in-between' | 'drawing' | 'second' | 'foot';

export interface Rate {
  /** In units of 10 to the power of `-decimals` of the currency. */
  readonly amount: number;
  readonly decimals: number;
  /** As the user writes it. */
  readonly currency: string;
  readonly unit: RateUnit;
}

/** What is paid of a cut, as far as it could be counted. */
export interface Payable {
  readonly counts: Pick<Counts, 'keys' | 'breakdowns' | 'inbetweens' | 'drawings'>;
  /** Without handles, and how many a second. */
  readonly time: number;
  readonly fps: number;
}

/** Which drawings a stage works on where its rate does not say: keys, in-betweens, or all. Null: it counts cuts. */
export function drawingsOfStage(stage: string, rate: Rate | null): 'key' | 'in-between' | 'drawing' | null {
  if (rate !== null && (rate.unit === 'key' || rate.unit === 'in-between' || rate.unit === 'drawing'))
    return rate.unit;
  if (stage === 'key' || stage === 'in-between') return stage;
  return stage === 'finish' ? 'drawing' : null;
}

/** New drawings of one sort; what is reused from another cut is counted there. */
export function countedDrawings(of: 'key' | 'in-between' | 'drawing', { counts }: Payable): number {
  if (of === 'key') return counts.keys;
  return of === 'in-between' ? counts.breakdowns + counts.inbetweens : counts.drawings;
}

/** What one cut comes to, in units of the rate's own decimals; seconds and feet are rounded, halves up, cut by cut. */
export function payment(rate: Rate, cut: Payable): number {
  const { unit, amount } = rate;
  if (unit === 'cut') return amount;
  if (unit === 'second') return Math.round((amount * cut.time) / cut.fps);
  if (unit === 'foot') return Math.round((amount * cut.time) / FRAMES_A_FOOT);
  return amount * countedDrawings(unit, cut);
}

/** The sum of what is paid in one currency. */
export interface Sum {
  readonly amount: number;
  readonly decimals: number;
  readonly currency: string;
}

/** Sums currency by currency, in the order in which they first come; each with the most decimals that were said in it. */
export function sums(parts: readonly Sum[]): Sum[] {
  const found = new Map<string, Sum>();
  for (const part of parts) {
    const { currency } = part;
    const before = found.get(currency) ?? { amount: 0, decimals: 0, currency };
    const decimals = Math.max(before.decimals, part.decimals);
    const scaled = (one: Sum): number => one.amount * 10 ** (decimals - one.decimals);
    found.set(currency, { currency, decimals, amount: scaled(before) + scaled(part) });
  }
  return [...found.values()];
}

/** `1234.50`: an amount without its currency. */
export function amountText({ amount, decimals }: Pick<Sum, 'amount' | 'decimals'>): string {
  if (decimals === 0) return String(amount);
  const digits = String(amount).padStart(decimals + 1, '0');
  return `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}
