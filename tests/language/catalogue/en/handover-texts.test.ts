import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('a dissolve that only one of two cuts names', () => {
  expect(said('edit-dissolve', { variant: 'uneven', before: '7', out: 24, after: '8', into: null })).toBe(
    'Cut 7 has `overlap out 24`, but cut 8, which follows, has no `overlap in`.',
  );
  expect(said('edit-dissolve', { variant: 'uneven', before: '7', out: null, after: '8', into: 12 })).toBe(
    'Cut 7 has no `overlap out`, but cut 8, which follows, has `overlap in 12`.',
  );
});

test('a picture is too tall or too flat for the field', () => {
  const shape = (by: number) =>
    said('pixels-shape', {
      cut: '8',
      field: { widthMm: 254, heightMm: 140 },
      output: { width: 1920, height: 1080 },
      by,
    });
  expect(shape(21.6)).toContain('22 pixels too tall for it');
  expect(shape(-3)).toContain('3 pixels too flat for it');
});
