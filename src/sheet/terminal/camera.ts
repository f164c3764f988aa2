/** Columns for the camera: moves and light as lines down their rows, with the names of places and the graduations. */

import { broken, widthOf } from '../../layout/terminal-text.js';
import type { TextColumn } from '../../layout/text-table.js';
import type { SheetWords } from '../../words/sheet-words.js';
import type { CameraPlan, Item } from '../camera/plan.js';
import { type Rows, rowsWithin, sheetColumn } from './column.js';
import { barOn } from './speech.js';

const LEAST = 8;
const MOST = 22;

/** One column for each move that runs at the same time as another. */
export function cameraColumns({ placed }: CameraPlan, rows: Rows, words: SheetWords): TextColumn[] {
  const lanes = new Map<number, Item[]>();
  for (const { item, lane } of placed) {
    if (rowsWithin(rows, { from: item.from, to: item.last }))
      lanes.set(lane, [...(lanes.get(lane) ?? []), item]);
  }
  return [...lanes]
    .sort(([a], [b]) => a - b)
    .map(([, items]) => {
      const names = items.map((item) => `${saidOn(item, item.from - 1, item.from)} ${item.names[0]}`);
      const numbers = items.flatMap((item) => [...item.numbers.keys()].map((at) => saidOn(item, at - 1, at)));
      const widest = (texts: readonly string[], least: number, most: number): number =>
        Math.min(most, Math.max(least, ...texts.map((text) => widthOf(text) + 2)));
      const least = widest(numbers, LEAST, MOST);
      return sheetColumn([words.camera, ''], least, widest(names, least, MOST), (width) =>
        itemsOn(items, rows, width),
      );
    });
}

function itemsOn(items: readonly Item[], rows: Rows, width: number): string[] {
  const cells = rows.map(() => '');
  for (const item of items) {
    const range = { from: item.from, to: item.last };
    const within = rowsWithin(rows, range)!;
    const beside = new Map<number, string>();
    for (let row = within.first; row <= within.last; row++) {
      const since = row === 0 ? rows[row]! - 1 : rows[row - 1]!;
      const said = saidOn(item, since, rows[row]!);
      if (said !== '') beside.set(row, said);
    }
    nameOn(item, beside, within, width);
    for (let row = within.first; row <= within.last; row++) {
      // A move may leave on the row on which the one before it has arrived.
      const text = `${barOn(rows, range, row, within)} ${beside.get(row) ?? ''}`.trimEnd();
      cells[row] = cells[row] && row === within.first ? text.replace(/^┌/, '├') : text;
    }
  }
  return cells;
}

/** Names of places and graduations of the frames after `since`, up to `frame`. */
function saidOn({ labels, numbers }: Item, since: number, frame: number): string {
  const names: string[] = [];
  for (let at = since + 1; at <= frame; at++) if (labels.has(at)) names.push(labels.get(at)!);
  const graduation = numbers.get(frame);
  return [
    names.length > 0 ? `(${names.join(' ')})` : '',
    graduation ? `${graduation.number}${graduation.beside && ` ${graduation.beside}`}` : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** The move's name on the first row, behind what stands there, or on the first rows that are free. */
function nameOn(
  item: Item,
  beside: Map<number, string>,
  { first, last }: { readonly first: number; readonly last: number },
  width: number,
): void {
  const room = width - 2;
  const name = item.names.find((one) => widthOf(one) <= room) ?? item.names[0] ?? '';
  const there = beside.get(first) ?? '';
  if (widthOf(`${there} ${name}`.trim()) <= room || last === first) {
    beside.set(first, `${there} ${name}`.trim());
    return;
  }
  const lines = broken(name, room);
  for (let row = first + 1; row + lines.length - 1 <= last; row++) {
    if (lines.some((_, i) => beside.has(row + i))) continue;
    lines.forEach((line, i) => void beside.set(row + i, line));
    return;
  }
  beside.set(first, `${there} ${name}`.trim());
}
