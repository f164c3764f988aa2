import { describe, expect, test } from 'vitest';
import { FixTester, insertFix, placeOf, replaceFix, typedAt } from '../../src/language/fault-fixes.js';
import { tokenize } from '../../src/language/lexer.js';

const write = (written: string) => ({ action: 'write', written }) as const;

describe('of several edits', () => {
  const choose = (text: string, fault: string, ...texts: string[]) => {
    const tester = new FixTester({ file: 'this.cut', text });
    const at = text.indexOf(fault);
    const place = { start: at, end: at + fault.length };
    const candidates = texts.map((one) => replaceFix(place, one, write(one)));
    return tester
      .choose(candidates, { start: 0, end: text.length }, place)
      ?.edits.map((edit) => edit.text)
      .join();
  };

  test('the first that makes the statement readable is chosen', () => {
    expect(choose('tmie 5+0', 'tmie', 'tame', 'time', 'on')).toBe('time');
  });

  test('failing that, the first after which the fault lies further on', () => {
    expect(choose('tmie 5+0 ?', 'tmie', 'tame', 'time', 'on')).toBe('time');
  });

  test('none is chosen where the fault stays', () => {
    expect(choose('tmie 5+0', 'tmie', 'tame', 'toe')).toBeUndefined();
  });

  test('of a text in which millions of characters were read again, no more are tried', () => {
    const text = `tmie 5+0${' '.repeat(1_000_000)}`;
    const tester = new FixTester({ file: 'this.cut', text });
    const whole = { start: 0, end: text.length };
    const candidate = replaceFix({ start: 0, end: 4 }, 'time', write('time'));
    const found = Array.from({ length: 4 }, () => tester.choose([candidate], whole, { start: 0, end: 4 }));
    expect(found.map((one) => one !== undefined)).toEqual([true, true, true, false]);
  });
});

test('a fix has its places in the file', () => {
  const tester = new FixTester({ file: 'this.cut', text: 'cut 1' });
  expect(tester.fix(insertFix(3, ' ', write(' ')))).toEqual({
    action: 'write',
    written: ' ',
    edits: [{ span: { file: 'this.cut', start: 3, end: 3 }, text: ' ' }],
  });
  expect(tester.fix(undefined)).toBeUndefined();
});

test('a token is quoted as it was typed, cut where it is long', () => {
  const typed = `memo ${'雨'.repeat(30)}`;
  const [memo, rain] = tokenize(typed, 0, typed.length);
  expect(placeOf(memo!)).toEqual({ start: 0, end: 4 });
  expect(typedAt(memo!, 'ｍｅｍｏ')).toBe('ｍｅｍｏ');
  expect(typedAt(rain!, typed)).toBe(`${'雨'.repeat(23)}…`);
});
