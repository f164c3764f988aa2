import { describe, expect, it } from 'vitest';
import type { Page } from '../../src/sheet/display-list.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { laid, lookOf, said, solvedCut, textsOf } from './laid.js';

const words = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '');

describe('notes', () => {
  const noted = (notes: string): ReturnType<typeof laid> => laid(`cut 1\ntime 3+0\nA: 1..\n${notes}\n`);

  it('stand on their rows', () => {
    const [page] = noted('note 2+12 "heads turn"');
    const { y, height } = page!.rows[59]!;
    const note = textsOf(page!.marks).find(({ text }) => text.startsWith('heads'))!;
    expect(note.y).toBeGreaterThan(y);
    expect(note.y).toBeLessThan(y + height);
  });

  it('name their row where they had to move', () => {
    const [page] = noted('note 1+1 "the whole crowd turns to the left, slowly"\nnote 1+2 "then stops"');
    expect(said(page!)).toContain('1+2');
    const bold = textsOf(page!.marks).filter(({ text, weight }) => text === '1+2' && weight === 'bold');
    expect(bold).toHaveLength(1);
  });

  it('go to the memo, every word of them, where the column is full', () => {
    const notes = Array.from({ length: 70 }, (_, i) => `figure${i} turns very slowly to the left`);
    const pages = noted(notes.map((note, i) => `note ${i + 1} "${note}"`).join('\n'));
    const printed = words(pages.map(said).join(' '));
    for (let i = 0; i < 70; i++) expect(printed).toContain(`figure${i}`);
  });
});

describe('the name of a cut point', () => {
  const solved = solvedCut('cut 1\ntime 2+12\nA: 1..\nnote 1+6 "turns"\n', {}, (shot) => ({
    ...shot,
    handles: { head: 8, tail: 12 },
    time: 40,
  }));
  const [page] = sheetPages(solved, lookOf()) as [Page];
  /** How far below its row's upper edge the text stands whose row this is, in rows. */
  const inRow = (frame: number, wanted: string): number => {
    const { y, height } = page.rows[frame - 1]!;
    const own = textsOf(page.marks).filter(
      (text) => text.text === wanted && text.y > y && text.y < y + height,
    );
    expect(own).toHaveLength(1);
    return (own[0]!.y - y) / height;
  };
  const plain = inRow(30, 'turns');

  it('keeps 0.18 of a row below the rule at the head', () => {
    expect(inRow(9, 'cut point') - plain).toBeCloseTo(0.18, 6);
  });

  it('keeps as much above the rule at the tail', () => {
    expect(plain - inRow(48, 'cut point')).toBeCloseTo(0.18, 6);
  });
});
