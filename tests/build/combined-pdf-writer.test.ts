import { describe, expect, test } from 'vitest';
import { CombinedPdfWriter } from '../../src/build/combined-pdf-writer.js';
import type { CutPages } from '../../src/build/cut-document.js';
import { STANDARD_OUTPUT } from '../../src/build/output-targets.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { privateWords } from '../../src/print/info-dictionary.js';
import { PageWriter, type WrittenPage } from '../../src/print/page-writer.js';
import { lookInto } from '../command/pdf.js';
import { isPdf } from '../command/run.js';
import { testFonts } from '../fonts.js';
import { page, text } from '../print/documents.js';

const TARGET = { path: '/work/all.pdf', name: 'all.pdf' };
const ABOUT = { title: 'Ferry 3', language: 'en' };

/** A cut of so many pages. */
const cut = (title: string, count: number): CutPages<WrittenPage> => ({
  title,
  parts: [
    {
      title: 'Sheet',
      pages: Array.from({ length: count }, (_, i) =>
        PageWriter.of(testFonts()).write(page([text(`${title} page ${i + 1}`)])),
      ),
    },
  ],
});

async function opened(host: MemoryHost, target: { path: string | null; name: string } = TARGET) {
  const writer = await CombinedPdfWriter.open(host, target, testFonts(), ABOUT);
  if (!writer.ok) throw new Error(writer.reason);
  return writer.value;
}

test('cuts stand one after the other, with a branch of the outline each, and their artists', async () => {
  const host = memoryHost();
  const writer = await opened(host);
  expect(writer.add('1', cut('Cut 1', 2), ['M. Arai'])).toEqual({ ok: true, value: null });
  writer.add('2', cut('Cut 2', 1), ['Shiomi', 'M. Arai']);
  expect(writer.pages).toBe(3);
  expect(host.files.size).toBe(0);
  expect(await writer.finish('a record')).toEqual({ ok: true, value: null });
  const bytes = host.files.get('/work/all.pdf')!;
  const { title, author, labels, texts, outline } = await lookInto(bytes);
  const { label } = page([]);
  expect({ title, author, labels }).toEqual({
    title: 'Ferry 3',
    author: 'M. Arai, Shiomi',
    labels: [`1/${label}`, `1/${label}`, `2/${label}`],
  });
  expect(texts.map((one) => one.trim())).toEqual(['Cut 1 page 1', 'Cut 1 page 2', 'Cut 2 page 1']);
  expect(
    outline.map((one) => [one.title, one.page, one.children.map(({ title, page }) => [title, page])]),
  ).toEqual([
    ['Cut 1', 0, [['Sheet', 0]]],
    ['Cut 2', 2, [['Sheet', 2]]],
  ]);
  expect(privateWords((most) => ({ bytes: bytes.subarray(-most), size: bytes.length }))).toBe('a record');
});

test('a page that cuts share is in the branch of each', async () => {
  const host = memoryHost();
  const writer = await opened(host);
  const shared = PageWriter.of(testFonts()).write(page([text('covers')]));
  writer.add('1', cut('Cut 1', 1), []);
  expect(writer.addShared(shared, ['Cut 2', 'Cut 3'], ['Shiomi'])).toEqual({ ok: true, value: null });
  await writer.finish('');
  const { author, outline } = await lookInto(host.files.get('/work/all.pdf')!);
  expect(author).toBe('Shiomi');
  expect(outline.slice(1)).toEqual([
    { title: 'Cut 2', page: 1, children: [] },
    { title: 'Cut 3', page: 1, children: [] },
  ]);
});

describe('what goes wrong', () => {
  test('at the beginning is said, and there is no writer', async () => {
    const host = memoryHost({ 'all.pdf/x': '' });
    expect(await CombinedPdfWriter.open(host, TARGET, testFonts(), ABOUT)).toEqual({
      ok: false,
      reason: 'is a folder',
    });
  });

  test('at the end leaves the file that was there', async () => {
    const host = memoryHost({ 'all.pdf': 'old' });
    host.room = 100;
    const writer = await opened(host);
    writer.add('1', cut('Cut 1', 1), []);
    expect(await writer.finish('')).toEqual({ ok: false, reason: 'the disk is full' });
    expect(Buffer.from(host.files.get('/work/all.pdf')!).toString()).toBe('old');
    expect(host.room).toBe(100);
  });
});

describe('standard output', () => {
  test('gets the file when it is whole', async () => {
    const host = memoryHost();
    const writer = await opened(host, STANDARD_OUTPUT);
    writer.add('1', cut('Cut 1', 1), []);
    expect(host.printedBytes()).toHaveLength(0);
    await writer.finish('');
    expect(isPdf(host.printedBytes())).toBe(true);
  });

  test('gets nothing of one that was dropped', async () => {
    const host = memoryHost();
    const writer = await opened(host, STANDARD_OUTPUT);
    writer.add('1', cut('Cut 1', 1), []);
    writer.drop();
    expect(host.printedBytes()).toHaveLength(0);
  });
});
