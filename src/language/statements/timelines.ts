/** Timelines and phrases: which drawing is shown for how long. */

import type { IToken } from 'chevrotain';
import type { Span } from '../diagnostic.js';
import type { Kit, Rule } from '../kit.js';
import type { Shared } from '../shared.js';
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
  word,
} from '../tokens.js';
import type { Chart, Item, Length, Numeral, Repeat, StatementOf } from '../tree.js';
import { betweenName, keyName } from './drawings.js';
import { type StatementRule, statement } from './statement.js';

const EMPTY = word('x');
const ON = word('on');

/** Rules that both kinds of statement need are added once for a grammar. */
const made = new WeakMap<Kit, Rule<Item[]>>();

/** A name is rarely indented by more. */
const WIDEST_MARGIN = 200;

/** The blanks before a phrase that reads like the timeline of a level: `B: 1` at the beginning of an indented line. */
function marginOf(kit: Kit, { file, start }: Span, repeat: Repeat): Span | null {
  if (repeat.form !== 'length' || repeat.length.form !== 'frames') return null;
  const before = kit.typed({ file, start: Math.max(0, start - WIDEST_MARGIN), end: start });
  const blanks = /[\r\n]([^\S\r\n]+)$/.exec(before)?.[1];
  return blanks === undefined ? null : { file, start: start - blanks.length, end: start };
}

function itemsRule(kit: Kit, shared: Shared): Rule<Item[]> {
  const known = made.get(kit);
  if (known) return known;

  const itemLength = kit.RULE('itemLength', (): Length => {
    kit.CONSUME(Colon);
    return kit.SUBRULE(shared.length);
  });

  const fraction = kit.RULE('fraction', (): Numeral => {
    const token = kit.OR({
      DEF: [
        { ALT: () => kit.CONSUME(Fraction) },
        { ALT: () => kit.CONSUME(Decimal) },
        { ALT: () => kit.CONSUME(Integer) },
      ],
      ERR_MSG: 'fraction',
    });
    return kit.ACTION((): Numeral => {
      const [above = Number.NaN, below = 1] = token.image.split('/').map(Number);
      return { span: kit.place(token), value: above / below };
    });
  });

  const chart = kit.RULE('chart', (): Chart => {
    const first = kit.CONSUME(OpenBrace);
    const fractions: Numeral[] = [];
    const named = kit.OR({
      DEF: [
        { ALT: () => kit.SUBRULE(shared.name) },
        {
          ALT: () => {
            kit.AT_LEAST_ONE({
              DEF: () => void fractions.push(kit.SUBRULE(fraction)),
              ERR_MSG: 'fraction',
            });
            return null;
          },
        },
      ],
      ERR_MSG: 'chart',
    });
    kit.CONSUME(CloseBrace, { ERR_MSG: 'chart-end' });
    const span = kit.since(first);
    return named ? { span, form: 'named', name: named.text } : { span, form: 'fractions', fractions };
  });

  const open = (): Span | null => {
    const token = kit.OPTION4(() => kit.CONSUME4(DotDot));
    return token ? kit.place(token) : null;
  };

  /** `1`, `1:8`, `1{late}:8`, `1:8{late}`, `1>3.2`. */
  const keyItem = kit.RULE('keyItem', (): Item => {
    const token = kit.CONSUME(Key);
    const name = keyName(token.image);
    const later = kit.OPTION(() => {
      kit.CONSUME(Greater);
      return kit.CONSUME(Between);
    });
    let lasts = kit.OPTION1(() => kit.SUBRULE(itemLength)) ?? null;
    const spacing =
      kit.OPTION2({
        GATE: () => later === undefined,
        DEF: () => kit.SUBRULE(chart),
      }) ?? null;
    const after = kit.OPTION3({
      GATE: () => lasts === null && spacing !== null,
      DEF: () => kit.SUBRULE1(itemLength),
    });
    if (after) lasts = after;
    const on = open();
    const span = kit.since(token);
    return kit.ACTION((): Item => {
      if (!later) return { kind: 'key', span, name, length: lasts, open: on, chart: spacing };
      return { kind: 'reference', span, ...betweenName(later.image, name), length: lasts, open: on };
    });
  });

  const lasting = kit.RULE('lasting', () => ({
    length: kit.OPTION(() => kit.SUBRULE(itemLength)) ?? null,
    open: open(),
  }));

  const betweenItem = kit.RULE('betweenItem', (): Item => {
    const token = kit.OR([{ ALT: () => kit.CONSUME(Dash) }, { ALT: () => kit.CONSUME(Equals) }]);
    const shown = kit.SUBRULE(lasting);
    return { kind: 'between', span: kit.since(token), breakdown: token.tokenType === Equals, ...shown };
  });

  const referenceItem = kit.RULE('referenceItem', (): Item => {
    const token = kit.CONSUME(Between);
    const shown = kit.SUBRULE(lasting);
    return { kind: 'reference', span: kit.since(token), ...betweenName(token.image), ...shown };
  });

  const emptyItem = kit.RULE('emptyItem', (): Item => {
    const token = kit.CONSUME(EMPTY);
    const shown = kit.SUBRULE(lasting);
    return { kind: 'empty', span: kit.since(token), ...shown };
  });

  const onItem = kit.RULE('onItem', (): Item => {
    const token = kit.CONSUME(ON);
    const frames = kit.CONSUME(Integer, { ERR_MSG: 'frame-count' });
    return { kind: 'on', span: kit.since(token), frames: Number(frames.image) };
  });

  const atItem = kit.RULE('atItem', (): Item => {
    const token = kit.CONSUME(At);
    const position = kit.SUBRULE(shared.position);
    return { kind: 'at', span: kit.since(token), position };
  });

  const repeat = kit.RULE('repeat', () => {
    const bounce = kit.OPTION(() => kit.CONSUME(Bounce)) !== undefined;
    const first = kit.LA(1);
    const said = kit.OPTION1(() =>
      kit.OR<Repeat>([
        {
          ALT: (): Repeat => {
            kit.CONSUME(Star);
            const times = kit.CONSUME(Integer, { ERR_MSG: 'repeat-count' });
            return { form: 'times', times: Number(times.image), span: kit.since(first) };
          },
        },
        {
          ALT: (): Repeat => {
            const lasts = kit.SUBRULE(itemLength);
            return { form: 'length', length: lasts, span: kit.since(first) };
          },
        },
        {
          ALT: (): Repeat => {
            kit.CONSUME(DotDot);
            return { form: 'open', span: kit.since(first) };
          },
        },
      ]),
    );
    const once: Repeat = { form: 'once' };
    return { bounce, repeat: said ?? once };
  });

  const phraseItem = kit.RULE('phraseItem', (): Item => {
    const token = kit.CONSUME(PhraseName);
    const again = kit.SUBRULE(repeat);
    const span = kit.since(token);
    return kit.ACTION((): Item => {
      const margin = marginOf(kit, span, again.repeat);
      const name = token.image.normalize('NFC');
      return { kind: 'phrase', span, name, ...again, margin };
    });
  });

  // The group's rule and the items' call each other.
  let items: Rule<Item[]>;
  const groupItem = kit.RULE('groupItem', (): Item => {
    const token = kit.CONSUME(Open);
    const inside = kit.SUBRULE(items);
    kit.CONSUME(Close, { ERR_MSG: 'drawing-or-group-end' });
    const again = kit.SUBRULE(repeat);
    return { kind: 'group', span: kit.since(token), items: inside, ...again };
  });

  const item = kit.RULE('item', () =>
    kit.OR<Item>({
      DEF: [
        { ALT: () => kit.SUBRULE(keyItem) },
        { ALT: () => kit.SUBRULE(betweenItem) },
        { ALT: () => kit.SUBRULE(referenceItem) },
        { ALT: () => kit.SUBRULE(emptyItem) },
        { ALT: () => kit.SUBRULE(onItem) },
        { ALT: () => kit.SUBRULE(atItem) },
        { ALT: () => kit.SUBRULE(groupItem) },
        { ALT: () => kit.SUBRULE(phraseItem) },
      ],
      ERR_MSG: 'drawing',
    }),
  );

  items = kit.RULE('items', () => {
    const found: Item[] = [];
    kit.AT_LEAST_ONE({ DEF: () => void found.push(kit.SUBRULE(item)), ERR_MSG: 'drawings' });
    return found;
  });
  made.set(kit, items);
  return items;
}

export const timelineRule: StatementRule = {
  word: '',
  rule: 'timeline',
  example: 'A "Nao": 1:12 1--2-3:1+0 (4-5-)*3 6..',
  defines: false,
  add: (kit, shared) => {
    const items = itemsRule(kit, shared);
    return kit.RULE('timeline', (): StatementOf<'timeline'> => {
      const first: IToken = kit.LA(1);
      const level = kit.SUBRULE(shared.name);
      const title = kit.OPTION(() => kit.SUBRULE(shared.text)) ?? null;
      kit.CONSUME(Colon);
      const shown = kit.SUBRULE(items);
      return { kind: 'timeline', span: kit.since(first), word: kit.place(first), level, title, items: shown };
    });
  },
};

export const timelineStatements: readonly StatementRule[] = [
  timelineRule,
  statement(
    'phrase',
    'phrase walk = 1--2--3--4--',
    (kit, shared) => {
      const items = itemsRule(kit, shared);
      return () => {
        const name = kit.SUBRULE(shared.name);
        kit.CONSUME(Equals, { ERR_MSG: 'phrase-equals' });
        return { kind: 'phrase', name, items: kit.SUBRULE(items) };
      };
    },
    { defines: true },
  ),
];
