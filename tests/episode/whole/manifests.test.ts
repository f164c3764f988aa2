/** An episode in which something is wrong: that is said once, where it is, and all other cuts are printed. */

import { describe, expect, test } from 'vitest';
import type { MemoryHost } from '../../../src/host/memory-host.js';
import { fileNames, run } from '../../command/run.js';
import { generateEpisode } from './generate.js';
import { worldOf } from './world.js';

const { files, cuts } = generateEpisode({ cuts: 5, seed: 3, meanFrames: 48 });
const manifest = files['episode.yaml']!;
const LIST = 'cuts: ["cuts/*.cut"]';
const ALL = cuts.map(({ file }) => file.replace(/^cuts\/(.*)\.cut$/, '$1.pdf'));

interface Built {
  /** `file:line: code` of every error and warning. */
  readonly said: readonly string[];
  readonly printed: readonly string[];
  readonly status: number;
}

async function built(
  texts: Readonly<Record<string, string>>,
  prepare: (host: MemoryHost) => void = () => {},
): Promise<Built> {
  const host = worldOf({ ...files, ...texts });
  prepare(host);
  const { status, error } = await run(host, 'build', 'e', '-o', 'out');
  const said = [...error.matchAll(/^(?:Error|Warning): .*\n(\S+?)(?::(\d+):\d+)?: ([a-z]+(?:-[a-z]+)+)$/gm)];
  return {
    said: said.map(([, file, line, code]) => `${file}${line ? `:${line}` : ''}: ${code}`),
    printed: fileNames(host)
      .filter((name) => name.endsWith('.pdf'))
      .map((name) => name.replace('out/', '')),
    status,
  };
}

const listed = (text: string) => ({ 'episode.yaml': manifest.replace(LIST, text) });
const line = (text: string) => manifest.split('\n').findIndex((one) => one.startsWith(text)) + 1;

test('nothing is wrong in it before', async () => {
  expect(await built({})).toEqual({ said: [], printed: ALL, status: 0 });
});

describe('what the manifest says of itself keeps its cuts from printing', () => {
  test.each([
    [
      'a wrong type',
      { 'episode.yaml': manifest.replace('overlap: half', 'overlap: [half]') },
      'episode-value',
    ],
    ['an unknown key', { 'episode.yaml': manifest.replace('overlap:', 'overlaps:') }, 'episode-key'],
    ['no YAML', { 'episode.yaml': manifest.replace('overlap: half', 'overlap: "half') }, 'episode-syntax'],
  ])('%s', async (_, texts, code) => {
    const { said, printed, status } = await built(texts);
    expect(new Set(said)).toEqual(new Set([expect.stringMatching(`^e/episode.yaml:\\d+: ${code}$`)]));
    expect({ printed, status }).toEqual({ printed: [], status: 1 });
  });

  test('aliases of aliases, once each', async () => {
    const bomb = 'abcdefgh'.split('').map(
      (name, i) =>
        `${name}: &${name} [${Array(9)
          .fill(i ? `*${'abcdefgh'[i - 1]}` : 'x')
          .join(', ')}]`,
    );
    const { said, status } = await built({ 'episode.yaml': [...bomb, manifest].join('\n') });
    expect(said).toEqual(bomb.map((_, i) => `e/episode.yaml:${i + 1}: episode-key`));
    expect(status).toBe(1);
  });
});

describe('what it says of one cut costs that one', () => {
  test('a file that is missing', async () => {
    const texts = listed('cuts: ["cuts/*.cut", extra/c99.cut]');
    expect(await built(texts)).toEqual({
      said: [`e/episode.yaml:${line('cuts')}: file-missing`],
      printed: ALL,
      status: 2,
    });
  });

  test('a file outside the episode, by its path or by a link', async () => {
    const place = `e/episode.yaml:${line('cuts')}: episode-outside`;
    const outside = (host: MemoryHost) => void host.files.set('/work/c99.cut', Buffer.from('cut 99\n'));
    expect(await built(listed('cuts: ["cuts/*.cut", ../c99.cut]'), outside)).toEqual({
      said: [place],
      printed: ALL,
      status: 1,
    });
    const linked = (host: MemoryHost) => {
      outside(host);
      host.links.set('/work/e/cuts/c98.cut', '../../c99.cut');
    };
    expect(await built({}, linked)).toEqual({ said: [place], printed: ALL, status: 1 });
  });

  test('a pattern that fits nothing is no error', async () => {
    const texts = listed('cuts: ["cuts/*.cut", "night/*.cut"]');
    expect(await built(texts)).toEqual({
      said: [`e/episode.yaml:${line('cuts')}: pattern-empty`],
      printed: ALL,
      status: 0,
    });
  });

  test('two cuts of one number', async () => {
    const [first] = cuts;
    const { said, printed } = await built({ 'cuts/c900.cut': first!.text });
    const place = first!.text.split('\n').findIndex((one) => one.startsWith('cut ')) + 1;
    expect(said).toEqual([`e/cuts/c900.cut:${place}: cut-twice`]);
    expect(printed).toEqual([...ALL, 'c900.pdf']);
  });

  test('a cut that may not be read', async () => {
    const { said, printed, status } = await built(
      { 'cuts/c900.cut': 'cut 900\n' },
      (host) => void host.locked.add('/work/e/cuts/c900.cut'),
    );
    expect({ said, printed, status }).toEqual({
      said: ['e/cuts/c900.cut: file-unreadable'],
      printed: ALL,
      status: 2,
    });
  });

  test('a folder that may not be read, also where no list names it', async () => {
    const night = { 'night/c900.cut': 'cut 900\n' };
    const lock = (host: MemoryHost) => void host.locked.add('/work/e/night');
    expect(await built({ ...night, ...listed('cuts: ["cuts/*.cut", "night/*.cut"]') }, lock)).toEqual({
      said: [`e/episode.yaml:${line('cuts')}: file-unreadable`],
      printed: ALL,
      status: 2,
    });
    expect(await built({ ...night, ...listed('') }, lock)).toEqual({
      said: ['e/episode.yaml:1: file-unreadable'],
      printed: ALL,
      status: 2,
    });
  });

  test('nothing but such a folder', async () => {
    const { said, printed, status } = await built({}, (host) => void host.locked.add('/work/e/cuts'));
    expect({ said, printed, status }).toEqual({
      said: [`e/episode.yaml:${line('cuts')}: file-unreadable`],
      printed: [],
      status: 2,
    });
  });
});
