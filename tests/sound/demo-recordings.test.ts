/** The recordings of examples/voices are made here, of no person's voice, and `listen` reads from them what was made. */

import { readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { noEpisode } from '../../src/episode/episode.js';
import { listenToCut } from '../../src/episode/listen-to-cut.js';
import { nodeHost } from '../../src/host/node-host.js';
import { shippedEnglishWords } from '../../src/host/shipped-files.js';
import { englishDictionary } from '../../src/sound/english-dictionary.js';
import type { Dictionary } from '../../src/sound/pronunciation.js';
import { type Synthesised, synthesise } from './speech-synthesis.js';
import { wave } from './wave-writer.js';

const FOLDER = 'examples/voices';
let dictionary: Dictionary;
let made: Readonly<Record<string, Synthesised>>;

beforeAll(() => {
  const words = shippedEnglishWords();
  dictionary = englishDictionary(words.ok ? words.value : '');
  made = {
    c001: synthesise(
      4,
      [{ at: 0.9, text: 'Wait for me, the tide is coming in!', speaker: { pitchHz: 190, tract: 1.15 } }],
      dictionary,
    ),
    c002: synthesise(4, [
      {
        at: 0.7,
        text: 'まって、 もう すこしで うみに でるよ。',
        speaker: { pitchHz: 210, tract: 1.15, slow: 1.2 },
      },
    ]),
  };
});

describe.each(['c001', 'c002'])('%s', (name) => {
  test('its recording is what the synthesiser makes (UPDATE=1 writes it), and small', () => {
    const { samples, rate } = made[name]!;
    const bytes = wave(samples, { rate });
    const path = `${FOLDER}/sound/${name}.wav`;
    if (process.env.UPDATE === '1') writeFileSync(path, bytes);
    expect(Buffer.compare(readFileSync(path), bytes)).toBe(0);
    expect(bytes.length).toBeLessThan(150_000);
  });

  test('its text has no fault, and the rows of its words are those that were made', () => {
    const host = nodeHost();
    const path = `${host.cwd}/${FOLDER}/${name}.cut`;
    const compiled = compile(host, path, noEpisode, { name: `${name}.cut` });
    expect(compiled.diagnostics).toEqual([]);
    const rows = made[name]!.lines[0]!.words.map((seconds) => Math.round(seconds * 24) + 1);
    const written = compiled.solved!.shot.spoken[0]!;
    const typed = written.parts.map(({ frame }) => frame ?? written.frames.from);
    for (const [i, row] of typed.entries())
      expect(Math.abs(row - rows[i]!), `word ${i}`).toBeLessThanOrEqual(1);
    const anew = listenToCut(host, compiled, { dictionary, again: true })!.lines[0]!;
    expect(anew.words.map(({ row }) => row)).toEqual(typed);
  });
});
