/** What differs between two versions of a move; what moves are called, and the rows that they are written with. */

import type { Leg, Move, Spacing } from '../shot/camera/camera-model.js';
import {
  type GivenParameter,
  givenOf,
  growthOf,
  kindOf,
  type LegForm,
  type LegForms,
  legsOf,
  parametersOf,
  placesOf,
  rowsOf as rowsOfMove,
  toldDegrees,
} from '../shot/camera/move-kinds.js';
import type { Form, Parameter } from '../shot/camera/move-parameters.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedMove } from '../solve/camera/solved-camera.js';
import { figure } from '../words/number-format.js';
import type { CameraChange, MannerValue, MoveSeen, MoveSpeed } from './change.js';

/** The rows that a move is written with: `@1 > @24` stands on 1 and on 24, `1..24` moves on all of them. */
export function sheetRowsOf({ move }: SolvedMove): Frames {
  const { from, to } = rowsOfMove(move);
  return { from: Math.max(1, from), to };
}

/** Null: its legs have no places. */
const NAMES: { readonly [L in LegForm]: ((end: LegForms[L], move: Move) => string) | null } = {
  field: ({ name }) => name,
  place: ({ label, xMm, yMm }) => label || `${round(xMm)},${round(yMm)}`,
  scale: ({ label, value }) => `${label} ${round(value * 100)}%`.trim(),
  angle: ({ label, value }, move) => `${label} ${round(toldDegrees(move, value))}°`.trim(),
  way: null,
  swing: null,
};

/** Places on the way by name; scales in percent, turns in degrees. */
export function placeNamesOf(move: Move): string[] {
  const name = NAMES[kindOf(move).legs] as ((end: unknown, move: Move) => string) | null;
  if (!name) return [];
  const named = (end: unknown) => name(end, move);
  // One name for each frame that is typed: what a curve passes on the way to it stands before it.
  const legs: readonly Leg<unknown>[] = move.legs;
  return [named(legs[0]!.from), ...legs.map(({ passing, to }) => [...passing, to].map(named).join('→'))];
}

export const round = (value: number): string => figure(value, { decimals: 3 });

export function seenMove(move: Move): MoveSeen {
  const growth = growthOf(move);
  const grows = growth.some((one) => one > 0);
  const shrinks = growth.some((one) => one < 0);
  return {
    move: move.kind,
    levels: move.target.levels,
    places: placeNamesOf(move),
    sense: grows === shrinks ? null : grows ? 'in' : 'out',
    quick: parametersOf(move).some(({ name, value }) => name === 'quick' && value === true),
  };
}

/** Numbers of a text have six decimals at most. */
export const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

// ---- what differs in one move

/** What the other moves and names of a cut say of one. */
export interface MoveContext {
  readonly route: readonly string[];
  readonly levels: readonly [string, string];
  readonly carry: readonly [string, string];
  readonly toEnd: boolean;
}

/** One move in both versions. */
export class MovePair {
  private readonly seen: MoveSeen;

  constructor(
    private readonly was: SolvedMove,
    private readonly is: SolvedMove,
    private readonly known: MoveContext,
  ) {
    this.seen = seenMove(is.move);
  }

  changes(): CameraChange[] {
    return [
      ...this.kind(),
      ...this.time(),
      ...this.way(),
      ...this.route(),
      ...this.spacing(),
      ...this.manners(),
    ];
  }

  private get speed(): MoveSpeed {
    return {
      wayMm: { old: this.was.wayMm, now: this.is.wayMm },
      largestStepMm: { old: this.was.largestStepMm, now: this.is.largestStepMm },
    };
  }

  private kind(): CameraChange[] {
    const [a, b] = [this.was.move, this.is.move];
    if (a.kind === b.kind) return [];
    return [{ kind: 'move-manner', manner: 'kind', old: a.kind, now: b.kind, ...this.seen }];
  }

  private time(): CameraChange[] {
    const { was, is } = this;
    const [stopsOld, stopsNow] = [stopsOf(was.move), stopsOf(is.move)];
    if (stopsOld.length !== stopsNow.length) return [];
    const middle = stopsOld.length === stopsNow.length && stopsOld.some((frame, i) => frame !== stopsNow[i]);
    if (was.start === is.start && was.end === is.end && !middle) return [];
    // What goes on to the end at its own speed goes on as long as the cut does.
    if (this.known.toEnd && was.start === is.start && goesOn(was.move) && goesOn(is.move)) return [];
    const inner = (stops: readonly number[]) => stops.slice(1, -1);
    const by = is.start - was.start;
    const moved =
      is.end - was.end === by && inner(stopsOld).every((frame, i) => inner(stopsNow)[i] === frame + by);
    const told = moved || inner(stopsOld).every((frame, i) => inner(stopsNow)[i] === frame);
    return [
      {
        kind: 'move-time',
        frames: { old: sheetRowsOf(was), now: sheetRowsOf(is) },
        stops: told || !middle ? null : { old: stopsOld, now: stopsNow },
        ...this.speed,
        ...this.seen,
      },
    ];
  }

  private way(): CameraChange[] {
    const [old, now] = [this.was.move, this.is.move].map((move) => givenOf(move, 'way'));
    if (!old || !now) return [];
    const rates = old.rateMm !== null && now.rateMm !== null;
    const same = rates ? near(old.rateMm!, now.rateMm!) : near(old.distanceMm, now.distanceMm);
    if (same) return [];
    return [
      {
        kind: 'move-way',
        distanceMm: { old: old.distanceMm, now: now.distanceMm },
        rateMm: { old: old.rateMm, now: now.rateMm },
        ...this.speed,
        ...this.seen,
      },
    ];
  }

  private route(): CameraChange[] {
    const { was, is, known } = this;
    const now = placeNamesOf(is.move);
    if (known.route.join() !== now.join())
      return [
        {
          kind: 'move-route',
          old: known.route,
          now,
          frames: { old: sheetRowsOf(was), now: sheetRowsOf(is) },
          ...this.speed,
          ...this.seen,
        },
      ];
    const marks = (move: Move) => (legsOf(move, 'place').length > 0 ? placesOf(legsOf(move, 'place')) : []);
    const [before, after] = [marks(was.move), marks(is.move)];
    return after.flatMap((mark, i): CameraChange[] => {
      const old = before[i]!;
      if (near(old.xMm, mark.xMm) && near(old.yMm, mark.yMm)) return [];
      return [
        {
          kind: 'mark-moved',
          mark: mark.label,
          by: { xMm: mark.xMm - old.xMm, yMm: mark.yMm - old.yMm },
          old: { xMm: old.xMm, yMm: old.yMm },
          now: { xMm: mark.xMm, yMm: mark.yMm },
          ...this.seen,
        },
      ];
    });
  }

  private spacing(): CameraChange[] {
    const [before, after] = [this.was.move.legs, this.is.move.legs];
    if (before.length !== after.length) return [];
    return after.flatMap(({ spacing }, leg): CameraChange[] => {
      const old = before[leg]!.spacing;
      const shift = spacing.form === 'fair' && old.form === 'fair' ? this.is.start - this.was.start : 0;
      if (sameSpacing(old, spacing, shift)) return [];
      return [{ kind: 'move-spacing', leg, old, now: spacing, ...this.speed, ...this.seen }];
    });
  }

  /** Every parameter of the table: levels first, then what all moves have, then flags, then the others. */
  private manners(): CameraChange[] {
    const [was, is] = [this.was.move, this.is.move];
    const { levels, carry } = this.known;
    const before = new Map(parametersOf(was).map((given) => [given.name, plainValue(given)]));
    const fair = (move: Move) => move.legs.some(({ spacing }) => spacing.form === 'fair');
    const given = parametersOf(is)
      // A quick truck is one with a fairing: the spacing has said it.
      .filter(({ parameter }) => parameter.told !== 'before' || fair(was) === fair(is));
    const pairs = (forms: (form: Form) => boolean) =>
      given
        .filter(({ form }) => forms(form))
        .map((one): Pair => [one.name, before.get(one.name) ?? null, plainValue(one)]);
    const all: Pair[] = [
      ['levels', ...levels],
      ...pairs((form) => form === 'levels').map(([name]): Pair => [name, ...carry]),
      ['gives', was.gives, is.gives],
      ['on', was.on, is.on],
      ['graduated', was.graduated, is.graduated],
      ...pairs((form) => form === 'flag'),
      ...pairs((form) => !TOLD_APART.has(form)),
    ];
    return all
      .filter(
        ([, old, now]) =>
          old !== now && !(typeof old === 'number' && typeof now === 'number' && near(old, now)),
      )
      .map(([manner, old, now]) => ({ kind: 'move-manner', manner, old, now, ...this.seen }) as CameraChange);
  }
}

type Pair = [name: string, old: MannerValue, now: MannerValue];

/** Forms that are compared in a place of their own. */
const TOLD_APART: ReadonlySet<Form> = new Set(['levels', 'flag', 'way']);

/** Frames of each place on the way. */
function stopsOf(move: Move): number[] {
  return [move.legs[0]!.start, ...move.legs.map(({ end }) => end)];
}

/** Whether a longer time changes nothing on the rows that were there. */
function goesOn(move: Move): boolean {
  const way = givenOf(move, 'way');
  if (way) return way.rateMm !== null && move.legs[0]!.spacing.form === 'linear';
  const swing = givenOf(move, 'swing');
  return kindOf(move).legs === 'swing' && (!swing || near(swing.fromMm, swing.toMm));
}

/** `shift`: how much later the move begins, which takes its mark along. */
function sameSpacing(a: Spacing, b: Spacing, shift: number): boolean {
  if (a.form === 'steps' && b.form === 'steps')
    return a.mm.length === b.mm.length && a.mm.every((step, i) => near(step, b.mm[i]!));
  if (a.form === 'fair' && b.form === 'fair')
    return (
      a.mark === b.mark && near(a.share, b.share) && (a.frame === b.frame || a.frame + shift === b.frame)
    );
  return JSON.stringify(a) === JSON.stringify(b);
}

type Values = {
  readonly [F in Form]: (
    value: (GivenParameter & { readonly form: F })['value'],
    parameter: Parameter<F>,
  ) => MannerValue;
};

/** Values of parameters as plain data, rounded to what is seen. */
const VALUES: Values = {
  flag: (value) => value,
  levels: (names) => [...names].sort().join(','),
  sense: ({ positive }) => positive,
  direction: ({ word, degrees }) => (word === 'angle' ? `${round(degrees)}°` : word),
  way: ({ distanceMm }) => distanceMm,
  swing: ({ fromMm, toMm }) => (near(fromMm, toMm) ? `${round(fromMm)}` : `${round(fromMm)}>${round(toMm)}`),
  measure: (value, { unit }) => (unit === 'frames' ? value : `${round(value)}`),
  loop: (value) => value,
  point: (point) => (point ? `${round(point.xMm)},${round(point.yMm)}` : null),
};

function plainValue({ form, value, parameter }: GivenParameter): MannerValue {
  return (VALUES[form] as (value: unknown, parameter: unknown) => MannerValue)(value, parameter);
}
