/** The progress of an episode as tables on a terminal. */

import type { CutProgress, CutStage, ProgressTable, StageTotal } from '../count/count-stages.js';
import { amountText, type Sum } from '../count/stage-rates.js';
import { plural } from '../words/number-format.js';
import { type Column, oneLine, textTable } from './terminal-table.js';

/** `width`: columns of the terminal, or null: as wide as the words are. Ends with a line end. */
export function terminalProgress(progress: ProgressTable, width: number | null): string {
  const { cuts, stages, totals, people, pay, date, rates } = progress;
  const columns: Column<CutProgress>[] = [
    { head: 'cut', of: ({ cut, payable }) => `${cut}${payable === null ? ' !' : ''}` },
    { head: 'title', least: 8, spare: 1, of: ({ title }) => oneLine(title) },
    ...stages.map(
      (stage, i): Column<CutProgress> => ({ head: stage, of: (cut) => stageCell(cut.stages[i]!, date) }),
    ),
  ];
  const stageColumns: Column<StageTotal>[] = [
    { head: 'stage', of: ({ stage }) => stage },
    ...(['done', 'started', 'retake', 'open', 'late'] as const).map(
      (head): Column<StageTotal> => ({ head, right: true, of: (one) => String(one[head]) }),
    ),
    {
      head: 'drawings',
      right: true,
      of: ({ drawings }) => (drawings ? `${drawings.done} of ${drawings.all}` : '-'),
    },
    {
      head: 'rate',
      of: ({ stage }) => {
        const rate = rates.get(stage);
        return rate ? `${amountText(rate)} ${rate.currency} per ${rate.unit}` : '';
      },
    },
  ];
  const paid = pay.length > 0;
  const personColumns: Column<(typeof people)[number]>[] = [
    {
      head: 'person',
      least: 8,
      of: ({ person }) => oneLine(person) || '(nobody named)',
      ...(paid ? { total: 'total' } : {}),
    },
    { head: 'stage', of: ({ stage }) => stage },
    { head: 'cuts', right: true, of: (one) => String(one.cuts) },
    { head: 'drawings', right: true, of: ({ drawings }) => (drawings === null ? '-' : String(drawings)) },
    ...(paid
      ? [
          {
            head: 'to be paid',
            right: true,
            of: (one: { pay: readonly Sum[] }) => money(one.pay),
            total: money(pay),
          },
        ]
      : []),
  ];
  const late = lateLines(progress);
  return [
    ...textTable(columns, cuts, width),
    '',
    ...textTable(stageColumns, totals, width),
    ...(people.length > 0 ? ['', ...textTable(personColumns, people, width)] : []),
    '',
    summary(progress),
    ...late,
    '',
  ].join('\n');
}

const money = (pay: readonly Sum[]): string =>
  pay.map((sum) => `${amountText(sum)} ${sum.currency}`).join(' + ');

/** The day on which it was done, or how it stands; `!` where it is late. */
function stageCell({ state, row, daysLate }: CutStage, today: string): string {
  const words = state === 'done' ? shortDay(row!.date, today) : state === 'open' ? '' : state;
  return state !== 'done' && daysLate > 0 ? `${words} !`.trim() : words;
}

/** Without its year where that is the year of another day. */
const shortDay = (date: string, of: string): string =>
  date.slice(0, 4) === of.slice(0, 4) ? date.slice(5) : date;

function summary({ cuts, date, stages, retakes }: ProgressTable): string {
  const last = stages.length - 1;
  const through = cuts.filter(({ stages: own }) => own[last]!.state === 'done').length;
  return `${plural(cuts.length, 'cut')} on ${date}: ${through} through the last stage, ${plural(retakes, 'retake')}`;
}

/** A line for each stage and day that is past, with the cuts that are not done, the longest past first. */
function lateLines({ cuts }: ProgressTable): string[] {
  const late = new Map<string, { days: number; cuts: string[] }>();
  for (const { cut, stages } of cuts) {
    for (const { stage, state, due, daysLate } of stages) {
      if (state === 'done' || daysLate === 0) continue;
      const what = `${stage}, due ${due}`;
      const known = late.get(what);
      if (known) known.cuts.push(cut);
      else late.set(what, { days: daysLate, cuts: [cut] });
    }
  }
  return [...late]
    .sort(([, a], [, b]) => b.days - a.days)
    .map(([what, { days, cuts: of }]) => `late by ${plural(days, 'day')}: ${what}: ${of.join(', ')}`);
}
