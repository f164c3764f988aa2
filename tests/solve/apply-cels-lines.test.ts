import { describe, expect, test } from 'vitest';
import { betweenText } from '../../src/solve/apply-cels-lines.js';
import { shown } from './shown.js';

describe('a cels line', () => {
  test('pins numbers; an in-between put in later is named by its place and numbered last', () => {
    const { cels, codes } = shown(10, '1---2', 'cels A 1 1.1 1.2 2 1.1a');
    expect(cels).toBe('1*2 2*2 5*2 3*2 4*2');
    expect(codes).toEqual([]);
  });

  test('gives the drawings of its passages their names on paper', () => {
    const { level, runs } = shown(14, '1---2 1.1a 1.2', 'cels A 1 1.1 1.2 2 1.1a');
    expect(level.passages[0]!.drawings).toEqual(['1.1', '1.1a', '1.2']);
    expect(runs).toBe('1*2 1.1*2 1.1a*2 1.2*2 2*2 1.1a*2 1.2*2');
  });

  test('a zeroth name lies before the first', () => {
    expect(shown(10, '1---2', 'cels A 1 1.1 1.2 2 1.0a').cels).toBe('1*2 5*2 2*2 3*2 4*2');
  });

  test('leaves numbers unused with _', () => {
    const { cels, level } = shown(6, '1-2', 'cels A 1 _ 1.1 2');
    expect(cels).toBe('1*2 3*2 4*2');
    expect(level.missing).toEqual([{ cel: 2, drawing: '' }]);
  });

  test('new drawings go on behind its highest number, also where numbers go by frame', () => {
    const lines = 'cels A 1 1.1 _ 2';
    expect(shown(12, '3 1-2 3..', lines).cels).toContain('5*2');
    expect(shown(10, '1-2-3', `${lines}\nnumbering frame`).cels).toBe('1*2 2*2 4*2 5*2 6*2');
  });

  test('what it names and no frame shows is missing', () => {
    const { level, codes } = shown(6, '1-2', 'cels A 1 1.1 2 3');
    expect(level.missing).toEqual([{ cel: 4, drawing: '3' }]);
    expect(codes).toEqual([]);
  });

  test('a passage that is pinned no longer stands in the timeline may still be shown by reference', () => {
    const { cels, codes } = shown(8, '1 1.2 1.1 2', 'cels A 1 1.1 1.2 2');
    expect([cels, codes]).toEqual(['1*2 3*2 2*2 4*2', []]);
  });

  test.each([
    ['more', '1---2..', 'cels A 1 1.1 1.2 2', ' 1.2a'],
    ['fewer', '1-2..', 'cels A 1 1.1 1.2 2', '_'],
  ])('%s in-betweens than names are an error with an edit', (_, items, line, edit) => {
    const { codes, diagnostics } = shown(24, items, line);
    expect(codes).toEqual(['error cels-count']);
    expect(diagnostics[0]!.fix!.edits.map((each) => each.text)).toEqual([edit]);
  });

  test('a name without its second key leads to the key behind it, where its key leads to several', () => {
    for (const line of ['cels A 1 1.1 1.2 2', 'cels A 1 1>2.1 1>2.2 2']) {
      const { cels, codes } = shown(18, '1--2 x:2 1-3..', line);
      expect([cels, codes]).toEqual(['1*2 2*2 3*2 4*2 x*2 1*2 5*2 6*4', []]);
    }
    expect(shown(18, '1-3 x:2 1-2..', 'cels A 1 1.1 2').cels).toBe('1*2 4*2 5*2 x*2 1*2 2*2 3*6');
  });

  test('where none of them stands behind it, that is an error', () => {
    const { codes, diagnostics } = shown(18, '1--2 x:2 1-3..', 'cels A 1 2 1.1 1.2');
    expect(codes).toContain('error cels-ambiguous');
    expect(diagnostics[0]!.fix!.edits.map(({ text }) => text)).toEqual(['1>2.1', '1>2.2']);
  });
});

describe('the name of an in-between', () => {
  test.each([
    [{ key: '1', to: null, index: 2, letter: '' }, '1.2'],
    [{ key: '3a', to: '4', index: 10, letter: '' }, '3a>4.10'],
    [{ key: '1', to: null, index: 0, letter: 'b' }, '1.0b'],
  ])('%o', (name, text) => {
    expect(betweenText(name)).toBe(text);
  });
});

describe('the edit for a passage that has grown', () => {
  const added = (items: string, line: string) => {
    const { diagnostics } = shown(96, items, line);
    return diagnostics.find(({ code }) => code === 'cels-count')!.fix?.edits.map(({ text }) => text);
  };

  test('goes on behind the letter of its last name', () => {
    expect(added('1----2..', 'cels A 1 1.1 1.2 2 1.2a')).toEqual([' 1.2b']);
  });

  test('has a name for each new in-between', () => {
    expect(added('1----2..', 'cels A 1 1.1 1.2 2')).toEqual([' 1.2a 1.2b']);
  });

  test('is none where there are no more than 26 letters', () => {
    expect(added(`1${'-'.repeat(27)}2..`, 'cels A 1 1.1 2')).toEqual([
      ` ${Array.from('abcdefghijklmnopqrstuvwxyz', (letter) => `1.1${letter}`).join(' ')}`,
    ]);
    expect(added(`1${'-'.repeat(28)}2..`, 'cels A 1 1.1 2')).toBeUndefined();
  });
});
