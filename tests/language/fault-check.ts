/** A fault, its place and its edit, for the tests of faults. */

import { expect } from 'vitest';
import { type Told, told } from './read-text.js';

/** What is typed, the code, what is underlined, and the text after the offered edit (null: none is offered). */
export type Case = readonly [typed: string, code: string, at: string, mended: string | null];

export const only = (text: string): Told => {
  const all = told(text);
  expect(all.map(({ code }) => code)).toHaveLength(1);
  return all[0]!;
};

export const check = ([typed, code, at, mended]: Case): void => {
  const { message, ...rest } = only(typed);
  expect(rest).toEqual({ code, at, mended });
  expect(message).toMatch(/^[^\n]+[.?]$/);
  if (mended !== null) expect(told(mended)).toEqual([]);
};
