/** Levels: their order, their paper, their finished numbers, and what is shared between texts. */

import { diagnose, type Span } from '../diagnostic.js';
import { Between, Greater, Key, Slash, type Token, Underscore, word } from '../tokens.js';
import type { CelName, CutLevel, Point, Quote, Size, Word } from '../tree.js';
import { moveRules } from './move-rules.js';
import { betweenName, keyName, type StatementRule, statement } from './statement-rule.js';

const SIZE = word('size');
const AT = word('at');
const FREE = word('free');
const CARRY = word('carry');
const REUSE = word('reuse');
const FLASH = word('flash');
const PICTURE = word('picture');
const WITH = word('with');
const MASKS = word('masks');

/** What a `level` statement says of its level, in any order, each once. */
interface LevelParts {
  size: Size | null;
  at: Point | null;
  free: Span | null;
  carry: Span | null;
  flash: Span | null;
  reuse: CutLevel | null;
  picture: Quote | null;
  with: readonly Word[] | null;
  masks: readonly Word[] | null;
}

export const levelStatements: readonly StatementRule[] = [
  statement('stack', 'stack BG A BOOK1 B', (dsl, { names }) => () => ({
    kind: 'stack',
    levels: dsl.SUBRULE(names),
  })),

  statement(
    'level',
    'level BG size 560x200mm at 130,0',
    (dsl, shared) => {
      const { name, size, point, label, text } = shared;
      const { list } = moveRules(dsl, shared);
      const cutLevel = dsl.RULE('cutLevel', (): CutLevel => {
        const first = dsl.LA(1);
        const cut = dsl.SUBRULE(label);
        dsl.CONSUME(Slash, { ERR_MSG: 'cut-level' });
        const level = dsl.SUBRULE(name);
        return { span: dsl.since(first), cut: cut.text, level: level.text };
      });
      return () => {
        const level = dsl.SUBRULE(name);
        const parts: LevelParts = {
          size: null,
          at: null,
          free: null,
          carry: null,
          flash: null,
          reuse: null,
          picture: null,
          with: null,
          masks: null,
        };
        const put = <K extends keyof LevelParts>(key: K, token: Token, value: LevelParts[K]): void => {
          dsl.ACTION(() => {
            if (parts[key] === null) parts[key] = value;
            else dsl.report(diagnose('part-twice', dsl.since(token), { part: key, of: 'level' }));
          });
        };
        dsl.MANY(() =>
          dsl.OR([
            {
              ALT: () => {
                const token = dsl.CONSUME(SIZE);
                put('size', token, dsl.SUBRULE(size));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(AT);
                put('at', token, dsl.SUBRULE(point));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(FREE);
                put('free', token, dsl.place(token));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(CARRY);
                put('carry', token, dsl.place(token));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(FLASH);
                put('flash', token, dsl.place(token));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(REUSE);
                put('reuse', token, dsl.SUBRULE(cutLevel));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(PICTURE);
                put('picture', token, dsl.SUBRULE(text));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(WITH);
                put('with', token, dsl.SUBRULE(list));
              },
            },
            {
              ALT: () => {
                const token = dsl.CONSUME(MASKS);
                put('masks', token, dsl.SUBRULE(list));
              },
            },
          ]),
        );
        return { kind: 'level', level, ...parts };
      };
    },
    { defines: true },
  ),

  statement('cels', 'cels A 1 1.1 1.2 2', (dsl, { name }) => {
    const celName = dsl.RULE('celName', () =>
      dsl.OR<CelName>({
        DEF: [
          {
            ALT: () => {
              const token = dsl.CONSUME(Key);
              const later = dsl.OPTION(() => {
                dsl.CONSUME(Greater);
                return dsl.CONSUME(Between);
              });
              const key = keyName(token.image);
              const span = dsl.since(token);
              return dsl.ACTION(
                (): CelName =>
                  later
                    ? { span, form: 'between', ...betweenName(later.image, key) }
                    : { span, form: 'key', name: key },
              );
            },
          },
          {
            ALT: (): CelName => {
              const token = dsl.CONSUME(Between);
              return { span: dsl.place(token), form: 'between', ...betweenName(token.image) };
            },
          },
          { ALT: (): CelName => ({ span: dsl.place(dsl.CONSUME(Underscore)), form: 'unused' }) },
        ],
        ERR_MSG: 'drawing-name',
      }),
    );
    return () => {
      const level = dsl.SUBRULE(name);
      const names: CelName[] = [];
      dsl.AT_LEAST_ONE({
        DEF: () => void names.push(dsl.SUBRULE(celName)),
        ERR_MSG: 'drawing-names',
      });
      return { kind: 'cels', level, names };
    };
  }),

  statement('numbering', 'numbering frame', (dsl, { name }) => () => ({
    kind: 'numbering',
    value: dsl.SUBRULE(name),
  })),
  statement('use', 'use "house.cut"', (dsl, { text }) => () => ({ kind: 'use', path: dsl.SUBRULE(text) })),
];
