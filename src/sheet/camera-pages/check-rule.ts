/** The rule that shows whether a page was printed at its true size, and marks to cut and join by. */

import type { CameraPageWords } from '../../words/document-words.js';
import type { Mark } from '../display-list.js';
import { type Box, black, line, textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { smallestTextMm } from '../paper-sizes.js';
import { fitLine } from '../text-fitting.js';

export const RULE_MM = 100;
/** Height that the rule takes at the foot of the body. */
export const RULE_ROOM = 8;

/** At the bottom left of the body. */
export function checkRule(body: Box, look: PageLook, words: CameraPageWords): Mark[] {
  const x = body.x + 2;
  const y = body.y + body.height - 2;
  const marks: Mark[] = [line(x, y, x + RULE_MM, y, black(0.25))];
  for (let mm = 0; mm <= RULE_MM; mm += 10) {
    const high = mm % 50 === 0 ? 3.5 : 2;
    marks.push(line(x + mm, y, x + mm, y - high, black(0.15)));
  }
  const least = smallestTextMm(look.settings.paper);
  const room = body.x + body.width - x - RULE_MM - 4;
  const { sizeMm, squeeze } = fitLine(look.metrics, words.trueSize, room, {
    most: 2.8,
    least,
    weight: 'bold',
  });
  marks.push(
    textAt(x + RULE_MM + 3, y - 1.4, words.trueSize, { sizeMm, squeeze, weight: 'bold', anchor: 'start' }),
  );
  return marks;
}
