/** The cut as a whole, its levels and their artwork. */

import type { Was } from '../../compare/change.js';
import type { ChangeSentences } from '../change-sentences.js';
import { at, by, longer, none, quoted, size, was } from './change-parts-ja.js';

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
} satisfies Partial<ChangeSentences>;
