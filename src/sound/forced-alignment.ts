/**
 * Where in a recording known lines are spoken: dynamic programming over the parts of their expected sounds (Viterbi, with lengths that
 * are said: Levinson, Comput. Speech Lang. 1:29, 1986, from memory), with silence allowed between words, and lines that may not be there.
 * Pure.
 */

import { distances, learned, SILENCE, type Template, templateOf } from './sound-templates.js';
import { type SpeechFeatures, STEP_SECONDS } from './speech-features.js';
import type { SoundPart } from './speech-sounds.js';

/** A sound of a line as it is looked for. */
export interface LineSound {
  readonly parts: readonly SoundPart[];
  readonly seconds: number;
  /** The first sound of a word; a pause may stand before it. */
  readonly word: number;
  readonly first: boolean;
  /** What a pause before it is: free, usual or odd. */
  readonly pause: 'none' | 'short' | 'long';
  /** The last before a pause is drawn out. */
  readonly last: boolean;
}

export interface AlignmentLine {
  readonly sounds: readonly LineSound[];
  /** Steps between which the line is looked for; all where nothing is known. */
  readonly from: number;
  readonly to: number;
  /** Sounds (by index) whose first step is known. */
  readonly anchors: ReadonlyMap<number, number>;
}

export interface AlignedLine {
  /** Null: it is not in the recording. First step of each sound, then the step after the last one. */
  readonly starts: readonly number[] | null;
  /** Mean distance of its steps, about 1 where all is as expected. */
  readonly distance: number;
}

export interface AlignmentSettings {
  /** Cost of a deviation of the length by a factor e. */
  readonly length: number;
  /** A step that belongs to no line costs so much at most. */
  readonly filler: number;
  /** Leaving a line out costs so much, for each expected second. */
  readonly missing: number;
  /** A pause inside a line costs so much, by what stands there. */
  readonly pauses: Readonly<Record<LineSound['pause'], number>>;
  /** Steps that the first guess of a sound counts for when it learns. */
  readonly prior: number;
  readonly rounds: number;
  readonly tracts: readonly number[];
}

export const SETTINGS: AlignmentSettings = {
  length: 1.2,
  filler: 3,
  missing: 25,
  pauses: { none: 9, short: 1, long: 0 },
  prior: 12,
  rounds: 3,
  tracts: [1, 1.15],
};

interface State {
  readonly template: number;
  /** Expected steps; 0: silence, of any length. */
  readonly steps: number;
  readonly kind: 'part' | 'pause' | 'gap';
  /** Nothing is heard while it lasts. */
  readonly silent: boolean;
  readonly line: number;
  /** The sound that it is the first part of, else -1. */
  readonly sound: number;
  readonly cost: number;
}

/** Lines in the order in which they are spoken. */
export function alignLines(
  features: SpeechFeatures,
  lines: readonly AlignmentLine[],
  settings: AlignmentSettings = SETTINGS,
): AlignedLine[] {
  let best: { cost: number; path: Path; templates: Template[]; states: State[] } | null = null;
  for (const tract of settings.tracts) {
    const { templates, states } = statesOf(lines, tract);
    const path = viterbi(features, lines, states, templates, 1, settings);
    if (!best || path.cost < best.cost) best = { cost: path.cost, path, templates, states };
  }
  if (!best) return [];
  let { path, templates } = best;
  const { states } = best;
  for (let round = 0; round < settings.rounds; round++) {
    const rate = rateOf(states, path);
    const fresh = templates.map((template, i) =>
      i === 0 ? template : learned(template, features, stepsOf(states, path, i), settings.prior),
    );
    templates = fresh;
    path = viterbi(features, lines, states, templates, rate, settings);
  }
  return lines.map((line, i) => resultOf(line, i, states, path, features, templates));
}

function statesOf(
  lines: readonly AlignmentLine[],
  tract: number,
): { templates: Template[]; states: State[] } {
  const templates: Template[] = [SILENCE];
  const known = new Map<string, number>();
  const templateFor = (part: SoundPart): number => {
    const found = known.get(part.name);
    if (found !== undefined) return found;
    templates.push(templateOf(part, tract));
    known.set(part.name, templates.length - 1);
    return templates.length - 1;
  };
  const gap = (line: number): State => ({
    template: 0,
    steps: 0,
    kind: 'gap',
    silent: true,
    line,
    sound: -1,
    cost: 0,
  });
  const states: State[] = [gap(-1)];
  lines.forEach((line, index) => {
    line.sounds.forEach((sound, i) => {
      if (sound.first && i > 0)
        states.push({
          template: 0,
          steps: 0,
          kind: 'pause',
          silent: true,
          line: index,
          sound: -1,
          cost: PAUSE_INDEX[sound.pause],
        });
      const seconds = sound.seconds * (sound.last ? 1.35 : 1);
      sound.parts.forEach((part, place) => {
        states.push({
          template: templateFor(part),
          steps: Math.max(1, (seconds * part.share) / STEP_SECONDS),
          kind: 'part',
          silent: part.formants === null && part.noise === null,
          line: index,
          sound: place === 0 ? i : -1,
          cost: 0,
        });
      });
    });
    states.push(gap(index));
  });
  return { templates, states };
}

const PAUSE_INDEX = { none: 0, short: 1, long: 2 } as const;
const PAUSE_NAMES = ['none', 'short', 'long'] as const;

interface Path {
  readonly cost: number;
  /** First step of each state, -1 where it was left out; one more for the end. */
  readonly begins: Int32Array;
  readonly ends: Int32Array;
}

const NEVER = 1e9;

/**
 * For every state the least cost of having ended it at each step. Gaps between lines may last for any time and take anything, at the price
 * of the filler; a whole line may be left out from gap to gap.
 */
function viterbi(
  features: SpeechFeatures,
  lines: readonly AlignmentLine[],
  states: readonly State[],
  templates: readonly Template[],
  rate: number,
  settings: AlignmentSettings,
): Path {
  const { steps } = features;
  const sums = templates.map((template) => summed(distances(features, template)));
  const gapCosts = distances(features, templates[0]!).map((one) => Math.min(one, settings.filler));
  const gapSum = summed(gapCosts);
  const width = steps + 1;
  const count = states.length;
  const ended = Array.from({ length: count }, () => new Float64Array(width).fill(NEVER));
  // Where the state began, to be ended at this step.
  const began = Array.from({ length: count }, () => new Int32Array(width).fill(-1));
  const before = new Float64Array(width).fill(NEVER);
  before[0] = 0;
  const gapOf = new Map<number, number>();
  // Of a gap that begins at a step, whether the line before it was left out.
  const without = new Map<number, Uint8Array>();
  let entry: Float64Array = before;
  for (let s = 0; s < count; s++) {
    const state = states[s]!;
    const out = ended[s]!;
    const from = began[s]!;
    if (state.kind === 'part') {
      const line = lines[state.line]!;
      const sum = sums[state.template]!;
      const expected = state.steps * rate;
      // A closure is short, or it is a pause.
      const most = Math.max(5, Math.ceil(expected * (state.silent ? 1.8 : 3.2)));
      const anchored = state.sound >= 0 ? line.anchors.get(state.sound) : undefined;
      const penalties = Float64Array.from({ length: most + 1 }, (_, d) =>
        d === 0 ? NEVER : settings.length * Math.log(d / expected) ** 2 * Math.min(2, 0.6 + expected / 10),
      );
      const [low, high] = [Math.max(0, line.from), Math.min(steps, line.to)];
      for (let start = low; start < high; start++) {
        const base = entry[start]!;
        if (base >= NEVER) continue;
        if (anchored !== undefined && Math.abs(start - anchored) > ANCHOR_STEPS) continue;
        const last = Math.min(high, start + most);
        for (let end = start + 1; end <= last; end++) {
          const cost = base + sum[end]! - sum[start]! + penalties[end - start]!;
          if (cost < out[end]!) {
            out[end] = cost;
            from[end] = start;
          }
        }
      }
    } else {
      const sum = state.kind === 'gap' ? gapSum : sums[0]!;
      const price = state.kind === 'pause' ? settings.pauses[PAUSE_NAMES[state.cost]!] : 0;
      let open = NEVER;
      let openAt = -1;
      const missing = state.kind === 'gap' && state.line >= 0 ? ended[gapOf.get(state.line - 1)!]! : null;
      const missingPrice = missing ? settings.missing * secondsOf(lines[state.line]!) : 0;
      const left = new Uint8Array(width);
      for (let step = 0; step <= steps; step++) {
        let through = entry[step]!;
        if (missing && missing[step]! + missingPrice < through) {
          through = missing[step]! + missingPrice;
          left[step] = 1;
        }
        if (through + price - sum[step]! < open) {
          open = through + price - sum[step]!;
          openAt = step;
        }
        // Either nothing lies between, or silence since the best place for it to begin.
        const silence = open + sum[step]!;
        out[step] = Math.min(through, silence);
        from[step] = through <= silence ? step : openAt;
      }
      if (state.kind === 'gap') without.set(s, left);
      if (state.kind === 'gap') gapOf.set(state.line, s);
    }
    entry = out;
  }
  return back(states, { ended, began, without, gapOf, steps });
}

/** Typed ties say a row; a row is some steps. */
const ANCHOR_STEPS = 4;

interface Trellis {
  readonly ended: readonly Float64Array[];
  readonly began: readonly Int32Array[];
  readonly without: ReadonlyMap<number, Uint8Array>;
  readonly gapOf: ReadonlyMap<number, number>;
  readonly steps: number;
}

/** The cheapest way, followed from its end. */
function back(states: readonly State[], { ended, began, without, gapOf, steps }: Trellis): Path {
  const count = states.length;
  const begins = new Int32Array(count).fill(-1);
  const ends = new Int32Array(count).fill(-1);
  let step = steps;
  for (let s = count - 1; s >= 0; s--) {
    const start = began[s]![step]!;
    if (start < 0) break;
    begins[s] = start;
    ends[s] = step;
    step = start;
    // The line before a gap was left out: on with the gap before that.
    if (without.get(s)?.[start] === 1) s = gapOf.get(states[s]!.line - 1)! + 1;
  }
  return { cost: ended[count - 1]![steps]!, begins, ends };
}

function summed(costs: Float32Array): Float64Array {
  const sum = new Float64Array(costs.length + 1);
  for (let i = 0; i < costs.length; i++) sum[i + 1] = sum[i]! + costs[i]!;
  return sum;
}

const secondsOf = ({ sounds }: AlignmentLine): number =>
  sounds.reduce((sum, { seconds }) => sum + seconds, 0);

/** How much longer the sounds last than usual. */
function rateOf(states: readonly State[], { begins, ends }: Path): number {
  let expected = 0;
  let found = 0;
  states.forEach((state, s) => {
    if (state.kind !== 'part' || begins[s]! < 0) return;
    expected += state.steps;
    found += ends[s]! - begins[s]!;
  });
  return expected === 0 ? 1 : Math.max(0.4, Math.min(2.5, found / expected));
}

function stepsOf(states: readonly State[], { begins, ends }: Path, template: number): number[] {
  const steps: number[] = [];
  states.forEach((state, s) => {
    if (state.kind !== 'part' || state.template !== template || begins[s]! < 0) return;
    for (let step = begins[s]!; step < ends[s]!; step++) steps.push(step);
  });
  return steps;
}

function resultOf(
  line: AlignmentLine,
  index: number,
  states: readonly State[],
  { begins, ends }: Path,
  features: SpeechFeatures,
  templates: readonly Template[],
): AlignedLine {
  const starts: number[] = [];
  let last = -1;
  let far = 0;
  let count = 0;
  const own = states.flatMap((state, s) => (state.line === index && state.kind === 'part' ? [s] : []));
  if (own.length === 0 || begins[own[0]!]! < 0) return { starts: null, distance: 0 };
  const costs = new Map(
    [...new Set(own.map((s) => states[s]!.template))].map((t) => [t, distances(features, templates[t]!)]),
  );
  for (const s of own) {
    const state = states[s]!;
    if (state.sound >= 0) starts.push(begins[s]!);
    last = ends[s]!;
    for (let step = begins[s]!; step < ends[s]!; step++) {
      far += costs.get(state.template)![step]!;
      count += 1;
    }
  }
  if (starts.length !== line.sounds.length) return { starts: null, distance: 0 };
  return { starts: [...starts, last], distance: far / count };
}
