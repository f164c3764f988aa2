/** What differs in one move. */

import type { Move, MoveOf, Spacing } from '../shot/camera.js';
import type { SolvedMove } from '../solve/camera/solved.js';
import type { CameraChange, Manner, MannerValue, MoveSeen, Speed } from './change.js';
import { near } from './fields.js';
import { legsOf, placesOf, round, rowsOf, seenMove } from './move-names.js';

/** What the other moves and names of a cut say of one. */
export interface Known {
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
