import type { ReportTexts } from '../catalogue-entry.js';

const SEVERITY = { error: '誤り', warning: '注意', hint: 'ヒント' } as const;

export const report: ReportTexts = {
  severity: SEVERITY,
  places: { 'command line': 'コマンドライン', 'standard input': '標準入力', 'the new cut': '新しいカット' },
  note: '参考',
  mend: '直し方',
  leftOut: ({ file, severity, count, most }) =>
    `${file} の${SEVERITY[severity]}は、ほかに${count}件あります。先の${most}件を直して、もう一度調べてください`,
};
