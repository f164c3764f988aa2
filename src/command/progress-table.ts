/** The progress of an episode as tables on a terminal. */

import type { CutProgress, CutStage, ProgressTable, StageTotal } from '../count/count-stages.js';
import { amountText, type Sum } from '../count/stage-rates.js';
import type { TableTexts } from '../language/catalogue/table-entry.js';
import { textsOf } from '../language/message.js';
import type { UserLanguage } from '../language/user-language.js';
import { type StageNames, stageNames } from './stage-names.js';
import { type Column, oneLine, textTable } from './terminal-table.js';

/** `width`: columns of the terminal, or null: as wide as the words are. Ends with a line end. */
export function terminalProgress(
  progress: ProgressTable,
  width: number | null,
  language: UserLanguage,
): string {
  const { cuts, stages, totals, people, pay, date, rates } = progress;
  const { tables } = textsOf(language);
  const words = tables.progress;
  const { heads } = words;
  const names = stageNames(language);
  const columns: Column<CutProgress>[] = [
    { head: heads.cut, of: ({ cut, payable }) => `${cut}${payable === null ? ' !' : ''}` },
    { head: heads.title, least: 8, spare: 1, of: ({ title }) => oneLine(title) },
    ...stages.map(
      (stage, i): Column<CutProgress> => ({
        head: names.stage(stage),
        of: (cut) => stageCell(cut.stages[i]!, date, words),
      }),
    ),
  ];
  const stageColumns: Column<StageTotal>[] = [
    // Where what is called otherwise has to be typed, both.
    {
      head: heads.stage,
      of: ({ stage }) => (names.stage(stage) === stage ? stage : `${names.stage(stage)} ${stage}`),
    },
    ...(['done', 'started', 'retake', 'open', 'late'] as const).map(
      (standing): Column<StageTotal> => ({
        head: heads[standing],
        right: true,
        of: (one) => String(one[standing]),
      }),
    ),
    {
      head: heads.drawings,
      right: true,
      of: ({ drawings }) => (drawings ? words.doneOf(drawings.done, drawings.all) : '-'),
    },
    {
      head: heads.rate,
      of: ({ stage }) => {
        const rate = rates.get(stage);
        return rate ? words.rate(amountText(rate), rate.currency, names.unit(rate.unit)) : '';
      },
    },
  ];
  const paid = pay.length > 0;
  const personColumns: Column<(typeof people)[number]>[] = [
    {
      head: heads.person,
      least: 8,
      of: ({ person }) => oneLine(person) || words.nobody,
      ...(paid ? { total: tables.total } : {}),
    },
    { head: heads.stage, of: ({ stage }) => names.stage(stage) },
    { head: heads.cuts, right: true, of: (one) => String(one.cuts) },
    { head: heads.drawings, right: true, of: ({ drawings }) => (drawings === null ? '-' : String(drawings)) },
    ...(paid
      ? [
          {
            head: heads.pay,
            right: true,
            of: (one: { pay: readonly Sum[] }) => money(one.pay),
            total: money(pay),
          },
        ]
      : []),
  ];
  return [
    ...textTable(columns, cuts, width, tables),
    '',
    ...textTable(stageColumns, totals, width, tables),
    ...(people.length > 0 ? ['', ...textTable(personColumns, people, width, tables)] : []),
    '',
    summary(progress, words),
    ...lateLines(progress, words, names),
    '',
  ].join('\n');
}

type ProgressTexts = TableTexts['progress'];

const money = (pay: readonly Sum[]): string =>
  pay.map((sum) => `${amountText(sum)} ${sum.currency}`).join(' + ');

/** The day on which it was done, or how it stands; `!` where it is late. */
function stageCell({ state, row, daysLate }: CutStage, today: string, { states }: ProgressTexts): string {
  const said = state === 'done' ? shortDay(row!.date, today) : state === 'open' ? '' : states[state];
  return state !== 'done' && daysLate > 0 ? `${said} !`.trim() : said;
}

/** Without its year where that is the year of another day. */
const shortDay = (date: string, of: string): string =>
  date.slice(0, 4) === of.slice(0, 4) ? date.slice(5) : date;

function summary({ cuts, date, stages, retakes }: ProgressTable, words: ProgressTexts): string {
  const last = stages.length - 1;
  const through = cuts.filter(({ stages: own }) => own[last]!.state === 'done').length;
  return words.summary(cuts.length, date, through, retakes);
}

/** A line for each stage and day that is past, with the cuts that are not done, the longest past first. */
function lateLines({ cuts }: ProgressTable, words: ProgressTexts, names: StageNames): string[] {
  const late = new Map<string, { stage: string; due: string; days: number; cuts: string[] }>();
  for (const { cut, stages } of cuts) {
    for (const { stage, state, due, daysLate } of stages) {
      if (state === 'done' || due === null || daysLate === 0) continue;
      const key = `${stage} ${due}`;
      const known = late.get(key);
      if (known) known.cuts.push(cut);
      else late.set(key, { stage, due, days: daysLate, cuts: [cut] });
    }
  }
  return [...late.values()]
    .sort((a, b) => b.days - a.days)
    .map(({ days, stage, due, cuts: of }) => words.late(days, names.stage(stage), due, of));
}
