import { beforeAll, describe, expect, test } from 'vitest';
import { shippedEnglishWords } from '../../src/host/shipped-files.js';
import { englishDictionary } from '../../src/sound/english-dictionary.js';
import { DOUBTFUL, type FoundLine, findLines, type LineToFind } from '../../src/sound/find-lines.js';
import type { Dictionary } from '../../src/sound/pronunciation.js';
import { source } from './byte-source.js';
import { type Synthesised, synthesise } from './speech-synthesis.js';
import { wave } from './wave-writer.js';

const ROW = 1 / 24;
let dictionary: Dictionary;
beforeAll(() => {
  const words = shippedEnglishWords();
  dictionary = englishDictionary(words.ok ? words.value : '');
});

const line = (text: string, ties: LineToFind['ties'] = []): LineToFind => ({
  text,
  from: null,
  to: null,
  ties,
});
function heard({ samples, rate }: Synthesised, ...lines: readonly LineToFind[]): FoundLine[] {
  const window = { firstSample: 0, seconds: samples.length / rate };
  return findLines(source(wave(samples, { rate })), window, lines, dictionary);
}

describe('the words of a line', () => {
  test.each([
    ['Do not touch the yellow thread.', {}],
    ['We have seven minutes, not more.', { tract: 1.18, pitchHz: 210 }],
    ['I sold the boat last summer.', { slow: 1.4 }],
    ['まって、 もう すこしだよ。', {}],
    ['ちいさな とりが ないて いる。', { tract: 1.18, pitchHz: 220, slow: 0.9 }],
  ])('%s', (text, speaker) => {
    const made = synthesise(5, [{ at: 0.8, text, speaker }], dictionary);
    const [found] = heard(made, line(text));
    const { words, end } = made.lines[0]!;
    expect(found!.words).toHaveLength(words.length);
    found!.words!.forEach(({ seconds }, i) => {
      expect(Math.abs(seconds - words[i]!) / ROW, `word ${i}`).toBeLessThan(2);
    });
    expect(Math.abs(found!.words!.at(-1)!.endSeconds - end) / ROW).toBeLessThan(4);
    expect(found!.likeness).toBeGreaterThan(DOUBTFUL);
  });

  test('with the beginning of every syllable, rising', () => {
    const made = synthesise(4, [{ at: 0.5, text: 'とうきょうだよ' }], dictionary);
    const [word] = heard(made, line('とうきょうだよ'))[0]!.words!;
    expect(word!.beats).toHaveLength(6);
    for (let i = 1; i < 6; i++) expect(word!.beats[i]!).toBeGreaterThan(word!.beats[i - 1]!);
  });
});

describe('several lines', () => {
  const first = 'Wait for me!';
  const second = 'The tide is coming in.';
  const missing = 'Everybody knows the old captain.';

  test('each at its place, and one that is not there is said to be missing', () => {
    const made = synthesise(
      6,
      [
        { at: 0.5, text: first },
        { at: 3, text: second },
      ],
      dictionary,
    );
    const [one, none, other] = heard(made, line(first), line(missing), line(second));
    expect(none!.words).toBeNull();
    expect(Math.abs(one!.words![0]!.seconds - 0.5)).toBeLessThan(2 * ROW);
    expect(Math.abs(other!.words![0]!.seconds - 3)).toBeLessThan(2 * ROW);
  });

  test('of silence none is found', () => {
    const made = synthesise(3, [], dictionary);
    expect(heard(made, line(first))[0]!.words).toBeNull();
  });
});

test('what is tied is taken for known', () => {
  const made = synthesise(5, [{ at: 1, text: 'no no no no' }], dictionary);
  const third = made.lines[0]!.words[2]!;
  const [found] = heard(made, line('no no no no', [{ at: 6, seconds: third }]));
  expect(found!.words![2]!.seconds).toBe(third);
});

test('kanji without ruby are named, and the rest is found', () => {
  const made = synthesise(4, [{ at: 1, text: 'うみへ いこう' }], dictionary);
  const [found] = heard(made, line('海 うみへ いこう'));
  expect(found!.unread.map(({ text }) => text)).toEqual(['海']);
  expect(found!.words).toHaveLength(2);
});

test('a file that is no recording, a text that says nothing', () => {
  const nothing = { words: null, unread: [], likeness: 0 };
  const window = { firstSample: 0, seconds: 1 };
  expect(findLines(source(Buffer.from('x')), window, [line('Wait')], dictionary)).toEqual([nothing]);
  const made = synthesise(2, [{ at: 0.5, text: 'wait' }], dictionary);
  expect(heard(made, line('…'))).toEqual([nothing]);
});
