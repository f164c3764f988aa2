import type { ReportTexts } from '../catalogue-entry.js';

export const report: ReportTexts = {
  severity: { error: 'Error', warning: 'Warning', hint: 'Hint' },
  places: {
    'command line': 'command line',
    'standard input': 'standard input',
    'the new cut': 'the new cut',
  },
  note: 'note',
  mend: 'to mend',
  leftOut({ file, severity, count, most }) {
    const what = count === 1 ? `1 more ${severity}` : `${count} more ${severity}s`;
    return `${what} of ${file} ${count === 1 ? 'is' : 'are'} not shown: mend the first ${most} and look again`;
  },
};
