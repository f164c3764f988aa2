/** The forms with nothing in them, for people who write by hand. */

import { wordsOf } from '../words/words.js';
import { mostLevels, NO_GUTTERS, type WantedColumns } from './block-columns.js';
import type { Page } from './display-list.js';
import { footMarks } from './page-frame.js';
import type { PageLook } from './page-look.js';
import { sideLabel } from './page-sides.js';
import { ruledForm } from './ruled-form.js';
import { blockWidth, sheetGeometry } from './sheet-geometry.js';
import { cachedMetrics } from './text-fitting.js';

/** Nobody writes by hand in lower rows, mm: a page has as many whole seconds (feet) as it holds of these. */
const LOWEST_ROW_BY_HAND = 3;

/** One blank page, with as many sides as `levels` columns take. */
export function blankPages(look: PageLook, { levels }: { readonly levels: number }): Page[] {
  const { settings } = look;
  const metrics = cachedMetrics(look.metrics);
  const room = {
    levelMm: 0,
    labelsMm: 0,
    bracketMm: 0,
    voices: 1,
    sounds: 1,
    cameraLanes: 1,
    gutters: NO_GUTTERS,
  };
  const width = blockWidth(settings, settings.fps);
  const pages: Page[] = [];
  for (let left = Math.max(1, Math.round(levels)); left > 0; ) {
    const main = pages.length === 0;
    const most = mostLevels({ ...room, main }, width);
    const here = Math.min(left, most);
    left -= here;
    const wanted: WantedColumns = { ...room, main, levels: here };
    const place = sheetGeometry(settings, settings.fps, wanted, LOWEST_ROW_BY_HAND);
    const label = sideLabel(1, pages.length);
    pages.push({
      widthMm: place.widthMm,
      heightMm: place.heightMm,
      label,
      part: 'blank',
      form: ruledForm(place, wordsOf(settings).sheet, metrics, 0, settings.convention === 'west'),
      marks: footMarks(place.foot, 1.9 * place.scale, place.leastTextMm, {
        title: settings.title,
        middle: '',
        stamp: look.stamp,
        metrics,
      }),
      rows: [],
    });
  }
  return pages;
}
