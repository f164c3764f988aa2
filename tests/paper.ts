/** Reads the marks of a page back from its operators, in millimetres from the top left corner of the paper. */

/** A colour as pdf.js gives it: `#000000`. */
export type Rgb = string;

export interface PaperText {
  readonly text: string;
  /** Where the baseline starts. */
  readonly x: number;
  readonly y: number;
  /** Where it ends. */
  readonly endX: number;
  readonly endY: number;
  /** Height of the em. */
  readonly sizeMm: number;
  /** Degrees clockwise, 0 to under 360. */
  readonly angle: number;
  readonly squeeze: number;
  readonly weight: 'regular' | 'bold';
  readonly ink: Rgb;
  /** Whether it stands in the ruled form that pages share. */
  readonly form: boolean;
}

export interface Pen {
  readonly ink: Rgb;
  readonly widthMm: number;
  /** Lengths on and off in mm, empty for a full line. */
  readonly dash: readonly number[];
}

export interface PaperLine {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly pen: Pen;
  readonly form: boolean;
}

interface Painted {
  readonly pen: Pen | null;
  readonly fill: Rgb | null;
  readonly form: boolean;
}

export interface PaperCircle extends Painted {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** A rectangle along the edges of the paper. */
export interface PaperRectangle extends Painted {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Any other path of straight lines. */
export interface PaperShape extends Painted {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** A cubic Bézier. */
export interface PaperCurve extends Painted {
  readonly points: readonly [Point, Point, Point, Point];
}

/** Lines clipped to a rectangle. */
export interface PaperHatch {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PaperLine[];
  readonly form: boolean;
}

export type Kind = 'texts' | 'lines' | 'circles' | 'rectangles' | 'shapes' | 'curves' | 'hatches';

/** All that is printed on one page, each kind in the order of painting. */
export interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly label: string;
  readonly texts: PaperText[];
  readonly lines: PaperLine[];
  readonly circles: PaperCircle[];
  readonly rectangles: PaperRectangle[];
  readonly shapes: PaperShape[];
  readonly curves: PaperCurve[];
  readonly hatches: PaperHatch[];
  /** The kinds as they were painted, one above the other; neighbours of one kind once. */
  readonly order: Kind[];
}

export interface Operators {
  /** In the order of the page; the first argument of `constructPath` is the name of the operator that paints it. */
  readonly operators: readonly { readonly name: string; readonly args: readonly unknown[] }[];
  /** Left, bottom, right and top of the page in points. */
  readonly box: readonly [number, number, number, number];
  readonly label: string;
  fontName(id: string): string;
}

export type Point = readonly [number, number];
type Matrix = readonly [number, number, number, number, number, number];

interface State {
  matrix: Matrix;
  strokeInk: Rgb;
  fillInk: Rgb;
  lineWidth: number;
  dash: readonly number[];
  font: string;
  fontSize: number;
  hatch: PaperHatch | null;
}

const MM = 25.4 / 72;
const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];
/** Circles and rectangles are known by their corners to this many millimetres. */
const CLOSE = 0.003;
const HARMLESS = new Set(['dependency', 'endText', 'endPath']);
const PAINTERS: Readonly<Record<string, readonly [stroke: boolean, fill: boolean]>> = {
  stroke: [true, false],
  fill: [false, true],
  fillStroke: [true, true],
  endPath: [false, false],
};

export function read(page: Operators): Paper {
  const [left, bottom, right, top] = page.box;
  const paper: Paper = {
    widthMm: (right - left) * MM,
    heightMm: (top - bottom) * MM,
    label: page.label,
    texts: [],
    lines: [],
    circles: [],
    rectangles: [],
    shapes: [],
    curves: [],
    hatches: [],
    order: [],
  };
  let state: State = {
    matrix: [MM, 0, 0, -MM, -left * MM, top * MM],
    strokeInk: '#000000',
    fillInk: '#000000',
    lineWidth: 1,
    dash: [],
    font: '',
    fontSize: 0,
    hatch: null,
  };
  const saved: State[] = [];
  let textMatrix: Matrix = IDENTITY;
  let lineMatrix: Matrix = IDENTITY;
  let clipping = false;
  let forms = 0;

  for (const { name, args } of page.operators) {
    if (HARMLESS.has(name)) continue;
    switch (name) {
      case 'save':
        saved.push({ ...state });
        break;
      case 'restore':
        state = saved.pop()!;
        break;
      case 'transform':
        state.matrix = times(state.matrix, args as unknown as Matrix);
        break;
      case 'paintFormXObjectBegin':
        saved.push({ ...state });
        if (args[0]) state.matrix = times(state.matrix, args[0] as Matrix);
        forms++;
        break;
      case 'paintFormXObjectEnd':
        state = saved.pop()!;
        forms--;
        break;
      case 'setStrokeRGBColor':
        state.strokeInk = args[0] as Rgb;
        break;
      case 'setFillRGBColor':
        state.fillInk = args[0] as Rgb;
        break;
      case 'setLineWidth':
        state.lineWidth = args[0] as number;
        break;
      case 'setDash':
        state.dash = args[0] as number[];
        break;
      case 'setFont':
        state.font = page.fontName(args[0] as string);
        state.fontSize = args[1] as number;
        break;
      case 'beginText':
        textMatrix = IDENTITY;
        lineMatrix = IDENTITY;
        break;
      case 'setTextMatrix':
        textMatrix = args[0] as Matrix;
        lineMatrix = textMatrix;
        break;
      case 'moveText':
        lineMatrix = times(lineMatrix, [1, 0, 0, 1, args[0] as number, args[1] as number]);
        textMatrix = lineMatrix;
        break;
      case 'showText': {
        const glyphs = args[0] as { unicode: string; width: number }[];
        const advance = (glyphs.reduce((sum, glyph) => sum + glyph.width, 0) / 1000) * state.fontSize;
        const matrix = times(state.matrix, textMatrix);
        const [x, y] = apply(matrix, [0, 0]);
        const [endX, endY] = apply(matrix, [advance, 0]);
        const along = Math.hypot(matrix[0], matrix[1]);
        const up = Math.hypot(matrix[2], matrix[3]);
        const angle = (Math.atan2(matrix[1], matrix[0]) * 180) / Math.PI;
        put(paper, 'texts', {
          text: glyphs.map((glyph) => glyph.unicode).join(''),
          x,
          y,
          endX,
          endY,
          sizeMm: state.fontSize * up,
          angle: (angle + 360) % 360,
          squeeze: along / up,
          weight: state.font.endsWith('-Bold') ? 'bold' : 'regular',
          ink: state.fillInk,
          form: forms > 0,
        });
        textMatrix = times(textMatrix, [1, 0, 0, 1, advance, 0]);
        break;
      }
      case 'clip':
        clipping = true;
        break;
      case 'constructPath': {
        const painter = PAINTERS[args[0] as string];
        if (!painter) throw new Error(`a path is painted by the operator ${String(args[0])}`);
        const paths = subpaths((args[1] as [ArrayLike<number> | null])[0] ?? [], state.matrix);
        const [stroke, fill] = painter;
        const scale = Math.hypot(state.matrix[0], state.matrix[1]);
        const pen = {
          ink: state.strokeInk,
          widthMm: state.lineWidth * scale,
          dash: state.dash.map((n) => n * scale),
        };
        const painted: Painted = {
          pen: stroke ? pen : null,
          fill: fill ? state.fillInk : null,
          form: forms > 0,
        };
        if (clipping) {
          const area = paths.length === 1 ? rectangleOf(paths[0]!) : null;
          if (!area) throw new Error('something other than a rectangle is clipped to');
          const hatch: PaperHatch = { ...area, lines: [], form: forms > 0 };
          put(paper, 'hatches', hatch);
          state.hatch = hatch;
          clipping = false;
        } else if (stroke || fill) {
          for (const path of paths) sort(path, painted, paper, state.hatch);
        }
        break;
      }
      default:
        throw new Error(`the page holds the operator ${name}, which is not read back`);
    }
  }
  return paper;
}

interface Subpath {
  /** Corners; of a curve also its control points. */
  readonly points: Point[];
  closed: boolean;
  curves: number;
}

/** pdf.js: 0 move, 1 line, 2 cubic curve, 4 close. */
function subpaths(data: ArrayLike<number>, matrix: Matrix): Subpath[] {
  const paths: Subpath[] = [];
  let at = 0;
  const point = (): Point => apply(matrix, [data[at++]!, data[at++]!]);
  while (at < data.length) {
    const command = data[at++];
    if (command === 0) paths.push({ points: [point()], closed: false, curves: 0 });
    else if (command === 1) paths.at(-1)!.points.push(point());
    else if (command === 2) {
      paths.at(-1)!.points.push(point(), point(), point());
      paths.at(-1)!.curves++;
    } else if (command === 4) paths.at(-1)!.closed = true;
    else throw new Error(`a path holds the command ${command}`);
  }
  return paths;
}

function put<K extends Kind>(paper: Paper, kind: K, found: Paper[K][number]): void {
  (paper[kind] as Paper[K][number][]).push(found);
  if (paper.order.at(-1) !== kind) paper.order.push(kind);
}

/** Puts a painted subpath where it belongs. */
function sort(path: Subpath, painted: Painted, paper: Paper, hatch: PaperHatch | null): void {
  const { points, closed, curves } = path;
  if (hatch) {
    if (curves || closed || points.length !== 2 || !painted.pen)
      throw new Error('a hatch holds more than lines');
    (hatch.lines as PaperLine[]).push(lineOf(path, painted.pen, painted.form));
    return;
  }
  if (curves === 4 && closed) {
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    const r = (Math.max(...xs) - Math.min(...xs)) / 2;
    if (Math.abs((Math.max(...ys) - Math.min(...ys)) / 2 - r) > CLOSE)
      throw new Error('a circle is not round');
    put(paper, 'circles', { x: Math.min(...xs) + r, y: Math.min(...ys) + r, r, ...painted });
  } else if (curves === 1 && points.length === 4 && !closed) {
    put(paper, 'curves', { points: points as unknown as PaperCurve['points'], ...painted });
  } else if (curves > 0) {
    throw new Error('a path mixes lines and curves');
  } else if (points.length === 2 && !closed && painted.pen && !painted.fill) {
    put(paper, 'lines', lineOf(path, painted.pen, painted.form));
  } else {
    const area = rectangleOf(path);
    if (area) put(paper, 'rectangles', { ...area, ...painted });
    else put(paper, 'shapes', { points, closed, ...painted });
  }
}

function lineOf({ points }: Subpath, pen: Pen, form: boolean): PaperLine {
  const [[x1, y1], [x2, y2]] = points as [Point, Point];
  return { x1, y1, x2, y2, pen, form };
}

function rectangleOf({
  points,
  closed,
  curves,
}: Subpath): { x: number; y: number; width: number; height: number } | null {
  if (points.length !== 4 || !closed || curves) return null;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - x, Math.max(...ys) - y];
  const onEdge = (value: number, low: number, size: number): boolean =>
    Math.min(Math.abs(value - low), Math.abs(value - low - size)) < CLOSE;
  const corners = points.every(([px, py]) => onEdge(px, x, width) && onEdge(py, y, height));
  const turns = points.every(([px, py], i) => {
    const [nx, ny] = points[(i + 1) % 4]!;
    return Math.abs(px - nx) < CLOSE !== Math.abs(py - ny) < CLOSE;
  });
  return corners && turns ? { x, y, width, height } : null;
}

/** First b, then a, as PDF has it. */
function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[2] * b[1],
    a[1] * b[0] + a[3] * b[1],
    a[0] * b[2] + a[2] * b[3],
    a[1] * b[2] + a[3] * b[3],
    a[0] * b[4] + a[2] * b[5] + a[4],
    a[1] * b[4] + a[3] * b[5] + a[5],
  ];
}

function apply(m: Matrix, [x, y]: Point): Point {
  return [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]];
}
