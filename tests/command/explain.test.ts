import { describe, expect, test } from 'vitest';
import { type Code, catalogue } from '../../src/language/catalogue/index.js';
import { laterWordsOf } from '../../src/language/grammar-queries.js';
import { aboutCode } from '../../src/language/message.js';
import { byWord } from '../../src/language/statements/statement-table.js';
import { statementPages } from '../../src/reference/statement-pages.js';
import { runOn } from './run.js';

describe('explain', () => {
  test('without a word lists every statement and every code once', async () => {
    const { status, out } = await runOn({}, 'explain');
    expect(status).toBe(0);
    const words = out.split('\n').flatMap((line) => /^([a-z][a-z-]*) {2}/.exec(line)?.[1] ?? []);
    expect(words).toEqual([...Object.keys(statementPages), ...Object.keys(catalogue)]);
  });

  test('says how a statement is written, what a word inside one means, and which of both goes before a code', async () => {
    const pan = (await runOn({}, 'explain', 'pan')).out;
    expect(pan).toContain('pan FIELD@TIME ( > [ NAME > ]… GOAL [ HOW ] )…');
    expect(pan).toContain('    pan full@1 > B@5+0 ease 12');
    const ease = (await runOn({}, 'explain', 'EASE')).out;
    expect(ease).toContain('In pan, truck, pull, follow, slide, turn:');
    for (const word of byWord.keys()) expect(Object.keys(catalogue)).not.toContain(word);
  });

  test('tells of every word of the language', async () => {
    for (const word of new Set([...byWord.values()].flatMap(laterWordsOf))) {
      const { status, out } = await runOn({}, 'explain', word);
      expect(status, word).toBe(0);
      expect(out, word).toContain(word);
    }
  });

  test('guesses what was meant', async () => {
    expect((await runOn({}, 'explain', 'truk')).error).toContain('did you mean `truck`?');
    expect((await runOn({}, 'explain', 'sideway')).error).toContain('did you mean `sideways`?');
    expect((await runOn({}, 'explain', 'nothing-like-it')).error).toContain('lists all of them');
  });

  test('says what every code means, with both examples, in lines that fit a terminal', async () => {
    for (const [code, { example }] of Object.entries(catalogue)) {
      const { status, out } = await runOn({}, 'explain', code);
      expect(status).toBe(0);
      const flat = out.replace(/\s+/g, ' ');
      for (const text of [aboutCode(code as Code, 'en').explanation, example.failing, example.mended]) {
        expect(flat, code).toContain(text.replace(/\s+/g, ' ').trim());
      }
      const words = out.split('\n\n')[1]!;
      for (const line of words.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    }
  });

  test('takes a code as it is printed', async () => {
    expect((await runOn({}, 'explain', '[Timeline-Short]')).out).toBe(
      (await runOn({}, 'explain', 'timeline-short')).out,
    );
  });

  test('leads from words of a Japanese studio to what they are here', async () => {
    const said = async (word: string) => (await runOn({}, '--language', 'ja', 'explain', word)).out;
    expect(await said('原画')).toMatch(/^`原画` は、タイムラインでは `1` .*\n`原画` は、ここでは `artist` /);
    expect(await said('同ポジ')).toContain('same NUMBER');
    expect(await said('欠番')).toContain('cels LEVEL');
    expect(await said('BOOK')).toContain('stack BG A BOOK');
    for (const word of ['リテイク', '進行', '作監']) expect(await said(word), word).toContain('progress.csv');
  });
});
