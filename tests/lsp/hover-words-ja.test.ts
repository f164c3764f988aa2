import { describe, expect, test } from 'vitest';
import { hoverWords } from '../../src/lsp/hover-words.js';
import { JAPANESE_HOVERS as ja } from '../../src/lsp/hover-words-ja.js';
import { englishIn } from '../japanese-text.js';

/** What each word is told, in all of its forms. */
const SAID = {
  lasting: [ja.lasting(48, 24)],
  between: [ja.between(25, 48), ja.between(25, 25)],
  frameList: [ja.frameList('3–4、7–8')],
  asLength: [ja.asLength(24, 24)],
  asPosition: [ja.asPosition(25, 24)],
  listed: [ja.listed(['1', '2', '3'], 2), ja.listed([])],
  mark: [ja.mark('hit', 3), ja.mark('hit', -3), ja.mark('hit', 0)],
  field: [ja.field('B', '127 × 71.44 mm', 50)],
  centre: [ja.centre(21.1667, 0)],
  turned: [ja.turned(5), ja.turned(-5)],
  chart: [ja.chart(12, '6F 2E')],
  move: (['pan', 'truck', 'pull', 'follow', 'slide', 'levelTruck', 'turn', 'shake', 'sway'] as const).map(
    (kind) => ja.move(kind, '2～23コマ目', '22コマ', 22),
  ),
  gives: [ja.gives.width, ja.gives.centre],
  way: [
    ja.way(110, null),
    ja.way(110, { mm: 5, throughout: true }),
    ja.way(110, { mm: 5, throughout: false }),
  ],
  largestStep: [
    ja.largestStep({ mm: 5, frame: 2, percent: 1.97, pixels: 37.8 }),
    ja.largestStep({ mm: 5, frame: null, percent: 1.97, pixels: 37.8 }),
  ],
  fromTo: [ja.fromTo('0°', '90°')],
  ofWidth: [ja.ofWidth(254)],
  kinds: Object.values(ja.kinds),
  drawing: [ja.drawing('A', '1', ja.kinds.key, 'A1')],
  empty: [ja.empty('A')],
  here: [ja.here('1～6コマ目', '6コマ', 1), ja.here('1～6コマ目', '6コマ', 3)],
  inAll: [ja.inAll('18コマ', 1)],
  passage: ([null, 'even', 'early', 'late', 'both'] as const).map((chart) =>
    ja.passage('1', '2', 1, '0.5', chart),
  ),
  group: [ja.group(null, '1～4コマ目', '4コマ', 1, 4), ja.group('walk', '1～6コマ目', '6コマ', 1.5, 4)],
  phrase: [ja.phrase('walk', ''), ja.phrase('walk', '6コマ')],
  level: [ja.level('A', ''), ja.level('A', '犬')],
  drawn: [
    ja.drawn({ keys: 3, breakdowns: 0, inbetweens: 2, reused: 0 }),
    ja.drawn({ keys: 3, breakdowns: 1, inbetweens: 2, reused: 4 }),
  ],
  seen: [ja.seen('12コマ', '24コマ', 12), ja.seen('24コマ', '24コマ', 0)],
  reuses: [ja.reuses('8', 'C')],
  unused: [ja.unused('A2')],
  artwork: [ja.artwork('300 × 200 mm', null, null), ja.artwork('300 × 200 mm', '310 × 200 mm', 310)],
  neverSeen: [ja.neverSeen],
  cut: [ja.cut('8', '渡し船'), ja.cut('8', '')],
  noCut: [ja.noCut('9')],
  recording: [1, 2, 6].map((channels) => ja.recording(2.5, 48, channels)),
  heard: [ja.heard(null), ja.heard({ from: 1, to: 24 })],
  line: [ja.line('mora', 6, '1+4'), ja.line('syllable', 3, '0+14')],
  lineHas: [ja.lineHas('1+0', 6)],
  mouth: [0, 1, 2].map((flapping) =>
    ja.mouth({ speaker: 'ナオ', lines: 2, flapping, drawings: 3, on: 3, lead: 1 }),
  ),
  seenAs: [
    ...(['closed', 'half', 'open'] as const).map((shape) => ja.seenAs(shape, '1', null)),
    ja.seenAs('a', '2', { cel: 'C2', length: '23コマ' }),
  ],
} satisfies Record<keyof typeof ja, readonly string[]>;

describe.each(Object.entries(SAID))('%s', (_, texts) => {
  test('has no English word, and no two forms that are the same', () => {
    for (const text of texts) expect(englishIn(text, 'kHz A1 C2'), text).toEqual([]);
    expect(new Set(texts).size).toBe(texts.length);
  });
});

test('times are told as on a Japanese sheet', () => {
  expect(ja.asLength(24, 24)).toBe("24コマ = 1+0 = 35 mm フィルムで 1'08");
  expect(ja.asPosition(25, 24)).toBe(
    "25コマ目：1+1 の行（フィートでは 1'09）。ここまで 25コマ = 1+1 = 35 mm フィルムで 1'09",
  );
  expect(ja.between(25, 48)).toBe('25～48コマ目');
});

test('a long list says how many are left out', () => {
  expect(ja.listed(['1', '2', '3'], 2)).toBe('1、2 と、ほか1');
});

test('a mouth says which of its lines only flap', () => {
  expect(SAID.mouth).toEqual([
    '「ナオ」の口：セリフ 2、絵3枚、3コマ打ち、1コマ先行',
    '「ナオ」の口：セリフ 2（うち口パク 1）、絵3枚、3コマ打ち、1コマ先行',
    '「ナオ」の口：セリフ 2（口パク）、絵3枚、3コマ打ち、1コマ先行',
  ]);
});

test('both languages have a word for the same things', () => {
  expect(Object.keys(ja).sort()).toEqual(Object.keys(hoverWords('en')).sort());
});
