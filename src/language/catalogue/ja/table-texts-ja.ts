import type { BudgetLeft, TableTexts } from '../table-entry.js';

const cuts = (count: number): string => `${count}カット`;

const againstBudget = (left: BudgetLeft | null): string => {
  if (left === null) return '';
  const { budget, by } = left;
  return `（定尺 ${budget}：${by === null ? '過不足なし' : `${by.length} ${by.over ? '超過' : '不足'}`}）`;
};

const runningTime = (length: string, least: boolean, budget: BudgetLeft | null): string =>
  `総尺 ${length}${least ? ' 以上' : ''}${againstBudget(budget)}`;

export const tables: TableTexts = {
  leftOut: (heads) => `幅が足りないので省いた列：${heads.join('、')}`,
  total: '合計',
  list: {
    heads: {
      cut: 'カット',
      title: '内容',
      scene: 'シーン',
      time: '尺',
      feet: 'フィート',
      levels: 'セル',
      keys: '原画',
      breakdowns: '中割り参考',
      inbetweens: '中割り',
      drawings: '動画枚数',
      reused: '兼用',
      camera: 'カメラ',
      pages: 'ページ',
      artist: '担当',
      problems: '誤り・注意',
      cuts: 'カット数',
    },
    running: (count, length, least, budget) => `${cuts(count)}、${runningTime(length, least, budget)}`,
    times: (length) => `各カットの尺の合計は ${length}（O.L は一度だけ数える）`,
    drawings: ({ drawings, keys, breakdowns, inbetweens, reused, backgrounds }, newOnesASecond) =>
      `動画枚数 ${drawings}枚：原画${keys}、中割り参考${breakdowns}、中割り${inbetweens}。兼用${reused}${backgrounds > 0 ? `、ほかに背景${backgrounds}枚` : ''}。1秒あたり新規 ${newOnesASecond}枚`,
    pages: (all, sheets) => `${all}ページ、うちシート${sheets}ページ`,
    unsound: (count, untimed) =>
      `${cuts(count)}に誤りあり（!）：読めた分だけ数え、印刷しない${untimed > 0 ? `。うち${cuts(untimed)}は尺が不明で合計に入らない` : ''}`,
    withoutArtist: (count) => `${cuts(count)}は担当未定`,
    shared: (count) => `${cuts(count)}は複数担当：下の表では各人に、上の表では一度だけ数える`,
  },
  since: {
    heads: {
      cut: 'カット',
      title: '内容',
      timeAt: (revision) => `尺（${revision}）`,
      drawingsAt: (revision) => `動画枚数（${revision}）`,
      now: '現在',
      change: '増減',
    },
    cutNew: '新規',
    cutGone: '欠番',
    differ: (count, unchanged, reordered) =>
      `${count === 0 ? '違うカットなし' : `${cuts(count)}に違いあり`}${unchanged > 0 ? `、${cuts(unchanged)}は尺も枚数も同じ` : ''}${reordered ? '。カットの順が変わった' : ''}`,
    episode: (revision, count, drawings, length, least, budget) =>
      `${revision ?? '現在'}：${cuts(count)}、${drawings}枚、${runningTime(length, least, budget)}`,
    runs: (by, sense) =>
      sense === 'same' ? '総尺は変わらない' : `総尺は ${by} ${sense === 'longer' ? '長い' : '短い'}`,
    budget: (by, sense) => `定尺は ${by} ${sense === 'larger' ? '長い' : '短い'}`,
    unsound: '誤りのあるカット（!）は読めた分だけ数える',
  },
  progress: {
    heads: {
      cut: 'カット',
      title: '内容',
      stage: '工程',
      done: '済',
      started: '作業中',
      retake: 'リテイク',
      open: '未',
      late: '遅れ',
      drawings: '枚数',
      rate: '単価',
      person: '担当',
      cuts: 'カット数',
      pay: '支払額',
    },
    states: { done: '済', started: '作業中', retake: 'リテイク', open: '未' },
    nobody: '（担当未定）',
    doneOf: (done, all) => `${done}／${all}`,
    rate: (amount, currency, unit) => `${amount} ${currency}／${unit}`,
    summary: (count, date, through, retakes) =>
      `${date} 現在 ${cuts(count)}：最後の工程まで済 ${through}、リテイク${retakes}件`,
    late: (days, stage, due, names) => `${days}日遅れ：${stage}、締切 ${due}：${names.join('、')}`,
  },
};
