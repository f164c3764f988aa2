/** The share of the way at which each in-between stands: by its chart, and as it is drawn. */

import { diagnose, type Note, type Report } from '../language/diagnostic.js';
import type { ShotChart } from '../shot/shot.js';
import type { Drawing, Drawn, Passage } from './level-drawings.js';
import type { SolvedPassage } from './solved-shot.js';

/**
 * The named charts, by halving as an in-betweener draws them: half of the way, then half of what is left to the key that is
 * crowded, again and again; `early` is the mirror of `late`, `both` halves from the middle to both keys. Null: the fractions
 * that are written are not as many as the in-betweens. Source for the halves: common practice in reading timing charts.
 */
export function chartFractions(chart: ShotChart, count: number): readonly number[] | null {
  switch (chart.form) {
    case 'fractions':
      return chart.fractions.length === count ? chart.fractions : null;
    case 'even':
      return Array.from({ length: count }, (_, i) => (i + 1) / (count + 1));
    case 'late':
      return late(count);
    case 'early':
      return mirrored(late(count));
    case 'both': {
      const side = Math.floor(count / 2);
      const ends = halves(side + 1)
        .slice(1)
        .reverse();
      return count % 2 === 1 ? [...ends, 0.5, ...mirrored(ends)] : [...ends, ...mirrored(ends)];
    }
  }
}

function late(count: number): number[] {
  return count === 1 ? [3 / 4] : mirrored(halves(count)).reverse();
}

/** 1/2, 1/4, 1/8 … */
function halves(count: number): number[] {
  let half = 1;
  return Array.from({ length: count }, () => (half /= 2));
}

function mirrored(fractions: readonly number[]): number[] {
  return fractions.map((fraction) => 1 - fraction).reverse();
}

/** The narrowest gap, keys included. */
export function narrowestGap(fractions: readonly number[]): number {
  return [...fractions, 1].reduce((least, each, i) => Math.min(least, each - (fractions[i - 1] ?? 0)), 1);
}

// ----
// Where the in-betweens of a passage lie on the way from its first key to its second. A drawing that exists does not move: it lies
// where it was drawn, whatever has been put in or taken out beside it since.

type Chart = Passage['charts'][number];
type Pinned = Extract<Drawn, { by: 'pinned' }>;
type Places = Pick<SolvedPassage, 'fractions' | 'chart'>;

/** A gap that hardly anyone can draw. */
const NARROW = 1 / 16;
const NEAR = 1e-9;

/** Of drawings that have their names. `level`: its name, for messages. */
export function placesOf(passage: Passage, level: string, report: Report): Places {
  let found: { readonly places: Places; readonly chart: Chart } | null = null;
  for (const chart of passage.charts) {
    const places = charted(passage, chart, level, report);
    if (!places) continue;
    if (!found) {
      found = { places, chart };
      if (chart.form !== 'even' && narrowestGap(places.fractions) < NARROW - NEAR)
        narrow(passage, chart, report);
    } else if (!same(found.places.fractions, places.fractions)) twice(passage, chart, found.chart, report);
  }
  if (found) return found.places;
  const { drawn, drawings } = passage;
  if (drawn?.by === 'lent') return { fractions: drawn.fractions, chart: drawn.chart };
  if (drawn)
    return {
      fractions: around(drawings, chartFractions({ form: 'even' }, drawn.count)!),
      chart: 'fractions',
    };
  return { fractions: chartFractions({ form: 'even' }, drawings.length)!, chart: 'even' };
}

/** Null where the chart fits neither the in-betweens nor those that were there. */
function charted(passage: Passage, chart: Chart, level: string, report: Report): Places | null {
  const { drawings, drawn } = passage;
  const { form } = chart;
  const today = chartFractions(chart, drawings.length);
  if (drawn?.by === 'pinned') {
    const then = chartFractions(chart, drawn.count);
    if (then && (form !== 'fractions' || !today))
      return { fractions: around(drawings, then), chart: 'fractions' };
    if (today) pinnedElsewhere(passage, drawn, today, then, chart, level, report);
  }
  if (!today) {
    const written = chart.form === 'fractions' ? chart.fractions.length : 0;
    report(
      diagnose('chart-count', chart.span, {
        fractions: written,
        inbetweens: drawings.length,
        from: passage.from,
        to: passage.to,
      }),
    );
    return null;
  }
  if (drawn?.by !== 'lent') return { fractions: today, chart: form };
  const moved = drawings.flatMap((drawing, i) =>
    drawing.reused ? (apart({ drawing, was: drawn.fractions[i]!, is: today[i]! }) ?? []) : [],
  );
  const note: Note = { note: 'drawn-for', drawings: moved.length, cut: drawn.cut };
  elsewhere(passage, moved, note, chart, level, report);
  return { fractions: drawn.fractions, chart: drawn.chart };
}

/**
 * The places of drawings by their names: `then` are those of 1.1, 1.2 …; 1.2a lies half-way from 1.2 to 1.3, 1.2b half-way from
 * there, so that none moves when the next one is put in.
 */
function around(drawings: readonly Drawing[], then: readonly number[]): number[] {
  const ends = [0, ...then, 1];
  return drawings.map(({ index, letter }) => {
    const before = ends[index]!;
    if (letter === '') return before;
    const steps = letter.charCodeAt(0) - 96;
    return before + (ends[index + 1]! - before) * (1 - 1 / (1 << steps));
  });
}

/**
 * Fractions are typed for today's in-betweens; how the old ones were spaced, no text says any more. Evenly is taken for it, or as
 * the same fractions say where they fit both counts.
 */
function pinnedElsewhere(
  passage: Passage,
  { count, line }: Pinned,
  today: readonly number[],
  then: readonly number[] | null,
  chart: Chart,
  level: string,
  report: Report,
): void {
  const places = (old: readonly number[]) =>
    passage.drawings.flatMap((drawing, i) =>
      drawing.letter === '' ? (apart({ drawing, was: old[drawing.index - 1]!, is: today[i]! }) ?? []) : [],
    );
  if (then && places(then).length === 0) return;
  const moved = places(chartFractions({ form: 'even' }, count)!);
  elsewhere(passage, moved, { note: 'pinned-even', inbetweens: count, span: line }, chart, level, report);
}

interface Moved {
  readonly drawing: Drawing;
  readonly was: number;
  readonly is: number;
}

function apart(moved: Moved): Moved | null {
  return Math.abs(moved.was - moved.is) < NEAR ? null : moved;
}

function elsewhere(
  { from, to }: Passage,
  moved: readonly Moved[],
  note: Note,
  chart: Chart,
  level: string,
  report: Report,
): void {
  if (moved.length === 0) return;
  report(
    diagnose(
      'chart-drawn',
      chart.span,
      {
        level,
        from,
        to,
        moved: moved.map(({ drawing: { cel, name }, was, is }) => ({ cel, name, was, is })),
      },
      { notes: [note] },
    ),
  );
}

function narrow({ from, to }: Passage, { span }: Chart, report: Report): void {
  report(diagnose('chart-narrow', span, { from, to }));
}

function twice({ from, to }: Passage, { span }: Chart, other: Chart, report: Report): void {
  report(
    diagnose(
      'chart-twice',
      span,
      { from, to },
      {
        notes: [{ note: 'other-chart', span: other.span }],
        fix: { action: 'take-this-out', edits: [{ span, text: '' }] },
      },
    ),
  );
}

function same(a: readonly number[], b: readonly number[]): boolean {
  return a.every((one, i) => Math.abs(one - b[i]!) < NEAR);
}
