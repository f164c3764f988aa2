/** What stands in the camera column, and which moves stand beside which. */

import { FRAMES_A_FOOT } from '../../shot/settings.js';
import type { Shot } from '../../shot/shot.js';
import { feetAndFrames, rowName, secondsAndFrames } from '../../shot/time.js';
import type { SolvedLight, SolvedMove } from '../../solve/camera/solved.js';
import type { SolvedShot } from '../../solve/solved.js';
import type { LabelLanguage } from '../../words/labels.js';
import { wordsOf } from '../../words/words.js';
import type { Neighbours } from '../look.js';
import { lightKind } from './lights.js';
import { arrowsOf, graduated, moveKind } from './move-names.js';
import type { Kind, Sign, Telling } from './naming.js';

/** One move or light, as the column and the memo need it. */
export interface Item {
  readonly sign: Sign;
  /** Rows of its bars. */
  readonly first: number;
  readonly last: number;
  /** The first row that it needs: that of graduation 0, where it is a row before the bar. */
  readonly from: number;
  readonly names: readonly string[];
  readonly memo: string;
  /** Places that are named, by frame. */
  readonly labels: ReadonlyMap<number, string>;
  /** Directions on screen, degrees counter-clockwise from right, by the frame from which they hold. */
  readonly arrows: ReadonlyMap<number, number>;
  /** Numbered graduations on every row, and what stands beside each. */
  readonly graduated: boolean;
  readonly numbers: ReadonlyMap<number, { readonly number: number; readonly beside: string }>;
  readonly solved: SolvedMove | null;
  readonly light: SolvedLight | null;
}

export interface PlacedItem {
  readonly item: Item;
  readonly lane: number;
  /** It leaves on the row on which the move before it in the lane has arrived: the place is named there already. */
  readonly goesOn: boolean;
}

export interface CameraPlan {
  readonly items: readonly Item[];
  readonly placed: readonly PlacedItem[];
  /** Of each lane its width, in widths of the narrowest. */
  readonly lanes: readonly number[];
  readonly fixed: string | null;
  readonly telling: Telling;
}

/** Lanes with numbers need room for numbers, labels and steps. */
const GRADUATED_LANE = 2;

export function cameraPlan(
  solved: SolvedShot,
  language: LabelLanguage,
  west: boolean,
  neighbours: Neighbours | undefined,
): CameraPlan {
  const { shot, camera } = solved;
  const telling = tellingOf(shot, language, west, neighbours);
  const unit = west ? FRAMES_A_FOOT : Math.max(1, Math.round(shot.fps));
  const items = [
    ...camera.moves.map((move) => moveItem(move, solved, telling)),
    ...camera.light.map((light) => lightItem(light, shot.length, telling)),
  ]
    .filter((item) => item.first <= shot.length && item.last >= item.first)
    .map((item): Item => {
      const rows = `${rowName(item.first, unit, west)}–${rowName(item.last, unit, west)}`;
      return { ...item, memo: `${item.memo}  ${rows}` };
    });
  const { rest } = shot.camera;
  const { fix } = telling.words;
  const placed = intoLanes(items);
  const lanes: number[] = [1];
  for (const { item, lane } of placed)
    lanes[lane] = Math.max(lanes[lane] ?? 1, item.graduated ? GRADUATED_LANE : 1);
  return {
    items,
    placed,
    lanes,
    fixed: !camera.fixed ? null : rest.notation === 'full' ? fix : `${fix} ${rest.name}`,
    telling,
  };
}

export function tellingOf(
  shot: Shot,
  language: LabelLanguage,
  west: boolean,
  neighbours: Neighbours | undefined,
): Telling {
  return {
    words: wordsOf({ labels: language, convention: west ? 'west' : 'japan' }).moves,
    fieldMm: shot.settings.field.widthMm,
    length: (frames) => (west ? feetAndFrames(frames) : secondsAndFrames(frames, shot.fps)),
    neighbour: (way) => (way === 'in' ? neighbours?.before : neighbours?.after) ?? null,
  };
}

function rowsOf<T>(kind: Kind<T>, it: T, length: number): { first: number; last: number } {
  return { first: Math.max(1, kind.first(it)), last: Math.min(length, kind.last(it)) };
}

function moveItem(solved: SolvedMove, shot: SolvedShot, telling: Telling): Item {
  const { move, graduations } = solved;
  const { first, last } = rowsOf(moveKind, move, shot.shot.length);
  const sign = moveKind.sign(move);
  const numbered = sign.form === 'line' && graduated(move);
  const named = graduations.flatMap(({ frame, label }) => (label === '' ? [] : [[frame, label] as const]));
  const own = moveKind.labels?.(move) ?? [];
  return {
    sign,
    first,
    last,
    from: numbered ? Math.max(1, solved.start) : first,
    names: moveKind.names(move, telling),
    memo: moveKind.memo(move, telling),
    labels: new Map([...named, ...own]),
    arrows: arrowsOf(move, (frame) => shot.camera.frames[Math.max(1, frame) - 1]?.rotation ?? 0),
    graduated: numbered,
    numbers: new Map(
      numbered
        ? graduations.map((graduation) => {
            const { frame, number } = graduation;
            return [frame, { number, beside: moveKind.beside?.(graduation, telling, move) ?? '' }] as const;
          })
        : [],
    ),
    solved,
    light: null,
  };
}

function lightItem(light: SolvedLight, length: number, telling: Telling): Item {
  const kind = lightKind(light.light);
  const { first, last } = rowsOf(kind, light.light, length);
  return {
    sign: kind.sign(light.light),
    first,
    last,
    from: first,
    names: kind.names(light.light, telling),
    memo: kind.memo(light.light, telling),
    labels: new Map(),
    arrows: new Map(),
    graduated: false,
    numbers: new Map(),
    solved: null,
    light,
  };
}

/** Each item in the first lane that is free on its rows: no more lanes than moves that run at the same time. */
function intoLanes(items: readonly Item[]): PlacedItem[] {
  const lanes: Item[] = [];
  const onCamera = (item: Item): number => (item.solved?.move.target.camera ? 0 : 1);
  return [...items]
    .sort((a, b) => a.from - b.from || onCamera(a) - onCamera(b))
    .map((item) => {
      let lane = lanes.findIndex((before) => follows(item, before));
      if (lane < 0) lane = lanes.findIndex((before) => before.last < item.from);
      if (lane < 0) lane = lanes.length;
      const before = lanes[lane];
      lanes[lane] = item;
      return { item, lane, goesOn: before !== undefined && follows(item, before) };
    });
}

/** Whether a move goes on where another ends, on one row: both are drawn in one lane. */
function follows(item: Item, before: Item): boolean {
  const plain = (one: Item): boolean => one.sign.form === 'line' && !one.graduated && one.solved !== null;
  if (!plain(item) || !plain(before) || before.last !== item.first || before.first === before.last)
    return false;
  const levels = (one: Item): string => one.solved!.move.target.levels.join();
  const name = item.labels.get(item.first);
  return name !== undefined && name === before.labels.get(item.first) && levels(item) === levels(before);
}
