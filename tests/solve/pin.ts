/** A text with the numbers of all its drawings pinned, as `number` writes it. */

import { celsEdits } from '../../src/language/cels-line.js';
import { parse } from '../../src/language/parse.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { pinsFor } from '../../src/solve/cels-lines.js';
import { solveText } from './shown.js';

export function pin(text: string): string {
  const { solved } = solveText(text);
  const added = new Map(pinsFor(solved).map(({ level, names }) => [level, names]));
  const edits = celsEdits(text, parse('this.cut', text).tree, added);
  return withEdits(
    text,
    edits.map((edit) => ({ ...edit.span, text: edit.text })),
  );
}
