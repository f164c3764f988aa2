/** The progress of an episode as one printed document. */

import type { ProgressTable } from '../count/count-stages.js';
import type { Document } from '../sheet/display-list.js';
import type { PageLook } from '../sheet/page-look.js';
import { progressPages } from '../sheet/progress/progress-pages.js';
import { wordsOf } from '../words/words.js';
import { workTitle } from './cut-document.js';
import { printableLine } from './printable-line.js';

export function progressDocument(table: ProgressTable, look: PageLook): Document {
  const { settings } = look;
  const pages = progressPages(printable(table), look);
  const { name } = wordsOf(settings).progress;
  const children = pages.map(({ label }, page) => ({ title: label, page, children: [] }));
  return {
    title: [workTitle(settings), name, table.date].filter(Boolean).join(' · '),
    author: '',
    language: settings.labels,
    pages,
    bookmarks: [{ title: name, page: 0, children: pages.length > 1 ? children : [] }],
    trueSize: false,
  };
}

/** With nothing in its texts that the font lacks: a spreadsheet may hold any character. */
function printable(table: ProgressTable): ProgressTable {
  const clean = printableLine;
  return {
    ...table,
    cuts: table.cuts.map((cut) => ({
      ...cut,
      cut: clean(cut.cut),
      title: clean(cut.title),
      stages: cut.stages.map((one) => ({
        ...one,
        row: one.row && { ...one.row, person: clean(one.row.person) },
      })),
    })),
    people: table.people.map((one) => ({
      ...one,
      person: clean(one.person),
      pay: one.pay.map((sum) => ({ ...sum, currency: clean(sum.currency) })),
    })),
    pay: table.pay.map((sum) => ({ ...sum, currency: clean(sum.currency) })),
    rates: new Map(
      [...table.rates].map(([stage, rate]) => [stage, { ...rate, currency: clean(rate.currency) }]),
    ),
  };
}
