/** What stands over the rows in the terminal. */

import { describe, expect, test } from 'vitest';
import { cameraPlan } from '../../../src/sheet/camera/lane-assignment.js';
import { headLines } from '../../../src/sheet/terminal/terminal-header.js';
import type { Settings } from '../../../src/shot/settings.js';
import { wordsOf } from '../../../src/words/words.js';
import { solvedCut } from '../laid.js';

function head(text: string, { feet = false, width = 200, settings = {} as Partial<Settings> } = {}) {
  const solved = solvedCut(text, settings);
  const words = wordsOf({ labels: 'en', convention: feet ? 'west' : 'japan' }).sheet;
  const camera = cameraPlan(
    solved,
    { labels: 'en', convention: feet ? 'west' : 'japan', lengths: 'mm' },
    undefined,
  );
  return headLines({ solved, words, camera, lent: [], unit: feet ? 16 : 24, feet }, width);
}

const CUT = `cut 12A "Rooftop"
time 2+12
scene 3
artist "M. Arai"
stack BG A
A "Nao": 1--2..
`;

test('a fact stands on a line, what is not said has none', () => {
  expect(head(CUT)).toEqual([
    'cut 12A “Rooftop”',
    expect.stringMatching(/^time .* · 60 frames · 24 a second$/),
    'scene 3',
    'artist M. Arai',
    'drawings 4: 2 keys, 2 in-betweens',
    'stack BG < A',
    'A “Nao”: drawings 4, last no. 4',
    'camera FIX',
  ]);
});

test('feet are told as well in the west', () => {
  expect(head(CUT, { feet: true })[1]).toContain(" · 3'12 · ");
});

test('title and episode stand on one line', () => {
  expect(head(CUT, { settings: { title: 'Harbour Lights', episode: '7' } })).toContain('Harbour Lights 7');
});

test('numbers that are missing, and levels that are reused, are told', () => {
  const lines = head('cut 1\ntime 1+0\nA: 1--2-3..\ncels A 1 1.1 1.2 2 4\nC: 1..\nlevel C reuse 8/C\n');
  expect(lines).toContain('A: drawings 6, last no. 7, not used 5');
  expect(lines).toContain('C: reuse of cut 8, level C');
});

describe('words', () => {
  const lines = head(
    `${CUT}voice "Nao" off 1..12 "Wait" @6 "here"\nsound 13..18 "bell"\nnote 25 "looks  up"\nmemo "No  rain."\n`,
  );

  test('are told whole, with their rows, kind and speaker', () => {
    expect(lines).toContain('0+1–0+12 Nao OFF: “Wait here”');
    expect(lines).toContain('0+13–0+18 SE “bell”');
    expect(lines).toContain('1+1 notes looks up');
  });

  test('of a memo are one line', () => expect(lines).toContain('memo No rain.'));
});

test('a line that is too long goes on, set in', () => {
  const lines = head(`${CUT}memo "Wind from screen left throughout, no rain"\n`, { width: 30 });
  const at = lines.findIndex((line) => line.startsWith('memo'));
  expect(lines.slice(at, at + 2)).toEqual(['memo Wind from screen left', '    throughout, no rain']);
});
