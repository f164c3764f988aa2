/** What of a cut is drawn, level by level, and its camera in words, on the front of its envelope. */

import type { SolvedLevel } from '../../solve/solved-shot.js';
import { cameraPlan } from '../camera/camera-plan.js';
import type { Mark } from '../display-list.js';
import { type Box, line, pale, textAt } from '../mark-builders.js';
import { memoTexts } from '../memo-box.js';
import { cutToFit, fitLine, setInBox, wrap } from '../text-fitting.js';
import { type CoverContent, captioned, captionSize, inside } from './cover-boxes.js';

/** New drawings of one level. */
interface LevelCounts {
  readonly name: string;
  readonly title: string;
  readonly painted: boolean;
  readonly keys: number;
  readonly inbetweens: number;
  readonly reused: number;
}

function countsOf({ name, title, background, timed, drawings }: SolvedLevel): LevelCounts {
  const fresh = drawings.filter(({ reused }) => !reused);
  const keys = fresh.filter(({ kind }) => kind === 'key').length;
  return {
    ...{ name, title, keys },
    painted: background || !timed,
    inbetweens: fresh.length - keys,
    reused: drawings.length - fresh.length,
  };
}

/** Rows in one column of levels; more stand side by side. */
const MOST_ROWS = 16;

/** New drawings level by level in a line, as a label has them, from the top of the stack to its bottom, with their sum. */
function drawingLine({ solved, words }: CoverContent): string {
  const { cover, total } = words.progress;
  const drawn = solved.levels
    .map(countsOf)
    .reverse()
    .filter(({ painted }) => !painted);
  const count = ({ keys, inbetweens }: LevelCounts): number => keys + inbetweens;
  return [
    ...drawn.map(
      (one) => `${one.name} ${count(one)}${one.reused > 0 ? ` (${cover.reused} ${one.reused})` : ''}`,
    ),
    `${total} ${drawn.reduce((all, one) => all + count(one), 0)}`,
  ].join('   ');
}

/** The drawings over the camera's words, each as wide as the label. */
export function labelBoxes(content: CoverContent, box: Box): Mark[] {
  const { words, metrics, least, scale } = content;
  const line = drawingLine(content);
  const lines = wrap(metrics, line, box.width - 2, least).length;
  const height = Math.min(box.height / 2, captionSize(content) + 1.5 + lines * least * 1.35);
  const upper = { ...box, height };
  return [
    ...captioned(content, upper, words.progress.columns.drawings),
    ...setInBox(metrics, line, inside(content, upper), {
      ...{ most: 6 * scale, least, down: 'top', across: 'start' },
    }).marks,
    ...cameraBox(content, { ...box, y: box.y + height, height: box.height - height }),
  ];
}

/** Levels as a table from the top of the stack to its bottom, with their sum. */
export function levelBox(content: CoverContent, box: Box): Mark[] {
  const { solved, words, metrics, least, scale } = content;
  const { cover, columns, total } = words.progress;
  const levels = solved.levels.map(countsOf).reverse();
  const drawn = levels.filter(({ painted }) => !painted);
  const sum = (of: (one: LevelCounts) => number): number => drawn.reduce((all, one) => all + of(one), 0);
  const blocks = Math.max(1, Math.ceil((levels.length + 1) / MOST_ROWS));
  const each = Math.ceil((levels.length + 1) / blocks);
  const rowMm = Math.min(7 * scale, box.height / (each + 1));
  const sizeMm = Math.max(least, Math.min(3.6 * scale, rowMm * 0.62));
  const marks: Mark[] = captioned(content, box, '');
  const rows: (readonly string[])[] = levels.map((one) => [
    one.title === '' ? one.name : `${one.name} ${words.sheet.quoted(one.title)}`,
    ...(one.painted
      ? ['', '', cover.painted, '']
      : [one.keys, one.inbetweens, one.keys + one.inbetweens, one.reused || ''].map(String)),
  ]);
  const sums = [sum((one) => one.keys), sum((one) => one.inbetweens)] as const;
  rows.push([total, ...[...sums, sums[0] + sums[1], sum((one) => one.reused) || ''].map(String)]);
  const heads = [cover.level, cover.keys, cover.inbetweens, columns.drawings, cover.reused];
  const width = box.width / blocks;
  for (let block = 0; block < blocks; block++) {
    const x = box.x + block * width;
    const own = rows.slice(block * each, (block + 1) * each);
    for (const [i, cells] of [heads, ...own].entries()) {
      const y = box.y + i * rowMm;
      const isTotal = cells === rows.at(-1);
      const edges = [0, 0.4, 0.53, 0.7, 0.86, 1].map((share) => x + share * width);
      cells.forEach((text, c) => {
        if (text === '') return;
        const room = edges[c + 1]! - edges[c]! - 1.6;
        const weight = isTotal || (c === 0 && i > 0) || (c === 3 && i > 0) ? 'bold' : 'regular';
        const most = i === 0 ? captionSize(content) : sizeMm;
        const ink = i === 0 ? ('grey' as const) : ('black' as const);
        const at = c === 0 ? edges[0]! + 0.8 : edges[c + 1]! - 0.8;
        // A level's name stays, its title gives way.
        const { text: shown, ...fit } = cutToFit(metrics, text, room, { most, least, weight });
        marks.push(
          textAt(at, y + rowMm / 2, shown, { ...fit, weight, ink, anchor: c === 0 ? 'start' : 'end' }),
        );
      });
      marks.push(line(x, y + rowMm, x + width, y + rowMm, pale(i === 0 || isTotal ? 0.25 : 0.1)));
    }
    if (block > 0) marks.push(line(x, box.y, x, box.y + box.height, pale(0.25)));
  }
  return marks;
}

/** The lines of the sheet's memo: camera, light, reuse, what the cut says in words. */
export function cameraBox(content: CoverContent, box: Box): Mark[] {
  const { solved, look, words, metrics, least, scale } = content;
  const camera = cameraPlan(solved, look.settings, look.neighbours);
  const lines = memoTexts({
    ...{ solved, camera, words: words.sheet, lent: look.lent ?? [] },
    leftOver: new Set<string>(),
  })
    .map(({ text }) => text)
    // On the sheet the caution stands first. Here, where lines may be left out, nothing of the camera gives way to it.
    .sort((a, b) => Number(a === words.sheet.flashCaution) - Number(b === words.sheet.flashCaution));
  const room = inside(content, box);
  const lineOf = (text: string, size: number): string[] => wrap(metrics, text, room.width, size);
  const fitting = (size: number): number => Math.max(1, Math.floor(room.height / (size * 1.3)));
  // Where there is no room for a line each, one runs on behind the other.
  const apart = lines.flatMap((text) => lineOf(text, least)).length <= fitting(least);
  const paragraphs = apart ? lines : [lines.join('  ·  ')];
  const marks = captioned(content, box, words.progress.cover.camera);
  for (let sizeMm = 3.4 * scale; ; sizeMm = Math.max(least, sizeMm * 0.94)) {
    const size = Math.max(least, sizeMm);
    const set = paragraphs.flatMap((text) => lineOf(text, size));
    const most = fitting(size);
    if (set.length > most && size > least) continue;
    const shown = set.length > most ? [...set.slice(0, most - 1), `${set[most - 1]} …`] : set;
    shown.forEach((text, i) => {
      const fit = fitLine(metrics, text, room.width, { most: size, least });
      marks.push(textAt(room.x, room.y + (i + 0.5) * size * 1.3, text, { ...fit, anchor: 'start' }));
    });
    return marks;
  }
}
