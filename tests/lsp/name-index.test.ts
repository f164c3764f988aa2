import { describe, expect, test } from 'vitest';
import { parse } from '../../src/language/parse.js';
import { nameAtOffset, nameIndexOf, spanTouches } from '../../src/lsp/name-index.js';

const indexOf = (text: string) => nameIndexOf(parse('c1.cut', text).tree, text);
/** `kind typed`, with a star where it defines the name. */
const names = (text: string) =>
  indexOf(text).names.map(
    ({ kind, span, defines }) => `${kind} ${text.slice(span.start, span.end)}${defines ? '*' : ''}`,
  );

describe('names', () => {
  test('are defined by timelines, levels, phrases, marks and fields', () => {
    expect(names('A: 1..\nlevel BG size 5x2mm\nphrase p = 1\nmark hit 1+0\nfield B full\n')).toEqual([
      'level A*',
      'level BG*',
      'phrase p*',
      'mark hit*',
      'field B*',
    ]);
  });

  test('are meant by stacks, numbers, moves and holds of the camera', () => {
    expect(names('stack BG A\ncels A 1 2\nfix B\npan full@1 > B@24 carry A\n')).toEqual([
      'level BG',
      'level A',
      'level A',
      'field B',
      'field full',
      'field B',
      'level A',
    ]);
  });

  test('of fields are defined by graduations that lead to them', () => {
    expect(names('pan full@1 > B right steps 1 2 > C@9\n')).toEqual(['field full', 'field B*', 'field C']);
  });

  test('of phrases and marks inside a timeline are the name alone', () => {
    expect(names('A: walk*2 (1 run..) @hit+6 1..\n')).toEqual([
      'level A*',
      'phrase walk',
      'phrase run',
      'mark hit',
    ]);
  });

  test('stand in the order of the text', () => {
    const all = indexOf('fix B\nA: walk 1 @hit 2..\nfield B full\n').names.map(({ span }) => span.start);
    expect(all).toEqual([...all].sort((a, b) => a - b));
  });
});

describe('a level of another cut', () => {
  const parts = (text: string) =>
    indexOf(text).reuses.map(({ cut, level, cutSpan, levelSpan }) => [
      cut,
      level,
      text.slice(cutSpan.start, cutSpan.end),
      text.slice(levelSpan.start, levelSpan.end),
    ]);

  test('has a place for the cut and one for the level', () => {
    expect(parts('level A reuse 8/C\n')).toEqual([['8', 'C', '8', 'C']]);
  });

  test('may be typed with blanks, and in full width', () => {
    expect(parts('level A reuse 8 / C\n')).toEqual([['8', 'C', '8', 'C']]);
    expect(parts('level A reuse ８／Ｃ\n')).toEqual([['8', 'C', '８', 'Ｃ']]);
  });
});

test('every time that is written is found, also inside a timeline', () => {
  const text = 'time 1+0\nA: 1:12 @hit 2..\nnote 1+6 "now"\n';
  expect(indexOf(text).times.map(({ span }) => text.slice(span.start, span.end))).toEqual([
    '1+0',
    '12',
    'hit',
    '1+6',
  ]);
});

test('a cursor touches a name from before its first to behind its last letter', () => {
  const span = { file: 'c1.cut', start: 3, end: 7 };
  expect([2, 3, 7, 8].map((offset) => spanTouches(span, offset))).toEqual([false, true, true, false]);
  const text = 'A: walk 1..\n';
  const at = (offset: number) => nameAtOffset(indexOf(text), offset)?.name ?? null;
  expect([2, 3, 7, 8].map(at)).toEqual([null, 'walk', 'walk', null]);
});
