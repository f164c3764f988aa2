/** What the camera chart says in words and figures: rows, sizes, and the lines over each panel. */

import type { Field } from '../../shot/camera/camera-model.js';
import { fieldLegs, kindOf, rowsOf } from '../../shot/camera/move-kinds.js';
import type { Settings } from '../../shot/settings.js';
import { rowName } from '../../shot/time-notation.js';
import type { Artwork, Graduation, SolvedMove } from '../../solve/camera/solved-camera.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import type { CameraPageWords } from '../../words/document-words.js';
import { figure } from '../../words/number-format.js';
import { wordsOf } from '../../words/words.js';
import { tellingOf } from '../camera/camera-plan.js';
import {
  graduated,
  type LabelContext,
  moveKind,
  type PrintedLengths,
  printedLengths,
} from '../camera/move-labels.js';
import type { PageLook } from '../page-look.js';
import { largerPrint, smallestTextMm, unitOf } from '../sheet-geometry.js';
import { type ChartPanel, type PanelOutline, partTaken } from './chart-panels.js';

export interface ChartTexts {
  readonly look: PageLook;
  /** Of the cut, for the standard field. */
  readonly settings: Settings;
  readonly words: CameraPageWords;
  readonly lengths: PrintedLengths;
  readonly telling: LabelContext;
  /** The size of names in the drawing, mm. */
  readonly smallMm: number;
  /** Whether the lines of the field chart are drawn. */
  readonly chartLines: boolean;
  /** Steps of frames at which rows are numbered: parts of a second or a foot first. */
  readonly roundSteps: readonly number[];
  /** The row of a frame as the sheet names it: `1+13`; frame 0 is the moment before the first row. */
  row(frame: number): string;
  /** In a sentence: `row 1+13`, `before row 0+1`. */
  place(frame: number): string;
  /** `1+13 (37)` */
  rowWithFrame(frame: number): string;
  outline(label: string, is: PanelOutline['is']): string;
}

export function chartTexts(solved: SolvedShot, look: PageLook): ChartTexts {
  const { shot, camera } = solved;
  const words = wordsOf(look.settings).cameraPages;
  const west = look.settings.convention === 'west';
  const unit = unitOf(look.settings, shot.fps);
  const name = (frame: number): string => rowName(frame, unit, west);
  const row = (frame: number): string => (frame < 1 ? words.before(name(1)) : name(frame));
  return {
    look,
    settings: shot.settings,
    words,
    lengths: printedLengths(look.settings),
    telling: tellingOf(shot, look.settings, look.neighbours),
    smallMm: Math.max(smallestTextMm(look.settings.paper), 2.2 * largerPrint(look.settings.paper)),
    chartLines: camera.fields.some(({ field }) => field.notation === 'chart'),
    roundSteps: roundSteps(unit),
    row,
    place: (frame) => (frame < 1 ? words.beforeRow(name(1)) : words.row(name(frame))),
    rowWithFrame: (frame) => (frame < 1 ? row(frame) : `${row(frame)} (${frame})`),
    outline: (label, is) => words.outlines[is](label),
  };
}

/** 1, 2, 3, 6, 12, 24, 48 … where a second has 24 frames; 1, 2, 4, 8, 16 … by the foot. */
export function roundSteps(unit: number): number[] {
  const parts = Array.from({ length: unit }, (_, i) => i + 1).filter((n) => unit % n === 0);
  return [...parts, ...[2, 4, 10, 20, 60].map((times) => times * unit)];
}

/** The lines over a panel: what moves on which rows, fields and sheets in figures. The first is its title. */
export function captionOf(panel: ChartPanel, n: number, solved: SolvedShot, texts: ChartTexts): string[] {
  const { words } = texts;
  const title = panel.levels === null ? words.columns.camera : titleOf(panel.levels, solved, words);
  return [
    `${title}   ${words.scale} 1:${figure(n)}`,
    ...panel.moves.flatMap((one) => moveLines(one, panel, texts)),
    ...(panel.levels === null ? fieldLines(solved, texts) : []),
    ...sheetLines(panel, solved, texts),
  ];
}

/** A field and a level have one name: then each is told with what it is. */
const sharesNames = ({ camera, shot }: SolvedShot): boolean =>
  camera.fields.some(({ field }) => shot.levels.some(({ name }) => name === field.name));

function titleOf(levels: readonly string[], solved: SolvedShot, words: CameraPageWords): string {
  const { shot } = solved;
  return levels
    .map((name) => {
      const title = shot.levels.find((level) => level.name === name)?.title ?? '';
      const said = sharesNames(solved) ? words.levelNamed(name) : name;
      return title === '' ? said : words.titled(said, title);
    })
    .join(', ');
}

/** `PAN A→B ease 12/18  1+1–3+0`, how far and how fast, and what its counts begin with. */
function moveLines(one: SolvedMove, { ways }: ChartPanel, texts: ChartTexts): string[] {
  const { move, wayMm, graduations, start } = one;
  const { words, lengths } = texts;
  const { from, to } = rowsOf(move);
  const rows = `${texts.row(from)}–${texts.row(to)} (${from}–${to})`;
  const lines = [`${moveKind.memo(move, texts.telling)}  ${rows}`];
  if (kindOf(move).goes && wayMm > 0) {
    const { step, from: first, to: last } = largestSteps(graduations, ({ stepMm }) => stepMm, lengths);
    lines.push(words.way(lengths.text(wayMm), step, texts.row(first), texts.row(last)));
  }
  if (kindOf(move).handSteps === 'width' && move.legs.every(({ spacing }) => spacing.form === 'steps')) {
    const widthStep = ({ value }: Graduation, i: number) =>
      (value ?? 0) - (graduations[i - 1]?.value ?? value ?? 0);
    const all = fieldLegs(move).reduce((sum, leg) => sum + Math.abs(leg.to.widthMm - leg.from.widthMm), 0);
    const { step, from: first, to: last } = largestSteps(graduations, widthStep, lengths);
    lines.push(words.widthWay(lengths.text(all), step, texts.row(first), texts.row(last)));
  }
  const corner = ways.find(({ solved }) => solved === one)?.ofCorner;
  if (corner) lines.push(words.cornerWay(words.corners[corner]));
  if (graduated(move)) lines.push(words.countNought(texts.place(start)));
  return lines;
}

/** The first rows, one after the other, on which the step is the largest as it is printed. */
function largestSteps(
  graduations: readonly Graduation[],
  stepOf: (graduation: Graduation, i: number) => number,
  lengths: PrintedLengths,
): { readonly step: string; readonly from: number; readonly to: number } {
  const steps = graduations.map((one, i) => Math.abs(stepOf(one, i)));
  const step = lengths.text(Math.max(...steps));
  const first = steps.findIndex((one) => lengths.text(one) === step);
  let last = first;
  while (last + 1 < steps.length && lengths.text(steps[last + 1]!) === step) last++;
  return { step, from: graduations[first]!.frame, to: graduations[last]!.frame };
}

function fieldLines(solved: SolvedShot, texts: ChartTexts): string[] {
  const { words, lengths } = texts;
  const { widthMm, heightMm } = solved.shot.settings.field;
  const taken = (field: Field): string => {
    const part = partTaken(field, solved.camera.moves);
    return part ? words.only[part] : words.unused;
  };
  return [
    `${words.standard} ${lengths.area(widthMm, heightMm)}`,
    ...solved.camera.fields.map(({ field, used }) => {
      const turn = field.turnDeg === 0 ? '' : `, ${words.turned} ${figure(field.turnDeg)}°`;
      const at = `${lengths.figure(field.xMm)}, ${lengths.figure(field.yMm)}`;
      return `${sharesNames(solved) ? words.fieldNamed(field.name) : field.name}  ${sizeOf(field, solved, lengths)}, ${words.centre} ${at}${compass(field, solved)}${turn}${used ? '' : ` (${taken(field)})`}`;
    }),
  ];
}

function sizeOf(field: Field, { shot }: SolvedShot, lengths: PrintedLengths): string {
  const share = field.widthMm / shot.settings.field.widthMm;
  const size =
    field.notation === 'chart' ? `${figure(share * shot.settings.fields)}F` : `${figure(share * 100)} %`;
  return `${size} ${lengths.text(field.widthMm)}`;
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
  return parts.length > 0 ? ` (${parts.join(' ')})` : '';
}

const edgeText = (
  { frame, worstMm, worstFrame }: NonNullable<Artwork['edge']>,
  { words, lengths, row }: Pick<ChartTexts, 'words' | 'lengths' | 'row'>,
): string => words.edgeShows(row(frame), lengths.text(worstMm), row(worstFrame));

/** Sheets of artwork with their sizes and middles; on the camera's panel those that no panel of their own shows. */
function sheetLines(panel: ChartPanel, solved: SolvedShot, texts: ChartTexts): string[] {
  const { camera, shot } = solved;
  const { words, lengths } = texts;
  const shown = new Set(panel.outlines.flatMap(({ label }) => label.split(', ')));
  return shot.levels.flatMap((level) => {
    const made = camera.artwork.get(level.name);
    const here = panel.levels === null ? shown.has(level.name) : panel.levels.includes(level.name);
    if (!made || !here) return [];
    const at = (x: number, y: number) => `${words.centre} ${lengths.figure(x)}, ${lengths.figure(y)}`;
    const parts: string[] = [];
    if (made.width !== null && made.height !== null)
      parts.push(`${words.sheet} ${lengths.area(made.width, made.height)}, ${at(made.homeX, made.homeY)}`);
    if (made.loop) parts.push(`${words.loop} ${lengths.text(made.loop.lengthMm)}`);
    if (made.needed && !level.free && !level.carry) {
      const { width, height, x, y } = made.needed;
      parts.push(`${words.least} ${lengths.area(lengths.up(width), lengths.up(height))}, ${at(x, y)}`);
    }
    if (made.edge) parts.push(`! ${edgeText(made.edge, texts)}`);
    const name = sharesNames(solved) ? words.levelNamed(level.name) : level.name;
    return parts.length === 0 ? [] : [`${name}: ${parts.join('; ')}`];
  });
}
