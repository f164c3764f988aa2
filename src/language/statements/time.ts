/** What a cut is, how long it lasts, and the names of its moments. */

import { type StatementRule, statement } from './statement.js';

export const timeStatements: readonly StatementRule[] = [
  statement('cut', 'cut 12 "Rooftop, dusk"', (kit, { label, text }) => () => ({
    kind: 'cut',
    number: kit.SUBRULE(label),
    title: kit.OPTION(() => kit.SUBRULE(text)) ?? null,
  })),
  statement('time', 'time 5+0', (kit, { length }) => () => ({ kind: 'time', time: kit.SUBRULE(length) })),
  statement('fps', 'fps 24', (kit, { whole }) => () => ({ kind: 'fps', value: kit.SUBRULE(whole) })),
  statement('on', 'on 3', (kit, { whole }) => () => ({ kind: 'on', value: kit.SUBRULE(whole) })),
  statement(
    'mark',
    'mark hit 2+6',
    (kit, { name, position }) =>
      () => ({ kind: 'mark', name: kit.SUBRULE(name), position: kit.SUBRULE(position) }),
    { defines: true },
  ),
];
