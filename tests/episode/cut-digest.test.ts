import { expect, test } from 'vitest';
import { digest } from '../../src/episode/cut-digest.js';
import { defaults, type Settings } from '../../src/shot/settings.js';

const of = (texts: readonly string[], settings: Partial<Settings> = {}, artists: readonly string[] = []) =>
  digest(texts, { ...defaults, ...settings }, artists);

test('line ends do not count', () => {
  expect(of(['a\r\nb\rc\n'])).toBe(of(['a\nb\nc\n']));
  expect(of(['a\n\nb'])).not.toBe(of(['a\nb']));
});

test('where one text ends and the next begins counts', () => {
  expect(of(['ab', 'c'])).not.toBe(of(['a', 'bc']));
  expect(of(['ab'])).not.toBe(of(['ab', '']));
});

test('settings count that change what is meant, and no others', () => {
  const other: Partial<Settings>[] = [
    { title: 'Ferry' },
    { episode: '3' },
    { fps: 25 },
    { on: 3 },
    { numbering: 'frame' },
    { field: { widthMm: 300, heightMm: 200 } },
    { fields: 16 },
    { artwork: { widthMm: 420, heightMm: 297 } },
    { output: { width: 3840, height: 2160 } },
    { scanDpi: 300 },
    { overlap: 'full' },
  ];
  expect(new Set([of(['a']), ...other.map((settings) => of(['a'], settings))]).size).toBe(other.length + 1);
  for (const look of [{ paper: 'A3' }, { labels: 'ja' }, { convention: 'west' }, { rows: 72 }] as const)
    expect(of(['a'], look)).toBe(of(['a']));
});

test('who draws it counts', () => {
  expect(of(['a'], {}, ['M. Arai'])).not.toBe(of(['a']));
});
