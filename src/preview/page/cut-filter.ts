/** Which cuts of the list are shown. Pure. */

/** Whether each word that was typed stands in the number, the title or the file of a cut; `1` finds cut 1 first, and 12 too. */
export function fitsFilter(
  cut: { readonly number: string; readonly title: string; readonly file: string },
  typed: string,
): boolean {
  const text = folded(`${cut.number} ${cut.title} ${cut.file}`);
  return folded(typed)
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** Full-width letters as their ASCII twins, no capitals. */
const folded = (text: string): string => text.normalize('NFKC').toLowerCase().trim();
