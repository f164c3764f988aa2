/**
 * The camera chart: a plan of the artwork to a stated scale, to set up the camera by.
 *
 * What stands on paper: the standard field (grey, dashed; black where a field of the cut lies on it), each field as a black
 * rectangle with ticks at its corners, a cross at its centre and its name in a ring; a field that nothing uses is crossed out.
 * The centre's path is a line with an arrow head; a graduation is a stroke across it, a ring where a field or mark is reached.
 * A truck whose centre stays has them along its upper right corner.
 * Sheets of artwork are thin grey rectangles, the smallest that would do dotted, a moving level's start and end dashed.
 * Positions on paper times the printed ratio are millimetres on the artwork.
 */

import type { SolvedShot } from '../solve/solved.js';
import { wordsOf } from '../words/words.js';
import { drawPlan, roomAround, scaleBar } from './camera-chart/draw.js';
import { legendColumns, legendLines } from './camera-chart/legend.js';
import { planOf } from './camera-chart/plan.js';
import type { Box } from './draw.js';
import type { Look } from './look.js';
import type { Mark, Page } from './marks.js';
import { cached } from './measure.js';
import { pageFrame } from './page-frame.js';

/** One page with the plan, and further ones where the list beside it goes on; none for a cut whose camera and levels stay. */
export function cameraChartPages(solved: SolvedShot, given: Look): Page[] {
  if (!hasCamera(solved)) return [];
  const look = { ...given, metrics: cached(given.metrics) };
  const words = wordsOf(look.settings).cameraPages;
  const framed = (n: number, of: number) => pageFrame(solved.shot, look, words.camera(n), of, true);
  const { body } = framed(1, 1);
  const listMm = Math.min(92, Math.max(56, body.width * 0.24));
  const planBox: Box = { ...body, width: body.width - listMm - 4, height: body.height - 10 };
  const list: Box = {
    x: body.x + body.width - listMm,
    y: body.y + 2,
    width: listMm,
    height: body.height - 4,
  };
  const plan = planOf(solved, solved.shot.settings);
  const view = roomAround(plan, planBox, look.settings);
  const lines = legendLines(solved, look, words, view.n);
  const columns = legendColumns(lines, list, { ...body, y: body.y + 2, height: body.height - 4 }, look);
  return columns.map((marks, i): Page => {
    const { widthMm, heightMm, marks: outer } = framed(i + 1, columns.length);
    const drawn: Mark[] =
      i === 0 ? [...drawPlan(plan, view, solved, look, words), ...scaleBar(view, body, look, words)] : [];
    return {
      widthMm,
      heightMm,
      label: `camera ${i + 1}`,
      part: 'camera',
      form: null,
      marks: [...outer, ...drawn, ...marks],
      rows: [],
    };
  });
}

/** Whether the cut has something for the camera's pages: a move, or a field that is not the standard one. */
export function hasCamera({ camera, shot }: SolvedShot): boolean {
  return (
    camera.moves.length > 0 ||
    camera.fields.some(
      ({ field }) =>
        field.xMm !== 0 ||
        field.yMm !== 0 ||
        field.turnDeg !== 0 ||
        field.widthMm !== shot.settings.field.widthMm,
    )
  );
}
