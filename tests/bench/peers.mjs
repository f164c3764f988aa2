/**
 * The same finished pages written by others: as marks at their places in a general typesetter, and as plain calls of a library for PDF.
 * Both get what `printPdf` gets, laid out already, and write one file with the same font; all in processor time of this process.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import PDFDocument from 'pdfkit';
import { report } from './measure.mjs';

const FONTS = fileURLToPath(new URL('../../dist/font', import.meta.url));
const INKS = {
  black: '#000000',
  grey: '#4d4d4d',
  light: '#808080',
  form: '#9e856b',
  paper: '#ffffff',
  tint: '#e6e6e6',
};
const SHARES = { start: 0, middle: 0.5, end: 1 };

/** Seconds of a processor. */
async function processorSeconds(action) {
  const before = process.cpuUsage();
  await action();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

const marksOf = ({ form, marks }) => [...(form?.marks ?? []), ...marks];

/** The lines of a hatch, from edge to edge at 45°; nobody clips them, so they are as long as the rectangle is high. */
function* hatchLines({ x, y, width, height, gapMm }) {
  for (let at = 0; at < width; at += gapMm * Math.SQRT2) yield [x + at, y + height, x + at + height, y];
}

// ---- a typesetter

const PRELUDE = `#set page(margin: 0mm)
#set text(font: "Noto Sans JP", top-edge: "baseline", bottom-edge: "baseline")
#let s(w, c) = (thickness: w * 1mm, paint: rgb(c))
#let p(x, y, what) = place(top + left, dx: x * 1mm, dy: y * 1mm, what)
#let l(a, b, c, d, st) = place(top + left, line(start: (a * 1mm, b * 1mm), end: (c * 1mm, d * 1mm), stroke: st))
#let t(x, y, size, weight, c, body) = p(x, y, text(size: size * 1mm, weight: weight, fill: rgb(c), body))
`;

const number = (value) => String(Math.round(value * 1000) / 1000);

/** `width`: of a text in mm. */
function typstOf(mark, width) {
  const stroke = (one) => (one ? `s(${number(one.widthMm)}, "${INKS[one.ink]}")` : 'none');
  const fill = (ink) => (ink ? `rgb("${INKS[ink]}")` : 'none');
  const line = ([a, b, c, d], one) =>
    `#l(${number(a)}, ${number(b)}, ${number(c)}, ${number(d)}, ${stroke(one)})`;
  switch (mark.kind) {
    case 'line':
      return line([mark.x1, mark.y1, mark.x2, mark.y2], mark.stroke);
    case 'text': {
      if (mark.text === '') return '';
      const x = mark.x - width(mark.text, mark.sizeMm, mark.weight) * SHARES[mark.anchor];
      return `#t(${number(x)}, ${number(mark.y)}, ${number(mark.sizeMm)}, "${mark.weight}", "${INKS[mark.ink]}", ${JSON.stringify(mark.text)})`;
    }
    case 'circle':
      return `#p(${number(mark.x - mark.r)}, ${number(mark.y - mark.r)}, circle(radius: ${number(mark.r)} * 1mm, stroke: ${stroke(mark.stroke)}, fill: ${fill(mark.fill)}))`;
    case 'path': {
      const corners = mark.points.map(([x, y]) => `(${number(x)}mm, ${number(y)}mm)`).join(', ');
      return `#place(top + left, polygon(stroke: ${stroke(mark.stroke)}, fill: ${fill(mark.fill)}, ${corners}))`;
    }
    case 'curve': {
      const [a, b, c, d] = mark.points.map(([x, y]) => `(${number(x)}mm, ${number(y)}mm)`);
      return `#place(top + left, curve(stroke: ${stroke(mark.stroke)}, curve.move(${a}), curve.cubic(${b}, ${c}, ${d})))`;
    }
    case 'tint':
      return `#p(${number(mark.x)}, ${number(mark.y)}, rect(width: ${number(mark.width)} * 1mm, height: ${number(mark.height)} * 1mm, stroke: none, fill: ${fill('tint')}))`;
    case 'hatch':
      return [...hatchLines(mark)].map((ends) => line(ends, mark.stroke)).join('\n');
  }
}

/** Bytes of the file. */
function typeset(pages, width) {
  const folder = mkdtempSync(join(tmpdir(), 'cutwright-bench-'));
  try {
    const bodies = pages.map(
      (page) =>
        `#page(width: ${number(page.widthMm)}mm, height: ${number(page.heightMm)}mm)[\n${marksOf(page)
          .map((mark) => typstOf(mark, width))
          .join('\n')}\n]`,
    );
    writeFileSync(join(folder, 'main.typ'), PRELUDE + bodies.join('\n'));
    const compiler = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontPaths: [FONTS] }] });
    return compiler.pdf({ mainFilePath: join(folder, 'main.typ') }).length;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

// ---- a library for PDF

const POINTS = 72 / 25.4;

function drawWith(doc, mark, width) {
  const stroke = ({ ink, widthMm, dash }) => {
    doc.lineWidth(widthMm);
    if (dash) doc.dash(dash[0], { space: dash[1] });
    else doc.undash();
    doc.stroke(INKS[ink]);
  };
  const paint = (one, fill) => {
    if (one && fill) doc.lineWidth(one.widthMm).fillAndStroke(INKS[fill], INKS[one.ink]);
    else if (fill) doc.fill(INKS[fill]);
    else if (one) stroke(one);
  };
  switch (mark.kind) {
    case 'line':
      doc.moveTo(mark.x1, mark.y1).lineTo(mark.x2, mark.y2);
      stroke(mark.stroke);
      break;
    case 'text': {
      if (mark.text === '') break;
      const x = mark.x - width(mark.text, mark.sizeMm, mark.weight) * SHARES[mark.anchor];
      doc.font(mark.weight).fontSize(mark.sizeMm).fillColor(INKS[mark.ink]);
      doc.text(mark.text, x, mark.y, { lineBreak: false, baseline: 'alphabetic' });
      break;
    }
    case 'circle':
      doc.circle(mark.x, mark.y, mark.r);
      paint(mark.stroke, mark.fill);
      break;
    case 'path':
      mark.points.forEach(([x, y], i) => void (i === 0 ? doc.moveTo(x, y) : doc.lineTo(x, y)));
      if (mark.closed) doc.closePath();
      paint(mark.stroke, mark.fill);
      break;
    case 'curve': {
      const [a, b, c, d] = mark.points;
      doc.moveTo(...a).bezierCurveTo(...b, ...c, ...d);
      stroke(mark.stroke);
      break;
    }
    case 'tint':
      doc.rect(mark.x, mark.y, mark.width, mark.height).fill(INKS.tint);
      break;
    case 'hatch':
      for (const [a, b, c, d] of hatchLines(mark)) doc.moveTo(a, b).lineTo(c, d);
      stroke(mark.stroke);
  }
}

/** Bytes of the file. */
async function drawn(pages, width) {
  const doc = new PDFDocument({ autoFirstPage: false });
  for (const weight of ['Regular', 'Bold'])
    doc.registerFont(weight.toLowerCase(), join(FONTS, `NotoSansJP-${weight}.ttf`));
  let size = 0;
  const done = new Promise((resolve) => doc.on('end', resolve));
  doc.on('data', ({ length }) => {
    size += length;
  });
  for (const page of pages) {
    doc.addPage({ size: [page.widthMm * POINTS, page.heightMm * POINTS], margin: 0 });
    doc.scale(POINTS);
    for (const mark of marksOf(page)) drawWith(doc, mark, width);
  }
  doc.end();
  await done;
  return size;
}

/** `own`: gives the bytes of the file as we write it. */
export async function measurePeers({ pages, width, own }) {
  const writers = {
    'written by us': own,
    'as placed marks in a typesetter (Typst)': async () => typeset(pages, width),
    'as calls of a library for PDF (pdfkit)': () => drawn(pages, width),
  };
  for (const [name, write] of Object.entries(writers)) {
    let bytes = 0;
    const seconds = await processorSeconds(async () => {
      bytes = await write();
    });
    const rate = (pages.length / seconds).toFixed(0);
    const size = (bytes / 2 ** 20).toFixed(1);
    report(`${pages.length} pages ${name}`, `${rate} pages a second of a processor, ${size} MB`);
  }
}
