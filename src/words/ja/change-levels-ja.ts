/** Changes of levels, drawings and speech as Japanese sentences, and how Japanese says times, places and names in any change. */

import type {
  ChangeOf,
  Follow,
  Frames,
  Point,
  SeenThing,
  Shown,
  SpeechText,
  Was,
} from '../../compare/change.js';
import {
  type ChangeSentences,
  isLater,
  lasts,
  listOf,
  listsOf,
  type Naming,
  numberRuns,
  rises,
  type SentenceFormat,
} from '../change-sentences.js';
import { figure, share } from '../number-format.js';

export const was = (text: string | number) => `（旧 ${text}）`;
/** `other`: what stood, or stands now, in its place. */
export const quoted = (text: string, t: SentenceFormat, other?: string) => `「${t.brief(text, other)}」`;
export const none = (text: string, t: SentenceFormat) => (text === '' ? 'なし' : quoted(text, t));

/** `12コマ`, from a second on `1+12`. */
export function time(frames: number, t: SentenceFormat): string {
  return t.long(frames) ? t.length(Math.abs(frames)) : `${Math.abs(frames)}コマ`;
}

export function times({ old, now }: Was<number>, t: SentenceFormat): string {
  if (t.long(old) || t.long(now)) return `${t.length(now)}${was(t.length(old))}`;
  return `${now}コマ${was(old)}`;
}

export const later = (by: number, t: SentenceFormat) => `${time(by, t)}${by > 0 ? '後ろへ' : '前へ'}`;
export const longer = (by: number, t: SentenceFormat) => `${time(by, t)}${by > 0 ? '長く' : '短く'}`;
export const range = ({ from, to }: Frames, t: SentenceFormat) =>
  from === to ? t.row(from) : `${t.row(from)}～${t.row(to)}`;

export function seen(it: SeenThing, level: string): string {
  if (it.form === 'empty') return '空セル';
  if (it.form === 'cycle')
    return it.first === it.last ? `リピート${it.first}` : `リピート${it.first}～${it.last}`;
  return it.kind === 'key' ? `原画${it.drawing}` : `${level}${it.cel}（${it.drawing}）`;
}

export function by({ xMm, yMm }: Point): string {
  const sides = [
    Math.abs(xMm) < 5e-3 ? '' : `${xMm > 0 ? '右' : '左'}へ${figure(Math.abs(xMm))} mm`,
    Math.abs(yMm) < 5e-3 ? '' : `${yMm > 0 ? '上' : '下'}へ${figure(Math.abs(yMm))} mm`,
  ].filter(Boolean);
  return sides.join('、') || 'わずかに移動';
}

export const at = ({ xMm, yMm }: Point) => `${figure(xMm)},${figure(yMm)}`;

export const size = (it: { widthMm: number; heightMm: number } | null) =>
  it ? `${figure(it.widthMm)}×${figure(it.heightMm)} mm` : '標準用紙';

export function timed(name: string, frames: Was<Frames>, t: SentenceFormat): string {
  const shift = isLater(frames);
  const span = `${range(frames.now, t)}${was(range(frames.old, t))}`;
  if (shift !== null) return `${name} ${later(shift, t)}：${span}`;
  if (frames.now.to === frames.old.to)
    return `${name} 始まりを${later(frames.now.from - frames.old.from, t)}：${span}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  return grown === 0 ? `${name}：${span}` : `${name} ${longer(grown, t)}：${span}`;
}

// ---- the cut as a whole, its levels and their artwork

const plain = (label: string) => (change: Was<string>) =>
  `${label} ${change.now || 'なし'}${was(change.old || 'なし')}`;
const names = (list: readonly string[]) => list.join('、') || 'なし';

export const levels = {
  cut: ({ old, now }) => `カット ${now}${was(old)}`,
  time: ({ old, now }, t) => `尺 ${longer(now - old, t)}：${t.length(now)}${was(t.length(old))}`,
  handles: ({ old, now }, t) =>
    `のりしろ：頭 ${t.length(now.head)}、尻 ${t.length(now.tail)}${was(`頭 ${t.length(old.head)}、尻 ${t.length(old.tail)}`)}`,
  fps: ({ old, now }) => `毎秒${now}コマ${was(old)}`,
  'standard-field': ({ old, now }) => `基準フレーム ${size(now)}${was(size(old))}`,
  title: ({ old, now }, t) => `カット名 ${none(now, t)}${was(none(old, t))}`,
  scene: plain('シーン'),
  take: plain('テイク'),
  artist: ({ old, now }) => `担当 ${names(now)}${was(names(old))}`,
  'line-up': ({ old, now }) => {
    const told = (cuts: readonly string[]) => (cuts.length > 0 ? `カット${cuts.join('、')}` : 'なし');
    return `同ポジ ${told(now)}${was(told(old))}`;
  },
  memo: ({ old, now }, t) => {
    if (old === null) return `メモ追加：${quoted(now!, t)}`;
    return now === null
      ? `メモ削除：${quoted(old, t)}`
      : `メモ変更：${quoted(now, t, old)}${was(quoted(old, t, now))}`;
  },
  stack: ({ old, now }) => `セル重ね（下から）：${now.join(' ')}${was(old.join(' '))}`,
  'level-added': ({ level, title, drawings, above }, t) =>
    `${level}${title ? quoted(title, t) : ''} 追加、${above ? `${above}の上` : '一番下'}${drawings ? `、${drawings}枚` : ''}`,
  'level-dropped': ({ level, title, drawings }, t) =>
    `${level}${title ? quoted(title, t) : ''} 削除${drawings ? `、${drawings}枚` : ''}`,
  'level-renamed': ({ level, old }) => `${old} は ${level} に改名`,
  'level-title': ({ level, old, now }, t) => `${level}：名称 ${none(now, t)}${was(none(old, t))}`,
  'artwork-size': ({ level, old, now }) => `${level}：作画サイズ ${size(now)}${was(size(old))}`,
  'artwork-home': ({ level, old, now }) =>
    `${level}：作画位置 ${by({ xMm: now.xMm - old.xMm, yMm: now.yMm - old.yMm })}、${at(now)}${was(at(old))}`,
  'level-manner': ({ level, manner: how, now }) =>
    ({
      free: `${level}：端が見えて${now ? 'もよい' : 'はいけない'}`,
      carry: `${level}：カメラに固定${now ? '' : 'しない'}`,
      flash: `${level}：${now ? '出で光る' : '光らない'}`,
    })[how],
  'level-others': ({ level, part, old, now }) => {
    const told = (others: readonly string[]) => (others.length > 0 ? others.join('・') : 'なし');
    return `${level}：${part === 'with' ? '組み' : 'マスク'} ${told(now)}${was(told(old))}`;
  },
  reuse: ({ level, old, now }) => {
    const from = (it: typeof now) => (it ? `カット${it.cut} の ${it.level}` : 'なし');
    return `${level}：兼用 ${from(now)}${was(from(old))}`;
  },
  'level-timed': ({ level, now }) =>
    now ? `${level}：タイムシートあり` : `${level}：タイムシートなし（常時あり）`,
  direct: ({ level, from, to, now }) => `${level}：原画${from}→${to} 中なし${now ? '' : ' 削除'}`,
  'level-emptied': ({ level }) => `${level}：全部空セル`,
} satisfies Partial<ChangeSentences>;

// ---- what levels show

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

// ---- dialogue, sound and notes

const WORDS = { voice: 'セリフ', sound: 'SE', music: '音楽' } as const;
const speech = ({ words, speaker, text }: SpeechText, t: SentenceFormat, other?: string) =>
  `${WORDS[words]}${speaker ? ` ${speaker}` : ''}${quoted(text, t, other)}`;
const MANNERS = { on: '画面内', off: 'OFF', mono: 'モノローグ' } as const;

export const words = {
  'speech-added': (change, t) => `${speech(change, t)} 追加：${range(change.frames, t)}`,
  'speech-dropped': (change, t) => `${speech(change, t)} 削除${was(range(change.frames, t))}`,
  'speech-time': (change, t) => timed(speech(change, t), change.frames, t),
  'speech-text': (change, t) =>
    `${speech(change, t, change.old)} に変更${was(quoted(change.old, t, change.now))}`,
  'speech-speaker': (change, t) =>
    `${speech(change, t)}：話者 ${change.now || 'なし'}${was(change.old || 'なし')}`,
  'speech-manner': (change, t) => `${speech(change, t)}：${MANNERS[change.now]}${was(MANNERS[change.old])}`,
  'speech-rows': (change, t) => {
    const row = (frame: number | null) => (frame === null ? '指定なし' : t.row(frame));
    return `${speech(change, t)}：${quoted(change.word, t)} ${row(change.row.now)}${was(row(change.row.old))}`;
  },
  'note-added': ({ frame, text }, t) => `指示${quoted(text, t)} 追加：${t.row(frame)}`,
  'note-dropped': ({ frame, text }, t) => `指示${quoted(text, t)} 削除${was(t.row(frame))}`,
  'note-moved': ({ frame, text }, t) =>
    `指示${quoted(text, t)} ${later(frame.now - frame.old, t)}：${t.row(frame.now)}${was(t.row(frame.old))}`,
  'note-text': ({ frame, old, now }, t) =>
    `指示 ${t.row(frame)} 変更：${quoted(now, t, old)}${was(quoted(old, t, now))}`,
} satisfies Partial<ChangeSentences>;
