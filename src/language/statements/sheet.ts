/** Words on the sheet: dialogue, sound, notes, memos, who and which. */

import type { Kit } from '../kit.js';
import type { Shared } from '../shared.js';
import { At, word } from '../tokens.js';
import type { Quote, Said, StatementOf, Word } from '../tree.js';
import { type StatementRule, statement } from './statement.js';

const OFF = word('off');
const MONO = word('mono');

/** Pieces of text, any of them tied to a row: `"Wait" @1+14 "for" @1+20 "me!"`. */
function said(kit: Kit, { position, text }: Shared): Said[] {
  const words: Said[] = [];
  kit.AT_LEAST_ONE({
    DEF: () => {
      const at = kit.OPTION4(() => {
        kit.CONSUME4(At);
        return kit.SUBRULE3(position);
      });
      const quote = kit.SUBRULE3(text);
      words.push({ ...quote, at: at ?? null });
    },
    ERR_MSG: 'quoted-words',
  });
  return words;
}

/** `3`, `3B`, `"3 of 5"`. */
function labelOrText(kit: Kit, { label, text }: Shared): Word | Quote {
  return kit.OR<Word | Quote>({
    DEF: [{ ALT: () => kit.SUBRULE(label) }, { ALT: () => kit.SUBRULE(text) }],
    ERR_MSG: 'scene-number',
  });
}

export const sheetStatements: readonly StatementRule[] = [
  statement('voice', 'voice "Nao" 1+6..2+20 "Wait for me!"', (kit, shared) => {
    const manner = kit.RULE('manner', (): StatementOf<'voice'>['manner'] => {
      const token = kit.OR([{ ALT: () => kit.CONSUME(OFF) }, { ALT: () => kit.CONSUME(MONO) }]);
      return token.tokenType === OFF ? 'off' : 'mono';
    });
    return () => ({
      kind: 'voice',
      speaker: kit.SUBRULE(shared.text),
      manner: kit.OPTION(() => kit.SUBRULE(manner)) ?? 'on',
      range: kit.SUBRULE(shared.range),
      words: said(kit, shared),
    });
  }),
  statement('sound', 'sound 3+1..3+8 "door slams"', (kit, shared) => () => ({
    kind: 'sound',
    range: kit.SUBRULE(shared.range),
    words: said(kit, shared),
  })),
  statement('music', 'music 1+1..5+0 "theme, softly"', (kit, shared) => () => ({
    kind: 'music',
    range: kit.SUBRULE(shared.range),
    words: said(kit, shared),
  })),
  statement('note', 'note 2+12 "glance at the door"', (kit, { position, text }) => () => ({
    kind: 'note',
    position: kit.SUBRULE(position),
    text: kit.SUBRULE(text),
  })),
  statement('memo', 'memo "Wind from screen left throughout."', (kit, { text }) => () => ({
    kind: 'memo',
    text: kit.SUBRULE(text),
  })),
  statement('scene', 'scene 3', (kit, shared) => () => ({ kind: 'scene', value: labelOrText(kit, shared) })),
  statement('take', 'take 2', (kit, shared) => () => ({ kind: 'take', value: labelOrText(kit, shared) })),
  statement('artist', 'artist "M. Arai"', (kit, { text }) => () => ({
    kind: 'artist',
    name: kit.SUBRULE(text),
  })),
];
