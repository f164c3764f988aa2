/** Rows of the sheets that stand for what is edited: each row faintly, and in a level's column the drawing itself. */

import type { LevelColumn } from '../../sheet/display-list.js';
import type { TextRows } from '../shown-cut.js';

/** The class of a row, and of what lies over the column of a level. */
const ROW = 'lit';
const ITEM = 'lit-item';

/** Null: lights none. Gives the first row that is lit. */
export function lightRows(pages: HTMLElement, lit: TextRows | null): Element | null {
  for (const row of pages.querySelectorAll(`.row.${ROW}`)) row.classList.remove(ROW);
  for (const item of pages.querySelectorAll(`.${ITEM}`)) item.remove();
  if (!lit || lit.frames.length === 0) return null;
  let first: SVGRectElement | null = null;
  for (const row of pages.querySelectorAll<SVGRectElement>('.row')) {
    const frame = frameOf(row);
    const on = ({ from, to }: { from: number; to: number }) => from <= frame && frame <= to;
    if (!lit.frames.some(on)) continue;
    row.classList.add(ROW);
    if (!first || frame < frameOf(first)) first = row;
    const levels = new Set(lit.items.filter(on).map(({ level }) => level));
    for (const column of columnsOf(row).filter(({ level }) => levels.has(level)))
      row.before(itemOf(row, column));
  }
  return first;
}

/** The level in whose column a place of the window lies, on the row that is there; null: in none. */
export function levelAt(
  row: SVGRectElement,
  place: { readonly clientX: number; readonly clientY: number },
): string | null {
  const matrix = row.getScreenCTM()?.inverse();
  if (!matrix) return null;
  const { x } = new DOMPoint(place.clientX, place.clientY).matrixTransform(matrix);
  return columnsOf(row).find((column) => column.x <= x && x < column.x + column.width)?.level ?? null;
}

/** Those within the row: a page may have several blocks of rows side by side. */
function columnsOf(row: SVGRectElement): readonly LevelColumn[] {
  const columns = row.closest<HTMLElement>('figure')?.dataset.columns;
  const [x, width] = [Number(row.getAttribute('x')), Number(row.getAttribute('width'))];
  const all = columns ? (JSON.parse(columns) as LevelColumn[]) : [];
  return all.filter((column) => column.x >= x && column.x < x + width);
}

function itemOf(row: SVGRectElement, { x, width }: LevelColumn): SVGElement {
  const item = row.cloneNode() as SVGRectElement;
  item.setAttribute('class', ITEM);
  item.setAttribute('x', String(x));
  item.setAttribute('width', String(width));
  item.removeAttribute('data-frame');
  return item;
}

const frameOf = (row: SVGElement): number => Number(row.dataset.frame);
