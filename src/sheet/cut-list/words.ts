/** Words of the pages of an episode: cut list and rhythm. */

import type { LabelLanguage } from '../../shot/settings.js';

export interface ListWords {
  /** Names of the pages, large in their heads. Heads of columns are broken where they say so. */
  readonly list: string;
  readonly rhythm: string;
  /** Page labels. */
  listPage(n: number): string;
  readonly heads: {
    readonly title: string;
    readonly episode: string;
    readonly cuts: string;
    readonly running: string;
    readonly budget: string;
    readonly page: string;
  };
  readonly columns: {
    readonly cut: string;
    readonly title: string;
    readonly scene: string;
    readonly time: string;
    readonly frames: string;
    readonly feet: string;
    readonly rows: string;
    readonly levels: string;
    readonly keys: string;
    readonly breakdowns: string;
    readonly inbetweens: string;
    readonly drawings: string;
    readonly reused: string;
    readonly camera: string;
    readonly sheetPages: string;
    readonly pages: string;
    readonly artist: string;
    readonly problems: string;
    readonly remarks: string;
  };
  readonly total: string;
  readonly artists: {
    readonly artist: string;
    readonly cuts: string;
    readonly running: string;
    readonly drawings: string;
    readonly nobody: string;
  };
  /** `time`: as it is written. */
  over(time: string): string;
  under(time: string): string;
  readonly exact: string;
  readonly noBudget: string;
  pace(drawings: string, time: string): string;
  sharedNote(cuts: number): string;
  unsoundNote(cuts: number, untimed: number): string;
  problemsNote(errors: number, warnings: number): string;
  overlapNote(time: string): string;
  readonly legend: {
    readonly camera: string;
    readonly dialogue: string;
    readonly density: string;
    readonly overlap: string;
    readonly scene: string;
    readonly unsound: string;
    readonly budget: string;
    notDrawn(cuts: string): string;
  };
  scene(name: string): string;
}

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

const en: ListWords = {
  list: 'Cut list',
  rhythm: 'Rhythm',
  listPage: (n) => `cut list ${n}`,
  heads: {
    title: 'title',
    episode: 'episode',
    cuts: 'cuts',
    running: 'running time',
    budget: 'budget',
    page: 'page',
  },
  columns: {
    cut: 'cut',
    title: 'title',
    scene: 'scene',
    time: 'time',
    frames: 'frames',
    feet: 'feet',
    rows: 'rows',
    levels: 'levels',
    keys: 'keys',
    breakdowns: 'break-\ndowns',
    inbetweens: 'in-be-\ntweens',
    drawings: 'draw-\nings',
    reused: 'reused',
    camera: 'camera',
    sheetPages: 'sheet\npages',
    pages: 'all\npages',
    artist: 'artist',
    problems: 'errors,\nwarnings',
    remarks: 'remarks',
  },
  total: 'total',
  artists: {
    artist: 'artist',
    cuts: 'cuts',
    running: 'running time',
    drawings: 'drawings',
    nobody: 'nobody named',
  },
  over: (time) => `${time} over`,
  under: (time) => `${time} under`,
  exact: 'to the frame',
  noBudget: 'none',
  pace: (drawings, time) => `${drawings} new drawings a second; a cut runs ${time} on average`,
  sharedNote: (cuts) =>
    `${plural(cuts, 'cut')} of several artists: counted for each of them here, once in the total.`,
  unsoundNote: (cuts, untimed) =>
    `${plural(cuts, 'cut')} with errors (!): counted as far as could be read, not printed${untimed > 0 ? `; the time of ${untimed} is not known and not in the total` : ''}.`,
  problemsNote: (errors, warnings) => `${plural(errors, 'error')}, ${plural(warnings, 'warning')}`,
  overlapNote: (time) => `The times of the cuts come to ${time}; dissolves run once.`,
  legend: {
    camera: 'camera or level moves',
    dialogue: 'dialogue',
    density: 'new drawings a second:',
    overlap: 'dissolve',
    scene: 'new scene',
    unsound: 'cut with errors',
    budget: 'budget ends',
    notDrawn: (cuts) => `Not drawn, time not known: ${cuts}`,
  },
  scene: (name) => `sc. ${name}`,
};

const ja: ListWords = {
  list: 'カット表',
  rhythm: 'リズム表',
  listPage: (n) => `カット表 ${n}`,
  heads: {
    title: '作品名',
    episode: '話数',
    cuts: 'カット数',
    running: '総尺',
    budget: '定尺',
    page: '枚',
  },
  columns: {
    cut: 'カット',
    title: '内容',
    scene: 'シーン',
    time: '尺',
    frames: 'コマ',
    feet: 'フィート',
    rows: '行数',
    levels: 'セル',
    keys: '原画',
    breakdowns: '中割\n参考',
    inbetweens: '動画',
    drawings: '合計\n枚数',
    reused: '兼用',
    camera: 'カメラ',
    sheetPages: 'シート\n枚数',
    pages: '全\n枚数',
    artist: '担当',
    problems: '誤り・\n注意',
    remarks: '備考',
  },
  total: '合計',
  artists: { artist: '担当', cuts: 'カット数', running: '尺', drawings: '枚数', nobody: '担当未定' },
  over: (time) => `${time} 超過`,
  under: (time) => `${time} 不足`,
  exact: '過不足なし',
  noBudget: 'なし',
  pace: (drawings, time) => `1秒あたり新規 ${drawings}枚、平均カット尺 ${time}`,
  sharedNote: (cuts) => `${cuts}カットは複数担当。この表では各人に数え、合計では一度だけ数える。`,
  unsoundNote: (cuts, untimed) =>
    `${cuts}カットに誤りあり（!）。読めた分だけ数え、印刷しない${untimed > 0 ? `。うち${untimed}カットは尺が不明で合計に入らない` : ''}。`,
  problemsNote: (errors, warnings) => `誤り${errors}、注意${warnings}`,
  overlapNote: (time) => `各カットの尺の合計は ${time}。O.L は一度だけ数える。`,
  legend: {
    camera: 'カメラ・セルの動き',
    dialogue: 'セリフ',
    density: '1秒あたりの新規枚数：',
    overlap: 'O.L',
    scene: 'シーン替わり',
    unsound: '誤りのあるカット',
    budget: '定尺',
    notDrawn: (cuts) => `尺が不明のため図にない：${cuts}`,
  },
  scene: (name) => `S${name}`,
};

export const listWords = (labels: LabelLanguage): ListWords => (labels === 'ja' ? ja : en);
