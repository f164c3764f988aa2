import { describe, expect, test } from 'vitest';
import { messageOf } from '../../../../src/language/message.js';

describe('who is meant by a mouth', () => {
  const silent = (guess: string | null, speakers: readonly string[]) =>
    messageOf(
      {
        code: 'mouth-silent',
        parameters: { variant: 'no-lines', speaker: 'Pim', guess, speakers },
      },
      'en',
    );

  test('is the nearest name', () => {
    expect(silent('Pym', ['Pym', 'Oda'])).toBe('“Pim” does not speak in this cut; did you mean `Pym`?');
  });

  test('or one of those who speak', () => {
    expect(silent(null, ['Oda'])).toBe('“Pim” does not speak in this cut; the only speaker is “Oda”.');
    expect(silent(null, ['Nao', 'Oda'])).toBe(
      '“Pim” does not speak in this cut; its speakers are “Nao”, “Oda”.',
    );
    expect(silent(null, [])).toBe('“Pim” does not speak in this cut; nobody does.');
  });
});

test('vowels that are missing are told one by one', () => {
  const missing = (vowels: readonly string[]) =>
    messageOf({ code: 'mouth-drawings', parameters: { variant: 'missing', level: 'C', vowels } }, 'en');
  expect(missing(['o'])).toBe('The mouth of level C has no drawing for `o`.');
  expect(missing(['u', 'e', 'o'])).toBe('The mouth of level C has no drawing for `u`, `e` or `o`.');
});
