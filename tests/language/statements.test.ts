import { describe, expect, test } from 'vitest';
import { statementTable } from '../../src/language/statements/statement-table.js';
import { bare, readAll, readOne } from './read-text.js';

describe('splitting', () => {
  test('a statement goes on over indented lines, blank lines and comments', () => {
    const { tree } = readAll('A: 1\n  2\n\n# remark\n\t3\n\u3000\u30004\ncut 1');
    expect(tree.statements.map(({ kind }) => kind)).toEqual(['timeline', 'cut']);
    expect(bare(tree.statements[0])).toMatchObject({
      items: [{ name: '1' }, { name: '2' }, { name: '3' }, { name: '4' }],
    });
  });

  test('lines may end as on any machine', () => {
    for (const end of ['\n', '\r\n', '\r'])
      expect(readAll(`cut 1${end}time 5+0${end}`).tree.statements).toHaveLength(2);
  });

  test('an empty text is a tree with nothing in it', () => {
    for (const text of ['', '\n\n', '# only this', '\ufeff'])
      expect(readAll(text).tree.statements).toEqual([]);
  });
});

describe('every statement of the table', () => {
  test.each(statementTable)('$example', ({ example }) => {
    const { statements } = readAll(example).tree;
    expect(statements).toHaveLength(1);
    expect(example.slice(statements[0]!.span.start, statements[0]!.span.end)).toBe(example);
  });
});

describe('times', () => {
  const time = (text: string): unknown => bare(readOne('time', `time ${text}`).time);
  test.each([
    ['37', { kind: 'length', form: 'frames', frames: 37 }],
    ['5+12', { kind: 'length', form: 'seconds', seconds: 5, frames: 12 }],
    ['5+24', { kind: 'length', form: 'seconds', seconds: 5, frames: 24 }],
    ["8'04", { kind: 'length', form: 'feet', feet: 8, frames: 4 }],
    ['hit', { kind: 'length', form: 'mark', name: 'hit', offset: 0 }],
    ['hit+6', { kind: 'length', form: 'mark', name: 'hit', offset: 6 }],
    ['hit-3', { kind: 'length', form: 'mark', name: 'hit', offset: -3 }],
  ])('%s', (text, expected) => {
    expect(time(text)).toEqual(expected);
  });

  test('in a timeline a dash after a blank is an in-between, not part of the mark', () => {
    expect(bare(readOne('timeline', 'A: 1 @hit -3').items)).toMatchObject([
      { kind: 'key' },
      { kind: 'at', position: { name: 'hit', offset: 0 } },
      { kind: 'between' },
      { kind: 'key', name: '3' },
    ]);
    expect(bare(readOne('timeline', 'A: 1 @hit-3-4').items)).toMatchObject([
      { kind: 'key' },
      { kind: 'at', position: { name: 'hit', offset: -3 } },
      { kind: 'between' },
      { kind: 'key', name: '4' },
    ]);
  });

  test('ranges', () => {
    expect(bare(readOne('sound', 'sound hit-3..hit+6 "x"').range)).toEqual({
      from: { kind: 'position', form: 'mark', name: 'hit', offset: -3 },
      to: { kind: 'position', form: 'mark', name: 'hit', offset: 6 },
    });
    expect(readOne('music', 'music 1+1.. "x"').range.to).toBeNull();
  });

  test('an open range takes what may stand behind a range', () => {
    const open = { from: { kind: 'position', form: 'frames', frames: 1 }, to: null };
    expect(bare(readOne('pull', 'pull BG down 1mm/f 1.. ease 12'))).toMatchObject({
      range: open,
      spacing: [{ form: 'ease', leave: { value: 12 } }],
    });
    expect(bare(readOne('shake', 'shake 4mm 1.. on 2 sideways'))).toMatchObject({
      range: open,
      options: { on: { value: 2 }, sideways: true },
    });
    expect(bare(readOne('roll', 'roll A 5mm 1.. every 24'))).toMatchObject({
      range: open,
      parts: { every: { frames: 24 } },
    });
    expect(bare(readOne('fade', 'fade out 1.. white'))).toMatchObject({ range: open, white: true });
  });

  test('a mark may have the name of an option, right behind the dots', () => {
    const ends = { to: { kind: 'position', form: 'mark', name: 'ease' } };
    expect(bare(readOne('pull', 'pull BG down 1mm/f 1..ease ease 12'))).toMatchObject({
      range: ends,
      spacing: [{ form: 'ease' }],
    });
    expect(bare(readOne('fade', 'fade out 1.. dark'))).toMatchObject({
      range: { to: { name: 'dark' } },
      white: null,
    });
  });
});

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

  test('sizes are millimetres unless they say otherwise', () => {
    const size = (text: string): unknown => bare(readOne('level', `level A size ${text}`).size);
    expect(size('560x200')).toEqual({ widthMm: 560, heightMm: 200 });
    expect(size('10x5.625in')).toEqual({ widthMm: 254, heightMm: 142.875 });
    expect(size('56cmx200mm')).toEqual({ widthMm: 560, heightMm: 200 });
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

  test('cuts, scenes and takes have numbers with letters, or text', () => {
    expect(readOne('cut', 'cut 12A "Rooftop"').number.text).toBe('12A');
    expect(readOne('scene', 'scene B').value.text).toBe('B');
    expect(readOne('take', 'take "3 of 5"').value.text).toBe('3 of 5');
  });
});

describe('dialogue', () => {
  test('who speaks and how', () => {
    expect(readOne('voice', 'voice "Nao" 1..9 "a"').manner).toBe('on');
    expect(readOne('voice', 'voice "Nao" off 1..9 "a"').manner).toBe('off');
    expect(readOne('voice', 'voice "Nao" mono 1..9 "a"').manner).toBe('mono');
  });

  test('words tied to rows', () => {
    expect(bare(readOne('voice', 'voice "Nao" 1+6..2+20 "Wait" @1+14 "for" @40 "me!"').words)).toEqual([
      { text: 'Wait', at: null },
      { text: 'for', at: { kind: 'position', form: 'seconds', seconds: 1, frames: 14 } },
      { text: 'me!', at: { kind: 'position', form: 'frames', frames: 40 } },
    ]);
  });
});

test('a level may be called like a word of the language', () => {
  for (const name of ['note', 'time', 'voice', 'x', 'on', 'cut']) {
    expect(readOne('timeline', `${name} "title": 1--2`).level.text).toBe(name);
  }
  expect(bare(readOne('stack', 'stack note time BG').levels)).toEqual([
    { text: 'note' },
    { text: 'time' },
    { text: 'BG' },
  ]);
});
