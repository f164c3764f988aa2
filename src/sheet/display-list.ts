/**
 * Pages as plain data: lists of marks in millimetres, x to the right, y DOWN from the top left corner of the paper.
 * Whoever prints them (PDF, SVG) knows nothing of animation; whoever makes them knows nothing of PDF.
 */

/**
 * `form` is the one pale colour of the ruled form; `grey` a lighter black for what is not this page's; `light` is for what is
 * only a guess, and still comes through a copier.
 */
export type Ink = 'form' | 'black' | 'grey' | 'light';

export type Weight = 'regular' | 'bold';

/** Widths of strokes and radii are in mm, too. `dash` is [on, off] in mm. */
export interface Stroke {
  readonly ink: Ink;
  readonly widthMm: number;
  readonly dash?: readonly [number, number];
}

export type Mark =
  | {
      readonly kind: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly stroke: Stroke;
    }
  | {
      readonly kind: 'text';
      /** The anchor's x, and y of the baseline. */
      readonly x: number;
      readonly y: number;
      readonly text: string;
      /** Height of the em, mm. */
      readonly sizeMm: number;
      readonly weight: Weight;
      readonly ink: Ink;
      readonly anchor: 'start' | 'middle' | 'end';
      /** Degrees clockwise about the anchor. */
      readonly turn?: number;
      /** Horizontal squeeze, 1 is none. */
      readonly squeeze?: number;
    }
  | {
      readonly kind: 'circle';
      readonly x: number;
      readonly y: number;
      readonly r: number;
      readonly stroke: Stroke | null;
      readonly fill: Ink | 'paper' | null;
    }
  | {
      readonly kind: 'path';
      /** Corner points; joined by straight lines. */
      readonly points: readonly (readonly [number, number])[];
      readonly closed: boolean;
      readonly stroke: Stroke | null;
      readonly fill: Ink | 'paper' | null;
    }
  /** A cubic Bézier from p0 to p3. */
  | { readonly kind: 'curve'; readonly points: readonly [Pt, Pt, Pt, Pt]; readonly stroke: Stroke }
  /** A pale even tint over a rectangle: a tone that a copier keeps (handles, reused rows). Drawn below all other marks. */
  | {
      readonly kind: 'tint';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    }
  /** Diagonal strokes inside a rectangle, clipped to it. */
  | {
      readonly kind: 'hatch';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly gapMm: number;
      readonly stroke: Stroke;
    };

export type Pt = readonly [number, number];

/** A ruled form that many pages share: drawn once in a PDF. Equal ids mean equal marks. */
export interface SharedForm {
  readonly id: string;
  readonly marks: readonly Mark[];
}

/** Where a frame's row stands on a page, for whoever must point at it. */
export interface PageRow {
  readonly frame: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** The columns of its levels, finished cels too; one list for all rows of a block. */
  readonly columns: readonly LevelColumn[];
}

export interface LevelColumn {
  readonly level: string;
  readonly x: number;
  readonly width: number;
}

export type PagePart =
  | 'sheet'
  | 'charts'
  | 'camera'
  | 'table'
  | 'strip'
  | 'overlay'
  | 'list'
  | 'rhythm'
  | 'note'
  | 'progress'
  | 'cover'
  | 'blank'
  | 'card';

export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  /** `1`, `1-b`, `charts 1`: the page label. */
  readonly label: string;
  readonly part: PagePart;
  readonly form: SharedForm | null;
  readonly marks: readonly Mark[];
  readonly rows: readonly PageRow[];
}

/** The columns of the levels, wherever they stand on a page. */
export function pageColumns({ rows }: Pick<Page, 'rows'>): readonly LevelColumn[] {
  return [...new Set(rows.map(({ columns }) => columns))].flat();
}

/** What the layout must know of the font. Pure: given by the printer, or by a stand-in. */
export interface Metrics {
  /** Advance of a text in mm at an em of `sizeMm`. */
  width(text: string, sizeMm: number, weight: Weight): number;
}

/** A branch of the outline of a printed document: `page` is an index into the document's pages. */
export interface Bookmark {
  readonly title: string;
  readonly page: number;
  readonly children: readonly Bookmark[];
}

/** All that is printed into one file. */
export interface Document {
  readonly title: string;
  /** BCP 47: `en`, `ja`. */
  readonly language: string;
  readonly author: string;
  readonly pages: readonly Page[];
  readonly bookmarks: readonly Bookmark[];
  /** Any page to be printed at 100 %: turns the viewer's own scaling off. */
  readonly trueSize: boolean;
}
