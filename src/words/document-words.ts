/** What stands on the other pages of a document in words: its titles, the camera's pages, the cut list. */

import type { FieldPart } from '../shot/camera/camera-model.js';

/** Titles and bookmarks of the PDF, and headings of a retake note. */
export interface DocumentWords {
  /** The parts of a cut, in the outline. */
  readonly parts: {
    readonly cover: string;
    readonly sheet: string;
    readonly charts: string;
    readonly camera: string;
    readonly table: string;
    readonly strip: string;
    readonly overlay: string;
  };
  readonly blankForms: string;
  /** In place of a list of changes, where the cut was not there yet. */
  readonly newCut: string;
  cut(name: string): string;
  /** Over the changes of a cut in a retake note. */
  noteCut(name: string): string;
  /** Cuts that only one version has: `version` names it, null is the present one. */
  onlyIn(version: string | null, cuts: string, count: number): string;
}

/** Words of a retake note on paper. */
export interface RetakeWords {
  /** Names of the pages, large in their heads. */
  readonly note: string;
  readonly summary: string;
  /** Page labels. */
  notePage(n: number): string;
  /** `version`: as it was named. */
  against(version: string): string;
  changes(count: number): string;
  cuts(count: number): string;
  /** Head of the column that says how many changes a cut has. */
  readonly changeCount: string;
  readonly heads: {
    readonly number: string;
    readonly change: string;
    /** Rows of the sheet before and after the change. */
    readonly before: string;
    readonly after: string;
    readonly reason: string;
    readonly askedBy: string;
    readonly answer: string;
    readonly cut: string;
    readonly title: string;
    readonly time: string;
    readonly where: string;
    readonly done: string;
  };
  /** Places of changes, for the summary. */
  readonly places: { readonly [P in 'speech' | 'camera' | 'notes' | 'head']: string };
  readonly newCut: string;
  readonly droppedCut: string;
}

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
  /** Of a field that a move takes so much from, while another one gives the rest. */
  readonly only: { readonly [P in FieldPart]: string };
  /** What an outline on the chart is called. */
  readonly outlines: {
    sheet(levels: string): string;
    needed(levels: string): string;
    start(levels: string): string;
    end(levels: string): string;
  };
  /** A field, a level, where a field and a level of the cut have one name. */
  fieldNamed(name: string): string;
  levelNamed(name: string): string;
  /** A level's name and what it shows. */
  titled(name: string, title: string): string;
  /** `to`: the last of the rows with the largest step, `from` the first. */
  way(way: string, largestStep: string, from: string, to: string): string;
  /** Graduations by hand that are mm of the field's width: by how much it changes in all, and as in `way`. */
  widthWay(all: string, largestStep: string, from: string, to: string): string;
  /** Where typed graduations are counted from. */
  countNought(place: string): string;
  /** A move at constant speed that has moved on its first row, and one that stands there and moves from `row` on. */
  eachFrame(step: string): string;
  eachFrameFrom(step: string, row: string): string;
  /** Graduations are those of a corner, `corner` one of `corners`. */
  cornerWay(corner: string): string;
  readonly corners: { readonly [C in 'topLeft' | 'topRight' | 'bottomRight' | 'bottomLeft']: string };
  /** The lengths of a strip. */
  readonly alongCurve: string;
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
  /** What the figures of the table are, and what they are measured from. */
  measured(what: MeasuredFigures): string;
}

/** What moves something besides the moves whose steps a table has. */
export type FurtherMove = 'pull' | 'sway' | 'carry' | 'shake';

/** What a table of moves has to explain of its figures. */
export interface MeasuredFigures {
  /** Of lengths; null: there are none. */
  readonly unit: 'mm' | 'in' | null;
  /** Whether it has places, x or y. */
  readonly places: boolean;
  /** What is in the camera's places besides its moves from field to field; null: it has none. */
  readonly camera: readonly FurtherMove[] | null;
  /** Levels with places of their own, as the table calls them, and what is in these besides. */
  readonly levels: readonly { readonly names: string; readonly further: readonly FurtherMove[] }[];
  /** Whether places hold more than the steps beside them. */
  readonly stepsAlone: boolean;
  readonly degrees: boolean;
}

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
