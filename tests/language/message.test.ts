import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { type Code, catalogue } from '../../src/language/catalogue/index.js';
import { diagnose } from '../../src/language/diagnostic.js';
import { aboutCode, actionOf, messageOf, noteOf } from '../../src/language/message.js';
import { compileText } from '../compile.js';

const span = { file: 'this.cut', start: 0, end: 1 };

describe('a message', () => {
  test('is made of its parameters', () => {
    const short = diagnose('timeline-short', span, { level: 'A', shown: 8, time: 24, rows: 36 });
    expect(messageOf(short, 'en')).toBe(
      'Level A shows 8 of 24 + 12 handle frames: 28 frames missing, from frame 9 on.',
    );
  });

  test('names rows as the sheet does, and those of the first second or foot by their frames', () => {
    const back = (to: number, from: number, rows: { unit: number; feet: boolean }): string =>
      messageOf({ ...diagnose('range-backwards', span, { from, to }), rows }, 'en');
    const said = (to: string, from: string) =>
      `This range ends on frame ${to}, before it starts on frame ${from}.`;
    expect(back(24, 57, { unit: 24, feet: false })).toBe(said('24', '2+9 (57)'));
    expect(back(16, 57, { unit: 16, feet: true })).toBe(said('16', "3'09 (57)"));
    expect(back(-3, 25, { unit: 24, feet: false })).toBe(said('-3', '1+1 (25)'));
  });

  test('of several variants is that of its own', () => {
    const zero = diagnose('position-zero', span, { variant: 'zero' });
    const before = diagnose('position-zero', span, { variant: 'before', frames: 3 });
    expect(messageOf(zero, 'en')).toContain('There is no frame 0');
    expect(messageOf(before, 'en')).toContain('This is 3 before the first row');
  });

  test('notes and fixes are made of theirs', () => {
    expect(noteOf({ note: 'count-here', inbetweens: 1 }, 'en')).toBe('1 in-between here');
    expect(actionOf({ action: 'name-drawings', count: 2, name: '1>2.1' }, 'en')).toBe(
      'name them `1>2.1` and so on',
    );
  });

  test('its code has a title and an explanation', () => {
    expect(aboutCode('at-nothing', 'en').title).toBe('an `@` with nothing behind it');
  });
});

const failing = Object.entries(catalogue).flatMap(([code, { example }]) =>
  example.kind === 'text' ? [{ code: code as Code, ...example }] : [],
);

describe.each(failing)('the text of $code', ({ code, failing: text, files }) => {
  test('is whole sentences, without a hole in them', () => {
    const found = compileText(text, files).diagnostics.filter((one) => one.code === code);
    expect(found).not.toEqual([]);
    for (const one of found) {
      const said = [
        messageOf(one, 'en'),
        ...one.notes.map((note) => noteOf(note, 'en')),
        ...(one.fix ? [actionOf(one.fix, 'en')] : []),
      ];
      expect(said[0]).toMatch(/^(?=.*\S[.?]$)[^\n]+$/);
      // What is between backquotes was typed.
      for (const each of said)
        expect(each.replace(/`.*`/s, '')).not.toMatch(/undefined|null|NaN|\[object|function/);
    }
  });
});

describe('the sources', () => {
  test('hold no sentence where a message is found, but for those of the command line', () => {
    const found: string[] = [];
    for (const name of readdirSync('src', { recursive: true, encoding: 'utf8' })) {
      if (!name.endsWith('.ts')) continue;
      const text = readFileSync(`src/${name}`, 'utf8');
      if (!text.includes('diagnose(')) continue;
      const source = ts.createSourceFile(name, text, ts.ScriptTarget.Latest);
      visit(source, (call) => {
        if (call.expression.getText(source) !== 'diagnose') return;
        const parameters = call.arguments[2];
        if (parameters && sentenceIn(parameters)) found.push(`${name}: ${parameters.getText(source)}`);
      });
    }
    expect(found).toEqual([]);
  });

  test('of the scan itself would be found', () => {
    const source = ts.createSourceFile(
      'a.ts',
      "diagnose('no-cuts', span, `The folder is empty.`)",
      ts.ScriptTarget.Latest,
    );
    const calls: boolean[] = [];
    visit(source, (call) => calls.push(sentenceIn(call.arguments[2]!)));
    expect(calls).toEqual([true]);
  });
});

function visit(node: ts.Node, see: (call: ts.CallExpression) => void): void {
  if (ts.isCallExpression(node)) see(node);
  ts.forEachChild(node, (child) => visit(child, see));
}

/** Whether a text with a blank in it stands somewhere in an expression. */
function sentenceIn(node: ts.Node): boolean {
  if (ts.isStringLiteralLike(node) || node.kind === ts.SyntaxKind.TemplateHead)
    return (node as ts.LiteralLikeNode).text.includes(' ');
  return ts.forEachChild(node, (child) => sentenceIn(child) || undefined) ?? false;
}
