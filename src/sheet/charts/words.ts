import type { LabelLanguage } from '../../shot/settings.js';
import type { SolvedPassage } from '../../solve/solved.js';
import type { Headings } from './ladder.js';

/** What the charts say beside their numbers. */
export interface ChartWords {
  readonly headings: Headings;
  readonly goesOn: string;
  /** What the n-th page of charts is called in head and foot. */
  page(n: number): string;
  count(inbetweens: number): string;
  /** The line under a ladder's title: how many, how they are spaced, where the passage is first seen. */
  remark(passage: SolvedPassage, first: string): string;
}

const english: ChartWords = {
  headings: { number: 'No.', drawing: 'drawing', way: 'way', frames: 'frames' },
  goesOn: '(continued)',
  page: (n) => `charts ${n}`,
  count: (n) => `${n} in-between${n === 1 ? '' : 's'}`,
  remark: (passage, first) =>
    `${english.count(passage.drawings.length)}, ${
      { even: 'even', early: 'early', late: 'late', both: 'both', fractions: 'as marked' }[passage.chart]
    }, from ${first}`,
};

const japanese: ChartWords = {
  headings: { number: '番号', drawing: '動画', way: '割り', frames: 'コマ' },
  goesOn: '（続き）',
  page: (n) => `チャート ${n}`,
  count: (n) => `中割 ${n}枚`,
  remark: (passage, first) =>
    `${japanese.count(passage.drawings.length)}　${
      { even: '均等', early: '先ヅメ', late: '後ヅメ', both: '両ヅメ', fractions: '指定' }[passage.chart]
    }　${first}から`,
};

export function chartWords(labels: LabelLanguage): ChartWords {
  return labels === 'ja' ? japanese : english;
}
