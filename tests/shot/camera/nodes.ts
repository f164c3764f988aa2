/** Camera statements put together by hand, and bound together with a plain text. */

import type { Span } from '../../../src/language/diagnostic.js';
import { parse } from '../../../src/language/parse.js';
import type { Length, Numeral, Position, Range, Word } from '../../../src/language/tree.js';
import type {
  CameraStatement,
  FieldPlace,
  FieldSize,
  LegEnd,
  MoveOptions,
  MoveStatement,
  SpacingNode,
  Stop,
} from '../../../src/language/tree-camera.js';
import { bind } from '../../../src/shot/bind-cut.js';
import { defaults, type Settings } from '../../../src/shot/settings.js';

let next = 10_000;
/** Each call another place. */
export const span = (): Span => {
  next += 10;
  return { file: 'this.cut', start: next, end: next + 5 };
};

type Loose<T> = T extends unknown ? Omit<T, 'span' | 'word'> : never;

export const state = (statement: Loose<CameraStatement>): CameraStatement =>
  ({ span: span(), word: span(), ...statement }) as CameraStatement;

export const word = (text: string): Word => ({ text, span: span() });
export const words = (...texts: string[]): Word[] => texts.map(word);
export const number = (value: number): Numeral => ({ value, span: span() });
export const frame = (frames: number): Position => ({
  kind: 'position',
  form: 'frames',
  frames,
  span: span(),
});
export const length = (frames: number): Length => ({ kind: 'length', form: 'frames', frames, span: span() });
export const during = (from: number, to: number | null): Range => ({
  from: frame(from),
  to: to === null ? null : frame(to),
  span: span(),
});

export const OPTIONS: MoveOptions = {
  on: null,
  graduated: null,
  log: null,
  carry: [],
  about: null,
  sense: null,
  loop: null,
  sideways: null,
  curved: null,
};

/** A move; what is not said of it is not there. */
export const move = (said: Partial<MoveStatement> & Pick<MoveStatement, 'kind'>): MoveStatement => ({
  levels: [],
  parts: {},
  from: null,
  legs: [],
  range: null,
  spacing: [],
  options: OPTIONS,
  word: span(),
  span: span(),
  ...said,
});

export const stop = <P>(value: P, at: number): Stop<P> => ({ value, at: frame(at), span: span() });
export const to = <P>(value: P, at: number, ...spacing: SpacingNode[]): LegEnd<P> => ({
  passing: [],
  to: stop(value, at),
  spacing,
});
export const ease = (leave: number, arrive: number): SpacingNode => ({
  form: 'ease',
  leave: number(leave),
  arrive: number(arrive),
  span: span(),
});

export function field(
  name: string,
  size: Loose<FieldSize>,
  place: Loose<FieldPlace> | null = null,
): CameraStatement {
  return state({
    kind: 'field',
    name: word(name),
    size: { span: span(), ...size } as FieldSize,
    place: place && ({ span: span(), ...place } as FieldPlace),
    turned: null,
  });
}

export const FULL = { form: 'full' } as const;

/** A cut of two seconds with level A, and these statements. */
export function bound(
  statements: readonly CameraStatement[],
  { text = 'cut 1\ntime 2+0\nA: 1..\n', settings = {} }: { text?: string; settings?: Partial<Settings> } = {},
) {
  const { tree } = parse('this.cut', text);
  const all = { ...defaults, ...settings };
  const { shot, diagnostics } = bind({ ...tree, statements: [...tree.statements, ...statements] }, [], all);
  return { shot: shot!, camera: shot!.camera, diagnostics, codes: diagnostics.map(({ code }) => code) };
}
