import { describe, expect, test } from 'vitest';
import { piecesOf } from '../../../src/language/format/format-pieces.js';

const pieces = (text: string) =>
  piecesOf('this.cut', text).map((piece) =>
    piece.kind === 'statement'
      ? {
          words: piece.tokens.map(({ text: one }) => one).join(' '),
          segments: piece.segments.map(({ from, to, comment, between }) => [
            from,
            to,
            comment,
            between.map(({ text: one }) => one),
          ]),
        }
      : piece,
  );

describe('a text', () => {
  test('is statements and the lines between them', () => {
    expect(pieces('cut 1\n\n# night\ntime 5+0\n')).toEqual([
      { words: 'cut 1', segments: [[0, 2, null, []]] },
      { kind: 'line', text: '', indented: false },
      { kind: 'line', text: '# night', indented: false },
      { words: 'time 5+0', segments: [[0, 2, null, []]] },
    ]);
  });

  test('has runs of blank lines as one', () => {
    expect(pieces('cut 1\n\n \n\t\ntime 1').filter((piece) => 'kind' in piece)).toEqual([
      { kind: 'line', text: '', indented: false },
    ]);
  });

  test('knows a comment behind blanks', () => {
    expect(pieces('  # a\n# b')).toEqual([
      { kind: 'line', text: '# a', indented: true },
      { kind: 'line', text: '# b', indented: false },
    ]);
  });

  test('keeps what cannot be read to the end of its line', () => {
    expect(pieces('cut ? # x\ntime 1')).toEqual([
      { kind: 'left', text: 'cut ? # x' },
      { words: 'time 1', segments: [[0, 2, null, []]] },
    ]);
    expect(pieces('  3 4\ncut 1')[0]).toEqual({ kind: 'left', text: '  3 4' });
  });

  test('keeps a statement with a control character, but for one in a comment', () => {
    expect(pieces('memo "a\u0007"')).toEqual([{ kind: 'left', text: 'memo "a\u0007"' }]);
    expect(pieces('cut 1 # \u0007')).toMatchObject([{ words: 'cut 1' }]);
  });
});

describe('a statement', () => {
  test('is cut into segments by comments and blank lines, not by line ends alone', () => {
    expect(pieces('A: 1\n  2 # b\n  3\n\n  4')).toEqual([
      {
        words: 'A : 1 2 3 4',
        segments: [
          [0, 4, '# b', []],
          [4, 5, null, ['']],
          [5, 6, null, []],
        ],
      },
    ]);
  });

  test('has plain characters and names in NFC, texts as typed', () => {
    expect(pieces('Ａ：１－２')).toMatchObject([{ words: 'A : 1 - 2' }]);
    expect(pieces('か\u3099 "か\u3099": 1')).toMatchObject([{ words: 'が "か\u3099" : 1' }]);
  });
});
