/** Times, places and names in Japanese sentences. */

import { describe, expect, test } from 'vitest';
import {
  at,
  by,
  drawings,
  later,
  levels,
  longer,
  none,
  range,
  seen,
  size,
  time,
  timed,
  times,
  words,
} from '../../../src/words/ja/change-levels-ja.js';
import {
  between,
  cycle,
  cycleChange,
  EMPTY,
  exposure,
  FORMAT,
  inBetweens,
  key,
  moved,
  replaced,
  say,
  shown,
  VOICE,
} from '../sentence-samples.js';

test('a time is in frames, from a second on in seconds and frames; it has no sign', () => {
  expect([1, 23, 24, -36].map((frames) => time(frames, FORMAT))).toEqual(['1コマ', '23コマ', '1+0', '1+12']);
});

test('two times are in one unit, that of the longer one', () => {
  expect(times({ old: 12, now: 16 }, FORMAT)).toBe('16コマ（旧 12）');
  expect(times({ old: 24, now: 12 }, FORMAT)).toBe('0+12（旧 1+0）');
});

test('later and earlier, longer and shorter by the sign', () => {
  expect([later(6, FORMAT), later(-6, FORMAT)]).toEqual(['6コマ後ろへ', '6コマ前へ']);
  expect([longer(1, FORMAT), longer(-30, FORMAT)]).toEqual(['1コマ長く', '1+6短く']);
});

test('a range of one row is that row', () => {
  expect(range({ from: 25, to: 25 }, FORMAT)).toBe('1+1');
  expect(range({ from: 25, to: 48 }, FORMAT)).toBe('1+1～1+24');
});

test('what is seen: keys by name, in-betweens by number, cycles by their ends', () => {
  expect(seen(key('3', 7), 'A')).toBe('原画3');
  expect(seen(between('1.2', 3, '1', '2'), 'A')).toBe('A3（1.2）');
  expect(seen(cycle('4', '5'), 'A')).toBe('リピート4～5');
  expect(seen(cycle('4', '4'), 'A')).toBe('リピート4');
  expect(seen(EMPTY, 'A')).toBe('空セル');
});

test('a way is said by its sides, one that is not seen as slight', () => {
  expect(by({ xMm: 10, yMm: 0 })).toBe('右へ10 mm');
  expect(by({ xMm: -2.5, yMm: -3 })).toBe('左へ2.5 mm、下へ3 mm');
  expect(by({ xMm: 0.004, yMm: 1 })).toBe('上へ1 mm');
  expect(by({ xMm: 0.004, yMm: 0 })).toBe('わずかに移動');
});

test('a place and a size; no size is that of the usual sheet', () => {
  expect(at({ xMm: -0.001, yMm: 12.5 })).toBe('0,12.5');
  expect(size({ widthMm: 560, heightMm: 200 })).toBe('560×200 mm');
  expect(size(null)).toBe('標準用紙');
});

test('no text is none', () => {
  expect([none('', FORMAT), none('Nao', FORMAT)]).toEqual(['なし', '「Nao」']);
});

describe('frames that changed', () => {
  const frames = (old: [number, number], now: [number, number]) =>
    timed('F.I', { old: { from: old[0], to: old[1] }, now: { from: now[0], to: now[1] } }, FORMAT);

  test('both ends alike are later or earlier', () => {
    expect(frames([1, 12], [7, 18])).toBe('F.I 6コマ後ろへ：0+7～0+18（旧 0+1～0+12）');
  });

  test('with the same end they begin later or earlier', () => {
    expect(frames([7, 12], [1, 12])).toBe('F.I 始まりを6コマ前へ：0+1～0+12（旧 0+7～0+12）');
  });

  test('else they are longer or shorter', () => {
    expect(frames([1, 24], [1, 12])).toBe('F.I 12コマ短く：0+1～0+12（旧 0+1～0+24）');
  });
});

// ---- the cut as a whole and its levels in Japanese

test('what was not written is none', () => {
  expect(say(levels, { kind: 'take', old: '', now: '2' })).toBe('テイク 2（旧 なし）');
  expect(say(levels, { kind: 'title', old: '埠頭', now: '' })).toBe('カット名 なし（旧 「埠頭」）');
  expect(say(levels, { kind: 'artist', old: [], now: ['M. Arai', 'L. Quoy'] })).toBe(
    '担当 M. Arai、L. Quoy（旧 なし）',
  );
});

test('a cut has grown or shrunk', () => {
  expect(say(levels, { kind: 'time', old: 120, now: 108 })).toBe('尺 12コマ短く：4+12（旧 5+0）');
});

test('a memo is added, dropped or reworded', () => {
  expect(say(levels, { kind: 'memo', old: null, now: '雨なし' })).toBe('メモ追加：「雨なし」');
  expect(say(levels, { kind: 'memo', old: '雨なし', now: null })).toBe('メモ削除：「雨なし」');
  expect(say(levels, { kind: 'memo', old: '雨', now: '雨なし' })).toBe('メモ変更：「雨なし」（旧 「雨」）');
});

test('handles are told by both ends', () => {
  expect(say(levels, { kind: 'handles', old: { head: 0, tail: 0 }, now: { head: 12, tail: 24 } })).toBe(
    'のりしろ：頭 0+12、尻 1+0（旧 頭 0+0、尻 0+0）',
  );
});

test('a level that comes lies above another or at the bottom, with its drawings if it has any', () => {
  const added = { kind: 'level-added', level: 'C', title: '煙', drawings: 5, above: 'A' } as const;
  expect(say(levels, added)).toBe('C「煙」 追加、Aの上、5枚');
  expect(say(levels, { ...added, title: '', drawings: 0, above: null })).toBe('C 追加、一番下');
});

test('a level that goes is told with its drawings if it had any', () => {
  const dropped = { kind: 'level-dropped', level: 'C', title: '', drawings: 5 } as const;
  expect(say(levels, dropped)).toBe('C 削除、5枚');
  expect(say(levels, { ...dropped, drawings: 0 })).toBe('C 削除');
});

test.each([
  ['free', true, 'A：端が見えてもよい'],
  ['free', false, 'A：端が見えてはいけない'],
  ['carry', true, 'A：カメラに固定'],
  ['carry', false, 'A：カメラに固定しない'],
  ['flash', true, 'A：出で光る'],
  ['flash', false, 'A：光らない'],
] as const)('the manner of a level: %s %s', (manner, now, sentence) => {
  expect(say(levels, { kind: 'level-manner', level: 'A', manner, now })).toBe(sentence);
});

test('reuse names cut and level, or ends', () => {
  const reuse = { kind: 'reuse', level: 'C', old: null, now: { cut: '8', level: 'A' } } as const;
  expect(say(levels, reuse)).toBe('C：兼用 カット8 の A（旧 なし）');
  expect(say(levels, { ...reuse, old: reuse.now, now: null })).toBe('C：兼用 なし（旧 カット8 の A）');
});

test('artwork lies elsewhere by its sides, or has another size', () => {
  const [old, now] = [
    { xMm: 130, yMm: 0 },
    { xMm: 130, yMm: 5 },
  ];
  expect(say(levels, { kind: 'artwork-home', level: 'BG', old, now })).toBe(
    'BG：作画位置 上へ5 mm、130,5（旧 130,0）',
  );
  expect(
    say(levels, { kind: 'artwork-size', level: 'BG', old: null, now: { widthMm: 560, heightMm: 200 } }),
  ).toBe('BG：作画サイズ 560×200 mm（旧 標準用紙）');
});

test('a timeline comes or goes', () => {
  expect(say(levels, { kind: 'level-timed', level: 'A', now: true })).toBe('A：タイムシートあり');
  expect(say(levels, { kind: 'level-timed', level: 'A', now: false })).toBe(
    'A：タイムシートなし（常時あり）',
  );
});

// ---- what levels show, in Japanese

const told = (body: Parameters<typeof say>[1], rows: Parameters<typeof say>[2] = null) =>
  say(drawings, body, rows);
const a = between('1.1', 2, '1', '2');

describe('a hold', () => {
  test('of one drawing says how much longer or shorter', () => {
    expect(told(exposure())).toBe('A：原画1 を4コマ長く、16コマ（旧 12）、0+1から');
    expect(told(exposure({ first: a, last: a, frames: { old: 3, now: 2 }, inCycle: true }))).toBe(
      'A：A2（1.1） を1コマ短く、2コマ（旧 3）、0+1から、リピート毎回',
    );
  });

  test('of several drawings says what each has', () => {
    const several = exposure({ last: key('3'), count: 3, frames: { old: 2, now: 3 } });
    expect(told(several)).toBe('A：原画1～3（3か所）各3コマ（旧 2）、0+1から');
    expect(told({ ...several, first: a })).toMatch(/^A：A2（1\.1）～原画3（3か所）/);
  });

  test('says what follows, and up to where', () => {
    expect(told(exposure({ follows: { by: 4, last: null } }))).toMatch(/、以降4コマ後ろへ$/);
    expect(told(exposure({ follows: { by: -4, last: cycle('2', '3') } }))).toMatch(
      /、以降リピート2～3まで4コマ前へ$/,
    );
  });
});

describe('what comes earlier or later', () => {
  test('one thing, or several by their ends', () => {
    expect(told(moved())).toBe('A：原画2 を6コマ後ろへ、0+19から（旧 0+13）');
    expect(told(moved({ last: key('4'), by: -6 }))).toBe('A：原画2～4 を6コマ前へ、0+19から（旧 0+13）');
  });

  test('everything to the end by the first, where its numbers fall', () => {
    expect(told(moved({ last: key('1'), toEnd: true }))).toBe(
      'A：原画2以降 を6コマ後ろへ、0+19から（旧 0+13）',
    );
  });
});

describe('what is shown', () => {
  test('is added where it is new, and shown again where it is not', () => {
    expect(told(replaced({ now: shown([key('7')]) }))).toBe('A：原画7 追加、0+13から2コマ');
    expect(told(replaced({ now: shown([key('7'), key('2')], false) }))).toBe(
      'A：原画7、原画2 をもう一度、0+13から4コマ',
    );
  });

  test('is dropped, or not shown again', () => {
    expect(told(replaced({ old: shown([key('7')]) }))).toBe('A：原画7 削除（旧 0+9から2コマ）');
    expect(told(replaced({ old: shown([key('7')], false) }))).toBe(
      'A：原画7 のくり返しなし（旧 0+9から2コマ）',
    );
  });

  test('stands in the place of something else, with its time where that differs', () => {
    const [now, old] = [shown([key('7')]), shown([a])];
    expect(told(replaced({ now, old }))).toBe('A：0+13から 原画7（旧 中割り1枚）');
    expect(told(replaced({ now: shown([key('7')], true, 6), old }))).toBe(
      'A：0+13から 原画7（旧 中割り1枚）、6コマ（旧 2）',
    );
  });

  test('two in-betweens of one name are told apart by their keys', () => {
    expect(told(replaced({ now: shown([between('1.1', 2, '1', '3')]), old: shown([a]) }))).toBe(
      'A：0+13から A2（1>3.1）（旧 A2（1>2.1））',
    );
  });

  test('nothing comes and goes as an empty cel', () => {
    expect(told(replaced({ now: shown([EMPTY]) }))).toBe('A：0+13から2コマ空セル');
    expect(told(replaced({ old: shown([EMPTY]) }))).toBe('A：空セルなし（旧 0+9から2コマ）');
  });

  test('takes the time of its neighbour, or gives it', () => {
    expect(told(replaced({ now: shown([key('7')]), holder: key('3') }))).toMatch(/、原画3の止メを短く$/);
    expect(told(replaced({ old: shown([key('7')]), holder: key('3') }))).toMatch(/、原画3の止メを長く$/);
    expect(told(replaced({ now: shown([key('7')]), holder: EMPTY }))).toMatch(/、空セルを短く$/);
  });
});

describe('in-betweens of a passage', () => {
  test('are counted, new ones and those that are gone named', () => {
    expect(told(inBetweens({ added: [{ drawing: '1.3', cel: 4 }] }))).toBe(
      'A：原画1→2 中割り3枚（旧 2枚）、0+3から、追加 A4（1.3）',
    );
    expect(told(inBetweens({ count: { old: 1, now: 0 }, dropped: [{ drawing: '1.1', cel: 2 }] }))).toBe(
      'A：原画1→2 中なし（旧 1枚）、0+3から、削除 A2（1.1）',
    );
  });

  test('more of them take the time of a hold, fewer give it', () => {
    expect(told(inBetweens({ holder: key('2') }))).toMatch(/、原画2の止メを短く$/);
    expect(told(inBetweens({ holder: key('2'), count: { old: 3, now: 2 } }))).toMatch(/、原画2の止メを長く$/);
  });

  test('lie elsewhere on the way', () => {
    const drawing = { drawing: '1.2', cel: 3, old: 2 / 3, now: 0.5 };
    expect(told({ kind: 'places', level: 'A', from: '1', to: '2', drawings: [drawing] })).toBe(
      'A：原画1→2 の割り A3 (1.2) 1/2（旧 2/3）',
    );
  });

  test('a chart is told by its name, one that was marked by its shares', () => {
    const chart = (old: string, now: string) =>
      told({
        kind: 'chart',
        level: 'A',
        from: '1',
        to: '2',
        chart: { old, now },
        fractions: { old: [1 / 3, 2 / 3], now: [0.25, 0.5] },
      });
    expect(chart('early', 'both')).toBe('A：原画1→2 のツメ 両ヅメ（旧 先ヅメ）');
    expect(chart('even', 'fractions')).toBe('A：原画1→2 のツメ 1/4 1/2（旧 均等）');
  });

  test('one becomes a breakdown, or is none any more', () => {
    const breakdown = { kind: 'breakdown', level: 'A', drawing: '1.1', cel: 2 } as const;
    expect(told({ ...breakdown, now: true })).toBe('A：A2（1.1）を中割り参考に');
    expect(told({ ...breakdown, now: false })).toBe('A：A2（1.1）は中割り参考でなくす');
  });
});

describe('a cycle', () => {
  test('runs more or fewer times, or lasts longer or shorter', () => {
    expect(told(cycleChange())).toBe('B：リピート1～2 4回（旧 3）、1+1から');
    expect(told(cycleChange({ what: 'length', frames: { old: 24, now: 30 } }))).toBe(
      'B：リピート1～2 1+6（旧 1+0）、1+1から',
    );
  });

  test('goes there and back, or one way', () => {
    expect(told(cycleChange({ what: 'bounce', bounce: { old: false, now: true } }))).toBe(
      'B：リピート1～2 往復（旧 片道）、1+1から',
    );
    expect(told(cycleChange({ what: 'bounce', bounce: { old: true, now: false } }))).toBe(
      'B：リピート1～2 片道（旧 往復）、1+1から',
    );
  });
});

test('a key in another’s place', () => {
  expect(told({ kind: 'key', level: 'A', frame: 25, old: '2', now: '2a' })).toBe(
    'A：原画2a（旧 原画2）、1+1から',
  );
});

describe('numbers', () => {
  const renumbered = (...numbers: [old: number, now: number][]) =>
    told({
      kind: 'renumbered',
      level: 'A',
      numbers: numbers.map(([old, now]) => ({ drawing: `${old}`, old, now })),
    });

  test('that move alike are told as a run', () => {
    expect(renumbered([2, 5], [4, 7], [5, 8])).toBe('A：番号変更 A2→A5、A4～5→A7～8');
  });

  test('in more than six runs are told by the first six, and how many they are', () => {
    const many = [1, 3, 5, 7, 9, 11, 13].map((old): [number, number] => [old, old + 20]);
    expect(renumbered(...many)).toMatch(/、A11→A31 …（7枚）$/);
  });
});

test('rows that show something else, where it is known which', () => {
  expect(told({ kind: 'rows', level: 'A' }, { from: 3, to: 8 })).toBe('A：0+3～0+8 別の絵');
  expect(told({ kind: 'rows', level: 'A' })).toBe('A：別の絵');
});

// ---- dialogue, sound and notes in Japanese

const FRAMES = { from: 7, to: 30 };

test('a line is called by its kind, its speaker and its words', () => {
  expect(say(words, { kind: 'speech-added', frames: FRAMES, ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」 追加：0+7～1+6',
  );
  const music = { words: 'music', speaker: '', text: 'flute' } as const;
  expect(say(words, { kind: 'speech-dropped', frames: FRAMES, ...music })).toBe(
    '音楽「flute」 削除（旧 0+7～1+6）',
  );
});

test('a speaker that is not named is none', () => {
  expect(say(words, { kind: 'speech-speaker', old: 'Nao', now: '', ...VOICE, speaker: '' })).toBe(
    'セリフ「Wait for me!」：話者 なし（旧 Nao）',
  );
});

test('how it is said, and what was said before', () => {
  expect(say(words, { kind: 'speech-manner', old: 'on', now: 'mono', ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」：モノローグ（旧 画面内）',
  );
  expect(say(words, { kind: 'speech-text', old: 'Wait!', now: VOICE.text, ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」 に変更（旧 「Wait!」）',
  );
});

test('a word may be tied to a row, or to none', () => {
  expect(say(words, { kind: 'speech-rows', word: 'me!', row: { old: 25, now: null }, ...VOICE })).toBe(
    'セリフ Nao「Wait for me!」：「me!」 指定なし（旧 1+1）',
  );
});

test('notes are called by their words, and by their row where the words are what changed', () => {
  expect(say(words, { kind: 'note-added', frame: 25, text: '見上げる' })).toBe('指示「見上げる」 追加：1+1');
  expect(say(words, { kind: 'note-dropped', frame: 25, text: '見上げる' })).toBe(
    '指示「見上げる」 削除（旧 1+1）',
  );
  expect(say(words, { kind: 'note-moved', frame: { old: 13, now: 25 }, text: '見上げる' })).toBe(
    '指示「見上げる」 12コマ後ろへ：1+1（旧 0+13）',
  );
  expect(say(words, { kind: 'note-text', frame: 25, old: '見上げる', now: '見る' })).toBe(
    '指示 1+1 変更：「見る」（旧 「見上げる」）',
  );
});
