/** Names of scans, in which `{cut}`, `{level}` and `{number}` stand for what is wanted: `scans/{cut:3}/{level}{number:4}.png`. */

/** What may stand in braces. */
export const SCAN_PARTS = ['cut', 'level', 'number'] as const;
type ScanPart = (typeof SCAN_PARTS)[number];

export interface WantedScan {
  /** The cut's number as written. */
  readonly cut: string;
  readonly level: string;
  /** The drawing's finished number; null for a level that is simply there: then nothing stands in its place. */
  readonly number: number | null;
}

const BRACES = /\{([^{}]*)\}|[{}]/g;

/** The first thing in braces that has no meaning, as it is written; null where all have one. */
export function unknownPart(name: string): string | null {
  for (const [whole, inner] of name.matchAll(BRACES)) if (!partOf(inner)) return whole;
  return null;
}

/** The name of one scan. A number of digits, as in `{number:4}`, fills up with zeros; letters behind a cut's number are left alone. */
export function scanName(name: string, wanted: WantedScan): string {
  return name.replace(BRACES, (whole, inner: string | undefined) => {
    const part = partOf(inner);
    if (!part) return whole;
    const value = wanted[part.name];
    return value === null ? '' : String(value).replace(/^\d+/, (digits) => digits.padStart(part.digits, '0'));
  });
}

function partOf(inner: string | undefined): { readonly name: ScanPart; readonly digits: number } | null {
  const [, word, digits] = /^(\w+)(?::([1-9]))?$/.exec(inner ?? '') ?? [];
  const name = SCAN_PARTS.find((one) => one === word);
  if (!name) return null;
  return { name, digits: Number(digits ?? 0) };
}
