import type { Ink, Mark, Pt, Stroke, Weight } from '../sheet/display-list.js';
import { Writer } from './byte-buffer.js';
import { INKS } from './inks.js';
import type { CodedText, FontResource } from './text-codes.js';

/** Control points of a quarter circle made of a cubic Bézier: 4/3 (√2 − 1) of the radius. */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);
/** Radii of circles whose paths are kept; an episode has a few dozen. */
const MOST_CIRCLES = 500;

type InkName = keyof typeof INKS;

/**
 * Writes marks as the operators of PDF content streams (ISO 32000-1, annex A), in a space of millimetres with y down (the
 * caller sets it up). What is set once in a stream (ink, width, font) is not set again, lines of one stroke become one path,
 * texts in a row one text object, in which a level text says where it stands by its way from the text before. A circle is the
 * path of its radius, moved: rings are every tenth mark of a sheet, and so they take two numbers instead of 26, and equal ones
 * are equal bytes. Nothing is assumed of the state that holds at a stream's start.
 */
export class Content {
  private readonly out = new Writer();
  private strokeInk: Ink | undefined;
  private strokeWidth: number | undefined;
  private strokeDash: Stroke['dash'] | null = null;
  private fillInk: InkName | undefined;
  private font: FontResource | '' = '';
  private fontSize = 0;
  private pathOpen = false;
  private textOpen = false;
  /** Where the last text of the text object stands, thousandths of a mm, if it is level and not squeezed. */
  private level = false;
  private textX = 0;
  private textY = 0;
  /** Paths of circles about 0, 0 by their radii, thousandths of a mm. */
  private readonly circles = new Map<number, Uint8Array>();

  /** `coded`: asked for each text that is written; may throw. */
  constructor(private readonly coded: (text: string, weight: Weight) => CodedText) {}

  /** Operators as they stand, outside paths and texts. */
  raw(operators: string): void {
    this.close();
    this.out.ascii(`${operators}\n`);
  }

  tints(marks: readonly Mark[]): void {
    for (const mark of marks) {
      if (mark.kind !== 'tint') continue;
      this.close();
      this.fill('tint');
      this.pair(mark.x, mark.y);
      this.pair(mark.width, mark.height);
      this.out.ascii('re f\n');
    }
  }

  /** Everything but the tints, in the order given. Throws MissingGlyph. */
  marks(marks: readonly Mark[]): void {
    for (const mark of marks) {
      switch (mark.kind) {
        case 'line':
          this.stroke(mark.stroke);
          this.segment(mark.x1, mark.y1, mark.x2, mark.y2);
          this.pathOpen = true;
          break;
        case 'text':
          this.text(mark);
          break;
        case 'circle':
          this.circle(mark);
          break;
        case 'path':
          this.path(mark);
          break;
        case 'curve':
          this.stroke(mark.stroke);
          this.pair(...mark.points[0]);
          this.out.ascii('m ');
          this.bezier(...mark.points[1], ...mark.points[2], mark.points[3]);
          this.pathOpen = true;
          break;
        case 'hatch':
          this.hatch(mark);
          break;
        case 'tint':
          break;
      }
    }
  }

  /** The stream that was written. The next one starts afresh. */
  take(): Uint8Array {
    this.close();
    this.strokeInk = undefined;
    this.strokeWidth = undefined;
    this.strokeDash = null;
    this.fillInk = undefined;
    this.font = '';
    return this.out.take();
  }

  private close(): void {
    if (this.pathOpen) this.out.ascii('S\n');
    if (this.textOpen) this.out.ascii('ET\n');
    this.pathOpen = false;
    this.textOpen = false;
    this.level = false;
  }

  private stroke(stroke: Stroke): void {
    if (this.textOpen) this.close();
    const { ink, widthMm, dash } = stroke;
    if (ink === this.strokeInk && widthMm === this.strokeWidth && sameDash(dash, this.strokeDash)) return;
    this.close();
    if (ink !== this.strokeInk) this.out.ascii(STROKE_INKS[ink]);
    if (widthMm !== this.strokeWidth) {
      this.out.number(widthMm);
      this.out.ascii('w\n');
    }
    if (!sameDash(dash, this.strokeDash)) {
      this.out.ascii('[');
      if (dash) this.pair(...dash);
      this.out.ascii('] 0 d\n');
    }
    this.strokeInk = ink;
    this.strokeWidth = widthMm;
    this.strokeDash = dash;
  }

  private fill(ink: InkName): void {
    if (ink === this.fillInk) return;
    this.out.ascii(FILL_INKS[ink]);
    this.fillInk = ink;
  }

  private text(mark: Extract<Mark, { kind: 'text' }>): void {
    if (mark.text === '') return;
    const { resource, hex, ems } = this.coded(mark.text, mark.weight);
    const { out } = this;
    if (this.pathOpen) this.close();
    this.fill(mark.ink);
    if (!this.textOpen) out.ascii('BT\n');
    this.textOpen = true;
    if (resource !== this.font || mark.sizeMm !== this.fontSize) {
      out.ascii(`/${resource} `);
      out.number(mark.sizeMm);
      out.ascii('Tf\n');
      this.font = resource;
      this.fontSize = mark.sizeMm;
    }
    const squeeze = mark.squeeze ?? 1;
    const back = ems * mark.sizeMm * squeeze * ANCHORS[mark.anchor];
    if (mark.turn) {
      const angle = (mark.turn * Math.PI) / 180;
      const cos = Math.cos(angle);
      const sin = Math.sin(angle);
      out.factor(cos * squeeze);
      out.factor(sin * squeeze);
      out.factor(sin);
      out.factor(-cos);
      this.pair(mark.x - back * cos, mark.y - back * sin);
      out.ascii('Tm <');
      this.level = false;
    } else {
      const x = Math.round((mark.x - back) * 1000);
      const y = Math.round(mark.y * 1000);
      if (squeeze === 1 && this.level) {
        out.thousandths(x - this.textX);
        out.thousandths(this.textY - y);
        out.ascii('Td <');
      } else {
        out.factor(squeeze);
        out.ascii('0 0 -1 ');
        out.thousandths(x);
        out.thousandths(y);
        out.ascii('Tm <');
      }
      this.level = squeeze === 1;
      this.textX = x;
      this.textY = y;
    }
    out.ascii(hex);
    out.ascii('> Tj\n');
  }

  private circle({ x, y, r, stroke, fill }: Extract<Mark, { kind: 'circle' }>): void {
    if (!this.paint(stroke, fill)) return;
    const { out } = this;
    out.ascii('q 1 0 0 1 ');
    this.pair(x, y);
    out.ascii('cm\n');
    out.copy(this.circlePath(Math.round(r * 1000)));
    out.ascii(painter(stroke, fill));
    out.ascii('Q\n');
  }

  private circlePath(thousandths: number): Uint8Array {
    let path = this.circles.get(thousandths);
    if (!path) {
      if (this.circles.size >= MOST_CIRCLES) this.circles.clear();
      path = circlePath(thousandths / 1000);
      this.circles.set(thousandths, path);
    }
    return path;
  }

  private path({ points, closed, stroke, fill }: Extract<Mark, { kind: 'path' }>): void {
    if (points.length < 2 || !this.paint(stroke, fill)) return;
    let operator = 'm ';
    for (const [x, y] of points) {
      this.pair(x, y);
      this.out.ascii(operator);
      operator = 'l ';
    }
    if (closed) this.out.ascii('h ');
    this.out.ascii(painter(stroke, fill));
  }

  /** Sets up what a shape is painted with; false when with nothing. */
  private paint(stroke: Stroke | null, fill: Ink | 'paper' | null): boolean {
    this.close();
    if (stroke) this.stroke(stroke);
    if (fill) this.fill(fill);
    return stroke !== null || fill !== null;
  }

  /** Strokes that rise to the right, `gapMm` apart, in step with those of every other hatch of the page. */
  private hatch({ x, y, width, height, gapMm, stroke }: Extract<Mark, { kind: 'hatch' }>): void {
    if (!(gapMm > 0) || !(width > 0) || !(height > 0)) return;
    this.close();
    this.stroke(stroke);
    this.out.ascii('q ');
    this.pair(x, y);
    this.pair(width, height);
    this.out.ascii('re W n\n');
    const step = gapMm * Math.SQRT2;
    const last = x + width + y + height;
    for (let i = Math.ceil((x + y) / step); i * step < last; i++) {
      const sum = i * step;
      const left = Math.max(x, sum - y - height);
      const right = Math.min(x + width, sum - y);
      this.segment(left, sum - left, right, sum - right);
    }
    this.out.ascii('S Q\n');
  }

  private pair(x: number, y: number): void {
    this.out.number(x);
    this.out.number(y);
  }

  private segment(x1: number, y1: number, x2: number, y2: number): void {
    this.pair(x1, y1);
    this.out.ascii('m ');
    this.pair(x2, y2);
    this.out.ascii('l\n');
  }

  private bezier(ax: number, ay: number, bx: number, by: number, [x, y]: Pt): void {
    this.pair(ax, ay);
    this.pair(bx, by);
    this.pair(x, y);
    this.out.ascii('c\n');
  }
}

/** A circle about 0, 0. */
function circlePath(r: number): Uint8Array {
  const k = r * QUARTER;
  const out = new Writer();
  const put = (operator: string, ...numbers: number[]): void => {
    for (const one of numbers) out.number(one);
    out.ascii(operator);
  };
  put('m ', r, 0);
  put('c\n', r, k, k, r, 0, r);
  put('c\n', -k, r, -r, k, -r, 0);
  put('c\n', -r, -k, -k, -r, 0, -r);
  put('c\n', k, -r, r, -k, r, 0);
  put('h ');
  return out.take();
}

const ANCHORS = { start: 0, middle: 0.5, end: 1 } as const;

/** Undefined is a full line, null not known. */
function sameDash(a: Stroke['dash'], b: Stroke['dash'] | null): boolean {
  return a === b || (a !== undefined && b !== undefined && b !== null && a[0] === b[0] && a[1] === b[1]);
}

const painter = (stroke: Stroke | null, fill: Ink | 'paper' | null): string =>
  stroke && fill ? 'B\n' : stroke ? 'S\n' : 'f\n';

/** The operators that set each ink. */
function operators(grey: string, rgb: string): Readonly<Record<InkName, string>> {
  const entries = Object.entries(INKS).map(([name, [r, g, b]]) => [
    name,
    r === g && g === b ? `${r} ${grey}\n` : `${r} ${g} ${b} ${rgb}\n`,
  ]);
  return Object.fromEntries(entries) as Record<InkName, string>;
}

const STROKE_INKS = operators('G', 'RG');
const FILL_INKS = operators('g', 'rg');
