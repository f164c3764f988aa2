/** Where each cut stands in production: the rows that people have written, played through stage by stage. Pure. */

import type { Span } from '../language/diagnostic.js';

/** The stages of an episode that names none. */
export const USUAL_STAGES = ['layout', 'key', 'check', 'in-between', 'finish', 'shoot'] as const;

/** What can happen to a cut at a stage. A retake sends it back to that stage: this one and those behind it are open again. */
export const STAGE_STATES = ['started', 'done', 'retake'] as const;
export type StageState = (typeof STAGE_STATES)[number];

/** One row: what happened to a cut, when, by whom. */
export interface StageRow {
  /** The cut's number as written, and the same for comparing. */
  readonly cut: string;
  readonly key: string;
  readonly stage: string;
  readonly state: StageState;
  /** ISO 8601, `2027-03-19`. */
  readonly date: string;
  /** '' where nobody is named. */
  readonly person: string;
  readonly note: string;
  /** Of its cells. */
  readonly places: { readonly cut: Span; readonly stage: Span; readonly state: Span };
}

/** How a stage of a cut stands; `open`: nobody has begun, or a retake of an earlier stage has opened it again. */
export interface Standing {
  readonly stage: string;
  readonly state: StageState | 'open';
  /** The row that says so; null while open. */
  readonly row: StageRow | null;
  /** The row by which it was first done: what is paid. Null until then. */
  readonly firstDone: StageRow | null;
}

/** A row that does not fit those before it. */
export type StageFinding =
  | { readonly kind: 'done-twice'; readonly row: StageRow; readonly before: StageRow }
  | { readonly kind: 'started-late'; readonly row: StageRow; readonly before: StageRow }
  | { readonly kind: 'retake-open'; readonly row: StageRow }
  /** `missing`: an earlier stage that is not done on that day. */
  | { readonly kind: 'early'; readonly row: StageRow; readonly missing: string };

export interface CutStanding {
  readonly standings: readonly Standing[];
  /** In the order of their dates. */
  readonly retakes: readonly StageRow[];
  readonly findings: readonly StageFinding[];
}

/** Rows by their dates; those of one day in the order in which they are written. */
export function inOrderOfDates(rows: readonly StageRow[]): StageRow[] {
  return [...rows].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

type Draft = { -readonly [K in keyof Standing]: Standing[K] };

/** The rows of one cut, in any order, played through. Rows of stages that the episode does not have are left out. */
export function cutStanding(rows: readonly StageRow[], stages: readonly string[]): CutStanding {
  const drafts = stages.map((stage): Draft => ({ stage, state: 'open', row: null, firstDone: null }));
  const played = inOrderOfDates(rows).filter(({ stage }) => stages.includes(stage));
  const retakes: StageRow[] = [];
  const findings: StageFinding[] = [];
  for (const row of played) {
    const at = stages.indexOf(row.stage);
    const own = drafts[at]!;
    const { state, row: before } = own;
    if (row.state === 'retake') {
      retakes.push(row);
      if (state !== 'done') findings.push({ kind: 'retake-open', row });
      for (const behind of drafts.slice(at + 1)) Object.assign(behind, { state: 'open', row: null });
    } else if (state === 'done') {
      findings.push({ kind: row.state === 'done' ? 'done-twice' : 'started-late', row, before: before! });
      continue;
    }
    own.state = row.state;
    own.row = row;
    if (row.state !== 'done') continue;
    own.firstDone ??= row;
    const missing = stages.slice(0, at).find((stage) => !doneBy(played, stage, row.date));
    if (missing !== undefined) findings.push({ kind: 'early', row, missing });
  }
  return { standings: drafts, retakes, findings };
}

/** Whether a stage is done at the end of a day. The rows of one day have no order that a desk would keep to. */
function doneBy(rows: readonly StageRow[], stage: string, date: string): boolean {
  const last = rows.findLast((row) => row.stage === stage && row.date <= date && row.state !== 'started');
  return last?.state === 'done';
}
