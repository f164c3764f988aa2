import { describe, expect, test } from 'vitest';
import { parse } from '../../../src/language/parse.js';

function mouth(text: string) {
  const { tree, diagnostics } = parse('c.cut', text);
  const [one] = tree.statements;
  return { one: one?.kind === 'mouth' ? one : null, codes: diagnostics.map(({ code }) => code) };
}

describe('a mouth statement', () => {
  test('names a level, a speaker and three drawings', () => {
    const { one, codes } = mouth('mouth C "Nao" 1 2 3a');
    expect(codes).toEqual([]);
    expect([one!.level.text, one!.speaker.text]).toEqual(['C', 'Nao']);
    expect(one!.drawings.map(({ key, vowel }) => [key.text, vowel])).toEqual([
      ['1', null],
      ['2', null],
      ['3a', null],
    ]);
    expect([one!.on, one!.lead, one!.flaps]).toEqual([null, null, null]);
  });

  test('has a vowel before each drawing but the first, as a Japanese keyboard types it too', () => {
    const { one, codes } = mouth('mouth　ウ　「ピム」　１　a　２　ｉ　３　う　４　e 5 o 06');
    expect(codes).toEqual([]);
    expect(one!.drawings.map(({ key, vowel }) => `${vowel?.text ?? ''}${key.text}`)).toEqual([
      '1',
      'a2',
      'i3',
      'う4',
      'e5',
      'o6',
    ]);
  });

  test.each(['on 3 lead 2 flaps', 'flaps lead 2 on 3', 'lead 2 flaps on 3'])(
    'says %s in any order',
    (options) => {
      const { one, codes } = mouth(`mouth C "Nao" 1 2 3 ${options}`);
      expect(codes).toEqual([]);
      expect([one!.on!.value, one!.lead!.value, one!.flaps === null]).toEqual([3, 2, false]);
    },
  );

  test.each([
    ['mouth C "Nao" 1 2 3 on 3 on 2', 'part-twice'],
    ['mouth C "Nao"', 'stops-short'],
    ['mouth C Nao 1 2 3', 'missing-quotes'],
    ['mouth C "Nao" a 1 2 3', 'does-not-fit'],
    ['mouth C "Nao" 1 2 3 flap', 'does-not-fit'],
    ['mouth C "Nao" 1 2 3 lead', 'stops-short'],
  ])('%s is wrong', (text, code) => {
    expect(mouth(text).codes).toEqual([code]);
  });

  test('a level may be called mouth', () => {
    expect(parse('c.cut', 'mouth: 1..\n').tree.statements[0]).toMatchObject({ kind: 'timeline' });
  });
});
