/** What all pages of an episode's list have alike: paper, head, foot. */

import type { CutList } from '../../count/count-episode.js';
import { feetAndFrames, secondsAndFrames } from '../../shot/time-notation.js';
import type { CutListWords } from '../../words/document-words.js';
import { wordsOf } from '../../words/words.js';
import type { Mark, Metrics } from '../display-list.js';
import { type Box, frame, inShares, pale, textAt } from '../mark-builders.js';
import { footMarks } from '../page-frame.js';
import type { PageLook } from '../page-look.js';
import { largerPrint, PAPER_MM, smallestTextMm } from '../sheet-geometry.js';
import { cachedMetrics, fitLine, setInBox } from '../text-fitting.js';

/** From the paper's edge, mm. */
const SIDE = 6.5;
const HEAD = 11;
const FOOT = 4;

/** Paper and type of a run of pages. */
export interface ListPaper {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly scale: number;
  /** The smallest print of this paper, mm. */
  readonly least: number;
  readonly west: boolean;
  readonly words: CutListWords;
  readonly metrics: Metrics;
  /** Between head and foot. */
  readonly body: Box;
}

export function listPaper(look: PageLook, landscape: boolean): ListPaper {
  const { paper, convention } = look.settings;
  const upright = PAPER_MM[paper];
  const widthMm = landscape ? upright.heightMm : upright.widthMm;
  const heightMm = landscape ? upright.widthMm : upright.heightMm;
  const scale = largerPrint(paper);
  const top = SIDE + HEAD * scale + 2;
  return {
    widthMm,
    heightMm,
    scale,
    least: smallestTextMm(paper),
    west: convention === 'west',
    words: wordsOf(look.settings).cutList,
    metrics: cachedMetrics(look.metrics),
    body: { x: SIDE, y: top, width: widthMm - 2 * SIDE, height: heightMm - SIDE - FOOT * scale - 1 - top },
  };
}

/** A length as the convention measures it, in frames of the episode. */
export function lengthText(paper: ListPaper, frames: number, fps: number): string {
  return paper.west ? feetAndFrames(frames) : secondsAndFrames(frames, fps);
}

/** What stands over and under the body of page `page` of `pages`; `name` is the page's own. */
export function frameMarks(
  paper: ListPaper,
  list: CutList,
  look: PageLook,
  name: string,
  page: number,
  pages: number,
): Mark[] {
  const { words, west } = paper;
  const { totals, fps } = list;
  const both = (frames: number): string => {
    const seconds = secondsAndFrames(frames, fps);
    return west ? `${feetAndFrames(frames)}  (${seconds})` : seconds;
  };
  const { title, episode } = list;
  return headedMarks(paper, look, { title, episode, name, page, pages }, [
    [30, words.heads.title, list.title, 4, false],
    [9, words.heads.episode, list.episode, 4.4, false],
    [22, '', name, 5.2, true],
    [9, words.heads.cuts, String(totals.cuts), 4.4, true],
    [west ? 26 : 15, words.heads.running, both(totals.running), 4.4, true],
    [
      west ? 24 : 15,
      words.heads.budget,
      list.budget === null ? words.noBudget : both(list.budget),
      4.4,
      false,
    ],
  ]);
}

/** A box of a head: its share of the width, its caption, what stands in it, how high at most in mm on A4, whether bold. */
export type HeadCell = readonly [share: number, caption: string, text: string, most: number, bold: boolean];

export interface ListPage {
  readonly title: string;
  readonly episode: string;
  /** What the page is called. */
  readonly name: string;
  readonly page: number;
  readonly pages: number;
}

/** Head and foot of a page with the boxes given, and one for the page behind them. */
export function headedMarks(
  paper: ListPaper,
  look: PageLook,
  { title, episode, name, page, pages }: ListPage,
  given: readonly HeadCell[],
): Mark[] {
  const { scale, least, words, metrics, body } = paper;
  const { sheet } = wordsOf(look.settings);
  const fraction = sheet.pageOf(String(page), pages);
  const cells: readonly HeadCell[] = [...given, [11, words.heads.page, fraction, 4.4, true]];
  const height = HEAD * scale;
  const captionMm = Math.max(least, 1.65 * scale);
  const marks: Mark[] = [];
  const boxes = inShares(
    { ...body, y: SIDE, height },
    cells.map(([share]) => share),
  );
  for (const [i, [, caption, text, most, bold]] of cells.entries()) {
    const { x, width } = boxes[i]!;
    marks.push(frame(boxes[i]!, pale(0.18)));
    if (caption !== '') {
      const fit = fitLine(metrics, caption, width - 1.2, { most: captionMm, least });
      marks.push(
        textAt(x + 0.6, SIDE + 0.35 + captionMm / 2, caption, {
          sizeMm: fit.sizeMm,
          squeeze: fit.squeeze,
          ink: 'grey',
          anchor: 'start',
        }),
      );
    }
    const under = captionMm + 0.6;
    const room = { x: x + 0.8, y: SIDE + under, width: width - 1.6, height: height - under - 0.5 };
    const weight = bold ? 'bold' : 'regular';
    marks.push(...setInBox(metrics, text, room, { most: most * scale, least, weight }).marks);
  }
  return [
    ...marks,
    ...listFoot(
      paper,
      look,
      [title, episode && `#${episode}`].filter((text) => text !== '').join('  '),
      `${name}  ${sheet.footPage(fraction)}`,
    ),
  ];
}

/** The foot of such a page: at its left the work, in its middle the page, at its right the stamp. */
export function listFoot(paper: ListPaper, look: PageLook, title: string, middle: string): Mark[] {
  const { body, heightMm, least, metrics, scale } = paper;
  const height = FOOT * scale;
  const foot = { x: body.x, y: heightMm - SIDE - height, width: body.width, height };
  return footMarks(foot, 1.9 * scale, least, { title, middle, stamp: look.stamp, metrics });
}
