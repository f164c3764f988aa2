/** Fields, moves and light. */

import type {
  ChangeOf,
  LightManner,
  LightSeen,
  MannerValue,
  MoveSpeed,
  Spacing,
} from '../../compare/change.js';
import { type ChangeSentences, isLater, lasts, type SentenceFormat } from '../change-sentences.js';
import { figure, repeated } from '../number-format.js';
import { at, by, later, longer, quoted, range, timed, was } from './change-levels-ja.js';

function speed({ largestStepMm: { old, now } }: MoveSpeed): string {
  if (Math.abs(old - now) < 0.005) return '';
  return `、${now > old ? '速く' : '遅く'}：最大 ${figure(now)} mm/コマ${was(figure(old))}`;
}

function moveTime(change: ChangeOf<'move-time'>, t: SentenceFormat): string {
  const { frames, stops, places } = change;
  const by = isLater(frames);
  const name = t.move(change);
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

function moveWay(change: ChangeOf<'move-way'>, t: SentenceFormat): string {
  const { distanceMm, rateMm } = change;
  const name = t.move(change);
  const way = `${figure(distanceMm.now)} mm${was(`${figure(distanceMm.old)} mm`)}`;
  if (rateMm.old === null || rateMm.now === null) return `${name} ${way}${speed(change)}`;
  const how = rateMm.now > rateMm.old ? '速く' : '遅く';
  return `${name} ${how}：${figure(rateMm.now)} mm/コマ${was(`${figure(rateMm.old)} mm/コマ`)}、全長 ${way}`;
}

/** Which leg of several. */
const legOf = ({ leg, places }: ChangeOf<'move-spacing'>) =>
  places.length > 2 ? `、${places[leg]}→${places[leg + 1]}` : '';

function spacing(it: Spacing, t: SentenceFormat): string {
  switch (it.form) {
    case 'linear':
      return '等速';
    case 'ease':
      return `加減速 ${it.leave}/${it.arrive}`;
    case 'curve':
      return `カーブ ${[it.x1, it.y1, it.x2, it.y2].map((one) => figure(one)).join(' ')}`;
    case 'steps':
      return `手書き目盛り ${repeated(it.mm)}`;
    case 'fair':
      return `フェアリング ${it.mark} ${t.row(it.frame)} ${figure(it.share * 100)}%`;
  }
}

function moveManner(change: ChangeOf<'move-manner'>, value: MannerValue, t: SentenceFormat): string {
  switch (change.manner) {
    case 'kind':
      return value === 'pan' ? 'PAN' : 'T.U/T.B';
    case 'graduated':
      return value ? '目盛りあり' : '目盛りなし';
    case 'gives':
      return value === null ? '中心と幅' : value === 'width' ? '幅の動き' : '中心の動き';
    case 'on':
      return `${value}コマ打ち`;
    case 'levels':
      return levels(value);
    default:
      return t.parameter(change, value);
  }
}

const levels = (value: MannerValue): string => (value === '' ? 'セルなし' : `セル${value}`);

function lightManner(name: LightManner, value: MannerValue, t: SentenceFormat): string {
  switch (name) {
    case 'levels':
      return levels(value);
    case 'length':
      return t.length(Number(value));
    case 'towards':
      return { left: '左へ', right: '右へ', up: '上へ', down: '下へ' }[String(value)] ?? '';
    case 'centre':
      return `中心 ${String(value)}`;
    case 'white':
      return value ? '白' : '黒';
    case 'text':
      return quoted(String(value), t);
    case 'shares':
      return String(value).replace('>', '→');
  }
}

function lightName({ light, way, white, levels, text }: LightSeen, t: SentenceFormat): string {
  const who = levels.join(',');
  switch (light) {
    case 'fade':
      return `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;
    case 'wipe':
      return `ワイプ${way === 'in' ? 'イン' : 'アウト'}`;
    case 'iris':
      return `アイリス${way === 'in' ? 'イン' : 'アウト'}`;
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

export const camera = {
  'field-added': ({ field, ...it }) => `フレーム${field} 追加：幅 ${figure(it.widthMm)} mm、${at(it)}`,
  'field-dropped': ({ field }) => `フレーム${field} 削除`,
  'field-renamed': ({ field, old }) => `フレーム${old} は ${field} に改名`,
  'field-moved': ({ field, old, now, by: way }) => `フレーム${field} ${by(way)}：${at(now)}${was(at(old))}`,
  'field-resized': ({ field, old, now, percent }) =>
    `フレーム${field} ${now > old ? '大きく' : '小さく'}：${figure(percent.now)}% ${figure(now)} mm${was(`${figure(percent.old)}% ${figure(old)} mm`)}`,
  'field-turned': ({ field, old, now }) => `フレーム${field} 傾き ${figure(now)}°${was(`${figure(old)}°`)}`,
  fix: ({ old, now }) => `FIX ${now}${was(old)}`,
  'move-added': (change, t) => `${t.move(change)} 追加：${range(change.frames, t)}`,
  'move-dropped': (change, t) => `${t.move(change)} 削除${was(range(change.frames, t))}`,
  'move-time': moveTime,
  'move-way': moveWay,
  'move-route': (change, t) => {
    const { old, now } = change.frames;
    const times = old.from === now.from && old.to === now.to ? '' : `：${range(now, t)}${was(range(old, t))}`;
    return `${t.move(change)}${was(change.old.join('→'))}${times}${speed(change)}`;
  },
  'mark-moved': (change, t) =>
    `${t.move(change)}：${change.mark} ${by(change.by)}、${at(change.now)}${was(at(change.old))}`,
  'move-spacing': (change, t) =>
    `${t.move(change)}${legOf(change)}：${spacing(change.now, t)}${was(spacing(change.old, t))}${speed(change)}`,
  'move-manner': (change, t) =>
    `${t.move(change)}：${moveManner(change, change.now, t)}${was(moveManner(change, change.old, t))}`,
  'light-added': (change, t) => `${lightName(change, t)} 追加：${range(change.frames, t)}`,
  'light-dropped': (change, t) => `${lightName(change, t)} 削除${was(range(change.frames, t))}`,
  'light-time': (change, t) => timed(lightName(change, t), change.frames, t),
  'light-manner': (change, t) => {
    const old = lightManner(change.manner, change.old, t);
    // What its name says is not said again.
    if (change.manner === 'text' || change.manner === 'levels') return `${lightName(change, t)}${was(old)}`;
    return `${lightName(change, t)}：${lightManner(change.manner, change.now, t)}${was(old)}`;
  },
} satisfies Partial<ChangeSentences>;
