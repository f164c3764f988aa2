/** Words of the camera's pages: chart, table, strip, overlay. */
export interface CameraPageWords {
  camera(n: number): string;
  table(n: number): string;
  strip(n: number): string;
  overlay(n: number): string;
  readonly scale: string;
  readonly standard: string;
  /** The moment before the first row: beside a place, and in a sentence. */
  before(row: string): string;
  beforeRow(row: string): string;
  /** A row in a sentence. */
  row(row: string): string;
  readonly sheet: string;
  readonly least: string;
  readonly loop: string;
  readonly centre: string;
  readonly width: string;
  readonly turned: string;
  readonly unused: string;
  /** What an outline on the chart is called. */
  readonly outlines: {
    sheet(levels: string): string;
    needed(levels: string): string;
    start(levels: string): string;
    end(levels: string): string;
  };
  /** A level's name and what it shows. */
  titled(name: string, title: string): string;
  /** `to`: the last of the rows with the largest step, `from` the first. */
  way(way: string, largestStep: string, from: string, to: string): string;
  /** Where typed graduations are counted from. */
  countNought(place: string): string;
  /** A move at constant speed that has moved on its first row, and one that stands there and moves from `row` on. */
  eachFrame(step: string): string;
  eachFrameFrom(step: string, row: string): string;
  /** Graduations are those of a corner, `corner` one of `corners`. */
  cornerWay(corner: string): string;
  readonly corners: { readonly [C in 'topLeft' | 'topRight' | 'bottomRight' | 'bottomLeft']: string };
  /** Which way a strip leads on the layout, degrees from level. */
  slope(degrees: string, up: boolean, right: boolean): string;
  /** Not every graduation is drawn. */
  thinned(closest: string): string;
  /** The first row on which the edge of a sheet shows, and by how much on the worst. */
  edgeShows(row: string, mostBy: string, worstRow: string): string;
  /** What the camera sees on a row, where that is no field of the cut. */
  cameraOn(row: string): string;
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
    /** Steps of a truck: by how much the field's width changes, and by how many percent. */
    readonly widthStep: string;
    readonly shareStep: string;
    /** Steps of a level that is scaled, in percent of its artwork, or turned, in degrees. */
    readonly scaleStep: string;
    readonly turnStep: string;
    readonly scale: string;
    readonly camera: string;
  };
  /** What the figures of the table are measured from. */
  units(unit: string): string;
}
