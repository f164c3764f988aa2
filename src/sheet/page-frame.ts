/** What all pages of a cut have alike, whatever is on them: paper, head, foot. */

import type { Settings } from '../shot/settings.js';
import type { Shot } from '../shot/shot.js';
import type { SheetWords } from '../words/sheet-words.js';
import { wordsOf } from '../words/words.js';
import { NO_GUTTERS } from './block-columns.js';
import type { Mark, Metrics, SharedForm } from './display-list.js';
import { type Box, frame, pale, textAt } from './mark-builders.js';
import { headerCells, headerMarks } from './page-header.js';
import type { PageLook } from './page-look.js';
import { caption } from './ruled-form.js';
import { sheetGeometry as geometryOf, type SheetGeometry } from './sheet-geometry.js';
import { cachedMetrics, cutToFit } from './text-fitting.js';

export interface PageFrame {
  readonly widthMm: number;
  readonly heightMm: number;
  /** What is left between head and foot. */
  readonly body: Box;
  /** The boxes of the head with their captions. */
  readonly form: SharedForm;
  /** What stands in them, and the foot. */
  readonly marks: Mark[];
}

/**
 * Head and foot of a page that is not a sheet: charts, tables. `page` is its label, and `pages` how many there are of its kind;
 * `landscape` lays the paper on its side.
 */
export function pageFrame(
  shot: Shot,
  look: PageLook,
  page: string,
  pages: number,
  landscape = false,
): PageFrame {
  const { settings } = look;
  const words = wordsOf(settings).sheet;
  const metrics = cachedMetrics(look.metrics);
  const west = settings.convention === 'west';
  const upright = uprightOf(settings, shot.fps);
  const place = landscape ? upright.onItsSide : upright.place;
  const foot = { ...place.foot, y: place.heightMm - place.header.y - place.foot.height };
  const top = place.header.y + place.header.height + 1.4;
  return {
    widthMm: place.widthMm,
    heightMm: place.heightMm,
    body: { ...place.header, y: top, height: foot.y - top },
    // Only pages that are printed need them; others are asked for their room.
    get form() {
      return headForm(place, words, metrics, west);
    },
    get marks() {
      const { title, episode } = settings;
      // What the head has no room for is told in the memo of the sheet.
      const leftOver = new Set<string>();
      const content = {
        shot,
        title,
        episode,
        words,
        metrics,
        west,
        page: words.pageOf(page, pages),
        leftOver,
      };
      return [
        ...headerMarks(place, content),
        ...footOf(place, foot, shot, look, `${words.cutNumber(shot.cut)}  ${words.footPage(page)}`),
      ];
    },
  };
}

const forms = new WeakMap<SheetGeometry, SharedForm>();

/** The boxes of a head, made once for all pages of a paper. */
function headForm(place: SheetGeometry, words: SheetWords, metrics: Metrics, west: boolean): SharedForm {
  let form = forms.get(place);
  if (!form) {
    const id = `head-${west ? 'west' : 'japan'}-${words.language}-${place.widthMm}x${place.heightMm}`;
    const marks = headerCells(place, words, west).flatMap((cell) => [
      frame(cell.box, pale(0.18)),
      caption(cell.box, cell.caption, place, metrics),
    ]);
    form = { id, marks };
    forms.set(place, form);
  }
  return form;
}

/** A sheet with nothing on it, and the same paper laid on its side. */
interface EmptySheet {
  readonly place: SheetGeometry;
  readonly onItsSide: SheetGeometry;
}

const known = new WeakMap<Settings, Map<number, EmptySheet>>();

/** By its frames a second; cuts of an episode share their settings. */
function uprightOf(settings: Settings, fps: number): EmptySheet {
  const made = known.get(settings) ?? new Map<number, EmptySheet>();
  known.set(settings, made);
  let own = made.get(fps);
  if (!own) {
    const place = geometryOf(settings, fps, {
      levels: 1,
      main: true,
      bracketMm: 0,
      levelMm: 0,
      labelsMm: 0,
      voices: 1,
      sounds: 1,
      cameraLanes: 1,
      gutters: NO_GUTTERS,
    });
    own = { place, onItsSide: onItsSide(place) };
    made.set(fps, own);
  }
  return own;
}

function onItsSide(place: SheetGeometry): SheetGeometry {
  const width = place.heightMm - 2 * place.header.x;
  return {
    ...place,
    widthMm: place.heightMm,
    heightMm: place.widthMm,
    header: { ...place.header, width },
    foot: { ...place.foot, width },
  };
}

export function footOf(place: SheetGeometry, box: Box, shot: Shot, look: PageLook, middle: string): Mark[] {
  const { title, episode } = look.settings;
  return footMarks(box, 1.9 * place.scale, place.leastTextMm, {
    title: [title, episode && `#${episode}`, shot.title].filter((text) => text !== '').join('  '),
    middle,
    stamp: look.stamp,
    metrics: cachedMetrics(look.metrics),
  });
}

export interface FooterContent {
  readonly title: string;
  /** Cut and page. */
  readonly middle: string;
  readonly stamp: string;
  readonly metrics: Metrics;
}

export function footMarks(box: Box, sizeMm: number, least: number, footed: FooterContent): Mark[] {
  const y = box.y + box.height - sizeMm * 0.5;
  const third = box.width / 3 - 2;
  const put = (text: string, x: number, anchor: 'start' | 'middle' | 'end', bold = false): Mark[] => {
    if (text === '') return [];
    const weight = bold ? 'bold' : 'regular';
    const fitted = cutToFit(footed.metrics, text, third, { most: sizeMm, least, weight });
    return [textAt(x, y, fitted.text, { sizeMm: fitted.sizeMm, squeeze: fitted.squeeze, weight, anchor })];
  };
  return [
    ...put(footed.title, box.x, 'start'),
    ...put(footed.middle, box.x + box.width / 2, 'middle', true),
    ...put(footed.stamp, box.x + box.width, 'end'),
  ];
}
