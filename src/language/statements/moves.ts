/**
 * The moves of the camera and of the levels: one entry a move. A new kind begins here; from then on nothing compiles until it has
 * its entry in every table that needs one.
 */

import { diagnose } from '../diagnostic.js';
import type { Kit } from '../kit.js';
import { millimetres, type Shared } from '../shared.js';
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
import { type Legs, legsOf, movingRules, type Tail } from './spacing.js';
import { type StatementRule, statement } from './statement.js';

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
  | 'roll';

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
const levelFollows = (kit: Kit) => (): boolean => kit.LA(1).tokenType === LEVEL && kit.LA(2).tokenType !== At;
const quickFollows = (kit: Kit) => (): boolean => kit.LA(1).tokenType === QUICK && kit.LA(2).tokenType !== At;

/** The rules of a pull or a follow: levels, direction, way, range. */
function dragged<K extends 'pull' | 'follow'>(kind: K, kit: Kit, shared: Shared) {
  const { list, tail } = movingRules(kit, shared);
  const direction = kit.RULE(`${kind}Direction`, () =>
    kit.OR<DirectionNode>({
      DEF: [
        ...DIRECTIONS.map(({ text, kind: token }) => ({
          ALT: (): DirectionNode => ({ span: kit.place(kit.CONSUME(token)), form: 'word', word: text }),
        })),
        {
          ALT: (): DirectionNode => {
            const token = kit.CONSUME(Degrees);
            return { span: kit.place(token), form: 'angle', degrees: Number.parseFloat(token.image) };
          },
        },
      ],
      ERR_MSG: 'direction',
    }),
  );
  const way = kit.RULE(`${kind}Way`, () =>
    kit.OR<WayNode>({
      DEF: [
        {
          ALT: (): WayNode => {
            const token = kit.CONSUME(Rate);
            return { span: kit.place(token), form: 'rate', mm: millimetres(token.image.replace('/f', '')) };
          },
        },
        ...[Length, Integer, Decimal].map((one) => ({
          ALT: (): WayNode => {
            const token = kit.CONSUME(one);
            return { span: kit.place(token), form: 'distance', mm: millimetres(token.image) };
          },
        })),
      ],
      ERR_MSG: 'way',
    }),
  );
  return () => {
    const levels = kit.SUBRULE(list);
    const parts = { direction: kit.SUBRULE1(direction), way: kit.SUBRULE2(way) };
    const range = kit.SUBRULE3(shared.range);
    return duringRange(kind, levels, range, kit.SUBRULE(tail), parts);
  };
}

const rules: { readonly [W in MoveWord]: StatementRule } = {
  pan: statement('pan', 'pan A@1+1 > B@5+0', (kit, shared) => {
    const legs = legsOf(kit, shared, 'pan', shared.name);
    return () => fromPlaceToPlace('pan', [], kit.SUBRULE(legs));
  }),

  truck: statement('truck', 'truck A@1 > B@3+0', (kit, shared) => {
    const { list, percent } = movingRules(kit, shared);
    const camera = legsOf(kit, shared, 'truck', shared.name);
    const scale = legsOf(kit, shared, 'scale', percent);
    return () => {
      const quick = kit.OPTION({ GATE: quickFollows(kit), DEF: () => kit.place(kit.CONSUME(QUICK)) }) ?? null;
      const levels = kit.OPTION1({
        GATE: levelFollows(kit),
        DEF: () => {
          const token = kit.CONSUME(LEVEL);
          return { token, names: kit.SUBRULE(list) };
        },
      });
      return kit.OR<Read>({
        DEF: [
          {
            GATE: () => levels !== undefined,
            ALT: () => {
              const legs = kit.SUBRULE(scale);
              kit.ACTION(() => {
                if (quick)
                  kit.report(
                    diagnose(
                      'quick-level',
                      quick,
                      {},
                      {
                        fix: {
                          action: 'leave-quick-out',
                          edits: [{ span: { ...quick, end: levels!.token.startOffset }, text: '' }],
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
            ALT: () => fromPlaceToPlace('truck', [], kit.SUBRULE1(camera), quick ? { quick } : {}),
          },
        ],
        ERR_MSG: levels ? 'scale-on-frame' : 'field-on-frame',
      });
    };
  }),

  pull: statement('pull', 'pull BG right 3mm/f 1..5+0', (kit, shared) => dragged('pull', kit, shared)),
  follow: statement('follow', 'follow A left 3mm/f 1..5+0', (kit, shared) => dragged('follow', kit, shared)),

  slide: statement('slide', 'slide A ア(0,0)@1 > エ(-120,0)@6+0', (kit, shared) => {
    const { list } = movingRules(kit, shared);
    const place = kit.RULE('markedPlace', (): MarkedPlace => {
      const first = kit.LA(1);
      const label = kit.OPTION(() => kit.SUBRULE(shared.name)) ?? null;
      kit.CONSUME(Open, { ERR_MSG: 'marked-place' });
      const x = kit.SUBRULE(shared.signed);
      kit.CONSUME(Comma, { ERR_MSG: 'marked-place-comma' });
      const y = kit.SUBRULE1(shared.signed);
      kit.CONSUME(Close);
      return { span: kit.since(first), label, xMm: x.value, yMm: y.value };
    });
    const legs = legsOf(kit, shared, 'slide', place);
    return () => {
      const levels = kit.SUBRULE(list);
      return fromPlaceToPlace('slide', levels, kit.SUBRULE1(legs));
    };
  }),

  turn: statement('turn', 'turn level A 0@1 > 360@2+0 cw about 0,0', (kit, shared) => {
    const { list, degrees } = movingRules(kit, shared);
    const angle = kit.RULE('angle', (): Numeral => {
      const first = kit.LA(1);
      const minus = kit.OPTION(() => kit.CONSUME(Dash));
      const { value } = kit.SUBRULE(degrees);
      return { span: kit.since(first), value: minus && value !== 0 ? -value : value };
    });
    const legs = legsOf(kit, shared, 'turn', angle);
    return () => {
      kit.CONSUME(LEVEL, { ERR_MSG: 'turning-levels' });
      const levels = kit.SUBRULE(list);
      return fromPlaceToPlace('turn', levels, kit.SUBRULE1(legs));
    };
  }),

  shake: statement('shake', 'shake 4mm>0mm 1+1..1+12', (kit, shared) => {
    const { measure, tail } = movingRules(kit, shared);
    return () => {
      const size = kit.SUBRULE(measure);
      const lastSize = kit.OPTION(() => {
        kit.CONSUME(Greater);
        return kit.SUBRULE1(measure);
      });
      const range = kit.SUBRULE2(shared.range);
      return duringRange('shake', [], range, kit.SUBRULE3(tail), { size, ...(lastSize && { lastSize }) });
    };
  }),

  roll: statement('roll', 'roll A 5mm 1..4+0 every 1+12', (kit, shared) => {
    const { list, measure, tail } = movingRules(kit, shared);
    return () => {
      const levels = kit.SUBRULE(list);
      const size = kit.SUBRULE1(measure);
      const range = kit.SUBRULE2(shared.range);
      kit.CONSUME(EVERY, { ERR_MSG: 'sway-length' });
      const every = kit.SUBRULE3(shared.length);
      return duringRange('roll', levels, range, kit.SUBRULE(tail), { size, every });
    };
  }),
};

/** In the order of writing, which is that of lists. */
export const moveStatements: readonly StatementRule[] = Object.values(rules);
