/** Lines of a terminal in a script without blanks between its words. */

import { displayWidth } from './source.js';

/** No line begins with one of these, and none ends with one of those. */
const NOT_FIRST = /^[、。，．）」』：；？！ー～…ぁぃぅぇぉっゃゅょァィゥェォッャュョ)]/;
const NOT_LAST = /[（「『(]$/;

/** Broken by columns of the terminal: between any two Japanese characters, and at blanks, but never in what stands in backticks. */
export const wrapped = (text: string, width: number): string => {
  const units: string[] = [];
  for (const piece of text.match(/`[^`]*` *|[!-_a-~]+ *|\s+|./gu) ?? []) {
    const last = units.at(-1);
    if (last !== undefined && (NOT_FIRST.test(piece) || NOT_LAST.test(last)))
      units[units.length - 1] = last + piece;
    else units.push(piece);
  }
  const lines: string[] = [];
  let line = '';
  for (const unit of units) {
    if (line.trim() !== '' && displayWidth(line + unit.trimEnd()) > width) {
      lines.push(line.trimEnd());
      line = unit.trimStart();
    } else line += unit;
  }
  return [...lines, line.trimEnd()].join('\n');
};
