import fc from 'fast-check';
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
    expect(compiled.shot).toEqual(fresh.shot);
    expect(compiled.tree).toEqual(fresh.tree);
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

  test('where the last letter of its timeline has changed, in a text with a byte-order mark', () => {
    const type = typing();
    const text = `\ufeff${TEXT}`;
    const first = type(text);
    const second = type(text.replace('1--2..', '1--3..').replace('1-2-3', '1-2-4'));
    expect(level(second, 'B').drawings).not.toEqual(level(first, 'B').drawings);
  });

  test('where it has numbers on paper', () => {
    const type = typing();
    const text = `${TEXT}cels A 1 1.1 1.2 2\n`;
    const first = type(text);
    expect(level(type(`${text}# a remark\n`), 'A').exposures).not.toBe(level(first, 'A').exposures);
  });
});

/** Words and lines of all that timelines hang on, in a text that is whole. */
const LONG_TEXT = `cut 1 "Weir"
time 4+0
phrase walk = 1-2-
phrase stroll = walk*2 3
mark hit 1+6
A "Nao": 1:6 walk*2 stroll @hit 4--5 (6-7-)*2
 8--9 10:4 11-12{late}--13:2 14 15 16 17 18 19 20 21 22..
B: stroll @hit+4 5..
C: on 3 1-2 @2+0 3:12 x..
note 1+1 "looks up"
memo "first"
memo "first"
voice "Nao" 7..36 "wait"
field N 60%
truck full@1 > N@2+0
D: walk @3+0 walk..
`;

test('whatever is typed, nothing differs from a fresh look', () => {
  const lines = LONG_TEXT.split('\n');
  const snippets = [
    '',
    ' ',
    '-',
    '1',
    'x',
    '"',
    ':',
    '@hit',
    'walk ',
    '\n',
    '(',
    '*2',
    ' on 2 ',
    '..',
    '\nmark hit 2+0\n',
  ];
  const edit = fc.record({
    line: fc.nat(lines.length - 1),
    at: fc.nat(40),
    cut: fc.nat(3),
    put: fc.constantFrom(...snippets),
    // Most edits are taken back, as a hand that slips does.
    back: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 10 }), (edits) => {
      const type = typing();
      let text = LONG_TEXT;
      type(text);
      for (const { line, at, cut, put, back } of edits) {
        const start = text.split('\n').slice(0, line).join('\n').length + at;
        const edited = text.slice(0, start) + put + text.slice(start + cut);
        type(edited);
        if (back) type(text);
        else text = edited;
      }
    }),
    { numRuns: 25 },
  );
});
