/** Words of the pages of an episode: cut list and rhythm. */
export interface CutListWords {
  /** Names of the pages, large in their heads. Heads of columns are broken where they say so. */
  readonly list: string;
  readonly rhythm: string;
  /** Page labels. */
  listPage(n: number): string;
  readonly heads: {
    readonly title: string;
    readonly episode: string;
    readonly cuts: string;
    readonly running: string;
    readonly budget: string;
    readonly page: string;
  };
  readonly columns: {
    readonly cut: string;
    readonly title: string;
    readonly scene: string;
    readonly time: string;
    readonly frames: string;
    readonly feet: string;
    readonly rows: string;
    readonly levels: string;
    readonly keys: string;
    readonly breakdowns: string;
    readonly inbetweens: string;
    readonly drawings: string;
    readonly reused: string;
    readonly camera: string;
    readonly sheetPages: string;
    readonly pages: string;
    readonly artist: string;
    readonly problems: string;
    readonly remarks: string;
  };
  readonly total: string;
  readonly artists: {
    readonly artist: string;
    readonly cuts: string;
    readonly running: string;
    readonly drawings: string;
    readonly nobody: string;
  };
  /** `time`: as it is written. */
  over(time: string): string;
  under(time: string): string;
  readonly exact: string;
  readonly noBudget: string;
  pace(drawings: string, time: string): string;
  backgroundsNote(backgrounds: number): string;
  sharedNote(cuts: number): string;
  unsoundNote(cuts: number, untimed: number): string;
  problemsNote(errors: number, warnings: number): string;
  overlapNote(time: string): string;
  readonly legend: {
    readonly camera: string;
    readonly dialogue: string;
    readonly density: string;
    readonly overlap: string;
    readonly scene: string;
    readonly unsound: string;
    readonly budget: string;
    notDrawn(cuts: string): string;
  };
  scene(name: string): string;
}
