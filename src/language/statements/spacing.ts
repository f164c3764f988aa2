/** What all moves share: places on a frame, legs, how a leg is spread, options, lists of levels. */

import type { IToken } from 'chevrotain';
import { diagnose } from '../diagnostic.js';
import type { Kit, Rule } from '../kit.js';
import { millimetres, type Shared } from '../shared.js';
import { At, Comma, Decimal, Degrees, Greater, Integer, Length, Percent, Star, word } from '../tokens.js';
import type { Numeral, Point, Position, Word } from '../tree.js';
import type { LegEnd, MoveOptions, SpacingNode, Stop } from '../tree-camera.js';

const EASE = word('ease');
const CURVE = word('curve');
const STEPS = word('steps');
const FAIR = word('fair');
const ON = word('on');
const TICKS = word('ticks');
const LOG = word('log');
const CARRY = word('carry');
const ABOUT = word('about');
const CW = word('cw');
const CCW = word('ccw');
const LOOP = word('loop');
const SIDEWAYS = word('sideways');

export const SENSES = { CW, CCW };

/** What stands behind a leg or a range. */
export interface Tail {
  readonly spacing: readonly SpacingNode[];
  readonly options: MoveOptions;
}

export interface Legs<P> {
  readonly from: Stop<P>;
  readonly legs: readonly LegEnd<P>[];
  readonly options: MoveOptions;
}

export interface Moving {
  /** Names with commas between. */
  readonly list: Rule<Word[]>;
  /** `3mm` or `3`, in mm. */
  readonly measure: Rule<Numeral>;
  /** `85%`: the number before the sign. */
  readonly percent: Rule<Numeral>;
  readonly degrees: Rule<Numeral>;
  readonly moment: Rule<Position>;
  readonly tail: Rule<Tail>;
}

const NONE: MoveOptions = {
  on: null,
  ticks: null,
  log: null,
  carry: [],
  about: null,
  sense: null,
  loop: null,
  sideways: null,
};

/** Options of one statement, gathered from behind all its legs; what was said twice is reported. */
function merged(kit: Kit, first: MoveOptions, then: MoveOptions): MoveOptions {
  const all: Record<string, unknown> = { ...first };
  for (const [key, value] of Object.entries(then)) {
    const empty = value === null || (Array.isArray(value) && value.length === 0);
    if (empty) continue;
    const before = all[key];
    if (before === null || (Array.isArray(before) && before.length === 0)) all[key] = value;
    else {
      const place = Array.isArray(value) ? value[0].span : value.span ? value.span : value;
      kit.report(diagnose('part-twice', place, { part: key, of: 'move' }));
    }
  }
  return all as unknown as MoveOptions;
}

const made = new WeakMap<Kit, Moving>();

/** The rules are added to a grammar once, by whichever statement asks first. */
export function movingRules(kit: Kit, shared: Shared): Moving {
  const known = made.get(kit);
  if (known) return known;
  const { name, whole, signed, point, position } = shared;

  const list = kit.RULE('list', () => {
    const found: Word[] = [kit.SUBRULE(name)];
    kit.MANY(() => {
      kit.CONSUME(Comma);
      found.push(kit.SUBRULE1(name));
    });
    return found;
  });

  const measure = kit.RULE('measure', (): Numeral => {
    const token = kit.OR({
      DEF: [
        { ALT: () => kit.CONSUME(Length) },
        { ALT: () => kit.CONSUME(Integer) },
        { ALT: () => kit.CONSUME(Decimal) },
      ],
      ERR_MSG: 'short-length',
    });
    return { span: kit.place(token), value: millimetres(token.image) };
  });

  const percent = kit.RULE('percent', (): Numeral => {
    const token = kit.CONSUME(Percent);
    return { span: kit.place(token), value: Number.parseFloat(token.image) };
  });

  const degrees = kit.RULE('degrees', (): Numeral => {
    const token = kit.OR({
      DEF: [
        { ALT: () => kit.CONSUME(Integer) },
        { ALT: () => kit.CONSUME(Decimal) },
        { ALT: () => kit.CONSUME(Degrees) },
      ],
      ERR_MSG: 'angle',
    });
    return { span: kit.place(token), value: Number.parseFloat(token.image) };
  });

  const moment = kit.RULE('moment', () => {
    kit.CONSUME(At, { ERR_MSG: 'on-frame' });
    return kit.SUBRULE(position);
  });

  const step = kit.RULE('step', () => {
    const mm = kit.SUBRULE(measure);
    const times = kit.OPTION(() => {
      kit.CONSUME(Star);
      return kit.SUBRULE(whole);
    });
    return { mm, times: times?.value ?? 1 };
  });

  const ease = kit.RULE('ease', (): SpacingNode => {
    const token = kit.CONSUME(EASE);
    const leave = kit.SUBRULE(whole);
    const arrive = kit.OPTION(() => kit.SUBRULE1(whole)) ?? leave;
    return { span: kit.since(token), form: 'ease', leave, arrive };
  });

  const curve = kit.RULE('curve', (): SpacingNode => {
    const token = kit.CONSUME(CURVE);
    const values = [
      kit.SUBRULE(signed),
      kit.SUBRULE1(signed),
      kit.SUBRULE2(signed),
      kit.SUBRULE3(signed),
    ] as const;
    return { span: kit.since(token), form: 'curve', values };
  });

  const steps = kit.RULE('steps', (): SpacingNode => {
    const token = kit.CONSUME(STEPS);
    const found: { mm: Numeral; times: number }[] = [];
    kit.AT_LEAST_ONE({
      DEF: () => void found.push(kit.SUBRULE(step)),
      ERR_MSG: 'steps',
    });
    return { span: kit.since(token), form: 'steps', steps: found };
  });

  const fair = kit.RULE('fair', (): SpacingNode => {
    const token = kit.CONSUME(FAIR);
    const mark = kit.SUBRULE(name);
    const at = kit.SUBRULE(moment);
    const share = kit.SUBRULE(percent);
    return { span: kit.since(token), form: 'fair', mark, at, share };
  });

  const spacing = kit.RULE('spacing', () =>
    kit.OR<SpacingNode>([
      { ALT: () => kit.SUBRULE(ease) },
      { ALT: () => kit.SUBRULE(curve) },
      { ALT: () => kit.SUBRULE(steps) },
      { ALT: () => kit.SUBRULE(fair) },
    ]),
  );

  const flag = (kind: typeof TICKS, key: 'ticks' | 'log' | 'sideways') => ({
    ALT: (): MoveOptions => ({ ...NONE, [key]: kit.place(kit.CONSUME(kind)) }),
  });
  const turning = (kind: typeof CW, sense: 'cw' | 'ccw') => ({
    ALT: (): MoveOptions => ({ ...NONE, sense: { span: kit.place(kit.CONSUME(kind)), sense } }),
  });
  const option = kit.RULE('moveOption', () =>
    kit.OR<MoveOptions>([
      {
        ALT: () => {
          kit.CONSUME(ON);
          return { ...NONE, on: kit.SUBRULE(whole) };
        },
      },
      flag(TICKS, 'ticks'),
      flag(LOG, 'log'),
      flag(SIDEWAYS, 'sideways'),
      turning(CW, 'cw'),
      turning(CCW, 'ccw'),
      {
        ALT: () => {
          kit.CONSUME(CARRY);
          return { ...NONE, carry: kit.SUBRULE(list) };
        },
      },
      {
        ALT: () => {
          kit.CONSUME(ABOUT);
          return { ...NONE, about: kit.SUBRULE(point) };
        },
      },
      {
        ALT: () => {
          kit.CONSUME(LOOP);
          return { ...NONE, loop: kit.SUBRULE(measure) };
        },
      },
    ]),
  );

  const tail = kit.RULE('tail', (): Tail => {
    const found: SpacingNode[] = [];
    let options = NONE;
    kit.MANY(() =>
      kit.OR1([
        { ALT: () => void found.push(kit.SUBRULE(spacing)) },
        {
          ALT: () => {
            const one = kit.SUBRULE(option);
            kit.ACTION(() => {
              options = merged(kit, options, one);
            });
          },
        },
      ]),
    );
    return { spacing: found, options };
  });

  const rules: Moving = { list, measure, percent, degrees, moment, tail };
  made.set(kit, rules);
  return rules;
}

/** A rule for `A@1 > B@48 ease 6 12 > C@96 …`, whatever stands on the frames. */
export function legsOf<P extends { readonly span: Point['span'] }>(
  kit: Kit,
  shared: Shared,
  named: string,
  value: Rule<P>,
): Rule<Legs<P>> {
  const { moment, tail } = movingRules(kit, shared);
  const stop = kit.RULE(`${named}Stop`, (): Stop<P> => {
    const first: IToken = kit.LA(1);
    const what = kit.SUBRULE(value);
    const at = kit.SUBRULE(moment);
    return { span: kit.since(first), value: what, at };
  });
  return kit.RULE(`${named}Legs`, (): Legs<P> => {
    const from = kit.SUBRULE(stop);
    const legs: LegEnd<P>[] = [];
    let options = NONE;
    kit.AT_LEAST_ONE({
      DEF: () => {
        kit.CONSUME(Greater);
        const to = kit.SUBRULE1(stop);
        const behind = kit.SUBRULE(tail);
        kit.ACTION(() => {
          legs.push({ to, spacing: behind.spacing });
          options = merged(kit, options, behind.options);
        });
      },
      ERR_MSG: 'leg-arrow',
    });
    return { from, legs, options };
  });
}
