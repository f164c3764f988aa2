import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { lookInto } from './pdf.js';
import { fileNames, isPdf, run } from './run.js';

describe('blank', () => {
  const forms = async (files: Record<string, string>, ...argv: string[]) => {
    const host = memoryHost(files);
    const { status, error } = await run(host, 'blank', ...argv);
    expect({ status, error: error.match(/error.*/) }).toEqual({ status: 0, error: null });
    return lookInto(host.files.get('/work/blank.pdf')!);
  };

  test('prints copies of the form, on the paper and in the language that was asked for', async () => {
    const { texts, sizes, language } = await forms(
      {},
      '--convention',
      'west',
      '--paper',
      'legal',
      '--levels',
      '6',
      '--pages',
      '2',
    );
    expect(texts).toHaveLength(2);
    expect(texts[0]).toBe(texts[1]);
    expect(sizes.map(([width]) => Math.round(width!))).toEqual([612, 612]);
    expect(language).toBe('en');
    expect((await forms({}, '-l', 'ja')).language).toBe('ja');
  });

  test('is the form of the episode that the folder belongs to', async () => {
    const { sizes, language, title } = await forms({
      'episode.yaml': 'paper: A3\nlabels: ja\ntitle: Harbour\n',
    });
    expect([Math.round(sizes[0]![0]!), language]).toEqual([842, 'ja']);
    expect(title).toContain('Harbour');
  });

  test('to standard output, and not onto a full disk', async () => {
    const host = memoryHost();
    expect((await run(host, 'blank', '-o', '-')).status).toBe(0);
    expect(isPdf(host.printedBytes())).toBe(true);
    host.room = 10;
    expect(await run(host, 'blank')).toMatchObject({
      status: 2,
      error: expect.stringContaining('the disk is full'),
    });
    expect(fileNames(host)).toEqual([]);
  });
});
