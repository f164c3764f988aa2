import { describe, expect, test } from 'vitest';
import { parseManifest } from '../../src/episode/manifest.js';
import { keySlips, withoutSlips } from '../../src/episode/manifest-slips.js';
import { messageOf } from '../../src/language/message.js';

const KEYS = ['title', 'fps', 'labels', 'due'];

/** What is said of a manifest, and the text with all mends. */
function told(text: string) {
  const read = parseManifest('episode.yaml', text);
  const edits = read.diagnostics
    .flatMap(({ fix }) => fix?.edits ?? [])
    .sort((a, b) => b.span.start - a.span.start);
  return {
    ...read,
    said: read.diagnostics.map(
      (one) => `${text.slice(one.span.start, one.span.end)}| ${messageOf(one, 'en')}`,
    ),
    mended: edits.reduce(
      (now, { span, text: put }) => now.slice(0, span.start) + put + now.slice(span.end),
      text,
    ),
  };
}

const COLON = 'Between a key and its value stand a half-width colon and a blank: ';

describe('a key without its colon', () => {
  test.each([
    ['fps：25\ntitle: "T"\n', '：', 'fps: 25'],
    ['title: "T"\nfps：25', '：', 'fps: 25'],
    ['title: "T"\nfps ： 25 # fast\n', ' ： ', 'fps: 25'],
    ['title: "T"\nfps=25\n', '=', 'fps: 25'],
    ['title: "T"\nfps = 25\r\n', ' = ', 'fps: 25'],
    ['fps 25\n', ' ', 'fps: 25'],
    ['title: "T"\nfps 25\npaper: A3\n', ' ', 'fps: 25'],
    ['title: "T"\nfps:25\n', ':', 'fps: 25'],
  ])('%j', (text, sign, written) => {
    const { said, mended, settings } = told(text);
    expect(said).toEqual([`${sign}| ${COLON}\`${written}\`.`]);
    expect(settings.fps).toBe(25);
    expect(told(mended)).toMatchObject({ said: [], settings: { fps: 25 } });
  });

  test('several, of names of people and stages, too', () => {
    const { said, artists, production, mended } = told(
      'artists:\n  M. Arai： 1\n  B: 2\ndue: { layout：2026-11-20, finish: 2026-12-01 }\n',
    );
    expect(said).toEqual([`： | ${COLON}\`M. Arai: 1\`.`, `：| ${COLON}\`layout: 2026-11-20\`.`]);
    expect(artists.map(({ name }) => name.text)).toEqual(['M. Arai', 'B']);
    expect(production.due.map(({ stage }) => stage)).toContain('layout');
    expect(told(mended).said).toEqual([]);
  });

  test('places behind it are those of the text', () => {
    const { said } = told('fps   =   25\nlabels：ja\npaper: A33\n');
    expect(said.at(-1)).toMatch(/^A33\| /);
  });

  test('a text that holds such signs is left alone', () => {
    expect(told('title: "雨：前編"\nepisode: x = y\n').said).toEqual([]);
    expect(told('title: 雨：前編\n').said).toEqual([]);
    expect(told('# fps：24\ntitle: x\n').said).toEqual([]);
    expect(told('title: Harbour: Lights\n').said).toEqual([
      'H| A value that holds a colon needs quotes, and a list of keys a line of its own.',
    ]);
  });

  test('other errors stay, and nothing of the library is said of the usual ones', () => {
    expect(told('fps：24\ntitle: "abc\n').said).toEqual([
      `：| ${COLON}\`fps: 24\`.`,
      '| A text in quotes is not closed.',
    ]);
    expect(told('title: "a" b\n').said[0]).toContain('The value has ended before this');
    expect(told('cuts: ["a", "b"\nfps: 24\n').said[0]).toContain('A list or a group is not closed');
    expect(told('title: x\nwhatever\n').said).toEqual([`whatever| ${COLON}\`fps: 24\`.`]);
    expect(told('a: [b\n').said[0]).toMatch(/not closed/);
  });
});

describe('the places of slips', () => {
  test('are where the sign and its blanks stand', () => {
    expect(keySlips('fps = 24\n', KEYS, true)).toEqual([{ range: { start: 3, end: 6 }, written: 'fps: 24' }]);
    expect(keySlips('fps = 24\n', KEYS, false)).toEqual([]);
    expect(keySlips('go on\n  fps 24\nC:\\x\n', KEYS, true)).toEqual([]);
  });

  test('of the mended text lead back to the typed one', () => {
    const text = 'fps = 24\nlabels：ja\nx';
    const { text: mended, typed } = withoutSlips(text, keySlips(text, KEYS, true));
    expect(mended).toBe('fps: 24\nlabels: ja\nx');
    for (const word of ['fps', '24', 'labels', 'ja', 'x'])
      expect([word, typed(mended.indexOf(word))]).toEqual([word, text.indexOf(word)]);
  });
});

describe('an amount with a comma', () => {
  test.each([
    ['rates: { finish: 2,50 EUR per drawing }', '2,50 EUR per drawing', '2.50 EUR per drawing'],
    [
      'rates: { finish: 2,50 EUR per drawing, layout: 3 EUR per cut }',
      '2,50 EUR per drawing',
      '2.50 EUR per drawing',
    ],
    ['rates:\n  finish: 2,50 EUR per drawing', '2,50 EUR per drawing', '2.50 EUR per drawing'],
    ['rates:\n  finish: 1,200 yen per cut', '1,200 yen per cut', '1200 yen per cut'],
  ])('%j', (text, found, written) => {
    const { said, mended } = told(text);
    expect(said).toEqual([
      `${found}| An amount has no comma, and its decimals stand behind a point: \`${written}\`.`,
    ]);
    expect(told(mended).said).toEqual([]);
  });

  test('what is no rate even so is told as such', () => {
    expect(told('rates:\n  finish: 2,50 EUR per mile').said[0]).toContain('`2,50 EUR per mile` is not');
    expect(told('rates: { finish: 2, 50 }').said).toHaveLength(2);
  });
});
