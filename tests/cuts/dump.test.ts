import { expect, test } from 'vitest';
import type { Page } from '../../src/sheet/display-list.js';
import { dump, undump } from './dump.js';

const page: Page = {
  widthMm: 210,
  heightMm: 297,
  label: '1',
  part: 'sheet',
  form: { id: 'japan A4', marks: [line(0)] },
  marks: [line(10), text('12')],
  rows: [],
};

test('what is dumped comes back', () => {
  expect(undump(dump([page, page]), [page])).toEqual([page, page]);
});

test('a mark that moves by a tenth of a millimetre shows, in its own line only', () => {
  const before = dump([page]).split('\n');
  const after = dump([{ ...page, marks: [line(10.1), text('12')] }]).split('\n');
  expect(after.filter((one, index) => one !== before[index])).toEqual([
    '{"kind":"line","x1":10.1,"y1":0,"x2":10.1,"y2":5,"stroke":{"ink":"black","widthMm":0.2}}',
  ]);
});

test('a changed form shows in the head of its page', () => {
  const before = dump([page]);
  const after = dump([{ ...page, form: { id: 'japan A4', marks: [line(1)] } }]);
  expect(after.split('\n')[0]).not.toBe(before.split('\n')[0]);
  expect(after.split('\n').slice(1)).toEqual(before.split('\n').slice(1));
});

function line(x: number) {
  return { kind: 'line', x1: x, y1: 0, x2: x, y2: 5, stroke: { ink: 'black', widthMm: 0.2 } } as const;
}

function text(words: string) {
  return {
    kind: 'text',
    x: 1,
    y: 2,
    text: words,
    sizeMm: 3,
    weight: 'regular',
    ink: 'black',
    anchor: 'start',
  } as const;
}
