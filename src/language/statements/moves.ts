/** The moves of the camera and of the levels: one entry a move. */

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
import type { Numeral } from '../tree.js';
import type { DirectionNode, MarkedPlace, WayNode } from '../tree-camera.js';
import { legsOf, movingRules } from './spacing.js';
import { type Particulars, type StatementRule, statement } from './statement.js';

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
    const towards = kit.SUBRULE1(direction);
    const far = kit.SUBRULE2(way);
    const range = kit.SUBRULE3(shared.range);
    return { kind, levels, direction: towards, way: far, range, ...kit.SUBRULE(tail) };
  };
}

export const moveStatements: readonly StatementRule[] = [
  statement('pan', 'pan A@1+1 > B@5+0', (kit, shared) => {
    const legs = legsOf(kit, shared, 'pan', shared.name);
    return () => ({ kind: 'pan', ...kit.SUBRULE(legs) });
  }),

  statement('truck', 'truck A@1 > B@3+0', (kit, shared) => {
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
      return kit.OR<Particulars<'truck' | 'levelTruck'>>({
        DEF: [
          {
            GATE: () => levels !== undefined,
            ALT: (): Particulars<'levelTruck'> => {
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
              return { kind: 'levelTruck', levels: levels?.names ?? [], ...legs };
            },
          },
          {
            GATE: () => levels === undefined,
            ALT: (): Particulars<'truck'> => ({ kind: 'truck', quick, ...kit.SUBRULE1(camera) }),
          },
        ],
        ERR_MSG: levels ? 'scale-on-frame' : 'field-on-frame',
      });
    };
  }),

  statement('pull', 'pull BG right 3mm/f 1..5+0', (kit, shared) => dragged('pull', kit, shared)),
  statement('follow', 'follow A left 3mm/f 1..5+0', (kit, shared) => dragged('follow', kit, shared)),

  statement('slide', 'slide A ア(0,0)@1 > エ(-120,0)@6+0', (kit, shared) => {
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
      return { kind: 'slide', levels, ...kit.SUBRULE1(legs) };
    };
  }),

  statement('turn', 'turn level A 0@1 > 360@2+0 cw about 0,0', (kit, shared) => {
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
      return { kind: 'turn', levels, ...kit.SUBRULE1(legs) };
    };
  }),

  statement('shake', 'shake 4mm>0mm 1+1..1+12', (kit, shared) => {
    const { measure, tail } = movingRules(kit, shared);
    return () => {
      const fromMm = kit.SUBRULE(measure);
      const toMm =
        kit.OPTION(() => {
          kit.CONSUME(Greater);
          return kit.SUBRULE1(measure);
        }) ?? null;
      const range = kit.SUBRULE2(shared.range);
      return { kind: 'shake', fromMm, toMm, range, ...kit.SUBRULE3(tail) };
    };
  }),

  statement('roll', 'roll A 5mm 1..4+0 every 1+12', (kit, shared) => {
    const { list, measure, tail } = movingRules(kit, shared);
    return () => {
      const levels = kit.SUBRULE(list);
      const sizeMm = kit.SUBRULE1(measure);
      const range = kit.SUBRULE2(shared.range);
      kit.CONSUME(EVERY, { ERR_MSG: 'sway-length' });
      const every = kit.SUBRULE3(shared.length);
      return { kind: 'roll', levels, sizeMm, range, every, ...kit.SUBRULE(tail) };
    };
  }),
];
