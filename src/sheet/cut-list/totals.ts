/** What stands under the list: running time against budget, drawings, who draws how much. */

import type { ArtistTotal, CutList } from '../../count/list.js';
import { feetAndFrames, secondsAndFrames } from '../../shot/time.js';
import { type Box, black, line, pale, textAt } from '../draw.js';
import { fitLine, wrap } from '../fit.js';
import type { Mark } from '../marks.js';
import { lengthText, type Stage } from './frame.js';

const LEADING = 1.45;

/** The episode in sentences. */
export function summaryLines(stage: Stage, list: CutList): { text: string; bold: boolean }[] {
  const { words, west } = stage;
  const { totals, fps, budget, artists } = list;
  const length = (frames: number): string => {
    const [seconds, feet] = [secondsAndFrames(frames, fps), feetAndFrames(frames)];
    return west ? `${feet} (${seconds})` : `${seconds} (${feet})`;
  };
  const { over } = totals;
  const judged =
    over === null
      ? ''
      : `  ${words.heads.budget} ${length(budget!)}: ${over > 0 ? words.over(length(over)) : over < 0 ? words.under(length(-over)) : words.exact}`;
  const said = [{ text: `${words.heads.running} ${length(totals.running)}${judged}`, bold: true }];
  const say = (text: string): void => void said.push({ text, bold: false });
  if (totals.time !== totals.running) say(words.overlapNote(length(totals.time)));
  const timed = totals.cuts - totals.untimed;
  if (timed > 0) {
    const average = secondsAndFrames(Math.round(totals.running / timed), fps);
    say(words.pace(totals.drawingsASecond.toFixed(1), average));
  }
  if (totals.problems.errors + totals.problems.warnings > 0)
    say(words.problemsNote(totals.problems.errors, totals.problems.warnings));
  if (totals.unsound > 0) say(words.unsoundNote(totals.unsound, totals.untimed));
  if (artists.some(({ shared }) => shared > 0))
    say(words.sharedNote(list.rows.filter((row) => row.artists.length > 1).length));
  return said;
}

/** The sentences in a box as wide as given; `height` is what they take. */
export function summaryMarks(
  stage: Stage,
  list: CutList,
  box: Pick<Box, 'x' | 'y' | 'width'>,
  sizeMm: number,
): { marks: Mark[]; height: number } {
  const marks: Mark[] = [];
  let y = box.y;
  for (const { text, bold } of summaryLines(stage, list)) {
    const weight = bold ? 'bold' : 'regular';
    for (const part of wrap(stage.metrics, text, box.width, sizeMm, weight)) {
      marks.push(textAt(box.x, y + (sizeMm * LEADING) / 2, part, { sizeMm, weight, anchor: 'start' }));
      y += sizeMm * LEADING;
    }
    y += sizeMm * 0.3;
  }
  return { marks, height: y - box.y };
}

interface ArtistColumn {
  readonly head: string;
  readonly share: number;
  readonly of: (artist: Pick<ArtistTotal, 'name' | 'cuts' | 'running' | 'drawings'>) => string;
}

type Line = Pick<ArtistTotal, 'name' | 'cuts' | 'running' | 'drawings'>;

/** One line an artist, one for the cuts that nobody is named for, one for the whole. */
export function artistLines(stage: Stage, list: CutList): Line[] {
  const { words } = stage;
  const nobody = list.rows.flatMap((row, i) =>
    row.artists.length === 0 ? [{ row, placed: list.placed[i]! }] : [],
  );
  return [
    ...list.artists,
    ...(nobody.length === 0
      ? []
      : [
          {
            name: words.artists.nobody,
            cuts: nobody.length,
            running: nobody.reduce((sum, { placed }) => sum + placed.frames, 0),
            drawings: nobody.reduce((sum, { row }) => sum + (row.counted?.counts.drawings ?? 0), 0),
          },
        ]),
    {
      name: words.total,
      cuts: list.totals.cuts,
      running: list.totals.running,
      drawings: list.totals.counts.drawings,
    },
  ];
}

export const artistRowMm = (sizeMm: number): number => sizeMm * 1.7;

/** Lines of the artists' table under its heads; the last of all is the total. */
export function artistMarks(
  stage: Stage,
  list: CutList,
  lines: readonly Line[],
  box: Pick<Box, 'x' | 'y' | 'width'>,
  sizeMm: number,
): Mark[] {
  const { words, least, metrics } = stage;
  const columns: readonly ArtistColumn[] = [
    { head: words.artists.artist, share: 4, of: ({ name }) => name },
    { head: words.artists.cuts, share: 1.4, of: ({ cuts }) => String(cuts) },
    { head: words.artists.running, share: 2.2, of: ({ running }) => lengthText(stage, running, list.fps) },
    { head: words.artists.drawings, share: 1.8, of: ({ drawings }) => String(drawings) },
  ];
  const unit = box.width / columns.reduce((sum, { share }) => sum + share, 0);
  const rowMm = artistRowMm(sizeMm);
  const marks: Mark[] = [line(box.x, box.y, box.x + box.width, box.y, pale(0.45))];
  const put = (texts: readonly string[], y: number, weight: 'regular' | 'bold', most: number): void => {
    let x = box.x;
    texts.forEach((text, i) => {
      const width = columns[i]!.share * unit;
      const fit = fitLine(metrics, text, width - 1.6, { most, least, weight });
      const set = { sizeMm: fit.sizeMm, squeeze: fit.squeeze, weight };
      marks.push(
        i === 0
          ? textAt(x + 0.8, y + rowMm / 2, text, { ...set, anchor: 'start' })
          : textAt(x + width - 0.8, y + rowMm / 2, text, { ...set, anchor: 'end' }),
      );
      x += width;
    });
  };
  put(
    columns.map(({ head }) => head),
    box.y,
    'regular',
    Math.max(least, sizeMm * 0.82),
  );
  marks.push(line(box.x, box.y + rowMm, box.x + box.width, box.y + rowMm, pale(0.45)));
  const all = artistLines(stage, list).length;
  lines.forEach((one, i) => {
    const y = box.y + rowMm * (i + 1);
    const last = one.name === words.total && i === lines.length - 1 && all > 1;
    put(
      columns.map(({ of }) => of(one)),
      y,
      last ? 'bold' : 'regular',
      sizeMm,
    );
    if (last) marks.push(line(box.x, y, box.x + box.width, y, black(0.2)));
    marks.push(line(box.x, y + rowMm, box.x + box.width, y + rowMm, pale(last ? 0.45 : 0.1)));
  });
  return marks;
}
