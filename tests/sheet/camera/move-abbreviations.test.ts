/** What the camera does, in few words. */

import { expect, test } from 'vitest';
import { shortMoves } from '../../../src/sheet/camera/move-abbreviations.js';
import { solvedCut } from '../laid.js';

const HEAD = 'cut 1\ntime 2+0\nA: 1..\nfield P full\nfield Q full at 40,0\nfield R 60%\n';
const moves = (text: string, language: 'en' | 'ja' = 'en') => shortMoves(solvedCut(HEAD + text), language);

test('a camera that rests is fixed, light or not', () => {
  expect(moves('')).toEqual(['FIX']);
  expect(moves('fade in 1..12\n')).toEqual(['FIX', 'F.I']);
});

test('moves and light stand in the order of their first rows, each name once', () => {
  expect(moves('fade out 37..48\ntruck Q@24 > R@36\npan P@1 > Q@12\nfade in 1..6\n')).toEqual([
    'PAN',
    'F.I',
    'T.U',
    'F.O',
  ]);
  expect(moves('shake 2mm 1..6\nshake 3mm 20..26\n')).toEqual(['shake']);
});

test('the words are those of the language', () => {
  expect(moves('shake 2mm 1..6\n', 'ja')).toEqual(['画面動']);
});
