/** The ruled form: everything on a sheet that does not depend on what the cut shows. Pages of one kind share one. */

import type { SheetWords } from '../words/sheet-words.js';
import type { Mark, Metrics, SharedForm, Stroke } from './display-list.js';
import { headRows } from './level-heads.js';
import { type Box, frame, line, pale, textAt } from './mark-builders.js';
import { headerCells } from './page-header.js';
import { captionMm, type RowBlock, rowTop, type SheetGeometry } from './sheet-geometry.js';
import { cutToFit, fitLine, setInBox } from './text-fitting.js';

const HAIR = pale(0.12);
const LIGHT = pale(0.24);
const MEDIUM = pale(0.4);
const HEAVY = pale(0.65);

/** Rows of a light rule: six, or the largest part of half a unit (of a unit that has no half) that is no more. */
export function lightRule(unit: number): number {
  const whole = unit % 2 === 0 ? unit / 2 : unit;
  for (let rows = 6; rows > 1; rows--) if (whole % rows === 0 && rows < whole) return rows;
  return unit;
}

/** The rule above a row, by the row's place in its second (foot), from 0. */
export function ruleAbove(place: number, unit: number): Stroke {
  if (place % unit === 0) return HEAVY;
  if (unit % 2 === 0 && place % (unit / 2) === 0) return MEDIUM;
  return place % lightRule(unit) === 0 ? LIGHT : HAIR;
}

interface Kept {
  readonly forms: Map<string, SharedForm>;
}

const kept = new WeakMap<Metrics, Kept>();
const MOST_KEPT = 300;

/**
 * The form of a geometry, made once for all pages alike. `start` is the place of the page's first row in its second (foot),
 * from 0; `west` adds the box for feet.
 */
export function ruledForm(
  geometry: SheetGeometry,
  words: SheetWords,
  metrics: Metrics,
  start: number,
  west: boolean,
): SharedForm {
  let { forms } = kept.get(metrics) ?? { forms: new Map<string, SharedForm>() };
  if (forms.size > MOST_KEPT) forms = new Map();
  kept.set(metrics, { forms });
  const id = idOf(geometry, words, start, west);
  let found = forms.get(id);
  if (!found) {
    found = { id, marks: formMarks(geometry, words, metrics, start, west) };
    forms.set(id, found);
  }
  return found;
}

/** What ids say of a geometry, before and after the place of its first row. Written once, as it takes a dozen widths. */
const geometryIds = new WeakMap<SheetGeometry, readonly [paper: string, columns: string]>();

function idOf(geometry: SheetGeometry, words: SheetWords, start: number, west: boolean): string {
  const known = geometryIds.get(geometry) ?? geometryId(geometry);
  geometryIds.set(geometry, known);
  return `sheet-${west ? 'west' : 'japan'}-${words.language}-${known[0]}-s${start}-${known[1]}`;
}

function geometryId(geometry: SheetGeometry): [paper: string, columns: string] {
  const { columns } = geometry.blocks[0]!;
  const rows = geometry.blocks.map((block) => block.rows).join('+');
  const widths = [
    `k${columns.keys.length}x${columns.keys[0]?.width.toFixed(3)}-${columns.keys.at(-1)?.width.toFixed(3)}`,
    `c${columns.cels.length}x${columns.cels[0]?.width.toFixed(3)}-${columns.cels.at(-1)?.width.toFixed(3)}`,
    `l${columns.labels.width.toFixed(3)}`,
    `d${columns.dialogue?.width.toFixed(3) ?? 0}`,
    `m${columns.camera?.width.toFixed(3) ?? 0}`,
    `n${columns.notes.width.toFixed(3)}`,
    `b${geometry.bracketMm.toFixed(2)}`,
  ];
  return [`${geometry.widthMm}x${geometry.heightMm}-${rows}-u${geometry.unit}`, widths.join('-')];
}

function formMarks(
  geometry: SheetGeometry,
  words: SheetWords,
  metrics: Metrics,
  start: number,
  west: boolean,
): Mark[] {
  return [
    ...boxes(headerCells(geometry, words, west), geometry, metrics),
    frame(geometry.memo, MEDIUM),
    caption(geometry.memo, words.memo, geometry, metrics),
    ...geometry.blocks.flatMap((block) => blockMarks(block, geometry, words, metrics, start)),
  ];
}

/** Boxes with their captions. */
function boxes(
  cells: readonly { readonly box: Box; readonly caption: string }[],
  geometry: SheetGeometry,
  metrics: Metrics,
): Mark[] {
  return cells.flatMap((cell) => [
    frame(cell.box, LIGHT),
    caption(cell.box, cell.caption, geometry, metrics),
  ]);
}

/** A small word at the top left of a box. */
export function caption(box: Box, text: string, geometry: SheetGeometry, metrics: Metrics): Mark {
  const sizeMm = captionMm(geometry);
  const set = cutToFit(metrics, text, box.width - 1.2, { most: sizeMm, least: geometry.leastTextMm });
  return textAt(box.x + 0.7, box.y + 0.4 + sizeMm * 0.5, set.text, {
    sizeMm: set.sizeMm,
    ink: 'grey',
    anchor: 'start',
    squeeze: set.squeeze,
  });
}

function blockMarks(
  block: RowBlock,
  geometry: SheetGeometry,
  words: SheetWords,
  metrics: Metrics,
  start: number,
): Mark[] {
  const { columns } = block;
  const { heads, rowMm, unit } = geometry;
  const top = rowTop(geometry, 0);
  const bottom = rowTop(geometry, block.rows);
  const right = block.x + block.width;
  const marks: Mark[] = [];

  for (let row = 1; row < block.rows; row++) {
    const y = rowTop(geometry, row);
    const place = (start + block.before + row) % unit;
    marks.push(line(block.x, y, right, y, ruleAbove(place, unit)));
  }
  marks.push(line(block.x, top, right, top, HEAVY), line(block.x, bottom, right, bottom, HEAVY));

  const numberMm = Math.max(geometry.leastTextMm, Math.min(rowMm * 0.62, 1.9 * geometry.scale));
  const every = lightRule(unit);
  for (let row = 0; row < block.rows; row++) {
    const number = ((start + block.before + row) % unit) + 1;
    const y = rowTop(geometry, row) + rowMm / 2;
    const strong = number % every === 0;
    for (const column of [columns.numbers, columns.numbersAgain])
      marks.push(
        textAt(column.x + column.width / 2, y, String(number), {
          sizeMm: numberMm,
          weight: strong ? 'bold' : 'regular',
          ink: 'grey',
        }),
      );
  }

  const rows = headRows(geometry);
  const inner = heads.y + rows.group.height;
  const upright = (x: number, from: number, stroke: Stroke): Mark => line(x, from, x, bottom, stroke);
  for (const column of columns.keys.slice(1)) marks.push(upright(column.x, inner, LIGHT));
  for (const column of columns.cels.slice(1)) marks.push(upright(column.x, inner, LIGHT));
  marks.push(upright(columns.numbers.x, top, HAIR), upright(columns.numbersAgain.x, top, MEDIUM));
  for (const x of groupEdges(block)) marks.push(upright(x, heads.y, MEDIUM));
  marks.push(upright(block.x, heads.y, HEAVY), upright(right, heads.y, HEAVY));
  marks.push(line(block.x, heads.y, right, heads.y, HEAVY), line(block.x, inner, right, inner, LIGHT));
  marks.push(...headRules(block, geometry));
  marks.push(...groupNames(block, geometry, words, metrics));
  return marks;
}

/** Left edges of the groups of columns. */
function groupEdges({ columns }: RowBlock): number[] {
  return [
    columns.keys[0]?.x,
    columns.dialogue?.x ?? columns.numbersAgain.x,
    columns.cels[0]?.x,
    columns.camera?.x,
    columns.notes.x,
  ].filter((x) => x !== undefined);
}

function headRules(block: RowBlock, geometry: SheetGeometry): Mark[] {
  const { heads } = geometry;
  const rows = headRows(geometry);
  const { keys, cels } = block.columns;
  const across = (over: typeof keys, y: number): Mark => {
    const last = over.at(-1)!;
    return line(over[0]!.x, y, last.x + last.width, y, HAIR);
  };
  const names = heads.y + rows.group.height + rows.name.height;
  const counts = names + rows.count.height;
  return [
    across(keys, names),
    across(cels, names),
    across(cels, counts),
    across(cels, counts + rows.last.height),
  ];
}

function groupNames(block: RowBlock, geometry: SheetGeometry, words: SheetWords, metrics: Metrics): Mark[] {
  const { columns } = block;
  const { heads } = geometry;
  const rows = headRows(geometry);
  const over = (from: number, to: number, texts: readonly string[]): Mark[] => {
    const box = { x: from + 0.3, y: heads.y, width: to - from - 0.6, height: rows.group.height };
    const look = {
      most: 1.9 * geometry.scale,
      least: geometry.leastTextMm,
      ink: 'grey',
      weight: 'bold',
    } as const;
    const sets = texts.map((text) => setInBox(metrics, text, box, look));
    const fitting = sets.find(({ fits }) => fits);
    if (fitting) return fitting.marks;
    // Over a single narrow column the shortest name takes nearly all of its width, and is squeezed, never broken.
    const { ink, weight } = look;
    const shortest = texts.at(-1)!;
    const fit = fitLine(metrics, shortest, box.width + 0.4, { most: look.least, least: look.least, weight });
    return [textAt(box.x + box.width / 2, box.y + box.height / 2, shortest, { ...fit, ink, weight })];
  };
  const end = (several: typeof columns.keys): number => several.at(-1)!.x + several.at(-1)!.width;
  const marks = [
    ...over(columns.keys[0]!.x, end(columns.keys), words.keys),
    ...over(columns.cels[0]!.x, end(columns.cels), words.cels),
    ...over(columns.notes.x, block.x + block.width, [words.notes]),
  ];
  if (columns.dialogue)
    marks.push(...over(columns.dialogue.x, columns.dialogue.x + columns.dialogue.width, [words.dialogue]));
  if (columns.camera)
    marks.push(...over(columns.camera.x, columns.camera.x + columns.camera.width, [words.camera]));
  return [...marks, ...headCaptions(block, geometry, words, metrics)];
}

/** What the figures over the cel columns count. */
function headCaptions(block: RowBlock, geometry: SheetGeometry, words: SheetWords, metrics: Metrics): Mark[] {
  const { columns } = block;
  const rows = headRows(geometry);
  // Left of the figures where there is room, else right of them.
  const { dialogue, numbersAgain, notes } = columns;
  const x = dialogue ? dialogue.x + 0.4 : notes.x + 0.6;
  const width = dialogue ? numbersAgain.x + numbersAgain.width - 0.5 - x : notes.width - 1.2;
  let y = geometry.heads.y + rows.group.height + rows.name.height;
  const texts: [string, number][] = [
    [words.drawings, rows.count.height],
    [words.last, rows.last.height],
    [words.changes, rows.changes.height],
  ];
  return texts.flatMap(([text, height]) => {
    const box = { x, y, width, height };
    y += height;
    const set = setInBox(metrics, text, box, {
      most: captionMm(geometry),
      least: geometry.leastTextMm,
      ink: 'grey',
      across: dialogue ? 'end' : 'start',
    });
    return set.marks;
  });
}
