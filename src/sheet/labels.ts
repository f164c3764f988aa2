import type { LabelLanguage } from '../shot/settings.js';

/** Every word that the form itself prints, in one language. */
export interface Words {
  readonly title: string;
  readonly episode: string;
  readonly scene: string;
  readonly cut: string;
  readonly time: string;
  readonly feet: string;
  readonly take: string;
  readonly page: string;
  readonly artist: string;
  /** The boxes to sign and date, left to right. */
  readonly signatures: readonly string[];
  readonly memo: string;
  readonly stack: string;
  readonly keys: string;
  readonly dialogue: string;
  readonly cels: string;
  readonly camera: string;
  readonly notes: string;
  readonly drawings: string;
  readonly last: string;
  /** Over the lists of added, reused and missing numbers. */
  readonly changes: string;
  readonly added: string;
  readonly reused: string;
  readonly missing: string;
  /** Where the lists go on: in the memo. */
  readonly inMemo: string;
  readonly off: string;
  readonly mono: string;
  readonly sound: string;
  readonly music: string;
  readonly cutPoint: string;
  readonly runsOn: string;
  /** `ja`: wide brackets and signs. */
  readonly language: LabelLanguage;
  /** A cut's own title. */
  quoted(title: string): string;
  passes(times: number): string;
  memoOn(page: string): string;
  memoGoesOn(page: string): string;
  levelsOn(names: string, page: string): string;
  reuse(level: string, cut: string, other: string): string;
  /** A level that other cuts show again, in the memo and, short, over its column. */
  lent(level: string, borrowers: readonly { readonly cut: string; readonly as: string }[]): string;
  lentShort(cuts: readonly string[]): string;
  /** Over the list of what differs from another version; `bars`: some rows have one. */
  changed(against: string, bars: boolean): string;
  unchanged(against: string): string;
  handles(head: string, tail: string, length: string): string;
  keyCount(keys: number): string;
  /** The foot's naming of the cut. */
  cutNumber(cut: string): string;
}

/** `12`, `12 and 15`, `12, 15 and 20`. */
const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join() : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

const en: Words = {
  language: 'en',
  title: 'title',
  episode: 'episode',
  scene: 'scene',
  cut: 'cut',
  time: 'time',
  feet: 'feet + frames',
  take: 'take',
  page: 'page',
  artist: 'artist',
  signatures: ['layout', 'key', 'director', 'animation director', 'checker', 'in-between'],
  memo: 'memo',
  stack: 'stack',
  keys: 'key drawings',
  dialogue: 'dialogue',
  cels: 'finished cels',
  camera: 'camera',
  notes: 'notes',
  drawings: 'drawings',
  last: 'last no.',
  changes: 'added, reused, none',
  added: 'added',
  reused: 'reused',
  missing: 'no',
  inMemo: 'see memo',
  off: 'OFF',
  mono: 'inner voice',
  sound: 'SE',
  music: 'music',
  cutPoint: 'cut point',
  runsOn: 'cycle',
  quoted: (title) => `“${title}”`,
  passes: (times) => `${times} times`,
  memoOn: (page) => `Memo: page ${page}`,
  memoGoesOn: (page) => `goes on on page ${page}`,
  levelsOn: (names, page) => `Levels ${names}: page ${page}`,
  reuse: (level, cut, other) => `${level}: reuse of cut ${cut}, level ${other}`,
  lent: (level, borrowers) =>
    `${level} is shown again in ${borrowers.length === 1 ? 'cut' : 'cuts'} ${listed(borrowers.map(({ cut, as }) => `${cut} (as ${as})`))}`,
  lentShort: (cuts) => `again in ${cuts.map((cut) => `c${cut}`).join(' ')}`,
  changed: (against, bars) => `Changed against ${against}${bars ? ' (bar: rows that differ)' : ''}`,
  unchanged: (against) => `No change against ${against}`,
  handles: (head, tail, length) =>
    `Handles (shaded rows): ${[head && `${head} before the cut`, tail && `${tail} after it`].filter(Boolean).join(', ')}. Sheet ${length} in all.`,
  keyCount: (keys) => `${keys} key${keys === 1 ? '' : 's'}`,
  cutNumber: (cut) => `cut ${cut}`,
};

const ja: Words = {
  language: 'ja',
  title: '作品名',
  episode: '話数',
  scene: 'シーン',
  cut: 'カット',
  time: '尺',
  feet: 'フィート',
  take: 'テイク',
  page: '枚',
  artist: '担当',
  signatures: ['レイアウト', '原画', '演出', '作画監督', '動画検査', '動画'],
  memo: 'メモ',
  stack: 'セル重ね',
  keys: '原画',
  dialogue: 'セリフ',
  cels: '動画',
  camera: 'カメラ',
  notes: '指示',
  drawings: '枚数',
  last: '最終番号',
  changes: '追加・兼用・欠番',
  added: '追加',
  reused: '兼用',
  missing: '欠番',
  inMemo: 'メモ参照',
  off: 'OFF',
  mono: 'モノローグ',
  sound: 'SE',
  music: '音楽',
  cutPoint: 'カット点',
  runsOn: 'リピート',
  quoted: (title) => `「${title}」`,
  passes: (times) => `${times}回`,
  memoOn: (page) => `メモは${page}枚目`,
  memoGoesOn: (page) => `${page}枚目へ続く`,
  levelsOn: (names, page) => `セル ${names} は ${page}枚目`,
  reuse: (level, cut, other) => `${level}：兼用　カット${cut} の ${other}`,
  lent: (level, borrowers) =>
    `${level}：兼用先　${borrowers.map(({ cut, as }) => `カット${cut} の ${as}`).join('、')}`,
  lentShort: (cuts) => `兼用先 ${cuts.map((cut) => `c${cut}`).join('、')}`,
  changed: (against, bars) => `${against} からの変更${bars ? '（太線：変わったコマ）' : ''}`,
  unchanged: (against) => `${against} から変更なし`,
  handles: (head, tail, length) =>
    `のりしろ（網かけ）：${[head && `頭 ${head}`, tail && `尻 ${tail}`].filter(Boolean).join('、')}。シート全体 ${length}`,
  keyCount: (keys) => `原画${keys}枚`,
  cutNumber: (cut) => `カット ${cut}`,
};

export const words = (labels: LabelLanguage): Words => (labels === 'ja' ? ja : en);
