/** The page of the live view. It follows the watch, and exchanges only what has changed. */

import { exchangePage, fitsFilter, lightRows, Player } from './page-modules.js';

const $ = (id) => document.getElementById(id);
const JAPANESE = document.documentElement.lang === 'ja';
/** A text in the language of the page. */
const said = (english, japanese) => (JAPANESE ? japanese : english);
const TRUE_SIZE = 96 / 25.4;
const SCALES = [1.5, 2, 2.6, 3.2, TRUE_SIZE, 4.6, 5.6, 7, 9, 12];
/** Beyond this, px a mm, a sheet that fits the width is too large to be taken in. */
const LARGEST_FIT = 5.2;
const PARTS = {
  sheet: said('sheet', 'シート'),
  charts: said('in-between charts', '中割りチャート'),
  camera: said('camera chart', 'カメラ図'),
  table: said('move table', '移動表'),
  strip: said('scale strip', '目盛り 原寸'),
  overlay: said('field overlay', 'フレーム 原寸'),
};

/** The name that this page has at the server, so that it is sent what is new of the cut that it shows. */
const FOLLOWER = Math.random().toString(36).slice(2);

let cuts = [];
/** The cut that the address names; one that was cut off or typed by hand may name none. */
function named() {
  try {
    return decodeURIComponent(location.hash.slice(1)) || null;
  } catch {
    return null;
  }
}

function scaleOf(stored) {
  return stored === 'page' ? stored : Number(stored) || null;
}

let chosen = named();
let shown = null;
let lit = null;
/** px a mm; null: fits the width; `page`: fits a whole page. */
let scale = scaleOf(sessionStorage.getItem('scale'));
/** Where each cut was scrolled to, by its file: top and left. A reload begins there. */
const places = new Map(Object.entries(JSON.parse(sessionStorage.getItem('places') ?? '{}')));
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
  const fitting = cutsInList();
  const buttons = fitting.map((cut) => {
      const button = kept.get(cut.id) ?? made('button');
      button.setAttribute('aria-current', String(cut.id === chosen));
      // Of hundreds of cuts one was saved: the others are not laid out anew.
      if (button.dataset.version === String(cut.version)) return button;
      button.dataset.version = cut.version;
      button.type = 'button';
      button.dataset.id = cut.id;
      button.className = cut.state;
      button.title = [cut.file, cut.fault].filter(Boolean).join(': ');
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
  $('no-cut').hidden = fitting.length > 0 || cuts.length === 0;
  if (!cuts.some(({ id }) => id === chosen)) {
    chosen = null;
    if (cuts.length > 0) choose(cuts[0].id);
  }
}

/** Those that fit what is typed above the list. */
const cutsInList = () => cuts.filter((cut) => fitsFilter(cut, $('filter').value));

function remember() {
  const { scrollTop, scrollLeft } = $('desk');
  if (shown) places.set(shown.file, [scrollTop, scrollLeft]);
}

function choose(id) {
  remember();
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
  const all = cutsInList();
  const at = all.findIndex(({ id }) => id === chosen);
  const next = all[Math.max(0, Math.min(all.length - 1, at + by))];
  if (next && next.id !== chosen) choose(next.id);
}

// ---- the pages of the chosen cut

async function load() {
  const mine = ++asked;
  const id = chosen;
  const answer = await fetch(`cut/${id}?follower=${FOLLOWER}`).catch(() => null);
  if (!answer?.ok || mine !== asked) return;
  const cut = await answer.json();
  if (mine === asked) await show(cut, {});
}

/** `drawings`: the pages that came with it, by their keys; others are asked for. */
async function show(cut, drawings) {
  const mine = ++asked;
  const other = shown?.id !== cut.id;
  const before = shown;
  shown = cut;
  drawHead(cut);
  drawProblems(cut);
  player.setShown(cut.id);
  await drawPages(cut, drawings, other ? null : before, () => mine === asked);
  drawLit(false);
  player.setPages();
}

function drawHead(cut) {
  const name = [cutName(cut), cut.title].filter(Boolean).join('  ');
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

const cutName = (cut) => (cut.number ? said(`Cut ${cut.number}`, `カット${cut.number}`) : cut.file);

function say(text) {
  $('word').textContent = text;
  $('word').hidden = text === '';
}

async function drawPages(cut, drawings, before, current) {
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
    dress(figure, cut, i);
    if (figure.dataset.key === page.key) return;
    const drawing = drawings[page.key] ?? (await drawingOf(cut.id, page.key));
    if (drawing === null || !current()) return;
    exchangePage(figure.querySelector('.paper'), drawing);
    label(figure);
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
  if (!before) {
    // The sizes are known before the pages come: whoever scrolls meanwhile is not set back.
    const [top, left] = places.get(cut.file) ?? [0, 0];
    $('desk').scrollTo({ top, left, behavior: 'instant' });
    hideSource();
  }
  await Promise.all(loads);
  if (before && current()) restamp(before.stamp, cut.stamp);
  tellPage();
}

/** Null: it is gone again, and has been followed by a newer one. */
async function drawingOf(id, key) {
  const answer = await fetch(`page/${id}/${key}`).catch(() => null);
  return answer?.ok ? answer.text() : null;
}

/** The same page of a newer text: only what tells two copies apart differs. */
function restamp(before, now) {
  if (before === now || before === '') return;
  for (const text of document.querySelectorAll('#pages text')) if (text.textContent === before) text.textContent = now;
}

function newFigure() {
  const figure = made('figure');
  figure.append(made('div', 'paper'), made('figcaption'));
  // Reached by Tab; the arrows turn the pages.
  figure.tabIndex = 0;
  return figure;
}

function dress(figure, cut, i) {
  const page = cut.pages[i];
  figure.dataset.label = page.label;
  figure.dataset.part = page.part;
  figure.style.setProperty('--w', page.width);
  figure.style.setProperty('--h', page.height);
  figure.style.setProperty('page', paperName(page));
  figure.dataset.columns = JSON.stringify(page.columns);
  const number = page.label.split(' ').at(-1);
  const part = PARTS[page.part] ?? page.part;
  const caption = said(`${cutName(cut)}: ${part}, page ${number}`, `${cutName(cut)}：${part} ${number}枚目`);
  if (figure.lastElementChild.textContent !== caption) figure.lastElementChild.textContent = caption;
  const [at, all] = [i + 1, cut.pages.length];
  figure.setAttribute('aria-label', `${caption}${said(`; ${at} of ${all} pages`, `（全${all}枚の${at}）`)}`);
  label(figure);
}

/** To who cannot see it, a page is one picture with a name: its hundreds of marks say nothing one by one. */
function label(figure) {
  const svg = figure.querySelector('svg');
  svg?.setAttribute('role', 'img');
  svg?.setAttribute('aria-label', figure.getAttribute('aria-label'));
}

function flash(figure) {
  figure.classList.remove('fresh');
  requestAnimationFrame(() => figure.classList.add('fresh'));
}

// ---- size

/** What a page takes besides itself, px: at its sides, and above and below it with its caption. */
const BESIDE = 44;
const AROUND = 64;

function fit() {
  const { clientWidth, clientHeight } = $('desk');
  for (const figure of $('pages').children) {
    const [width, height] = ['--w', '--h'].map((name) => Number(figure.style.getPropertyValue(name)));
    const widest = (clientWidth - BESIDE) / width;
    const highest = (clientHeight - $('bar').offsetHeight - AROUND) / height;
    const fitting = scale === 'page' ? Math.min(widest, highest) : Math.max(0.6, Math.min(LARGEST_FIT, widest));
    figure.style.setProperty('--mm', typeof scale === 'number' ? scale : Math.max(0.2, fitting));
  }
  const first = Number($('pages').firstElementChild?.style.getPropertyValue('--mm') ?? TRUE_SIZE);
  $('scale').textContent = scale === null ? said('fit', '幅') : `${Math.round((first / TRUE_SIZE) * 100)} %`;
  $('whole').setAttribute('aria-pressed', String(scale === 'page'));
}

/** Fits a page to the window; from there back to true size. The page that is looked at stays. */
function fitPage() {
  const page = figures()[pageInSight()];
  rescale(scale === 'page' ? TRUE_SIZE : 'page');
  page?.scrollIntoView({ block: 'start' });
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
  if (document.activeElement?.matches('figure')) next?.focus({ preventScroll: true });
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

// ---- rows of what is edited, and from a row back to the text

async function light(at) {
  lit = at;
  const here = at.cuts.find(({ id }) => id === chosen) ?? at.cuts[0];
  if (here.id !== chosen) await choose(here.id);
  drawLit(true);
}

function drawLit(scroll) {
  const first = lightRows($('pages'), lit?.cuts.find(({ id }) => id === shown?.id) ?? null);
  if (!scroll || !first) return;
  const desk = $('desk').getBoundingClientRect();
  const { top, bottom } = first.getBoundingClientRect();
  if (top < desk.top + 60 || bottom > desk.bottom - 20) first.scrollIntoView({ block: 'center', inline: 'nearest' });
}

async function showSource(frame, level) {
  if (!shown) return;
  const asking = new URLSearchParams({ frame });
  if (level !== null) asking.set('level', level);
  const answer = await fetch(`source/${shown.id}?${asking}`).catch(() => null);
  if (!answer) return;
  const place = answer.ok ? await answer.json() : null;
  const source = $('source');
  source.hidden = false;
  source.dataset.place = place ? `${place.file}:${place.line}:${place.column}` : '';
  source.querySelector('.place').textContent = place ? source.dataset.place : said('Nothing in the text says what stands there', 'ここに当たるものはテキストにありません');
  const code = source.querySelector('code');
  code.replaceChildren();
  $('copy').hidden = place === null;
  $('copy').textContent = said('copy', 'コピー');
  if (!place) return;
  const [before, here, after] = cutAt(place.text, place.column - 1);
  code.append(before.trimStart(), made('mark', '', here), after);
}

/** A line in three: before a place, the word that begins there, and the rest. */
const cutAt = (text, at) => [text.slice(0, at), /^\S*/.exec(text.slice(at))[0], text.slice(at).replace(/^\S*/, '')];

function hideSource() {
  $('source').hidden = true;
}

/** By key: of the row at which the player stands, else of the first one that is lit. */
function sourceOfMarked() {
  const { frames, items } = lit?.cuts.find(({ id }) => id === shown?.id) ?? { frames: [], items: [] };
  const frame = player.row ?? frames[0]?.from;
  if (frame === undefined) return;
  const item = player.row === null ? items.find(({ from, to }) => from <= frame && frame <= to) : null;
  return showSource(frame, item?.level ?? null);
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
  f: fitPage,
  t: sourceOfMarked,
  '/': () => $('filter').focus(),
  '?': () => help(),
  Escape: () => {
    lit = null;
    drawLit(false);
    hideSource();
    player.letGo();
    help(true);
  },
};

function help(close = false) {
  $('help').hidden = close || !$('help').hidden;
  $('keys').setAttribute('aria-expanded', String(!$('help').hidden));
}

document.addEventListener('keydown', (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.target === $('filter')) return;
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
$('whole').onclick = fitPage;
$('keys').onclick = () => help();
$('copy').onclick = async () => {
  await navigator.clipboard.writeText($('source').dataset.place);
  $('copy').textContent = said('copied', 'コピーしました');
};
$('filter').addEventListener('input', drawList);
$('filter').addEventListener('keydown', ({ key, isComposing }) => {
  // An input method takes these keys for itself.
  if (isComposing || (key !== 'Escape' && key !== 'Enter')) return;
  const [first] = cutsInList();
  if (key === 'Escape') $('filter').value = '';
  else if (first && !cutsInList().some(({ id }) => id === chosen)) choose(first.id);
  drawList();
  $('desk').focus();
});
/** The feed breaks while a page is being left: that is not told, and moves nothing. */
let leaving = false;
for (const end of ['beforeunload', 'pagehide'])
  addEventListener(end, () => {
    leaving = true;
    remember();
    sessionStorage.setItem('places', JSON.stringify(Object.fromEntries(places)));
  });
$('desk').addEventListener('scroll', tellPage, { passive: true });
new ResizeObserver(fit).observe($('desk'));
$('desk').focus();
const player = new Player({ choose, pressed: showSource });

// ---- the watch

const events = new EventSource(`events?follower=${FOLLOWER}`);
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
  // Its pages are asked for first: they come while the list is drawn.
  if (cut.id === chosen) load();
  renewInList(cut);
});
events.addEventListener('shown', async ({ data }) => {
  const { drawings, ...cut } = JSON.parse(data);
  // Another one may have been chosen since.
  if (cut.id === chosen) await show(cut, drawings);
  renewInList({ ...cut, problems: cut.problems.length });
});

function renewInList(cut) {
  const at = cuts.findIndex(({ id }) => id === cut.id);
  if (at < 0) return;
  cuts[at] = cut;
  player.setList(cuts);
  drawList();
}

events.addEventListener('at', ({ data }) => light(JSON.parse(data)));
events.onerror = () => leaving || say(said(
    'The watch has ended; start it again, and open the address that it says',
    'watch が終わりました。もう一度始めて、表示されるアドレスを開いてください',
  ));
