/** The list beside the plan: fields, moves and artwork in figures. */

import { kindOf, rowsOf } from '../../shot/camera/move-facts.js';
import type { Field } from '../../shot/camera.js';
import { rowName } from '../../shot/time.js';
import type { SolvedShot } from '../../solve/solved.js';
import type { CameraPageWords } from '../../words/camera-page-words.js';
import { figure } from '../../words/number.js';
import { moveKind } from '../camera/move-names.js';
import { tellingOf } from '../camera/plan.js';
import { type Box, textAt } from '../draw.js';
import { fitLine, wrap } from '../fit.js';
import { unitOf } from '../geometry.js';
import type { Look } from '../look.js';
import type { Mark } from '../marks.js';
import { largerPrint, smallestTextMm } from '../papers.js';

export interface LegendLine {
  readonly text: string;
  readonly bold: boolean;
  /** Stands under the line before. */
  readonly under: boolean;
  readonly indentMm: number;
}

const by = (width: number, height: number) => `${figure(width)} × ${figure(height)} mm`;

export function legendLines(solved: SolvedShot, look: Look, words: CameraPageWords, n: number): LegendLine[] {
  const { camera, shot } = solved;
  const lines: LegendLine[] = [];
  const head = (text: string) => lines.push({ text, bold: true, under: false, indentMm: 0 });
  const say = (text: string) => lines.push({ text, bold: false, under: false, indentMm: 1.5 });
  const more = (text: string) => lines.push({ text, bold: false, under: true, indentMm: 5 });
  head(`${words.scale} 1:${n}`);
  const { widthMm, heightMm } = shot.settings.field;
  say(`${words.standard} ${by(widthMm, heightMm)}`);
  if (camera.fields.length > 0) head(words.fields);
  for (const { field, used } of camera.fields) {
    say(`${field.name}  ${sizeOf(field, solved)}${used ? '' : `  (${words.unused})`}`);
    const turn = field.turnDeg === 0 ? '' : `  ${words.turned} ${figure(field.turnDeg)}°`;
    more(`${words.centre} ${figure(field.xMm)}, ${figure(field.yMm)}${compass(field, solved)}${turn}`);
  }
  if (camera.moves.length > 0) head(words.moves);
  const west = look.settings.convention === 'west';
  const unit = unitOf(look.settings, shot.fps);
  const telling = tellingOf(shot, look.settings.labels, west, look.neighbours);
  for (const move of camera.moves) {
    const { from, to } = rowsOf(move.move);
    const [first, last] = [Math.max(1, from), Math.min(shot.length, to)];
    say(moveKind.memo(move.move, telling));
    const at = (frame: number) => rowName(frame, unit, west);
    more(`${words.fromFrame} ${first}-${last}  (${at(first)} – ${at(last)})`);
    if (move.wayMm > 0 && kindOf(move.move).line !== null)
      more(`${words.wayAll} ${figure(move.wayMm)} mm  ${words.largestStep} ${figure(move.largestStepMm)} mm`);
  }
  head(words.artwork);
  for (const level of shot.levels) {
    const made = camera.artwork.get(level.name);
    if (!made || (made.width === null && made.needed === null)) continue;
    const size =
      made.width !== null && made.height !== null ? `${words.sheet} ${by(made.width, made.height)}` : '';
    say(`${level.name}  ${size}`.trim());
    if (made.width !== null) more(`${words.centre} ${figure(made.homeX)}, ${figure(made.homeY)}`);
    if (made.loop) more(`${words.loop} ${figure(made.loop.lengthMm)} mm`);
    if (made.needed && !level.free) {
      const { width, height, x, y } = made.needed;
      more(`${words.least} ${by(up(width), up(height))}`);
      more(`  ${words.centre} ${figure(x)}, ${figure(y)}`);
    }
    if (made.edge) more(`! ${words.edgeShows} ${made.edge.frame} (${figure(made.edge.worstMm)} mm)`);
  }
  return lines;
}

/** A size that will do is never rounded down. */
const up = (mm: number) => Math.ceil(mm * 100 - 1e-6) / 100;

function sizeOf(field: Field, { shot }: SolvedShot): string {
  const share = field.widthMm / shot.settings.field.widthMm;
  const size =
    field.notation === 'chart' ? `${figure(share * shot.settings.fields)}F` : `${figure(share * 100)} %`;
  return `${size}  ${figure(field.widthMm)} mm`;
}

/** ` (2N 3E)` for a field in chart notation. */
function compass(field: Field, { shot }: SolvedShot): string {
  if (field.notation !== 'chart') return '';
  const { field: standard, fields } = shot.settings;
  const east = (field.xMm / standard.widthMm) * 2 * fields;
  const north = (field.yMm / standard.heightMm) * 2 * fields;
  const parts = [
    Math.abs(north) > 1e-6 ? `${figure(Math.abs(north))}${north > 0 ? 'N' : 'S'}` : '',
    Math.abs(east) > 1e-6 ? `${figure(Math.abs(east))}${east > 0 ? 'E' : 'W'}` : '',
  ].filter((part) => part !== '');
  return parts.length > 0 ? `  (${parts.join(' ')})` : '';
}

/** The marks of each page: the first column stands beside the plan, further ones fill pages of their own. */
export function legendColumns(all: readonly LegendLine[], first: Box, page: Box, look: Look): Mark[][] {
  const sizeMm = Math.max(smallestTextMm(look.settings.paper), 2.5 * largerPrint(look.settings.paper));
  const least = smallestTextMm(look.settings.paper);
  const rowMm = sizeMm * 1.5;
  const lines = all.flatMap((one) => broken(one, first.width, sizeMm, look));
  const columnsAPage = Math.max(1, Math.floor((page.width + 6) / (first.width + 6)));
  const pages: Mark[][] = [[]];
  let column = -1;
  let box = first;
  let y = first.y;
  for (const [i, { text, bold, under, indentMm }] of lines.entries()) {
    const gap = bold && y > box.y ? rowMm * 0.7 : 0;
    // What belongs together stays together.
    let block = 1;
    while (lines[i + block]?.under) block++;
    const rows = bold ? 3 : under ? 1 : block;
    if (y + gap + rows * rowMm > box.y + box.height && y > box.y) {
      column++;
      if (column % columnsAPage === 0) pages.push([]);
      box = { ...page, x: page.x + (column % columnsAPage) * (first.width + 6), width: first.width };
      y = box.y;
    } else y += gap;
    const weight = bold ? 'bold' : 'regular';
    const set = fitLine(look.metrics, text, box.width - indentMm, { most: sizeMm, least, weight });
    pages.at(-1)!.push(
      textAt(box.x + indentMm, y + rowMm / 2, text, {
        sizeMm: set.sizeMm,
        squeeze: set.squeeze,
        weight,
        anchor: 'start',
      }),
    );
    y += rowMm;
  }
  return pages;
}

/** How much narrower a line is set before it is broken. */
const NARROWER = 0.8;

/** A line, or what goes on of it below. */
function broken(one: LegendLine, widthMm: number, sizeMm: number, look: Look): LegendLine[] {
  const weight = one.bold ? 'bold' : 'regular';
  const room = widthMm - one.indentMm;
  if (look.metrics.width(one.text, sizeMm, weight) * NARROWER <= room) return [one];
  const further = { ...one, under: true, indentMm: one.indentMm + 1.5 };
  return wrap(look.metrics, one.text, room - 1.5, sizeMm, weight).map((text, i) => ({
    ...(i === 0 ? one : further),
    text,
  }));
}
