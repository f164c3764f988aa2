import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findCuts } from '../../src/episode/find-cuts.js';
import { plainNumber, scan, usesIn } from '../../src/episode/used-files.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { parse } from '../../src/language/parse.js';
import { withoutMark } from '../../src/language/source.js';
import type { Tree } from '../../src/language/tree.js';
import { lookInto } from '../command/pdf.js';
import { run } from '../command/run.js';
import { cut, readsOf, storyIn } from './episode.js';

const numbersOf = async (files: Record<string, string>) =>
  (await storyIn(memoryHost(files))).cuts().map(({ number }) => number);

describe('the story', () => {
  test('has the order of the manifest, by number within a pattern', async () => {
    const files = {
      'a/c10.cut': cut('10'),
      'a/c2.cut': cut('2'),
      'a/c12A.cut': cut('12A'),
      'a/c12.cut': cut('12'),
      'b/c1.cut': cut('1'),
    };
    expect(
      await numbersOf({ ...files, 'episode.yaml': 'cuts: ["b/*.cut", a/c12.cut, "a/*.cut"]\n' }),
    ).toEqual(['1', '12', '2', '10', '12A']);
    expect(await numbersOf({ ...files, 'episode.yaml': '' })).toEqual(['2', '10', '12', '12A', '1']);
  });

  test('is the order in which a batch does the cuts', async () => {
    const host = memoryHost({
      'episode.yaml': 'cuts: ["b/*.cut", "a/**/*.cut", x.cut]\n',
      'a/c10.cut': cut('10'),
      'a/d/c2.cut': cut('2'),
      'b/c1.cut': cut('1'),
      'x.cut': cut('0'),
    });
    const { jobs } = await findCuts(host, ['.']);
    const story = await storyIn(host);
    expect(story.cuts().map(({ path, name }) => [path, name])).toEqual(
      jobs.map(({ path, name }) => [path, name]),
    );
  });

  test('leaves out house files, folders, files that are not there or lie outside', async () => {
    const host = memoryHost({
      'ep/episode.yaml': 'cuts: ["*.cut", gone.cut, ../out.cut, link.cut]\n',
      'ep/1.cut': cut('1'),
      'ep/house.cut': 'phrase cut_back = 1--2\nlevel C reuse 1/A\n',
      'ep/f.cut/x.txt': '',
      'out.cut': cut('7'),
    });
    host.links.set('/work/ep/link.cut', '/work/out.cut');
    const story = await storyIn(host, 'ep');
    expect(story.cuts().map(({ name, number }) => [name, number])).toEqual([['ep/1.cut', '1']]);
  });

  test('keeps a cut whose number cannot be read, so that nobody else becomes the neighbour', async () => {
    expect(
      await numbersOf({
        'episode.yaml': '',
        '1.cut': cut('1'),
        '2.cut': 'cut\ntime 1+0\n',
        '3.cut': 'time 1+0\nA: 1..\n',
        '4.cut': cut('4'),
      }),
    ).toEqual(['1', '', '', '4']);
  });

  test('gives a copy whose number was not changed no part in it', async () => {
    const host = memoryHost({ 'episode.yaml': '', '1.cut': cut('1'), '2.cut': cut('1'), '3.cut': cut('3') });
    const around = (await storyIn(host)).around('/work/1.cut', '1');
    expect([around!.before, around!.after!.number]).toEqual([null, '3']);
  });

  test('is read once for a whole run, a file at the first question that needs it', async () => {
    const names = Array.from({ length: 40 }, (_, i) => `${i + 1}.cut`);
    const files = Object.fromEntries(names.map((name, i) => [name, cut(`${i + 1}`)]));
    const host = memoryHost({ 'episode.yaml': '', ...files });
    const story = await storyIn(host);
    const reads = readsOf(host);
    story.around('/work/7.cut', '7');
    expect(reads.sort()).toEqual(['6.cut', '8.cut']);
    story.find('10');
    expect(reads).toHaveLength(10);
    for (const number of ['3', '40', '77', '1']) story.find(number);
    story.cuts();
    expect(reads.sort()).toEqual([...names].sort());
  });
});

describe('scanning', () => {
  test('stops in a text that is no cut', () => {
    const { statements, broken } = scan('a.cut', 'overlap in 24\noverlap in\n'.repeat(5000));
    expect(statements.length + broken.length).toBe(1000);
  });

  test('takes nothing that only begins so', () => {
    const text = 'cut 12\ntimes 5\ncutter: 1..\nlevels C reuse 8/C\nuses "x"\nlevel C size 1x1mm\n';
    const { statements, broken } = scan('a.cut', text);
    expect([statements.map(({ kind }) => kind), broken]).toEqual([['cut'], []]);
  });

  test.each([
    [
      'the common form',
      'cut 12 "Dusk" # c\ntime 5+0\nfps 25\noverlap in 24\nuse "h.cut"\nlevel C reuse 8/C\n',
    ],
    [
      'full-width letters',
      'ｃｕｔ　１２\nｔｉｍｅ　５＋０\nｏｖｅｒｌａｐ　ｏｕｔ　２４\nｌｅｖｅｌ　Ｃ　ｒｅｕｓｅ　８・Ｃ\n',
    ],
    [
      'lines that go on, with comments between',
      'cut\n  12\n# no end\n\n  "Dusk"\nlevel C\n\tsize 300x200mm\n　reuse 8/C\n',
    ],
    ['line ends of other systems', 'cut 12\r\ntime 5+0\r\noverlap in 24\r\n'],
    ['old line ends', 'cut 12\rtime 5+0\roverlap in 24\r'],
    ['a byte-order mark', '\uFEFFcut 12\noverlap in 24\n'],
    ['levels with such names', 'cut 12\ncut "x": 1..\ntime: 1..\noverlap: 1..\n'],
    [
      'words in quotes and comments',
      'cut 12\nmemo "overlap in 24" # level C reuse 8/C\n#time 5+0\nmemo "\u2028cut 13"\n',
    ],
    ['what cannot be read', 'cut 12 13\noverlap in\nuse\ntime\nlevel C reuse 8\n'],
  ])('finds what reading it all finds: %s', (_, text) => {
    const wanted = (kind: string) => ['cut', 'time', 'fps', 'overlap', 'use', 'level'].includes(kind);
    const { tree } = parse('a.cut', text);
    const found = scan('a.cut', text);
    expect(found.statements).toEqual(
      tree.statements.filter((one) => wanted(one.kind) && (one.kind !== 'level' || one.reuse)),
    );
    expect(found.broken.map(({ word }) => word)).toEqual(tree.broken.map(({ word }) => word).filter(wanted));
  });
});

describe('scan reads the statements that parse reads, whatever characters stand between', () => {
  const PARTS = [
    'cut 12 "a"',
    'cut 7',
    'use "house.cut"',
    'time 1+0',
    'level A reuse 8/B',
    'A: 1..',
    'cut\u0301 3',
    'overlap in',
    ...['\n', '\n', '\n', '\r', '\r\n', ' ', '\t', '\u3000', '#', '"'],
    ...['\u0000', '\uffff', '\ufeff', '\u2028', '\u0085', '\u0301', '\ufdd0', '\ud83d'],
  ];
  const wanted = (kind: string) => ['cut', 'fps', 'time', 'overlap', 'use'].includes(kind);

  test('random texts', () => {
    let plain = 0;
    let uses = 0;
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...PARTS), { maxLength: 14 }), (parts) => {
        const text = parts.join('');
        const whole = parse('a.cut', text).tree;
        const few = scan('a.cut', text);
        const found = ({ statements }: Tree) =>
          statements.filter(({ kind }) => wanted(kind)).map(({ kind, span }) => [kind, span]);
        expect(found(few)).toEqual(found(whole));
        // A word with a slip in it is guessed at where all is read.
        const typed = ({ word, span }: Tree['broken'][number]) =>
          new RegExp(`^${word}(?![\\p{L}\\p{M}\\p{Nd}_])`, 'u').test(withoutMark(text).slice(span.start));
        const broken = ({ broken: all }: Tree) => all.filter((one) => wanted(one.word) && typed(one));
        expect(broken(few)).toEqual(broken(whole));
        const number = plainNumber(text);
        if (number !== null) {
          plain++;
          const first = whole.statements.find((one) => one.kind === 'cut');
          expect(first?.kind === 'cut' && first.number.text).toBe(number);
        }
        const using = whole.statements.filter(({ kind }) => kind === 'use').length;
        uses += using;
        expect(usesIn(text).length).toBeGreaterThanOrEqual(using);
      }),
      { numRuns: 800 },
    );
    expect(Math.min(plain, uses)).toBeGreaterThan(10);
  });

  test('a byte-order mark hides no `use`', () => {
    expect(usesIn('\ufeffuse "house.cut"\n')).toEqual(['use "house.cut"']);
  });
});

describe('surroundings', () => {
  // ---- what other cuts add to a sheet is on its paper, and counts as a change of it

  const cut = (number: number, lines: string): string => `cut ${number}\ntime 2+0\n${lines}\n`;
  const EPISODE = {
    'e/episode.yaml': 'cuts: ["*.cut"]\n',
    'e/8.cut': cut(8, 'C: 1--2..'),
    'e/9.cut': cut(9, 'overlap out 1+0\nA: 1..'),
    'e/10.cut': cut(10, 'overlap in 24\nA: 1..'),
    'e/11.cut': cut(11, 'A: 1..'),
  };

  test('a borrower or another neighbour prints the sheets again on which they stand, and no others', async () => {
    const host = memoryHost(EPISODE);
    const build = (...more: string[]) => run(host, 'build', 'e', '-o', 'out', ...more);
    const words = async (name: string) =>
      (await lookInto(host.files.get(`/work/out/${name}.pdf`)!)).texts.join(' ');
    const written = async () => {
      const before = new Map(host.files);
      await build('--changed');
      return [...host.files]
        .filter(([name, bytes]) => before.get(name) !== bytes)
        .map(([name]) => name.slice(10));
    };
    await build();
    expect(await words('9')).toContain('c10');
    expect(await words('10')).toContain('c9');
    expect(await words('8')).not.toContain('shown again');

    host.files.set('/work/e/12.cut', Buffer.from(cut(12, 'level D reuse 8/C\nD: 1..')));
    expect((await written()).sort()).toEqual(['12.pdf', '8.pdf']);
    expect(await words('8')).toContain('cut 12 (as D)');
    expect(await words('12')).toContain('cut 8');

    host.files.set(
      '/work/e/9A.cut',
      Buffer.from(cut(9, 'overlap out 1+0\nA: 1..').replace('cut 9', 'cut 9A')),
    );
    expect((await written()).sort()).toEqual(['10.pdf', '9.pdf', '9A.pdf']);
    expect(await words('10')).toContain('c9A');
    expect(await words('9')).toContain('c9A');

    host.files.delete('/work/e/12.cut');
    expect(await written()).toEqual(['8.pdf']);
    expect(await words('8')).not.toContain('as D');
  });
});
