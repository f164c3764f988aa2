/**
 * The camera's solver alone, in frames a second: a ten-second cut with every kind of move on five levels, and one in which
 * nothing moves. Run by itself, or `measureCamera` from another bench.
 */

import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const LENGTH = 240;
const span = { file: 'bench.cut', start: 0, end: 0 };
const linear = { form: 'linear' };
const move = (kind, levels, legs, parameters = {}) => ({
  kind,
  target: { camera: levels.length === 0, levels },
  legs,
  on: 1,
  graduated: false,
  parameters,
  span,
});
const field = (name, widthMm, xMm, yMm, turnDeg = 0) => ({
  name,
  xMm,
  yMm,
  widthMm,
  turnDeg,
  notation: 'percent',
  span,
});
const leg = (from, start, to, end, spacing = linear) => ({ from, to, start, end, spacing, span });
const FULL = field('full', 254, 0, 0);

async function solver() {
  const { outputFiles } = await build({
    stdin: {
      contents:
        "export { solveCamera } from './src/solve/camera/solve-camera.ts'; export { defaults } from './src/shot/settings.ts';",
      resolveDir: root,
    },
    bundle: true,
    write: false,
    format: 'esm',
    target: 'node20',
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`);
}

function busy() {
  const A = field('A', 152.4, 40, 12, 5);
  const B = field('B', 203.2, -30, 0);
  const during = (from, to) => [leg(null, from - 1, null, to)];
  const [a, b] = ['ア', 'イ'].map((label, i) => ({ label, xMm: 120 * i, yMm: 4 * i }));
  return [
    move(
      'truck',
      [],
      [
        leg(FULL, 1, A, 96, { form: 'ease', leave: 6, arrive: 12 }),
        leg(A, 96, B, 200, { form: 'curve', x1: 0.42, y1: 0, x2: 0.58, y2: 1 }),
      ],
      { quick: false, ratios: true, carry: ['C'] },
    ),
    move('pull', ['BG'], during(1, LENGTH), {
      direction: { degrees: 0, word: 'right' },
      way: { distanceMm: 300, rateMm: null },
      loop: 420,
    }),
    move('slide', ['A', 'B'], [leg(a, 1, b, LENGTH)]),
    move('levelTruck', ['A'], [leg(1, 1, 1.4, 72)], { ratios: false, about: { xMm: 10, yMm: 20 } }),
    move('turn', ['B'], [leg(0, 1, 360, LENGTH)], {
      sense: { positive: 'cw', onward: true },
      about: { xMm: 0, yMm: 9 },
    }),
    move('sway', ['D'], during(1, LENGTH), { size: 5, period: 48, sideways: false }),
    move('shake', [], during(25, 48), { size: { fromMm: 4, toMm: 0 }, sideways: false }),
  ];
}

function scene(moves, settings) {
  const camera = { fields: [], rest: FULL, moves, light: [], flashing: [] };
  const levels = ['BG', 'A', 'B', 'C', 'D'].map((name) => ({
    name,
    span,
    homeMm: { xMm: 0, yMm: 0 },
    sizeMm: null,
    timed: name !== 'BG',
    free: false,
    carry: false,
    shown: () => true,
    appears: (frame) => frame === 1,
  }));
  return [camera, { length: LENGTH, fps: 24, levels, settings }];
}

/** Frames a second, of a cut with all moves and of one that stands still; each frame with its five levels. */
export async function measureCamera(milliseconds = 1500) {
  const { solveCamera, defaults } = await solver();
  const rate = (input) => {
    for (let i = 0; i < 20; i++) solveCamera(...input);
    const start = performance.now();
    let frames = 0;
    while (performance.now() - start < milliseconds) {
      solveCamera(...input);
      frames += LENGTH;
    }
    return Math.round((frames * 1000) / (performance.now() - start));
  };
  return { moving: rate(scene(busy(), defaults)), still: rate(scene([], defaults)) };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { moving, still } = await measureCamera();
  console.log(`camera, five levels, every kind of move  ${moving.toLocaleString('en')} frames a second`);
  console.log(`camera, five levels, nothing moves       ${still.toLocaleString('en')} frames a second`);
}
