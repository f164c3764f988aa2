/** What the key and cel columns say on each row. */

import { describe, expect, it } from 'vitest';
import { columnEntries, heldText, type KeySign, keySigns } from '../../src/sheet/column-entries.js';
import type { Convention } from '../../src/shot/settings.js';
import { solvedCut } from './laid.js';

const short = (sign: KeySign | null): string => {
  if (!sign) return '';
  const forms: Record<KeySign['form'], string> = {
    key: 'O',
    dash: '-',
    breakdown: '(-)',
    again: 'o',
    'reused breakdown': '(o)',
    named: 'n',
    number: '#',
    underlined: '_',
    empty: 'x',
  };
  return 'text' in sign ? `${forms[sign.form]}${sign.text}` : forms[sign.form];
};

/** The signs of a level's own rows, held rows left out. */
function signs(timeline: string, frames: number, convention: Convention = 'japan'): string {
  const solved = solvedCut(`cut 1\ntime ${frames}\nA: ${timeline}\n`);
  return keySigns(solved.levels.find(({ name }) => name === 'A')!, convention)
    .map(short)
    .filter((one) => one !== '')
    .join(' ');
}

describe('key column in Japan', () => {
  it('rings keys, strokes in-betweens, brackets breakdowns, crosses emptiness', () => {
    expect(signs('1-=-2 x:4', 14)).toBe('O1 - (-) - O2 x');
  });

  it('shows in-betweens of a cycle as open rings after the first pass', () => {
    expect(signs('(1-2-)*3', 24)).toBe('O1 - O2 - O1 o O2 o O1 o O2 o');
  });

  it('shows them as open rings on the way back as well', () => {
    expect(signs('(1--2)<>*2', 24)).toBe('O1 - - O2 o o O1 o o O2 o o');
  });

  it('shows the key again where a cycle opens on it while it is held', () => {
    expect(signs('1:12 (1-2-)..', 24)).toBe('O1 O1 - O2 - O1 o');
    expect(signs('1:12 (1-2-)..', 24, 'west')).toBe('O1 O1 #2 O3 #4 O1 #2');
    // The last pass leaves 1 on, and the next cycle opens on it.
    expect(signs('(1 2)*2 1 (1 3)*2', 18)).toBe('O1 O2 O1 O2 O1 O1 O3 O1 O3');
    expect(signs('x:4 (x:2 1)..', 12)).toBe('x O1 x O1');
  });

  it('shows in-betweens of another cut as open rings from the first pass on', () => {
    const solved = solvedCut('cut 1\ntime 16\nA: (1-=-2)*2\nlevel A reuse 2/B\n');
    const all = keySigns(solved.levels.find(({ name }) => name === 'A')!, 'japan');
    expect(all.map(short).filter(Boolean).join(' ')).toBe('O1 o (o) o O2 O1 o o');
    expect([4, 6].map((frame) => heldText(all, frame))).toEqual(['○', '(○)']);
  });

  it('names an in-between that does not stand in its turn', () => {
    expect(signs('1-2:4 1.1 2..', 12)).toBe('O1 - O2 n1.1 O2');
  });

  it('goes on with strokes after an in-between that was named', () => {
    expect(signs('1--1.1-2', 12)).toBe('O1 - - n1.1 - O2');
  });
});

describe('key column in the west', () => {
  it('shows final numbers: keys ringed, in-betweens plain, breakdowns underlined', () => {
    expect(signs('1-=-2 x:4', 14, 'west')).toBe('O1 #2 _3 #4 O5 x');
  });

  it('writes cycles out in full', () => {
    expect(signs('(1-)*2', 8, 'west')).toBe('O1 #2 O1 #2');
  });
});

it('remembers over a break what is held', () => {
  const solved = solvedCut('cut 1\ntime 14\nA: 1-=-2 x:4\n');
  const all = keySigns(solved.levels.find(({ name }) => name === 'A')!, 'japan');
  expect([2, 4, 6, 10, 14].map((frame) => heldText(all, frame))).toEqual(['1', '–', '(–)', '2', '×']);
});

it('an in-between that was drawn before there and back is an open ring on each way back as well', () => {
  expect(signs('1-2 3 (1-2)<>*2 4..', 30)).toBe('O1 - O2 O3 O1 - O2 o O1 o O2 o O4');
  // 2.1 is drawn here, 1.1 was drawn before.
  expect(signs('1-2:4 (1-2-3)<>*2 4..', 42)).toBe('O1 - O2 O1 - O2 - O3 o O2 o O1 o O2 o O3 o O2 o O4');
  // Each on one frame: the last way back ends with the cycle.
  expect(signs('(1:1 -:1 2:1)<>*2 3..', 10)).toBe('O1 - O2 o O1 o O2 o O3');
  expect(signs('((1-2)<>*2 3)*2 4..', 38)).toBe('O1 - O2 o O1 o O2 o O3 O1 o O2 o O1 o O2 o O3 O4');
});

it('an in-between behind an empty level has its name, as nothing tells which one it is', () => {
  expect(signs('1-2 x:2 1.1 2..', 14)).toBe('O1 - O2 x n1.1 O2');
});

it('an in-between is on its way back only within its own there and back', () => {
  expect(signs('(1-2)<>*2 3 1.1..', 24)).toBe('O1 - O2 o O1 o O2 o O3 n1.1');
  expect(signs('(1-2 1.1 2)..', 20)).toBe('O1 - O2 n1.1 O2 O1 o O2 n1.1 O2');
});

it('a group that is played there and back once has the rings of one that is played more often', () => {
  expect(signs('(1-2-3)<> 4..', 18)).toBe('O1 - O2 - O3 o O2 o O4');
  expect(signs('((1-2)<> 3)*2 4..', 22)).toBe('O1 - O2 o O3 O1 o O2 o O3 O4');
});

it('what is typed by its name on the way there has its name there, in every pass', () => {
  expect(signs('(1-2 1.1 3)<>*2 4..', 36)).toBe('O1 - O2 n1.1 O3 o O2 o O1 o O2 n1.1 O3 o O2 o O4');
});

it('a hold lasts from one sign to the next, and from one number to the next', () => {
  const [level] = solvedCut('cut 1\ntime 24\nA: 1:8 (1-)..\n').levels.filter(({ name }) => name === 'A');
  const { keyHolds, celHolds } = columnEntries(level!, 'japan');
  expect(keyHolds.slice(0, 3)).toEqual([
    { from: 1, to: 8 },
    { from: 9, to: 10 },
    { from: 11, to: 12 },
  ]);
  expect(celHolds.slice(0, 2)).toEqual([
    { from: 1, to: 10 },
    { from: 11, to: 12 },
  ]);
  expect(keyHolds.at(-1)!.to).toBe(24);
});

it('nothing is held before the first sign', () => {
  expect(heldText([null, null], 2)).toBe('');
});
