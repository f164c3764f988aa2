/** Of the tables that commands show on a terminal: heads of columns and what is said below, in one language. */

export interface TableTexts {
  /** Columns that a narrow terminal has no room for, by their heads. */
  readonly leftOut: (heads: readonly string[]) => string;
  readonly total: string;
  /** `list`. Lengths come as they are written. */
  readonly list: {
    readonly heads: Readonly<
      Record<
        | 'cut'
        | 'title'
        | 'scene'
        | 'time'
        | 'feet'
        | 'levels'
        | 'keys'
        | 'breakdowns'
        | 'inbetweens'
        | 'drawings'
        | 'reused'
        | 'camera'
        | 'pages'
        | 'artist'
        | 'problems'
        | 'cuts',
        string
      >
    >;
    /** `least`: the length of some cut is not known. */
    readonly running: (cuts: number, length: string, least: boolean, budget: BudgetLeft | null) => string;
    /** The times of all cuts, where overlaps make the film shorter. */
    readonly times: (length: string) => string;
    readonly drawings: (
      counts: Readonly<
        Record<'drawings' | 'keys' | 'breakdowns' | 'inbetweens' | 'reused' | 'backgrounds', number>
      >,
      newOnesASecond: string,
    ) => string;
    readonly pages: (all: number, sheets: number) => string;
    readonly unsound: (cuts: number, untimed: number) => string;
    readonly withoutArtist: (cuts: number) => string;
    readonly shared: (cuts: number) => string;
  };
  /** `list --since`. */
  readonly since: {
    readonly heads: {
      readonly cut: string;
      readonly title: string;
      readonly timeAt: (revision: string) => string;
      readonly drawingsAt: (revision: string) => string;
      readonly now: string;
      readonly change: string;
    };
    readonly cutNew: string;
    readonly cutGone: string;
    readonly differ: (cuts: number, unchanged: number, reordered: boolean) => string;
    /** Totals at a revision; null is now. */
    readonly episode: (
      revision: string | null,
      cuts: number,
      drawings: number,
      length: string,
      least: boolean,
      budget: BudgetLeft | null,
    ) => string;
    /** `sense`: of what the running time, the budget is now. */
    readonly runs: (by: string, sense: 'longer' | 'shorter' | 'same') => string;
    readonly budget: (by: string, sense: 'larger' | 'smaller') => string;
    readonly unsound: string;
  };
  /** `progress`. */
  readonly progress: {
    readonly heads: Readonly<
      Record<
        'cut' | 'title' | 'stage' | 'drawings' | 'rate' | 'person' | 'cuts' | 'pay' | Standing | 'late',
        string
      >
    >;
    /** How a cut stands at a stage. */
    readonly states: Readonly<Record<Standing, string>>;
    readonly nobody: string;
    readonly doneOf: (done: number, all: number) => string;
    readonly rate: (amount: string, currency: string, unit: string) => string;
    readonly summary: (cuts: number, date: string, through: number, retakes: number) => string;
    readonly late: (days: number, stage: string, due: string, cuts: readonly string[]) => string;
  };
}

/** How a cut stands at a stage, or how many do. */
type Standing = 'done' | 'started' | 'retake' | 'open';

/** Of an episode, as it is written; `by` is null where it is kept to the frame. */
export interface BudgetLeft {
  readonly budget: string;
  readonly by: { readonly length: string; readonly over: boolean } | null;
}
