/** The stretches of rows that the words of a line are spread over. */

import type { Spoken, SpokenPart } from './shot.js';

/** Words and the rows that they are spread over, both ends included. */
export interface WordStretch {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** Whether its first word is known to begin on the row `from`; every other word is only spread. */
  readonly tied: boolean;
  /** The parts of the line that it is made of, and the offset in `text` at which each begins. */
  readonly parts: readonly { readonly part: SpokenPart; readonly offset: number }[];
}

/**
 * Words tied to a row begin a stretch there; the others go on with the stretch before them. A line with ties was read, so its first word
 * begins on its first row.
 */
export function wordStretches({ frames, parts }: Spoken): WordStretch[] {
  const read = parts.some(({ frame }) => frame !== null);
  const begun: { from: number; tied: boolean; texts: string[]; parts: SpokenPart[] }[] = [];
  for (const part of parts) {
    const text = part.text.replace(/\s+/gu, ' ').trim();
    const last = begun.at(-1);
    if (last && (part.frame === null || part.frame === last.from)) {
      last.texts.push(text);
      last.parts.push(part);
    } else begun.push({ from: part.frame ?? frames.from, tied: read, texts: [text], parts: [part] });
  }
  return begun
    .map(({ from, tied, texts, parts: own }, i): WordStretch => {
      let text = '';
      const placed = own.map((part, k) => {
        const gap = text !== '' && texts[k] !== '' ? ' ' : '';
        const offset = text.length + gap.length;
        text += gap + texts[k];
        return { part, offset };
      });
      return { from, to: (begun[i + 1]?.from ?? frames.to + 1) - 1, text, tied, parts: placed };
    })
    .filter((stretch) => stretch.text !== '' && stretch.to >= stretch.from);
}
