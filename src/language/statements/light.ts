/** Light, exposure and the joins to the neighbouring cuts. */

import { tokenMatcher } from 'chevrotain';
import type { Kit } from '../kit.js';
import { Comma, DotDot, Greater, Name, word } from '../tokens.js';
import { movingRules } from './spacing.js';
import { type StatementRule, statement } from './statement.js';

const IN = word('in');
const OUT = word('out');
const WHITE = word('white');

function wayRule(kit: Kit, named: string) {
  return kit.RULE(named, (): 'in' | 'out' => {
    const token = kit.OR({
      DEF: [{ ALT: () => kit.CONSUME(IN) }, { ALT: () => kit.CONSUME(OUT) }],
      ERR_MSG: 'in-or-out',
    });
    return kit.ACTION(() => (token.image === 'in' ? 'in' : 'out'));
  });
}

export const lightStatements: readonly StatementRule[] = [
  statement('fade', 'fade in 1..24', (kit, { range }) => {
    const way = wayRule(kit, 'fadeWay');
    return () => {
      const which = kit.SUBRULE(way);
      const early = kit.OPTION({
        GATE: () => kit.LA(2).tokenType !== DotDot,
        DEF: () => kit.place(kit.CONSUME(WHITE)),
      });
      const frames = kit.SUBRULE1(range);
      const late = kit.OPTION1(() => kit.place(kit.CONSUME1(WHITE)));
      return { kind: 'fade', way: which, white: early ?? late ?? null, range: frames };
    };
  }),

  statement('expose', 'expose B 0%>100% 1..24', (kit, shared) => {
    const { list, percent } = movingRules(kit, shared);
    return () => {
      const levels = kit.SUBRULE(list);
      const from = kit.SUBRULE1(percent);
      const to =
        kit.OPTION(() => {
          kit.CONSUME(Greater);
          return kit.SUBRULE2(percent);
        }) ?? null;
      return { kind: 'expose', levels, from, to, range: kit.SUBRULE3(shared.range) };
    };
  }),

  statement('glow', 'glow C 1+1..2+0', (kit, shared) => {
    const { list } = movingRules(kit, shared);
    return () => ({ kind: 'glow', levels: kit.SUBRULE(list), range: kit.SUBRULE1(shared.range) });
  }),

  statement('effect', 'effect "heat haze" A,B 1..5+0', (kit, shared) => {
    const { list } = movingRules(kit, shared);
    /** A name here is a level where another name or a number follows; else it is a mark that begins the range. */
    const levelsFollow = (): boolean => {
      const next = kit.LA(2);
      return next.tokenType === Comma || tokenMatcher(next, Name) || /^\d/.test(next.image);
    };
    return () => ({
      kind: 'effect',
      text: kit.SUBRULE(shared.text),
      levels: kit.OPTION({ GATE: levelsFollow, DEF: () => kit.SUBRULE1(list) }) ?? [],
      range: kit.SUBRULE2(shared.range),
    });
  }),

  statement('overlap', 'overlap out 24', (kit, { length }) => {
    const way = wayRule(kit, 'overlapWay');
    return () => ({ kind: 'overlap', way: kit.SUBRULE(way), length: kit.SUBRULE1(length) });
  }),
];
