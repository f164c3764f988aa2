import { expect, test } from 'vitest';
import { randomOf, TEXT_KINDS, textOf } from './texts.js';
import { throughAll } from './ways.js';

test('the same seed gives the same texts, another one others', () => {
  const texts = (seed: number) => {
    const random = randomOf(seed);
    return Array.from({ length: 20 }, (_, i) => textOf(random, TEXT_KINDS[i % TEXT_KINDS.length]!));
  };
  expect(texts(3)).toEqual(texts(3));
  expect(texts(3)).not.toEqual(texts(4));
});

test.each(TEXT_KINDS)('texts of the kind %s go through check, format, export and comparison', (kind) => {
  const random = randomOf(20);
  for (let i = 0; i < 60; i++) {
    const text = textOf(random, kind);
    expect(() => throughAll(text), JSON.stringify(text)).not.toThrow();
  }
});
