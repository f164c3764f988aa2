import { describe, expect, test } from 'vitest';
import { compareNaturally, filesOf, isPattern, leadsOut } from '../../src/episode/file-patterns.js';
import { memoryHost } from '../../src/host/memory-host.js';

const FILES = [
  'c1.cut',
  'c2.cut',
  'c10.cut',
  'c2.txt',
  'day/c3.cut',
  'day/late/c4.cut',
  '.hidden.cut',
  '.git/c5.cut',
  'node_modules/x/c6.cut',
];
const world = () => memoryHost(Object.fromEntries(FILES.map((name) => [name, ''])));
const files = (entry: string) => filesOf(world(), '/work', entry);

describe('a pattern', () => {
  test.each([
    ['*.cut', ['c1.cut', 'c2.cut', 'c10.cut']],
    ['c?.cut', ['c1.cut', 'c2.cut']],
    ['c*', ['c1.cut', 'c2.cut', 'c2.txt', 'c10.cut']],
    ['*/*.cut', ['day/c3.cut']],
    ['**/*.cut', ['c1.cut', 'c2.cut', 'c10.cut', 'day/c3.cut', 'day/late/c4.cut']],
    ['**/**/c4.cut*', ['day/late/c4.cut']],
    ['./day/**/*.cut', ['day/c3.cut', 'day/late/c4.cut']],
    ['day/../*1.cut', ['day/../c1.cut']],
    ['*.pdf', []],
    ['none/*.cut', []],
  ])('%s', (pattern, expected) => {
    expect(files(pattern)).toEqual(expected);
  });

  test('never finds hidden names, nor what lies in node_modules', () => {
    expect(files('**/*5.cut')).toEqual([]);
    expect(files('**/*6.cut')).toEqual([]);
    expect(files('*hidden*')).toEqual([]);
  });

  test('means letters by NFC, however they are typed', () => {
    const host = memoryHost({ 'caf\u00e9.cut': '' });
    expect(filesOf(host, '/work', 'cafe\u0301*')).toEqual(['caf\u00e9.cut']);
  });

  test('takes folders for files where the caller looks himself', () => {
    const host = memoryHost({ 'a.cut/x': '', 'b.cut': '' });
    expect(filesOf(host, '/work', '*.cut')).toEqual(['b.cut']);
    expect(filesOf(host, '/work', '*.cut', true)).toEqual(['a.cut', 'b.cut']);
  });

  test('says which folder it could not look into, and finds the rest', () => {
    const host = world();
    host.locked.add('/work/day');
    const refused: [string, string][] = [];
    const found = filesOf(host, '/work', '**/*.cut', false, (folder, reason) =>
      refused.push([folder, reason]),
    );
    expect(found).toEqual(['c1.cut', 'c2.cut', 'c10.cut']);
    expect(new Map(refused)).toEqual(new Map([['day', 'permission denied']]));
  });
});

test('what is no pattern is the file that it names, there or not', () => {
  expect(files('late.cut')).toEqual(['late.cut']);
  expect(['c1.cut', 'c*.cut', 'c?.cut'].map(isPattern)).toEqual([false, true, true]);
});

test.each([
  ['cuts/c1.cut', false],
  ['cuts/../c1.cut', false],
  ['./c1.cut', false],
  ['..cut', false],
  ['../c1.cut', true],
  ['cuts/../../c1.cut', true],
  ['cuts\\..\\..\\c1.cut', true],
  ['/cuts/c1.cut', true],
  ['\\cuts', true],
  ['C:cuts', true],
])('%s leads out of its folder: %s', (path, expected) => {
  expect(leadsOut(path)).toBe(expected);
});

test('numbers count as numbers: 2 before 10, 12A after 12', () => {
  const names = ['c10.cut', 'c2.cut', 'c12A.cut', 'c13.cut', 'c12.cut', 'c1.cut', 'c12B.cut'];
  expect(names.sort(compareNaturally)).toEqual([
    'c1.cut',
    'c2.cut',
    'c10.cut',
    'c12.cut',
    'c12A.cut',
    'c12B.cut',
    'c13.cut',
  ]);
});

test('leading zeros do not matter for the order, and equal numbers still have one', () => {
  expect(['c010', 'c9', 'c0009a'].sort(compareNaturally)).toEqual(['c9', 'c0009a', 'c010']);
  expect(['c01', 'c1'].sort(compareNaturally)).toEqual(['c1', 'c01'].sort(compareNaturally));
});

test('folders come in order of their numbers, before what their cuts are called', () => {
  expect(['s10/c1.cut', 's2/c9.cut', 's2/c10.cut'].sort(compareNaturally)).toEqual([
    's2/c9.cut',
    's2/c10.cut',
    's10/c1.cut',
  ]);
});

test('numbers beyond every integer are still compared right', () => {
  const [small, large] = ['c90071992547409931.cut', 'c90071992547409932.cut'];
  expect([large, small].sort(compareNaturally)).toEqual([small, large]);
});
