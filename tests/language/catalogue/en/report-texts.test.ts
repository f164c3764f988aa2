import { expect, test } from 'vitest';
import { reportTexts } from '../../../../src/language/message.js';

test.each([
  [1, '1 more hint of c012.cut is not shown: mend the first 100 and look again'],
  [2, '2 more hints of c012.cut are not shown: mend the first 100 and look again'],
])('%i that were left out', (count, sentence) => {
  expect(reportTexts('en').leftOut({ file: 'c012.cut', severity: 'hint', count, most: 100 })).toBe(sentence);
});
