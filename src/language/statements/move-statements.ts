/**
 * The moves of the camera and of the levels: one entry a move. A new kind begins here; from then on nothing compiles until it has
 * its entry in every table that needs one.
 */

import { diagnose } from '../diagnostic.js';
import type { Rule } from '../grammar-rule.js';
import { millimetres, type ParsingDsl, type SharedRules } from '../shared-rules.js';
import {
  At,
  Close,
  Comma,
  Dash,
  Decimal,
  Degrees,
  Greater,
  Integer,
  Length,
  Open,
  Rate,
  word,
} from '../tokens.js';
import type { Numeral, Range, Word } from '../tree.js';
import type {
  DirectionNode,
  MarkedPlace,
  MoveParts,
  MoveStatement,
  StopValue,
  WayNode,
} from '../tree-camera.js';
import { type Legs, legsOf, markedNumber, moveRules, type Tail } from './move-rules.js';
import { type StatementRule, statement } from './statement-rule.js';

/** In the text `truck level` is a truck of levels. */
export type MoveKind =
  | 'pan'
  | 'truck'
  | 'pull'
  | 'follow'
  | 'slide'
  | 'levelTruck'
  | 'turn'
  | 'shake'
  | 'sway';

/** The first words of moves. */
export type MoveWord = Exclude<MoveKind, 'levelTruck'>;

type Read = Omit<MoveStatement, 'span' | 'word'>;

/** A move that goes from place to place. */
const fromPlaceToPlace = (
  kind: MoveKind,
  levels: readonly Word[],
  { from, legs, options }: Legs<StopValue>,
  parts: Partial<MoveParts> = {},
): Read => ({ kind, levels, parts, from, legs, range: null, spacing: [], options });

/** A move that runs for a while. */
const duringRange = (
  kind: MoveKind,
  levels: readonly Word[],
  range: Range,
  { spacing, options }: Tail,
  parts: Partial<MoveParts>,
): Read => ({ kind, levels, parts, from: null, legs: [], range, spacing, options });

const QUICK = word('quick');
const LEVEL = word('level');
const EVERY = word('every');
const DIRECTIONS = (['left', 'right', 'up', 'down'] as const).map((text) => ({ text, kind: word(text) }));

/** `level` before the names of levels, not a field called so: `truck level@1 > …`. */
const levelFollows = (dsl: ParsingDsl) => (): boolean => dsl.LA(1).type === LEVEL && dsl.LA(2).type !== At;
const quickFollows = (dsl: ParsingDsl) => (): boolean => dsl.LA(1).type === QUICK && dsl.LA(2).type !== At;

/** `right`, `30deg`: where to. */
function directionRule(kind: 'pan' | 'pull' | 'follow', dsl: ParsingDsl): Rule<DirectionNode> {
  return dsl.RULE(`${kind}Direction`, () =>
    dsl.OR<DirectionNode>({
      DEF: [
        ...DIRECTIONS.map(({ text, kind: token }) => ({
          ALT: (): DirectionNode => ({ span: dsl.place(dsl.CONSUME(token)), form: 'word', word: text }),
        })),
        {
          ALT: (): DirectionNode => {
            const token = dsl.CONSUME(Degrees);
            return { span: dsl.place(token), form: 'angle', degrees: Number.parseFloat(token.image) };
          },
        },
      ],
      ERR_MSG: 'direction',
    }),
  );
}

/** The rules of a pull or a follow: levels, direction, way, range. */
function dragged<K extends 'pull' | 'follow'>(kind: K, dsl: ParsingDsl, shared: SharedRules) {
  const { list, tail } = moveRules(dsl, shared);
  const direction = directionRule(kind, dsl);
  const way = dsl.RULE(`${kind}Way`, () =>
    dsl.OR<WayNode>({
      DEF: [
        {
          ALT: (): WayNode => {
            const token = dsl.CONSUME(Rate);
            return { span: dsl.place(token), form: 'rate', mm: millimetres(token.image.replace('/f', '')) };
          },
        },
        ...[Length, Integer, Decimal].map((one) => ({
          ALT: (): WayNode => {
            const token = dsl.CONSUME(one);
            return { span: dsl.place(token), form: 'distance', mm: millimetres(token.image) };
          },
        })),
      ],
      ERR_MSG: 'way',
    }),
  );
  return () => {
    const levels = dsl.SUBRULE(list);
    const parts = { direction: dsl.SUBRULE(direction), way: dsl.SUBRULE(way) };
    const range = dsl.SUBRULE(shared.range);
    return duringRange(kind, levels, range, dsl.SUBRULE(tail), parts);
  };
}

const rules: { readonly [W in MoveWord]: StatementRule } = {
  pan: statement('pan', 'pan A@1+1 > B@5+0', (dsl, shared) => {
    const legs = legsOf(dsl, shared, 'pan', shared.name, true, directionRule('pan', dsl));
    return () => fromPlaceToPlace('pan', [], dsl.SUBRULE(legs));
  }),

  truck: statement('truck', 'truck A@1 > B@3+0', (dsl, shared) => {
    const { list, percent } = moveRules(dsl, shared);
    const camera = legsOf(dsl, shared, 'truck', shared.name);
    const scale = legsOf(dsl, shared, 'scale', markedNumber(dsl, shared, 'markedScale', percent));
    return () => {
      const quick = dsl.OPTION({ GATE: quickFollows(dsl), DEF: () => dsl.place(dsl.CONSUME(QUICK)) }) ?? null;
      const levels = dsl.OPTION({
        GATE: levelFollows(dsl),
        DEF: () => {
          const token = dsl.CONSUME(LEVEL);
          return { token, names: dsl.SUBRULE(list) };
        },
      });
      return dsl.OR<Read>({
        DEF: [
          {
            GATE: () => levels !== undefined,
            ALT: () => {
              const legs = dsl.SUBRULE(scale);
              dsl.ACTION(() => {
                if (quick)
                  dsl.report(
                    diagnose(
                      'quick-level',
                      quick,
                      {},
                      {
                        fix: {
                          action: 'leave-quick-out',
                          edits: [{ span: { ...quick, end: levels!.token.start }, text: '' }],
                        },
                      },
                    ),
                  );
              });
              return fromPlaceToPlace('levelTruck', levels?.names ?? [], legs);
            },
          },
          {
            GATE: () => levels === undefined,
            ALT: () => fromPlaceToPlace('truck', [], dsl.SUBRULE(camera), quick ? { quick } : {}),
          },
        ],
        ERR_MSG: levels ? 'scale-on-frame' : 'field-on-frame',
      });
    };
  }),

  pull: statement('pull', 'pull BG down 0.8mm/f 13..4+0', (dsl, shared) => dragged('pull', dsl, shared)),
  follow: statement('follow', 'follow A up 1.2mm/f 9..3+12', (dsl, shared) => dragged('follow', dsl, shared)),

  slide: statement('slide', 'slide A ア(0,0)@1 > エ(-120,0)@6+0', (dsl, shared) => {
    const { list } = moveRules(dsl, shared);
    const place = dsl.RULE('markedPlace', (): MarkedPlace => {
      const first = dsl.LA(1);
      const label = dsl.OPTION(() => dsl.SUBRULE(shared.name)) ?? null;
      dsl.CONSUME(Open, { ERR_MSG: 'marked-place' });
      const x = dsl.SUBRULE(shared.signed);
      dsl.CONSUME(Comma, { ERR_MSG: 'marked-place-comma' });
      const y = dsl.SUBRULE(shared.signed);
      dsl.CONSUME(Close);
      return { span: dsl.since(first), label, xMm: x.value, yMm: y.value };
    });
    const legs = legsOf(dsl, shared, 'slide', place, true);
    return () => {
      const levels = dsl.SUBRULE(list);
      return fromPlaceToPlace('slide', levels, dsl.SUBRULE(legs));
    };
  }),

  turn: statement('turn', 'turn level A 0@1 > 360@2+0 cw about 0,0', (dsl, shared) => {
    const { list, degrees } = moveRules(dsl, shared);
    const angle = dsl.RULE('angle', (): Numeral => {
      const first = dsl.LA(1);
      const minus = dsl.OPTION(() => dsl.CONSUME(Dash));
      const { value } = dsl.SUBRULE(degrees);
      return { span: dsl.since(first), value: minus && value !== 0 ? -value : value };
    });
    const legs = legsOf(dsl, shared, 'turn', markedNumber(dsl, shared, 'markedAngle', angle));
    return () => {
      dsl.CONSUME(LEVEL, { ERR_MSG: 'turning-levels' });
      const levels = dsl.SUBRULE(list);
      return fromPlaceToPlace('turn', levels, dsl.SUBRULE(legs));
    };
  }),

  shake: statement('shake', 'shake 4mm>0mm 1+1..1+12', (dsl, shared) => {
    const { measure, tail } = moveRules(dsl, shared);
    return () => {
      const size = dsl.SUBRULE(measure);
      const lastSize = dsl.OPTION(() => {
        dsl.CONSUME(Greater);
        return dsl.SUBRULE(measure);
      });
      const range = dsl.SUBRULE(shared.range);
      return duringRange('shake', [], range, dsl.SUBRULE(tail), { size, ...(lastSize && { lastSize }) });
    };
  }),

  sway: statement('sway', 'sway A 5mm 1..4+0 every 1+12', (dsl, shared) => {
    const { list, measure, tail } = moveRules(dsl, shared);
    return () => {
      const levels = dsl.SUBRULE(list);
      const size = dsl.SUBRULE(measure);
      const range = dsl.SUBRULE(shared.range);
      dsl.CONSUME(EVERY, { ERR_MSG: 'sway-length' });
      const every = dsl.SUBRULE(shared.length);
      return duringRange('sway', levels, range, dsl.SUBRULE(tail), { size, every });
    };
  }),
};

/** In the order of writing, which is that of lists. */
export const moveStatements: readonly StatementRule[] = Object.values(rules);
