/** What all moves share: places on a frame, legs, how a leg is spread, options, lists of levels. */

import { diagnose } from '../diagnostic.js';
import type { Rule } from '../grammar-rule.js';
import { reportRetired } from '../retired-words.js';
import { millimetres, type ParsingDsl, type SharedRules } from '../shared-rules.js';
import {
  At,
  Close,
  Comma,
  Decimal,
  Degrees,
  Greater,
  Integer,
  Length,
  Open,
  Percent,
  Star,
  type Token,
  word,
} from '../tokens.js';
import type { Numeral, Point, Position, Word } from '../tree.js';
import type { DirectionNode, LegEnd, MarkedNumber, MoveOptions, SpacingNode, Stop } from '../tree-camera.js';

const EASE = word('ease');
const CURVE = word('curve');
const STEPS = word('steps');
const FAIR = word('fair');
const ON = word('on');
const GRADUATED = word('graduated');
const LOG = word('log');
const CARRY = word('carry');
const ABOUT = word('about');
const CW = word('cw');
const CCW = word('ccw');
const LOOP = word('loop');
const SIDEWAYS = word('sideways');
const CURVED = word('curved');

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

export interface MoveRules {
  /** Names with commas between. */
  readonly list: Rule<Word[]>;
  /** `3mm` or `3`, in mm. */
  readonly measure: Rule<Numeral>;
  /** `85%`: the number before the sign. */
  readonly percent: Rule<Numeral>;
  readonly degrees: Rule<Numeral>;
  readonly moment: Rule<Position>;
  /** `steps 1 2 4*3`: graduations by hand. */
  readonly steps: Rule<SpacingNode>;
  readonly tail: Rule<Tail>;
}

const NONE: MoveOptions = {
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

/** Options of one statement, gathered from behind all its legs; what was said twice is reported. */
function merged(dsl: ParsingDsl, first: MoveOptions, then: MoveOptions): MoveOptions {
  const all: Record<string, unknown> = { ...first };
  for (const [key, value] of Object.entries(then)) {
    const empty = value === null || (Array.isArray(value) && value.length === 0);
    if (empty) continue;
    const before = all[key];
    if (before === null || (Array.isArray(before) && before.length === 0)) all[key] = value;
    else {
      const place = Array.isArray(value) ? value[0].span : value.span ? value.span : value;
      dsl.report(diagnose('part-twice', place, { part: key, of: 'move' }));
    }
  }
  return all as unknown as MoveOptions;
}

const made = new WeakMap<ParsingDsl, MoveRules>();

/** The rules are added to a grammar once, by whichever statement asks first. */
export function moveRules(dsl: ParsingDsl, shared: SharedRules): MoveRules {
  const known = made.get(dsl);
  if (known) return known;
  const { name, whole, signed, point, position } = shared;

  const list = dsl.RULE('list', () => {
    const found: Word[] = [dsl.SUBRULE(name)];
    dsl.MANY(() => {
      dsl.CONSUME(Comma);
      found.push(dsl.SUBRULE(name));
    });
    return found;
  });

  const measure = dsl.RULE('measure', (): Numeral => {
    const token = dsl.OR({
      DEF: [
        { ALT: () => dsl.CONSUME(Length) },
        { ALT: () => dsl.CONSUME(Integer) },
        { ALT: () => dsl.CONSUME(Decimal) },
      ],
      ERR_MSG: 'short-length',
    });
    return { span: dsl.place(token), value: millimetres(token.image) };
  });

  const percent = dsl.RULE('percent', (): Numeral => {
    const token = dsl.CONSUME(Percent);
    return { span: dsl.place(token), value: Number.parseFloat(token.image) };
  });

  const degrees = dsl.RULE('degrees', (): Numeral => {
    const token = dsl.OR({
      DEF: [
        { ALT: () => dsl.CONSUME(Integer) },
        { ALT: () => dsl.CONSUME(Decimal) },
        { ALT: () => dsl.CONSUME(Degrees) },
      ],
      ERR_MSG: 'angle',
    });
    return { span: dsl.place(token), value: Number.parseFloat(token.image) };
  });

  const moment = dsl.RULE('moment', () => {
    dsl.CONSUME(At, { ERR_MSG: 'on-frame' });
    return dsl.SUBRULE(position);
  });

  const step = dsl.RULE('step', () => {
    const mm = dsl.SUBRULE(measure);
    const times = dsl.OPTION(() => {
      dsl.CONSUME(Star);
      return dsl.SUBRULE(whole);
    });
    return { mm, times: times?.value ?? 1 };
  });

  const ease = dsl.RULE('ease', (): SpacingNode => {
    const token = dsl.CONSUME(EASE);
    const leave = dsl.SUBRULE(whole);
    const arrive = dsl.OPTION(() => dsl.SUBRULE(whole)) ?? leave;
    return { span: dsl.since(token), form: 'ease', leave, arrive };
  });

  const curve = dsl.RULE('curve', (): SpacingNode => {
    const token = dsl.CONSUME(CURVE);
    const values = [
      dsl.SUBRULE(signed),
      dsl.SUBRULE(signed),
      dsl.SUBRULE(signed),
      dsl.SUBRULE(signed),
    ] as const;
    return { span: dsl.since(token), form: 'curve', values };
  });

  const steps = dsl.RULE('steps', (): SpacingNode => {
    const token = dsl.CONSUME(STEPS);
    const found: { mm: Numeral; times: number }[] = [];
    dsl.AT_LEAST_ONE({
      DEF: () => void found.push(dsl.SUBRULE(step)),
      ERR_MSG: 'steps',
    });
    return { span: dsl.since(token), form: 'steps', steps: found };
  });

  const fair = dsl.RULE('fair', (): SpacingNode => {
    const token = dsl.CONSUME(FAIR);
    const mark = dsl.SUBRULE(name);
    const at = dsl.SUBRULE(moment);
    const share = dsl.SUBRULE(percent);
    return { span: dsl.since(token), form: 'fair', mark, at, share };
  });

  const spacing = dsl.RULE('spacing', () =>
    dsl.OR<SpacingNode>([
      { ALT: () => dsl.SUBRULE(ease) },
      { ALT: () => dsl.SUBRULE(curve) },
      { ALT: () => dsl.SUBRULE(steps) },
      { ALT: () => dsl.SUBRULE(fair) },
    ]),
  );

  const flag = (kind: typeof GRADUATED, key: 'graduated' | 'log' | 'sideways' | 'curved') => ({
    ALT: (): MoveOptions => {
      const token = dsl.CONSUME(kind);
      reportRetired(dsl, token);
      return { ...NONE, [key]: dsl.place(token) };
    },
  });
  const turning = (kind: typeof CW, sense: 'cw' | 'ccw') => ({
    ALT: (): MoveOptions => ({ ...NONE, sense: { span: dsl.place(dsl.CONSUME(kind)), sense } }),
  });
  const option = dsl.RULE('moveOption', () =>
    dsl.OR<MoveOptions>([
      {
        ALT: () => {
          dsl.CONSUME(ON);
          return { ...NONE, on: dsl.SUBRULE(whole) };
        },
      },
      flag(GRADUATED, 'graduated'),
      flag(LOG, 'log'),
      flag(SIDEWAYS, 'sideways'),
      flag(CURVED, 'curved'),
      turning(CW, 'cw'),
      turning(CCW, 'ccw'),
      {
        ALT: () => {
          dsl.CONSUME(CARRY);
          return { ...NONE, carry: dsl.SUBRULE(list) };
        },
      },
      {
        ALT: () => {
          dsl.CONSUME(ABOUT);
          return { ...NONE, about: dsl.SUBRULE(point) };
        },
      },
      {
        ALT: () => {
          dsl.CONSUME(LOOP);
          return { ...NONE, loop: dsl.SUBRULE(measure) };
        },
      },
    ]),
  );

  const tail = dsl.RULE('tail', (): Tail => {
    const found: SpacingNode[] = [];
    let options = NONE;
    dsl.MANY(() =>
      dsl.OR([
        { ALT: () => void found.push(dsl.SUBRULE(spacing)) },
        {
          ALT: () => {
            const one = dsl.SUBRULE(option);
            dsl.ACTION(() => {
              options = merged(dsl, options, one);
            });
          },
        },
      ]),
    );
    return { spacing: found, options };
  });

  const rules: MoveRules = { list, measure, percent, degrees, moment, steps, tail };
  made.set(dsl, rules);
  return rules;
}

/** A rule for a number that may have a mark: `100%`, `ア(100%)`. */
export function markedNumber(
  dsl: ParsingDsl,
  { name }: SharedRules,
  named: string,
  number: Rule<Numeral>,
): Rule<MarkedNumber> {
  return dsl.RULE(named, (): MarkedNumber => {
    const first = dsl.LA(1);
    return dsl.OR<MarkedNumber>([
      {
        ALT: () => {
          const label = dsl.SUBRULE(name);
          dsl.CONSUME(Open, { ERR_MSG: 'marked-number' });
          const { value } = dsl.SUBRULE(number);
          dsl.CONSUME(Close);
          return { span: dsl.since(first), label, value };
        },
      },
      { ALT: () => ({ ...dsl.SUBRULE(number), label: null }) },
    ]);
  });
}

type LegStart<P> = Omit<LegEnd<P>, 'passing'>;

/** Tokens of the longest place, `ア(-1,-2)`, and the one behind it. */
const LONGEST_PLACE = 9;

/** Whether the next place has no frame and leads on: `B >`, not `B@24`. */
function passed(dsl: ParsingDsl): boolean {
  for (let i = 1; i <= LONGEST_PLACE; i++) {
    const { type } = dsl.LA(i);
    if (type === Greater) return i > 1;
    if (type === At || (type === STEPS && i > 1)) return false;
  }
  return false;
}

/**
 * A rule for `A@1 > B@48 ease 6 12 > C@96 …`, whatever stands on the frames. `passes`: places on the way may be without a frame,
 * `A@1 > B > C@96`, which only a curved way has a meaning for. `direction`: a leg may lead `> B right steps 1 2 4*3`, to where its graduations
 * take it; then a frame need not be said.
 */
export function legsOf<P extends { readonly span: Point['span'] }>(
  dsl: ParsingDsl,
  shared: SharedRules,
  named: string,
  value: Rule<P>,
  passes = false,
  direction: Rule<DirectionNode> | null = null,
): Rule<Legs<P>> {
  const { moment, steps, tail } = moveRules(dsl, shared);
  const stop = dsl.RULE(`${named}Stop`, (): Stop<P> => {
    const first: Token = dsl.LA(1);
    const what = dsl.SUBRULE(value);
    const at = dsl.SUBRULE(moment);
    return { span: dsl.since(first), value: what, at };
  });
  const drawn = (towards: Rule<DirectionNode>) => {
    const byHand = dsl.RULE(`${named}Graduations`, () => ({
      towards: dsl.SUBRULE(towards),
      spacing: [dsl.SUBRULE(steps)],
    }));
    return dsl.RULE(`${named}Goal`, (): LegStart<P> => {
      const first: Token = dsl.LA(1);
      const what = dsl.SUBRULE(value);
      return dsl.OR<LegStart<P>>({
        DEF: [
          {
            ALT: () => {
              const span = dsl.since(first);
              return { to: { span, value: what, at: null }, ...dsl.SUBRULE(byHand) };
            },
          },
          {
            ALT: () => {
              const at = dsl.SUBRULE(moment);
              const span = dsl.since(first);
              return {
                to: { span, value: what, at },
                ...(dsl.OPTION(() => dsl.SUBRULE(byHand)) ?? { spacing: [] }),
              };
            },
          },
        ],
        ERR_MSG: dsl.LA(1).type === STEPS ? 'direction' : 'on-frame',
      });
    });
  };
  const goal = direction && drawn(direction);
  return dsl.RULE(`${named}Legs`, (): Legs<P> => {
    const from = dsl.SUBRULE(stop);
    const legs: LegEnd<P>[] = [];
    let options = NONE;
    dsl.AT_LEAST_ONE({
      DEF: () => {
        dsl.CONSUME(Greater);
        const passing: P[] = [];
        if (passes)
          dsl.MANY({
            GATE: () => passed(dsl),
            DEF: () => {
              passing.push(dsl.SUBRULE(value));
              dsl.CONSUME(Greater);
            },
          });
        const end = goal ? dsl.SUBRULE(goal) : { to: dsl.SUBRULE(stop), spacing: [] };
        const behind = dsl.SUBRULE(tail);
        dsl.ACTION(() => {
          legs.push({ passing, ...end, spacing: [...end.spacing, ...behind.spacing] });
          options = merged(dsl, options, behind.options);
        });
      },
      ERR_MSG: 'leg-arrow',
    });
    return { from, legs, options };
  });
}
