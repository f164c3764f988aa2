// The search box of a page of the site. The index is a script beside it, not a file that is fetched, so that the site works from
// a folder, too (a browser fetches nothing from file:).

import MiniSearch from 'minisearch';
import { SEARCH } from './search-terms.js';

const root = document.documentElement.dataset.root;
const box = document.querySelector('input[type=search]');
const list = document.querySelector('#found');
let loading = null;

function index() {
  loading ??= new Promise((done, failed) => {
    const script = document.createElement('script');
    script.src = `${root}search-index.js`;
    script.onload = () => done(MiniSearch.loadJS(globalThis.SEARCH_INDEX, SEARCH));
    script.onerror = failed;
    document.head.append(script);
  });
  return loading;
}

box.addEventListener('focus', index);
box.addEventListener('input', async () => {
  const asked = box.value.trim();
  const search = await index();
  if (asked !== box.value.trim()) return;
  const found = search.search(asked, { prefix: true, boost: { title: 4 }, combineWith: 'AND' }).slice(0, 12);
  list.replaceChildren(
    ...found.map(({ id, title, page }) => {
      const [item, link, where] = ['li', 'a', 'small'].map((name) => document.createElement(name));
      link.href = root + id;
      link.textContent = title;
      where.textContent = page;
      item.append(link, where);
      return item;
    }),
  );
  list.hidden = found.length === 0;
});
