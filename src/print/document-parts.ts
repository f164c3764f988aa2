/** What a PDF file says of itself as a whole: its catalog, outline and information (ISO 32000-1, 7.7.2, 12.3.3, 14.3.3). */

import type { Bookmark } from '../sheet/display-list.js';
import { PRIVATE_KEY } from './info-dictionary.js';
import { type PdfObjects, pdfText } from './pdf-objects.js';

export interface DocumentParts {
  readonly title: string;
  readonly language: string;
  readonly author: string;
  readonly bookmarks: readonly Bookmark[];
  /** To be printed at 100 %. */
  readonly trueSize: boolean;
  readonly record?: string | undefined;
  /** The object of the page tree. */
  readonly tree: number;
  /** Its pages with their labels. */
  readonly pages: readonly { readonly id: number; readonly label: string }[];
}

/** Writes them; the numbers of the catalog and of the information. Throws RangeError where a bookmark leads to no page. */
export function documentParts(objects: PdfObjects, parts: DocumentParts): { root: number; info: number } {
  const { title, language, bookmarks, trueSize, tree, pages } = parts;
  const outlines = bookmarks.length > 0 ? objects.next() : null;
  if (outlines !== null) {
    const { first, last } = branch(objects, outlines, bookmarks, pages);
    objects.add(outlines, `<<\n/Type /Outlines\n/First ${first} 0 R\n/Last ${last} 0 R\n>>`);
  }
  const preferences = [
    ...(title === '' ? [] : ['/DisplayDocTitle true']),
    ...(trueSize ? ['/PrintScaling /None'] : []),
  ];
  const labels = pages.map(({ label }, i) => `${i} << /P ${pdfText(label)} >>`);
  const root = objects.next();
  objects.add(
    root,
    [
      '<<\n/Type /Catalog',
      `/Pages ${tree} 0 R`,
      `/Lang ${pdfText(language)}`,
      ...(preferences.length > 0 ? [`/ViewerPreferences << ${preferences.join(' ')} >>`] : []),
      `/PageLabels <<\n/Nums [${labels.join('\n')}]\n>>`,
      ...(outlines === null ? [] : [`/Outlines ${outlines} 0 R`, '/PageMode /UseOutlines']),
      '>>',
    ].join('\n'),
  );
  return { root, info: information(objects, parts) };
}

/** The branches of one parent, as a chain. */
function branch(
  objects: PdfObjects,
  parent: number,
  bookmarks: readonly Bookmark[],
  pages: DocumentParts['pages'],
): { first: number; last: number } {
  const ids = bookmarks.map(() => objects.next());
  for (const [i, { title, page, children }] of bookmarks.entries()) {
    const to = pages[page];
    if (!to) throw new RangeError(`the bookmark “${title}” leads to page ${page} of ${pages.length}`);
    const own = children.length > 0 ? branch(objects, ids[i]!, children, pages) : null;
    objects.add(
      ids[i]!,
      [
        `<<\n/Title ${pdfText(title)}`,
        `/Parent ${parent} 0 R`,
        ...(i > 0 ? [`/Prev ${ids[i - 1]} 0 R`] : []),
        ...(i < ids.length - 1 ? [`/Next ${ids[i + 1]} 0 R`] : []),
        ...(own ? [`/First ${own.first} 0 R`, `/Last ${own.last} 0 R`] : []),
        `/Dest [${to.id} 0 R /Fit]\n>>`,
      ].join('\n'),
    );
  }
  return { first: ids[0]!, last: ids.at(-1)! };
}

/** The private words are an object of their own, named first, as `privateWords` looks for them. */
function information(objects: PdfObjects, { title, author, record }: DocumentParts): number {
  const words = record === undefined ? null : objects.next();
  if (words !== null) objects.add(words, `(${record})`);
  const info = objects.next();
  objects.add(
    info,
    [
      '<<',
      ...(words === null ? [] : [`/${PRIVATE_KEY} ${words} 0 R`]),
      ...(title === '' ? [] : [`/Title ${pdfText(title)}`]),
      ...(author === '' ? [] : [`/Author ${pdfText(author)}`]),
      '/Creator (cutwright)',
      '/Producer (cutwright)',
      '>>',
    ].join('\n'),
  );
  return info;
}
