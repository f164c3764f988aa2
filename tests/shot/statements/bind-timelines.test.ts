import { describe, expect, test } from 'vitest';
import { withLines } from '../bind.js';

describe('a phrase', () => {
  test('are checked even where nothing plays them', () => {
    expect(withLines('phrase walk = 1:0 2').codes).toEqual(['error length-zero', 'hint phrase-unused']);
  });

  test('that nothing plays is a hint', () => {
    expect(withLines('phrase walk = 1--2--').codes).toEqual(['hint phrase-unused']);
    expect(withLines('phrase walk = 1--2--', 'B: walk..').codes).toEqual([]);
  });

  test('that only another phrase plays counts as played, in whatever order they stand', () => {
    const [both, walk] = ['phrase both = walk walk', 'phrase walk = 1--2--'];
    expect(withLines(both, walk).codes).toEqual(['hint phrase-unused']);
    expect(withLines(walk, both).codes).toEqual(['hint phrase-unused']);
  });
});

describe('a timeline', () => {
  test('gives its level a title and items', () => {
    const { shot } = withLines('B "scarf": x:24 1..');
    expect(shot!.levels.find(({ name }) => name === 'B')).toMatchObject({
      title: 'scarf',
      timeline: {
        whole: true,
        items: [
          { kind: 'empty', frames: 24 },
          { kind: 'key', open: true },
        ],
      },
    });
  });

  test('is exposed as the cut says', () => {
    const { shot } = withLines('on 3', 'B: 1 2..');
    expect(shot!.levels.find(({ name }) => name === 'B')!.timeline!.items).toMatchObject([
      { frames: 3 },
      { frames: 3 },
    ]);
  });
});
