/** The pages of a cut in a tab of the editor: shows what the extension sends, and tells it which row was clicked. */

const vscode = acquireVsCodeApi();
const pages = document.getElementById('pages');
const word = document.getElementById('word');
/** By page: the columns of its levels. */
let columns = [];
let lit = [];

addEventListener('message', ({ data }) => {
  if (data.fonts) void load(data.fonts);
  if (data.cut) show(data.cut);
  if (data.lit) light(data.lit);
});

async function load(fonts) {
  for (const [weight, base64] of Object.entries(fonts)) {
    if (!base64) continue;
    const bytes = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
    const face = new FontFace('sheet', bytes, { weight: weight === 'bold' ? '700' : '400' });
    document.fonts.add(await face.load());
  }
}

/** Only pages that differ are exchanged, so that the place that is looked at stays. */
function show(cut) {
  columns = cut.pages.map((page) => page.columns);
  cut.pages.forEach((page, i) => {
    const box = pages.children[i] ?? pages.appendChild(document.createElement('figure'));
    if (box.source === page.svg) return;
    box.source = page.svg;
    box.dataset.page = String(i);
    box.style.aspectRatio = `${page.width} / ${page.height}`;
    const drawn = new DOMParser().parseFromString(page.svg, 'image/svg+xml').documentElement;
    box.replaceChildren(document.importNode(drawn, true));
  });
  while (pages.children.length > cut.pages.length) pages.lastElementChild.remove();
  document.body.classList.toggle('stale', cut.broken);
  word.textContent = !cut.broken
    ? ''
    : cut.pages.length > 0
      ? 'The text has errors: these are its last good pages.'
      : 'The text has errors: there are no pages yet.';
  light(lit);
}

function light(rows) {
  lit = rows;
  for (const bar of pages.querySelectorAll('.lit')) bar.remove();
  let first = null;
  for (const box of pages.children) {
    const svg = box.firstElementChild;
    for (const row of svg.querySelectorAll('.row')) {
      const frame = Number(row.dataset.frame);
      const found = rows.filter(({ from, to }) => from <= frame && frame <= to);
      if (found.length === 0) continue;
      const [x, width] = [Number(row.getAttribute('x')), Number(row.getAttribute('width'))];
      const own = columns[Number(box.dataset.page)].filter(
        (column) => column.x >= x && column.x < x + width && found.some(({ level }) => level === column.level),
      );
      const whole = found.some(({ level }) => level === null) || own.length === 0;
      for (const place of whole ? [{ x, width }] : own) {
        const bar = row.cloneNode();
        bar.setAttribute('class', 'lit');
        bar.setAttribute('x', place.x);
        bar.setAttribute('width', place.width);
        bar.setAttribute('fill', '#2f7fd6');
        bar.setAttribute('fill-opacity', '0.25');
        row.before(bar);
        first ??= row;
      }
    }
  }
  const seen = first?.getBoundingClientRect();
  if (seen && (seen.top < 0 || seen.bottom > innerHeight)) first.scrollIntoView({ block: 'center' });
}

pages.addEventListener('click', (event) => {
  const row = event.target.closest?.('.row');
  if (!row) return;
  const svg = row.ownerSVGElement;
  const x = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse()).x;
  const column = columns[Number(svg.parentElement.dataset.page)].find(
    (one) => one.x <= x && x < one.x + one.width,
  );
  vscode.postMessage({ frame: Number(row.dataset.frame), level: column?.level ?? null });
});

vscode.postMessage({ ready: true });
