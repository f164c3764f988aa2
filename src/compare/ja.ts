import type { Spacing } from '../shot/camera.js';
import type { Frames } from '../shot/shot.js';
import type {
  ChangeOf,
  Follow,
  LightSeen,
  MannerValue,
  MoveSeen,
  Point,
  Seen,
  Shown,
  Speech,
  Speed,
  Was,
} from './change.js';
import {
  figure,
  isLater,
  lasts,
  listOf,
  listsOf,
  type Naming,
  numberRuns,
  share,
  type Telling,
} from './telling.js';
import type { Sentences } from './words.js';

const was = (text: string | number) => `（旧 ${text}）`;
const quoted = (text: string, t: Telling) => `「${t.brief(text)}」`;
const none = (text: string, t: Telling) => (text === '' ? 'なし' : quoted(text, t));

/** `12コマ`, from a second on `1+12`. */
function time(frames: number, t: Telling): string {
  return t.long(frames) ? t.length(Math.abs(frames)) : `${Math.abs(frames)}コマ`;
}

function times({ old, now }: Was<number>, t: Telling): string {
  if (t.long(old) || t.long(now)) return `${t.length(now)}${was(t.length(old))}`;
  return `${now}コマ${was(old)}`;
}

const later = (by: number, t: Telling) => `${time(by, t)}${by > 0 ? '後ろへ' : '前へ'}`;
const longer = (by: number, t: Telling) => `${time(by, t)}${by > 0 ? '長く' : '短く'}`;
const range = ({ from, to }: Frames, t: Telling) =>
  from === to ? t.row(from) : `${t.row(from)}～${t.row(to)}`;

function seen(it: Seen, level: string): string {
  if (it.form === 'empty') return '空セル';
  if (it.form === 'cycle')
    return it.first === it.last ? `リピート${it.first}` : `リピート${it.first}～${it.last}`;
  return it.kind === 'key' ? `原画${it.drawing}` : `${level}${it.cel}（${it.drawing}）`;
}

function block(first: Seen, last: Seen, level: string): string {
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

function follow(it: Follow | null, t: Telling, level: string): string {
  if (!it) return '';
  return `、以降${it.last ? `${seen(it.last, level)}まで` : ''}${later(it.by, t)}`;
}

const inCycle = (it: { inCycle: boolean }) => (it.inCycle ? '、リピート毎回' : '');

function shown(change: ChangeOf<'shown'>, t: Telling): string {
  const { level, old, now, from, holder } = change;
  const frames = (list: readonly Shown[]) => list.reduce((sum, one) => sum + one.frames, 0);
  const held = holder ? `、${seen(holder, level)}の止メを${frames(now) > frames(old) ? '短く' : '長く'}` : '';
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

function cycle(change: ChangeOf<'cycle'>, t: Telling): string {
  const { level, what, from, times: count, frames, bounce } = change;
  const start = `${level}：${seen(change.cycle, level)}`;
  const end = `、${t.row(from.now)}から${follow(change.follows, t, level)}`;
  if (what === 'bounce')
    return `${start} ${bounce.now ? '往復' : '片道'}${was(bounce.old ? '往復' : '片道')}${end}`;
  if (what === 'times') return `${start} ${count.now}回${was(count.old!)}${end}`;
  return `${start} ${times(frames, t)}${end}`;
}

const SENSE = { in: 'T.U', out: 'T.B' } as const;

function moveName({ move, levels, places, sense, quick }: MoveSeen): string {
  const route = places.join('→');
  const who = levels.join(',');
  switch (move) {
    case 'pan':
      return `PAN ${route}`;
    case 'truck':
      return `${quick ? 'Q.' : ''}${sense ? SENSE[sense] : 'T.U/T.B'} ${route}`;
    case 'levelTruck':
      return `${who} セル${sense ? SENSE[sense] : 'T.U/T.B'} ${route}`;
    case 'slide':
      return `${who} スライド ${route}`;
    case 'turn':
      return `${who} 回転 ${route}`;
    case 'roll':
      return `${who} ローリング`;
    case 'shake':
      return '画面動';
    case 'pull':
      return `${who} 引き`;
    case 'follow':
      return `${who} フォロー`;
  }
}

function speed({ largestStepMm: { old, now } }: Speed): string {
  if (Math.abs(old - now) < 0.005) return '';
  return `、${now > old ? '速く' : '遅く'}：最大 ${figure(now)} mm/コマ${was(figure(old))}`;
}

function moveTime(change: ChangeOf<'move-time'>, t: Telling): string {
  const { frames, stops, places } = change;
  const by = isLater(frames);
  const name = moveName(change);
  const span = `${range(frames.now, t)}${was(range(frames.old, t))}`;
  if (stops && by === 0) {
    const moved = stops.now.flatMap((frame, i) =>
      frame === stops.old[i]
        ? []
        : [`${places[i]}は${t.row(Math.max(1, frame))}${was(t.row(Math.max(1, stops.old[i]!)))}`],
    );
    return `${name}：${moved.join('、')}${speed(change)}`;
  }
  if (by !== null) return `${name} ${later(by, t)}：${span}${speed(change)}`;
  if (frames.now.to === frames.old.to)
    return `${name} 始まりを${later(frames.now.from - frames.old.from, t)}：${span}${speed(change)}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  return `${name}${grown === 0 ? '' : ` ${longer(grown, t)}`}：${span}${speed(change)}`;
}

function moveWay(change: ChangeOf<'move-way'>): string {
  const { distanceMm, rateMm } = change;
  const name = moveName(change);
  const way = `${figure(distanceMm.now)} mm${was(`${figure(distanceMm.old)} mm`)}`;
  if (rateMm.old === null || rateMm.now === null) return `${name} ${way}${speed(change)}`;
  const how = rateMm.now > rateMm.old ? '速く' : '遅く';
  return `${name} ${how}：${figure(rateMm.now)} mm/コマ${was(`${figure(rateMm.old)} mm/コマ`)}、全長 ${way}`;
}

/** Which leg of several. */
const legOf = ({ leg, places }: ChangeOf<'move-spacing'>) =>
  places.length > 2 ? `、${places[leg]}→${places[leg + 1]}` : '';

function spacing(it: Spacing): string {
  switch (it.form) {
    case 'linear':
      return '等速';
    case 'ease':
      return `加減速 ${it.leave}/${it.arrive}`;
    case 'curve':
      return `カーブ ${[it.x1, it.y1, it.x2, it.y2].map(figure).join(' ')}`;
    case 'steps':
      return '手書き目盛り';
    case 'fair':
      return `フェアリング ${it.mark} ${it.frame}コマ目 ${figure(it.share * 100)}%`;
  }
}

function manner(name: string, value: MannerValue, t: Telling): string {
  switch (name) {
    case 'kind':
      return value === 'pan' ? 'PAN' : 'T.U/T.B';
    case 'ticks':
      return value ? '目盛りあり' : '目盛りなし';
    case 'ratios':
      return value ? '等比' : '等差';
    case 'quick':
      return value ? 'クイック' : '通常';
    case 'on':
      return `${value}コマ打ち`;
    case 'carry':
      return value === '' ? '付けなし' : `${value}付け`;
    case 'levels':
      return value === '' ? 'セルなし' : `セル${value}`;
    case 'sense':
      return value === 'cw' ? '右回り' : '左回り';
    case 'sideways':
      return value ? '横' : '縦';
    case 'loop':
      return value === null ? 'ループなし' : `ループ ${value} mm`;
    case 'about':
      return value === null ? '中心は作画の中央' : `中心 ${value}`;
    case 'size':
      return `${String(value).replace('>', '→')} mm`;
    case 'period':
      return `周期 ${t.length(Number(value))}`;
    case 'length':
      return t.length(Number(value));
    case 'white':
      return value ? '白' : '黒';
    case 'text':
      return quoted(String(value), t);
    case 'direction':
      return (
        ({ left: '左', right: '右', up: '上', down: '下' } as Record<string, string>)[String(value)] ??
        String(value)
      );
    default:
      return String(value).replace('>', '→');
  }
}

function by({ xMm, yMm }: Point): string {
  const sides = [
    Math.abs(xMm) < 5e-3 ? '' : `${xMm > 0 ? '右' : '左'}へ${figure(Math.abs(xMm))} mm`,
    Math.abs(yMm) < 5e-3 ? '' : `${yMm > 0 ? '上' : '下'}へ${figure(Math.abs(yMm))} mm`,
  ].filter(Boolean);
  return sides.join('、') || 'わずかに移動';
}

const at = ({ xMm, yMm }: Point) => `${figure(xMm)},${figure(yMm)}`;

function lightName({ light, way, white, levels, text }: LightSeen, t: Telling): string {
  const who = levels.join(',');
  switch (light) {
    case 'fade':
      return `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;
    case 'overlap':
      return way === 'in' ? '前カットとO.L' : '次カットとO.L';
    case 'expose':
      return `${who} WXP`;
    case 'glow':
      return `${who} T光`;
    case 'effect':
      return `効果${quoted(text, t)}${who ? ` ${who}` : ''}`;
  }
}

const WORDS = { voice: 'セリフ', sound: 'SE', music: '音楽' } as const;
const speech = ({ words, speaker, text }: Speech, t: Telling) =>
  `${WORDS[words]}${speaker ? ` ${speaker}` : ''}${quoted(text, t)}`;
const MANNERS = { on: '画面内', off: 'OFF', mono: 'モノローグ' } as const;

const plain = (label: string) => (change: Was<string>) =>
  `${label} ${change.now || 'なし'}${was(change.old || 'なし')}`;
const names = (list: readonly string[]) => list.join('、') || 'なし';
const size = (it: { widthMm: number; heightMm: number } | null) =>
  it ? `${figure(it.widthMm)}×${figure(it.heightMm)} mm` : '標準用紙';

function timed(name: string, frames: Was<Frames>, t: Telling): string {
  const shift = isLater(frames);
  const span = `${range(frames.now, t)}${was(range(frames.old, t))}`;
  if (shift !== null) return `${name} ${later(shift, t)}：${span}`;
  if (frames.now.to === frames.old.to)
    return `${name} 始まりを${later(frames.now.from - frames.old.from, t)}：${span}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  return grown === 0 ? `${name}：${span}` : `${name} ${longer(grown, t)}：${span}`;
}

export const ja: Sentences = {
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
  memo: ({ old, now }, t) => {
    if (old === null) return `メモ追加：${quoted(now!, t)}`;
    return now === null ? `メモ削除：${quoted(old, t)}` : `メモ変更：${quoted(now, t)}${was(quoted(old, t))}`;
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
  reuse: ({ level, old, now }) => {
    const from = (it: typeof now) => (it ? `カット${it.cut} の ${it.level}` : 'なし');
    return `${level}：兼用 ${from(now)}${was(from(old))}`;
  },
  'level-timed': ({ level, now }) =>
    now ? `${level}：タイムシートあり` : `${level}：タイムシートなし（常時あり）`,
  'level-emptied': ({ level }) => `${level}：全部空セル`,

  exposure: (change, t) => {
    const { level, first, last, count, frames, from } = change;
    const what = block(first, last, level);
    const end = `、${t.row(from.now)}から${inCycle(change)}${follow(change.follows, t, level)}`;
    if (count > 1) return `${level}：${what}（${count}か所）各${times(frames, t)}${end}`;
    return `${level}：${what} を${longer(frames.now - frames.old, t)}、${times(frames, t)}${end}`;
  },
  moved: (change, t) => {
    const { level, first, last, from } = change;
    return `${level}：${block(first, last, level)} を${later(change.by, t)}、${t.row(from.now)}から${was(t.row(from.old))}${inCycle(change)}`;
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

  'field-added': ({ field, ...it }) => `フレーム${field} 追加：幅 ${figure(it.widthMm)} mm、${at(it)}`,
  'field-dropped': ({ field }) => `フレーム${field} 削除`,
  'field-renamed': ({ field, old }) => `フレーム${old} は ${field} に改名`,
  'field-moved': ({ field, old, now, by: way }) => `フレーム${field} ${by(way)}：${at(now)}${was(at(old))}`,
  'field-resized': ({ field, old, now, percent }) =>
    `フレーム${field} ${now > old ? '大きく' : '小さく'}：${figure(percent.now)}% ${figure(now)} mm${was(`${figure(percent.old)}% ${figure(old)} mm`)}`,
  'field-turned': ({ field, old, now }) => `フレーム${field} 傾き ${figure(now)}°${was(`${figure(old)}°`)}`,
  fix: ({ old, now }) => `FIX ${now}${was(old)}`,
  'move-added': (change, t) => `${moveName(change)} 追加：${range(change.frames, t)}`,
  'move-dropped': (change, t) => `${moveName(change)} 削除${was(range(change.frames, t))}`,
  'move-time': moveTime,
  'move-way': moveWay,
  'move-route': (change, t) => {
    const { old, now } = change.frames;
    const times = old.from === now.from && old.to === now.to ? '' : `：${range(now, t)}${was(range(old, t))}`;
    return `${moveName(change)}${was(change.old.join('→'))}${times}${speed(change)}`;
  },
  'mark-moved': (change) =>
    `${moveName(change)}：${change.mark} ${by(change.by)}、${at(change.now)}${was(at(change.old))}`,
  'move-spacing': (change) =>
    `${moveName(change)}${legOf(change)}：${spacing(change.now)}${was(spacing(change.old))}${speed(change)}`,
  'move-manner': (change, t) =>
    `${moveName(change)}：${manner(change.manner, change.now, t)}${was(manner(change.manner, change.old, t))}`,
  'light-added': (change, t) => `${lightName(change, t)} 追加：${range(change.frames, t)}`,
  'light-dropped': (change, t) => `${lightName(change, t)} 削除${was(range(change.frames, t))}`,
  'light-time': (change, t) => timed(lightName(change, t), change.frames, t),
  'light-manner': (change, t) => {
    const old = manner(change.manner, change.old, t);
    // What its name says is not said again.
    if (change.manner === 'text' || change.manner === 'levels') return `${lightName(change, t)}${was(old)}`;
    return `${lightName(change, t)}：${manner(change.manner, change.now, t)}${was(old)}`;
  },

  'speech-added': (change, t) => `${speech(change, t)} 追加：${range(change.frames, t)}`,
  'speech-dropped': (change, t) => `${speech(change, t)} 削除${was(range(change.frames, t))}`,
  'speech-time': (change, t) => timed(speech(change, t), change.frames, t),
  'speech-text': (change, t) => `${speech(change, t)} に変更${was(quoted(change.old, t))}`,
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
    `指示 ${t.row(frame)} 変更：${quoted(now, t)}${was(quoted(old, t))}`,
};
