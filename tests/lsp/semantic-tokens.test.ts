import { describe, expect, test } from 'vitest';
import { LEGEND, semanticTokensIn } from '../../src/lsp/semantic-tokens.js';
import { opened } from './opened.js';

/** `typed: type`, with a star where a name is defined. The five numbers a token of the protocol are counted on from the one before. */
async function typed(text: string, within: { start: number; end: number } | null = null): Promise<string[]> {
  const { analysis } = await opened(text);
  const { data } = semanticTokensIn(analysis, within);
  const found: string[] = [];
  let line = 0;
  let character = 0;
  for (let i = 0; i < data.length; i += 5) {
    const [lines, characters, length, type, modifiers] = data.slice(i, i + 5) as [
      number,
      number,
      number,
      number,
      number,
    ];
    line += lines;
    character = lines > 0 ? characters : character + characters;
    const start = analysis.text.offset({ line, character });
    const name = LEGEND.tokenTypes[type];
    found.push(`${analysis.text.text.slice(start, start + length)}: ${name}${modifiers === 1 ? '*' : ''}`);
  }
  return found;
}

describe('a piece of the text', () => {
  test('is a word of the language, a number, a text or a comment', async () => {
    expect(await typed('time 12 # two\nmemo "x"\n')).toEqual([
      'time: keyword',
      '12: number',
      '# two: comment',
      'memo: keyword',
      '"x": string',
    ]);
  });

  test('of a timeline is a key, an in-between, a sign or a name', async () => {
    expect(await typed('cut 1\ntime 1+0\nA: 1-2 walk..\n')).toEqual(
      expect.arrayContaining([
        'A: class*',
        ':: operator',
        '1: enumMember',
        '-: property',
        'walk: function',
        '..: operator',
      ]),
    );
  });

  test('behind a brace is a chart, which has no name of its own', async () => {
    expect(await typed('cut 1\ntime 1+0\nA: 1-{late}-2..\n')).toContain('late: keyword');
  });

  test('is drawn as what it names, also in a line of numbers', async () => {
    const found = await typed('cut 1\ntime 1+0\nA: 1-2..\ncels A 1 1.1 _ 2\n');
    expect(found.slice(found.lastIndexOf('cels: keyword'))).toEqual([
      'cels: keyword',
      'A: class',
      '1: enumMember',
      expect.stringMatching(/^1\.1: property$/),
      '_: operator',
      '2: enumMember',
    ]);
  });
});

test('a stretch has only the pieces that touch it', async () => {
  expect(await typed('cut 1\ntime 12\nmemo "x"\n', { start: 7, end: 9 })).toEqual(['time: keyword']);
});

test('a length is counted as the editor counts characters', async () => {
  const { analysis } = await opened('memo "𠮷"\n', {}, { encoding: 'utf-8' });
  // A pair of quotes and four bytes (Unicode Standard, 3.9).
  expect(semanticTokensIn(analysis).data.slice(5, 8)).toEqual([0, 5, 6]);
});
