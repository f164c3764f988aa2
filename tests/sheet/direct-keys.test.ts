/** `1 direct 2`: no in-betweens, and that is meant. */

import { describe, expect, test } from 'vitest';
import { note } from '../compare/say.js';
import { compileText } from '../compile.js';
import { laid, said, solvedCut, textsOf } from './laid.js';

const cut = (items: string) => `cut 8\ntime 2+0\nA: ${items}\n`;

describe('direct', () => {
  test('changes nothing of what is shown', () => {
    const plain = solvedCut(cut('1:12 2:2 3 --4:6 5..'));
    const marked = solvedCut(cut('1:12 direct 2:2 3 --4:6 direct 5..'));
    expect(marked.levels[1]!.exposures).toEqual(plain.levels[1]!.exposures);
    expect(marked.shot.levels[1]!.timeline!.direct).toEqual([
      { from: '1', to: '2' },
      { from: '4', to: '5' },
    ]);
  });

  test('stands beside the hold of the first key, letter under letter in Japanese', () => {
    const [page] = laid(cut('1:12 direct 2..'), { labels: 'ja' });
    const letters = textsOf(page!.marks).filter(({ text }) => ['中', 'な', 'し'].includes(text));
    expect(letters.map(({ text }) => text).join('')).toBe('中なし');
    expect(new Set(letters.map(({ x }) => x.toFixed(3))).size).toBe(1);
    expect(said(laid(cut('1:12 direct 2..'))[0]!)).toContain('no in-b.');
  });

  test('is told in the memo where it has no room', () => {
    const [page] = laid(cut('1:2 direct 2..'));
    expect(said(page!)).toContain('A 0+3: 1→2 no in-b.');
  });

  test('holds in a group, a phrase, and over an @', () => {
    for (const items of ['(1:6 direct 2:6)..', '1 direct @1+1 2..', '1 on 3 direct 2..'])
      expect(solvedCut(cut(items)).shot.levels[1]!.timeline!.direct, items).toEqual([{ from: '1', to: '2' }]);
    const phrase = solvedCut(`${cut('snap..')}phrase snap = 1:3 direct 2:3\n`);
    expect(phrase.shot.levels[1]!.timeline!.direct).toEqual([{ from: '1', to: '2' }]);
  });

  test.each([
    '1 direct --2..',
    'direct 1..',
    '1-- direct 2..',
    '1 direct x..',
    '1 direct 1..',
    '1.. @1+1 2 direct',
  ])('%s is an error with its place', (items) => {
    const { diagnostics } = compileText(cut(items));
    const found = diagnostics.find(({ code }) => code === 'direct-misplaced');
    expect(found?.severity).toBe('error');
    expect(cut(items).slice(found!.span.start, found!.span.end)).toBe('direct');
  });

  test('is told once where it stands twice', () => {
    const { diagnostics } = compileText(cut('1 direct direct 2..'));
    expect(diagnostics.map(({ code }) => code)).toEqual(['direct-misplaced']);
  });

  test('is compared', () => {
    expect(note(cut('1:12 2..'), cut('1:12 direct 2..'))).toEqual([
      'A: no in-betweens meant from key 1 to key 2',
    ]);
    expect(note(cut('1:12 direct 2..'), cut('1:12 2..'), 'ja')).toEqual(['A：原画1→2 中なし 削除']);
  });
});
