import { describe, expect, it } from 'vitest';
import { editOf } from '../../src/export/episode-edit.js';
import { editOrder, type FilmOrder, sheetOrder } from '../../src/picture/film-order.js';
import { pictureOf } from '../../src/picture/frame-list.js';
import { compileText } from '../compile.js';

const solvedOf = (text: string) => compileText(text).solved!;

/** Two cuts of a second that dissolve over so many frames. */
const pair = (length: number) => [
  solvedOf(`cut 1\ntime 1+0\nA: 1..\noverlap out ${length}\n`),
  solvedOf(`cut 2\ntime 1+0\nA: 1..\noverlap in ${length}\n`),
];

const orderOf = (length: number): FilmOrder => editOrder(editOf(pair(length)).edit!);

describe('one sheet', () => {
  it('is shown from its first row to its last', () => {
    const order = sheetOrder(pair(8)[0]!.shot);
    expect(order.frames).toBe(28);
    expect(order.at(28)).toEqual({
      shown: { cut: 0, row: 28 },
      own: { cut: 0, row: 28 },
      incoming: null,
    });
  });
});

describe('an edit', () => {
  it('goes from cut point to cut point', () => {
    const cuts = ['1', '2', '3'].map((cut) => solvedOf(`cut ${cut}\ntime 0+12\nA: 1..\n`));
    const order = editOrder(editOf(cuts).edit!);
    expect(order.frames).toBe(36);
    expect([1, 12, 13, 36].map((frame) => order.at(frame).shown)).toEqual([
      { cut: 0, row: 1 },
      { cut: 0, row: 12 },
      { cut: 1, row: 1 },
      { cut: 2, row: 12 },
    ]);
  });

  it.each([8, 9])('shows both cuts of a dissolve of %i, on the rows that both sheets give it', (length) => {
    const [first, second] = pair(length);
    const order = orderOf(length);
    expect(order.frames).toBe(48);
    const both = Array.from({ length: 48 }, (_, i) => ({ frame: i + 1, ...order.at(i + 1) })).filter(
      ({ incoming }) => incoming,
    );
    expect(both).toHaveLength(length);
    // All of the outgoing cut's last rows, and all of the incoming one's first.
    expect(both.map(({ shown }) => shown.row)).toEqual(
      Array.from({ length }, (_, i) => first!.shot.length - length + 1 + i),
    );
    expect(both.map(({ incoming }) => incoming!.row)).toEqual(Array.from({ length }, (_, i) => i + 1));
    // Their shares make one picture.
    const pictures = [pictureOf(first!), pictureOf(second!)];
    for (const { shown, incoming } of both) {
      const shares = [shown, incoming!].map(({ cut, row }) => pictures[cut]!.frames[row - 1]!.share);
      expect(shares[0]! + shares[1]!).toBeCloseTo(1, 12);
    }
  });

  it('counts a frame of a dissolve to the cut on whose side of the cut point it lies', () => {
    const order = orderOf(8);
    expect([24, 25].map((frame) => order.at(frame).own.cut)).toEqual([0, 1]);
    expect(order.at(24).incoming).toMatchObject({ cut: 1 });
    expect(order.at(25)).toMatchObject({ shown: { cut: 0 }, incoming: { cut: 1 } });
  });
});
