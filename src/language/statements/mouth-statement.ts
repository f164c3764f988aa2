/** A level that shows the mouth of a speaker: which drawing for which sound. */

import { diagnose, type Span } from '../diagnostic.js';
import type { ParsingDsl } from '../shared-rules.js';
import { isKind, Key, type Token, type TokenType, word } from '../tokens.js';
import type { MouthDrawing, Numeral, Word } from '../tree.js';
import { keyName, statement } from './statement-rule.js';

const ON = word('on');
const LEAD = word('lead');
const FLAPS = word('flaps');
const OPTIONS: ReadonlySet<TokenType> = new Set([ON, LEAD, FLAPS]);

/** What stands behind the drawings, in any order, each once. */
interface MouthOptions {
  on: Numeral | null;
  lead: Numeral | null;
  flaps: Span | null;
}

function keyOf(dsl: ParsingDsl, token: Token): Word {
  return { span: dsl.place(token), text: keyName(token.image) };
}

export const mouthStatement = statement(
  'mouth',
  'mouth C "Nao" 1 2 3',
  (dsl, { name, text, whole }) => {
    const mouthDrawing = dsl.RULE('mouthDrawing', (): MouthDrawing => {
      const first = dsl.LA(1);
      const vowel = dsl.OPTION(() => dsl.SUBRULE(name));
      const key = dsl.CONSUME(Key, { ERR_MSG: 'drawing-name' });
      return { span: dsl.since(first), key: keyOf(dsl, key), vowel: vowel ?? null };
    });
    /** A key, or a vowel with a key behind it; a word alone is a slip for an option. */
    const drawingFollows = (): boolean =>
      !OPTIONS.has(dsl.LA(1).type) && [dsl.LA(1), dsl.LA(2)].some((token) => isKind(token, Key));
    return () => {
      const level = dsl.SUBRULE(name);
      const speaker = dsl.SUBRULE(text);
      const closed = dsl.CONSUME(Key, { ERR_MSG: 'drawing-name' });
      const drawings: MouthDrawing[] = [{ span: dsl.place(closed), key: keyOf(dsl, closed), vowel: null }];
      dsl.MANY({
        GATE: drawingFollows,
        DEF: () => void drawings.push(dsl.SUBRULE(mouthDrawing)),
      });
      const parts: MouthOptions = { on: null, lead: null, flaps: null };
      const put = <K extends keyof MouthOptions>(key: K, token: Token, value: MouthOptions[K]): void => {
        dsl.ACTION(() => {
          if (parts[key] === null) parts[key] = value;
          else dsl.report(diagnose('part-twice', dsl.since(token), { part: key, of: 'mouth' }));
        });
      };
      dsl.MANY(() =>
        dsl.OR([
          {
            ALT: () => {
              const token = dsl.CONSUME(ON);
              put('on', token, dsl.SUBRULE(whole));
            },
          },
          {
            ALT: () => {
              const token = dsl.CONSUME(LEAD);
              put('lead', token, dsl.SUBRULE(whole));
            },
          },
          {
            ALT: () => {
              const token = dsl.CONSUME(FLAPS);
              put('flaps', token, dsl.place(token));
            },
          },
        ]),
      );
      return { kind: 'mouth', level, speaker, drawings, ...parts };
    };
  },
  { defines: true },
);
