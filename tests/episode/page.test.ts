/** The page on episodes: its files are one episode that says of each cut what stands beside it. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseManifest } from '../../src/episode/manifest.js';
import { noteOf } from '../../src/language/message.js';
import { defaults } from '../../src/shot/settings.js';
import { said } from '../compile.js';
import { compiled } from './episode.js';

const page = readFileSync('grammar/episode.md', 'utf8');
const blocks = [...page.matchAll(/^```(?:yaml|cut) file=(\S+)(.*)\n([\s\S]*?)^```$/gm)].map(
  ([, file, expected, text]) => ({ file: file!, expected: expected!.trim(), text: text! }),
);
const files = Object.fromEntries(blocks.map(({ file, text }) => [file, text]));
const manifest = files['episode.yaml']!;

describe('the page on episodes', async () => {
  const cuts = await compiled(files);

  test.each(blocks.filter(({ file }) => file.endsWith('.cut')))('$file: $expected', ({ file, expected }) => {
    const { diagnostics } = cuts[file]!;
    expect(
      diagnostics.map(({ severity, code }) => `${severity}=${code}`).join(' '),
      said(diagnostics).join('\n'),
    ).toBe(expected);
  });

  test('has a manifest with nothing wrong, and a row for each key that there is', () => {
    expect(parseManifest('episode.yaml', manifest).diagnostics).toEqual([]);
    const [unknown] = parseManifest('episode.yaml', 'zzz: 1\n').diagnostics;
    const keys = noteOf(unknown!.notes[0]!, 'en').replace('the keys are ', '').split(', ');
    const rows = [...page.matchAll(/^\| `(\w+)` \|/gm)].map(([, key]) => key!);
    expect(rows.sort()).toEqual(keys.sort());
    const written = [...manifest.matchAll(/^(\w+):/gm)].map(([, key]) => key!);
    expect(written.sort()).toEqual(keys.sort());
  });

  test('says the defaults that hold', () => {
    const rows = [...page.matchAll(/^\| `(\w+)` \| `([^|]+)` \|/gm)];
    expect(rows.length).toBeGreaterThan(10);
    const text = rows.map(([, key, value]) => `${key}: ${value}\n`).join('');
    const { settings, diagnostics } = parseManifest('episode.yaml', text);
    expect(diagnostics).toEqual([]);
    expect(settings).toEqual(defaults);
  });

  test('says which numbers cut 9 has from cut 8, and what is new', () => {
    const nine = cuts['cuts/c009.cut']!.solved!;
    const level = nine.levels.find(({ name }) => name === 'C')!;
    expect(
      level.drawings.map(({ cel, drawing, reused }) => `${cel}=${drawing}${reused ? '' : ' new'}`),
    ).toEqual(['1=1', '2=1.1', '3=1.2', '4=2', '5=2.1', '6=2.2', '7=3 new']);
    expect(nine.counts).toMatchObject({ drawings: 1, reused: 6 });
    expect(cuts['cuts/c008.cut']!.surroundings.lent.map(({ cut }) => cut)).toEqual(['9', '10']);
  });
});
