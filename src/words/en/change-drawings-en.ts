/** What levels show. */

import type { ChangeOf, Follow, SeenThing, Shown } from '../../compare/change.js';
import { listOf, listsOf, type Naming } from '../change-lists.js';
import { numberRuns, rises } from '../change-parts.js';
import type { ChangeSentences, SentenceFormat } from '../change-sentences.js';
import { plural, share } from '../number-format.js';
import { later, longer, range, seen, time, times, was } from './change-parts-en.js';

function block(first: SeenThing, last: SeenThing, level: string): string {
  const [a, b] = [seen(first, level), seen(last, level)];
  if (a === b) return a;
  if (first.form === 'drawing' && last.form === 'drawing' && first.kind === 'key' && last.kind === 'key')
    return `keys ${first.drawing} to ${last.drawing}`;
  return `${a} to ${b}`;
}

const naming = (level: string): Naming => ({
  one: (it) => seen(it, level),
  full: ({ cel, drawing, way }) => `${level}${cel} (${way!.from}>${way!.to}.${drawing.split('.').at(-1)})`,
  betweens: (count) => plural(count, 'in-between'),
  ends: (first, last, count) => `${first} … ${last} (${count} exposures)`,
  comma: ', ',
});

function follow(it: Follow | null, t: SentenceFormat, level: string): string {
  if (!it) return '';
  const what = it.last ? `what follows up to ${seen(it.last, level)}` : 'what follows';
  return `; ${what} comes ${later(it.by, t)}`;
}

const inCycle = (it: { inCycle: boolean }) => (it.inCycle ? ', in each pass of the cycle' : '');

/** `less`: it gives up its frames. */
function heldBy(holder: SeenThing, level: string, less: boolean): string {
  if (holder.form === 'empty') return less ? 'where it was empty' : 'empty instead';
  return `${seen(holder, level)} held ${less ? 'that much less' : 'instead'}`;
}

function shown(change: ChangeOf<'shown'>, t: SentenceFormat): string {
  const { level, old, now, from, holder } = change;
  const frames = (list: readonly Shown[]) => list.reduce((sum, one) => sum + one.frames, 0);
  const held = holder ? `, ${heldBy(holder, level, frames(now) > frames(old))}` : '';
  const end = `${inCycle(change)}${held}${follow(change.follows, t, level)}`;
  if (old.length === 0) {
    const place = `${t.row(from.now)} for ${time(frames(now), t)}`;
    if (now.every((one) => one.seen.form === 'empty')) return `${level}: empty from ${place}${end}`;
    const fresh = now.some((one) => one.fresh);
    return `${level}: ${listOf(now, naming(level))} ${fresh ? 'added' : 'shown again'} from ${place}${end}`;
  }
  if (now.length === 0) {
    const place = `on ${t.row(from.old)}, ${time(frames(old), t)}`;
    if (old.every((one) => one.seen.form === 'empty')) return `${level}: no longer empty ${was(place)}${end}`;
    const fresh = old.some((one) => one.fresh);
    return `${level}: ${listOf(old, naming(level))} ${fresh ? 'dropped' : 'not shown again'} ${was(place)}${end}`;
  }
  const length =
    frames(old) === frames(now) ? '' : ` for ${times({ old: frames(old), now: frames(now) }, t)}`;
  const [listNow, listOld] = listsOf(now, old, naming(level));
  return `${level}: ${listNow} instead of ${listOld} from ${t.row(from.now)}${length}${end}`;
}

const CHARTS: Readonly<Record<string, string>> = {
  even: 'evenly spaced',
  early: 'crowding the earlier key',
  late: 'crowding the later key',
  both: 'crowding both keys',
};

function chart(name: string, fractions: readonly number[]): string {
  return CHARTS[name] ?? `at ${fractions.map(share).join(' ')}`;
}

function cycle(change: ChangeOf<'cycle'>, t: SentenceFormat): string {
  const { level, what, from, times: count, frames, bounce } = change;
  const start = `${level}: ${seen(change.cycle, level)}`;
  const end = `, from ${t.row(from.now)}${follow(change.follows, t, level)}`;
  if (what === 'bounce')
    return `${start} ${bounce.now ? 'there and back' : 'one way only'} ${was(bounce.old ? 'there and back' : 'one way')}${end}`;
  if (what === 'times') return `${start} runs ${plural(count.now!, 'time')} ${was(count.old!)}${end}`;
  return `${start} lasts ${times(frames, t)}${end}`;
}

export const drawings = {
  exposure: (change, t) => {
    const { level, first, last, count, frames, from } = change;
    const what = block(first, last, level);
    const end = `, from ${t.row(from.now)}${inCycle(change)}${follow(change.follows, t, level)}`;
    if (count > 1) return `${level}: ${what} (${count} exposures) held ${times(frames, t)} each${end}`;
    return `${level}: ${what} held ${longer(frames.now - frames.old, t)}, ${times(frames, t)}${end}`;
  },
  moved: (change, t) => {
    const { level, first, last, from, by } = change;
    const where = `${t.row(from.now)} ${was(t.row(from.old))}${inCycle(change)}`;
    const one = seen(first, level) === seen(last, level);
    if (one && first.form === 'empty') return `${level}: empty ${later(by, t)}, from ${where}`;
    if (one && !change.toEnd) return `${level}: ${seen(first, level)} comes ${later(by, t)}, on ${where}`;
    const name =
      change.toEnd && !rises(first, last)
        ? `everything from ${seen(first, level)} on comes`
        : one
          ? `${seen(first, level)} comes`
          : `${block(first, last, level)} come`;
    return `${level}: ${name} ${later(by, t)}, from ${where}`;
  },
  shown,
  'in-betweens': ({ level, from, to, count, added, dropped, frame, holder, follows }, t) => {
    const more =
      added.length > 0
        ? `, new: ${added.map(({ drawing, cel }) => `${level}${cel} (${drawing})`).join(', ')}`
        : '';
    const less =
      dropped.length > 0
        ? `, gone: ${dropped.map(({ drawing, cel }) => `${level}${cel} (${drawing})`).join(', ')}`
        : '';
    const held = holder
      ? `; ${seen(holder, level)} held ${count.now > count.old ? 'less' : 'more'} for it`
      : '';
    return `${level}: ${count.now === 0 ? 'no in-between' : plural(count.now, 'in-between')} from key ${from} to key ${to} ${was(count.old)}, from ${t.row(frame)}${more}${less}${held}${follow(follows, t, level)}`;
  },
  chart: ({ level, from, to, chart: names, fractions }) =>
    `${level}: in-betweens from key ${from} to key ${to} ${chart(names.now, fractions.now)} ${was(chart(names.old, fractions.old))}`,
  places: ({ level, from, to, drawings }) => {
    const places = drawings.map(
      ({ drawing, cel, old, now }) => `${level}${cel} (${drawing}) at ${share(now)} ${was(share(old))}`,
    );
    return `${level}: on the way from key ${from} to key ${to} lies ${places.join(', ')}`;
  },
  breakdown: ({ level, drawing, cel, now }) =>
    `${level}: ${level}${cel} (${drawing}) is ${now ? 'a breakdown now' : 'no breakdown any more'}`,
  key: ({ level, old, now, frame }, t) => `${level}: key ${now} instead of key ${old}, from ${t.row(frame)}`,
  cycle,
  renumbered: ({ level, numbers }) => {
    const run = ([a, b]: readonly [number, number]) =>
      a === b ? `${level}${a}` : `${level}${a} to ${level}${b}`;
    const runs = numberRuns(numbers).map(
      ({ old, now }) => `${run(old)} ${old[0] === old[1] ? 'is' : 'are'} now ${run(now)}`,
    );
    return `${level}: numbers: ${runs.slice(0, 6).join(', ')}${runs.length > 6 ? ` … (${plural(numbers.length, 'drawing')})` : ''}`;
  },
  rows: ({ level, rows }, t) => `${level}: other drawings${rows ? ` on ${range(rows, t)}` : ''}`,
} satisfies Partial<ChangeSentences>;
