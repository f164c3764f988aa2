/** What stands on the card: the language on one page. */

import { messageOf } from '../../language/message.js';
import { parse } from '../../language/parse.js';
import { moveStatements } from '../../language/statements/move-statements.js';
import type { UserLanguage } from '../../language/user-language.js';
import type { Mark, Metrics } from '../../sheet/display-list.js';
import { sheetPages } from '../../sheet/exposure-sheet.js';
import { line, pale } from '../../sheet/mark-builders.js';
import { bind } from '../../shot/bind-cut.js';
import { defaults } from '../../shot/settings.js';
import { solve } from '../../solve/solve-shot.js';
import { pageIn, referenceWords } from '../reference-language.js';
import { ruleOf, statementPages } from '../statement-pages.js';
import { type CardPart, STRIPS, TYPED, type Typed } from './card-texts.js';

/** A timeline and what it prints over `ROWS` frames. */
export interface CardStrip {
  readonly typed: string;
  readonly meaning: string;
}

/** Frames that a strip shows. */
export const ROWS = 10;

export function strips(language: UserLanguage): CardStrip[] {
  const { card } = referenceWords(language);
  return STRIPS.map((typed) => ({ typed, meaning: card.strips[typed] }));
}

/** Something that is typed, and what it says. */
export type CardRow = readonly [typed: string, meaning: string];

export interface CardSection {
  readonly title: string;
  readonly rows: readonly CardRow[];
}

/** `commands`: the program's own, with what they do. The reference of the language has to be loaded. */
export function sections(language: UserLanguage, commands: readonly CardRow[]): CardSection[] {
  const { card } = referenceWords(language);
  /** By its example in the grammar and the title of its page. */
  const statement = (name: string): CardRow => [ruleOf(name).example, pageIn(name, language).title];
  const row = (typed: Typed): CardRow => [typed, card.meanings[typed]];
  const rows: Readonly<Record<CardPart, readonly CardRow[]>> = {
    times: TYPED.times.map(row),
    cut: ['cut', 'time', 'fps', 'on', 'mark', 'scene', 'take', 'artist'].map(statement),
    charts: TYPED.charts.map(row),
    levels: [
      ...['stack', 'level'].map(statement),
      ...TYPED.levels.map(row),
      ...['cels', 'numbering', 'phrase', 'use'].map(statement),
    ],
    words: ['voice', 'sound', 'music', 'track', 'mouth', 'note', 'memo', 'same', 'accept'].map(statement),
    camera: [
      ...['field', 'fix', 'pan', 'truck'].map(statement),
      ...TYPED.camera.map(row),
      ...moveStatements
        .map(({ word }) => word)
        .filter((word) => word !== 'pan' && word !== 'truck')
        .map(statement),
    ],
    behind: TYPED.behind.map(row),
    light: ['fade', 'wipe', 'iris', 'expose', 'glow', 'effect', 'overlap'].map(statement),
    typing: [row('# waits'), card.indented, row('mm, cm, in')],
    commands,
  };
  return (Object.keys(rows) as CardPart[]).map((part) => ({ title: card.sections[part], rows: rows[part] }));
}

/** The statements that the card names; the tests hold it to all of them. */
export const named = (): string[] =>
  Object.keys(statementPages).filter((name) =>
    sections('en', []).some(({ rows }) => rows.some(([typed]) => typed === ruleOf(name).example)),
  );

// ---- A piece of a real sheet: the key drawings of one level, taken from the page that the timeline prints

/** Half the width of the column of a level, mm. */
const HALF = 4;

export interface DrawnStrip {
  readonly marks: readonly Mark[];
  readonly heightMm: number;
}

/** `k` times as large as on the sheet; its column has its middle at `x`, its first row begins at `y`. Throws for what is no timeline of `ROWS` frames. */
export function drawnStrip(
  typed: string,
  language: UserLanguage,
  x: number,
  y: number,
  k: number,
  metrics: Metrics,
): DrawnStrip {
  const { tree, diagnostics } = parse('card', `cut 1\ntime ${ROWS}\nA: ${typed}\n`);
  const { shot, diagnostics: unbound } = bind(tree, [], defaults);
  const fault = [...diagnostics, ...unbound].find(({ severity }) => severity === 'error');
  if (!shot || fault) throw new Error(fault ? messageOf(fault, 'en') : 'no cut');
  const settings = { ...defaults, labels: language };
  const [page] = sheetPages(solve(shot), { settings, metrics, stamp: '' });
  const rows = page!.rows.slice(0, ROWS);
  const top = rows[0]!.y;
  const rowMm = rows[0]!.height;
  const bottom = top + ROWS * rowMm;
  // The first key stands in a ring in the middle of its column.
  const first = page!.marks.find((mark) => mark.kind === 'circle' && mark.y > top && mark.y < top + rowMm);
  if (first?.kind !== 'circle') throw new Error('no key on the first row');
  const own = page!.marks.filter((mark) => {
    const [left, high, right, low] = extent(mark);
    return left > first.x - HALF && right < first.x + HALF && high > top - 0.5 && low < bottom + 0.5;
  });
  const [left, right] = [x - k * HALF, x + k * HALF];
  const heightMm = ROWS * rowMm * k;
  const ruled = Array.from({ length: ROWS + 1 }, (_, i) => {
    const at = y + i * rowMm * k;
    return line(left, at, right, at, pale(i % ROWS === 0 ? 0.3 : 0.12));
  });
  const sides = [left, right].map((at) => line(at, y, at, y + heightMm, pale(0.3)));
  const drawn = own.map((mark) => moved(mark, k, x - k * first.x, y - k * top));
  return { marks: [...ruled, ...sides, ...drawn], heightMm };
}

function extent(mark: Mark): [number, number, number, number] {
  switch (mark.kind) {
    case 'text':
      return [mark.x, mark.y, mark.x, mark.y];
    case 'circle':
      return [mark.x - mark.r, mark.y - mark.r, mark.x + mark.r, mark.y + mark.r];
    case 'line':
      return [
        Math.min(mark.x1, mark.x2),
        Math.min(mark.y1, mark.y2),
        Math.max(mark.x1, mark.x2),
        Math.max(mark.y1, mark.y2),
      ];
    case 'path':
    case 'curve': {
      const xs = mark.points.map(([px]) => px);
      const ys = mark.points.map(([, py]) => py);
      return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
    }
    default:
      return [mark.x, mark.y, mark.x + mark.width, mark.y + mark.height];
  }
}

/** A mark `k` times as large about the page's corner, then moved. */
function moved(mark: Mark, k: number, dx: number, dy: number): Mark {
  const to = (x: number, y: number) => [x * k + dx, y * k + dy] as const;
  switch (mark.kind) {
    case 'line': {
      const [[x1, y1], [x2, y2]] = [to(mark.x1, mark.y1), to(mark.x2, mark.y2)];
      return { ...mark, x1, y1, x2, y2 };
    }
    case 'path':
      return { ...mark, points: mark.points.map(([x, y]) => to(x, y)) };
    case 'curve': {
      const [a, b, c, d] = mark.points;
      return { ...mark, points: [to(...a), to(...b), to(...c), to(...d)] };
    }
    case 'circle': {
      const [x, y] = to(mark.x, mark.y);
      return { ...mark, x, y, r: mark.r * k };
    }
    case 'text': {
      const [x, y] = to(mark.x, mark.y);
      return { ...mark, x, y, sizeMm: mark.sizeMm * k };
    }
    default: {
      const [x, y] = to(mark.x, mark.y);
      return { ...mark, x, y, width: mark.width * k, height: mark.height * k };
    }
  }
}
