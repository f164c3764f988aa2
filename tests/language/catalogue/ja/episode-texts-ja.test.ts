import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('a neighbour is called by its number, or by its file', () => {
  const lengths = { there: 12, here: 24 };
  expect(said('overlap-differs', { ...lengths, neighbour: { cut: '13', file: 'c013.cut' } })).toBe(
    'この O.L は24コマですが、カット13では12コマです。',
  );
  expect(said('overlap-differs', { ...lengths, neighbour: { cut: '', file: 'c013.cut' } })).toContain(
    '`c013.cut`では',
  );
});

test('a dissolve names the side that lacks it', () => {
  expect(said('overlap-alone', { way: 'in' })).toMatch(/最初のカット.*前のカット/);
  expect(said('overlap-alone', { way: 'out' })).toMatch(/最後のカット.*次のカット/);
  expect(said('edit-overlap', { variant: 'uneven', before: '1', out: 24, after: '2', into: null })).toBe(
    'カット1は`overlap out 24`、次のカット2は`overlap in` なしで、合いません。',
  );
});

test('errors and warnings of a listed cut are counted apart', () => {
  const cut = { cut: '4', file: 'c004.cut', errors: 2, warnings: 1 };
  expect(said('list-cut-errors', { ...cut, timed: true })).toMatch(
    /^カット4に誤りが2件、注意が1件あります。数字は/,
  );
  expect(said('list-cut-errors', { ...cut, warnings: 0, timed: false })).toMatch(
    /^カット4に誤りが2件あります。尺も/,
  );
});

test('why a scan cannot be read is said in Japanese', () => {
  const scan = { file: 'A1.png', level: 'A', others: 0 };
  const said1 = (reason: Parameters<typeof said<'scan-unreadable'>>[1]['reason'], others = 0) =>
    said('scan-unreadable', { ...scan, reason, others });
  expect(said1({ why: 'format' })).toBe('`A1.png` が出せません：PNG、JPEG、WebP のどれでもありません。');
  expect(said1({ why: 'machine', reason: 'permission denied' }, 3)).toBe(
    '`A1.png` が出せません：権限がありません。セルAには、ほかにも3枚あります。',
  );
  expect(said1({ why: 'size', width: 9, height: 8, most: 7, mostMillions: 100 })).toContain(
    '全体で1億ピクセルまで',
  );
});
