import type { ChartWords } from '../chart-words.js';

export const charts: ChartWords = {
  headings: { number: 'No.', drawing: 'drawing', way: 'way', frames: 'frames' },
  goesOn: '(continued)',
  page: (n) => `charts ${n}`,
  count: (n) => `${n} in-between${n === 1 ? '' : 's'}`,
  remark: (inbetweens, spacing, first) =>
    `${charts.count(inbetweens)}, ${
      { even: 'even', early: 'early', late: 'late', both: 'both', fractions: 'as marked' }[spacing]
    }, from ${first}`,
};
