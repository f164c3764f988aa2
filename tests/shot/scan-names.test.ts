import { describe, expect, it, test } from 'vitest';
import { scanName, unknownPart } from '../../src/shot/scan-names.js';

const wanted = { cut: '12A', level: 'B', number: 7 };

describe('the name of a scan', () => {
  test.each([
    ['scans/{cut}/{level}{number}.png', 'scans/12A/B7.png'],
    ['{level}/{number:4}.png', 'B/0007.png'],
    ['c{cut:3}_{level}.png', 'c012A_B.png'],
    ['{level}-{level}.png', 'B-B.png'],
    ['bg012.png', 'bg012.png'],
  ])('%s is %s', (name, file) => {
    expect(scanName(name, wanted)).toBe(file);
  });

  it('has nothing in the place of a number that there is not', () => {
    expect(scanName('{cut}/{level}{number:4}.png', { cut: '3', level: 'BG', number: null })).toBe('3/BG.png');
  });

  it('takes what stands in a name as it is, whatever signs it has', () => {
    expect(scanName('{level}{number}.png', { cut: '1', level: '$&', number: 1 })).toBe('$&1.png');
  });
});

test.each([
  ['{nummer}', '{nummer}'],
  ['a{number:44}.png', '{number:44}'],
  ['a{number:}.png', '{number:}'],
  ['{cut', '{'],
  ['cut}', '}'],
  ['{}', '{}'],
  ['{Cut}', '{Cut}'],
])('%s has %s, which means nothing', (name, part) => {
  expect(unknownPart(name)).toBe(part);
});

test('a name without braces, or with known ones, has none', () => {
  expect(unknownPart('a.png')).toBeNull();
  expect(unknownPart('{cut:3}/{level}{number}.png')).toBeNull();
});
