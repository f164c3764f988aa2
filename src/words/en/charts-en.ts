import type { ChartWords } from '../chart-words.js';
import { plural } from '../number-format.js';

export const charts: ChartWords = {
  headings: { number: 'No.', drawing: 'drawing', way: 'way', frames: 'frames' },
  goesOn: '(continued)',
  page: (n) => `charts ${n}`,
  count: (n) => plural(n, 'in-between'),
  even: (passages) => `even: ${passages.join(', ')}`,
  evenOnes: (n) => `${plural(n, 'even passage')} without a chart`,
  remark: (inbetweens, spacing, first) =>
    `${charts.count(inbetweens)}, ${
      { even: 'even', early: 'early', late: 'late', both: 'both', fractions: 'as marked' }[spacing]
    }, from ${first}`,
};
