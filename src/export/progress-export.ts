/** The progress of an episode as CSV (a row a cut and stage) and as JSON. progress.schema.json describes the JSON. */

import type { CutStage, ProgressTable } from '../count/count-stages.js';
import { amountText, type RateUnit, type Sum } from '../count/stage-rates.js';
import type { StageState } from '../count/stage-states.js';
import { csvLine } from './cut-csv.js';
import { jsonText } from './cut-json.js';

/** Raised when something that is there changes its meaning or goes; additions leave it. */
export const PROGRESS_VERSION = 1;

const HEADER = [
  'cut',
  'title',
  'stage',
  'state',
  'date',
  'person',
  'due',
  'daysLate',
  'drawings',
  'paidTo',
  'pay',
  'currency',
];

/** Empty where there is nothing to say. */
export function progressCsv({ cuts }: ProgressTable): string {
  const rows = cuts.flatMap(({ cut, title, stages }) =>
    stages.map((one) => {
      const { stage, state, row, due, daysLate, drawings, pay } = one;
      return csvLine([
        ...[cut, title, stage, state, row?.date ?? null, row?.person || null],
        ...[due, due === null ? null : daysLate, drawings],
        ...[pay?.person ?? null, pay ? amountText(pay) : null, pay?.currency ?? null],
      ]);
    }),
  );
  return csvLine(HEADER) + rows.join('');
}

export interface ExportedSum {
  /** As it is written, with the decimals of the currency: `1234.50`. */
  readonly amount: string;
  readonly currency: string;
}

export interface ExportedProgress {
  readonly version: typeof PROGRESS_VERSION;
  /** The day for which it holds. */
  readonly date: string;
  readonly stages: readonly {
    readonly stage: string;
    readonly rate: { readonly amount: string; readonly currency: string; readonly per: RateUnit } | null;
    readonly done: number;
    readonly started: number;
    readonly retake: number;
    readonly open: number;
    readonly late: number;
    readonly drawings: { readonly done: number; readonly all: number } | null;
  }[];
  readonly cuts: readonly {
    readonly cut: string;
    readonly title: string;
    /** False: errors keep it from being counted, and nothing is paid for it. */
    readonly counted: boolean;
    readonly stages: readonly {
      readonly stage: string;
      readonly state: StageState | 'open';
      readonly date: string | null;
      readonly person: string | null;
      readonly due: string | null;
      readonly daysLate: number;
      readonly drawings: number | null;
      readonly pay: (ExportedSum & { readonly person: string }) | null;
    }[];
    readonly retakes: readonly {
      readonly stage: string;
      readonly date: string;
      readonly person: string;
      readonly note: string;
    }[];
  }[];
  readonly people: readonly {
    readonly person: string;
    readonly stage: string;
    readonly cuts: number;
    readonly drawings: number | null;
    readonly pay: readonly ExportedSum[];
  }[];
  readonly pay: readonly ExportedSum[];
}

const exportedSum = (sum: Sum): ExportedSum => ({ amount: amountText(sum), currency: sum.currency });

function exportedStage({ stage, state, row, due, daysLate, drawings, pay }: CutStage) {
  const [date, person] = [row?.date ?? null, row?.person || null];
  return {
    ...{ stage, state, date, person, due, daysLate, drawings },
    pay: pay && { ...exportedSum(pay), person: pay.person },
  };
}

export function toExportedProgress(table: ProgressTable): ExportedProgress {
  const { date, totals, rates, cuts, people, pay } = table;
  return {
    version: PROGRESS_VERSION,
    date,
    stages: totals.map(({ stage, ...counts }) => {
      const rate = rates.get(stage);
      return { stage, rate: rate ? { ...exportedSum(rate), per: rate.unit } : null, ...counts };
    }),
    cuts: cuts.map(({ cut, title, payable, stages, retakes }) => ({
      ...{ cut, title, counted: payable !== null },
      stages: stages.map(exportedStage),
      retakes: retakes.map((row) => ({
        stage: row.stage,
        date: row.date,
        person: row.person,
        note: row.note,
      })),
    })),
    people: people.map((one) => ({ ...one, pay: one.pay.map(exportedSum) })),
    pay: pay.map(exportedSum),
  };
}

export function progressJson(table: ProgressTable): string {
  return jsonText(toExportedProgress(table));
}
