import { describe, expect, test } from 'vitest';
import { moveSignatureAt } from '../../src/lsp/move-signature.js';
import { loadReference } from '../../src/reference/reference-language.js';
import { opened } from './opened.js';

/** The part that the cursor stands in, as it is written in the signature. */
async function part(move: string): Promise<string | null> {
  const { analysis, cursor } = await opened(`cut 1\ntime 2+0\n${move}\nA: 1..\n`);
  const help = moveSignatureAt(analysis, cursor);
  if (!help) return null;
  const { label, parameters } = help.signatures[0]!;
  const [start, end] = parameters![help.activeParameter!]!.label as [number, number];
  return label.slice(start, end);
}

describe('the signature of a move', () => {
  test('has its parts with their meanings', async () => {
    const { analysis, cursor } = await opened('pan |');
    const { label, parameters } = moveSignatureAt(analysis, cursor)!.signatures[0]!;
    expect(label).toMatch(/^pan A@1\+1 > B@5\+0 .*ease 6 12/);
    expect(JSON.stringify(parameters)).toContain('exactly on field A');
  });

  test.each([
    ['pan |', 'A@1+1 > B@5+0'],
    ['pan A@1 > |', 'A@1+1 > B@5+0'],
    ['pan A@1 > B@24 ease |', 'ease 6 12'],
    ['pan A@1 > B@24 ease 6 12 carry A|', 'carry A,B'],
    ['pan A@1 > B@24 ease 6 > |', '> C@5+0'],
    ['truck level A 100%@1 > 80%@24 about |', 'about 10,20'],
  ])('%s', async (move, expected) => {
    expect(await part(move)).toBe(expected);
  });

  test('is there for moves only', async () => {
    expect(await part('memo |')).toBe(null);
    expect(await part('A: 1 |')).toBe(null);
    expect(await part('pan A@1 > B@24 # |')).toBe(null);
  });
});

test('the title and the meanings are in the language of the editor', async () => {
  await loadReference('ja');
  const { analysis, cursor } = await opened('cut 1\ntime 1+0\npan |', {}, { language: 'ja' });
  const { documentation, parameters } = moveSignatureAt(analysis, cursor)!.signatures[0]!;
  expect(documentation).toBe('フレームからフレームへのカメラの移動（PAN）');
  for (const { documentation: meaning } of parameters!)
    expect((meaning as { value: string }).value).toMatch(/[\u3040-\u30ff]/);
});
