import { expect, test } from 'vitest';
import { type CoverContent, captioned, inside } from '../../../src/sheet/cover/cover-boxes.js';
import { wordsOf } from '../../../src/words/words.js';
import { lookOf, solvedCut, textsOf } from '../laid.js';
import { CUT } from './covers.js';

const look = lookOf();
const content: CoverContent = {
  ...{ solved: solvedCut(CUT), look, words: wordsOf(look.settings), metrics: look.metrics },
  ...{ least: 2, scale: 1 },
};
const box = { x: 10, y: 20, width: 30, height: 12 };

test('a name stands in the corner, and what is under it is free', () => {
  const [name] = textsOf(captioned(content, box, 'scene'));
  const free = inside(content, box);
  expect([name!.text, name!.anchor, name!.x > box.x]).toEqual(['scene', 'start', true]);
  expect(name!.y).toBeLessThan(free.y + 0.1);
  expect(free.y + free.height).toBeLessThan(box.y + box.height);
});

test('a box without a name is only a frame; one without height is nothing', () => {
  expect(captioned(content, box, '')).toHaveLength(1);
  expect(captioned(content, { ...box, height: 0 }, 'remarks')).toEqual([]);
});

test('a box that is lower than its name leaves no room', () => {
  expect(inside(content, { ...box, height: 2 }).height).toBe(0);
});
