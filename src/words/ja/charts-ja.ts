import type { ChartWords } from '../chart-words.js';

export const charts: ChartWords = {
  headings: { number: '番号', drawing: '絵', way: '割り', frames: 'コマ' },
  goesOn: '（続き）',
  page: (n) => `チャート ${n}`,
  count: (n) => `中割 ${n}枚`,
  even: (passages) => `均等：${passages.join('、')}`,
  evenOnes: (n) => `均等の中割 ${n}か所はチャート省略`,
  remark: (inbetweens, spacing, first) =>
    `${charts.count(inbetweens)}　${
      { even: '均等', early: '先ヅメ', late: '後ヅメ', both: '両ヅメ', fractions: '指定' }[spacing]
    }　${first}から`,
};
