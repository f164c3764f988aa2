import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { shown } from './shown.js';

describe('in-betweens', () => {
  test('a key that leads to several keys names the way', () => {
    expect(shown(14, '1-2 x 1-3:4').level.drawings.map((each) => each.drawing)).toEqual([
      '1',
      '1>2.1',
      '2',
      '1>3.1',
      '3',
    ]);
  });

  test('of a pair of keys with a second count have the count in their names', () => {
    const { level } = shown(16, '1--2 x:2 1-2');
    expect(level.drawings.map((each) => each.drawing)).toContain('1>2.1/1');
  });

  test('pinned with the second key lose it where their key leads to one only', () => {
    expect(shown(6, '1-2', 'cels A 1 1>2.1 2').runs).toBe('1*2 1.1*2 2*2');
  });
});

describe('references', () => {
  test('may stand before their passage', () => {
    expect(shown(10, '1.1 1-2..').runs).toBe('1.1*2 1*2 1.1*2 2*4');
  });

  test('need the other key where there are several', () => {
    expect(shown(18, '1-2 x 1-3 1>3.1..').codes).toEqual([]);
    expect(shown(18, '1-2 x 1-3 1.1..').codes).toEqual(['error reference-ambiguous']);
  });

  test('to what is not there are errors that say what there is', () => {
    const { codes, diagnostics } = shown(14, '1--2 1.3..');
    expect(codes).toEqual(['error reference-missing']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe(
      'Level A has no drawing 1.3: from key 1 to key 2 there are 2 in-betweens.',
    );
    expect(messageOf(shown(14, '1 2 1.1..').diagnostics[0]!, 'en')).toContain(
      'no in-between leads from key 1',
    );
  });
});

describe('a reference', () => {
  test('by its full name means the drawing whatever its key leads to', () => {
    expect(shown(8, '1-2 1>2.1..').runs).toBe('1*2 1.1*2 2*2 1.1*2');
  });

  test('that is ambiguous is mended by the first passage that is written', () => {
    const { diagnostics } = shown(18, '1-2 x 1-3 1.1..');
    expect(diagnostics[0]!.fix!.edits.map(({ text }) => text)).toEqual(['1>2.1']);
  });

  test('to the other count of a pair means the passage that is written first', () => {
    const { runs } = shown(22, '1--2 x:2 1-2 x:2 1>2.1:4');
    expect(runs.endsWith('x*2 1>2.1*4')).toBe(true);
  });
});
