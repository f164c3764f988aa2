import { describe, expect, test } from 'vitest';
import { messageOf } from '../../../src/language/message.js';
import { compileText } from '../../compile.js';

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
