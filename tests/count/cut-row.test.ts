import { describe, expect, test } from 'vitest';
import { cutRow } from '../../src/count/cut-row.js';
import { shortMoves } from '../../src/sheet/camera/move-labels.js';
import { solvedCut } from '../sheet/laid.js';

function counted(text: string) {
  const solved = solvedCut(text);
  const moves = shortMoves(solved, 'en');
  return cutRow(solved, {
    file: 'a.cut',
    problems: { errors: 0, warnings: 0 },
    sound: true,
    pages: null,
    moves,
  }).counted!;
}

describe('what is counted of a cut', () => {
  test('levels with a timeline, and rows with both handles', () => {
    const { levels, time, rows, handles, overlap } = counted(
      'cut 1\ntime 2+0\nstack BG A B BOOK1\nA: 1..\nB: x:12 1..\noverlap in 12\noverlap out 7\n',
    );
    expect({ levels, time, rows, handles }).toEqual({
      levels: 2,
      time: 48,
      rows: 57,
      handles: { head: 6, tail: 3 },
    });
    expect(overlap).toEqual({ in: 12, out: 7 });
  });

  test('the rows on which something moves, ranges that meet as one', () => {
    const { rhythm } = counted(
      'cut 1\ntime 4+0\nfield A full\nfield B full at 10,0\nfield C full at 20,0\nlevel BG size 600x300mm\nA: 1..\npan A@1 > B@24 > C@48\nshake 1mm 60..71\n',
    );
    // A position `@1` moves nothing yet; the frames that move are 2 to 48.
    expect(rhythm.moving).toEqual([
      { from: 2, to: 48 },
      { from: 60, to: 71 },
    ]);
  });

  test('the rows on which somebody speaks: voices, not sounds', () => {
    const { rhythm } = counted(
      'cut 1\ntime 4+0\nA: 1..\nvoice "Pim" 1..10 "One"\nvoice "Oda" 8..20 "Two"\nvoice "Pim" 30..31 "Three"\nsound 40..50 "bell"\n',
    );
    expect(rhythm.spoken).toEqual([
      { from: 1, to: 20 },
      { from: 30, to: 31 },
    ]);
  });

  test('where drawings are first seen, each once, of all levels', () => {
    const { rhythm, counts } = counted('cut 1\ntime 1+0\nA: 1-2 1:12 3..\nB: x:3 1..\n');
    expect(rhythm.fresh).toEqual([1, 3, 4, 5, 19]);
    expect(rhythm.fresh).toHaveLength(counts.drawings);
  });
});

describe.each([
  ['', ['FIX'], ['FIX']],
  ['fade in 1..24', ['FIX', 'F.I'], ['FIX', 'F.I']],
  ['pan A@1 > B@48', ['PAN'], ['PAN']],
  ['pan A@1 > B@48 carry A', ['follow PAN'], ['付けPAN']],
  ['truck A@1 > C@48', ['T.U'], ['T.U']],
  ['truck quick C@1 > A@48 fair ア@12 60%', ['Q.T.B'], ['Q.T.B']],
  ['pull BG right 1mm/f 1..48', ['pull'], ['引き']],
  ['follow A left 1mm/f 1..48', ['follow'], ['フォロー']],
  ['slide A ア(0,0)@1 > イ(5,0)@48', ['slide'], ['スライド']],
  ['truck level A 100%@1 > 120%@48', ['level T.U'], ['セルT.U']],
  ['turn level A 0@1 > 30@48 cw', ['turn'], ['回転']],
  ['shake 2mm 1..24\nsway A 3mm 25..48 every 24', ['shake', 'sway'], ['画面動', 'ローリング']],
  ['expose A 50% 1..24\nglow A 25..48', ['FIX', 'double exposure', 'glow'], ['FIX', 'WXP', 'T光']],
  ['effect "heat haze" A 1..48', ['FIX', 'effect'], ['FIX', '撮影処理']],
  ['overlap in 12\npull BG right 1mm/f 30..40\npull BG right 1mm/f 41..48', ['O.L', 'pull'], ['O.L', '引き']],
])('%j', (statements, en, ja) => {
  const text = `cut 1\ntime 2+0\nstack BG A\nfield A full\nfield B full at 20,0\nfield C 60%\nlevel BG size 900x400mm\nlevel A size 900x400mm\nA: 1..\n${statements}\n`;
  test.each([
    ['en' as const, en],
    ['ja' as const, ja],
  ])('is named in %s', (language, names) => {
    expect(shortMoves(solvedCut(text), language)).toEqual(names);
  });
});
