/** Names of moves, and values of their parameters, as a sentence has them: made of the table of moves and the words of a language. */

import { kindOf } from '../shot/camera/move-facts.js';
import type { Form, Parameter } from '../shot/camera/move-parameters.js';
import { figure } from '../words/number-format.js';
import type { MoveWords } from '../words/sheet-words.js';
import type { ChangeOf, MannerValue, MoveSeen } from './change.js';

const SENSE = { in: 'T.U', out: 'T.B' } as const;

/** `A スライド ア→イ`, `Q.T.U A→B` */
export function moveName(
  { move, levels, places, sense, quick }: MoveSeen,
  { kinds, told }: MoveWords,
): string {
  const { grows } = kindOf({ kind: move });
  const word = `${quick ? told.quick('') : ''}${kinds[move].name}${grows ? (sense ? SENSE[sense] : 'T.U/T.B') : ''}`;
  return [levels.join(','), word, places.join('→')].filter((part) => part !== '').join(' ');
}

const DIRECTIONS: ReadonlySet<string> = new Set(['left', 'right', 'up', 'down']);
const UNITS = { mm: ' mm', degrees: '°' } as const;

type Length = (frames: number) => string;

/** Values of a change as text; '' where there is none. */
const TEXTS: {
  readonly [F in Form]: (
    value: string,
    words: MoveWords,
    length: Length,
    unit: Parameter<F>['unit'],
  ) => string;
} = {
  flag: () => '',
  levels: (value) => value,
  sense: (value, words) => (value === 'cw' ? words.clockwise : words.counterClockwise),
  direction: (value, words) =>
    DIRECTIONS.has(value) ? words.directions[value as keyof MoveWords['directions']] : value,
  way: (value) => `${figure(Number(value))} mm`,
  swing: (value, words) => {
    const [from, to] = value.split('>') as [string, string?];
    return `${to === undefined ? from : words.swing(from, to)} mm`;
  },
  measure: (value, _, length, unit) => (unit === 'frames' ? length(Number(value)) : `${value}${UNITS[unit]}`),
  loop: (value) => `${figure(Number(value))} mm`,
  point: (value) => value,
};

/** A parameter with that value: `every 1+12`, `no loop`. */
export function parameterText(
  { move, manner }: ChangeOf<'move-manner'>,
  value: MannerValue,
  words: MoveWords,
  length: Length,
): string {
  const { form, unit } = kindOf({ kind: move }).parameters[manner]!;
  const say = words.changed as Readonly<Record<string, (text: string, value: boolean) => string>>;
  const text = value === null ? '' : TEXTS[form](String(value), words, length, unit);
  return say[manner]!(text, value === true);
}
