/** How levels of a cut hang together: drawn to one another, and masks. */

import type { Level } from '../shot/shot.js';
import type { SheetWords } from '../words/sheet-words.js';

/** Over the column of a level: what it is drawn to, what it masks, what masks it. */
export function relationsOf(name: string, levels: readonly Level[], words: SheetWords): string[] {
  const own = levels.find((level) => level.name === name);
  const maskers = levels.filter(({ masks }) => masks.includes(name)).map((level) => level.name);
  const told = (others: readonly string[], say: (others: string) => string): string[] =>
    others.length > 0 ? [say(others.join(','))] : [];
  return [
    ...told(own?.drawnWith ?? [], words.drawnWith),
    ...told(own?.masks ?? [], words.maskOf),
    ...told(maskers, words.maskedBy),
  ];
}

/** Lines of the memo: each pair once, masks from the bottom of the stack to its top. */
export function relationLines(levels: readonly Level[], words: SheetWords): string[] {
  const pairs = levels.flatMap(({ name, drawnWith }, i) =>
    drawnWith
      .filter((other) => levels.findIndex((level) => level.name === other) > i)
      .map((other) => words.drawnTogether([name, other])),
  );
  const masks = levels.flatMap(({ name, masks: others }) =>
    others.length > 0 ? [words.masks(name, others)] : [],
  );
  return [...pairs, ...masks];
}
