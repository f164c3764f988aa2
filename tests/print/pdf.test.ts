import { afterEach, describe, expect, test, vi } from 'vitest';
import { MissingGlyph } from '../../src/print/fonts.js';
import { printPdf } from '../../src/print/pdf.js';
import type { Document } from '../../src/sheet/display-list.js';
import { freshFonts, testFonts } from '../fonts.js';
import { openPrinted } from '../pdf.js';
import { faults } from '../qpdf.js';
import { document, line, page, RULED, text } from './documents.js';

const EPISODE: Document = document(
  [
    page([text('1'), { kind: 'tint', x: 9, y: 9, width: 9, height: 9 }], { form: RULED, label: '1' }),
    page([text('夜', { weight: 'bold' }), line(1, 2, 3, 4)], { form: RULED, label: '1-b' }),
    page(
      [{ kind: 'hatch', x: 9, y: 9, width: 9, height: 9, gapMm: 1, stroke: { ink: 'form', widthMm: 0.1 } }],
      {
        label: 'charts 1',
      },
    ),
  ],
  {
    title: 'Salt & <Marsh> 「屋上」 (part\\two)',
    author: 'M. Arai & 新井',
    language: 'ja',
    trueSize: true,
    bookmarks: [
      {
        title: 'Cut 12 「夕」',
        page: 0,
        children: [
          { title: 'Sheet', page: 0, children: [] },
          { title: 'Charts & all', page: 2, children: [] },
        ],
      },
      { title: 'Cut 13', page: 1, children: [] },
    ],
  },
);

const print = (changes: Partial<Document> = {}) => printPdf({ ...EPISODE, ...changes }, testFonts());

describe('the file', () => {
  test('qpdf finds no fault', async () => {
    expect(await faults(await print())).toEqual([]);
    expect(await faults(await print({ pages: [page([])], bookmarks: [], title: '' }))).toEqual([]);
  });

  test('qpdf would find one', async () => {
    const bytes = Buffer.from(await print());
    bytes.write('9', bytes.lastIndexOf(' 00000 n') - 4);
    expect((await faults(bytes)).join('\n')).toMatch(/xref|object/);
  });

  test('title, author, language, labels and bookmarks are those of the document', async () => {
    const { title, author, language, labels, outline } = await openPrinted(await print());
    expect({ title, author, language }).toEqual({
      title: EPISODE.title,
      author: EPISODE.author,
      language: EPISODE.language,
    });
    expect(labels).toEqual(['1', '1-b', 'charts 1']);
    expect(outline).toEqual(EPISODE.bookmarks);
  });

  test('only what is to be printed at 100 % turns the scaling of the viewer off', async () => {
    expect((await openPrinted(await print({ trueSize: true }))).trueSize).toBe(true);
    expect((await openPrinted(await print({ trueSize: true, title: '' }))).trueSize).toBe(true);
    expect((await openPrinted(await print({ trueSize: false }))).trueSize).toBe(false);
  });

  test('is PDF 1.7', async () => {
    expect(
      Buffer.from(await print())
        .subarray(0, 8)
        .toString('latin1'),
    ).toBe('%PDF-1.7');
  });

  test('holds a form once, however many pages it stands on', async () => {
    const pages = Array.from({ length: 40 }, (_, i) => page([text(`${i}`)], { form: RULED, label: `${i}` }));
    const bytes = await print({ pages, bookmarks: [] });
    expect(
      Buffer.from(bytes)
        .toString('latin1')
        .match(/\/Subtype \/Form/g),
    ).toHaveLength(1);
    const printed = await openPrinted(bytes);
    expect(printed.pages.every(({ lines }) => lines.length === RULED.marks.length)).toBe(true);
  });

  test('embeds a small part of the font, and beyond Latin only the characters that are printed', async () => {
    const size = async (...words: string[]) =>
      (await print({ pages: [page(words.map((word) => text(word)))], bookmarks: [] })).length;
    expect(await size('1')).toBeLessThan(15_000);
    expect(await size('1', 'Wait!')).toBeLessThan((await size('1')) + 100);
    const kanji = (await size('1', '亜哀挨愛曖悪握')) - (await size('1'));
    const more = (await size('1', '亜哀挨愛曖悪握圧扱宛嵐安案暗')) - (await size('1'));
    expect(kanji).toBeGreaterThan(1000);
    expect(more).toBeGreaterThan(kanji + 500);
    expect(more).toBeLessThan(8000);
  });

  test('a bookmark to a page that is not there is refused', async () => {
    await expect(print({ bookmarks: [{ title: 'Lost', page: 3, children: [] }] })).rejects.toThrow('Lost');
  });

  test('a character without a glyph is never printed as something else', async () => {
    const printing = print({ pages: [page([text('at \u{1F6A2} sea')])], bookmarks: [] });
    await expect(printing).rejects.toBeInstanceOf(MissingGlyph);
    await expect(printing).rejects.toMatchObject({
      character: '\u{1F6A2}',
      weight: 'regular',
      text: 'at \u{1F6A2} sea',
    });
    await expect(print({ pages: [page([text('a\nb')])], bookmarks: [] })).rejects.toThrow('U+000A');
  });
});

describe('the same document gives the same bytes', () => {
  const zone = process.env.TZ;

  afterEach(() => {
    vi.useRealTimers();
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
  });

  test('with the clock moved', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('1999-12-31T23:59:59Z') });
    const before = await print();
    vi.setSystemTime(new Date('2038-01-19T03:14:08Z'));
    expect(await print()).toEqual(before);
  });

  test('in another time zone', async () => {
    process.env.TZ = 'Asia/Tokyo';
    const offset = new Date(0).getTimezoneOffset();
    const before = await print();
    process.env.TZ = 'America/St_Johns';
    expect(new Date(0).getTimezoneOffset()).not.toBe(offset);
    expect(await print()).toEqual(before);
  });

  test('whatever the fonts have printed before', async () => {
    const fonts = freshFonts();
    await printPdf(document([page([text('a-b\u00adc ～〜 other text')])]), fonts);
    expect(await printPdf(EPISODE, fonts)).toEqual(await printPdf(EPISODE, freshFonts()));
  });

  test('and another document another identifier', async () => {
    const identifier = (bytes: Uint8Array) =>
      Buffer.from(bytes)
        .toString('latin1')
        .match(/\/ID \[<(\w{32})>/)![1];
    const first = identifier(await print());
    expect(identifier(await print())).toBe(first);
    expect(identifier(await print({ title: 'Salt' }))).not.toBe(first);
    expect(identifier(await print({ pages: [...EPISODE.pages, page([])] }))).not.toBe(first);
  });
});
