import { describe, expect, test } from 'vitest';
import { type ComparisonSide, compareSides, sideOf } from '../../src/command/comparison.js';
import { ConsoleReporter } from '../../src/command/console-reporter.js';
import { cutJson, onlyLine, retakeNote, wholeJson } from '../../src/command/retake-note.js';
import { compare } from '../../src/compare/compare-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { compileText } from '../compile.js';

const solved = (text: string) => compileText(text).solved!;
const WAS = solved('cut 7\ntime 1+0\nA: 1--2..\n');
const note = (text: string, language: 'en' | 'ja' = 'en') => {
  const is = solved(text);
  return retakeNote(WAS, is, compare(WAS, is), language);
};

describe('a note', () => {
  test('has a heading and a line a change', () => {
    const [heading, ...lines] = note('cut 7\ntime 1+0\nA: 1---2..\n').split('\n');
    expect(heading).toBe('cut 7');
    expect(lines.at(-1)).toBe('');
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines.slice(0, -1)) expect(line).toMatch(/^ {2}\S/);
  });

  test('says another time in the heading, and not again below it', () => {
    const [heading, ...lines] = note('cut 7\ntime 2+0\nA: 1--2..\n').split('\n');
    expect(heading).toBe('cut 7  1+0 → 2+0');
    expect(lines.join('\n')).not.toContain('1+0 → 2+0');
  });

  test('is in the language that was asked for', () => {
    expect(note('cut 7\ntime 2+0\nA: 1--2..\n', 'ja')).not.toContain('cut');
  });
});

describe('cuts of one side', () => {
  const side = { label: 'HEAD~1', present: false, found: { jobs: [] } } as unknown as ComparisonSide;
  const only = (...keys: readonly string[]) => onlyLine(side, keys, 'en');

  test('are joined where their numbers follow each other', () => {
    expect(only('1', '2', '3', '5', '7', '8')).toBe('only in HEAD~1: cuts 1-3, 5, 7-8\n');
    expect(only('4')).toBe('only in HEAD~1: cut 4\n');
  });

  test('with letters stand by themselves', () => {
    expect(only('1', '1A', '2')).toBe('only in HEAD~1: cuts 1, 1A, 2\n');
  });

  test('are no line where there are none', () => {
    expect(only()).toBe('');
  });
});

test('JSON has both sides, every change in both languages, and what has no other half', async () => {
  const host = memoryHost({
    'old/a.cut': 'cut 7 "Quay"\ntime 1+0\nA: 1--2..\n',
    'old/b.cut': 'cut 8\ntime 1+0\nA: 1..\n',
    'new/a.cut': 'cut 7 "Quay"\ntime 2+0\nA: 1--2..\n',
  });
  const [old, now] = [await sideOf(host, 'old'), await sideOf(host, 'new')];
  const result = await compareSides(old, now, new ConsoleReporter(host, 'human', false), cutJson);
  const whole = JSON.parse(wholeJson(result, old, now));
  expect(whole).toMatchObject({
    version: 1,
    old: 'old',
    now: 'new',
    cuts: [{ cut: '7', title: 'Quay', fps: 24, time: { old: 24, now: 48 } }],
    onlyOld: ['8'],
    onlyNow: [],
  });
  for (const change of whole.cuts[0].changes)
    expect(change).toMatchObject({
      kind: expect.any(String),
      en: expect.any(String),
      ja: expect.any(String),
    });
  expect(JSON.parse(wholeJson({ ...result, differing: [] }, old, now)).cuts).toEqual([]);
});
