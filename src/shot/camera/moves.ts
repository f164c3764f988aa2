/** Moves: frames, millimetres and degrees of each. A move with a name or time that cannot be had is left out. */

import { diagnose, type Span } from '../../language/diagnostic.js';
import type { Numeral, Range } from '../../language/tree.js';
import type { LegEnd, Stop } from '../../language/tree-camera.js';
import type { Binder, Binding } from '../binding.js';
import type { Direction, Leg, Move, Place, Spacing, Way } from '../camera.js';
import type { CameraNode } from './draft.js';
import { fieldOf } from './fields.js';
import { levelsOf, moved, spacingOf, unspread } from './options.js';

type Kind = 'pan' | 'truck' | 'pull' | 'follow' | 'slide' | 'levelTruck' | 'turn' | 'shake' | 'roll';

interface Legged<P> {
  readonly span: Span;
  readonly from: Stop<P>;
  readonly legs: readonly LegEnd<P>[];
}

/** `A@a > B@b`: at rest on frame a, arrived on b. Everything is looked at before giving up, so that one run tells all. */
function legsOf<P, Q>(
  { from, legs }: Legged<P>,
  value: (value: P) => Q | null,
  quick: boolean,
  binding: Binding,
): Leg<Q>[] | null {
  const made: Leg<Q>[] = [];
  let whole = true;
  let start = { value: value(from.value), at: binding.clock.position(from.at), span: from.span };
  for (const { to, spacing } of legs) {
    const end = { value: value(to.value), at: binding.clock.position(to.at), span: to.span };
    const spread = spacingOf(spacing, quick, binding);
    if (start.value === null || end.value === null || start.at === null || end.at === null || !spread)
      whole = false;
    else {
      const last = spacing.at(-1)?.span ?? to.span;
      made.push({
        from: start.value,
        to: end.value,
        start: start.at,
        end: end.at,
        spacing: spread,
        span: { ...start.span, end: last.end },
      });
    }
    start = end;
  }
  return whole && made.length > 0 ? made : null;
}

/** `a..b`: every frame of the range has moved, so it is at rest on the frame (or the moment) before. */
function during(range: Range, { clock, rows }: Binding): { start: number; end: number } | null {
  const frames = clock.range(range);
  if (!frames || (!frames.closed && rows === null)) return null;
  return { start: frames.from - 1, end: frames.to };
}

/** A rate is that of the constant part; ramps take the way of half their frames. */
function wayOf(way: CameraNode<'pull'>['way'], steps: number, spacing: Spacing): Way {
  if (way.form === 'distance') return { distanceMm: way.mm, rateMm: null };
  const constant = spacing.form === 'ease' ? steps - (spacing.leave + spacing.arrive) / 2 : steps;
  return { distanceMm: way.mm * constant, rateMm: way.mm };
}

const DEGREES = { right: 0, up: 90, left: 180, down: 270 } as const;

function directionOf(node: CameraNode<'pull'>['direction']): Direction {
  if (node.form === 'angle') return { degrees: node.degrees, word: 'angle' };
  return { degrees: DEGREES[node.word], word: node.word };
}

function pulled(node: CameraNode<'pull' | 'follow'>, binding: Binding) {
  const levels = levelsOf(node.levels, binding);
  const frames = during(node.range, binding);
  const spacing = spacingOf(node.spacing, false, binding);
  if (!frames || !spacing || levels.length === 0) return null;
  const way = wayOf(node.way, frames.end - frames.start, spacing);
  return { levels, direction: directionOf(node.direction), way, ...frames, spacing };
}

function add(binding: Binding, move: Move): void {
  binding.draft.camera.moves.push(move);
}

const pointOf = (about: CameraNode<'turn'>['options']['about']) =>
  about && { xMm: about.xMm, yMm: about.yMm };

export const moveBinders: { readonly [K in Kind]: Binder<CameraNode<K>> } = {
  pan: {
    bind(node, binding) {
      const all = moved('pan', node.span, node.options, binding);
      const carry = levelsOf(node.options.carry, binding);
      const legs = legsOf(node, (word) => fieldOf(word, binding), false, binding);
      if (legs) add(binding, { ...all, kind: 'pan', legs, carry });
    },
  },
  truck: {
    bind(node, binding) {
      const all = moved('truck', node.span, node.options, binding);
      const carry = levelsOf(node.options.carry, binding);
      const quick = node.quick !== null;
      const legs = legsOf(node, (word) => fieldOf(word, binding), quick, binding);
      if (quick && !node.legs.some(({ spacing }) => spacing.some(({ form }) => form === 'fair'))) {
        binding.report(
          diagnose(
            'quick-without-fairing',
            node.quick,
            'A quick truck needs its fairing mark, with the frame and the share of the way done there: `fair ア@6 60%`.',
          ),
        );
      }
      const log = node.options.log !== null;
      if (legs) add(binding, { ...all, kind: 'truck', quick, log, legs, carry });
    },
  },
  pull: {
    bind(node, binding) {
      const all = moved('pull', node.span, node.options, binding);
      const way = pulled(node, binding);
      if (way) add(binding, { ...all, kind: 'pull', ...way, loopMm: node.options.loop?.value ?? null });
    },
  },
  follow: {
    bind(node, binding) {
      const all = moved('follow', node.span, node.options, binding);
      const way = pulled(node, binding);
      if (way) add(binding, { ...all, kind: 'follow', ...way });
    },
  },
  slide: {
    bind(node, binding) {
      const all = moved('slide', node.span, node.options, binding);
      const levels = levelsOf(node.levels, binding);
      const legs = legsOf(
        node,
        ({ label, xMm, yMm }): Place => ({ label: label?.text ?? '', xMm, yMm }),
        false,
        binding,
      );
      if (legs && levels.length > 0) add(binding, { ...all, kind: 'slide', levels, legs });
    },
  },
  levelTruck: {
    bind(node, binding) {
      const all = moved('levelTruck', node.span, node.options, binding);
      const levels = levelsOf(node.levels, binding);
      const legs = legsOf(node, ({ value }: Numeral) => value / 100, false, binding);
      if (!legs || levels.length === 0) return;
      const { log, about } = node.options;
      add(binding, { ...all, kind: 'levelTruck', levels, log: log !== null, legs, about: pointOf(about) });
    },
  },
  turn: {
    bind(node, binding) {
      const all = moved('turn', node.span, node.options, binding);
      const levels = levelsOf(node.levels, binding);
      const sense = node.options.sense?.sense;
      if (!sense) {
        const end = { ...node.span, start: node.span.end };
        binding.report(
          diagnose('turn-sense', node.span, 'A turn says which way it goes: `cw` (clockwise) or `ccw`.', {
            fix: { title: 'turn it clockwise', edits: [{ span: end, text: ' cw' }] },
          }),
        );
      }
      const way = sense === 'ccw' ? -1 : 1;
      const legs = legsOf(node, ({ value }: Numeral) => value * way + 0, false, binding);
      if (!legs || levels.length === 0) return;
      const about = pointOf(node.options.about);
      add(binding, { ...all, kind: 'turn', sense: sense ?? 'cw', levels, legs, about });
    },
  },
  shake: {
    bind(node, binding) {
      const all = moved('shake', node.span, node.options, binding);
      unspread('shake', node.spacing, binding);
      const frames = during(node.range, binding);
      if (!frames) return;
      add(binding, {
        ...all,
        kind: 'shake',
        fromMm: node.fromMm.value,
        toMm: (node.toMm ?? node.fromMm).value,
        frames: { from: frames.start + 1, to: frames.end },
        sideways: node.options.sideways !== null,
      });
    },
  },
  roll: {
    bind(node, binding) {
      const all = moved('roll', node.span, node.options, binding);
      unspread('roll', node.spacing, binding);
      const levels = levelsOf(node.levels, binding);
      const frames = during(node.range, binding);
      const periodFrames = binding.clock.length(node.every);
      if (!frames || periodFrames === null || levels.length === 0) return;
      add(binding, {
        ...all,
        kind: 'roll',
        levels,
        sizeMm: node.sizeMm.value,
        frames: { from: frames.start + 1, to: frames.end },
        periodFrames,
        sideways: node.options.sideways !== null,
      });
    },
  },
};
