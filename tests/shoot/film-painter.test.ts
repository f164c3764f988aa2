import { describe, expect, it } from 'vitest';
import { editOf } from '../../src/export/episode-edit.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { editOrder, sheetOrder } from '../../src/picture/film-order.js';
import { pictureOf } from '../../src/picture/frame-list.js';
import type { Drawing } from '../../src/picture/frame-painter.js';
import { type CanvasKit, type Drawn, openCanvas } from '../../src/shoot/canvas-kit.js';
import type { CutDrawings } from '../../src/shoot/cut-drawings.js';
import { type FilmCut, FilmPainter } from '../../src/shoot/film-painter.js';
import { compileText } from '../compile.js';

const LOOK = { width: 64, height: 36, guides: false, foot: false };
const kit = openCanvas(memoryHost())!;

/** A cut whose drawings are grey of one brightness all over; `prepared` counts the frames that were painted. */
function cutOf(text: string, brightness: number) {
  const image = kit.createCanvas(4, 4);
  const context = image.getContext('2d');
  context.fillStyle = `rgb(${brightness}, ${brightness}, ${brightness})`;
  context.fillRect(0, 0, 4, 4);
  const drawing: Drawing<Drawn> = {
    kind: 'picture',
    image,
    widthMm: 900,
    heightMm: 900,
    paper: true,
    lit: null,
  };
  const solved = compileText(text).solved!;
  const counter = { prepared: 0 };
  const drawings = {
    async prepare() {
      counter.prepared += 1;
    },
    drawing: (level: number) => (level === 0 ? drawing : null),
  } as unknown as CutDrawings;
  const cut: FilmCut = { cut: pictureOf(solved), drawings, name: `cut ${solved.shot.cut}`, feet: false };
  return { solved, cut, counter };
}

async function brightness(painter: FilmPainter, frame: number): Promise<number> {
  const canvas = await painter.paint(frame);
  return canvas.getContext('2d').getImageData(2, 2, 1, 1).data[0]!;
}

describe('a film', () => {
  it('mixes both pictures of an overlap, frame by frame', async () => {
    const cuts = [
      cutOf('cut 1\ntime 1+0\nstack BG\noverlap out 5\n', 0),
      cutOf('cut 2\ntime 1+0\nstack BG\noverlap in 5\n', 200),
    ];
    const order = editOrder(editOf(cuts.map(({ solved }) => solved)).edit!);
    const painter = new FilmPainter(kit, order, LOOK, (place) => cuts[place]!.cut);
    // Of the five frames three lie before the cut point: 0, 1/4, 1/2, 3/4, 1 of the second cut.
    const seen = [];
    for (let frame = 21; frame <= 28; frame++) seen.push(await brightness(painter, frame));
    for (const [i, share] of [0, 0, 0.25, 0.5, 0.75, 1, 1, 1].entries())
      expect(Math.abs(seen[i]! - 200 * share)).toBeLessThanOrEqual(2);
  });

  it('is painted once where it holds', async () => {
    const { solved, cut, counter } = cutOf('cut 1\ntime 1+0\nstack BG A\nA: 1:12 2..\n', 200);
    const painter = new FilmPainter(kit, sheetOrder(solved.shot), LOOK, () => cut);
    for (let frame = 1; frame <= 24; frame++) await painter.paint(frame);
    expect(counter.prepared).toBe(2);
  });

  it('keeps a frame while the next is painted', async () => {
    const { solved, cut } = cutOf('cut 1\ntime 1+0\nstack BG\nfade out 1..2\n', 200);
    const painter = new FilmPainter(kit, sheetOrder(solved.shot), LOOK, () => cut);
    const first = await painter.paint(1);
    await painter.paint(2);
    expect(first.getContext('2d').getImageData(2, 2, 1, 1).data[0]).toBe(200);
  });

  it('names cut and row at its foot, and the time of the film where there are several', async () => {
    const cuts = [cutOf('cut 1\ntime 1+0\nstack BG\n', 200), cutOf('cut 2\ntime 1+0\nstack BG\n', 200)];
    const written: string[] = [];
    const spied: CanvasKit = {
      ...kit,
      createCanvas(width, height) {
        const canvas = kit.createCanvas(width, height);
        const context = canvas.getContext('2d');
        const fillText = context.fillText.bind(context);
        context.fillText = (text, x, y) => {
          written.push(text);
          fillText(text, x, y);
        };
        return canvas;
      },
    };
    const look = { ...LOOK, foot: true };
    const order = editOrder(editOf(cuts.map(({ solved }) => solved)).edit!);
    const painter = new FilmPainter(spied, order, look, (place) => cuts[place]!.cut);
    await painter.paint(26);
    expect(written).toEqual(expect.arrayContaining(['cut 2', '1+2', '0+2  (2)']));
  });
});
