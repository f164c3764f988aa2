/** What levels show. */

import type { ChangeOf, Follow, SeenThing, Shown } from '../../compare/change.js';
import { listOf, listsOf, type Naming } from '../change-lists.js';
import { numberRuns, rises } from '../change-parts.js';
import type { ChangeSentences, SentenceFormat } from '../change-sentences.js';
import { share } from '../number-format.js';
import { later, longer, range, seen, time, times, was } from './change-parts-ja.js';

function block(first: SeenThing, last: SeenThing, level: string): string {
  const [a, b] = [seen(first, level), seen(last, level)];
  if (a === b) return a;
  if (first.form === 'drawing' && last.form === 'drawing' && first.kind === 'key' && last.kind === 'key')
    return `原画${first.drawing}～${last.drawing}`;
  return `${a}～${b}`;
}

const naming = (level: string): Naming => ({
  one: (it) => seen(it, level),
  full: ({ cel, drawing, way }) => `${level}${cel}（${way!.from}>${way!.to}.${drawing.split('.').at(-1)}）`,
  betweens: (count) => `中割り${count}枚`,
  ends: (first, last, count) => `${first}～${last}（${count}か所）`,
  comma: '、',
});

function follow(it: Follow | null, t: SentenceFormat, level: string): string {
  if (!it) return '';
  return `、以降${it.last ? `${seen(it.last, level)}まで` : ''}${later(it.by, t)}`;
}

const inCycle = (it: { inCycle: boolean }) => (it.inCycle ? '、リピート毎回' : '');

function shown(change: ChangeOf<'shown'>, t: SentenceFormat): string {
  const { level, old, now, from, holder } = change;
  const frames = (list: readonly Shown[]) => list.reduce((sum, one) => sum + one.frames, 0);
  const held = holder
    ? `、${seen(holder, level)}${holder.form === 'empty' ? '' : 'の止メ'}を${frames(now) > frames(old) ? '短く' : '長く'}`
    : '';
  const end = `${inCycle(change)}${held}${follow(change.follows, t, level)}`;
  if (old.length === 0) {
    const place = `${t.row(from.now)}から${time(frames(now), t)}`;
    if (now.every((one) => one.seen.form === 'empty')) return `${level}：${place}空セル${end}`;
    return `${level}：${listOf(now, naming(level))} ${now.some((one) => one.fresh) ? '追加' : 'をもう一度'}、${place}${end}`;
  }
  if (now.length === 0) {
    const place = was(`${t.row(from.old)}から${time(frames(old), t)}`);
    if (old.every((one) => one.seen.form === 'empty')) return `${level}：空セルなし${place}${end}`;
    return `${level}：${listOf(old, naming(level))} ${old.some((one) => one.fresh) ? '削除' : 'のくり返しなし'}${place}${end}`;
  }
  const length = frames(old) === frames(now) ? '' : `、${times({ old: frames(old), now: frames(now) }, t)}`;
  const [listNow, listOld] = listsOf(now, old, naming(level));
  return `${level}：${t.row(from.now)}から ${listNow}${was(listOld)}${length}${end}`;
}

const CHARTS: Readonly<Record<string, string>> = {
  even: '均等',
  early: '先ヅメ',
  late: '後ヅメ',
  both: '両ヅメ',
};

function chart(name: string, fractions: readonly number[]): string {
  return CHARTS[name] ?? fractions.map(share).join(' ');
}

function cycle(change: ChangeOf<'cycle'>, t: SentenceFormat): string {
  const { level, what, from, times: count, frames, bounce } = change;
  const start = `${level}：${seen(change.cycle, level)}`;
  const end = `、${t.row(from.now)}から${follow(change.follows, t, level)}`;
  if (what === 'bounce')
    return `${start} ${bounce.now ? '往復' : '片道'}${was(bounce.old ? '往復' : '片道')}${end}`;
  if (what === 'times') return `${start} ${count.now}回${was(count.old!)}${end}`;
  return `${start} ${times(frames, t)}${end}`;
}

export const drawings = {
  exposure: (change, t) => {
    const { level, first, last, count, frames, from } = change;
    const what = block(first, last, level);
    const end = `、${t.row(from.now)}から${inCycle(change)}${follow(change.follows, t, level)}`;
    if (count > 1) return `${level}：${what}（${count}か所）各${times(frames, t)}${end}`;
    return `${level}：${what} を${longer(frames.now - frames.old, t)}、${times(frames, t)}${end}`;
  },
  moved: (change, t) => {
    const { level, first, last, from, by } = change;
    const name =
      change.toEnd && !rises(first, last) ? `${seen(first, level)}以降` : block(first, last, level);
    return `${level}：${name} を${later(by, t)}、${t.row(from.now)}から${was(t.row(from.old))}${inCycle(change)}`;
  },
  shown,
  'in-betweens': ({ level, from, to, count, added, dropped, frame, holder, follows }, t) => {
    const more =
      added.length > 0
        ? `、追加 ${added.map(({ drawing, cel }) => `${level}${cel}（${drawing}）`).join('、')}`
        : '';
    const less =
      dropped.length > 0
        ? `、削除 ${dropped.map(({ drawing, cel }) => `${level}${cel}（${drawing}）`).join('、')}`
        : '';
    const held = holder ? `、${seen(holder, level)}の止メを${count.now > count.old ? '短く' : '長く'}` : '';
    const sheets = (n: number) => (n === 0 ? '中なし' : `${n}枚`);
    return `${level}：原画${from}→${to} ${count.now === 0 ? '' : '中割り'}${sheets(count.now)}${was(sheets(count.old))}、${t.row(frame)}から${more}${less}${held}${follow(follows, t, level)}`;
  },
  chart: ({ level, from, to, chart: names, fractions }) =>
    `${level}：原画${from}→${to} のツメ ${chart(names.now, fractions.now)}${was(chart(names.old, fractions.old))}`,
  places: ({ level, from, to, drawings }) => {
    const places = drawings.map(
      ({ drawing, cel, old, now }) => `${level}${cel} (${drawing}) ${share(now)}${was(share(old))}`,
    );
    return `${level}：原画${from}→${to} の割り ${places.join('、')}`;
  },
  breakdown: ({ level, drawing, cel, now }) =>
    `${level}：${level}${cel}（${drawing}）${now ? 'を中割り参考に' : 'は中割り参考でなくす'}`,
  key: ({ level, old, now, frame }, t) => `${level}：原画${now}${was(`原画${old}`)}、${t.row(frame)}から`,
  cycle,
  renumbered: ({ level, numbers }) => {
    const run = ([a, b]: readonly [number, number]) => (a === b ? `${level}${a}` : `${level}${a}～${b}`);
    const runs = numberRuns(numbers).map(({ old, now }) => `${run(old)}→${run(now)}`);
    return `${level}：番号変更 ${runs.slice(0, 6).join('、')}${runs.length > 6 ? ` …（${numbers.length}枚）` : ''}`;
  },
  rows: ({ level, rows }, t) => `${level}：${rows ? `${range(rows, t)} ` : ''}別の絵`,
} satisfies Partial<ChangeSentences>;
