/** What stands on the card: the language on one page. */

import { messageOf } from '../../language/message.js';
import { parse } from '../../language/parse.js';
import { moveStatements } from '../../language/statements/move-statements.js';
import type { Mark, Metrics } from '../../sheet/display-list.js';
import { sheetPages } from '../../sheet/exposure-sheet.js';
import { line, pale } from '../../sheet/mark-builders.js';
import { bind } from '../../shot/bind-cut.js';
import { defaults } from '../../shot/settings.js';
import { solve } from '../../solve/solve-shot.js';
import { ruleOf, statementPages } from '../statement-pages.js';

/** A timeline and what it prints over `ROWS` frames. */
export interface CardStrip {
  readonly typed: string;
  readonly meaning: string;
}

/** Frames that a strip shows. */
export const ROWS = 10;

export const strips: readonly CardStrip[] = [
  { typed: '1:4 2..', meaning: 'key 1 for 4 frames, key 2 to the end' },
  { typed: '1---2', meaning: '- is one in-between; on twos if nothing is said' },
  { typed: '1-=-2', meaning: '= is a breakdown' },
  { typed: 'on 1 1----2..', meaning: 'on ones from here on' },
  { typed: '1:4 x:2 2..', meaning: 'x: nothing is shown' },
  { typed: '1-2 1.1 1..', meaning: '1.1: the in-between shown again' },
  { typed: '1-1a-2', meaning: '1a: a key put in later' },
  { typed: '1 @7 2..', meaning: '2 starts on frame 7' },
  { typed: '(1-2-)..', meaning: 'a cycle; also )*3 and ):3+0' },
  { typed: '(1-2)<>..', meaning: 'there and back; also <>*2' },
];

/** Something that is typed, and what it says. */
export type CardRow = readonly [typed: string, meaning: string];

export interface CardSection {
  readonly title: string;
  readonly rows: readonly CardRow[];
}

/** A statement by its example in the grammar and the title of its page. */
const statement = (name: string): CardRow => [ruleOf(name).example, statementPages[name]!.title];

/** `commands`: the program's own, with what they do. */
export function sections(commands: readonly CardRow[]): CardSection[] {
  return [
    {
      title: 'Times',
      rows: [
        ['37', 'frames, or frame 37; the first row is frame 1'],
        ['5+12', 'seconds and frames; as a place row 12 of the sixth second'],
        ["8'04", 'feet and frames of 35 mm film, 16 a foot'],
        ['1+1..5+0', 'a range, both included; 1+1.. goes to the end'],
        ['hit, hit+6, hit-3', 'a mark, and frames from it'],
      ],
    },
    {
      title: 'The cut',
      rows: ['cut', 'time', 'fps', 'on', 'mark', 'scene', 'take', 'artist'].map(statement),
    },
    {
      title: 'Charts',
      rows: [
        ['1{late}---2', 'in-betweens crowd the later key; early, both, even'],
        ['1{1/4 1/2 7/8}---2', 'one share of the way for each'],
      ],
    },
    {
      title: 'Levels',
      rows: [
        ...['stack', 'level'].map(statement),
        [
          'free, carry, flash, reuse 8/C, picture "bg.png"',
          'also said of a level: edges may show, fixed to the camera, a flash, drawings of cut 8, its scan',
        ],
        ...['cels', 'numbering', 'phrase', 'use'].map(statement),
      ],
    },
    {
      title: 'Words',
      rows: ['voice', 'sound', 'music', 'track', 'mouth', 'note', 'memo', 'same', 'accept'].map(statement),
    },
    {
      title: 'Camera',
      rows: [
        ...['field', 'fix', 'pan', 'truck'].map(statement),
        ['truck quick A@1 > B@19 fair キ@7 62%', 'constant speed to the mark, then the fairing'],
        ['truck level A 100%@1 > 140%@3+0', 'the size of levels'],
        ...moveStatements
          .map(({ word }) => word)
          .filter((word) => word !== 'pan' && word !== 'truck')
          .map(statement),
      ],
    },
    {
      title: 'Behind a move',
      rows: [
        ['ease 6 12', 'soft start over 6 frames, soft stop over 12'],
        ['curve 0.42 0 0.58 1', 'a cubic Bézier, as CSS Easing has it'],
        ['steps 1 2 4*3 2 1', 'graduations by hand, mm'],
        ['graduated', 'numbered graduations, frame by frame'],
        ['on 2', 'sampled on twos'],
        ['carry A,B', 'these levels go with the camera (pan, truck)'],
        ['log', 'by equal ratios (truck)'],
        ['about 10,20', 'the point that stays (truck level, turn)'],
        ['loop 310mm', 'artwork painted as a loop (pull)'],
        ['curved', 'one smooth way through all places (pan, slide)'],
        ['sideways', 'to the right first (shake, sway)'],
      ],
    },
    { title: 'Light', rows: ['fade', 'wipe', 'iris', 'expose', 'glow', 'effect', 'overlap'].map(statement) },
    {
      title: 'Typing',
      rows: [
        ['# waits', 'a comment, to the end of the line'],
        ['indented line', 'goes on with the statement above'],
        ['mm, cm, in', 'units of length; mm if nothing is said'],
      ],
    },
    { title: 'Commands: cutwright …', rows: commands },
  ];
}

/** The statements that the card names; the tests hold it to all of them. */
export const named = (): string[] =>
  Object.keys(statementPages).filter((name) =>
    sections([]).some(({ rows }) => rows.some(([typed]) => typed === ruleOf(name).example)),
  );

// ---- A piece of a real sheet: the key drawings of one level, taken from the page that the timeline prints

/** Half the width of the column of a level, mm. */
const HALF = 4;

export interface DrawnStrip {
  readonly marks: readonly Mark[];
  readonly heightMm: number;
}

/** `k` times as large as on the sheet; its column has its middle at `x`, its first row begins at `y`. Throws for what is no timeline of `ROWS` frames. */
export function drawnStrip(typed: string, x: number, y: number, k: number, metrics: Metrics): DrawnStrip {
  const { tree, diagnostics } = parse('card', `cut 1\ntime ${ROWS}\nA: ${typed}\n`);
  const { shot, diagnostics: unbound } = bind(tree, [], defaults);
  const fault = [...diagnostics, ...unbound].find(({ severity }) => severity === 'error');
  if (!shot || fault) throw new Error(fault ? messageOf(fault, 'en') : 'no cut');
  const settings = { ...defaults, labels: 'en' as const };
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
