import { textAt } from '../draw.js';
import { wrap } from '../fit.js';
import type { Mark } from '../marks.js';
import type { Run, Side } from '../plan.js';
import { topOf } from '../plan.js';
import { type Lane, tick } from './lane.js';
import { beats, spreadWords } from './latin.js';
import type { Stretch } from './plan.js';

/**
 * Words of level scripts on their rows, a list of marks for each stretch; null where one does not fit. A word that the text
 * ties to a row is black and bears a tick; the others are lighter, so that nobody takes a guess for a reading.
 */
export function levelStretches(side: Side, run: Run, all: readonly Stretch[], lane: Lane): (Mark[] | null)[] {
  const { plan, geometry } = side;
  const most = Math.max(geometry.leastTextMm, Math.min(geometry.rowMm * 0.72, 2.5 * geometry.scale));
  const least = geometry.leastTextMm;
  const spread = all.map((stretch) =>
    spreadWords(stretch.text, stretch.to - stretch.from + 1, lane.wordsWidth, { most, least }, plan.metrics),
  );
  const fitting = spread.filter((one) => one !== null);
  const sizeMm = Math.min(most, ...fitting.map((one) => one.sizeMm));
  return all.map((stretch, i) => {
    const words = spread[i];
    if (!words) return turnedStretch(side, run, stretch, lane, { most, least });
    return words.rows.flatMap(({ row, text }): Mark[] => {
      const frame = stretch.from + row;
      if (frame < run.first || frame > run.last) return [];
      const y = topOf(side, run, frame) + geometry.rowMm / 2;
      if (row > 0 || !stretch.tied) return rowOfWords(side, lane, y, sizeMm, '', text);
      const [first = ''] = text.split(' ');
      return rowOfWords(side, lane, y, sizeMm, first, text.slice(first.length));
    });
  });
}

/** Words on one row: what is known to begin there in black, with a tick, what is spread evenly in a lighter ink. */
function rowOfWords(
  { plan, geometry }: Side,
  lane: Lane,
  y: number,
  sizeMm: number,
  known: string,
  spread: string,
): Mark[] {
  const width = (text: string): number => plan.metrics.width(text, sizeMm, 'regular');
  const squeeze = Math.min(1, lane.wordsWidth / width(known + spread));
  const set = { sizeMm, squeeze, anchor: 'start' } as const;
  const x = lane.wordsX + (lane.wordsWidth - width(known + spread) * squeeze) / 2;
  const words = spread.trimStart();
  const blank = width(known + spread) - width(known) - width(words);
  return [
    ...(known === '' ? [] : [tick(x - 0.25, y, geometry), textAt(x, y, known, set)]),
    ...(words === ''
      ? []
      : [textAt(x + (width(known) + blank) * squeeze, y, words, { ...set, ink: 'light' as const })]),
  ];
}

/** More words than rows: set on their side, in as many lines as the lane holds. */
function turnedStretch(
  side: Side,
  run: Run,
  stretch: Stretch,
  lane: Lane,
  { most, least }: { most: number; least: number },
): Mark[] | null {
  const { plan } = side;
  const text = partOn(run, stretch);
  if (text === '') return [];
  const top = topOf(side, run, Math.max(stretch.from, run.first)) + 0.5;
  const room = topOf(side, run, Math.min(stretch.to, run.last) + 1) - 0.5 - top;
  for (let sizeMm = most; ; sizeMm = Math.max(least, sizeMm * 0.92)) {
    const pitch = sizeMm * 1.12;
    const lines = wrap(plan.metrics, text, room / 0.85, sizeMm);
    if ((lines.length - 1) * pitch + sizeMm <= lane.wordsWidth) {
      const middle = lane.wordsX + lane.wordsWidth / 2 + ((lines.length - 1) * pitch) / 2;
      const here = stretch.tied && stretch.from >= run.first;
      const words = lines.map((one, i) => {
        const squeeze = Math.min(1, room / plan.metrics.width(one, sizeMm, 'regular'));
        return textAt(middle - i * pitch, top, one, {
          sizeMm,
          turn: 90,
          anchor: 'start',
          squeeze,
          ink: 'light',
        });
      });
      return here
        ? [
            tick(lane.wordsX - 0.1, topOf(side, run, stretch.from) + side.geometry.rowMm / 2, side.geometry),
            ...words,
          ]
        : words;
    }
    if (sizeMm === least) return null;
  }
}

/** The words of a stretch whose beats fall on the rows of a run. */
function partOn(run: Run, stretch: Stretch): string {
  const words = stretch.text.split(' ');
  const all = words.reduce((so, word) => so + beats(word), 0);
  const rows = stretch.to - stretch.from + 1;
  let before = 0;
  return words
    .filter((word) => {
      const frame = stretch.from + Math.floor((rows * before) / all);
      before += beats(word);
      return frame >= run.first && frame <= run.last;
    })
    .join(' ');
}
