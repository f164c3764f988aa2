/** Names in story order; takes each apart only once. */
export function sortNaturally(names: readonly string[]): string[] {
  const taken = names.map((name) => ({ name, parts: parts(name) }));
  return taken.sort((a, b) => compare(a.name, b.name, a.parts, b.parts)).map(({ name }) => name);
}

/** Story order of names: runs of digits compare as numbers, so 2 stands before 10, and 12A after 12. */
export function compareNaturally(a: string, b: string): number {
  return compare(a, b, parts(a), parts(b));
}

function compare(a: string, b: string, left: readonly string[], right: readonly string[]): number {
  for (let i = 0; i < Math.max(left.length, right.length); i++) {
    const x = left[i];
    const y = right[i];
    if (x === undefined) return -1;
    if (y === undefined) return 1;
    if (x === y) continue;
    const digits = isDigits(x) && isDigits(y);
    if (digits) {
      const one = strip(x);
      const two = strip(y);
      if (one.length !== two.length) return one.length - two.length;
      if (one !== two) return one < two ? -1 : 1;
      continue;
    }
    return x < y ? -1 : 1;
  }
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Folder by folder, and within a name by its runs of digits; the ending `.cut` does not count. */
function parts(name: string): string[] {
  return name.replace(/\.cut$/, '').match(/\d+|[^\d/]+|\//g) ?? [];
}

function isDigits(text: string): boolean {
  return /^\d/.test(text);
}

function strip(digits: string): string {
  return digits.replace(/^0+(?=\d)/, '');
}
