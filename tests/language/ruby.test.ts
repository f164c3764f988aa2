import { expect, test } from 'vitest';
import { withoutRuby } from '../../src/language/ruby.js';

test.each([
  ['海《うみ》へ行《い》く', '海へ行く'],
  ['あの｜お兄《にい》さん', 'あのお兄さん'],
  ['かな《だけ》', 'かな《だけ》'],
  ['no ruby', 'no ruby'],
])('%s is printed as %s', (typed, printed) => {
  expect(withoutRuby(typed)).toBe(printed);
});
