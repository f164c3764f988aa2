/** Words and signs in a timeline that read as something else than what people of the trade mean by them, each with what is meant. */

import type { Messages } from '../language/catalogue/index.js';
import {
  type Action,
  type Diagnostic,
  diagnose,
  type Fix,
  guessFix,
  type Span,
} from '../language/diagnostic.js';
import { drawnTradeWord, tradeWord } from '../language/trade-words.js';
import type { Item } from '../language/tree.js';

type ItemOf<K extends Item['kind']> = Extract<Item, { kind: K }>;

const CHARTS: ReadonlySet<string> = new Set(['even', 'early', 'late', 'both']);
const UNITS: ReadonlySet<string> = new Set(['frames', 'frame', 'frs', 'f', 'k', 'コマ']);

/** What comes of an item that would be read without a word: `(1-2-)3`, `(1-2-) x 3`, `1(12)`. A hint, or null. */
export function silentSlip(items: readonly Item[], index: number): Diagnostic | null {
  const [item, before, first] = [items[index]!, items[index - 1], items[index - 2]];
  if (item.kind === 'key' && isNumber(item.name)) {
    const place = nameOf(item);
    const touching = before?.kind === 'group' && before.span.end === item.span.start;
    const several = Number(item.name) > 1;
    // `1(12)2`, `1(2) x 3`: what stands in brackets is a length, and this is the next key.
    const length = (at: number): boolean => silentSlip(items, at) !== null;
    if (touching && several && playedOnce(before) && !length(index - 1))
      return meant(place, 'times', item.name, `*${item.name}`, { ...place, end: place.start }, '*');
    const bare = before?.kind === 'empty' && before.length === null && !before.open;
    if (bare && several && first?.kind === 'group' && playedOnce(first) && !length(index - 2)) {
      const from = { ...place, start: first.span.end, end: place.start };
      return meant(place, 'times', item.name, `*${item.name}`, from, '*');
    }
  }
  if (item.kind !== 'group' || before?.kind !== 'key' || before.span.end !== item.span.start) return null;
  const [only, ...more] = item.items;
  if (only?.kind !== 'key' || more.length > 0 || !isNumber(only.name) || !playedOnce(item)) return null;
  if (only.length !== null || only.open || only.chart !== null) return null;
  const blank = items[index + 1]?.span.start === item.span.end ? ' ' : '';
  return meant(item.span, 'length', only.name, `:${only.name}`, item.span, `:${only.name}${blank}`);
}

function meant(
  span: Span,
  variant: Messages['key-after-group']['variant'],
  key: string,
  written: string,
  place: Span,
  text: string,
): Diagnostic {
  return diagnose(
    'key-after-group',
    span,
    { variant, key },
    { fix: { action: 'write', written, edits: [{ span: place, text }] } },
  );
}

/** A name that no phrase has, where it is a word of the trade for something that a timeline shows with a sign; else null. */
export function wordForSign(items: readonly Item[], index: number): Diagnostic | null {
  const item = items[index]!;
  if (item.kind === 'group') return chartInBrackets(item);
  if (item.kind !== 'phrase') return null;
  const [first, before, after] = [items[index - 2], items[index - 1], items[index + 1]];
  const { name, repeat, bounce } = item;
  const place = { ...item.span, end: item.span.start + name.length };
  const bare = repeat.form === 'once' && !bounce;
  const drawn = before !== undefined && before.kind !== 'at' && before.kind !== 'on';
  const last = drawn && bare && (!after || after.kind === 'at');
  const number = after?.kind === 'key' && isNumber(after.name) && after.length === null ? after : null;
  const written = (here: string, fix?: Fix): Diagnostic =>
    diagnose('trade-word', place, { variant: 'written', found: name, here }, fix ? { fix } : {});
  const instead = (start: number, end: number, text: string): Fix => {
    const action: Action = text.trim() === '' ? { action: 'leave-out' } : { action: 'write', written: text };
    return { ...action, edits: [{ span: { ...place, start, end }, text }] };
  };

  const level = /^[A-Z]{1,2}(\d{1,3}[a-z]?)$/.exec(name)?.[1];
  if (level) return written(level, instead(place.start, place.end, level));
  if (UNITS.has(name) && before && 'length' in before && before.length !== null)
    return diagnose(
      'trade-word',
      place,
      { variant: 'left-out', found: name },
      { fix: instead(before.span.end, place.end, '') },
    );
  if (name === 'times' && before?.kind === 'key' && first?.kind === 'group')
    return written(`*${before.name}`, instead(first.span.end, place.end, `*${before.name}`));
  if (name === 'for' && number && before?.kind === 'key')
    return written(`:${number.name}`, instead(before.span.end, number.span.start, ':'));
  if (name === 'at' && number)
    return written(`@${number.name}`, instead(place.start, number.span.start, '@'));
  if (CHARTS.has(name) && before?.kind === 'key' && after?.kind === 'between')
    return written(`{${name}}`, instead(before.span.end, after.span.start, `{${name}}`));

  const here = name === 'X' ? 'x' : (drawnTradeWord(name)?.here ?? null);
  if (here === null) return null;
  if (here === 'x') return written('x', instead(place.start, place.end, 'x'));
  const says = (fix: Fix | null): Diagnostic =>
    diagnose('trade-word', place, { variant: 'drawn', found: name, here }, fix ? { fix } : {});
  if (here.startsWith('on ')) return says(instead(place.start, place.end, here));
  switch (here) {
    case '1..':
      if (last) return says(instead(before.span.end, place.end, '..'));
      return says(drawn && bare && number ? instead(before.span.end, number.span.start, ':') : null);
    case '(1--2--)*3':
      return says(last && before.kind === 'group' ? instead(before.span.end, place.end, '..') : null);
    case '(1--2)<>':
      return says(last && before.kind === 'group' ? instead(before.span.end, place.end, '<>..') : null);
    case '1 2':
      return says(before ? instead(before.span.end, place.end, '') : null);
    case '1':
      return says(after?.kind === 'key' && bare ? instead(place.start, after.span.start, '') : null);
    default:
      return says(null);
  }
}

/** `1(late)--2`: a chart in the wrong brackets, read as a group. */
function chartInBrackets({
  items: [only, ...more],
  repeat,
  bounce,
  span,
}: ItemOf<'group'>): Diagnostic | null {
  if (only?.kind !== 'phrase' || more.length > 0 || repeat.form !== 'once' || bounce) return null;
  const chart = CHARTS.has(only.name) ? only.name : chartOf(only.name);
  if (chart === null) return null;
  const here = `{${chart}}`;
  return diagnose(
    'trade-word',
    span,
    { variant: 'written', found: `(${only.name})`, here },
    guessFix(here, span),
  );
}

/** The chart that a word of the trade stands for: 後ヅメ is `late`. */
export function chartOf(name: string): string | null {
  return /^1\{(even|early|late|both)\}/.exec(tradeWord(name)?.here ?? '')?.[1] ?? null;
}

const isNumber = (name: string): boolean => /^[0-9]+$/.test(name);
const nameOf = ({ span, name }: ItemOf<'key'>): Span => ({ ...span, end: span.start + name.length });
const playedOnce = ({ repeat, bounce }: ItemOf<'group'>): boolean => repeat.form === 'once' && !bounce;
