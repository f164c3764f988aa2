/**
 * Pages as a text of one mark a line, so that a change of a page reads as a change of lines. Coordinates are rounded to
 * 0.01 mm, finer than any printer; the ruled form stands as its digest.
 */

import { createHash } from 'node:crypto';
import type { Mark, Page } from '../../src/sheet/display-list.js';

const HEAD = 'page ';

export function dump(pages: readonly Page[]): string {
  return pages
    .map(({ marks, form, rows: _, ...head }) =>
      [
        HEAD + line({ ...head, form: form && { id: form.id, digest: digest(form.marks) } }),
        ...marks.map(line),
      ].join('\n'),
    )
    .join('\n')
    .concat('\n');
}

/**
 * The pages that a dump was made of, with the forms of `present` where their ids are the same: good enough to be looked
 * at. A form's old look is not kept.
 */
export function undump(text: string, present: readonly Page[]): Page[] {
  const pages: Page[] = [];
  for (const one of text.split('\n').filter(Boolean)) {
    if (!one.startsWith(HEAD)) {
      (pages.at(-1)!.marks as Mark[]).push(JSON.parse(one));
      continue;
    }
    const { form, ...head } = JSON.parse(one.slice(HEAD.length));
    const same = form ? (present.find((page) => page.form?.id === form.id)?.form ?? null) : null;
    pages.push({ ...head, form: same, marks: [], rows: [] });
  }
  return pages;
}

function digest(marks: readonly Mark[]): string {
  return createHash('sha256').update(marks.map(line).join('\n')).digest('hex').slice(0, 12);
}

/** JSON with numbers to two decimals; `-0` is 0. */
function line(value: unknown): string {
  return JSON.stringify(value, (_, one) => (typeof one === 'number' ? Math.round(one * 100) / 100 + 0 : one));
}
