import { applyToPoint, compose, inverse, rotateDEG, scale, translate } from 'transformation-matrix';
import { describe, expect, it, test } from 'vitest';
import { applied } from '../../src/picture/affine.js';
import { pictureOf } from '../../src/picture/frame-list.js';
import type { CutPicture } from '../../src/picture/frame-picture.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { compileText, said } from '../compile.js';
import { MOVING_CUTS } from './moving-cuts.js';

function solvedOf(text: string): SolvedShot {
  const { solved, diagnostics } = compileText(text);
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  expect(said(errors)).toEqual([]);
  return solved!;
}

const cutOf = (body: string): CutPicture => pictureOf(solvedOf(`cut 1\n${body}`));

/** Where a point of the artwork is seen, by another library from what the export says: npm `transformation-matrix`, y upwards. */
function seenBy(
  solved: SolvedShot,
  level: string,
  frame: number,
  point: { x: number; y: number },
): { x: number; y: number } {
  const at = solved.camera.placement.get(level)![frame - 1]!;
  const camera = solved.camera.frames[frame - 1]!;
  const { homeMm } = solved.shot.levels.find(({ name }) => name === level)!;
  // Clockwise is the other way round than the library counts it with y upwards.
  const world = compose(
    translate(homeMm.xMm + at.x, homeMm.yMm + at.y),
    rotateDEG(-at.rotation),
    scale(at.scale),
  );
  const view = compose(
    translate(camera.x, camera.y),
    rotateDEG(-camera.rotation),
    scale(camera.width / solved.shot.settings.field.widthMm),
  );
  return applyToPoint(compose(inverse(view), world), point);
}

describe('the matrix of a layer', () => {
  const points = [
    { x: 0, y: 0 },
    { x: 40, y: 25 },
    { x: -60, y: 10 },
  ];
  test.each(MOVING_CUTS)('%s: puts points where the export has them', (_, text) => {
    const solved = solvedOf(text);
    const cut = pictureOf(solved);
    let largest = 0;
    for (const { frame, layers } of cut.frames)
      for (const { level, matrix } of layers)
        for (const point of points) {
          const seen = seenBy(solved, cut.levels[level]!.name, frame, point);
          const ours = applied(matrix, point.x, point.y);
          largest = Math.max(largest, Math.hypot(seen.x - ours.x, seen.y - ours.y));
        }
    expect(cut.frames).toHaveLength(24);
    expect(largest).toBeLessThan(1e-9);
  });

  it('is that of the sheet at home where nothing moves', () => {
    const cut = cutOf('time 1+0\nstack BG A\nlevel A at 10,20\nA: 1..\n');
    expect(cut.frames[0]!.layers.map(({ matrix }) => matrix)).toEqual([
      [1, 0, 0, 1, 0, 0],
      [1, 0, 0, 1, 10, 20],
    ]);
  });
});

describe('the layers of a frame', () => {
  it('are those of the stack, bottom to top, with the numbers that the sheet says', () => {
    const solved = solvedOf('cut 1\ntime 1+0\nstack BG A B\nA: 1:12 2-3..\nB: x:6 (1--2--)..\n');
    const cut = pictureOf(solved);
    for (const { frame, layers } of cut.frames) {
      const said = solved.levels.flatMap(({ timed, exposures }, level) => {
        const shown = timed ? exposures[frame - 1]! : null;
        return shown?.kind === 'empty' ? [] : [{ level, number: shown?.cel ?? null }];
      });
      expect(layers.map(({ level, number }) => ({ level, number }))).toEqual(said);
    }
    expect(cut.frames[0]!.layers).toHaveLength(2);
    expect(cut.frames[6]!.layers).toHaveLength(3);
  });

  it('have the opacity of a double exposure, on its frames', () => {
    const cut = cutOf('time 1+0\nstack BG A\nA: 1..\nexpose A 0%>60% 1..13\n');
    const opacity = (frame: number) => cut.frames[frame - 1]!.layers[1]!.opacity;
    expect([opacity(1), opacity(7), opacity(13), opacity(14)]).toEqual([0, 0.3, 0.6, 1]);
    expect(cut.frames[0]!.layers[0]!.opacity).toBe(1);
  });

  it('glow while light shines through them', () => {
    const cut = cutOf('time 1+0\nstack BG A\nA: 1..\nglow A 5..8\n');
    expect(cut.frames.filter(({ layers }) => layers[1]!.glow).map(({ frame }) => frame)).toEqual([
      5, 6, 7, 8,
    ]);
    expect(cut.frames.some(({ layers }) => layers[0]!.glow)).toBe(false);
  });
});

describe('a mask', () => {
  it('says which levels it hides, on frames on which it has a drawing', () => {
    const cut = cutOf('time 1+0\nstack BG A B C\nlevel C masks A,B\nA: 1..\nB: 1..\nC: x:6 1:6 x..\n');
    const hides = cut.frames.map(({ layers }) => layers.flatMap((layer) => layer.hides ?? []));
    expect(hides[5]).toEqual([]);
    expect(hides[6]).toEqual([1, 2]);
    expect(hides[12]).toEqual([]);
    expect(cut.frames[6]!.layers.filter((layer) => layer.hides)).toMatchObject([{ level: 3, number: 1 }]);
  });
});

describe('the light of a frame', () => {
  const black = (body: string) => cutOf(`time 1+0\n${body}`).frames.map((frame) => frame.black);

  it('is faded before a fade in, and after a fade out', () => {
    expect(black('fade in 5..9\n').slice(3, 10)).toEqual([1, 1, 0.75, 0.5, 0.25, 0, 0]);
    expect(black('fade out 5..9\n').slice(3, 10)).toEqual([0, 0, 0.25, 0.5, 0.75, 1, 1]);
  });

  it('fades to white by itself', () => {
    const { frames } = cutOf('time 1+0\nfade out white 5..9\n');
    expect(frames[6]).toMatchObject({ black: 0, white: 0.5 });
  });

  it('is shared with the neighbour in a dissolve, over the handles too', () => {
    const cut = cutOf('time 1+0\nA: 1..\noverlap out 9\n');
    expect(cut.handles).toEqual({ head: 0, tail: 4 });
    expect(cut.frames).toHaveLength(28);
    expect(cut.frames.map(({ share }) => share).slice(18)).toEqual([
      1, 1, 0.875, 0.75, 0.625, 0.5, 0.375, 0.25, 0.125, 0,
    ]);
  });
});

describe('the opening of a frame', () => {
  const openings = (body: string) => cutOf(`time 1+0\n${body}`).frames.map(({ opening }) => opening);
  const sharesOf = (body: string) =>
    openings(body).map((opening) =>
      opening === null ? 1 : opening.form === 'edge' ? opening.share : Number.NaN,
    );

  it('grows behind the edge of a wipe, and is nothing before it', () => {
    expect(sharesOf('wipe in right 5..9\n').slice(2, 11)).toEqual([0, 0, 0, 0.25, 0.5, 0.75, 1, 1, 1]);
    expect(openings('wipe in right 5..9\n')[6]).toEqual({ form: 'edge', from: 'left', share: 0.5 });
    expect(openings('wipe in up 5..9\n')[6]).toMatchObject({ from: 'bottom' });
  });

  it('shrinks before the edge of a wipe out, and is nothing after it', () => {
    expect(sharesOf('wipe out right 5..9\n').slice(3, 11)).toEqual([1, 1, 0.75, 0.5, 0.25, 0, 0, 0]);
    expect(openings('wipe out right 5..9\n')[6]).toMatchObject({ from: 'right' });
    expect(openings('wipe out down 5..9\n')[6]).toMatchObject({ from: 'bottom' });
  });

  it('of an iris is a circle that ends as large as the farthest corner asks', () => {
    const { field, frames } = cutOf('time 1+0\niris in 1..9 at 40,-10\n');
    const radii = frames.map(({ opening }) => (opening?.form === 'circle' ? opening.radiusMm : null));
    // By Pythagoras: the corner at the upper left is the farthest.
    const corner = Math.sqrt((field.widthMm / 2 + 40) ** 2 + (field.heightMm / 2 + 10) ** 2);
    expect(radii[0]).toBe(0);
    expect(radii[4]).toBeCloseTo(corner / 2, 9);
    expect(radii.slice(8)).toEqual(new Array(16).fill(null));
  });

  it('is what the first one begins with before it, and what the last one leaves behind it', () => {
    expect(sharesOf('wipe in left 5..9\nwipe out left 15..19\n').map((share) => Math.sign(share))).toEqual([
      ...new Array(5).fill(0),
      ...new Array(13).fill(1),
      ...new Array(6).fill(0),
    ]);
  });
});

describe('the sheet of a level', () => {
  it('has the size that is said, else the paper of the episode for drawings, else what is seen', () => {
    const cut = cutOf(
      'time 1+0\nstack BG A B\nlevel B size 100x80mm\nA: 1..\nB: 1..\nfield F full at 50,0\npan full@1 > F@1+0\n',
    );
    expect(cut.levels.map(({ sheet }) => sheet)).toEqual([
      { xMm: 25, yMm: 0, widthMm: 304, heightMm: 142.875 },
      { xMm: 0, yMm: 0, widthMm: 297, heightMm: 210 },
      { xMm: 0, yMm: 0, widthMm: 100, heightMm: 80 },
    ]);
  });

  it('repeats along the axis of a loop', () => {
    const cut = cutOf('time 1+0\nstack BG A\nA: 1..\npull BG left 3mm/f 1..1+0 loop 300mm\n');
    expect(cut.levels[0]!.loop).toEqual({ lengthMm: 300, axis: 'x' });
  });
});

it('is plain data: JSON gives it back', () => {
  const cut = cutOf('time 1+0\nstack BG A\nA: 1..\nfade in 1..12\n');
  expect(JSON.parse(JSON.stringify(cut))).toEqual(cut);
});
