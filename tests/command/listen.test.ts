import { beforeAll, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { shippedEnglishWords } from '../../src/host/shipped-files.js';
import { englishDictionary } from '../../src/sound/english-dictionary.js';
import { synthesise } from '../sound/speech-synthesis.js';
import { wave } from '../sound/wave-writer.js';
import { run } from './run.js';

const HEAD = 'cut 12\ntime 5+0\nA: 1..\ntrack "a.wav"\n';
const FIRST = 'voice "Nao" 1+1..2+0 "Wait for me!"\n';
const SECOND = 'voice "Pim" 3+1..4+0 "The tide is coming in."\n';
let recording: Buffer;
let japanese: Buffer;
/** Rows of the words as they were made. */
let rows: number[];

beforeAll(() => {
  const words = shippedEnglishWords();
  const dictionary = englishDictionary(words.ok ? words.value : '');
  const row = (seconds: number) => Math.round(seconds * 24) + 1;
  const made = synthesise(
    5,
    [
      { at: 0.5, text: 'Wait for me!' },
      { at: 2.5, text: 'The tide is coming in.', speaker: { tract: 1.15, pitchHz: 200 } },
    ],
    dictionary,
  );
  recording = wave(made.samples, { rate: made.rate });
  rows = made.lines.flatMap((one) => one.words.map(row));
  const other = synthesise(5, [{ at: 1, text: 'うみへ いこうよ' }]);
  japanese = wave(other.samples, { rate: other.rate });
});

const host = (text: string, files: Readonly<Record<string, string | Uint8Array>> = {}): MemoryHost =>
  memoryHost({ 'a.cut': text, 'a.wav': recording, ...files });
const text = (world: MemoryHost): string => Buffer.from(world.files.get('/work/a.cut')!).toString('utf8');
/** All rows that a printed statement names, its end left out. */
const named = (line: string): number[] =>
  [...line.replace(/\.\.\S+/, '').matchAll(/(\d+)\+(\d+)/g)].map(([, s, f]) => Number(s) * 24 + Number(f));

describe('listen', () => {
  test('prints the statements as they would be, and writes nothing', async () => {
    const world = host(HEAD + FIRST + SECOND);
    const { status, out, error } = await run(world, 'listen', 'a.cut');
    expect(status).toBe(0);
    const lines = out.trim().split('\n');
    expect(lines).toHaveLength(2);
    const found = lines.flatMap(named);
    expect(found).toHaveLength(rows.length);
    for (const [i, row] of found.entries()) expect(Math.abs(row - rows[i]!)).toBeLessThanOrEqual(2);
    expect(lines[0]).toMatch(/^voice "Nao" \d\+\d+\.\.\d\+\d+ "Wait" @\d\+\d+ "for" @\d\+\d+ "me!"$/);
    expect(error).toMatch(/1 cut: 1 to be written\n$/);
    expect(text(world)).toBe(HEAD + FIRST + SECOND);
  });

  test('--write writes them and nothing else; the second time there is nothing to write', async () => {
    const typed = `\ufeff${HEAD}# waits\r\n${FIRST.trim()}   # twice\r\n\r\n${SECOND}memo "x"`;
    const world = host(typed);
    const { error } = await run(world, 'listen', 'a.cut', '--write');
    expect(error).toMatch(/1 cut: 1 written\n$/);
    const written = text(world);
    const bare = (one: string) => one.replace(/^voice .*?(?=\s*#|\r?$)/gm, 'voice');
    expect(bare(written)).toBe(bare(typed));
    expect(written).toContain('"Wait" @');
    const again = await run(world, 'listen', 'a.cut', '--write');
    expect(again.error).toMatch(/1 cut: 1 with nothing to write\n$/);
    expect(text(world)).toBe(written);
    expect((await run(world, 'check', 'a.cut', '--strict')).status).toBe(0);
  });

  test('--diff shows the change and makes none', async () => {
    const world = host(HEAD + FIRST);
    const { out } = await run(world, 'listen', 'a.cut', '--diff');
    expect(out).toMatch(/^--- a\/a\.cut\n[\s\S]*\n-voice "Nao" 1\+1[\s\S]*\n\+voice "Nao" 0\+/);
    expect(text(world)).toBe(HEAD + FIRST);
  });

  test('ties that are typed stay; --again finds them anew', async () => {
    const tied = `${HEAD}voice "Nao" 0+1..2+0 "Wait" @0+20 "for me!"\n`;
    expect((await run(host(tied), 'listen', 'a.cut')).out).toContain('"Wait" @0+20 "for"');
    const { out } = await run(host(tied), 'listen', 'a.cut', '--again');
    expect(Math.abs(named(out)[1]! - rows[1]!)).toBeLessThanOrEqual(2);
  });

  test('standard input goes to standard output', async () => {
    const world = host('');
    world.input = Buffer.from(HEAD + FIRST);
    const { out } = await run(world, 'listen', '-', '--write');
    expect(out).toMatch(/^cut 12\n[\s\S]*"Wait" @/);
  });

  test('--lines proposes a range for each stretch of speech', async () => {
    const { out, status } = await run(host(HEAD), 'listen', 'a.cut', '--lines');
    expect(status).toBe(0);
    const lines = out.trim().split('\n');
    expect(lines).toHaveLength(2);
    lines.forEach((line, i) => {
      expect(line).toMatch(/^voice "" \d\+\d+\.\.\d\+\d+ ""$/);
      expect(Math.abs(named(line)[0]! - [rows[0]!, rows[3]!][i]!)).toBeLessThanOrEqual(3);
    });
  });

  test('--json tells rows of words and syllables', async () => {
    const { out } = await run(host(HEAD + FIRST + SECOND), 'listen', 'a.cut', '--json');
    const [cut] = (JSON.parse(out) as { cuts: { cut: string; lines: { words: { beats: number[] }[] }[] }[] })
      .cuts;
    expect(cut).toMatchObject({ cut: '12', file: 'a.cut', fps: 24 });
    expect(cut!.lines[1]!.words.map(({ beats }) => beats.length)).toEqual([1, 1, 1, 2, 1]);
  });

  test('Japanese by its phrases, kanji by their ruby', async () => {
    const typed = `${HEAD}voice "なお" 1+1..2+0 "海《うみ》へ いこうよ"\n`;
    const { out } = await run(host(typed, { 'a.wav': japanese }), 'listen', 'a.cut');
    expect(out).toMatch(/^voice "なお" \S+ "海《うみ》へ" @\S+ "いこうよ"\n$/);
  });
});

describe('what is said of it', () => {
  test('a line that is not there stays as it is', async () => {
    const lost = 'voice "Nao" 2+1..2+20 "Everybody knows the old captain."\n';
    const world = host(HEAD + FIRST + lost + SECOND);
    const { error, status } = await run(world, 'listen', 'a.cut', '--write');
    expect(status).toBe(0);
    expect(error).toContain('Warning: This line of Nao is not to be heard in the recording.');
    expect(text(world)).toContain(lost);
    expect(text(world)).toContain('"tide" @');
  });

  test('kanji without ruby', async () => {
    const typed = `${HEAD}voice "なお" 1+1..2+0 "海へ いこうよ"\n`;
    const { error } = await run(host(typed, { 'a.wav': japanese }), 'listen', 'a.cut');
    expect(error).toContain('Warning: It is not known how `海` is read');
  });

  test.each([
    ['no track', 'cut 1\ntime 1+0\nA: 1..\n', 'The cut names no recording'],
    ['no voice', HEAD, 'The cut has no voice statement'],
    ['no file', HEAD.replace('a.wav', 'b.wav') + FIRST, 'The recording cannot be read'],
  ])('%s is an error', async (_, typed, words) => {
    const { error, status } = await run(host(typed), 'listen', 'a.cut');
    expect(status).toBe(1);
    expect(error).toContain(words);
    expect(error).toMatch(/1 cut: 1 not heard \(/);
  });

  test('a cut with errors is left alone', async () => {
    const world = host(`${HEAD}${FIRST}B: 1\n`);
    expect((await run(world, 'listen', 'a.cut', '--write')).status).toBe(1);
    expect(text(world)).toBe(`${HEAD}${FIRST}B: 1\n`);
  });

  test('a file that may not be written stays as it is', async () => {
    const world = host(HEAD + FIRST);
    world.write = () => ({ ok: false, reason: 'permission denied' });
    const { error, status } = await run(world, 'listen', 'a.cut', '--write');
    expect(status).toBe(2);
    expect(error).toContain('output-unwritable');
    expect(text(world)).toBe(HEAD + FIRST);
  });
});
