/** The page of the live view. It follows the watch, and exchanges only what has changed. */

import { Player } from './player.js';

const $ = (id) => document.getElementById(id);
const JAPANESE = document.documentElement.lang === 'ja';
/** A text in the language of the page. */
const said = (english, japanese) => (JAPANESE ? japanese : english);
const TRUE_SIZE = 96 / 25.4;
const SCALES = [1.5, 2, 2.6, 3.2, TRUE_SIZE, 4.6, 5.6, 7, 9, 12];
/** Beyond this, px a mm, a sheet that fits the width is too large to be taken in. */
const LARGEST_FIT = 5.2;
const PARTS = {
  sheet: said('Sheet', 'シート'),
  charts: said('In-between charts', '中割りチャート'),
  camera: said('Camera chart', 'カメラ図'),
  table: said('Move table', '移動表'),
  strip: said('Scale strip', '目盛り 原寸'),
  overlay: said('Field overlay', 'フレーム 原寸'),
};

let cuts = [];
/** The cut that the address names; one that was cut off or typed by hand may name none. */
function named() {
  try {
    return decodeURIComponent(location.hash.slice(1)) || null;
  } catch {
    return null;
  }
}

let chosen = named();
let shown = null;
let lit = null;
/** px a mm; null: fits the width. */
let scale = Number(sessionStorage.getItem('scale')) || null;
const places = new Map();
/** The load that counts: an answer to an earlier one comes too late. */
let asked = 0;

const made = (name, className, text) => {
  const element = document.createElement(name);
  if (className) element.className = className;
  if (text !== undefined) element.textContent = text;
  return element;
};

// ---- the list

function drawList() {
  const list = $('list');
  const kept = new Map([...list.children].map((one) => [one.dataset.id, one]));
  const buttons = cuts.map((cut) => {
      const button = kept.get(cut.id) ?? made('button');
      button.type = 'button';
      button.dataset.id = cut.id;
      button.className = cut.state;
      button.title = [cut.file, cut.fault].filter(Boolean).join(': ');
      button.setAttribute('aria-current', String(cut.id === chosen));
      const mark = cut.state === 'broken' ? '!' : cut.problems > 0 ? String(cut.problems) : '';
      button.replaceChildren(
        made('span', 'number', cut.number || '–'),
        made('span', 'name', cut.title || cut.file),
        made('span', 'mark', mark),
      );
      button.onclick = () => choose(cut.id);
      return button;
  });
  // Putting them in anew would take the focus away.
  if (buttons.length !== list.children.length || buttons.some((one, i) => one !== list.children[i]))
    list.replaceChildren(...buttons);
  if (!cuts.some(({ id }) => id === chosen)) {
    chosen = null;
    if (cuts.length > 0) choose(cuts[0].id);
  }
}

function choose(id) {
  if (shown) places.set(shown.id, $('desk').scrollTop);
  chosen = id;
  history.replaceState(null, '', `#${encodeURIComponent(id)}`);
  for (const button of $('list').children) {
    const current = button.dataset.id === id;
    button.setAttribute('aria-current', String(current));
    if (current) button.scrollIntoView({ block: 'nearest' });
  }
  return load();
}

function step(by) {
  const at = cuts.findIndex(({ id }) => id === chosen);
  const next = cuts[Math.max(0, Math.min(cuts.length - 1, at + by))];
  if (next && next.id !== chosen) choose(next.id);
}

// ---- the pages of the chosen cut

async function load() {
  const mine = ++asked;
  const id = chosen;
  const answer = await fetch(`cut/${id}`).catch(() => null);
  if (!answer?.ok || mine !== asked) return;
  const cut = await answer.json();
  if (mine !== asked) return;
  const other = shown?.id !== cut.id;
  const before = shown;
  shown = cut;
  drawHead(cut);
  drawProblems(cut);
  player.setShown(cut.id);
  await drawPages(cut, other ? null : before, () => mine === asked);
  if (other && mine === asked) $('desk').scrollTop = places.get(cut.id) ?? 0;
  drawLit(false);
  player.setPages();
}

function drawHead(cut) {
  const name = [cut.number ? said(`Cut ${cut.number}`, `カット${cut.number}`) : cut.file, cut.title].filter(Boolean).join('  ');
  document.title = `${name} · cutwright`;
  $('title').textContent = name;
  $('title').title = cut.file;
  const broken = cut.state === 'broken';
  const none = cut.pages.length === 0;
  $('desk').classList.toggle('stale', broken);
  const fault = cut.fault || said('Errors', '誤り');
  const pages = none
    ? said('no pages yet', 'まだページがありません')
    : said('these are the last good pages', '誤りのなかった時のページです');
  say(broken ? said(`${fault} in the text: ${pages}`, `テキストに${fault}：${pages}`) : '');
}

function say(text) {
  $('word').textContent = text;
  $('word').hidden = text === '';
}

async function drawPages(cut, before, current) {
  const pages = $('pages');
  const old = before ? [...pages.children] : [];
  const free = new Set(old);
  const take = (fits) => {
    const found = [...free].find(fits);
    if (found) free.delete(found);
    return found;
  };
  const same = cut.pages.map(({ key }) => take((one) => one.dataset.key === key));
  const figures = cut.pages.map(
    (page, i) => same[i] ?? take((one) => one.dataset.label === page.label) ?? newFigure(),
  );
  const loads = cut.pages.map(async (page, i) => {
    const figure = figures[i];
    dress(figure, page);
    if (figure.dataset.key === page.key) return;
    const answer = await fetch(`page/${cut.id}/${page.key}`).catch(() => null);
    // A page that is gone again has been followed by a newer one.
    if (!answer?.ok || !current()) return;
    const svg = new DOMParser().parseFromString(await answer.text(), 'image/svg+xml').documentElement;
    if (!current()) return;
    figure.querySelector('.paper').replaceChildren(document.importNode(svg, true));
    if (figure.dataset.key) flash(figure);
    figure.dataset.key = page.key;
  });
  if (!before) pages.replaceChildren(...figures);
  else {
    for (const figure of free) figure.remove();
    for (const [i, figure] of figures.entries())
      if (pages.children[i] !== figure) pages.insertBefore(figure, pages.children[i] ?? null);
  }
  fit();
  paper(cut.pages);
  await Promise.all(loads);
  if (before && current()) restamp(before.stamp, cut.stamp);
  tellPage();
}

/** The same page of a newer text: only what tells two copies apart differs. */
function restamp(before, now) {
  if (before === now || before === '') return;
  for (const text of document.querySelectorAll('#pages text')) if (text.textContent === before) text.textContent = now;
}

function newFigure() {
  const figure = made('figure');
  figure.append(made('div', 'paper'), made('figcaption'));
  return figure;
}

function dress(figure, page) {
  figure.dataset.label = page.label;
  figure.dataset.part = page.part;
  figure.style.setProperty('--w', page.width);
  figure.style.setProperty('--h', page.height);
  figure.style.setProperty('page', paperName(page));
  figure.querySelector('figcaption').textContent = `${PARTS[page.part] ?? page.part}${said(`, page ${page.label}`, ` ${page.label}枚目`)}`;
}

function flash(figure) {
  figure.classList.remove('fresh');
  requestAnimationFrame(() => figure.classList.add('fresh'));
}

// ---- size

function fit() {
  const room = $('desk').clientWidth - 44;
  for (const figure of $('pages').children) {
    const widest = room / Number(figure.style.getPropertyValue('--w'));
    figure.style.setProperty('--mm', scale ?? Math.max(0.6, Math.min(LARGEST_FIT, widest)));
  }
  $('scale').textContent = scale === null ? said('fit', '幅') : `${Math.round((scale / TRUE_SIZE) * 100)} %`;
}

/** Keeps what stands in the middle of the window where it is. */
function rescale(to) {
  const desk = $('desk');
  const middle = (desk.scrollTop + desk.clientHeight / 2) / desk.scrollHeight;
  scale = to;
  if (to === null) sessionStorage.removeItem('scale');
  else sessionStorage.setItem('scale', to);
  fit();
  desk.scrollTop = middle * desk.scrollHeight - desk.clientHeight / 2;
}

function zoom(by) {
  const now = Number(figures()[pageInSight()]?.style.getPropertyValue('--mm') ?? TRUE_SIZE);
  const next = by > 0 ? SCALES.find((one) => one > now + 0.01) : SCALES.findLast((one) => one < now - 0.01);
  if (next) rescale(next);
}

const sheet = new CSSStyleSheet();
document.adoptedStyleSheets = [sheet];
/** Each page is printed on paper of its own size: a browser shrinks what is wider than its paper, all pages alike. */
function paper(pages) {
  const sizes = new Map(pages.map((page) => [paperName(page), page]));
  const rules = [...sizes].map(
    ([name, { width, height }]) => `@page ${name} { size: ${width}mm ${height}mm; margin: 0 }`,
  );
  sheet.replaceSync(rules.join('\n'));
}

const paperName = ({ width, height }) => `paper-${width}-${height}`.replaceAll('.', '_');

// ---- page by page

const figures = () => [...$('pages').children];

function pageInSight() {
  const top = $('desk').getBoundingClientRect().top + $('bar').offsetHeight;
  const at = figures().findIndex((one) => one.getBoundingClientRect().bottom > top + 40);
  return Math.max(0, at);
}

function turn(by) {
  const all = figures();
  const next = all[Math.max(0, Math.min(all.length - 1, pageInSight() + by))];
  next?.scrollIntoView({ block: 'start' });
}

function tellPage() {
  const all = figures();
  $('where').textContent = all.length === 0 ? '' : said(`${pageInSight() + 1} of ${all.length}`, `${pageInSight() + 1}/${all.length}`);
}

// ---- problems

function drawProblems({ problems }) {
  const open = new Set([...$('problems').querySelectorAll('details[open]')].map((one) => one.dataset.key));
  $('problems').hidden = problems.length === 0;
  $('problems').replaceChildren(
    ...problems.map((problem) => {
      const { severity, message, file, line, column, notes, fix, excerpt, code } = problem;
      const details = made('details', severity);
      details.dataset.key = `${code} ${file} ${message}`;
      details.open = open.has(details.dataset.key);
      const summary = made('summary');
      summary.title = said('Show the line', '行を見せる');
      summary.append(
        made('span', 'place', line === null ? file : said(`${file}, line ${line}`, `${file} ${line}行`)),
        made('span', 'kind', said(severity, { error: '誤り', warning: '注意', hint: 'ヒント' }[severity])),
        ' ',
        ...words(message),
      );
      details.append(summary);
      if (excerpt.length > 0) {
        const pre = made('pre');
        for (const one of excerpt) {
          const here = one.line === line;
          const digits = String(one.line).padStart(4);
          pre.append(made('span', 'digits', `${digits}  `), made('span', here ? 'here' : '', one.text), '\n');
          if (here) pre.append(made('span', 'here', `${' '.repeat(digits.length + 1 + column)}^`), '\n');
        }
        details.append(pre);
      }
      for (const note of notes) details.append(paragraph('', note));
      if (fix) details.append(paragraph(said('Try: ', '直し方：'), fix));
      return details;
    }),
  );
}

/** What stands between backticks is of the text. */
function words(text) {
  return text.split('`').map((part, i) => (i % 2 === 1 ? made('code', '', part) : part));
}

function paragraph(before, text) {
  const p = made('p');
  p.append(before, ...words(text));
  return p;
}

// ---- rows of the line that is edited

async function light(at) {
  lit = at;
  const here = at.cuts.find(({ id }) => id === chosen) ?? at.cuts[0];
  if (here.id !== chosen) await choose(here.id);
  drawLit(true);
}

function drawLit(scroll) {
  for (const row of document.querySelectorAll('.row.lit')) row.classList.remove('lit');
  const frames = lit?.cuts.find(({ id }) => id === shown?.id)?.frames ?? [];
  let first = null;
  for (const row of document.querySelectorAll('.row')) {
    const frame = Number(row.dataset.frame);
    if (!frames.some(({ from, to }) => from <= frame && frame <= to)) continue;
    row.classList.add('lit');
    if (!first || frame < Number(first.dataset.frame)) first = row;
  }
  if (!scroll || !first) return;
  const desk = $('desk').getBoundingClientRect();
  const { top, bottom } = first.getBoundingClientRect();
  if (top < desk.top + 60 || bottom > desk.bottom - 20) first.scrollIntoView({ block: 'center', inline: 'nearest' });
}

// ---- the person

const KEYS = {
  n: () => step(1),
  p: () => step(-1),
  ArrowRight: () => turn(1),
  ArrowLeft: () => turn(-1),
  '+': () => zoom(1),
  '=': () => zoom(1),
  '-': () => zoom(-1),
  0: () => rescale(null),
  1: () => rescale(TRUE_SIZE),
  '?': () => help(),
  Escape: () => {
    lit = null;
    drawLit(false);
    player.letGo();
    help(true);
  },
};

function help(close = false) {
  $('help').hidden = close || !$('help').hidden;
  $('keys').setAttribute('aria-expanded', String(!$('help').hidden));
}

document.addEventListener('keydown', (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (player.key(event)) {
    event.preventDefault();
    return;
  }
  const act = KEYS[event.key];
  if (!act) return;
  event.preventDefault();
  act();
});
$('smaller').onclick = () => zoom(-1);
$('larger').onclick = () => zoom(1);
$('scale').onclick = () => rescale(null);
$('keys').onclick = () => help();
$('desk').addEventListener('scroll', tellPage, { passive: true });
new ResizeObserver(fit).observe($('desk'));
$('desk').focus();
const player = new Player({ choose });

// ---- the watch

const events = new EventSource('events');
events.addEventListener('cuts', ({ data }) => {
  cuts = JSON.parse(data);
  player.setList(cuts);
  drawList();
  const now = cuts.find(({ id }) => id === chosen);
  if (now && now.version !== shown?.version) load();
  else if (shown) drawHead(shown);
});
events.addEventListener('cut', ({ data }) => {
  const cut = JSON.parse(data);
  const at = cuts.findIndex(({ id }) => id === cut.id);
  if (at < 0) return;
  cuts[at] = cut;
  player.setList(cuts);
  drawList();
  if (cut.id === chosen) load();
});
events.addEventListener('at', ({ data }) => light(JSON.parse(data)));
events.onerror = () => say(said(
    'The watch has ended; start it again, and open the address that it says',
    'watch が終わりました。もう一度始めて、表示されるアドレスを開いてください',
  ));
