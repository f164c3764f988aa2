import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run } from '../command/run.js';

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
