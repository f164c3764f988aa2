import { expect, test } from 'vitest';
import { actionOf, loadMessages, noteOf } from '../../../../src/language/message.js';

await loadMessages('ja');

test('a neighbour stands before or after', () => {
  const neighbour = { cut: '13', file: 'c013.cut' };
  expect(noteOf({ note: 'neighbour-stands', neighbour, way: 'in' }, 'ja')).toBe(
    'カット13はこのカットの前です',
  );
  expect(noteOf({ note: 'neighbour-stands', neighbour, way: 'out' }, 'ja')).toBe(
    'カット13はこのカットの次です',
  );
});

test('of several names the first is written', () => {
  expect(actionOf({ action: 'name-drawings', count: 1, name: '1>2.1' }, 'ja')).toBe('名前を `1>2.1` にする');
  expect(actionOf({ action: 'name-drawings', count: 3, name: '1>2.1' }, 'ja')).toBe(
    '名前を `1>2.1` … にする',
  );
});
