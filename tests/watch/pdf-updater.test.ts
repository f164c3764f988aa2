import { describe, expect, test } from 'vitest';
import { CutPrinter } from '../../src/build/cut-printer.js';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { PdfUpdater } from '../../src/watch/pdf-updater.js';

const CUT = 'cut 1\ntime 1+0\nA: 1{late}--2..\n';

async function world(files: Readonly<Record<string, string>> = { 'a.cut': CUT }, output?: string) {
  const host = memoryHost(files);
  const found = await findCuts(host, ['a.cut']);
  const [job] = found.jobs;
  const printer = CutPrinter.open(host);
  const cache = newEpisodeCache();
  const look = () => {
    const compiled = compile(host, job!.path, job!.episode, { name: job!.name, cache });
    return {
      compiled,
      prepared: printer.prepare({ host, job: job!, compiled, solved: compiled.solved!, cache }),
    };
  };
  const pdfs = new PdfUpdater(host, found, output);
  return { host, job: job!, pdfs, printer, look, print: () => pdfs.print(printer, look().prepared) };
}

test('a cut is written, and not again as long as its paper is the same', async () => {
  const { host, print } = await world();
  expect(await print()).toEqual({ line: 'a.cut → a.pdf, 2 pages', news: true, fault: null });
  const first = host.files.get('/work/a.pdf');
  host.files.set('/work/a.cut', Buffer.from(`# a remark\n${CUT}`));
  expect(await print()).toEqual({ line: 'a.cut: nothing changes on paper', news: false, fault: null });
  expect(host.files.get('/work/a.pdf')).toBe(first);
  host.files.set('/work/a.cut', Buffer.from(CUT.replace('--', '---')));
  expect((await print()).news).toBe(true);
  expect(host.files.get('/work/a.pdf')).not.toBe(first);
});

test('its pages are shown before its file is made, and what that sends has left by then', async () => {
  const { host, pdfs, printer, look } = await world();
  const order: string[] = [];
  const make = printer.cut.bind(printer);
  printer.cut = (...given) => {
    order.push('made');
    return make(...given);
  };
  const { fault } = await pdfs.print(printer, look().prepared, ({ pages }) => {
    order.push(`${pages.length} pages shown`);
    // As the server of the live view does: what it writes is held back until this turn of work is done.
    process.nextTick(() => order.push('sent'));
  });
  expect(order).toEqual(['2 pages shown', 'sent', 'made']);
  expect(host.files.has('/work/a.pdf')).toBe(true);
  expect(fault).toBeNull();
  // A failure to write is told though the pages were shown.
  host.room = 10;
  host.files.set('/work/a.cut', Buffer.from(CUT.replace('--', '---')));
  let shown = false;
  const failed = await pdfs.print(printer, look().prepared, () => {
    shown = true;
  });
  expect([shown, failed.fault?.code]).toEqual([true, 'output-unwritable']);
});

test('it goes where the command line says', async () => {
  const { host, job, pdfs, print } = await world({ 'a.cut': CUT }, 'out/');
  expect(pdfs.path(job)).toBe('/work/out/a.pdf');
  expect((await print()).line).toBe('a.cut → out/a.pdf, 2 pages');
  expect(host.files.has('/work/out/a.pdf')).toBe(true);
});

describe('what cannot be written', () => {
  test('keeps the PDF that is there, and says why', async () => {
    const { host, print } = await world({ 'a.cut': CUT, 'a.pdf': 'old' });
    host.room = 10;
    expect(await print()).toMatchObject({
      line: 'a.cut: not written; a.pdf is kept as it was',
      news: true,
      fault: { code: 'output-unwritable' },
    });
    expect(Buffer.from(host.files.get('/work/a.pdf')!).toString()).toBe('old');
  });

  test('is nothing printed where there was no PDF', async () => {
    const { host, print } = await world();
    host.locked.add('/work/a.pdf');
    expect((await print()).line).toBe('a.cut: not written; nothing is printed');
  });

  test('would write over a text that is read', async () => {
    const { print } = await world({ 'a.cut': CUT }, 'a.cut');
    expect(await print()).toMatchObject({ fault: { code: 'output-is-input' } });
  });
});

test('what is said of a broken cut and of one that is gone depends on whether there is a PDF', async () => {
  const broken = CUT.replace('..', '');
  const without = await world({ 'a.cut': broken });
  expect(without.pdfs.broken(without.job, without.look().compiled, false)).toBe(
    'a.cut: 1 error; nothing is printed',
  );
  expect(without.pdfs.left(without.job)).toBe('');
  const printed = await world({ 'a.cut': broken, 'a.pdf': 'old' });
  expect(printed.pdfs.broken(printed.job, printed.look().compiled, false)).toBe(
    'a.cut: 1 error; a.pdf is kept as it was',
  );
  expect(printed.pdfs.left(printed.job)).toBe('; a.pdf is left as it is');
});
