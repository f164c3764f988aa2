import { describe, expect, test } from 'vitest';
import { bare, readOne, told } from '../read-text.js';

describe('levels', () => {
  test('parts in any order', () => {
    const expected = {
      size: { widthMm: 560, heightMm: 200 },
      at: { xMm: -130, yMm: 2.5 },
      reuse: { cut: '8', level: 'C' },
    };
    for (const text of [
      'size 560x200mm at -130,2.5 reuse 8/C free',
      'free reuse 8/C at -130mm,0.25cm size 56x20cm',
    ]) {
      const level = readOne('level', `level BG ${text}`);
      expect(bare(level)).toMatchObject(expected);
      expect(level.free).not.toBeNull();
      expect(level.carry).toBeNull();
    }
  });

  test('pinned numbers', () => {
    expect(bare(readOne('cels', 'cels A 1 1.1 1>3.2 2 1.1a 1.0a _ 8F').names)).toEqual([
      { form: 'key', name: '1' },
      { form: 'between', key: '1', to: null, index: 1, letter: '' },
      { form: 'between', key: '1', to: '3', index: 2, letter: '' },
      { form: 'key', name: '2' },
      { form: 'between', key: '1', to: null, index: 1, letter: 'a' },
      { form: 'between', key: '1', to: null, index: 0, letter: 'a' },
      { form: 'unused' },
      { form: 'key', name: '8F' },
    ]);
  });
});

test.each(['size', 'at', 'free', 'carry', 'flash', 'reuse'])(
  '%s said twice is reported, and the first holds',
  (part) => {
    const value = { size: '10x10mm', at: '1,2', reuse: '8/C' }[part] ?? '';
    const again = { size: '20x20mm', at: '3,4', reuse: '9/C' }[part] ?? '';
    const text = `level A ${part} ${value} ${part} ${again}`.replace(/ +/g, ' ').trim();
    expect(told(text)).toMatchObject([{ code: 'part-twice', at: `${part} ${again}`.trim() }]);
  },
);

test('a level may be named like one of its parts', () => {
  expect(readOne('level', 'level free free').level.text).toBe('free');
});
