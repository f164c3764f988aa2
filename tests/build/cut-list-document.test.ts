import { describe, expect, test } from 'vitest';
import { listDocument } from '../../src/build/cut-list-document.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run } from '../command/run.js';
import { listOfCuts } from '../sheet/cut-list/lists.js';
import { lookOf } from '../sheet/laid.js';

describe('strange texts', () => {
  const printed = async (cut: string, manifest = '') => {
    const host = memoryHost({ 'episode.yaml': manifest, 'c1.cut': cut, 'c2.cut': CUT.replace('1', '2') });
    const { status, error } = await run(host, 'list', '--output', 'x.pdf');
    const { openPrinted } = await import('../pdf.js');
    const { pages } = await openPrinted(host.files.get('/work/x.pdf')!);
    return { status, error, texts: pages.map(({ texts }) => texts.map(({ text }) => text).join(' ')), pages };
  };

  test('a character that cannot be printed leaves its mark, and the list is printed', async () => {
    const { status, error, texts } = await printed(
      'cut 1 "Rain ☔🎬 é"\ntime 1+0\nA: 1..\n',
      'title: "Ferry 🎬"\n',
    );
    expect(status).toBe(1);
    expect(error).not.toContain('internal-fault');
    expect(texts[0]).toContain('Rain 〓〓 é');
    expect(texts[0]).toContain('Ferry 〓');
  });

  test.each([
    ['a title of 3,000 characters', `cut 1 "${'long '.repeat(600)}"\ntime 1+0\nA: 1..\n`],
    ['a number of 200 letters', `cut ${'abcdefghij'.repeat(20)}\ntime 1+0\nA: 1..\n`],
    ['lines in a title', 'cut 1 "one\\ntwo\\nthree"\ntime 1+0\nartist "A\\nB"\nscene "4\\n5"\nA: 1..\n'],
    ['nothing but a name', 'cut 1\n'],
    ['nothing at all', ''],
  ])('%s', async (_, cut) => {
    const { error, pages } = await printed(cut, 'paper: B5\n');
    expect(error).not.toContain('internal-fault');
    for (const { texts, widthMm, heightMm } of pages)
      for (const { text, x, endX, y } of texts)
        expect(
          x > 4 && endX > 4 && x < widthMm - 4 && endX < widthMm - 4 && y > 4 && y < heightMm - 4,
          text,
        ).toBe(true);
  });
});

describe('the document', () => {
  const outline = (cuts: number, only?: 'cuts' | 'rhythm') => {
    const { title, pages, bookmarks } = listDocument(
      listOfCuts(cuts),
      lookOf({ labels: 'en', title: 'Ferry' }),
      only,
    );
    return { title, pages: pages.length, bookmarks };
  };

  test('opens on the list, then the rhythm; a part of one page has no branch of its own', () => {
    expect(outline(1)).toEqual({
      title: 'Ferry · Cut list',
      pages: 2,
      bookmarks: [
        { title: 'Cut list', page: 0, children: [] },
        { title: 'Rhythm', page: 1, children: [] },
      ],
    });
  });

  test('has a bookmark for each of many pages', () => {
    const { pages, bookmarks } = outline(300);
    const [list, rhythm] = bookmarks;
    expect(list!.children.map(({ page }) => page)).toEqual(Array.from({ length: pages - 1 }, (_, i) => i));
    expect(list!.children.length).toBeGreaterThan(2);
    expect(rhythm).toMatchObject({ page: pages - 1, children: [] });
  });

  test('is of one part where only that is asked for, and named for it', () => {
    expect(outline(1, 'rhythm')).toMatchObject({ title: 'Ferry · Rhythm', pages: 1 });
    expect(outline(1, 'cuts')).toMatchObject({ title: 'Ferry · Cut list', pages: 1 });
  });

  test('of a work without a title is called what it is', () => {
    expect(listDocument(listOfCuts(1), lookOf({ labels: 'en', title: '' })).title).toBe('Cut list');
  });

  test('may be scaled to the paper that is in the printer: nothing is measured on it', () => {
    expect(listDocument(listOfCuts(1), lookOf()).trueSize).toBe(false);
  });
});
