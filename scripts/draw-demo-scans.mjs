/**
 * Draws the scans of the demo episode's cut 12 into examples/saltmarsh/scans/: a sea wall with steps and a lamp, gulls, a post in front. They are
 * made of lines by this script and nothing else. `node scripts/draw-demo-scans.mjs [FOLDER]` draws elsewhere.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { crc32 } from 'node:zlib';
import { createCanvas } from '@napi-rs/canvas';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const folder = resolve(process.argv[2] ?? join(root, 'examples/saltmarsh/scans'), '12');

const DPI = 75;
const SCALE = DPI / 25.4;

/** The same numbers each time: a pencil that shakes a little. */
function shaking(seed) {
  let state = seed;
  return (size) => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return (state / 2147483648 - 0.5) * size;
  };
}

/** A sheet in millimetres from its centre, y upwards; `draw` gets a pencil. */
function sheet(name, widthMm, heightMm, draw) {
  const canvas = createCanvas(Math.round(widthMm * SCALE), Math.round(heightMm * SCALE));
  const context = canvas.getContext('2d');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.setTransform(SCALE, 0, 0, -SCALE, canvas.width / 2, canvas.height / 2);
  context.lineCap = 'round';
  context.lineJoin = 'round';
  const shake = shaking(name.length * 7919 + name.charCodeAt(name.length - 1));
  const path = (points) => {
    context.beginPath();
    points.forEach(([x, y], i) => (i === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
  };
  draw({
    line(points, width = 0.7, colour = '#3a3a44') {
      context.strokeStyle = colour;
      context.lineWidth = width;
      path(points.map(([x, y]) => [x + shake(0.5), y + shake(0.5)]));
      context.stroke();
    },
    fill(points, colour) {
      context.fillStyle = colour;
      path(points);
      context.closePath();
      context.fill();
    },
    shake,
  });
  writeFileSync(join(folder, `${name}.png`), withDensity(canvas.toBuffer('image/png')));
}

/** With its pixels a metre, so that the size of the sheet is known. Source: ISO/IEC 15948, pHYs. */
function withDensity(png) {
  const body = Buffer.alloc(13);
  body.write('pHYs', 0, 'latin1');
  const perMetre = Math.round(SCALE * 1000);
  body.writeUInt32BE(perMetre, 4);
  body.writeUInt32BE(perMetre, 8);
  body.writeUInt8(1, 12);
  const chunk = Buffer.alloc(21);
  chunk.writeUInt32BE(9, 0);
  body.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(body), 17);
  return Buffer.concat([png.subarray(0, 33), chunk, png.subarray(33)]);
}

const along = (from, to, step, at) => {
  const points = [];
  for (let x = from; x <= to; x += step) points.push(at(x));
  return points;
};

mkdirSync(folder, { recursive: true });

sheet('BG', 420, 160, ({ line, fill }) => {
  fill([[-210, 80], [210, 80], [210, 10], [-210, 10]], '#e9eef2');
  fill([[-210, 10], [210, 10], [210, -12], [-210, -12]], '#d3dee2');
  // The wall rises from the steps on the left to the lamp on the right.
  const top = (x) => -12 + (x + 210) * 0.06;
  line([[-210, 10], [210, 10]], 0.6);
  for (const [y, from] of [[4, -205], [0, -150], [-5, -190]])
    line(along(from, 60, 12, (x) => [x, y + Math.sin(x / 9) * 0.8]), 0.35, '#7d8f96');
  fill([[-120, -80], [-120, top(-120)], [210, top(210)], [210, -80]], '#dcd7cd');
  line([[-120, -80], [-120, top(-120)], [210, top(210)]], 1.1);
  for (let row = 1; row < 6; row++) {
    line(along(-120, 210, 30, (x) => [x, top(x) - row * 12]), 0.4, '#8a857b');
    for (let x = -110 + (row % 2) * 14; x < 210; x += 28) line([[x, top(x) - row * 12], [x, top(x) - (row - 1) * 12]], 0.4, '#8a857b');
  }
  for (let step = 0; step < 6; step++)
    line([[-120 - step * 12, -18 - step * 10], [-132 - step * 12, -18 - step * 10], [-132 - step * 12, -28 - step * 10]], 0.9);
  // The lamp.
  line([[172, top(172)], [172, 58]], 1.6);
  line([[166, 58], [178, 58], [181, 70], [163, 70], [166, 58]], 1);
  line([[172, 70], [172, 75]], 1);
  line(along(-60, -20, 4, (x) => [x, 52 + Math.sin(x / 11) * 5]), 0.5, '#9aa7ad');
  line(along(60, 120, 4, (x) => [x, 60 + Math.sin(x / 14) * 4]), 0.5, '#9aa7ad');
});

/** Three gulls with their wings so far up (-1 … 1). */
const gulls = (name, wings) =>
  sheet(name, 297, 210, ({ line }) => {
    for (const [x, y, size] of [[-52, 34, 1], [-18, 48, 0.7], [-34, 20, 0.55]]) {
      const lift = wings * 9 * size;
      const wing = (side) => [
        [x, y],
        [x + side * 8 * size, y + lift * 0.8 + 2 * size],
        [x + side * 17 * size, y + lift],
        [x + side * 25 * size, y + lift * 0.6 - 2 * size],
      ];
      line(wing(-1), 1);
      line(wing(1), 1);
      line([[x - 3 * size, y], [x, y - 2.5 * size], [x + 5 * size, y - 1 * size], [x + 8 * size, y]], 0.9);
    }
  });
for (const [i, wings] of [1, 0.25, -0.8, 0.1].entries()) gulls(`A${i + 1}`, wings);

sheet('BOOK1', 297, 210, ({ line, shake }) => {
  for (const x of [98, 106]) line([[x, -105], [x + 1, -22]], 1.6, '#1d1d26');
  line([[98, -22], [103, -17], [107, -22]], 1.6, '#1d1d26');
  // Grass below it.
  for (let x = 70; x < 135; x += 3) line([[x, -105], [x + shake(6), -78 + shake(14)]], 0.7, '#1d1d26');
});
