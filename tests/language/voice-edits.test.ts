import { describe, expect, test } from 'vitest';
import { parse } from '../../src/language/parse.js';
import { withEdits } from '../../src/language/statement-reader.js';
import type { StatementOf } from '../../src/language/tree.js';
import { lineText, type RowText, type VoiceRows, voiceEdits } from '../../src/language/voice-edits.js';

const rowText: RowText = (row, like) =>
  like.form === 'frames' ? String(row) : `${Math.floor((row - 1) / 24)}+${((row - 1) % 24) + 1}`;

function edited(typed: string, from: number, to: number, rows: readonly number[], again = false): string {
  const { tree } = parse('a.cut', typed);
  const voice = tree.statements.find((one): one is StatementOf<'voice'> => one.kind === 'voice')!;
  const words = [...lineText(voice).matchAll(/\S+/g)].map(({ index, 0: word }, i) => ({
    start: index,
    end: index + word.length,
    row: rows[i]!,
  }));
  const found: VoiceRows = { from, to, words };
  const edits = voiceEdits(typed, voice, found, rowText, again);
  return withEdits(
    typed,
    edits.map(({ span, text }) => ({ ...span, text })),
  );
}

describe('rows go into a voice statement', () => {
  test('a range, and a tie for each word after the first', () => {
    expect(edited('voice "Nao" 1+6..2+20 "Wait for me!"\n', 30, 68, [30, 38, 44])).toBe(
      'voice "Nao" 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"\n',
    );
  });

  test('words on one row stay together', () => {
    expect(edited('voice "Nao" 1..9 "Wait for me!"', 3, 9, [3, 3, 8])).toBe(
      'voice "Nao" 3..9 "Wait for" @8 "me!"',
    );
  });

  test('the same again changes nothing', () => {
    const once = edited('voice "Nao" 1+6..2+20 "Wait for me!"', 31, 66, [31, 38, 44]);
    expect(edited(once, 31, 66, [31, 38, 44])).toBe(once);
  });

  test('ties that are typed stay, unless they are to be found anew', () => {
    const typed = 'voice "Nao" 30..68 "Wait" @40 "for me!"';
    expect(edited(typed, 30, 68, [30, 40, 44])).toBe('voice "Nao" 30..68 "Wait" @40 "for" @44 "me!"');
    expect(edited(typed, 30, 68, [30, 37, 44], true)).toBe('voice "Nao" 30..68 "Wait" @37 "for" @44 "me!"');
    expect(edited(typed, 30, 68, [30, 30, 44], true)).toBe('voice "Nao" 30..68 "Wait" "for" @44 "me!"');
  });

  test('a range at marks stays', () => {
    const typed = 'voice "Nao" hit..hit+20 "Wait for"';
    expect(edited(typed, 30, 68, [30, 38])).toBe('voice "Nao" hit..hit+20 "Wait" @1+14 "for"');
  });

  test('comments, line breaks and quotes stay as they are', () => {
    const typed = 'voice 「なお」 mono 1..2+0 「まって」 # one\r\n\t「もう すこし」  # two\r\n';
    expect(edited(typed, 5, 40, [5, 20, 30])).toBe(
      'voice 「なお」 mono 5..40 「まって」 # one\r\n\t@20 「もう」 @30 「すこし」  # two\r\n'.replace(
        '5..40',
        '5..40',
      ),
    );
  });

  test('escapes are typed anew', () => {
    expect(edited('voice "N" 1..9 "a \\"b\\" c\\nd"', 1, 9, [1, 2, 3, 4])).toBe(
      'voice "N" 1..9 "a" @2 "\\"b\\"" @3 "c" @4 "d"',
    );
  });

  test('what is too long goes on in an indented line', () => {
    const words = Array.from({ length: 14 }, (_, i) => `word${i}`);
    const made = edited(
      `voice "Nao" 1..90 "${words.join(' ')}"`,
      1,
      90,
      words.map((_, i) => 1 + i * 5),
    );
    expect(made.split('\n').length).toBeGreaterThan(1);
    for (const line of made.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
    expect(made).toContain('\n  @');
    expect(parse('a.cut', made).diagnostics).toEqual([]);
  });
});
