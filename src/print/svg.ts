/** Pages as SVG 1.1, one text a page: the same marks as the PDF, for a screen or a document. */

import type { Ink, Mark, Metrics, Page, Stroke } from '../sheet/display-list.js';
import { INKS } from './inks.js';

export interface SvgOptions {
  /** The families that texts are set in, as CSS has them. */
  readonly fontFamily?: string;
  /**
   * Given where whoever looks at it may not have the font: each text is then set to the width that it has on paper.
   */
  readonly metrics?: Metrics;
  /** Adds an invisible rectangle for each frame's row, with `data-frame`. */
  readonly rows?: boolean;
  /** False: without the one `style` attribute, for a document that says these things itself (and may allow none). */
  readonly styled?: boolean;
  /** A part of the page, mm, instead of the whole. */
  readonly crop?: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

/** One page as a whole SVG document, sized in mm. The same page gives the same text. */
export function printSvg(page: Page, options: SvgOptions = {}): string {
  const { x, y, width, height } = options.crop ?? { x: 0, y: 0, width: page.widthMm, height: page.heightMm };
  const writer = new Writer(options);
  const marks = [...(page.form?.marks ?? []), ...page.marks];
  // Tints lie below everything, as in the PDF.
  const body = [
    ...page.marks.filter(({ kind }) => kind === 'tint'),
    ...marks.filter(({ kind }) => kind !== 'tint'),
  ].map((mark) => writer.mark(mark));
  const rows = options.rows
    ? page.rows.map(
        (row) =>
          `<rect class="row" data-frame="${row.frame}" x="${n(row.x)}" y="${n(row.y)}" width="${n(row.width)}" height="${n(row.height)}" fill="none"/>`,
      )
    : [];
  const family = options.fontFamily ?? "'Noto Sans JP', sans-serif";
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="${n(x)} ${n(y)} ${n(width)} ${n(height)}">`,
    `<g font-family="${attribute(family)}"${options.styled === false ? '' : STYLE} stroke-miterlimit="10">`,
    `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" fill="${COLOURS.paper}"/>`,
    ...body.filter((one) => one !== ''),
    ...rows,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** Texts are set glyph by glyph, as in the PDF. */
const STYLE = ' style="font-kerning:none;font-variant-ligatures:none;white-space:pre"';

class Writer {
  constructor(private readonly options: SvgOptions) {}

  mark(mark: Mark): string {
    switch (mark.kind) {
      case 'line':
        return `<path d="M${n(mark.x1)} ${n(mark.y1)}L${n(mark.x2)} ${n(mark.y2)}"${stroke(mark.stroke)}/>`;
      case 'text':
        return this.text(mark);
      case 'circle':
        return `<circle cx="${n(mark.x)}" cy="${n(mark.y)}" r="${n(mark.r)}"${painted(mark.stroke, mark.fill)}/>`;
      case 'path': {
        const [first, ...rest] = mark.points.map(([x, y]) => `${n(x)} ${n(y)}`);
        if (rest.length === 0) return '';
        return `<path d="M${first}L${rest.join(' ')}${mark.closed ? 'Z' : ''}"${painted(mark.stroke, mark.fill)}/>`;
      }
      case 'curve': {
        const [from, ...rest] = mark.points.map(([x, y]) => `${n(x)} ${n(y)}`);
        return `<path d="M${from}C${rest.join(' ')}"${stroke(mark.stroke)}/>`;
      }
      case 'tint':
        return `<rect x="${n(mark.x)}" y="${n(mark.y)}" width="${n(mark.width)}" height="${n(mark.height)}" fill="${COLOURS.tint}"/>`;
      case 'hatch':
        return hatch(mark);
    }
  }

  private text(mark: Extract<Mark, { kind: 'text' }>): string {
    if (mark.text === '') return '';
    const text = mark.text.normalize('NFC');
    const squeeze = mark.squeeze ?? 1;
    const moves = [
      `translate(${n(mark.x)} ${n(mark.y)})`,
      ...(mark.turn ? [`rotate(${n(mark.turn)})`] : []),
      ...(squeeze === 1 ? [] : [`scale(${n(squeeze)} 1)`]),
    ].join(' ');
    const { metrics } = this.options;
    const length = metrics
      ? ` textLength="${n(metrics.width(text, mark.sizeMm, mark.weight))}" lengthAdjust="spacingAndGlyphs"`
      : '';
    const anchor = mark.anchor === 'start' ? '' : ` text-anchor="${mark.anchor}"`;
    const weight = mark.weight === 'bold' ? ' font-weight="700"' : '';
    // Browsers set `white-space` for every text themselves, so this has to be said of each that needs it.
    const blanks = /^\s|\s\s|\s$/.test(text) ? ' xml:space="preserve"' : '';
    return `<text${blanks} transform="${moves}" font-size="${n(mark.sizeMm)}"${weight}${anchor} fill="${COLOURS[mark.ink]}"${length}>${content(text)}</text>`;
  }
}

/** Strokes that rise to the right, in step with every other hatch of the page. */
function hatch({ x, y, width, height, gapMm, stroke: pen }: Extract<Mark, { kind: 'hatch' }>): string {
  if (!(gapMm > 0) || !(width > 0) || !(height > 0)) return '';
  const step = gapMm * Math.SQRT2;
  const last = x + width + y + height;
  let path = '';
  for (let i = Math.ceil((x + y) / step); i * step < last; i++) {
    const sum = i * step;
    const left = Math.max(x, sum - y - height);
    const right = Math.min(x + width, sum - y);
    path += `M${n(left)} ${n(sum - left)}L${n(right)} ${n(sum - right)}`;
  }
  return path === '' ? '' : `<path d="${path}"${stroke(pen)}/>`;
}

const COLOURS = Object.fromEntries(
  Object.entries(INKS).map(([name, parts]) => [
    name,
    `#${parts
      .map((part) =>
        Math.round(part * 255)
          .toString(16)
          .padStart(2, '0'),
      )
      .join('')}`,
  ]),
) as Readonly<Record<keyof typeof INKS, string>>;

function stroke(pen: Stroke): string {
  return painted(pen, null);
}

function painted(pen: Stroke | null, fill: Ink | 'paper' | null): string {
  const inside = ` fill="${fill ? COLOURS[fill] : 'none'}"`;
  if (!pen) return inside;
  const dash = pen.dash ? ` stroke-dasharray="${n(pen.dash[0])} ${n(pen.dash[1])}"` : '';
  return `${inside} stroke="${COLOURS[pen.ink]}" stroke-width="${n(pen.widthMm)}"${dash}`;
}

/** Thousandths of a millimetre; no exponent, no trailing zeros. */
function n(value: number): string {
  const text = value.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

const content = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
const attribute = (text: string): string => content(text).replace(/"/g, '&quot;');
