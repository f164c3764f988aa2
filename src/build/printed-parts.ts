/** From a solved cut to what is printed of it. */

import { needsCameraChart } from '../sheet/camera/camera-plan.js';
import { cameraChartPages, chartWithTable } from '../sheet/camera-pages/camera-chart.js';
import { overlayPages } from '../sheet/camera-pages/field-overlay.js';
import { moveTablePages } from '../sheet/camera-pages/move-table.js';
import { stripPages } from '../sheet/camera-pages/scale-strip.js';
import { coverPages } from '../sheet/cover/cover-page.js';
import type { Page } from '../sheet/display-list.js';
import { sheetPages } from '../sheet/exposure-sheet.js';
import { chartPages, neededChartPages } from '../sheet/inbetween-chart-pages.js';
import type { PageLook } from '../sheet/page-look.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { wordsOf } from '../words/words.js';
import type { CutPages } from './cut-document.js';
import { PARTS, type PartName, type PartSelection } from './print-plan.js';

/**
 * Makes the pages of one cut. By default what somebody works from: its sheets; charts of passages that are not even or were changed;
 * the camera chart where something moves that a line of the memo cannot tell, with the table of moves on it or behind it.
 */
export function cutPages(solved: SolvedShot, look: PageLook, selection: PartSelection = {}): CutPages {
  const words = wordsOf(look.settings).documents;
  const { cut, title } = solved.shot;
  const made = partPages(solved, look, selection);
  const parts = PARTS.map((part) => ({ title: words.parts[part], pages: made[part]?.() ?? [] })).filter(
    ({ pages }) => pages.length > 0,
  );
  const name = words.cut(cut);
  return { title: title ? `${name} ${title}` : name, parts };
}

type Made = { readonly [P in PartName]?: () => Page[] };

function partPages(solved: SolvedShot, look: PageLook, { only, trueSize, parts }: PartSelection): Made {
  const all = parts === 'all';
  const whole: Required<Made> = {
    cover: () => coverPages(solved, look),
    sheet: () => sheetPages(solved, look),
    charts: () => chartPages(solved, look),
    camera: () => cameraChartPages(solved, look),
    table: () => moveTablePages(solved, look),
    strip: () => stripPages(solved, look),
    overlay: () => overlayPages(solved, look),
  };
  if (only !== undefined) return { [only]: whole[only] };
  const { sheet, charts, strip, overlay } = whole;
  const camera = all || needsCameraChart(solved) ? chartWithTable(solved, look) : null;
  return {
    sheet,
    charts: all ? charts : () => neededChartPages(solved, look),
    ...(camera ? { camera: () => camera.pages, table: () => camera.tablePages() } : {}),
    ...(all || trueSize ? { strip, overlay } : {}),
  };
}
