import { describe, expect, test } from 'vitest';
import type { Mark, Page } from '../../src/sheet/display-list.js';
import { caseOf } from './cuts.js';
import { faults, layOut, printAndOpen, withPage } from './print.js';

const CROWDED = `cut 44 "Crowded"
time 12+0
A: 1:6 1{late}-------2 2{early}---3=--4:5 4{both}--=---5{1/3 1/2 7/8}---6..
B: x:5 (1--2{1/16 1/8 1/2}---)*3 2>1.2 3-123a..
C: 1${'-'.repeat(140)}2..
`;

const cuts = [
  layOut(caseOf('japan', CROWDED, { convention: 'japan', labels: 'ja', paper: 'A4' })),
  layOut(caseOf('west', CROWDED, { convention: 'west', labels: 'en', paper: 'A4' })),
];

const isLevel = (mark: Mark) =>
  mark.kind === 'line' && mark.y1 === mark.y2 && mark.stroke.ink === 'black' && mark.x2 - mark.x1 > 4;

/** What can be wrong with a ladder: which mark, and what becomes of it (null: it is lost). */
const LIES: Readonly<Record<string, { wanted: (mark: Mark) => boolean; made: (mark: Mark) => Mark | null }>> =
  {
    'a stroke half a millimetre off its place': {
      wanted: isLevel,
      made: (mark) => (mark.kind === 'line' ? { ...mark, y1: mark.y1 + 0.5, y2: mark.y2 + 0.5 } : mark),
    },
    'a stroke lost': { wanted: isLevel, made: () => null },
    'another number': {
      wanted: (mark) =>
        mark.kind === 'text' && mark.weight === 'bold' && mark.anchor === 'end' && /^\d+$/.test(mark.text),
      made: (mark) => (mark.kind === 'text' ? { ...mark, text: String(Number(mark.text) + 1) } : mark),
    },
    'another fraction': {
      wanted: (mark) => mark.kind === 'text' && mark.ink === 'grey' && /^\d+\/\d+$/.test(mark.text),
      made: (mark) => (mark.kind === 'text' ? { ...mark, text: `1${mark.text}` } : mark),
    },
    'another exposure': {
      wanted: (mark) =>
        mark.kind === 'text' && mark.weight === 'regular' && mark.anchor === 'end' && mark.text === '2',
      made: (mark) => (mark.kind === 'text' ? { ...mark, text: '3' } : mark),
    },
    'another drawing': {
      wanted: (mark) => mark.kind === 'text' && mark.anchor === 'middle' && /^\d+\.\d+$/.test(mark.text),
      made: (mark) => (mark.kind === 'text' ? { ...mark, text: `${mark.text}1` } : mark),
    },
    'a key without its ring': {
      wanted: (mark) => mark.kind === 'circle' && mark.fill === null,
      made: () => null,
    },
    'a breakdown without its dot': {
      wanted: (mark) => mark.kind === 'circle' && mark.fill === 'black',
      made: () => null,
    },
    'a ladder lost': {
      wanted: (mark) => mark.kind === 'line' && mark.x1 === mark.x2 && mark.stroke.ink === 'black',
      made: () => null,
    },
  };

test('charts as they are agree with the solver', async () => {
  const papers = await printAndOpen(cuts);
  expect(cuts.map((one, i) => faults(one, papers[i]!))).toEqual(cuts.map(() => []));
});

describe.each(Object.keys(LIES))('%s', (name) => {
  test('is found out', async () => {
    const { wanted, made } = LIES[name]!;
    const liars = cuts.flatMap((one) => {
      const index = one.pages.findIndex((page) => page.part === 'charts' && page.marks.some(wanted));
      const page: Page = one.pages[index]!;
      const all = page.marks.filter(wanted);
      // The first, one in the middle, and the last.
      return [...new Set([all[0]!, all[all.length >> 1]!, all.at(-1)!])].map((chosen) => {
        const marks = page.marks.flatMap((mark) => (mark === chosen ? (made(mark) ?? []) : mark));
        return withPage(one, index, { ...page, marks });
      });
    });
    const papers = await printAndOpen(liars);
    const believed = liars.filter((one, i) => faults(one, papers[i]!).length === 0).map((one) => one.name);
    expect(believed).toEqual([]);
  });
});
