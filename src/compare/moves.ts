/** The moves of camera and levels. */

import type { Leg, Move, MoveOf, Place, Spacing } from '../shot/camera.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedMove } from '../solve/camera/solved.js';
import type { SolvedShot } from '../solve/solved.js';
import { match } from './align.js';
import type { CameraChange, Change, Manner, MannerValue, MoveSeen, Speed } from './change.js';
import { near } from './fields.js';

type AnyLeg = Leg<unknown>;

const legsOf = (move: Move): readonly AnyLeg[] => ('legs' in move ? move.legs : []);
const levelsOf = (move: Move): readonly string[] => ('levels' in move ? move.levels : []);
const isCamera = (move: Move): boolean => move.kind === 'pan' || move.kind === 'truck';

/** The rows that a move is written with: `@1 > @24` stands on 1 and on 24, `1..24` moves on all of them. */
function rowsOf({ move, start, end }: SolvedMove): Frames {
  return { from: 'legs' in move ? Math.max(1, start) : start + 1, to: end };
}

/** Places on the way by name; scales in percent, turns in degrees. */
function placesOf(move: Move): string[] {
  const name = (place: unknown): string => {
    if (typeof place === 'number')
      return move.kind === 'turn' ? `${round(Math.abs(place))}°` : `${round(place * 100)}%`;
    const { name, label, xMm, yMm } = place as { name?: string; label?: string } & Partial<Place>;
    return name ?? (label || `${round(xMm!)},${round(yMm!)}`);
  };
  const legs = legsOf(move);
  return legs.length === 0 ? [] : [name(legs[0]!.from), ...legs.map(({ to }) => name(to))];
}

const round = (value: number): number => Math.round(value * 1000) / 1000;

export function seenMove(move: Move): MoveSeen {
  const sizes = legsOf(move).map(({ from, to }) => {
    if (move.kind === 'truck')
      return (from as { widthMm: number }).widthMm - (to as { widthMm: number }).widthMm;
    return move.kind === 'levelTruck' ? (to as number) - (from as number) : 0;
  });
  const grows = sizes.some((one) => one > 0);
  const shrinks = sizes.some((one) => one < 0);
  return {
    move: move.kind,
    levels: levelsOf(move),
    places: placesOf(move),
    sense: grows === shrinks ? null : grows ? 'in' : 'out',
    quick: move.kind === 'truck' && move.quick,
  };
}

/** `fields`, `levels`: what those of the old version are called now. */
export function moveChanges(
  old: SolvedShot,
  now: SolvedShot,
  fields: ReadonlyMap<string, string>,
  levels: ReadonlyMap<string, string>,
): Change[] {
  const renamed = (names: readonly string[]) => names.map((name) => levels.get(name) ?? name).sort();
  const routeOf = (move: Move) =>
    isCamera(move) ? placesOf(move).map((name) => fields.get(name) ?? name) : placesOf(move);
  const length = Math.max(old.shot.length, now.shot.length);
  const pairs = match(old.camera.moves, now.camera.moves, (a, b) => {
    const kinds = a.move.kind === b.move.kind ? 0 : isCamera(a.move) && isCamera(b.move) ? 0.4 : null;
    if (kinds === null) return null;
    const [mine, theirs] = [renamed(levelsOf(a.move)), [...levelsOf(b.move)].sort()];
    if (mine.length > 0 && !mine.some((name) => theirs.includes(name))) return null;
    const time = (Math.abs(a.start - b.start) + Math.abs(a.end - b.end)) / length;
    const route = routeOf(a.move).join() === placesOf(b.move).join() ? 0 : 0.5;
    return kinds + time + route + (mine.join() === theirs.join() ? 0 : 0.4);
  });
  const changes: Change[] = [];
  const [kept, stay] = [new Set(pairs.map(([i]) => i)), new Set(pairs.map(([, j]) => j))];
  const add = (body: CameraChange, rows: Frames | null) =>
    changes.push({
      ...body,
      place: { kind: 'camera' },
      rows: rows && within(rows, now.shot.length),
    } as Change);
  for (const [i, j] of pairs) {
    const [was, is] = [old.camera.moves[i]!, now.camera.moves[j]!];
    const both = new Both(was, is, {
      route: routeOf(was.move),
      levels: [renamed(levelsOf(was.move)).join(','), [...levelsOf(is.move)].sort().join(',')],
      carry: [renamed(carryOf(was.move)).join(','), [...carryOf(is.move)].sort().join(',')],
      toEnd: was.end === old.shot.length && is.end === now.shot.length,
    });
    for (const body of both.changes()) add(body, rowsOf(is));
  }
  for (const [j, move] of now.camera.moves.entries())
    if (!stay.has(j)) add({ kind: 'move-added', frames: rowsOf(move), ...seenMove(move.move) }, rowsOf(move));
  for (const [i, move] of old.camera.moves.entries())
    if (!kept.has(i))
      add({ kind: 'move-dropped', frames: rowsOf(move), ...seenMove(move.move) }, rowsOf(move));
  return changes.sort((a, b) => (a.rows?.from ?? 0) - (b.rows?.from ?? 0));
}

export function within({ from, to }: Frames, length: number): Frames | null {
  return from > length ? null : { from, to: Math.min(to, length) };
}

const carryOf = (move: Move): readonly string[] => ('carry' in move ? move.carry : []);

interface Known {
  readonly route: readonly string[];
  readonly levels: readonly [string, string];
  readonly carry: readonly [string, string];
  readonly toEnd: boolean;
}

/** One move in both versions. */
class Both {
  private readonly seen: MoveSeen;

  constructor(
    private readonly was: SolvedMove,
    private readonly is: SolvedMove,
    private readonly known: Known,
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

  private get speed(): Speed {
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
        frames: { old: rowsOf(was), now: rowsOf(is) },
        stops: told || !middle ? null : { old: stopsOld, now: stopsNow },
        ...this.speed,
        ...this.seen,
      },
    ];
  }

  private way(): CameraChange[] {
    const [a, b] = [this.was.move, this.is.move];
    if (!('way' in a) || !('way' in b)) return [];
    const rates = a.way.rateMm !== null && b.way.rateMm !== null;
    const same = rates ? near(a.way.rateMm!, b.way.rateMm!) : near(a.way.distanceMm, b.way.distanceMm);
    if (same) return [];
    return [
      {
        kind: 'move-way',
        distanceMm: { old: a.way.distanceMm, now: b.way.distanceMm },
        rateMm: { old: a.way.rateMm, now: b.way.rateMm },
        ...this.speed,
        ...this.seen,
      },
    ];
  }

  private route(): CameraChange[] {
    const { was, is, known } = this;
    const now = placesOf(is.move);
    if (known.route.join() !== now.join())
      return [
        {
          kind: 'move-route',
          old: known.route,
          now,
          frames: { old: rowsOf(was), now: rowsOf(is) },
          ...this.speed,
          ...this.seen,
        },
      ];
    if (was.move.kind !== 'slide' || is.move.kind !== 'slide') return [];
    const marks = (move: MoveOf<'slide'>) => [move.legs[0]!.from, ...move.legs.map(({ to }) => to)];
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
    const [before, after] = [spacingsOf(this.was), spacingsOf(this.is)];
    if (before.length !== after.length) return [];
    return after.flatMap(({ spacing }, leg): CameraChange[] => {
      const old = before[leg]!;
      const shift =
        spacing.form === 'fair' && old.spacing.form === 'fair' ? this.is.start - this.was.start : 0;
      if (sameSpacing(old.spacing, spacing, shift)) return [];
      return [{ kind: 'move-spacing', leg, old: old.spacing, now: spacing, ...this.speed, ...this.seen }];
    });
  }

  private manners(): CameraChange[] {
    const [a, b] = [mannersOf(this.was.move), mannersOf(this.is.move)];
    const { levels, carry } = this.known;
    // A quick truck is one with a fairing: the spacing has said it.
    const fair = [this.was, this.is].map((one) =>
      spacingsOf(one).some(({ spacing }) => spacing.form === 'fair'),
    );
    if (fair[0] !== fair[1]) delete b.quick;
    const pairs: [Manner, MannerValue, MannerValue][] = [
      ['levels', ...levels],
      ['carry', ...carry],
      ...(Object.keys(b) as Manner[]).map((manner): [Manner, MannerValue, MannerValue] => [
        manner,
        a[manner] ?? null,
        b[manner] ?? null,
      ]),
    ];
    return pairs
      .filter(
        ([, old, now]) =>
          old !== now && !(typeof old === 'number' && typeof now === 'number' && near(old, now)),
      )
      .map(([manner, old, now]) => ({ kind: 'move-manner', manner, old, now, ...this.seen }));
  }
}

/** Frames of each place on the way. */
function stopsOf(move: Move): number[] {
  const legs = legsOf(move);
  return legs.length === 0 ? [] : [legs[0]!.start, ...legs.map(({ end }) => end)];
}

/** Whether a longer time changes nothing on the rows that were there. */
function goesOn(move: Move): boolean {
  if ('way' in move) return move.way.rateMm !== null && move.spacing.form === 'linear';
  return move.kind === 'roll' || (move.kind === 'shake' && near(move.fromMm, move.toMm));
}

function spacingsOf({ move, start }: SolvedMove): { spacing: Spacing; start: number }[] {
  if ('legs' in move) return move.legs.map((leg) => ({ spacing: leg.spacing, start: leg.start }));
  return 'spacing' in move ? [{ spacing: move.spacing, start }] : [];
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

function mannersOf(move: Move): Partial<Record<Manner, MannerValue>> {
  const about = 'about' in move ? (move.about ? `${move.about.xMm},${move.about.yMm}` : null) : undefined;
  return {
    on: move.on,
    ticks: move.ticks,
    ...('log' in move ? { ratios: move.log } : {}),
    ...('quick' in move ? { quick: move.quick } : {}),
    ...('direction' in move ? { direction: directionOf(move.direction) } : {}),
    ...('loopMm' in move ? { loop: move.loopMm } : {}),
    ...(about === undefined ? {} : { about }),
    ...('sense' in move ? { sense: move.sense } : {}),
    ...('sideways' in move ? { sideways: move.sideways } : {}),
    ...(move.kind === 'shake' ? { size: sizeText(move.fromMm, move.toMm) } : {}),
    ...(move.kind === 'roll' ? { size: `${round(move.sizeMm)}`, period: move.periodFrames } : {}),
  };
}

const sizeText = (from: number, to: number) =>
  near(from, to) ? `${round(from)}` : `${round(from)}>${round(to)}`;

function directionOf({ word, degrees }: { word: string; degrees: number }): string {
  return word === 'angle' ? `${round(degrees)}°` : word;
}
