import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('a cut of the list has errors, warnings, or both', () => {
  const of = (errors: number, warnings: number, timed = true) =>
    said('list-cut-errors', { cut: '8', errors, warnings, timed, file: 'c008.cut' });
  expect(of(1, 0)).toBe(
    'Cut 8 has 1 error, so its figures may change; `cutwright check c008.cut` says what is wrong.',
  );
  expect(of(2, 1)).toContain('Cut 8 has 2 errors and 1 warning, so');
  expect(of(0, 2)).toContain('Cut 8 has 2 warnings, so');
  expect(of(1, 0, false)).toContain('so not even its time is known;');
});

test('a budget is told in seconds and frames, and as least where cuts have no time', () => {
  const over = { running: 130, over: 1, budget: 129, fps: 24 };
  expect(said('list-over-budget', { ...over, untimed: 0 })).toBe(
    'The cuts run 5+10, which is 0+1 (1 frame) over the budget of 5+9.',
  );
  expect(said('list-over-budget', { ...over, untimed: 2 })).toMatch(/^The cuts run at least 5\+10,/);
});
