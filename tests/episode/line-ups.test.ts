/** `same 4`, among the cuts of an episode. */

import { describe, expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { episodeOf } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { note } from '../compare/say.js';
import { laid, said } from '../sheet/laid.js';

const cut = (number: string, lines: string) => `cut ${number}\ntime 1+0\n${lines}A: 1..\n`;

async function told(lines: string, manifest: string | null = ''): Promise<string[]> {
  const files = { 'a.cut': cut('12', lines), 'b.cut': cut('004', ''), 'c.cut': cut('7B', '') };
  const host = memoryHost(manifest === null ? files : { ...files, 'episode.yaml': manifest });
  const { diagnostics } = compile(host, '/work/a.cut', await episodeOf(host, '/work'));
  return diagnostics.map(({ severity, code, span }) => `${severity} ${code} ${span.start}`);
}

describe('a cut that lines up with another', () => {
  test('finds it by its number, however that is written', async () => {
    expect(await told('same 4 "the stairs"\nsame 7b\n')).toEqual([]);
  });

  test('is warned of one that the episode does not have, and of itself', async () => {
    expect(await told('same 40\nsame 12\n')).toEqual(['warning same-unknown 21', 'warning same-unknown 29']);
  });

  test('is not held against files where there is no episode', async () => {
    expect(await told('same 40\n', null)).toEqual([]);
  });

  test('says each other cut once', async () => {
    expect(await told('same 4\nsame 4 "door"\n')).toEqual(['error statement-twice 23']);
  });

  test('says it in the memo, in the words of the form', () => {
    const text = cut('12', 'same 4 "the stairs"\nsame 9\n');
    expect(said(laid(text)[0]!)).toContain('same as cut 4: the stairs');
    expect(said(laid(text, { labels: 'ja' })[0]!)).toContain('カット9 と同ポジ');
  });

  test('is compared', () => {
    expect(note(cut('12', ''), cut('12', 'same 4 "the stairs"\n'))).toEqual([
      'same as cut 4 the stairs (was none)',
    ]);
    expect(note(cut('12', 'same 04\n'), cut('12', 'same 4\n'))).toEqual([]);
  });
});
