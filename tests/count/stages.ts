/** Rows of progress for tests, in short: `1 key done 2027-03-19 Quoy`. */

import type { StageRow } from '../../src/count/stage-states.js';

export function stageRow(line: string): StageRow {
  const [cut = '', stage = '', state = '', date = '', person = ''] = line.split(' ');
  const place = { file: 'progress.csv', start: 0, end: 0 };
  const places = { cut: place, stage: place, state: place };
  return { cut, key: cut, stage, state: state as StageRow['state'], date, person, note: '', places };
}

export const stageRows = (...lines: readonly string[]): StageRow[] => lines.map(stageRow);
