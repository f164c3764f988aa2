/** The cut list as one printed document: the list, then the picture of the whole episode. */

import type { CutList } from '../count/list.js';
import { cutListPages } from '../sheet/cut-list/pages.js';
import { listWords } from '../sheet/cut-list/words.js';
import type { Look } from '../sheet/look.js';
import type { Bookmark, Document, Page } from '../sheet/marks.js';
import { rhythmPage } from '../sheet/rhythm/page.js';
import { workTitle } from './document.js';

/** `only`: one part of it. */
export function listDocument(list: CutList, look: Look, only?: 'cuts' | 'rhythm'): Document {
  const { settings } = look;
  const words = listWords(settings.labels);
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
