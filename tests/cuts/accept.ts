/** What `npm run accept` leaves to be looked at: the old pages beside the new ones, as pictures where pdftoppm is there. */

import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Fonts } from '../../src/print/fonts.js';
import { printPdf } from '../../src/print/pdf.js';
import type { Page } from '../../src/sheet/display-list.js';
import { dump, undump } from './dump.js';

export interface Change {
  /** `japan/holds`. */
  readonly name: string;
  /** The dump that stood there, or null: a new cut. */
  readonly old: string | null;
  readonly pages: readonly Page[];
}

/** Writes `index.html` and its pictures into `folder`, which is emptied first. */
export async function review(folder: string, changes: readonly Change[], fonts: Fonts): Promise<void> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const parts: string[] = [];
  for (const { name, old, pages } of changes) {
    const flat = name.replaceAll('/', '-');
    const before = old === null ? [] : await pictures(folder, `${flat}-old`, undump(old, pages), fonts);
    const after = await pictures(folder, `${flat}-new`, pages, fonts);
    const rows = Array.from({ length: Math.max(before.length, after.length) }, (_, index) => {
      return `<tr>${cell(before[index])}${cell(after[index])}</tr>`;
    });
    parts.push(
      `<h2>${name}</h2><p>${said(old, pages)}</p><table><tr><th>old<th>new</tr>${rows.join('')}</table>`,
    );
  }
  const style =
    'body{font:15px sans-serif}td{vertical-align:top;padding:4px}img{max-width:46vw;border:1px solid #999}';
  writeFileSync(
    join(folder, 'index.html'),
    `<!doctype html><meta charset="utf-8"><title>Changed pages</title><style>${style}</style>
<h1>${changes.length} changed</h1>${parts.join('\n')}\n`,
  );
}

const cell = (picture: string | undefined): string =>
  `<td>${picture === undefined ? '–' : picture.endsWith('.pdf') ? `<a href="${picture}">${picture}</a>` : `<img src="${picture}" alt="${picture}">`}</td>`;

function said(old: string | null, pages: readonly Page[]): string {
  if (old === null) return 'New.';
  const before = old.split('\n');
  const after = dump(pages).split('\n');
  const gone = before.filter((one) => !after.includes(one));
  const come = after.filter((one) => !before.includes(one));
  const heads = come.filter((one) => one.startsWith('page ')).length;
  const form =
    heads > 0 ? ` ${heads} page heads changed; a changed form is shown as it is now on both sides.` : '';
  return `${gone.length} lines gone, ${come.length} come.${form}`;
}

/** Names of the pictures in `folder`, a page each; one PDF where no pictures can be made. */
async function pictures(
  folder: string,
  name: string,
  pages: readonly Page[],
  fonts: Fonts,
): Promise<string[]> {
  if (pages.length === 0) return [];
  const pdf = join(folder, `${name}.pdf`);
  writeFileSync(
    pdf,
    await printPdf({ title: name, language: 'en', author: '', pages, bookmarks: [], trueSize: false }, fonts),
  );
  try {
    execFileSync('pdftoppm', ['-r', '80', '-png', pdf, join(folder, name)]);
  } catch {
    return [`${name}.pdf`];
  }
  return readdirSync(folder)
    .filter((one) => one.startsWith(`${name}-`) && one.endsWith('.png'))
    .sort();
}
