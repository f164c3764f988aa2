/** Retake notes as a document. */

import { describe, expect, test } from 'vitest';
import { layOutNote, type NotesOf, retakeDocument } from '../../src/build/retake-document.js';
import { compare } from '../../src/compare/compare-cuts.js';
import { cropped, kept } from '../pictures.js';
import { lookOf, said, solvedCut, textsOf } from '../sheet/laid.js';

const cut = (number: number, time: string, body: string) =>
  solvedCut(`cut ${number} "Crane ${number}"\ntime ${time}\n${body}\n`);
const order = { against: 'v1', askedBy: '', reason: '' };
const note = (number: number) => {
  const was = cut(number, '1+0', 'A: 1:4--2..\nvoice "Sel" 2..9 "Up"');
  const is = cut(number, '1+6', 'C: 1:6--2..\nvoice "Sel" 4..9 "Up"');
  return layOutNote(was, is, compare(was, is), order, lookOf());
};
const document = (of: Partial<NotesOf>) =>
  retakeDocument({ notes: [], added: [], dropped: [], against: 'v1', ...of }, lookOf({ title: 'Yard' }));

describe('the note of a cut', () => {
  test('is summed up in a row', () => {
    const { row } = note(5);
    expect(row).toMatchObject({ cut: '5', title: 'Crane 5', time: '1+0 → 1+6' });
    expect(row.where.split(', ')).toEqual(expect.arrayContaining(['whole cut', 'C', 'dialogue', 'sound']));
    expect(row.changes).toBeGreaterThan(2);
  });

  test('shows a renamed level beside what it was', () => {
    // It shows the same throughout, so that it is the same level; its in-betweens lie elsewhere.
    const was = cut(5, '1+0', 'A: 1{late}--2..');
    const is = cut(5, '1+0', 'C: 1{early}--2..');
    const { pages } = layOutNote(was, is, compare(was, is), order, lookOf());
    const numbers = pages.flatMap(({ marks }) =>
      textsOf(marks).filter(({ text, weight }) => weight === 'bold' && /^\d$/.test(text)),
    );
    // The cut, two changes, and beside each other key 1 of A and key 1 of C.
    expect(numbers.map(({ text }) => text)).toEqual(['5', '1', '2', '1', '1']);
  });
});

describe('a document', () => {
  test('of one cut is its note alone', () => {
    const { pages, bookmarks, title } = document({ notes: [note(5)] });
    expect(pages.map(({ label }) => label)).toEqual(['retake 1']);
    expect(bookmarks).toEqual([{ title: 'Cut 5', page: 0, children: [] }]);
    expect(title).toBe('Yard · Retake note');
  });

  test('of several begins with a summary, and with what is new and gone', () => {
    const { pages, bookmarks } = document({ notes: [note(5), note(8)], added: ['9'], dropped: ['2'] });
    expect(pages.map(({ label }) => label)).toEqual(['Retakes 1', 'retake 1', 'retake 1']);
    expect(bookmarks).toEqual([
      { title: 'Retakes', page: 0, children: [] },
      { title: 'Cut 5', page: 1, children: [] },
      { title: 'Cut 8', page: 2, children: [] },
    ]);
    for (const text of ['against v1 · 4 cuts', 'new cut', 'cut dropped'])
      expect(said(pages[0]!)).toContain(text);
  });

  test('of a work without a title is called a retake note', () => {
    const { title } = retakeDocument(
      { notes: [], added: ['9'], dropped: [], against: 'v1' },
      lookOf({ title: '' }),
    );
    expect(title).toBe('Retake note');
  });

  test('of cuts that only came or went is a summary', () => {
    expect(document({ added: ['9'] }).pages.map(({ label }) => label)).toEqual(['Retakes 1']);
  });
});

test('the picture of the page about comparing is what is printed', () => {
  const text = (time: string, body: string) => `cut 26 "The crane swings out"\ntime ${time}\n${body}\n`;
  const was = solvedCut(
    text(
      '2+0',
      'A "hook": x:8 1:6-2-3--4..\nvoice "Sel" 1+2..1+18 "Lower it!"\nfield N full at 45,0\npan full@1 > N@1+12 ease 6 6',
    ),
  );
  const is = solvedCut(
    text(
      '2+0',
      'A "hook": x:8 1:9-2-3-4..\nvoice "Sel" 1+6..1+18 "Lower it!"\nfield N full at 45,0\npan full@1 > N@1+20 ease 6 12',
    ),
  );
  const [page] = layOutNote(was, is, compare(was, is), { ...order, against: 'take-1' }, lookOf()).pages;
  const [file, now] = kept(
    'grammar/pictures/retake-note.svg',
    cropped(page!, { x: 4, y: 24, width: 202, height: 128 }),
  );
  expect(file).toBe(now);
});
