/** The cut list as one printed document: the list, then the picture of the whole episode. */

import type { CutList } from '../count/count-episode.js';
import { cutListPages } from '../sheet/cut-list/cut-list-pages.js';
import type { Bookmark, Document, Page } from '../sheet/display-list.js';
import type { PageLook } from '../sheet/page-look.js';
import { rhythmPage } from '../sheet/rhythm/rhythm-page.js';
import { wordsOf } from '../words/words.js';
import { workTitle } from './cut-document.js';
import { printableLine } from './printable-line.js';

/** `only`: one part of it. */
export function listDocument(counted: CutList, look: PageLook, only?: 'cuts' | 'rhythm'): Document {
  const list = printable(counted);
  const { settings } = look;
  const words = wordsOf(settings).cutList;
  const parts: readonly { title: string; pages: readonly Page[] }[] = [
    { title: words.list, pages: only === 'rhythm' ? [] : cutListPages(list, look) },
    { title: words.rhythm, pages: only === 'cuts' ? [] : [rhythmPage(list, look)] },
  ].filter(({ pages }) => pages.length > 0);
  const pages = parts.flatMap((part) => part.pages);
  const bookmarks = parts.map(({ title, pages: own }): Bookmark => {
    const first = pages.indexOf(own[0]!);
    const children =
      own.length > 1 ? own.map(({ label }, i) => ({ title: label, page: first + i, children: [] })) : [];
    return { title, page: first, children };
  });
  const title = [workTitle(settings), parts[0]!.title].filter(Boolean).join(' · ');
  return { title, author: '', language: settings.labels, pages, bookmarks, trueSize: false };
}

/** The list with nothing in its texts that the font lacks: a cut with such a character has an error, and is in the list all the same. */
function printable(list: CutList): CutList {
  return {
    ...list,
    title: printableLine(list.title),
    episode: printableLine(list.episode),
    rows: list.rows.map((row) => ({
      ...row,
      cut: printableLine(row.cut),
      title: printableLine(row.title),
      scene: printableLine(row.scene),
      artists: row.artists.map(printableLine),
    })),
    artists: list.artists.map((artist) => ({ ...artist, name: printableLine(artist.name) })),
  };
}
