/**
 * The move table: where camera and levels are, row by row.
 *
 * It has a column only for what changes in this cut; rows that are alike are one (`13–24`). Steps are said of each thing that
 * moves: in mm (or inches) for what goes a way, as the change of width for a truck. A move at constant speed is one line of
 * words over the table. The rows go on in further sets of columns side by side, and on further pages.
 */

import { layTable, type TableSet } from '../../layout/table.js';
import type { Move } from '../../shot/camera/camera-model.js';
import {
  endOf,
  goingAlong,
  kindOf,
  rests,
  rowsOf,
  startOf,
  toldDegrees,
} from '../../shot/camera/move-kinds.js';
import type { Graduation, PlacementFrame, SolvedMove } from '../../solve/camera/solved-camera.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import type { FurtherMove } from '../../words/document-words.js';
import { figure } from '../../words/number-format.js';
import { isConstant } from '../camera/camera-plan.js';
import { moveKind } from '../camera/move-labels.js';
import type { Mark, Page } from '../display-list.js';
import { type Box, pale, textAt } from '../mark-builders.js';
import { pageFrame } from '../page-frame.js';
import type { PageLook } from '../page-look.js';
import { unitOf } from '../sheet-geometry.js';
import { type PaperColumn, tableMarks } from '../table-marks.js';
import { cachedMetrics, wrap } from '../text-fitting.js';
import { sameWay } from './chart-panels.js';
import { type ChartTexts, chartTexts } from './chart-texts.js';

/** A column before it is known how large the print is. */
interface Figures {
  /** Who moves: the camera, or levels. */
  readonly group: string;
  readonly head: string;
  readonly measures: 'place' | 'length' | 'share' | 'angle';
  /** The text on a frame; '' where it is not told. */
  readonly of: (frame: number) => string;
}

/** What a column says on each frame, from the first. */
type Said = readonly string[];

interface FigureColumn extends PaperColumn {
  readonly head: string;
}

/** Frames on which all columns say the same. */
interface Rows {
  readonly from: number;
  readonly to: number;
}

export interface MoveTable {
  /** What the table takes within an area, and its marks; null where it takes more than one page. */
  within(area: Box): { readonly width: number; readonly height: number; marks(): Mark[] } | null;
  /** Pages of its own: as many sets of columns side by side as the paper holds. */
  pages(): Page[];
}

const SETS_APART_MM = 5;
const HEAD_ROWS = 2.4;
/** Room for figures beside the rules of a column, mm. */
const PADDING_MM = 2.2;

/** Null where nothing moves but at constant speed, or by swings. */
export function moveTable(solved: SolvedShot, given: PageLook): MoveTable | null {
  const look = { ...given, metrics: cachedMetrics(given.metrics) };
  const { camera, shot } = solved;
  const told = camera.moves.filter((one) => !isConstant(one) && kindOf(one.move).legs !== 'swing');
  if (told.length === 0 || shot.length === 0) return null;
  const texts = chartTexts(solved, look);
  const figures = [...cameraColumns(told, solved, texts), ...levelColumns(told, solved, texts)];
  if (figures.length === 0) return null;
  const said = figures.map(({ of }): Said => Array.from({ length: shot.length }, (_, i) => of(i + 1)));
  const rows = rowsOfTable(said, shot.length);
  const constant = camera.moves
    .filter((one) => !told.includes(one) && kindOf(one.move).legs !== 'swing')
    .map((one) => constantWords(one, texts));
  const print = {
    texts,
    rows,
    remarks: [...constant, measuredWords(figures, told, solved, texts)],
    unit: unitOf(look.settings, shot.fps),
  };
  const columns = paperColumns(figures, said, rows, texts);
  const lay = (area: Box, remarks: readonly string[], tooLong: 'split' | 'refuse') => {
    const above = remarks.length * rowOf(texts) + 1;
    return layTable({
      columns,
      names: 1,
      rows: rows.length,
      rowHeight: () => rowOf(texts),
      headHeight: rowOf(texts) * HEAD_ROWS,
      sharing: (all) => all.map(({ least }) => least),
      area: { ...area, y: area.y + above, height: area.height - above },
      across: 99,
      between: SETS_APART_MM,
      tooLong,
    });
  };
  return {
    within(area) {
      const remarks = remarkLines(print, area);
      const page = lay(area, remarks, 'refuse')?.pages[0];
      if (!page) return null;
      const lines = remarks.map((line) => texts.look.metrics.width(line, texts.smallMm, 'regular'));
      // Whoever lays it out again as wide as this gets the same lines.
      const right = Math.max(
        ...page.sets.map((set) => set.x + set.width),
        ...lines.map((width) => Math.min(area.x + width + 0.01, area.x + area.width)),
      );
      const bottom = Math.max(...page.sets.map((set) => set.y + set.height));
      return {
        width: right - area.x,
        height: bottom - area.y,
        marks: () => [
          ...remarkMarks(remarks, print, area),
          ...page.sets.flatMap((set) => setMarks(set, print)),
        ],
      };
    },
    pages() {
      const { words } = texts;
      const framed = (n: number, of: number) => pageFrame(shot, look, words.table(n), of);
      const { body } = framed(1, 1);
      const area = { ...body, y: body.y + 2, height: body.height - 4 };
      const remarks = remarkLines(print, area);
      const { pages } = lay(area, remarks, 'split')!;
      return pages.map(({ sets }, i): Page => {
        const { widthMm, heightMm, form, marks } = framed(i + 1, pages.length);
        return {
          widthMm,
          heightMm,
          label: `table ${i + 1}`,
          part: 'table',
          form,
          marks: [
            ...marks,
            ...remarkMarks(remarks, print, area),
            ...sets.flatMap((set) => setMarks(set, print)),
          ],
          rows: [],
        };
      });
    },
  };
}

export function moveTablePages(solved: SolvedShot, look: PageLook): Page[] {
  return moveTable(solved, look)?.pages() ?? [];
}

const rowOf = (texts: ChartTexts) => texts.smallMm * 1.5;

/** As wide as their texts; a group's name needs the width of its columns. */
function paperColumns(
  figures: readonly Figures[],
  said: readonly Said[],
  rows: readonly Rows[],
  texts: ChartTexts,
): FigureColumn[] {
  const { metrics } = texts.look;
  const width = (text: string, weight: 'regular' | 'bold') => metrics.width(text, texts.smallMm, weight);
  const column = (head: string, cells: readonly string[], group?: string): FigureColumn => {
    const widest =
      cells.reduce((so, text) => Math.max(so, width(text, 'regular')), width(head, 'bold')) + PADDING_MM;
    const lines = cells.map((text) => [text]);
    const named = group === undefined ? {} : { group };
    return { ...named, head, align: 'end', least: widest, wanted: widest, cells: () => lines };
  };
  const all = figures.map(({ group, head }, i) =>
    column(
      head,
      rows.map(({ from }) => said[i]![from - 1]!),
      group,
    ),
  );
  for (const group of new Set(figures.map((one) => one.group))) {
    const own = all.filter((one) => one.group === group);
    const missing = width(group, 'bold') + 2 - own.reduce((sum, { least }) => sum + least, 0);
    const last = all.lastIndexOf(own.at(-1)!);
    if (missing > 0) {
      const least = all[last]!.least + missing;
      all[last] = { ...all[last]!, least, wanted: least };
    }
  }
  return [
    column(
      texts.words.columns.time,
      rows.map((row) => rowText(row, texts)),
    ),
    ...all,
  ];
}

function constantWords({ move, graduations }: SolvedMove, texts: ChartTexts): string {
  const { from, to } = rowsOf(move);
  const said = `${moveKind.memo(move, texts.telling)}  ${texts.row(from)}–${texts.row(to)}`;
  const [first, second] = graduations;
  if (!first || !second) return said;
  const step = stepText(move, second, first, texts);
  const { words } = texts;
  return `${said}: ${rests(move) ? words.eachFrameFrom(step, texts.row(second.frame)) : words.eachFrame(step)}`;
}

/** `12.7 mm`, `−2.1 mm width`, `+1.5 %`, `3°` */
function stepText(move: Move, now: Graduation, before: Graduation, { lengths, words }: ChartTexts): string {
  const { goes, legs } = kindOf(move);
  if (goes) return lengths.text(now.stepMm);
  const by = (now.value ?? 0) - (before.value ?? 0);
  if (legs === 'field') return `${words.width} ${signed(lengths.text(by))}`;
  return signed(legs === 'scale' ? `${figure(by * 100)} %` : `${figure(toldDegrees(move, by))}°`);
}

/** What the figures are measured from, and what besides the moves with steps is in them. */
function measuredWords(
  figures: readonly Figures[],
  told: readonly SolvedMove[],
  { camera, shot }: SolvedShot,
  { words, lengths }: ChartTexts,
): string {
  const has = (...measures: readonly Figures['measures'][]) =>
    figures.some((one) => measures.includes(one.measures));
  const placed = new Set(figures.flatMap(({ group, measures }) => (measures === 'place' ? [group] : [])));
  const moves = camera.moves.map(({ move }) => move);
  const shake = moves.some(({ kind }) => kind === 'shake') ? (['shake'] as const) : [];
  const groups = levelGroups(told, { camera, shot }).filter(({ names }) => placed.has(names.join(', ')));
  const levels = groups.map(({ names }) => {
    const named = names[0]!;
    const fixed = shot.levels.some(({ name, carry }) => name === named && carry);
    const own = moves.filter(({ target }) => !target.camera && target.levels.includes(named));
    const going = own.filter((move) => kindOf(move).goes);
    const added = going.some((a, i) =>
      going.slice(i + 1).some((b) => startOf(a) < endOf(b) && startOf(b) < endOf(a)),
    );
    const further: readonly FurtherMove[] = [
      ...(added ? (['pull'] as const) : []),
      ...(own.some(({ kind }) => kind === 'sway') ? (['sway'] as const) : []),
      ...(fixed || moves.some((move) => goingAlong(move).includes(named)) ? (['carry'] as const) : []),
      ...(fixed ? shake : []),
    ];
    return { names: names.join(', '), further };
  });
  const ofCamera = placed.has(words.columns.camera) ? shake : null;
  const further = [ofCamera ?? [], ...levels.map((level) => level.further)];
  return words.measured({
    unit: has('place', 'length') ? lengths.unit : null,
    places: placed.size > 0,
    camera: ofCamera,
    levels,
    stepsAlone:
      figures.some(({ head }) => head === words.columns.step) && further.some((one) => one.length > 0),
    degrees: has('angle'),
  });
}

const differ = (values: readonly number[]) => values.some((value) => Math.abs(value - values[0]!) > 1e-9);

/** What of the camera changes, and its steps. */
function cameraColumns(told: readonly SolvedMove[], { camera }: SolvedShot, texts: ChartTexts): Figures[] {
  const moves = told.filter(({ move }) => kindOf(move).quantity === 'field');
  if (moves.length === 0) return [];
  const { lengths, words } = texts;
  const { frames } = camera;
  const group = words.columns.camera;
  const at = (
    head: string,
    measures: Figures['measures'],
    pick: (frame: (typeof frames)[number]) => number,
    text: (value: number) => string,
  ): Figures[] =>
    differ(frames.map(pick)) ? [{ group, head, measures, of: (f) => text(pick(frames[f - 1]!)) }] : [];
  return [
    ...at('x', 'place', ({ x }) => x, lengths.aligned),
    ...at('y', 'place', ({ y }) => y, lengths.aligned),
    ...at(words.columns.width, 'length', ({ width }) => width, lengths.aligned),
    ...at('%', 'share', ({ percent }) => percent, tenths),
    ...at(words.columns.turn, 'angle', ({ rotation }) => rotation, hundredths),
    ...stepColumns(group, moves, texts),
  ];
}

/** The place of each level that moves by itself, its steps; those that are the same are one group. */
function levelColumns(
  told: readonly SolvedMove[],
  { camera, shot }: SolvedShot,
  texts: ChartTexts,
): Figures[] {
  const { lengths, words } = texts;
  return levelGroups(told, { camera, shot }).flatMap(({ names, at, moves }) => {
    const group = names.join(', ');
    const column = (
      head: string,
      measures: Figures['measures'],
      pick: (frame: PlacementFrame) => number,
      text: (value: number) => string,
    ): Figures[] =>
      differ(at.map(pick)) ? [{ group, head, measures, of: (f) => text(pick(at[f - 1]!)) }] : [];
    return [
      ...column('x', 'place', ({ x }) => x, lengths.aligned),
      ...column('y', 'place', ({ y }) => y, lengths.aligned),
      ...column(words.columns.scale, 'share', ({ scale }) => scale * 100, tenths),
      ...column(words.columns.turn, 'angle', ({ rotation }) => rotation, hundredths),
      ...stepColumns(group, moves, texts),
    ];
  });
}

/** Levels that move by themselves and always in the same way, with those of these moves that a table has to tell. */
interface LevelGroup {
  readonly names: string[];
  readonly at: readonly PlacementFrame[];
  readonly moves: readonly SolvedMove[];
}

function levelGroups(
  told: readonly SolvedMove[],
  { camera, shot }: Pick<SolvedShot, 'camera' | 'shot'>,
): LevelGroup[] {
  const groups: LevelGroup[] = [];
  for (const { name } of shot.levels) {
    const moves = told.filter(({ move }) => !move.target.camera && move.target.levels.includes(name));
    const at = camera.placement.get(name) ?? [];
    if (moves.length === 0 || at.length === 0) continue;
    const same = groups.find((one) => sameWay(one.at, at));
    if (same) same.names.push(name);
    else groups.push({ names: [name], at, moves });
  }
  return groups;
}

/** Steps from the row before: a way, a change of width (and in percent of it), of scale or of degrees. */
function stepColumns(group: string, moves: readonly SolvedMove[], texts: ChartTexts): Figures[] {
  const { lengths, words } = texts;
  const { columns } = words;
  const steps = (
    own: readonly SolvedMove[],
    head: string,
    measures: Figures['measures'],
    text: (now: Graduation, before: Graduation) => string,
  ): Figures[] => {
    const of = (frame: number): string => {
      for (const { graduations, start } of own) {
        const now = graduations[frame - start];
        if (now && frame > start) return text(now, graduations[frame - start - 1]!);
      }
      return '';
    };
    return own.length === 0 ? [] : [{ group, head, measures, of }];
  };
  const going = moves.filter(({ move }) => kindOf(move).goes);
  const grows = (form: 'field' | 'scale' | 'angle') =>
    moves.filter(({ move }) => !kindOf(move).goes && kindOf(move).legs === form);
  const by = (now: Graduation, before: Graduation): number => (now.value ?? 0) - (before.value ?? 0);
  return [
    ...steps(going, columns.step, 'length', ({ stepMm }) => lengths.aligned(stepMm)),
    ...steps(grows('field'), columns.widthStep, 'length', (a, b) => signed(lengths.aligned(by(a, b)))),
    ...steps(grows('field'), columns.shareStep, 'share', (a, b) =>
      a.value && b.value ? signed(hundredths((a.value / b.value - 1) * 100)) : '',
    ),
    ...steps(grows('scale'), columns.scaleStep, 'share', (a, b) => signed(hundredths(by(a, b) * 100))),
    ...steps(grows('angle'), columns.turnStep, 'angle', (a, b) => signed(hundredths(by(a, b)))),
  ];
}

const tenths = (value: number): string => figure(value, { decimals: 1, zeros: 'always' });
const hundredths = (value: number): string => figure(value, { zeros: 'always' });

/** With its sign; nothing has none. */
const signed = (text: string): string => (/^-/.test(text) || !/[1-9]/.test(text) ? text : `+${text}`);

/** Rows one by one; rows on which every column says the same are one. */
function rowsOfTable(columns: readonly Said[], length: number): Rows[] {
  const rows: { from: number; to: number }[] = [];
  for (let frame = 1; frame <= length; frame++) {
    const last = rows.at(-1);
    if (last && columns.every((said) => said[frame - 1] === said[frame - 2])) last.to = frame;
    else rows.push({ from: frame, to: frame });
  }
  return rows;
}

function rowText({ from, to }: Rows, texts: ChartTexts): string {
  return from === to ? `${texts.row(from)} (${from})` : `${texts.row(from)}–${texts.row(to)} (${from}–${to})`;
}

interface Print {
  readonly texts: ChartTexts;
  readonly rows: readonly Rows[];
  /** Lines over the table: moves at constant speed, what is measured from where. */
  readonly remarks: readonly string[];
  /** Frames of a second or a foot, between which the rules are heavier. */
  readonly unit: number;
}

/** The remarks in lines as wide as the area. */
const remarkLines = ({ texts, remarks }: Print, { width }: Box): string[] =>
  remarks.flatMap((text) => wrap(texts.look.metrics, text, width, texts.smallMm));

function remarkMarks(lines: readonly string[], { texts }: Print, area: Box): Mark[] {
  const { smallMm: sizeMm } = texts;
  return lines.map((text, i) =>
    textAt(area.x, area.y + (i + 0.5) * rowOf(texts), text, { sizeMm, anchor: 'start' }),
  );
}

function setMarks(set: TableSet<FigureColumn>, { texts, rows, unit }: Print): Mark[] {
  const { metrics } = texts.look;
  const sizeMm = texts.smallMm;
  const rowMm = rowOf(texts);
  const unitAt = (row: number): number => Math.floor((rows[row]!.from - 1) / unit);
  const opens = (i: number): boolean =>
    i === 0 || set.columns[i]!.column.group !== set.columns[i - 1]!.column.group;
  const bold = { sizeMm, weight: 'bold' } as const;
  return [
    ...tableMarks(set, {
      metrics,
      sizeMm,
      rowMm,
      leadingMm: rowMm,
      inset: [0.6, 0.8],
      least: null,
      bold: () => false,
      head: ({ head }, { x, y, width }) => [
        textAt(x + width - 0.8, y + rowMm * 1.75, head, { ...bold, anchor: 'end' }),
      ],
      headRule: pale(0.45),
      ruleUnder: (row, _, last) => pale(last || unitAt(row) !== unitAt(row + 1) ? 0.45 : 0.1),
      upright: (_, i) => pale(opens(i) ? 0.45 : 0.12),
      edge: pale(0.45),
    }),
    ...set.groups.map(({ name, x }) =>
      textAt(x + 1, set.y + rowMm * 0.65, name, { ...bold, anchor: 'start' }),
    ),
  ];
}
