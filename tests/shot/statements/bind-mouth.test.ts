import { describe, expect, test } from 'vitest';
import { messageOf } from '../../../src/language/message.js';
import { compileText } from '../../compile.js';
import { explained } from '../../explained.js';

const LINE = 'voice "Nao" 7..1+20 "Wait for me!"';

function told(text: string) {
  const { shot, diagnostics } = compileText(`cut 1\ntime 2+0\n${text}\n`);
  return {
    level: shot?.levels.at(-1),
    codes: diagnostics.map(({ code }) => code),
    said: diagnostics.map((one) => messageOf(one, 'en')),
    fixes: diagnostics.map(({ fix }) => fix?.edits.map((edit) => edit.text).join('') ?? null),
  };
}

describe('a mouth', () => {
  test('is known of its level, with what it was made of', () => {
    const { level, codes } = told(`on 3\nmouth C "Nao" 1 2 3\n${LINE}`);
    expect(codes).toEqual([]);
    expect(level).toMatchObject({
      name: 'C',
      title: 'Nao, mouth',
      mouth: { speaker: 'Nao', on: 3, lead: 1 },
    });
    expect([...level!.mouth!.drawings]).toEqual([
      ['closed', '1'],
      ['half', '2'],
      ['open', '3'],
    ]);
    expect(level!.mouth!.lines.map(({ read }) => read)).toEqual([true]);
  });

  test('may stand before and behind its lines', () => {
    const behind = told(`${LINE}\nmouth C "Nao" 1 2 3`).level!.timeline!.items;
    const before = told(`mouth C "Nao" 1 2 3\n${LINE}`).level!.timeline!.items;
    const frames = (items: typeof before) => items.map((item) => 'frames' in item && item.frames);
    expect(frames(behind)).toEqual(frames(before));
  });

  test('of a level with a timeline is an error that offers to take it out', () => {
    expect(told(`mouth A "Nao" 1 2 3\nA: 1..\n${LINE}`)).toMatchObject({
      codes: ['mouth-and-timeline'],
      fixes: [''],
      level: { mouth: null },
    });
  });

  test('is said once of a level', () => {
    expect(told(`mouth A "Nao" 1 2 3\nmouth A "Nao" 1 2 3\n${LINE}`).codes).toEqual(['statement-twice']);
  });

  test.each([
    ['1 2', 'The mouth of level A has 2 drawings; it needs three: closed, half open and open.'],
    ['1 2 3 4', 'The mouth of level A has 4 drawings; it needs three: closed, half open and open.'],
    ['1 a 2 i 3 u 4 e 5', 'The mouth of level A has no drawing for `o`.'],
    ['1 a 2 i 3', 'The mouth of level A has no drawing for `u`, `e` or `o`.'],
    ['1 a 2 i 3 u 4 e 5 a 6', 'The mouth of level A has two drawings for `a`.'],
    ['1 a 2 3 u 4 e 5 o 6', 'Drawing 3 of the mouth on level A needs its vowel before it: a, i, u, e or o.'],
    ['1 a 2 i 3 u 4 e 5 y 6', '`y` is no vowel; a mouth has a, i, u, e and o.'],
    ['1 2 3 lead 13', 'A mouth leads its sound by 12 frames at most.'],
    ['1 2 3 on 0', '`on` takes a whole number of frames from 1 to 240.'],
  ])('%s: %s', (drawings, message) => {
    expect(told(`mouth A "Nao" ${drawings}\n${LINE}`).said).toEqual([message]);
  });

  test('of somebody who does not speak offers the name that is meant, or tells who does', () => {
    expect(told(`mouth A "Noa" 1 2 3\n${LINE}`)).toMatchObject({
      said: ['“Noa” does not speak in this cut; did you mean `Nao`?'],
      fixes: ['"Nao"'],
    });
    expect(told(`mouth A "Pim" 1 2 3\n${LINE}\nvoice "Oda" 1+21..2+0 "Now!"`).said).toEqual([
      '“Pim” does not speak in this cut; its speakers are “Nao”, “Oda”.',
    ]);
    expect(told('mouth A "Pim" 1 2 3').said).toEqual(['“Pim” does not speak in this cut; nobody does.']);
    expect(told('mouth A "Nao" 1 2 3\nvoice "Nao" off 7..1+20 "Wait!"').codes).toEqual(['mouth-silent']);
  });

  test('of somebody whose line cannot be read is not doubted', () => {
    expect(told('mouth A "Nao" 1 2 3\nvoice "Nao" 7.. Wait!').codes).toEqual(['unknown-character']);
  });

  test('outside the stack is an error', () => {
    expect(told(`stack BG A\nA: 1..\nmouth C "Nao" 1 2 3\n${LINE}`).codes).toEqual(['level-outside']);
  });
});

describe('what is said of a mouth, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'three drawings, one missing',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 2',
      ['error «1 2» The mouth of level M has 2 drawings; it needs three: closed, half open and open.'],
    ],
    [
      'four drawings',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 2 3 4',
      ['error «1 2 3 4» The mouth of level M has 4 drawings; it needs three: closed, half open and open.'],
    ],
    [
      'vowels of which two are missing',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 a 2 i 3 u 4',
      ['error «1 a 2 i 3 u 4» The mouth of level M has no drawing for `e` or `o`.'],
    ],
    [
      'a vowel twice',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 a 2 あ 3 u 4 e 5 o 6',
      ['error «あ 3» The mouth of level M has two drawings for `a`.'],
    ],
    [
      'a drawing without a vowel',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 a 2 3 u 4 e 5 o 6',
      ['error «3» Drawing 3 of the mouth on level M needs its vowel before it: a, i, u, e or o.'],
    ],
    [
      'no vowel',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 a 2 k 3 u 4 e 5 o 6',
      ['error «k» `k` is no vowel; a mouth has a, i, u, e and o.'],
    ],
    [
      'a vowel that is nearly one',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 a 2 ii 3 u 4 e 5 o 6',
      ['error «ii» `ii` is no vowel; a mouth has a, i, u, e and o.'],
    ],
    ['a lead of half a second', 'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 2 3 lead 12', []],
    [
      'a lead of more',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 2 3 lead 13',
      ['error «13» A mouth leads its sound by 12 frames at most.'],
    ],
    [
      'on nothing',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 2 3 on 0',
      ['error «0» `on` takes a whole number of frames from 1 to 240.'],
    ],
    [
      'a speaker who says nothing',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nso" 1 2 3',
      [
        'warning «"Nso"» “Nso” does not speak in this cut; did you mean `Nao`?',
        ' > write `Nao`: «"Nso"» → «"Nao"»',
      ],
    ],
    [
      'a speaker whom nobody resembles',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nvoice "Ken" 25..48 "I am here"\nmouth M "Margarete" 1 2 3',
      ['warning «"Margarete"» “Margarete” does not speak in this cut; its speakers are “Nao”, “Ken”.'],
    ],
    [
      'a speaker who is not seen',
      'time 2+0\nvoice "Nao" off 1..24 "Wait here"\nmouth M "Nao" 1 2 3',
      [
        'warning «"Nao"» “Nao” speaks in this cut only out of the picture or as an inner voice, so this mouth stays closed.',
      ],
    ],
    [
      'a line that nobody can read',
      'time 2+0\nvoice "Nao" 1..24 "漢字"\nmouth M "Nao" 1 2 3',
      [
        'hint «voice "Nao" 1..24 "漢字"» Some words of this line cannot be read, so the mouth on level M only flaps; write their reading, as in `行《い》く`.',
      ],
    ],
    ['flaps of one', 'time 2+0\nvoice "Nao" 1..24 "漢字"\nmouth M "Nao" 1 2 3 flaps', []],
    [
      'a mouth on a level with a timeline',
      'time 2+0\nvoice "Nao" 1..24 "Wait here"\nM: 1..\nmouth M "Nao" 1 2 3',
      [
        'error «mouth M "Nao" 1 2 3» Level M has a timeline already, so it cannot be a mouth as well.',
        ' + «M: 1..» the other one is here',
        ' > take this one out: «mouth M "Nao" 1 2 3» → «»',
      ],
    ],
    [
      'a level beyond the stack',
      'time 2+0\nstack BG\nvoice "Nao" 1..24 "Wait here"\nmouth M "Nao" 1 2 3',
      [
        'error «M» Level `M` is not in the stack.',
        ' + «stack BG» the stack is given here',
        ' > put `M` on top of the stack: «» → « M»',
      ],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});

test('a mouth with a drawing for each vowel shows each of them, and says nothing', () => {
  const lines =
    'time 4+0\nvoice "Nao" 1..96 "ああああいいいいううううええええおおおお"\nmouth M "Nao" 1 a 2 イ 3 u 4 え 5 o 6';
  expect(explained(`cut 1\n${lines}\n`)).toEqual([]);
  const level = compileText(`cut 1\n${lines}\n`).solved!.levels.find(({ name }) => name === 'M')!;
  expect(new Set(level.exposures.map(({ drawing }) => drawing))).toEqual(
    new Set(['1', '2', '3', '4', '5', '6']),
  );
});
