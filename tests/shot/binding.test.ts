import { expect, test } from 'vitest';
import { levelOf, startDraft } from '../../src/shot/binding.js';
import { defaults } from '../../src/shot/settings.js';

const word = (text: string, start: number) => ({ text, span: { file: 'this.cut', start, end: start + 1 } });

test('a draft starts with what the episode says', () => {
  expect(startDraft({ ...defaults, fps: 25, on: 3, numbering: 'frame', overlap: 'full' })).toMatchObject({
    fps: 25,
    on: 3,
    numbering: 'frame',
    overlap: 'full',
    cut: null,
    time: null,
    handles: { head: 0, tail: 0 },
  });
});

test('a level is made where it is first named, and is one level from then on', () => {
  const draft = startDraft(defaults);
  const first = levelOf(draft, word('B', 3));
  levelOf(draft, word('A', 9));
  expect(levelOf(draft, word('B', 20))).toBe(first);
  expect(first.span.start).toBe(3);
  expect([...draft.levels.keys()]).toEqual(['B', 'A']);
});
