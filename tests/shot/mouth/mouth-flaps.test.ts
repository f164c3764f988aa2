/**
 * Television's mouths: three drawings on threes, mixed evenly, not in a cycle (VKNOW: video-knowledge.com/kuchipaku, 「口パク」).
 */

import { describe, expect, test } from 'vitest';
import { flapRows } from '../../../src/shot/mouth/mouth-flaps.js';
import type { MouthShape } from '../../../src/shot/shot.js';

const THREE: readonly MouthShape[] = ['closed', 'half', 'open'];
const flaps = (rows: number, on: number, seed = 'c1 Nao', all = THREE) =>
  flapRows({ from: 13, to: 12 + rows }, { on, lead: 1 }, all, seed);

/** The shapes of the slots of a line on threes, without its last row. */
const onThrees = (seed: string) =>
  flaps(181, 3, seed)
    .shapes.slice(0, -1)
    .filter((_, i) => i % 3 === 0);

describe('a mouth that is not read', () => {
  test('lasts as long as its line, from its lead on, closed on the last row', () => {
    const { from, shapes } = flaps(36, 3);
    expect([from, shapes.length, shapes.at(-1)]).toEqual([12, 36, 'closed']);
    expect(shapes[0]).not.toBe('closed');
  });

  test('shows each drawing as often as the others, and none twice in a row', () => {
    const slots = onThrees('c1 Nao');
    expect(slots).toHaveLength(60);
    for (const shape of THREE) {
      const times = slots.filter((one) => one === shape).length;
      expect(times).toBeGreaterThanOrEqual(19);
      expect(times).toBeLessThanOrEqual(21);
    }
    expect(slots.some((shape, i) => shape === slots[i + 1])).toBe(false);
  });

  test.each([1, 2, 3, 4, 5, 6])('is no cycle: seed %d', (seed) => {
    const slots = onThrees(`line ${seed}`).join(' ');
    for (const round of [3, 6, 9]) {
      const words = slots.split(' ');
      const again = words.slice(round).filter((shape, i) => shape === words[i]).length;
      expect(again, `after ${round}`).toBeLessThan(words.length - round);
    }
  });

  test('is the same every time, and another for another line', () => {
    expect(flaps(48, 3)).toEqual(flaps(48, 3));
    expect(flaps(48, 3).shapes).not.toEqual(flaps(48, 3, 'c2 Nao').shapes);
  });

  test('has a mouth for each vowel where there is one', () => {
    const all: readonly MouthShape[] = ['closed', 'a', 'i', 'u', 'e', 'o'];
    expect(new Set(flaps(48, 3, 'x', all).shapes)).toEqual(new Set(all));
  });

  test('does not open for one frame between closed ones, on ones either', () => {
    const { shapes } = flaps(120, 1);
    const closed = (i: number) => (shapes[i] ?? 'closed') === 'closed';
    expect(shapes.filter((_, i) => !closed(i) && closed(i - 1) && closed(i + 1))).toEqual([]);
  });

  test('stays closed in a line of one row', () => {
    expect(flaps(1, 3).shapes).toEqual(['closed']);
  });
});

test('a line that is not read ends with an open mouth before it closes, and its slots are whole', () => {
  for (let seed = 0; seed < 40; seed++) {
    const { shapes } = flaps(13, 3, `line ${seed}`);
    expect(shapes).toHaveLength(13);
    expect([shapes.at(-1), shapes.at(-2) === 'closed']).toEqual(['closed', false]);
    expect(shapes[0]).not.toBe('closed');
    const slots = [0, 3, 6, 9].map((i) => shapes.slice(i, i + 3));
    for (const slot of slots) expect(new Set(slot).size).toBe(1);
    expect(slots.some((slot, i) => slot[0] === slots[i + 1]?.[0])).toBe(false);
  }
});

test('rounds of a mouth that is not read are never the same twice running', () => {
  for (let seed = 0; seed < 10; seed++) {
    const rounds = onThrees(`line ${seed}`)
      .join(' ')
      .match(/(\S+ ){3}/g)!;
    expect(rounds.some((round, i) => round === rounds[i + 1])).toBe(false);
    for (const round of rounds) expect(new Set(round.trim().split(' ')).size).toBe(3);
  }
});
