import { textAt } from '../draw.js';
import { wrap } from '../fit.js';
import type { Mark } from '../marks.js';
import type { Run, Side } from '../plan.js';
import { topOf } from '../plan.js';
import type { Lane } from './lane.js';
import { beats, spreadWords } from './latin.js';
import type { Stretch } from './plan.js';

/** Words of level scripts on their rows, a list of marks for each stretch; null where one does not fit. */
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
      const squeeze = Math.min(1, lane.wordsWidth / plan.metrics.width(text, sizeMm, 'regular'));
      const y = topOf(side, run, frame) + geometry.rowMm / 2;
      return [textAt(lane.wordsX + lane.wordsWidth / 2, y, text, { sizeMm, squeeze })];
    });
  });
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
      return lines.map((one, i) => {
        const squeeze = Math.min(1, room / plan.metrics.width(one, sizeMm, 'regular'));
        return textAt(middle - i * pitch, top, one, { sizeMm, turn: 90, anchor: 'start', squeeze });
      });
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
