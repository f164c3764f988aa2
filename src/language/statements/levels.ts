/** Levels: their order, their paper, their finished numbers, and what is shared between texts. */

import type { IToken } from 'chevrotain';
import { diagnose, type Span } from '../diagnostic.js';
import { Between, Greater, Key, Slash, Underscore, word } from '../tokens.js';
import type { CelName, CutLevel, Point, Size } from '../tree.js';
import { betweenName, keyName } from './drawings.js';
import { type StatementRule, statement } from './statement.js';

const SIZE = word('size');
const AT = word('at');
const FREE = word('free');
const CARRY = word('carry');
const REUSE = word('reuse');
const FLASH = word('flash');

/** What a `level` statement says of its level, in any order, each once. */
interface LevelParts {
  size: Size | null;
  at: Point | null;
  free: Span | null;
  carry: Span | null;
  flash: Span | null;
  reuse: CutLevel | null;
}

export const levelStatements: readonly StatementRule[] = [
  statement('stack', 'stack BG A BOOK1 B', (kit, { names }) => () => ({
    kind: 'stack',
    levels: kit.SUBRULE(names),
  })),

  statement(
    'level',
    'level BG size 560x200mm at 130,0',
    (kit, { name, size, point, label }) => {
      const cutLevel = kit.RULE('cutLevel', (): CutLevel => {
        const first = kit.LA(1);
        const cut = kit.SUBRULE(label);
        kit.CONSUME(Slash, { ERR_MSG: 'cut-level' });
        const level = kit.SUBRULE(name);
        return { span: kit.since(first), cut: cut.text, level: level.text };
      });
      return () => {
        const level = kit.SUBRULE1(name);
        const parts: LevelParts = { size: null, at: null, free: null, carry: null, flash: null, reuse: null };
        const put = <K extends keyof LevelParts>(key: K, token: IToken, value: LevelParts[K]): void => {
          kit.ACTION(() => {
            if (parts[key] === null) parts[key] = value;
            else kit.report(diagnose('part-twice', kit.since(token), { part: key, of: 'level' }));
          });
        };
        kit.MANY(() =>
          kit.OR([
            {
              ALT: () => {
                const token = kit.CONSUME(SIZE);
                put('size', token, kit.SUBRULE(size));
              },
            },
            {
              ALT: () => {
                const token = kit.CONSUME(AT);
                put('at', token, kit.SUBRULE(point));
              },
            },
            {
              ALT: () => {
                const token = kit.CONSUME(FREE);
                put('free', token, kit.place(token));
              },
            },
            {
              ALT: () => {
                const token = kit.CONSUME(CARRY);
                put('carry', token, kit.place(token));
              },
            },
            {
              ALT: () => {
                const token = kit.CONSUME(FLASH);
                put('flash', token, kit.place(token));
              },
            },
            {
              ALT: () => {
                const token = kit.CONSUME(REUSE);
                put('reuse', token, kit.SUBRULE(cutLevel));
              },
            },
          ]),
        );
        return { kind: 'level', level, ...parts };
      };
    },
    { defines: true },
  ),

  statement('cels', 'cels A 1 1.1 1.2 2', (kit, { name }) => {
    const celName = kit.RULE('celName', () =>
      kit.OR<CelName>({
        DEF: [
          {
            ALT: () => {
              const token = kit.CONSUME(Key);
              const later = kit.OPTION(() => {
                kit.CONSUME(Greater);
                return kit.CONSUME(Between);
              });
              const key = keyName(token.image);
              const span = kit.since(token);
              return kit.ACTION(
                (): CelName =>
                  later
                    ? { span, form: 'between', ...betweenName(later.image, key) }
                    : { span, form: 'key', name: key },
              );
            },
          },
          {
            ALT: (): CelName => {
              const token = kit.CONSUME1(Between);
              return { span: kit.place(token), form: 'between', ...betweenName(token.image) };
            },
          },
          { ALT: (): CelName => ({ span: kit.place(kit.CONSUME(Underscore)), form: 'unused' }) },
        ],
        ERR_MSG: 'drawing-name',
      }),
    );
    return () => {
      const level = kit.SUBRULE(name);
      const names: CelName[] = [];
      kit.AT_LEAST_ONE({
        DEF: () => void names.push(kit.SUBRULE(celName)),
        ERR_MSG: 'drawing-names',
      });
      return { kind: 'cels', level, names };
    };
  }),

  statement('numbering', 'numbering frame', (kit, { name }) => () => ({
    kind: 'numbering',
    value: kit.SUBRULE(name),
  })),
  statement('use', 'use "house.cut"', (kit, { text }) => () => ({ kind: 'use', path: kit.SUBRULE(text) })),
];
