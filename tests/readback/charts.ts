/** Reads in-between charts back from paper, and compares them with the solver's passages. */

import type { Convention } from '../../src/shot/settings.js';
import type { DrawingKind, SolvedLevel, SolvedPassage, SolvedShot } from '../../src/solve/solved-shot.js';
import type { Paper, PaperLine, PaperShape, PaperText } from '../pdf.js';
import { middleOf, Unreadable } from './grid.js';

export interface ReadStep {
  /** Share of the ladder's line, 0 to 1. */
  readonly share: number;
  readonly cel: string;
  readonly drawing: string;
  readonly way: string;
  readonly frames: string;
  readonly kind: DrawingKind;
}

export interface ReadLadder {
  readonly level: string;
  /** `1 → 2`. */
  readonly title: string;
  /** Length of the line on paper, mm. */
  readonly lengthMm: number;
  readonly piece: number;
  readonly pieces: number;
  readonly steps: readonly ReadStep[];
}

const BLACK = '#000000';
const SAME = 0.02;
const near = (a: number, b: number, within = SAME): boolean => Math.abs(a - b) < within;

/** The ladders of a page in reading order. */
export function readLadders(paper: Paper): ReadLadder[] {
  const headings = paper.texts.filter((text) => text.weight === 'bold' && near(text.sizeMm, 6));
  const lines = paper.lines.filter((line) => line.pen.ink === BLACK);
  const axes = lines
    .filter((line) => near(line.x1, line.x2) && near(line.pen.widthMm, 0.4))
    .map((line) => ({ x: line.x1, top: Math.min(line.y1, line.y2), bottom: Math.max(line.y1, line.y2) }))
    .sort((a, b) => (near(a.top, b.top) ? a.x - b.x : a.top - b.top));
  return axes.map((axis) => {
    const level = headings.filter((text) => text.y < axis.top).sort((a, b) => b.y - a.y)[0];
    if (!level) throw new Unreadable('a ladder of no level');
    const inRow = axes.filter((other) => near(other.top, axis.top) && other.x > axis.x);
    const right = Math.min(paper.widthMm, ...inRow.map((other) => other.x - 4));
    const area = { left: axis.x - 5, right, top: axis.top - 15, bottom: axis.bottom + 3 };
    return readLadder(paper, lines, axis, area, level.text);
  });
}

interface Axis {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function readLadder(
  paper: Paper,
  lines: readonly PaperLine[],
  axis: Axis,
  area: Area,
  level: string,
): ReadLadder {
  const within = (x: number, y: number) => x > area.left && x < area.right && y > area.top && y < area.bottom;
  const texts = paper.texts.filter((text) => within(...middleOf(text)));
  const title = texts.find((text) => text.weight === 'bold' && text.text.includes(' → '));
  if (!title) throw new Unreadable('a ladder without a title');
  const [, name, piece = '1', pieces = '1'] = /^(.*? → \S+)(?: +\((\d+)\/(\d+)\))?$/.exec(title.text) ?? [];
  if (!name) throw new Unreadable(`a ladder is called “${title.text}”`);
  const strokes = lines
    .filter((line) => near(line.y1, line.y2) && near((line.x1 + line.x2) / 2, axis.x))
    .filter((line) => line.y1 > axis.top - SAME && line.y1 < axis.bottom + SAME)
    .sort((a, b) => a.y1 - b.y1);
  const leaders = paper.shapes
    .filter((shape) => !shape.closed && shape.points.length === 4 && within(...shape.points[3]!))
    .sort((a, b) => a.points[3]![1] - b.points[3]![1]);
  if (strokes.length !== leaders.length)
    throw new Unreadable(`${strokes.length} strokes with ${leaders.length} leaders`);
  const lengthMm = axis.bottom - axis.top;
  const steps = strokes.map((stroke, i): ReadStep => {
    const leader = leaders[i]!;
    if (!near(leader.points[0]![1], stroke.y1)) throw new Unreadable('a leader that begins at no stroke');
    return {
      share: (stroke.y1 - axis.top) / lengthMm,
      ...readPrint(paper, texts, leader, lines, stroke, axis),
    };
  });
  return { level, title: name, lengthMm, piece: Number(piece), pieces: Number(pieces), steps };
}

function readPrint(
  paper: Paper,
  texts: readonly PaperText[],
  leader: PaperShape,
  lines: readonly PaperLine[],
  stroke: PaperLine,
  axis: Axis,
): Omit<ReadStep, 'share'> {
  const [from, y] = leader.points[3]!;
  const line = texts
    .filter((text) => text.x > from - 0.5 && near(middleOf(text)[1], y, 0.3))
    .sort((a, b) => a.x - b.x);
  const number = line.find((text) => text.weight === 'bold');
  const way = line.filter((text) => text.ink !== BLACK);
  const [drawing, frames, ...more] = line.filter((text) => text.ink === BLACK && text.weight === 'regular');
  if (!number || !drawing || !frames || more.length > 0 || way.length > 1)
    throw new Unreadable(`a line of print says ${line.map((text) => text.text).join(' ')}`);
  const rings = [
    ...paper.circles
      .filter((circle) => circle.fill === null)
      .map(({ x, y: middle }): [number, number] => [x, middle]),
    ...paper.shapes
      .filter((shape) => shape.closed && shape.fill === null)
      .map(({ points }): [number, number] => {
        const xs = points.map(([x]) => x);
        const ys = points.map(([, each]) => each);
        return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
      }),
  ];
  const ringed = (text: PaperText) => {
    const [x, middle] = middleOf(text);
    return rings.some((ring) => near(ring[0], x, 0.3) && near(ring[1], middle, 0.3));
  };
  const under = lines.some(
    (one) =>
      near(one.y1, one.y2) &&
      one.y1 > number.y &&
      one.y1 < number.y + 1.2 &&
      one.x1 < number.x &&
      one.x2 > number.endX,
  );
  const bracketed = /^\((.*)\)$/.exec(drawing.text);
  const dot = paper.circles.some(
    (circle) => circle.fill === BLACK && near(circle.x, axis.x) && near(circle.y, stroke.y1),
  );
  if (dot !== (under || bracketed !== null)) throw new Unreadable('a breakdown that is only half marked');
  return {
    cel: number.text,
    drawing: bracketed?.[1] ?? drawing.text,
    way: way[0]?.text ?? '',
    frames: frames.text,
    kind: dot ? 'breakdown' : ringed(number) || ringed(drawing) ? 'key' : 'inbetween',
  };
}

/** Everything in which the charts of a cut differ from its passages. */
export function chartDifferences(
  read: readonly ReadLadder[],
  solved: SolvedShot,
  convention: Convention,
): string[] {
  const levels = convention === 'west' ? solved.levels.toReversed() : solved.levels;
  const wanted = levels.flatMap((level) =>
    level.passages.filter((passage) => passage.drawings.length > 0).map((passage) => ({ level, passage })),
  );
  const whole: ReadLadder[][] = [];
  for (const ladder of read) {
    if (ladder.piece === 1) whole.push([]);
    whole.at(-1)!.push(ladder);
  }
  if (whole.length !== wanted.length) return [`${whole.length} ladders for ${wanted.length} passages`];
  return wanted.flatMap(({ level, passage }, i) => {
    const where = `${level.name} ${passage.from} → ${passage.to}`;
    return ladderDifferences(whole[i]!, level, passage, convention).map((text) => `${where}: ${text}`);
  });
}

function ladderDifferences(
  pieces: readonly ReadLadder[],
  level: SolvedLevel,
  passage: SolvedPassage,
  convention: Convention,
): string[] {
  const found: string[] = [];
  const names = [passage.from, ...passage.drawings, passage.to];
  const ways = [0, ...passage.fractions, 1];
  let at = 0;
  pieces.forEach((ladder, i) => {
    if (ladder.level !== level.name) found.push(`stands under level ${ladder.level}`);
    // The west knows a key by its finished number.
    const called = (key: string): string =>
      String((convention === 'west' && level.drawings.find((one) => one.drawing === key)?.cel) || key);
    if (ladder.title !== `${called(passage.from)} → ${called(passage.to)}`)
      found.push(`is called ${ladder.title}`);
    if (ladder.piece !== i + 1 || ladder.pieces !== pieces.length)
      found.push(`piece ${ladder.piece} is out of place`);
    const first = ways[at]!;
    const last = ways[at + ladder.steps.length - 1] ?? Number.NaN;
    ladder.steps.forEach((step, j) => {
      const name = names[at + j];
      const way = ways[at + j]!;
      if (step.drawing !== name) found.push(`${step.drawing} stands for ${name}`);
      if (last > first) {
        const share = (way - first) / (last - first);
        if (Math.abs(share - step.share) * ladder.lengthMm > 0.003)
          found.push(`${name} stands at ${step.share} instead of ${share}`);
      }
      found.push(...stepDifferences(step, level, way));
    });
    // Neighbouring pieces have one drawing in common.
    at += ladder.steps.length - 1;
  });
  if (at !== names.length - 1) found.push(`${at + 1} drawings instead of ${names.length}`);
  return found;
}

function stepDifferences(step: ReadStep, level: SolvedLevel, way: number): string[] {
  const found: string[] = [];
  const drawing = level.drawings.find((one) => one.drawing === step.drawing);
  const cel = drawing ? String(drawing.cel) : '–';
  if (step.cel !== cel) found.push(`${step.drawing} has number ${step.cel} instead of ${cel}`);
  if (drawing && step.kind !== drawing.kind) found.push(`${step.drawing} is marked as ${step.kind}`);
  const exposed = level.exposures
    .map((exposure) => (exposure.drawing === step.drawing ? '#' : ' '))
    .join('')
    .split(/ +/)
    .map((run) => run.length)
    .filter((length) => length > 0);
  if (!says(step.frames, exposed))
    found.push(`${step.drawing} for ${step.frames} instead of ${exposed.join(', ')}`);
  if (step.kind === 'key' ? step.way !== '' : !isWay(step.way, way))
    found.push(`${step.drawing} at ${step.way} of the way instead of ${way}`);
  return found;
}

function says(text: string, exposed: readonly number[]): boolean {
  const range = /^(\d+)–(\d+) ×(\d+)$/.exec(text);
  if (range)
    return (
      Number(range[1]) === Math.min(...exposed) &&
      Number(range[2]) === Math.max(...exposed) &&
      Number(range[3]) === exposed.length
    );
  const times = /^(\d+) ×(\d+)$/.exec(text);
  const list = times ? Array<string>(Number(times[2])).fill(times[1]!) : text === '–' ? [] : text.split(', ');
  return list.join() === exposed.join();
}

function isWay(text: string, way: number): boolean {
  const fraction = /^(\d+)\/(\d+)$/.exec(text);
  if (fraction) return Math.abs(Number(fraction[1]) / Number(fraction[2]) - way) < 1e-9;
  if (text === '>.999') return way > 0.999;
  if (text === '<.001') return way < 0.001;
  return /^\.\d{3}$/.test(text) && Math.abs(Number(text) - way) <= 0.0005 + 1e-9;
}
