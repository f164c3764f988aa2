import { describe, expect, test } from 'vitest';
import { bare, readAll, readOne } from '../read-text.js';

const items = (text: string): unknown => bare(readOne('timeline', `A: ${text}`).items);
const one = (text: string): unknown => (items(text) as unknown[])[0];
const frames = (count: number): unknown => ({ form: 'frames', frames: count });

describe('keys', () => {
  test.each(['3', '3a', '12', '8F', '2N', '3A', '4あ'])('%s', (name) => {
    expect(one(name)).toMatchObject({ kind: 'key', name, length: null, chart: null });
  });

  test('leading zeros do not make another drawing', () => {
    expect(one('03')).toMatchObject({ name: '3' });
  });

  test('length', () => {
    expect(one('3:8')).toMatchObject({ length: frames(8) });
    expect(one('3:1+0')).toMatchObject({ length: { form: 'seconds', seconds: 1, frames: 0 } });
    expect(one("3:1'00")).toMatchObject({ length: { form: 'feet', feet: 1, frames: 0 } });
  });

  test('a chart stands before or after the length', () => {
    const expected = { kind: 'key', chart: { form: 'named', name: 'late' }, length: frames(12) };
    expect(one('1{late}:12--2')).toMatchObject(expected);
    expect(one('1:12{late}--2')).toMatchObject(expected);
    expect(one('1{late}--2')).toMatchObject({ ...expected, length: null });
  });

  test('a chart of fractions', () => {
    expect(one('1{1/4 0.5 7/8}---2')).toMatchObject({
      chart: { form: 'fractions', fractions: [{ value: 0.25 }, { value: 0.5 }, { value: 0.875 }] },
    });
  });

  test('a hold', () => {
    const [key] = readOne('timeline', 'A: 6..').items;
    expect(key).toMatchObject({ kind: 'key', open: { start: 4, end: 6 } });
  });
});

test('in-betweens and breakdowns', () => {
  expect(items('1-=-:3 2')).toMatchObject([
    { kind: 'key' },
    { kind: 'between', breakdown: false, length: null },
    { kind: 'between', breakdown: true },
    { kind: 'between', breakdown: false, length: frames(3) },
    { kind: 'key', name: '2' },
  ]);
});

test('in-betweens shown again on their own', () => {
  expect(one('1.2:4')).toMatchObject({
    kind: 'reference',
    key: '1',
    to: null,
    index: 2,
    letter: '',
    length: frames(4),
  });
  expect(one('1>3.2..')).toMatchObject({ kind: 'reference', key: '1', to: '3', index: 2, open: {} });
  expect(one('1.1a')).toMatchObject({ kind: 'reference', key: '1', index: 1, letter: 'a' });
  expect(one('3a>4.10')).toMatchObject({ kind: 'reference', key: '3a', to: '4', index: 10 });
  expect(one('3a.1')).toMatchObject({ kind: 'reference', key: '3a', to: null, index: 1 });
});

test('empty level', () => {
  expect(one('x:24')).toMatchObject({ kind: 'empty', length: frames(24) });
  expect(items('1x..')).toMatchObject([{ kind: 'key' }, { kind: 'empty', open: {} }]);
});

test('exposure and places', () => {
  expect(items('1 on 3 2 @2+0 3')).toMatchObject([
    { kind: 'key' },
    { kind: 'on', frames: 3 },
    { kind: 'key' },
    { kind: 'at', position: { form: 'seconds', seconds: 2, frames: 0 } },
    { kind: 'key' },
  ]);
});

describe('groups and phrases', () => {
  test.each([
    ['', { bounce: false, repeat: { form: 'once' } }],
    ['*3', { bounce: false, repeat: { form: 'times', times: 3 } }],
    [':3+0', { bounce: false, repeat: { form: 'length', length: { seconds: 3, frames: 0 } } }],
    ['..', { bounce: false, repeat: { form: 'open' } }],
    ['<>', { bounce: true, repeat: { form: 'once' } }],
    ['<>*3', { bounce: true, repeat: { form: 'times', times: 3 } }],
    ['<>..', { bounce: true, repeat: { form: 'open' } }],
    ['<>:12', { bounce: true, repeat: { form: 'length', length: frames(12) } }],
  ])('followed by "%s"', (suffix, expected) => {
    expect(one(`(1--2)${suffix}`)).toMatchObject({ kind: 'group', items: [{}, {}, {}, {}], ...expected });
    expect(one(`walk${suffix}`)).toMatchObject({ kind: 'phrase', name: 'walk', ...expected });
  });

  test('groups stand in groups', () => {
    expect(one('((1-)*2 2)..')).toMatchObject({
      items: [{ kind: 'group', items: [{}, {}] }, { kind: 'key' }],
    });
  });

  test('a phrase has a name and drawings', () => {
    const phrase = readOne('phrase', 'phrase 歩き = 1--2--');
    expect(phrase.name.text).toBe('歩き');
    expect(phrase.items).toHaveLength(6);
  });

  test('a phrase may be called like a word of the language', () => {
    expect(items('note time*2')).toMatchObject([
      { kind: 'phrase', name: 'note' },
      { kind: 'phrase', name: 'time' },
    ]);
  });
});

test('every item knows its place', () => {
  const text = 'A "Nao": 1:12{late} -- 2.. @5+0 (4-5-)<>*3 walk:8 1>3.2:4 x on 3';
  const places = readOne('timeline', text).items.map(({ span }) => text.slice(span.start, span.end));
  expect(places).toEqual([
    '1:12{late}',
    '-',
    '-',
    '2..',
    '@5+0',
    '(4-5-)<>*3',
    'walk:8',
    '1>3.2:4',
    'x',
    'on 3',
  ]);
});

test('a timeline of a hundred thousand items is read', () => {
  const [timeline] = readAll(`A: ${'1-'.repeat(50_000)}`).tree.statements;
  expect(timeline).toMatchObject({ kind: 'timeline', items: { length: 100_000 } });
});
