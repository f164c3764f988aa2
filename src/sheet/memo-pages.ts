/** The memo over the pages of a cut: told on the first page and its further sides, the other boxes left to the pencil. */

import { barMarks } from './change-bars.js';
import type { Mark, Page } from './display-list.js';
import { frame, pale } from './mark-builders.js';
import {
  changedHead,
  changedTexts,
  memoMarks,
  memoPointer,
  memoTexts,
  type Paragraph,
  stackMarks,
} from './memo-box.js';
import { pageFrame } from './page-frame.js';
import type { PageLook } from './page-look.js';
import { sideLabel } from './page-sides.js';
import { caption } from './ruled-form.js';
import { blockFramesOf, type PageSide } from './sheet-plan.js';

/** Everything that the memo has to tell, once the rows are drawn. */
function memoOf(firstPage: readonly PageSide[]): Paragraph[] {
  const { plan } = firstPage[0]!;
  return [...furtherSides(firstPage), ...changedTexts(plan), ...memoTexts(plan)];
}

/** The same where it does not fit: a long list of changes comes last, and what their bars mean is told before. */
function longMemoOf(firstPage: readonly PageSide[]): Paragraph[] {
  const { plan } = firstPage[0]!;
  return [...furtherSides(firstPage), ...changedHead(plan), ...memoTexts(plan), ...changedTexts(plan)];
}

/** Where the levels stand that are not on the first side. */
function furtherSides(firstPage: readonly PageSide[]): Paragraph[] {
  return firstPage.slice(1).map(({ levels, label, plan }) => {
    const names =
      levels.length > 1 ? `${levels[0]!.name}–${levels.at(-1)!.name}` : levels.map(({ name }) => name).join();
    return { text: plan.words.levelsOn(names, label) };
  });
}

/** The memo box of the first page, and the further sides that it takes. */
export function firstMemo(
  firstPage: readonly PageSide[],
  look: PageLook,
): { marks: Mark[]; further: Page[] } {
  const side = firstPage[0]!;
  const { plan, geometry } = side;
  const stack = stackMarks({ box: geometry.memo, geometry, plan });
  const place = { box: stack.left, geometry, plan };
  const whole = memoMarks(place, memoOf(firstPage));
  if (whole.rest.length === 0) return { marks: [...stack.marks, ...whole.marks], further: [] };
  let next = firstPage.length;
  // One line is kept free to say where it goes on.
  const onNext = plan.words.memoGoesOn(sideLabel(1, next));
  const shortened = { ...stack.left, height: stack.left.height - 2.2 * geometry.scale };
  const set = memoMarks({ ...place, box: shortened }, longMemoOf(firstPage));
  const pointer = memoPointer(stack.left, geometry, plan, onNext);
  const further: Page[] = [];
  let rest = set.rest;
  while (rest.length > 0) {
    const label = sideLabel(1, next++);
    const page = pageFrame(plan.solved.shot, look, label, side.pages);
    const more = memoMarks({ box: page.body, geometry, plan }, rest);
    further.push({
      widthMm: page.widthMm,
      heightMm: page.heightMm,
      label,
      part: 'sheet',
      form: page.form,
      marks: [
        frame(page.body, pale(0.36)),
        ...page.marks,
        ...more.marks,
        caption(page.body, plan.words.memo, geometry, plan.metrics),
      ],
      rows: [],
    });
    rest = more.rest;
  }
  return { marks: [...stack.marks, ...set.marks, pointer], further };
}

/** The memo box of the other pages is left to the pencil; it says where the words are, if there are any. */
export function laterMemo(side: PageSide, firstPage: readonly PageSide[]): Mark[] {
  const { plan, geometry } = side;
  const stack = stackMarks({ box: geometry.memo, geometry, plan });
  // That nothing moves, or what an ink means, is no reason to leaf back.
  const slight = [plan.camera.fixed, plan.words.spreadWords];
  if (memoOf(firstPage).every(({ text }) => slight.includes(text))) return stack.marks;
  const barred = blockFramesOf(side).some((run) => barMarks(side, run).length > 0);
  const legend = memoMarks({ box: stack.left, geometry, plan }, barred ? changedHead(plan) : []);
  return [
    ...stack.marks,
    ...legend.marks,
    memoPointer(stack.left, geometry, plan, plan.words.memoOn(sideLabel(1, 0))),
  ];
}
