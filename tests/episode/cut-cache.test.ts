import { describe, expect, test } from 'vitest';
import { type Compiled, compile } from '../../src/episode/compile-cut.js';
import { CutCache } from '../../src/episode/cut-cache.js';
import { noEpisode } from '../../src/episode/episode.js';
import { memoryHost } from '../../src/host/memory-host.js';

const TEXT = 'cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1--2..\nB: 1-2-3\n';

/** One text after the other, as an editor compiles them. */
function typing() {
  const cutCache = new CutCache();
  return (text: string, files: Readonly<Record<string, string>> = {}): Compiled => {
    const host = memoryHost({ ...files, 'a.cut': text });
    const compiled = compile(host, '/work/a.cut', noEpisode, { name: 'a.cut', cutCache });
    const fresh = compile(host, '/work/a.cut', noEpisode, { name: 'a.cut' });
    // Whatever is taken from before, nobody can tell.
    expect(compiled.diagnostics).toEqual(fresh.diagnostics);
    expect(compiled.solved).toEqual(fresh.solved);
    return compiled;
  };
}
const level = ({ solved }: Compiled, name: string) => solved!.levels.find((one) => one.name === name)!;

describe('a level is not solved again', () => {
  test('where another one is typed', () => {
    const type = typing();
    const first = type(TEXT);
    const second = type(TEXT.replace('1-2-3', '1-2-3..'));
    expect(level(second, 'A').exposures).toBe(level(first, 'A').exposures);
    expect(level(second, 'B').exposures).not.toBe(level(first, 'B').exposures);
  });

  test('but a mouth is, where what its speaker says is typed', () => {
    const type = typing();
    const mouth = 'cut 1\ntime 2+0\nA: 1..\nmouth B "Nao" 1 2 3\nvoice "Nao" 7..36 "ああああ"\n';
    const first = type(mouth);
    const second = type(mouth.replace('ああああ', 'いいいい'));
    expect(level(second, 'A').exposures).toBe(level(first, 'A').exposures);
    expect(level(second, 'B').exposures).not.toEqual(level(first, 'B').exposures);
  });

  test('where its timeline has moved: its places and problems move along', () => {
    const type = typing();
    const first = type(TEXT);
    const second = type(TEXT.replace('A:', '# a remark\nA:'));
    expect(level(second, 'B').exposures).toBe(level(first, 'B').exposures);
    const short = (one: Compiled) =>
      one.diagnostics.find(({ code }) => code === 'timeline-short')!.span.start;
    expect(short(second) - short(first)).toBe('# a remark\n'.length);
  });
});

describe('a level is solved again', () => {
  test.each([
    ['the length of the cut', (text: string) => text.replace('time 1+0', 'time 2+0')],
    ['a phrase', (text: string) => text.replace('walk = 1-2', 'walk = 1-2-')],
    ['a mark', (text: string) => `${text}mark hit 1\n`],
    ['the default exposure', (text: string) => `${text}on 3\n`],
    ['its own timeline', (text: string) => text.replace('1--2..', '1---2..')],
  ])('where %s has changed', (_, change) => {
    const type = typing();
    const first = type(TEXT);
    expect(level(type(change(TEXT)), 'A').exposures).not.toBe(level(first, 'A').exposures);
  });

  test('where a used file has changed', () => {
    const type = typing();
    const text = `use "h.txt"\n${TEXT}`;
    const first = type(text, { 'h.txt': 'phrase run = 1-2\n' });
    const second = type(text, { 'h.txt': 'phrase run = 1-2-\n' });
    expect(level(second, 'A').exposures).not.toBe(level(first, 'A').exposures);
  });

  test('where it has numbers on paper', () => {
    const type = typing();
    const text = `${TEXT}cels A 1 1.1 1.2 2\n`;
    const first = type(text);
    expect(level(type(`${text}# a remark\n`), 'A').exposures).not.toBe(level(first, 'A').exposures);
  });
});
