import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseManifest } from '../../src/episode/manifest.js';
import { messageOf, noteOf } from '../../src/language/message.js';
import { lines, placeAt } from '../../src/language/source.js';
import { defaults } from '../../src/shot/settings.js';

const read = (text: string) => parseManifest('episode.yaml', text);

/** Each problem as `line: code: message`. */
const told = (text: string) =>
  read(text).diagnostics.map(
    (one) => `${placeAt(lines(text), one.span.start).line}: ${one.code}: ${messageOf(one, 'en')}`,
  );

/** The text that a problem points at. */
const pointed = (text: string) => read(text).diagnostics.map(({ span }) => text.slice(span.start, span.end));

const full = `
title: Saltbox Winter
episode: 7
convention: west
labels: en
paper: tabloid
rows: 96
fps: 25
on: 3
numbering: frame
field: 10in x 5.625in
fields: 16
artwork: 420 x 297 mm
output: 3840x2160
scan: 300dpi
overlap: full
pegs: flat-round-flat
budget: 1320+0
artists: { M. Arai: [12, 13], 汐見: 12A }
cuts: [ "cuts/*.cut", extra/c99.cut ]
`;

describe('a manifest', () => {
  test('says everything that it may say', () => {
    const episode = read(full);
    expect(episode.diagnostics).toEqual([]);
    expect(episode.settings).toEqual({
      title: 'Saltbox Winter',
      episode: '7',
      convention: 'west',
      labels: 'en',
      paper: 'tabloid',
      rows: 96,
      fps: 25,
      on: 3,
      numbering: 'frame',
      field: { widthMm: 254, heightMm: 142.875 },
      fields: 16,
      artwork: { widthMm: 420, heightMm: 297 },
      output: { width: 3840, height: 2160 },
      scanDpi: 300,
      overlap: 'full',
      pegs: 'flat-round-flat',
      lengths: 'in',
    });
    expect(episode.budgetFrames).toBe(1320 * 25);
    expect(episode.artists.map(({ name, cuts }) => [name.text, cuts.map(({ text }) => text)])).toEqual([
      ['M. Arai', ['12', '13']],
      ['汐見', ['12A']],
    ]);
    expect(episode.cuts!.map(({ text }) => text)).toEqual(['cuts/*.cut', 'extra/c99.cut']);
    expect(episode.printed.map(({ text }) => text)).toEqual(['Saltbox Winter', '7', 'M. Arai', '汐見']);
  });

  test('may say nothing', () => {
    for (const text of ['', '# nothing yet\n', '---\n', '{}']) {
      expect(read(text), text).toMatchObject({ settings: defaults, diagnostics: [], cuts: null });
    }
  });

  test('keeps words as they are typed', () => {
    expect(read('episode: 007\ntitle: 1e3').settings).toMatchObject({ episode: '007', title: '1e3' });
    expect(read('title: yes').settings.title).toBe('yes');
    expect(read('title: "A: B"').settings.title).toBe('A: B');
  });

  test('follows an alias to one value', () => {
    expect(read('title: &t Harbour\nepisode: *t\n')).toMatchObject({
      settings: { title: 'Harbour', episode: 'Harbour' },
      diagnostics: [],
    });
  });

  test('reads a western running time by feet', () => {
    expect(read("budget: 90'00").budgetFrames).toBe(1440);
    expect(read('budget: 1440').budgetFrames).toBe(1440);
  });
});

describe('a fault of a manifest stands on its line', () => {
  test('an unknown key, with a guess that mends it', () => {
    const text = 'title: X\npapper: A3\n';
    expect(told(text)).toEqual(['2: episode-key: The manifest has no key `papper`; did you mean `paper`?']);
    const edit = read(text).diagnostics[0]!.fix?.edits[0];
    const mended = text.slice(0, edit!.span.start) + edit!.text + text.slice(edit!.span.end);
    expect(read(mended)).toMatchObject({ diagnostics: [], settings: { paper: 'A3' } });
  });

  test('a value under its old name holds, with a hint and a fix', () => {
    const text = 'pegs: acme\n';
    expect(read(text).settings.pegs).toBe('flat-round-flat');
    expect(told(text)).toEqual(['1: word-renamed: `acme` is called `flat-round-flat` now.']);
    expect(read(text).diagnostics).toMatchObject([
      { severity: 'hint', fix: { edits: [{ text: 'flat-round-flat' }] } },
    ]);
  });

  test('an unknown key that is like none: all keys are named', () => {
    const [problem] = read('colour: red').diagnostics;
    expect(noteOf(problem!.notes[0]!, 'en')).toContain('title, episode, convention');
  });

  test('names of the language of the program are no keys', () => {
    for (const key of ['constructor', '__proto__', 'toString', 'hasOwnProperty']) {
      expect(told(`${key}: 1`), key).toHaveLength(1);
    }
  });

  test('a key that stands twice, with its first place', () => {
    const text = 'fps: 24\nfps: 25\n';
    expect(told(text)).toEqual(['2: episode-key: The key `fps` stands twice.']);
    expect(read(text).diagnostics[0]!.notes[0]!.span).toMatchObject({ start: 0, end: 3 });
    expect(read(text).settings.fps).toBe(24);
  });

  test('a misspelt word, with a guess', () => {
    expect(told('convention: japn')).toEqual([
      '1: episode-value: There is no `japn` here; did you mean `japan`?',
    ]);
    expect(told('paper: a4')).toEqual(['1: episode-value: There is no `a4` here; did you mean `A4`?']);
    expect(told('paper: foolscap')).toEqual([
      '1: episode-value: `foolscap` is not A4, A3, B4, B5, letter, legal, tabloid, C4 or kaku2.',
    ]);
  });

  test.each([
    ['fps: 0'],
    ['fps: 121'],
    ['fps: -24'],
    ['fps: 23.976'],
    ['fps: fast'],
    ['fps: [24]'],
    ['fps: 1e2'],
    ['on: 0'],
    ['fields: 14'],
    ['field: 254'],
    ['field: 254mm x'],
    ['field: 0x0'],
    ['field: 99999x2'],
    ['artwork: A4'],
    ['output: 1920'],
    ['output: 0x1080'],
    ['scan: 0'],
    ['scan: 200lpi'],
    ['budget: 0+0'],
    ['budget: 22:00'],
    ['budget: 99999999999+0'],
    ['overlap: most'],
    ['pegs: 2'],
    ['title: [a, b]'],
    ['title: { a: b }'],
    ['title:'],
    ['artists: M. Arai'],
    ['artists: { M. Arai: { 12: 13 } }'],
    ['artists: { M. Arai: [[12]] }'],
    ['cuts: { a: b }'],
    ['cuts: [ [a] ]'],
    ['cuts: [ "" ]'],
  ])('%s', (text) => {
    expect(told(`# first line\n${text}\n`)).toEqual([expect.stringMatching(/^2: episode-value: /)]);
  });

  test('values are read as far as they can be: one run tells all', () => {
    const text = 'fps: fast\npaper: A9\nrows: x\nbudget: y\non: 3\n';
    expect(told(text).map((line) => line[0])).toEqual(['1', '2', '3', '4']);
    expect(read(text).settings).toMatchObject({ fps: 24, paper: 'A4', rows: null, on: 3 });
    expect(pointed(text)).toEqual(['fast', 'A9', 'x', 'y']);
  });

  test.each([
    ['a colon in a value', 'title: Harbour: Lights', 'needs quotes'],
    ['a tab before a key', 'title: X\n\tfps: 24', 'tab'],
    ['two documents', 'title: X\n---\ntitle: Y', 'one document'],
    ['text that is not closed', 'title: "X\nfps: 24\n', 'not closed'],
    ['an alias of nothing', 'title: *x', 'called `&x`'],
    ['a list', '- title\n', 'a list of keys'],
    ['a sentence', 'hello there', 'a list of keys'],
  ])('%s', (_, text, words) => {
    const [first] = read(text).diagnostics;
    expect(first).toMatchObject({ severity: 'error' });
    expect(messageOf(first!, 'en')).toContain(words);
  });
});

describe('rows of a page', () => {
  test('are whole seconds in Japan, whole feet in the west', () => {
    expect(told('rows: 100')).toEqual([expect.stringContaining('whole seconds of 24 rows')]);
    expect(told('rows: 100')[0]).toContain('96 would do');
    expect(told('convention: west\nrows: 100')).toEqual([expect.stringContaining('whole feet of 16 rows')]);
    expect(told('rows: 100\nfps: 25')).toEqual([]);
    expect(told('rows: 80\nconvention: west')).toEqual([]);
  });

  test('are no more than the paper holds', () => {
    expect(told('rows: 480\npaper: A4')).toEqual([expect.stringContaining('on A4 from 24 to')]);
    expect(told('rows: 0')).toHaveLength(1);
  });
});

describe('hostile manifests', () => {
  test('aliases of aliases are not expanded', () => {
    const names = 'abcdefghijklmnopqrstuvwxyz'.split('');
    const bombs = names
      .slice(1)
      .map((name, i) => `${name}: &${name} [${Array(9).fill(`*${names[i]}`).join(', ')}]`);
    const text = ['a: &a [x, x]', ...bombs, 'title: *z', 'cuts: *z'].join('\n');
    const problems = told(text);
    // One for each unknown key, one for the title, one for each of the nine entries of the list that cuts stands for.
    expect(problems.filter((line) => line.includes('episode-key'))).toHaveLength(26);
    expect(problems.filter((line) => line.includes('episode-value'))).toHaveLength(1 + 9);
  });

  test('many aliases of one value are no reason to wait', () => {
    const text = `title: &a x.cut\ncuts: [${Array(30_000).fill('*a').join(',')}]`;
    expect(read(text).cuts).toHaveLength(30_000);
  });

  test('an alias of itself', () => {
    expect(told('cuts: &a [*a]')).toHaveLength(1);
    expect(told('artists: &a { x: *a }')).toHaveLength(1);
  });

  test('nesting beyond any sense is refused', () => {
    for (const text of [
      '['.repeat(50_000),
      `${'['.repeat(20_000)}${']'.repeat(20_000)}`,
      '{a: '.repeat(20_000),
    ]) {
      expect(read(text).diagnostics.length).toBeGreaterThan(0);
    }
  });

  test('many keys are no reason to wait', () => {
    const text = Array.from({ length: 20_000 }, (_, i) => `k${i}: 1`).join('\n');
    expect(read(text).diagnostics).toHaveLength(20_000);
  });

  test('a directive for an older YAML does not change what words mean', () => {
    expect(read('%YAML 1.1\n---\non: 3\ntitle: no\n')).toMatchObject({
      settings: { on: 3, title: 'no' },
      diagnostics: [],
    });
  });

  test('any text at all is read without a crash, its places inside the text', () => {
    const piece = fc.constantFrom(
      ...[
        'title',
        'fps',
        ':',
        ' ',
        '\n',
        '- ',
        '[',
        ']',
        '{',
        '}',
        '"',
        "'",
        '&a',
        '*a',
        '|',
        '>',
        '!!binary',
        '? ',
        '%',
        '12',
        '\t',
        '#',
        'あ',
        '🎬',
        '---\n',
      ],
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const text = pieces.join('');
        for (const { span } of read(text).diagnostics) {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeLessThanOrEqual(text.length);
          expect(span.end).toBeGreaterThanOrEqual(span.start);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('the production', () => {
  const production = (text: string) => {
    const { diagnostics, production: said, dueCuts } = read(text);
    expect(diagnostics).toEqual([]);
    return { ...said, dueCuts: dueCuts.map((one) => one.text) };
  };

  test('has the usual stages where nothing is said', () => {
    expect(production('')).toMatchObject({
      stages: ['layout', 'key', 'check', 'in-between', 'finish', 'shoot'],
      due: [],
    });
  });

  test('is said by stage and by cut, in any order of the keys', () => {
    const said = production(
      'rates: { 塗り: 3.50 yen per drawing }\ndue: { key: 2027-3-1, key 012a: 2027-03-02, 7: 2027/04/01 }\nstages: [key, 塗り]\n',
    );
    expect(said).toMatchObject({
      stages: ['key', '塗り'],
      due: [
        { stage: 'key', cut: null, date: '2027-03-01' },
        { stage: 'key', cut: '12A', date: '2027-03-02' },
        { stage: '塗り', cut: '7', date: '2027-04-01' },
      ],
      dueCuts: ['012a', '7'],
    });
    expect(said.rates.get('塗り')).toEqual({ amount: 350, decimals: 2, currency: 'yen', unit: 'drawing' });
  });

  test.each([
    [
      'stages: [2nd]',
      '1: episode-value: `2nd` is not the name of a stage: one word that begins with a letter, such as `layout`.',
    ],
    ['stages: [key, key]', '1: episode-value: `key` stands here already.'],
    ['stages: []', '1: episode-value: `stages` has no value; give it one or leave the line out.'],
    [
      'due: soon',
      '1: episode-value: This is not a list of stages and cuts with their days, such as `{ key: 2027-03-19, key 12: 2027-03-26 }`.',
    ],
    ['due: { kye: 2027-03-01 }', '1: episode-value: `kye` is no stage; did you mean `key`?'],
    [
      'due: { paint: 2027-03-01 }',
      '1: episode-value: `paint` is no stage and no cut; the stages are layout, key, check, in-between, finish, shoot.',
    ],
    [
      'due: { key: 1.3.2027 }',
      '1: episode-value: `1.3.2027` is not a day, the year first, such as `2027-03-19`.',
    ],
    ['due: { key: 2027-03-01, key: 2027-03-02 }', '1: episode-value: `key` stands here already.'],
    [
      'rates: { paint: 1 yen per cut }',
      '1: episode-value: `paint` is no stage; the stages are layout, key, check, in-between, finish, shoot.',
    ],
    [
      'rates: { key: 230 }',
      '1: episode-value: `230` is not what is paid, such as `230 yen per drawing`: an amount, a currency, and per cut, key, in-between, drawing, second or foot.',
    ],
  ])('%s', (text, said) => {
    expect(told(text)).toEqual([said]);
  });
});
