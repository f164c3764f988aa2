import { describe, expect, test } from 'vitest';
import { Fingerprints } from '../../src/print/page-fingerprint.js';
import { printPdf } from '../../src/print/pdf.js';
import type { Mark, Page, Stroke } from '../../src/sheet/display-list.js';
import { testFonts } from '../fonts.js';
import { document, line, PEN, page, RULED, text } from './documents.js';

const of = (one: Page, stamp = '') => new Fingerprints().of(one, stamp);

/** A mark of each kind. */
const MARKS: readonly Mark[] = [
  line(1, 2, 3, 4),
  text('夜 key', { turn: 90, squeeze: 0.8 }),
  { kind: 'circle', x: 10, y: 20, r: 3, stroke: PEN, fill: null },
  {
    kind: 'path',
    points: [
      [1, 1],
      [2, 5],
      [4, 3],
    ],
    closed: true,
    stroke: PEN,
    fill: 'paper',
  },
  {
    kind: 'curve',
    points: [
      [1, 1],
      [2, 5],
      [4, 3],
      [9, 9],
    ],
    stroke: PEN,
  },
  { kind: 'tint', x: 9, y: 9, width: 9, height: 9 },
  { kind: 'hatch', x: 9, y: 9, width: 9, height: 9, gapMm: 1, stroke: PEN },
];

/** Every way to change one value of a plain thing. */
function changes(value: unknown, by: number): unknown[] {
  if (typeof value === 'number') return [value + by];
  if (typeof value === 'string') return value === 'black' ? ['grey'] : value === 'paper' ? ['black'] : [];
  if (typeof value === 'boolean') return [!value];
  if (Array.isArray(value)) {
    return value.flatMap((one, i) => changes(one, by).map((other) => value.with(i, other)));
  }
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, one]) =>
    changes(one, by).map((other) => ({ ...value, [key]: other })),
  );
}

describe('two pages have one fingerprint where they are the same on paper', () => {
  test.each(MARKS.map((mark) => [mark.kind, mark] as const))('%s', async (_, mark) => {
    const print = async (one: Mark) => Buffer.from(await printPdf(document([page([one])]), testFonts()));
    const plain = [of(page([mark])), await print(mark)] as const;
    const others = changes(mark, 0.01) as Mark[];
    expect(others.length).toBeGreaterThan(3);
    for (const other of others) {
      const said = JSON.stringify(other);
      expect(of(page([other])) === plain[0], said).toBe(false);
      expect((await print(other)).equals(plain[1]), said).toBe(false);
    }
    for (const same of changes(mark, 1e-9).filter(
      (one) => JSON.stringify(changes(one, 0)).length > 0,
    ) as Mark[]) {
      if (JSON.stringify(same).includes('grey') || !close(same, mark)) continue;
      expect(of(page([same])), JSON.stringify(same)).toBe(plain[0]);
      expect((await print(same)).equals(plain[1])).toBe(true);
    }
  });

  /** Whether only numbers differ. */
  function close(a: Mark, b: Mark): boolean {
    const bare = (mark: Mark) => JSON.stringify(mark, (_, value) => (typeof value === 'number' ? 0 : value));
    return bare(a) === bare(b);
  }

  test('text, order, paper and form count', () => {
    const made = [
      page([text('1'), text('2')]),
      page([text('2'), text('1')]),
      page([text('12')]),
      page([text('1'), text('2')], { widthMm: 211 }),
      page([text('1'), text('2')], { form: RULED }),
      page([text('1'), text('2')], { form: { id: 'ruled', marks: RULED.marks.slice(1) } }),
      page([text('1', { weight: 'bold' }), text('2')]),
      page([text('1', { anchor: 'end' }), text('2')]),
    ].map((one) => of(one));
    expect(new Set(made).size).toBe(made.length);
  });

  test('a dash of a stroke counts', () => {
    const dashed: Stroke = { ...PEN, dash: [1, 2] };
    const made = [PEN, dashed, { ...PEN, dash: [2, 1] as const }].map((pen) =>
      of(page([line(1, 2, 3, 4, pen)])),
    );
    expect(new Set(made).size).toBe(3);
  });
});

test('the stamp and the label do not count', () => {
  const stamped = (stamp: string, label = '1') =>
    new Fingerprints().of(page([text('key'), text(stamp), line(1, 2, 3, 4)], { label }), stamp);
  expect(stamped('abc · 1')).toBe(stamped('def · 2', '7'));
  expect(stamped('abc · 1')).toBe(of(page([text('key'), line(1, 2, 3, 4)])));
});

test('one that has hashed other pages before gives the same', () => {
  const used = new Fingerprints();
  const many = page(Array.from({ length: 20_000 }, (_, i) => line(i, 2, 3, 4)));
  used.of(many, '');
  for (const one of [page(MARKS), page([], { form: RULED }), many]) {
    expect(used.of(one, '')).toBe(of(one));
    expect(of(one)).toMatch(/^[\w-]{10}$/);
  }
});
