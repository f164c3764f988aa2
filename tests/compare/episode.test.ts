/** A whole generated episode against another version of it: the same single edit in every cut that has a place for it. */

import { beforeAll, describe, expect, test } from 'vitest';
import { format } from '../../src/language/format/format-text.js';
import { runOn } from '../command/run.js';
import { generateEpisode } from '../episode/whole/generate.js';

const { files, cuts } = generateEpisode({ cuts: 30, seed: 31 });
const texts = cuts.map(({ file }) => file);

interface Compared {
  readonly cuts: readonly {
    readonly cut: string;
    readonly changes: readonly { readonly kind: string; readonly en: string }[];
  }[];
  readonly onlyOld: readonly string[];
  readonly onlyNow: readonly string[];
}

/** The episode with some of its cuts edited; null leaves a cut as it is. */
async function compared(edit: (text: string) => string | null) {
  const now = new Map(texts.map((file) => [file, edit(files[file]!)]));
  const world = Object.fromEntries(
    Object.entries(files).flatMap(([name, text]) => [
      [`old/${name}`, text],
      [`new/${name}`, now.get(name) ?? text],
    ]),
  );
  const { status, out, error } = await runOn(
    world,
    'compare',
    'old/episode.yaml',
    'new/episode.yaml',
    '--json',
  );
  return {
    status,
    error,
    edited: [...now.values()].filter((one) => one !== null).length,
    result: JSON.parse(out) as Compared,
  };
}

test('formatted, with remarks and other line ends, it says nothing', async () => {
  const { status, result, edited } = await compared(
    (text) => `# a remark\r\n${format('c.cut', text).text.replaceAll('\n', '\r\n')}`,
  );
  expect(edited).toBe(cuts.length);
  expect({ status, ...result }).toMatchObject({ status: 0, cuts: [], onlyOld: [], onlyNow: [] });
});

/** The first match, edited by `change`. */
const replaced = (pattern: RegExp, change: (...found: string[]) => string) => (text: string) =>
  pattern.test(text) ? text.replace(pattern, change) : null;

describe.each<[what: string, edit: (text: string) => string | null, kinds: readonly string[]]>([
  [
    'a pan or truck two frames shorter',
    replaced(/^((?:pan|truck) A@\d+ > B@)(\d+)/m, (_, start, frame) => `${start}${Number(frame) - 2}`),
    ['move-time'],
  ],
  [
    'a field three millimetres up',
    replaced(/^(field B \S+ at -?[\d.]+),(-?\d+)/m, (_, start, y) => `${start},${Number(y) + 3}`),
    ['field-moved'],
  ],
  [
    'a pull faster',
    replaced(/^(pull .*?)([\d.]+)(mm\/f)/m, (_, start, rate, unit) => `${start}${Number(rate) + 0.1}${unit}`),
    ['move-way'],
  ],
  [
    'another ease',
    replaced(/ ease (\d+) (\d+)/, (_, leave, arrive) => ` ease ${Number(leave) - 1} ${arrive}`),
    ['move-spacing'],
  ],
  [
    'a fade a frame longer',
    replaced(
      /^(fade (?:in 1\.\.|out ))(\d+)/m,
      (_, start, frame) => `${start}${Number(frame) + (start!.includes('in') ? 1 : -1)}`,
    ),
    ['light-time'],
  ],
  ['another artist', replaced(/^(artist ").*"/m, (_, start) => `${start}N. Oban"`), ['artist']],
  ['another title', replaced(/^(cut \S+ ").*"/m, (_, start) => `${start}Elsewhere"`), ['title']],
  [
    'dialogue off',
    replaced(/^(voice (?:"[^"]*"|「[^」]*」)) (\d)/m, (_, start, digit) => `${start} off ${digit}`),
    ['speech-manner'],
  ],
])('%s', (_what, edit, kinds) => {
  let run: Awaited<ReturnType<typeof compared>>;
  beforeAll(async () => {
    run = await compared(edit);
  });

  test('is the one change of each cut that has it', () => {
    const { edited, result, error } = run;
    expect(edited, 'cuts with a place for the edit').toBeGreaterThan(0);
    // A cut that the edit gives an error is left out, and said.
    const broken = new Set(error.match(/(?<=^Error: .*\n.*)c\d+[A-Z]?\.cut(?=:)/gm)).size;
    expect(result.cuts.length).toBe(edited - broken);
    expect(result.cuts.length).toBeGreaterThan(0);
    for (const { cut, changes } of result.cuts) {
      expect(
        changes.map(({ kind }) => kind),
        `cut ${cut}: ${changes.map(({ en }) => en).join('; ')}`,
      ).toEqual(kinds);
    }
  });
});
