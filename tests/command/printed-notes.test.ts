/** `compare --output`. */

import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { openPrinted } from '../pdf.js';
import { run } from './run.js';

const cut = (number: number, line: string) => `cut ${number} "Ferry wheel"\ntime 1+0\n${line}\n`;
const OLD = 'A: 1:4--2..';
const NEW = 'A: 1:8--2..';

function world(manifest = 'title: Yard\ncuts: "c*.cut"\n') {
  const host = memoryHost({
    'episode.yaml': manifest,
    'c1.cut': cut(1, NEW),
    'c2.cut': cut(2, OLD),
    'c4.cut': cut(4, NEW),
    'take/c1.cut': cut(1, OLD),
  });
  host.revisions.set(
    'v1',
    memoryHost({
      'episode.yaml': manifest,
      'c1.cut': cut(1, OLD),
      'c2.cut': cut(2, OLD),
      'c4.cut': cut(4, OLD),
      'c5.cut': cut(5, OLD),
    }),
  );
  return host;
}
const textsOf = async (bytes: Uint8Array) =>
  (await openPrinted(bytes)).pages.map(({ texts }) => texts.map(({ text }) => text).join(' '));

describe('compare --output', () => {
  test('prints a note for each cut that changed behind a summary, read back from the PDF', async () => {
    const host = world();
    const result = await run(
      host,
      'compare',
      '--since',
      'v1',
      '--output',
      'note.pdf',
      '--by',
      'R. Esk',
      '--reason',
      'Too quick',
    );
    expect(result).toEqual({
      status: 1,
      out: '',
      error: 'wrote note.pdf: 3 pages\n3 cuts compared: 2 differ\n',
    });
    const [summary, first, second, ...more] = await textsOf(host.files.get('/work/note.pdf')!);
    expect(more).toEqual([]);
    for (const text of ['against v1', 'cut dropped']) expect(summary).toContain(text);
    for (const text of ['held 4 frames longer', 'R. Esk', 'Too quick', '0+5']) expect(first).toContain(text);
    expect(second).toContain('4');
  });

  test('speaks the language of the episode, or the one that is asked for, on the paper that is asked for', async () => {
    const host = world('labels: ja\ncuts: "c*.cut"\n');
    await run(host, 'compare', 'take/c1.cut', 'c1.cut', '-o', 'a.pdf', '-p', 'A3');
    expect((await textsOf(host.files.get('/work/a.pdf')!))[0]).toContain('リテイク票');
    const { pages } = await openPrinted(host.files.get('/work/a.pdf')!);
    expect([pages[0]!.widthMm, pages[0]!.heightMm].map(Math.round)).toEqual([297, 420]);
    await run(host, 'compare', 'take/c1.cut', 'c1.cut', '-o', 'b.pdf', '-l', 'en');
    expect((await textsOf(host.files.get('/work/b.pdf')!))[0]).toContain('Retake note');
  });

  test('writes nothing where nothing differs', async () => {
    const host = world();
    const result = await run(host, 'compare', 'c2.cut', 'c2.cut', '-o', 'x.pdf');
    expect(result).toEqual({ status: 0, out: '', error: 'nothing differs, so no note is printed\n' });
    expect(host.files.has('/work/x.pdf')).toBe(false);
  });

  test.each([
    [['-o', 'x.txt'], '`--output` takes a file whose name ends in .pdf'],
    [['--json', '-o', 'x.pdf'], '`--json` and `--output` do not go together'],
    [['--by', 'me'], '`--by` is printed on the note: it goes with `--output`'],
    [['--reason', 'late'], '`--reason` is printed on the note'],
    [['--paper', 'A3'], '`--paper` is printed on the note'],
  ])('%j: one clear error', async (words, message) => {
    const { status, out, error } = await run(world(), 'compare', 'take/c1.cut', 'c1.cut', ...words);
    expect([status, out]).toEqual([2, '']);
    expect(error).toContain(message);
  });

  test('a letter that the font lacks leaves the mark of missing type', async () => {
    const host = world();
    await run(host, 'compare', 'take/c1.cut', 'c1.cut', '-o', 'x.pdf', '--by', 'Esk 🎬');
    expect((await textsOf(host.files.get('/work/x.pdf')!))[0]).toContain('Esk 〓');
  });
});
