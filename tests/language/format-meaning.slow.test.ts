/** A formatted text says what it said: over random cuts however they were typed, and over every cut and example of the repository. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutPages } from '../../src/build/printed-parts.js';
import { format } from '../../src/language/format/format-text.js';
import { messageOf } from '../../src/language/message.js';
import { parse } from '../../src/language/parse.js';
import { compileText } from '../compile.js';
import { testFonts } from '../fonts.js';
import { cutTexts } from '../generate.js';

const formatted = (text: string): string => format('this.cut', text).text;

/** Trees, solved cuts and pages without the places in the text. */
function placeless(value: unknown): string {
  return JSON.stringify(value, (key, part) =>
    /span|word$/i.test(key) && part && typeof part === 'object'
      ? true
      : part && typeof part === 'object' && 'start' in part && 'end' in part
        ? true
        : part,
  );
}

function meaning(text: string) {
  const { tree, comments } = parse('this.cut', text);
  const { solved, diagnostics } = compileText(text);
  const look = solved && { settings: solved.shot.settings, metrics: testFonts().metrics, stamp: '' };
  return {
    tree: placeless(tree.statements),
    broken: tree.broken.length,
    comments: comments.map(({ start, end }) => text.slice(start + 1, end).trimEnd()),
    said: diagnostics.map((one) => `${one.code} ${messageOf(one, 'en')}`).sort(),
    pages: look && placeless(cutPages(solved, look)),
  };
}

function expectSame(text: string): void {
  const after = formatted(text);
  expect(formatted(after)).toBe(after);
  const [was, is] = [meaning(text.replace(/^\ufeff/, '')), meaning(after)];
  for (const key of Object.keys(was) as (keyof typeof was)[]) expect([key, is[key]]).toEqual([key, was[key]]);
}

/** Every way in which a blank may be typed, from nothing special to what nobody would. */
const BLANKS = [' ', '  ', '\t', '　', '\n ', '\r\n\t', ' \r　', '\n    '];
const COMMENTS = ['# a', '#', '＃　全角', '#  "x  ', '# A: 1--2'];

/**
 * The text typed another way: blanks of every kind where there is one, or where the layout has none and none is needed; plain
 * characters as a Japanese keyboard gives them; with `notes`, comments and blank lines as well. `lines`: broken into lines, too.
 */
function retyped(
  text: string,
  dice: readonly number[],
  { notes, lines }: { notes: boolean; lines: boolean },
): string {
  const blanks = lines ? BLANKS : BLANKS.filter((kind) => !/[\r\n]/.test(kind));
  const { tokens } = parse('', text);
  let rolled = 0;
  const roll = (sides: number): number => {
    const number = dice[rolled++ % dice.length]! + rolled;
    return number % sides;
  };
  const blank = (): string => {
    const kind = blanks[roll(blanks.length)]!;
    if (!notes || roll(6) > 0) return kind;
    return [`  ${COMMENTS[roll(COMMENTS.length)]}\n `, '\n\n ', `\n${COMMENTS[roll(COMMENTS.length)]}\n　`][
      roll(3)
    ]!;
  };
  let out = '';
  let end = 0;
  for (const { kind, span } of tokens) {
    const gap = text.slice(end, span.start);
    const starts = span.start === 0 || text[span.start - 1] === '\n';
    if (starts) out += gap + (notes && roll(5) === 0 ? `${COMMENTS[roll(COMMENTS.length)]}\n\n\n` : '');
    else if (gap !== '') out += blank();
    const typed = text.slice(span.start, span.end);
    out += kind === 'Text' || roll(3) > 0 ? typed : wide(typed, out);
    end = span.end;
  }
  return out + text.slice(end);
}

/** In full-width characters; `before`: what they are typed behind. */
function wide(text: string, before: string): string {
  if (text === '-') return /[\p{L}ー]$/u.test(before) ? '－' : 'ー';
  return text
    .replace(/[!-~]/g, (one) => String.fromCharCode(one.charCodeAt(0) + 0xfee0))
    .replaceAll('．', '。');
}

describe('random cuts', () => {
  const cuts = cutTexts({ levels: { min: 1, max: 3 } });
  const dice = fc.array(fc.nat(9999), { minLength: 40, maxLength: 40 });

  test('keep tree, comments, messages and printed pages', () => {
    fc.assert(
      fc.property(cuts, (text) => expectSame(text)),
      { numRuns: 8 },
    );
  });

  test('have one layout, however they were typed between line breaks', () => {
    fc.assert(
      fc.property(cuts, dice, (text, numbers) => {
        const typed = retyped(text, numbers, { notes: false, lines: false });
        expect(placeless(parse('', typed).tree.statements)).toBe(placeless(parse('', text).tree.statements));
        expect(formatted(typed)).toBe(formatted(text));
      }),
      { numRuns: 60 },
    );
  });

  test('keep all of it with comments and blank lines anywhere', () => {
    fc.assert(
      fc.property(cuts, dice, (text, numbers) => {
        const typed = retyped(text, numbers, { notes: true, lines: true });
        expect(placeless(parse('', typed).tree.statements)).toBe(placeless(parse('', text).tree.statements));
        expectSame(typed);
      }),
      { numRuns: 10 },
    );
  });

  test('broken into lines anywhere, are laid out once and for all', () => {
    fc.assert(
      fc.property(cuts, dice, (text, numbers) => {
        const once = formatted(retyped(text, numbers, { notes: false, lines: true }));
        expect(formatted(once)).toBe(once);
        expect(formatted(once.replace(/\n +/g, ' '))).toBe(formatted(text));
      }),
      { numRuns: 60 },
    );
  });

  test('with slips in them keep what cannot be read, to the byte', () => {
    let broken = 0;
    fc.assert(
      fc.property(cuts, dice, (text, numbers) => {
        const slips = ['?', ' (', '"', ' 1+', '}', '\u0001', ' zz'];
        const lines = retyped(text, numbers, { notes: false, lines: true })
          .split(/(?<=\n)(?=\S)/)
          .map((line, i) => {
            if (numbers[i % numbers.length]! % 3 > 0) return line;
            const at = 1 + (numbers[(i + 1) % numbers.length]! % Math.max(1, line.trimEnd().length));
            return (
              line.slice(0, at) + slips[numbers[(i + 2) % numbers.length]! % slips.length] + line.slice(at)
            );
          });
        const typed = lines.join('');
        const { text: after, left } = format('this.cut', typed);
        expect(formatted(after)).toBe(after);
        expect(placeless(parse('', after).tree.statements)).toBe(placeless(parse('', typed).tree.statements));
        const texts = (of: string) =>
          parse('', of).tree.broken.map(({ span }) => of.slice(span.start, span.end));
        expect(texts(after)).toEqual(texts(typed));
        expect(left).toBeGreaterThanOrEqual(texts(typed).length);
        broken += left;
      }),
      { numRuns: 60 },
    );
    expect(broken).toBeGreaterThan(50);
  });
});

function files(folder: string, ending: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(folder, name))
    .sort();
}

describe.each([...files('examples', '.cut'), ...files('tests/cuts', '.cut')])('%s', (file) => {
  test('keeps its meaning', () => expectSame(readFileSync(file, 'utf8')));
});

/** Typed on a Japanese keyboard from end to end, which is what it is there to show. */
const FULL_WIDTH = 'examples/saltmarsh/cuts/c007.cut';

test.each(files('examples', '.cut').filter((file) => file !== FULL_WIDTH))(
  '%s is in the usual layout',
  (file) => {
    const text = readFileSync(file, 'utf8');
    expect(formatted(text)).toBe(text);
  },
);

describe.each(files('grammar', '.md'))('%s', (file) => {
  test('its examples keep theirs', () => {
    for (const [, text] of readFileSync(file, 'utf8').matchAll(/^```cut.*\n([\s\S]*?)^```$/gm))
      expectSame(text!);
  });
});

test('any text at all is formatted, once and for all', () => {
  const pieces = fc.constantFrom(
    ...'A:|1|-|--|2|..|(|)|*3|{late}|@5|x|on 2|\n|\n\n| |　|# c|"t"|"|「|memo|cut|time 1+0|\r\n|\u0000|３|ー|=|,|>|_|\t|é'.split(
      '|',
    ),
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.array(pieces).map((parts) => parts.join('')),
        fc.string({ unit: 'grapheme' }),
      ),
      (text) => {
        const once = format('', text);
        expect(format('', once.text)).toEqual(once);
        const [was, is] = [parse('', text), parse('', once.text)];
        expect(placeless(is.tree.statements)).toBe(placeless(was.tree.statements));
        expect(is.diagnostics.map(({ code }) => code)).toEqual(was.diagnostics.map(({ code }) => code));
      },
    ),
    { numRuns: 400 },
  );
});
