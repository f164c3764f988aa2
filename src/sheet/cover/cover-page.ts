/**
 * The front of a cut's envelope: which cut, how long, what is drawn, camera words, a box a stage to sign and date, the retakes so far, room to
 * write. A page as large as the paper; on a small one the levels are told in a line.
 */

import { feetAndFrames, secondsAndFrames } from '../../shot/time-notation.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import { wordsOf } from '../../words/words.js';
import type { Mark, Page } from '../display-list.js';
import { type Box, inShares } from '../mark-builders.js';
import { footMarks } from '../page-frame.js';
import type { PageLook } from '../page-look.js';
import { PAPER_MM, smallestTextMm } from '../sheet-geometry.js';
import { cachedMetrics, setInBox } from '../text-fitting.js';
import { type CoverContent, captioned, inside, isLabel } from './cover-boxes.js';
import { cameraBox, labelBoxes, levelBox } from './cover-counts.js';
import { retakeBox, stageBoxes } from './cover-stages.js';

/** From the paper's edge, mm: an envelope's flap and a printer's rim. */
const SIDE = 8;
const FOOT = 4;

export function coverPages(solved: SolvedShot, look: PageLook): Page[] {
  const { widthMm, heightMm } = PAPER_MM[look.settings.paper];
  const { cover } = wordsOf(look.settings).progress;
  const box = { x: SIDE, y: SIDE, width: widthMm - 2 * SIDE, height: heightMm - 2 * SIDE };
  return [
    {
      ...{ widthMm, heightMm, label: cover.label, part: 'cover' as const, form: null, rows: [] },
      marks: coverMarks(solved, look, box),
    },
  ];
}

/** A cover in a box of any size, a label's included. */
export function coverMarks(solved: SolvedShot, look: PageLook, box: Box): Mark[] {
  const words = wordsOf(look.settings);
  const scale = Math.min(1.4, box.width / 194, box.height / 281);
  const content: CoverContent = {
    ...{ solved, look, words },
    metrics: cachedMetrics(look.metrics),
    least: smallestTextMm(look.settings.paper),
    scale,
  };
  const foot = Math.max(FOOT * scale, content.least * 1.5);
  const heights = coverHeights(content, { ...box, height: box.height - foot });
  let { y } = box;
  const take = (height: number): Box => {
    const own = { x: box.x, y, width: box.width, height };
    y += height;
    return own;
  };
  const { title, episode } = look.settings;
  const marks: Mark[] = [
    ...headBoxes(content, take(heights.head)),
    ...stageBoxes(content, take(heights.stages)),
  ];
  const middle = take(heights.middle);
  const left = middle.width * 0.56;
  marks.push(
    ...(isLabel(content)
      ? labelBoxes(content, middle)
      : [
          ...levelBox(content, { ...middle, width: left }),
          ...cameraBox(content, { ...middle, x: middle.x + left, width: middle.width - left }),
        ]),
    ...retakeBox(content, take(heights.retakes)),
  );
  marks.push(...captioned(content, take(heights.remarks), words.progress.cover.remarks));
  return [
    ...marks,
    ...footMarks(
      { ...box, y: box.y + box.height - foot, height: foot },
      Math.max(content.least, 1.9 * scale),
      content.least,
      {
        title: [title, episode && `#${episode}`].filter((text) => text !== '').join('  '),
        middle: words.sheet.cutNumber(solved.shot.cut),
        stamp: look.stamp,
        metrics: content.metrics,
      },
    ),
  ];
}

/** Shares of the height. A label has no room for remarks; retakes are then told in a line. */
function coverHeights(content: CoverContent, { height }: Box) {
  const shares = isLabel(content)
    ? { head: 0.3, stages: 0.26, middle: 0.3, retakes: 0.14, remarks: 0 }
    : { head: 0.18, stages: 0.13, middle: 0.34, retakes: 0.18, remarks: 0.17 };
  return Object.fromEntries(Object.entries(shares).map(([name, share]) => [name, share * height])) as {
    readonly [N in keyof typeof shares]: number;
  };
}

// ---- which cut

function headBoxes(content: CoverContent, box: Box): Mark[] {
  const { solved, look, words } = content;
  const { shot } = solved;
  const { sheet } = words;
  const { title, episode, convention } = look.settings;
  const west = convention === 'west';
  const seconds = secondsAndFrames(shot.time, shot.fps).replace('+', ' + ');
  const feet = feetAndFrames(shot.time);
  const upper = box.height * 0.3;
  const lower = { ...box, y: box.y + upper, height: box.height - upper };
  const first = [
    { share: 40, caption: sheet.title, text: title, most: 6 },
    { share: 12, caption: sheet.episode, text: episode, most: 6 },
    { share: 12, caption: sheet.scene, text: shot.scene, most: 6 },
    { share: 8, caption: sheet.take, text: shot.take, most: 6 },
    { share: 28, caption: sheet.artist, text: shot.artists.join(', '), most: 5 },
  ];
  const time = west ? [feet, `(${seconds})`] : [seconds, `(${sheet.frames(shot.time)})`];
  const second = [
    { share: 36, caption: sheet.cut, text: shot.cut, most: 26, bold: true },
    {
      share: 30,
      caption: west ? sheet.feet : sheet.time,
      text: time[0]!,
      most: 14,
      bold: true,
      more: time[1]!,
    },
    { share: 34, caption: '', text: shot.title && sheet.quoted(shot.title), most: 6 },
  ];
  return [...boxesInARow(content, { ...box, height: upper }, first), ...boxesInARow(content, lower, second)];
}

interface HeadBox {
  readonly share: number;
  readonly caption: string;
  readonly text: string;
  /** Height of the print on A4, mm. */
  readonly most: number;
  readonly bold?: boolean;
  /** Small under it. */
  readonly more?: string;
}

function boxesInARow(content: CoverContent, box: Box, boxes: readonly HeadBox[]): Mark[] {
  const places = inShares(
    box,
    boxes.map(({ share }) => share),
  );
  return boxes.flatMap(({ caption, text, most, bold, more }, i) => {
    const own = places[i]!;
    const { metrics, scale, least } = content;
    const weight = bold ? ('bold' as const) : ('regular' as const);
    const room = inside(content, own);
    const under = more === undefined ? 0 : Math.min(room.height * 0.3, Math.max(least * 1.4, 6 * scale));
    const upper = { ...room, height: room.height - under };
    const lower = { ...room, y: room.y + upper.height, height: under };
    return [
      ...captioned(content, own, caption),
      ...setInBox(metrics, text, upper, { most: most * scale, least, weight }).marks,
      ...setInBox(metrics, more ?? '', lower, { most: 4.4 * scale, least }).marks,
    ];
  });
}
