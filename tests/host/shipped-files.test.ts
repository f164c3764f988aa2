import { expect, test } from 'vitest';
import { shippedFont, shippedPage } from '../../src/host/shipped-files.js';

test.each(['regular', 'bold'] as const)(
  'the %s weight comes from its package beside the sources',
  (weight) => {
    const font = shippedFont(weight);
    expect(font.ok && Buffer.from(font.value.subarray(0, 4)).toString('hex')).toBe('00010000');
  },
);

test('only a bundle has the part that the build makes', () => {
  expect(shippedFont('latin')).toMatchObject({ ok: false });
});

test('the page of the live view lies beside the sources of its server', () => {
  const page = shippedPage('live.html');
  expect(page.ok && Buffer.from(page.value).toString()).toContain('<!doctype html>');
});
