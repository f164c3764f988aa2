import { describe, expect, test } from 'vitest';
import { PreviewStore } from '../../src/preview/preview-store.js';
import type { FrameStretch, ShownCut } from '../../src/preview/shown-cut.js';
import { page, text } from '../print/documents.js';
import { answer } from './player/answers.js';

const shown = (id: string, more: Partial<ShownCut> = {}): ShownCut => ({
  id,
  file: `${id}.cut`,
  number: id.slice(1),
  title: 'Quay',
  state: 'good',
  fault: '',
  problems: [],
  stamp: 'abc',
  pages: () => [],
  rowsAt: () => null,
  placeOf: () => null,
  play: () => null,
  scan: () => null,
  sound: () => null,
  ...more,
});

function store(...cuts: readonly ShownCut[]): PreviewStore {
  const all = new PreviewStore();
  all.list(cuts.map(({ id }) => id));
  for (const cut of cuts) all.put(cut);
  return all;
}

describe('the list', () => {
  test('is in story order, with what has been looked at so far', () => {
    const all = new PreviewStore();
    all.list(['c2', 'c1', 'c3']);
    all.put(shown('c1'));
    all.put(shown('c2'));
    expect(all.summaries().map(({ id }) => id)).toEqual(['c2', 'c1']);
  });

  test('counts what was shown, and says which cut is new', () => {
    const all = store(shown('c1'));
    expect(all.put(shown('c1', { title: 'Quay, dusk' }))).toEqual({
      fresh: false,
      summary: { ...all.summaries()[0]!, version: 2, title: 'Quay, dusk' },
    });
    expect(all.put(shown('c2'))).toMatchObject({ fresh: true, summary: { version: 3 } });
  });

  test('forgets cuts that are no more: one that comes back is new', () => {
    const all = store(shown('c1'), shown('c2'));
    all.list(['c2']);
    expect(all.cut('c1')).toBeNull();
    all.list(['c1', 'c2']);
    expect(all.put(shown('c1')).fresh).toBe(true);
  });
});

describe('a cut', () => {
  const columns = [{ level: 'A', x: 10, width: 8 }];
  const row = (frame: number) => ({ frame, x: 0, y: 5 * frame, width: 90, height: 5, columns });
  const paper = { ...page([text('Rooftop <dusk>')]), rows: [row(1), row(2)] };
  const all = store(shown('c1', { pages: () => [{ hash: 'h1', page: paper }] }));

  test('has its pages by what stands on them', () => {
    expect(all.cut('c1')).toMatchObject({
      id: 'c1',
      stamp: 'abc',
      problems: [],
      pages: [
        {
          key: 'h1',
          label: paper.label,
          part: paper.part,
          width: paper.widthMm,
          height: paper.heightMm,
          columns: [{ level: 'A', x: 10, width: 8 }],
        },
      ],
    });
    expect(all.cut('c9')).toBeNull();
  });

  test('gives a page as SVG, with texts as texts', () => {
    expect(all.page('c1', 'h1')).toMatch(/^<svg [\s\S]*Rooftop &lt;dusk&gt;/);
    expect(all.page('c1', 'h2')).toBeNull();
    expect(all.page('c9', 'h1')).toBeNull();
  });
});

describe('the rows of a line', () => {
  const frames = (...lines: readonly (readonly FrameStretch[] | null)[]) =>
    store(...lines.map((one, i) => shown(`c${i + 1}`, { rowsAt: () => one && { frames: one, items: [] } })));

  test('are those of every cut that shows it', () => {
    expect(frames([{ from: 1, to: 6 }], null, [{ from: 3, to: 3 }]).lit('a.cut', 4, null)).toEqual({
      line: 4,
      cuts: [
        { id: 'c1', frames: [{ from: 1, to: 6 }], items: [] },
        { id: 'c3', frames: [{ from: 3, to: 3 }], items: [] },
      ],
    });
  });

  test('leave out cuts that use the file and show nothing of the line', () => {
    expect(
      frames([], [{ from: 3, to: 3 }])
        .lit('a.cut', 4, null)!
        .cuts.map(({ id }) => id),
    ).toEqual(['c2']);
  });

  test('are none of the first cut of the file where no cut shows the line', () => {
    expect(frames(null, [], []).lit('a.cut', 4, null)).toEqual({
      line: 4,
      cuts: [{ id: 'c2', frames: [], items: [] }],
    });
  });

  test('of a file that no cut uses are nothing at all', () => {
    expect(frames(null, null).lit('a.cut', 4, null)).toBeNull();
  });
});

test('a row leads to its text in the cut that is named', () => {
  const place = { file: 'a.cut', line: 3, column: 9, text: 'A: 1:12 2:6' };
  const all = store(
    shown('c1'),
    shown('c2', { placeOf: (frame, level) => (frame === 7 && level === 'A' ? place : null) }),
  );
  expect(all.source('c2', 7, 'A')).toEqual(place);
  expect([all.source('c2', 7, null), all.source('c1', 7, 'A'), all.source('c9', 7, 'A')]).toEqual([
    null,
    null,
    null,
  ]);
});

describe('the player', () => {
  const { id: _, version: __, ...play } = answer('c1', 24);
  const asked: unknown[] = [];
  const all = store(
    shown('c1', {
      play: () => play,
      scan: (...more) => {
        asked.push(more);
        return { type: 'image/png', bytes: Buffer.of(1) };
      },
    }),
    shown('c2'),
  );

  test('gets a cut with its version, and nothing of one that cannot be shown', () => {
    expect(JSON.parse(all.play('c1')!)).toMatchObject({ id: 'c1', version: 1, scanDpi: 200 });
    expect([all.play('c2'), all.play('c9')]).toEqual([null, null]);
    all.put(shown('c1', { play: () => play }));
    expect(JSON.parse(all.play('c1')!).version).toBe(3);
  });

  test('names a drawing by its level and its number, or by its level alone', () => {
    const before = store(
      shown('c1', {
        scan: (...more) => {
          asked.push(more);
          return null;
        },
      }),
    );
    for (const key of ['2.14', '0.']) before.scan('c1', key);
    for (const key of ['', '2', '.3', '1.2.3', '-1.2', '1.x', '99999.1'])
      expect(before.scan('c1', key)).toBeNull();
    expect(asked).toEqual([
      [2, 14],
      [0, null],
    ]);
  });

  test('hears nothing of a cut that is not there', () => {
    expect([all.sound('c1'), all.sound('c9')]).toEqual([null, null]);
  });
});
