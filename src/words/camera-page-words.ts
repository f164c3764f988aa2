/** Words of the camera's pages: chart, table, strip, overlay. */
export interface CameraPageWords {
  camera(n: number): string;
  table(n: number): string;
  strip(n: number): string;
  overlay(n: number): string;
  readonly scale: string;
  readonly standard: string;
  readonly fields: string;
  readonly moves: string;
  readonly artwork: string;
  readonly sheet: string;
  readonly least: string;
  readonly loop: string;
  readonly centre: string;
  readonly width: string;
  readonly turned: string;
  readonly unused: string;
  readonly fromFrame: string;
  readonly wayAll: string;
  readonly largestStep: string;
  readonly edgeShows: string;
  readonly trueSize: string;
  readonly join: string;
  /** What is left out of a strip that is too long. */
  tooLong(shown: string, all: string): string;
  tile(n: number, of: number): string;
  tooMany(shown: number): string;
  at(column: number, columns: number, row: number, rows: number): string;
  readonly columns: {
    readonly frame: string;
    readonly time: string;
    readonly width: string;
    readonly field: string;
    readonly turn: string;
    readonly step: string;
    readonly scale: string;
    readonly camera: string;
  };
  readonly units: string;
}
