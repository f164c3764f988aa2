/** What the camera sees when it stands still; light, exposure and the joins to the neighbouring cuts. */

import { millimetres, type ParsingDsl, type SharedRules } from '../shared-rules.js';
import {
  ChartPart,
  ChartStep,
  Comma,
  DotDot,
  FieldNumber,
  FieldPart,
  Greater,
  isKind,
  Length,
  Name,
  Percent,
  type Token,
  word,
} from '../tokens.js';
import type { FieldPlace, FieldSize, Turned, WipeDirection } from '../tree-camera.js';
import { moveRules, SENSES } from './move-rules.js';
import { type StatementRule, statement } from './statement-rule.js';

const IN = word('in');
const OUT = word('out');
const WHITE = word('white');
const AT = word('at');
const WIPE_DIRECTIONS = (['left', 'right', 'up', 'down'] as const).map((text) => ({
  text,
  kind: word(text),
}));

function wayRule(dsl: ParsingDsl, named: string) {
  return dsl.RULE(named, (): 'in' | 'out' => {
    const token = dsl.OR({
      DEF: [{ ALT: () => dsl.CONSUME(IN) }, { ALT: () => dsl.CONSUME(OUT) }],
      ERR_MSG: 'in-or-out',
    });
    return dsl.ACTION(() => (token.image === 'in' ? 'in' : 'out'));
  });
}

export const lightStatements: readonly StatementRule[] = [
  statement('fade', 'fade in 1..24', (dsl, { range }) => {
    const way = wayRule(dsl, 'fadeWay');
    return () => {
      const which = dsl.SUBRULE(way);
      const early = dsl.OPTION({
        GATE: () => dsl.LA(2).type !== DotDot,
        DEF: () => dsl.place(dsl.CONSUME(WHITE)),
      });
      const frames = dsl.SUBRULE(range);
      const late = dsl.OPTION(() => dsl.place(dsl.CONSUME(WHITE)));
      return { kind: 'fade', way: which, white: early ?? late ?? null, range: frames };
    };
  }),

  statement('wipe', 'wipe in left 1..24', (dsl, { range }) => {
    const way = wayRule(dsl, 'wipeWay');
    const towards = dsl.RULE('wipeDirection', (): WipeDirection => {
      const token = dsl.OR({
        DEF: WIPE_DIRECTIONS.map(({ kind }) => ({ ALT: () => dsl.CONSUME(kind) })),
        ERR_MSG: 'side',
      });
      return dsl.ACTION(() => WIPE_DIRECTIONS.find(({ kind }) => isKind(token, kind))!.text);
    });
    return () => {
      const which = dsl.SUBRULE(way);
      return { kind: 'wipe', way: which, towards: dsl.SUBRULE(towards), range: dsl.SUBRULE(range) };
    };
  }),

  statement('iris', 'iris in 1..24 at 40,-10', (dsl, { range, point }) => {
    const way = wayRule(dsl, 'irisWay');
    return () => {
      const which = dsl.SUBRULE(way);
      const frames = dsl.SUBRULE(range);
      const at =
        dsl.OPTION(() => {
          dsl.CONSUME(AT);
          return dsl.SUBRULE(point);
        }) ?? null;
      return { kind: 'iris', way: which, range: frames, at };
    };
  }),

  statement('expose', 'expose B 0%>100% 1..24', (dsl, shared) => {
    const { list, percent } = moveRules(dsl, shared);
    return () => {
      const levels = dsl.SUBRULE(list);
      const from = dsl.SUBRULE(percent);
      const to =
        dsl.OPTION(() => {
          dsl.CONSUME(Greater);
          return dsl.SUBRULE(percent);
        }) ?? null;
      return { kind: 'expose', levels, from, to, range: dsl.SUBRULE(shared.range) };
    };
  }),

  statement('glow', 'glow C 1+1..2+0', (dsl, shared) => {
    const { list } = moveRules(dsl, shared);
    return () => ({ kind: 'glow', levels: dsl.SUBRULE(list), range: dsl.SUBRULE(shared.range) });
  }),

  statement('effect', 'effect "heat haze" A,B 1..5+0', (dsl, shared) => {
    const { list } = moveRules(dsl, shared);
    /** A name here is a level where another name or a number follows; else it is a mark that begins the range. */
    const levelsFollow = (): boolean => {
      const next = dsl.LA(2);
      return next.type === Comma || isKind(next, Name) || /^\d/.test(next.image);
    };
    return () => ({
      kind: 'effect',
      text: dsl.SUBRULE(shared.text),
      levels: dsl.OPTION({ GATE: levelsFollow, DEF: () => dsl.SUBRULE(list) }) ?? [],
      range: dsl.SUBRULE(shared.range),
    });
  }),

  statement('overlap', 'overlap out 24', (dsl, { length }) => {
    const way = wayRule(dsl, 'overlapWay');
    return () => ({ kind: 'overlap', way: dsl.SUBRULE(way), length: dsl.SUBRULE(length) });
  }),
];

// ---- What the camera sees when it stands still

const FULL = word('full');

function sizeRule(dsl: ParsingDsl) {
  const chart = (token: Token): FieldSize => ({
    span: dsl.place(token),
    form: 'chart',
    fields: Number.parseFloat(token.image),
  });
  return dsl.RULE('fieldSize', () =>
    dsl.OR<FieldSize>({
      DEF: [
        { ALT: (): FieldSize => ({ span: dsl.place(dsl.CONSUME(FULL)), form: 'full' }) },
        {
          ALT: (): FieldSize => {
            const token = dsl.CONSUME(Percent);
            return { span: dsl.place(token), form: 'percent', percent: Number.parseFloat(token.image) };
          },
        },
        { ALT: () => chart(dsl.CONSUME(FieldNumber)) },
        { ALT: () => chart(dsl.CONSUME(FieldPart)) },
        {
          ALT: (): FieldSize => {
            const token = dsl.CONSUME(Length);
            return { span: dsl.place(token), form: 'mm', widthMm: millimetres(token.image) };
          },
        },
      ],
      ERR_MSG: 'field-size',
    }),
  );
}

function placeRule(dsl: ParsingDsl, { point }: SharedRules) {
  return dsl.RULE('fieldPlace', () =>
    dsl.OR<FieldPlace>({
      DEF: [
        {
          ALT: (): FieldPlace => {
            const first = dsl.LA(1);
            let north = 0;
            let east = 0;
            dsl.AT_LEAST_ONE({
              DEF: () => {
                const token = dsl.OR<Token>([
                  { ALT: () => dsl.CONSUME(ChartStep) },
                  { ALT: () => dsl.CONSUME(ChartPart) },
                ]);
                dsl.ACTION(() => {
                  const steps = Number.parseFloat(token.image);
                  if (token.image.endsWith('N')) north += steps;
                  else if (token.image.endsWith('S')) north -= steps;
                  else if (token.image.endsWith('E')) east += steps;
                  else east -= steps;
                });
              },
            });
            return { span: dsl.since(first), form: 'chart', north, east };
          },
        },
        {
          ALT: (): FieldPlace => {
            const { span, xMm, yMm } = dsl.SUBRULE(point);
            return { span, form: 'mm', xMm, yMm };
          },
        },
      ],
      ERR_MSG: 'field-place',
    }),
  );
}

export const fieldStatements: readonly StatementRule[] = [
  statement(
    'field',
    'field B 60% at 40,-12 cw 5',
    (dsl, shared) => {
      const { degrees } = moveRules(dsl, shared);
      const size = sizeRule(dsl);
      const place = placeRule(dsl, shared);
      const turned = dsl.RULE('turned', (): Turned => {
        const token = dsl.OR([{ ALT: () => dsl.CONSUME(SENSES.CW) }, { ALT: () => dsl.CONSUME(SENSES.CCW) }]);
        const angle = dsl.SUBRULE(degrees);
        return dsl.ACTION(
          (): Turned => ({
            span: dsl.since(token),
            sense: token.image === 'cw' ? 'cw' : 'ccw',
            degrees: angle.value,
          }),
        );
      });
      return () => ({
        kind: 'field',
        name: dsl.SUBRULE(shared.name),
        size: dsl.SUBRULE(size),
        place:
          dsl.OPTION(() => {
            dsl.CONSUME(AT);
            return dsl.SUBRULE(place);
          }) ?? null,
        turned: dsl.OPTION(() => dsl.SUBRULE(turned)) ?? null,
      });
    },
    { defines: true },
  ),
  statement('fix', 'fix A', (dsl, { name }) => () => ({ kind: 'fix', field: dsl.SUBRULE(name) })),
];
