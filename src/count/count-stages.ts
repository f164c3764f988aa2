/** The progress of an episode: how each cut stands, what is late, what was drawn and is to be paid. Pure. */

import {
  countedDrawings,
  drawingsOfStage,
  type Payable,
  payment,
  type Rate,
  type Sum,
  sums,
} from './stage-rates.js';
import { cutStanding, type StageRow, type Standing } from './stage-states.js';

/** A day by which a stage is to be done; `cut` null: of every cut that has no day of its own. */
export interface DueDay {
  readonly stage: string;
  /** For comparing. */
  readonly cut: string | null;
  readonly date: string;
}

/** How the episode is produced. */
export interface Production {
  readonly stages: readonly string[];
  readonly due: readonly DueDay[];
  readonly rates: ReadonlyMap<string, Rate>;
}

/** A cut in story order; `payable` null: errors keep it from being counted. */
export interface ProducedCut {
  readonly cut: string;
  /** For comparing. */
  readonly key: string;
  readonly title: string;
  readonly payable: Payable | null;
}

export interface CutStage extends Standing {
  readonly due: string | null;
  /** Days behind the due day: until it was done, or until today. 0 where it is in time. */
  readonly daysLate: number;
  /** Drawings that the stage works on; null where it counts none, or the cut could not be counted. */
  readonly drawings: number | null;
  /** To whom and what, once it is done for the first time; null where nothing is paid. */
  readonly pay: (Sum & { readonly person: string }) | null;
}

export interface CutProgress extends ProducedCut {
  readonly stages: readonly CutStage[];
  readonly retakes: readonly StageRow[];
}

/** One stage over all cuts. */
export interface StageTotal {
  readonly stage: string;
  readonly done: number;
  readonly started: number;
  readonly retake: number;
  readonly open: number;
  /** Not done, and the day is past. */
  readonly late: number;
  /** Drawings of the cuts that are done, of all; null where the stage counts none. */
  readonly drawings: { readonly done: number; readonly all: number } | null;
}

/** What one person has done at one stage. */
export interface PersonTotal {
  readonly person: string;
  readonly stage: string;
  readonly cuts: number;
  /** Null where the stage counts none. */
  readonly drawings: number | null;
  readonly pay: readonly Sum[];
}

export interface ProgressTable {
  /** The day for which it holds. */
  readonly date: string;
  readonly stages: readonly string[];
  readonly rates: ReadonlyMap<string, Rate>;
  readonly cuts: readonly CutProgress[];
  readonly totals: readonly StageTotal[];
  /** Sorted by name, then by stage; nobody named comes last. */
  readonly people: readonly PersonTotal[];
  readonly pay: readonly Sum[];
  readonly retakes: number;
}

/** `date`: rows behind that day are left out, and it decides what is late. Rows of cuts that are not given are left out. */
export function progressTable(
  given: readonly ProducedCut[],
  rows: readonly StageRow[],
  production: Production,
  date: string,
): ProgressTable {
  const byCut = new Map<string, StageRow[]>();
  for (const row of rows) {
    if (row.date > date) continue;
    const own = byCut.get(row.key);
    if (own) own.push(row);
    else byCut.set(row.key, [row]);
  }
  const { stages, rates } = production;
  const taken = new Set<string>();
  const cuts = given.map((cut): CutProgress => {
    // Two cuts of one number are an error elsewhere; the rows are the first one's.
    const own = taken.has(cut.key) ? [] : (byCut.get(cut.key) ?? []);
    taken.add(cut.key);
    const { standings, retakes } = cutStanding(own, stages);
    return { ...cut, retakes, stages: standings.map((one) => cutStage(cut, one, production, date)) };
  });
  return {
    ...{ date, stages, rates, cuts },
    totals: stages.map((stage, i) => stageTotal(stage, cuts, i, rates.get(stage) ?? null)),
    people: personTotals(cuts, stages),
    pay: sums(cuts.flatMap((cut) => cut.stages.flatMap(({ pay }) => pay ?? []))),
    retakes: cuts.reduce((sum, cut) => sum + cut.retakes.length, 0),
  };
}

function cutStage(
  { key, payable }: ProducedCut,
  standing: Standing,
  { due: days, rates }: Production,
  today: string,
): CutStage {
  const { stage, state, row, firstDone } = standing;
  const due = dueDate(days, stage, key);
  const until = state === 'done' ? row!.date : today;
  const rate = rates.get(stage) ?? null;
  const of = drawingsOfStage(stage, rate);
  const paid = rate !== null && firstDone !== null && payable !== null;
  return {
    ...standing,
    due: due ?? null,
    daysLate: due === undefined ? 0 : Math.max(0, daysBetween(due, until)),
    drawings: of === null || payable === null ? null : countedDrawings(of, payable),
    pay: paid
      ? {
          amount: payment(rate, payable),
          decimals: rate.decimals,
          currency: rate.currency,
          person: firstDone.person,
        }
      : null,
  };
}

/** When a stage of a cut is due: as is said of the cut itself, or else of all. */
export function dueDate(days: readonly DueDay[], stage: string, key: string): string | undefined {
  const own = days.filter((day) => day.stage === stage);
  return (own.findLast(({ cut }) => cut === key) ?? own.findLast(({ cut }) => cut === null))?.date;
}

/** From one day to another, both ISO 8601. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00Z`) - Date.parse(`${from}T00:00Z`)) / 86_400_000);
}

function stageTotal(stage: string, cuts: readonly CutProgress[], at: number, rate: Rate | null): StageTotal {
  const own = cuts.map(({ stages }) => stages[at]!);
  const count = (state: Standing['state']): number => own.filter((one) => one.state === state).length;
  const drawings = (some: readonly CutStage[]): number =>
    some.reduce((sum, one) => sum + (one.drawings ?? 0), 0);
  return {
    stage,
    done: count('done'),
    started: count('started'),
    retake: count('retake'),
    open: count('open'),
    late: own.filter(({ state, daysLate }) => state !== 'done' && daysLate > 0).length,
    drawings:
      drawingsOfStage(stage, rate) === null
        ? null
        : { done: drawings(own.filter(({ state }) => state === 'done')), all: drawings(own) },
  };
}

function personTotals(cuts: readonly CutProgress[], stages: readonly string[]): PersonTotal[] {
  const found = new Map<string, CutStage[]>();
  for (const { stages: own } of cuts) {
    for (const one of own) {
      if (one.firstDone === null) continue;
      const key = `${one.firstDone.person}\0${one.stage}`;
      found.set(key, [...(found.get(key) ?? []), one]);
    }
  }
  const totals = [...found].map(([key, own]): PersonTotal => {
    const [person = '', stage = ''] = key.split('\0');
    const counted = own.filter(({ drawings }) => drawings !== null);
    return {
      ...{ person, stage, cuts: own.length },
      drawings: counted.length === 0 ? null : counted.reduce((sum, { drawings }) => sum + drawings!, 0),
      pay: sums(own.flatMap(({ pay }) => pay ?? [])),
    };
  });
  const name = (one: PersonTotal): string => (one.person === '' ? '\uffff' : one.person);
  return totals.sort((a, b) =>
    name(a) === name(b) ? stages.indexOf(a.stage) - stages.indexOf(b.stage) : name(a) < name(b) ? -1 : 1,
  );
}
