/**
 * `npm run site`: the pages of grammar/ and the README as a site that needs no server, with a search in it, in out/site (or the folder
 * that is named). The pages are written for the repository and stay as they are: links between them become links between pages of
 * the site, and links to other files of the repository their names. markdown-it makes the HTML, MiniSearch the index.
 */

import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import markdown from 'markdown-it';
import MiniSearch from 'minisearch';
import { SEARCH } from './search-terms.js';

const here = dirname(fileURLToPath(import.meta.url));
const repository = join(here, '../..');
const into = process.argv[2] ?? join(repository, 'out/site');

const md = markdown({ html: true, linkify: false });
const files = [
  'README.md',
  ...readdirSync(join(repository, 'grammar'), { recursive: true, encoding: 'utf8' })
    .map((name) => posix.join('grammar', name.replaceAll('\\', '/')))
    .filter((name) => name.endsWith('.md')),
];

/** `grammar/README.md` → `grammar/index.html`. */
const target = (file) => file.replace(/README\.md$/, 'index.html').replace(/\.md$/, '.html');

/** As the repository's pages show it: small letters, blanks as hyphens, other signs left out. */
const anchor = (heading) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');

const escaped = (text) => text.replace(/[&<>"]/g, (sign) => `&#${sign.codePointAt(0)};`);

/** The text of inline tokens, without its signs. */
const plain = (tokens) =>
  tokens.map((token) => (token.children ? plain(token.children) : token.type === 'softbreak' ? ' ' : token.content)).join('');

/** The page with its anchors and links, and its sections for the search. */
function read(file) {
  const tokens = md.parse(readFileSync(join(repository, file), 'utf8'), {});
  const sections = [];
  const used = new Map();
  const ends = (token) => {
    for (const child of token.children ?? []) {
      const href = child.attrGet('href');
      if (href && !/^[a-z]+:|^#/.test(href)) {
        const [path, hash] = href.split('#');
        const to = posix.join(posix.dirname(file), path);
        const page = files.includes(to) ? target(path) : null;
        if (page === null) Object.assign(child, { type: 'text', content: '', nesting: 0, dead: true });
        else child.attrSet('href', hash ? `${page}#${hash}` : page);
      }
    }
    // The ends of links that lead out of the site.
    let dead = 0;
    for (const child of token.children ?? []) {
      if (child.dead) dead++;
      else if (child.type === 'link_close' && dead > 0) {
        dead--;
        Object.assign(child, { type: 'text', content: '' });
      }
    }
  };
  tokens.forEach((token, i) => {
    if (token.type === 'heading_open') {
      const title = plain([tokens[i + 1]]);
      const name = anchor(title);
      const times = used.get(name) ?? 0;
      used.set(name, times + 1);
      const id = times === 0 ? name : `${name}-${times}`;
      token.attrSet('id', id);
      sections.push({ id: token.tag === 'h1' ? target(file) : `${target(file)}#${id}`, title, text: '' });
    }
    if (token.type === 'inline') ends(token);
    const section = sections.at(-1);
    if (section && (token.type === 'inline' || token.type === 'fence' || token.type === 'code_block'))
      section.text += ` ${token.type === 'inline' ? plain([token]) : token.content}`;
  });
  const title = sections[0].title;
  return { file, title, html: md.renderer.render(tokens, md.options, {}), sections: sections.map((one) => ({ ...one, page: title })) };
}

const pages = files.map(read);

/** The pages in the order of the table of grammar/README.md, then the statements. */
const order = [...readFileSync(join(repository, 'grammar/README.md'), 'utf8').matchAll(/^\| \[[^\]]+\]\(([\w-]+\.md)\)/gm)].map(
  ([, name]) => `grammar/${name}`,
);

function navigation(file, root) {
  const link = ({ file: to, title }) =>
    `<li><a href="${root}${target(to)}"${to === file ? ' aria-current="page"' : ''}>${escaped(title)}</a></li>`;
  const part = (title, names) =>
    `<h2>${title}</h2><ul>${names.map((name) => link(pages.find((page) => page.file === name))).join('')}</ul>`;
  return [
    part('Start', ['README.md', 'grammar/README.md']),
    part('Subjects', order),
    part('Statements', files.filter((name) => name.startsWith('grammar/statements/')).sort()),
  ].join('');
}

rmSync(into, { recursive: true, force: true });
for (const { file, title, html } of pages) {
  const root = '../'.repeat(file.split('/').length - 1);
  const path = join(into, target(file));
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(
    path,
    `<!doctype html>
<html lang="en" data-root="${root}">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title>
<link rel="stylesheet" href="${root}site.css">
<div class="page">
<nav><input type="search" placeholder="Search" aria-label="Search"><ul id="found" hidden></ul>${navigation(file, root)}</nav>
<main>
${html}</main>
</div>
<script src="${root}search.js"></script>
</html>
`,
  );
}
for (const name of readdirSync(join(repository, 'grammar/pictures'), { recursive: true, encoding: 'utf8' })) {
  if (!/\.(svg|png)$/.test(name)) continue;
  const to = join(into, 'grammar/pictures', name);
  mkdirSync(dirname(to), { recursive: true });
  copyFileSync(join(repository, 'grammar/pictures', name), to);
}
copyFileSync(join(here, 'site.css'), join(into, 'site.css'));
const search = new MiniSearch(SEARCH);
search.addAll(pages.flatMap(({ sections }) => sections));
writeFileSync(join(into, 'search-index.js'), `globalThis.SEARCH_INDEX=${JSON.stringify(search)};\n`);
buildSync({
  entryPoints: [join(here, 'search-page.js')],
  outfile: join(into, 'search.js'),
  bundle: true,
  minify: true,
  format: 'iife',
});
process.stdout.write(`wrote ${pages.length} pages into ${into}\n`);
