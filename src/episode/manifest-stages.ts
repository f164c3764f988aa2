/** What the manifest says of the production: stages, when they are due, what is paid. Pure functions of text. */

import type { Rate, RateUnit } from '../count/stage-rates.js';
import type { Value } from './manifest-values.js';

/** A stage's name: a word that cannot be taken for a cut's number. */
export function stageName(text: string): Value<string> {
  const name = text.normalize('NFKC').trim();
  return isStageName(name) && name.length <= 24
    ? { ok: true, value: name }
    : { ok: false, takes: { value: 'stage' } };
}

// ASCII is asked first: the tables of Unicode classes take longer to set up than a manifest to read.
const isStageName = (name: string): boolean =>
  /^[A-Za-z][\w-]*$/.test(name) || /^\p{L}[\p{L}\p{M}\p{Nd}_-]*$/u.test(name);
const isCut = (word: string): boolean =>
  /^\w*\d\w*$/.test(word) || /^[\p{L}\p{Nd}_]*\p{Nd}[\p{L}\p{Nd}_]*$/u.test(word);

/**
 * A day as ISO 8601, from `2027-03-19`, `2027/3/19` or `2027.3.19`: the year comes first. Null for anything else: a spreadsheet of another country
 * writes day and month the other way round, and nobody could tell.
 */
export function isoDay(text: string): string | null {
  const match = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/.exec(text.normalize('NFKC').trim());
  if (!match) return null;
  const [year, month, day] = [Number(match[1]), Number(match[3]), Number(match[4])];
  const date = new Date(Date.UTC(year, month - 1, day));
  const real = year >= 1900 && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return real ? date.toISOString().slice(0, 10) : null;
}

export function dueDay(text: string): Value<string> {
  const day = isoDay(text);
  return day === null ? { ok: false, takes: { value: 'day' } } : { ok: true, value: day };
}

/** What a key of `due` means; `stage` null: the last one. Null for a text that is neither a stage nor a cut. */
export function dueKey(
  text: string,
  stages: readonly string[],
): { readonly stage: string | null; readonly cut: string | null } | null {
  const words = text.normalize('NFKC').trim().split(/\s+/);
  const [first = '', second] = words;
  if (words.length > 2) return null;
  if (stages.includes(first))
    return second === undefined || isCut(second) ? { stage: first, cut: second ?? null } : null;
  return second === undefined && isCut(first) ? { stage: null, cut: first } : null;
}

const UNITS: readonly RateUnit[] = ['cut', 'key', 'in-between', 'drawing', 'second', 'foot'];

/** `230 yen per drawing`, `2.50 EUR per key`: the currency is any word. */
export function rate(text: string): Value<Rate> {
  const takes = { value: 'rate', units: UNITS } as const;
  const match = /^(\d{1,9})(?:\.(\d{1,4}))? ?([^\s\d]+) per (\S+)$/u.exec(
    text.normalize('NFC').trim().replace(/\s+/g, ' '),
  );
  const unit = UNITS.find((one) => one === match?.[4]);
  if (!match || unit === undefined) return { ok: false, takes };
  const [, whole, decimals = '', currency] = match;
  return {
    ok: true,
    value: {
      amount: Number(`${whole}${decimals}`),
      decimals: decimals.length,
      currency: currency!,
      unit,
    },
  };
}

/**
 * `2.50 EUR per drawing` for `2,50 EUR per drawing`, `1200 yen per cut` for `1,200 yen per cut`: three digits behind a comma are
 * thousands, others decimals. Null where there is no such comma, or where it is no rate even so.
 */
export function pointFor(text: string): string | null {
  const typed = text.normalize('NFKC').trim();
  const written = typed.replace(/^(\d+)\s?,\s?(\d+)/, (_, whole: string, behind: string) =>
    behind.length === 3 ? whole + behind : `${whole}.${behind}`,
  );
  return written !== typed && rate(written).ok ? written : null;
}
