import { describe, expect, test } from 'vitest';
import { messageOf } from '../../../src/language/message.js';
import { parse } from '../../../src/language/parse.js';
import { bind } from '../../../src/shot/bind-cut.js';
import { defaults } from '../../../src/shot/settings.js';
import { explained } from '../../explained.js';

/** Nine morae a second are the most: 27 in three seconds. */
const LONG = 'いろはにほへとちりぬるをわかよたれそつねならむうゐの';

function told(lines: string, time = '8+0', dictionary?: (word: string) => string | null) {
  const { tree } = parse('c.cut', `cut 1\ntime ${time}\nA: 1..\n${lines}\n`);
  const { diagnostics } = bind(tree, [], defaults, dictionary ? { dictionary } : {});
  const found = diagnostics.filter(({ code }) => code === 'line-too-fast');
  return {
    said: found.map((one) => messageOf(one, 'en')),
    fixes: found.map(({ fix }) => fix?.edits[0]?.text ?? null),
  };
}

describe('a line that nobody can speak so fast', () => {
  test('says how long it wants to be, and offers a later end', () => {
    expect(told(`voice "Nao" 1+1..3+0 "${LONG}"`)).toEqual({
      said: ['26 morae in 2+0 are 13 a second, and people speak 9 at most; the line wants about 4+8.'],
      fixes: ['5+8'],
    });
  });

  test('is one above nine morae a second, not at nine', () => {
    expect(told(`voice "Nao" 1..69 "${LONG}"`).said).toHaveLength(1);
    expect(told(`voice "Nao" 1..70 "${LONG}"`).said).toEqual([]);
  });

  test('is one above seven syllables a second', () => {
    const text = 'the red ship went down to the sea, the red ship went on';
    expect(told(`voice "Nao" 1..44 "${text}"`).said).toHaveLength(1);
    expect(told(`voice "Nao" 1..45 "${text}"`).said).toEqual([]);
  });

  test.each([
    ['25..48', '128'],
    ["1'09..3'00", "7'16"],
    ['25..hit', 'hit+80'],
    ['1+1..hit+24', 'hit+80'],
  ])('writes the end as it was written: %s', (range, end) => {
    expect(told(`mark hit 2+0\nvoice "Nao" ${range} "${LONG}"`).fixes).toEqual([end]);
  });

  test('goes on until the next line at most, and offers nothing where that is too little', () => {
    const next = (row: number) =>
      told(`voice "Nao" 1..24 "${LONG}"\nvoice "Pim" ${row}..${row + 23} "ああああ"`);
    expect(next(91).fixes).toEqual(['90']);
    expect(next(61).fixes).toEqual([null]);
    expect(told(`voice "Nao" 1..24 "${LONG}"`, '2+0').fixes).toEqual([null]);
  });

  test.each([
    ['words tied to rows', `voice "Nao" 1..24 "いろは" @9 "にほへとちりぬるを"`],
    ['a song', `voice "Nao" 1..24 "♪${LONG}"`],
    ['an interjection', 'voice "Nao" 1..2 "ええ"'],
    ['a line that goes on over the end', `voice "Nao" 7+13.. "${LONG}"`],
    ['kanji that nobody can read', 'voice "Nao" 1..6 "色は匂へど散りぬるを"'],
    ['a sound', `sound 1..24 "${LONG}"`],
  ])('%s is none', (_, lines) => {
    expect(told(lines).said).toEqual([]);
  });

  test('where spelling counts too many syllables the dictionary has the last word', () => {
    const words = new Map([['something', 'S AH1 M TH IH0 NG']]);
    const asked: string[] = [];
    const dictionary = (word: string) => {
      asked.push(word);
      return words.get(word) ?? null;
    };
    const text = `voice "Nao" 1..14 "something something"`;
    expect(told(text).said).toHaveLength(1);
    expect(told(text, '8+0', dictionary).said).toEqual([]);
    expect(asked).toContain('something');
    const slow: string[] = [];
    told('voice "Nao" 1..96 "something something"', '8+0', (word) => {
      slow.push(word);
      return null;
    });
    expect(slow).toEqual([]);
  });
});

describe('a line that is spoken too fast, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a line that is spoken too fast',
      'time 8+0\nA: 1..\nvoice "Nao" 1+1..3+0 "いろはにほへとちりぬるをわかよたれそつねならむうゐの"',
      [
        'hint «1+1..3+0» 26 morae in 2+0 are 13 a second, and people speak 9 at most; the line wants about 4+8.',
        ' > end on `5+8`: «3+0» → «5+8»',
      ],
    ],
    [
      'one with too little room for it',
      'time 8+0\nA: 1..\nvoice "Nao" 1..24 "いろはにほへとちりぬるをわかよたれそつねならむうゐの"\nvoice "Pim" 61..84 "ああああ"',
      ['hint «1..24» 26 morae in 1+0 are 26 a second, and people speak 9 at most; the line wants about 4+8.'],
    ],
    [
      'one with a sound behind it',
      'time 8+0\nA: 1..\nvoice "Nao" 1..24 "いろはにほへとちりぬるをわかよたれそつねならむうゐの"\nsound 61..84 "bell"',
      [
        'hint «1..24» 26 morae in 1+0 are 26 a second, and people speak 9 at most; the line wants about 4+8.',
        ' > end on `104`: «24» → «104»',
      ],
    ],
    [
      'one that is typed in feet',
      'time 8+0\nA: 1..\nvoice "Nao" 1..1\'08 "いろはにほへとちりぬるをわかよたれそつねならむうゐの"',
      [
        "hint «1..1'08» 26 morae in 1'08 are 26 a second, and people speak 9 at most; the line wants about 6'08.",
        " > end on `6'08`: «1'08» → «6'08»",
      ],
    ],
    [
      'one with just room enough',
      'time 8+0\nA: 1..\nvoice "Nao" 1..24 "いろはにほへとちりぬるをわかよたれそつねならむうゐの"\nvoice "Pim" 71..94 "ああああ"',
      [
        'hint «1..24» 26 morae in 1+0 are 26 a second, and people speak 9 at most; the line wants about 4+8.',
        ' > end on `70`: «24» → «70»',
      ],
    ],
    [
      'one with a frame too little',
      'time 8+0\nA: 1..\nvoice "Nao" 1..24 "いろはにほへとちりぬるをわかよたれそつねならむうゐの"\nvoice "Pim" 70..93 "ああああ"',
      ['hint «1..24» 26 morae in 1+0 are 26 a second, and people speak 9 at most; the line wants about 4+8.'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
