/** Names that an edit list can call cuts by. */

/** Characters of a reel's name. */
const LENGTH = 8;
/** What edit lists call black and what has no reel. */
const TAKEN = ['BL', 'AX'];

/**
 * For each cut a name of its own, of at most eight capital letters and digits: `C` and the number. What the format has no letters for
 * is left out; a name that is too long keeps its end, and one that is taken gets a number.
 */
export function reelsOf(cuts: readonly string[]): string[] {
  const taken = new Set(TAKEN);
  return cuts.map((cut) => {
    const letters = cut
      .normalize('NFKC')
      .toUpperCase()
      .replace(/[^A-Z0-9]/g, '');
    const name = `C${letters.slice(1 - LENGTH)}`;
    let free = name;
    for (let i = 2; taken.has(free); i++) free = `${name.slice(0, LENGTH - 1 - String(i).length)}X${i}`;
    taken.add(free);
    return free;
  });
}
