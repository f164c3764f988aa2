/** What stands on the pages of an episode's progress, and on the front of an envelope, in words. */

/** Stages that a language has a word for; any other is printed as it is typed. */
export const NAMED_STAGES = [
  'layout',
  'key',
  'second-key',
  'check',
  'director',
  'supervisor',
  'in-between',
  'in-between-check',
  'finish',
  'background',
  'shoot',
  'edit',
] as const;
export type NamedStage = (typeof NAMED_STAGES)[number];

export interface ProgressWords {
  /** The name of the page, large in its head, and its label. */
  readonly name: string;
  page(n: number): string;
  readonly stages: { readonly [S in NamedStage]: string };
  /** The day for which the table holds. */
  readonly day: string;
  readonly retakes: string;
  readonly late: string;
  /** Month and day, both counted from 1. */
  dayOfYear(month: number, day: number): string;
  readonly states: {
    readonly started: string;
    readonly done: string;
    readonly retake: string;
    readonly open: string;
  };
  daysLate(days: number): string;
  /** What the signs of the table mean. */
  readonly legend: string;
  readonly columns: {
    readonly cut: string;
    readonly title: string;
    readonly drawings: string;
    readonly stage: string;
    readonly rate: string;
    readonly person: string;
    readonly cuts: string;
    readonly pay: string;
  };
  readonly total: string;
  readonly nobody: string;
  /** The front of an envelope; `label` is the page's. */
  readonly cover: {
    readonly label: string;
    readonly level: string;
    readonly keys: string;
    readonly inbetweens: string;
    readonly reused: string;
    /** Of a background: painted, in no count. */
    readonly painted: string;
    readonly camera: string;
    /** By when a stage is to be done. */
    due(day: string): string;
    readonly date: string;
    readonly sign: string;
    readonly remarks: string;
    /** Earlier retakes for which there is no room. */
    earlier(count: number): string;
  };
  /** What a rate is paid for. */
  readonly units: {
    readonly [U in 'cut' | 'key' | 'in-between' | 'drawing' | 'second' | 'foot']: string;
  };
  rate(amount: string, currency: string, unit: string): string;
}

/** The word of a stage. */
export function stageWord(words: Pick<ProgressWords, 'stages'>, stage: string): string {
  const named = NAMED_STAGES.find((one) => one === stage);
  return named === undefined ? stage : words.stages[named];
}
