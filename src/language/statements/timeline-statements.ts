/** Timelines and phrases: which drawing is shown for how long. */

import type { Span } from '../diagnostic.js';
import type { Rule } from '../grammar-rule.js';
import type { ParsingDsl, SharedRules } from '../shared-rules.js';
import {
  At,
  Between,
  Bounce,
  Close,
  CloseBrace,
  Colon,
  Dash,
  Decimal,
  DotDot,
  Equals,
  Fraction,
  Greater,
  Integer,
  Key,
  Open,
  OpenBrace,
  PhraseName,
  Star,
  type Token,
  word,
} from '../tokens.js';
import type { Chart, Item, Length, Numeral, Repeat, StatementOf } from '../tree.js';
import { betweenName, keyName, type StatementRule, statement } from './statement-rule.js';

const EMPTY = word('x');
const ON = word('on');
const DIRECT = word('direct');

/** Rules that both kinds of statement need are added once for a grammar. */
const made = new WeakMap<ParsingDsl, Rule<Item[]>>();

/** A name is rarely indented by more. */
const WIDEST_MARGIN = 200;

/** The blanks before a phrase that reads like the timeline of a level: `B: 1` at the beginning of an indented line. */
function marginOf(dsl: ParsingDsl, { file, start }: Span, repeat: Repeat): Span | null {
  if (repeat.form !== 'length' || repeat.length.form !== 'frames') return null;
  const before = dsl.typed({ file, start: Math.max(0, start - WIDEST_MARGIN), end: start });
  const blanks = /[\r\n]([^\S\r\n]+)$/.exec(before)?.[1];
  return blanks === undefined ? null : { file, start: start - blanks.length, end: start };
}

function itemsRule(dsl: ParsingDsl, shared: SharedRules): Rule<Item[]> {
  const known = made.get(dsl);
  if (known) return known;

  const itemLength = dsl.RULE('itemLength', (): Length => {
    dsl.CONSUME(Colon);
    return dsl.SUBRULE(shared.length);
  });

  const fraction = dsl.RULE('fraction', (): Numeral => {
    const token = dsl.OR({
      DEF: [
        { ALT: () => dsl.CONSUME(Fraction) },
        { ALT: () => dsl.CONSUME(Decimal) },
        { ALT: () => dsl.CONSUME(Integer) },
      ],
      ERR_MSG: 'fraction',
    });
    return dsl.ACTION((): Numeral => {
      const [above = Number.NaN, below = 1] = token.image.split('/').map(Number);
      return { span: dsl.place(token), value: above / below };
    });
  });

  const chart = dsl.RULE('chart', (): Chart => {
    const first = dsl.CONSUME(OpenBrace);
    const fractions: Numeral[] = [];
    const named = dsl.OR({
      DEF: [
        { ALT: () => dsl.SUBRULE(shared.name) },
        {
          ALT: () => {
            dsl.AT_LEAST_ONE({
              DEF: () => void fractions.push(dsl.SUBRULE(fraction)),
              ERR_MSG: 'fraction',
            });
            return null;
          },
        },
      ],
      ERR_MSG: 'chart',
    });
    dsl.CONSUME(CloseBrace, { ERR_MSG: 'chart-end' });
    const span = dsl.since(first);
    return named ? { span, form: 'named', name: named.text } : { span, form: 'fractions', fractions };
  });

  const open = (): Span | null => {
    const token = dsl.OPTION(() => dsl.CONSUME(DotDot));
    return token ? dsl.place(token) : null;
  };

  /** `1`, `1:8`, `1{late}:8`, `1:8{late}`, `1>3.2`. */
  const keyItem = dsl.RULE('keyItem', (): Item => {
    const token = dsl.CONSUME(Key);
    const name = keyName(token.image);
    const later = dsl.OPTION(() => {
      dsl.CONSUME(Greater);
      return dsl.CONSUME(Between);
    });
    let lasts = dsl.OPTION(() => dsl.SUBRULE(itemLength)) ?? null;
    const spacing =
      dsl.OPTION({
        GATE: () => later === undefined,
        DEF: () => dsl.SUBRULE(chart),
      }) ?? null;
    const after = dsl.OPTION({
      GATE: () => lasts === null && spacing !== null,
      DEF: () => dsl.SUBRULE(itemLength),
    });
    if (after) lasts = after;
    const on = open();
    const span = dsl.since(token);
    return dsl.ACTION((): Item => {
      if (!later) return { kind: 'key', span, name, length: lasts, open: on, chart: spacing };
      return { kind: 'reference', span, ...betweenName(later.image, name), length: lasts, open: on };
    });
  });

  const lasting = dsl.RULE('lasting', () => ({
    length: dsl.OPTION(() => dsl.SUBRULE(itemLength)) ?? null,
    open: open(),
  }));

  const betweenItem = dsl.RULE('betweenItem', (): Item => {
    const token = dsl.OR([{ ALT: () => dsl.CONSUME(Dash) }, { ALT: () => dsl.CONSUME(Equals) }]);
    const shown = dsl.SUBRULE(lasting);
    return { kind: 'between', span: dsl.since(token), breakdown: token.type === Equals, ...shown };
  });

  const referenceItem = dsl.RULE('referenceItem', (): Item => {
    const token = dsl.CONSUME(Between);
    const shown = dsl.SUBRULE(lasting);
    return { kind: 'reference', span: dsl.since(token), ...betweenName(token.image), ...shown };
  });

  const emptyItem = dsl.RULE('emptyItem', (): Item => {
    const token = dsl.CONSUME(EMPTY);
    const shown = dsl.SUBRULE(lasting);
    return { kind: 'empty', span: dsl.since(token), ...shown };
  });

  const onItem = dsl.RULE('onItem', (): Item => {
    const token = dsl.CONSUME(ON);
    const frames = dsl.CONSUME(Integer, { ERR_MSG: 'frame-count' });
    return { kind: 'on', span: dsl.since(token), frames: Number(frames.image) };
  });

  const directItem = dsl.RULE('directItem', (): Item => {
    const token = dsl.CONSUME(DIRECT);
    return { kind: 'direct', span: dsl.place(token) };
  });

  const atItem = dsl.RULE('atItem', (): Item => {
    const token = dsl.CONSUME(At);
    const position = dsl.SUBRULE(shared.position);
    return { kind: 'at', span: dsl.since(token), position };
  });

  const repeat = dsl.RULE('repeat', () => {
    const bounce = dsl.OPTION(() => dsl.CONSUME(Bounce)) !== undefined;
    const first = dsl.LA(1);
    const said = dsl.OPTION(() =>
      dsl.OR<Repeat>([
        {
          ALT: (): Repeat => {
            dsl.CONSUME(Star);
            const times = dsl.CONSUME(Integer, { ERR_MSG: 'repeat-count' });
            return { form: 'times', times: Number(times.image), span: dsl.since(first) };
          },
        },
        {
          ALT: (): Repeat => {
            const lasts = dsl.SUBRULE(itemLength);
            return { form: 'length', length: lasts, span: dsl.since(first) };
          },
        },
        {
          ALT: (): Repeat => {
            dsl.CONSUME(DotDot);
            return { form: 'open', span: dsl.since(first) };
          },
        },
      ]),
    );
    const once: Repeat = { form: 'once' };
    return { bounce, repeat: said ?? once };
  });

  const phraseItem = dsl.RULE('phraseItem', (): Item => {
    const token = dsl.CONSUME(PhraseName);
    const again = dsl.SUBRULE(repeat);
    const span = dsl.since(token);
    return dsl.ACTION((): Item => {
      const margin = marginOf(dsl, span, again.repeat);
      const name = token.image.normalize('NFC');
      return { kind: 'phrase', span, name, ...again, margin };
    });
  });

  // The group's rule and the items' call each other.
  let items: Rule<Item[]>;
  const groupItem = dsl.RULE('groupItem', (): Item => {
    const token = dsl.CONSUME(Open);
    const inside = dsl.SUBRULE(items);
    dsl.CONSUME(Close, { ERR_MSG: 'drawing-or-group-end' });
    const again = dsl.SUBRULE(repeat);
    return { kind: 'group', span: dsl.since(token), items: inside, ...again };
  });

  const item = dsl.RULE('item', () =>
    dsl.OR<Item>({
      DEF: [
        { ALT: () => dsl.SUBRULE(keyItem) },
        { ALT: () => dsl.SUBRULE(betweenItem) },
        { ALT: () => dsl.SUBRULE(referenceItem) },
        { ALT: () => dsl.SUBRULE(emptyItem) },
        { ALT: () => dsl.SUBRULE(onItem) },
        { ALT: () => dsl.SUBRULE(directItem) },
        { ALT: () => dsl.SUBRULE(atItem) },
        { ALT: () => dsl.SUBRULE(groupItem) },
        { ALT: () => dsl.SUBRULE(phraseItem) },
      ],
      ERR_MSG: 'drawing',
    }),
  );

  items = dsl.RULE('items', () => {
    const found: Item[] = [];
    dsl.AT_LEAST_ONE({ DEF: () => void found.push(dsl.SUBRULE(item)), ERR_MSG: 'drawings' });
    return found;
  });
  made.set(dsl, items);
  return items;
}

export const timelineRule: StatementRule = {
  word: '',
  rule: 'timeline',
  example: 'A "Nao": 1:12 1--2-3:1+0 (4-5-)*3 6..',
  defines: false,
  add: (dsl, shared) => {
    const items = itemsRule(dsl, shared);
    return dsl.RULE('timeline', (): StatementOf<'timeline'> => {
      const first: Token = dsl.LA(1);
      const level = dsl.SUBRULE(shared.name);
      const title = dsl.OPTION(() => dsl.SUBRULE(shared.text)) ?? null;
      dsl.CONSUME(Colon);
      const shown = dsl.SUBRULE(items);
      return { kind: 'timeline', span: dsl.since(first), word: dsl.place(first), level, title, items: shown };
    });
  },
};

export const timelineStatements: readonly StatementRule[] = [
  timelineRule,
  statement(
    'phrase',
    'phrase walk = 1--2--3--4--',
    (dsl, shared) => {
      const items = itemsRule(dsl, shared);
      return () => {
        const name = dsl.SUBRULE(shared.name);
        dsl.CONSUME(Equals, { ERR_MSG: 'phrase-equals' });
        return { kind: 'phrase', name, items: dsl.SUBRULE(items) };
      };
    },
    { defines: true },
  ),
];
