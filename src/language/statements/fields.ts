/** What the camera sees when it stands still. */

import type { IToken } from 'chevrotain';
import type { Kit } from '../kit.js';
import { millimetres, type Shared } from '../shared.js';
import { ChartPart, ChartStep, FieldNumber, FieldPart, Length, Percent, word } from '../tokens.js';
import type { FieldPlace, FieldSize, Turned } from '../tree-camera.js';
import { movingRules, SENSES } from './spacing.js';
import { type StatementRule, statement } from './statement.js';

const FULL = word('full');
const AT = word('at');

function sizeRule(kit: Kit) {
  const chart = (token: IToken): FieldSize => ({
    span: kit.place(token),
    form: 'chart',
    fields: Number.parseFloat(token.image),
  });
  return kit.RULE('fieldSize', () =>
    kit.OR<FieldSize>({
      DEF: [
        { ALT: (): FieldSize => ({ span: kit.place(kit.CONSUME(FULL)), form: 'full' }) },
        {
          ALT: (): FieldSize => {
            const token = kit.CONSUME(Percent);
            return { span: kit.place(token), form: 'percent', percent: Number.parseFloat(token.image) };
          },
        },
        { ALT: () => chart(kit.CONSUME(FieldNumber)) },
        { ALT: () => chart(kit.CONSUME(FieldPart)) },
        {
          ALT: (): FieldSize => {
            const token = kit.CONSUME(Length);
            return { span: kit.place(token), form: 'mm', widthMm: millimetres(token.image) };
          },
        },
      ],
      ERR_MSG: 'field-size',
    }),
  );
}

function placeRule(kit: Kit, { point }: Shared) {
  return kit.RULE('fieldPlace', () =>
    kit.OR<FieldPlace>({
      DEF: [
        {
          ALT: (): FieldPlace => {
            const first = kit.LA(1);
            let north = 0;
            let east = 0;
            kit.AT_LEAST_ONE({
              DEF: () => {
                const token = kit.OR1<IToken>([
                  { ALT: () => kit.CONSUME(ChartStep) },
                  { ALT: () => kit.CONSUME(ChartPart) },
                ]);
                kit.ACTION(() => {
                  const steps = Number.parseFloat(token.image);
                  if (token.image.endsWith('N')) north += steps;
                  else if (token.image.endsWith('S')) north -= steps;
                  else if (token.image.endsWith('E')) east += steps;
                  else east -= steps;
                });
              },
            });
            return { span: kit.since(first), form: 'chart', north, east };
          },
        },
        {
          ALT: (): FieldPlace => {
            const { span, xMm, yMm } = kit.SUBRULE(point);
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
    (kit, shared) => {
      const { degrees } = movingRules(kit, shared);
      const size = sizeRule(kit);
      const place = placeRule(kit, shared);
      const turned = kit.RULE('turned', (): Turned => {
        const token = kit.OR([{ ALT: () => kit.CONSUME(SENSES.CW) }, { ALT: () => kit.CONSUME(SENSES.CCW) }]);
        const angle = kit.SUBRULE(degrees);
        return kit.ACTION(
          (): Turned => ({
            span: kit.since(token),
            sense: token.image === 'cw' ? 'cw' : 'ccw',
            degrees: angle.value,
          }),
        );
      });
      return () => ({
        kind: 'field',
        name: kit.SUBRULE(shared.name),
        size: kit.SUBRULE1(size),
        place:
          kit.OPTION(() => {
            kit.CONSUME(AT);
            return kit.SUBRULE2(place);
          }) ?? null,
        turned: kit.OPTION1(() => kit.SUBRULE3(turned)) ?? null,
      });
    },
    { defines: true },
  ),
  statement('fix', 'fix A', (kit, { name }) => () => ({ kind: 'fix', field: kit.SUBRULE(name) })),
];
