import type { Ink, Mark, Pt, Stroke, Weight } from '../sheet/marks.js';
import type { Codes } from './codes.js';
import type { Colour } from './inks.js';
import { INKS } from './inks.js';

/** Control points of a quarter circle made of a cubic Bézier: 4/3 (√2 − 1) of the radius. */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

/** A number of a content stream, to a thousandth of a millimetre. */
function num(value: number): string {
  const rounded = Math.round(value * 1000) / 1000;
  if (!Number.isFinite(rounded)) throw new RangeError(`a mark has the coordinate ${value}`);
  return String(rounded);
}

const pair = (x: number, y: number): string => `${num(x)} ${num(y)} `;

/**
 * Writes marks as the operators of a PDF content stream, in a space of millimetres with y down (the caller sets it up).
 * What is set once (ink, width, font) is not set again, lines of one stroke become one path, texts in a row one text object.
 * Nothing is assumed of the state that holds at the start.
 */
export class Content {
  private out = '';
  private strokeInk: Ink | undefined;
  private strokeWidth = '';
  private strokeDash: string | undefined;
  private fillInk: keyof typeof INKS | undefined;
  private font = '';
  private pathOpen = false;
  private textOpen = false;

  constructor(private readonly codes: Readonly<Record<Weight, Codes>>) {}

  /** An operator as it stands, outside paths and texts. */
  raw(operators: string): void {
    this.close();
    this.out += `${operators}\n`;
  }

  tints(marks: readonly Mark[]): void {
    for (const mark of marks) {
      if (mark.kind !== 'tint') continue;
      this.close();
      this.fill('tint');
      this.out += `${pair(mark.x, mark.y)}${pair(mark.width, mark.height)}re f\n`;
    }
  }

  /** Everything but the tints, in the order given. */
  marks(marks: readonly Mark[]): void {
    for (const mark of marks) {
      switch (mark.kind) {
        case 'line':
          this.stroke(mark.stroke);
          this.out += `${pair(mark.x1, mark.y1)}m ${pair(mark.x2, mark.y2)}l\n`;
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
          this.out += `${pair(...mark.points[0])}m ${bezier(mark.points[1], mark.points[2], mark.points[3])}\n`;
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

  /** The stream, in one byte a character. */
  finish(): Uint8Array {
    this.close();
    return Buffer.from(this.out, 'latin1');
  }

  private close(): void {
    if (this.pathOpen) this.out += 'S\n';
    if (this.textOpen) this.out += 'ET\n';
    this.pathOpen = false;
    this.textOpen = false;
  }

  private stroke(stroke: Stroke): void {
    if (this.textOpen) this.close();
    const width = num(stroke.widthMm);
    const dash = stroke.dash ? `[${num(stroke.dash[0])} ${num(stroke.dash[1])}]` : '[]';
    if (stroke.ink === this.strokeInk && width === this.strokeWidth && dash === this.strokeDash) return;
    this.close();
    if (stroke.ink !== this.strokeInk) this.out += `${colour(INKS[stroke.ink], 'G', 'RG')}\n`;
    if (width !== this.strokeWidth) this.out += `${width} w\n`;
    if (dash !== this.strokeDash) this.out += `${dash} 0 d\n`;
    this.strokeInk = stroke.ink;
    this.strokeWidth = width;
    this.strokeDash = dash;
  }

  private fill(ink: keyof typeof INKS): void {
    if (ink === this.fillInk) return;
    this.out += `${colour(INKS[ink], 'g', 'rg')}\n`;
    this.fillInk = ink;
  }

  private text(mark: Extract<Mark, { kind: 'text' }>): void {
    if (mark.text === '') return;
    const codes = this.codes[mark.weight];
    const { hex, ems } = codes.run(mark.text);
    if (this.pathOpen) this.close();
    this.fill(mark.ink);
    if (!this.textOpen) this.out += 'BT\n';
    this.textOpen = true;
    const font = `/${codes.resource} ${num(mark.sizeMm)} Tf`;
    if (font !== this.font) this.out += `${font}\n`;
    this.font = font;
    const squeeze = mark.squeeze ?? 1;
    const back =
      ems * mark.sizeMm * squeeze * (mark.anchor === 'middle' ? 0.5 : mark.anchor === 'end' ? 1 : 0);
    const angle = ((mark.turn ?? 0) * Math.PI) / 180;
    const cos = Math.cos(angle);
    const sin = Math.sin(angle);
    const matrix = mark.turn
      ? `${fine(cos * squeeze)} ${fine(sin * squeeze)} ${fine(sin)} ${fine(-cos)}`
      : `${fine(squeeze)} 0 0 -1`;
    this.out += `${matrix} ${pair(mark.x - back * cos, mark.y - back * sin)}Tm <${hex}> Tj\n`;
  }

  private circle({ x, y, r, stroke, fill }: Extract<Mark, { kind: 'circle' }>): void {
    if (!this.paint(stroke, fill)) return;
    const k = r * QUARTER;
    this.out +=
      `${pair(x + r, y)}m ` +
      `${bezier([x + r, y + k], [x + k, y + r], [x, y + r])} ` +
      `${bezier([x - k, y + r], [x - r, y + k], [x - r, y])} ` +
      `${bezier([x - r, y - k], [x - k, y - r], [x, y - r])} ` +
      `${bezier([x + k, y - r], [x + r, y - k], [x + r, y])} ` +
      `h ${painter(stroke, fill)}\n`;
  }

  private path({ points, closed, stroke, fill }: Extract<Mark, { kind: 'path' }>): void {
    if (points.length < 2 || !this.paint(stroke, fill)) return;
    let operator = 'm';
    for (const [x, y] of points) {
      this.out += `${pair(x, y)}${operator} `;
      operator = 'l';
    }
    this.out += `${closed ? 'h ' : ''}${painter(stroke, fill)}\n`;
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
    this.out += `q ${pair(x, y)}${pair(width, height)}re W n\n`;
    const step = gapMm * Math.SQRT2;
    const last = x + width + y + height;
    for (let i = Math.ceil((x + y) / step); i * step < last; i++) {
      const sum = i * step;
      const left = Math.max(x, sum - y - height);
      const right = Math.min(x + width, sum - y);
      this.out += `${pair(left, sum - left)}m ${pair(right, sum - right)}l\n`;
    }
    this.out += 'S Q\n';
  }
}

function bezier(a: Pt, b: Pt, c: Pt): string {
  return `${pair(...a)}${pair(...b)}${pair(...c)}c`;
}

const painter = (stroke: Stroke | null, fill: Ink | 'paper' | null): string =>
  stroke && fill ? 'B' : stroke ? 'S' : 'f';

/** A number of a text matrix: finer than a place, as it is multiplied by the length of the text. */
const fine = (value: number): string => String(Math.round(value * 1e5) / 1e5);

function colour([r, g, b]: Colour, grey: string, rgb: string): string {
  return r === g && g === b ? `${r} ${grey}` : `${r} ${g} ${b} ${rgb}`;
}
