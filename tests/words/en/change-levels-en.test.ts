/** Times, places and names in English sentences. */

import { describe, expect, test } from 'vitest';
import {
  at,
  by,
  drawings,
  later,
  levelsIn,
  longer,
  none,
  range,
  seen,
  size,
  time,
  timed,
  times,
  words,
} from '../../../src/words/en/change-levels-en.js';
import { JAPAN_TERMS, WEST_TERMS } from '../../../src/words/en/forms-en.js';
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
  expect([1, 23, 24, -36].map((frames) => time(frames, FORMAT))).toEqual([
    '1 frame',
    '23 frames',
    '1+0',
    '1+12',
  ]);
});

test('two times are in one unit, that of the longer one', () => {
  expect(times({ old: 12, now: 16 }, FORMAT)).toBe('16 frames (was 12)');
  expect(times({ old: 2, now: 1 }, FORMAT)).toBe('1 frame (was 2)');
  expect(times({ old: 24, now: 12 }, FORMAT)).toBe('0+12 (was 1+0)');
});

test('later and earlier, longer and shorter by the sign', () => {
  expect([later(6, FORMAT), later(-6, FORMAT)]).toEqual(['6 frames later', '6 frames earlier']);
  expect([longer(1, FORMAT), longer(-30, FORMAT)]).toEqual(['1 frame longer', '1+6 shorter']);
});

test('a range of one row is that row', () => {
  expect(range({ from: 25, to: 25 }, FORMAT)).toBe('1+1');
  expect(range({ from: 25, to: 48 }, FORMAT)).toBe('1+1 to 1+24');
});

test('what is seen: keys by name, in-betweens by number, cycles by their ends', () => {
  expect(seen(key('3', 7), 'A')).toBe('key 3');
  expect(seen(between('1.2', 3, '1', '2'), 'A')).toBe('A3 (1.2)');
  expect(seen(cycle('4', '5'), 'A')).toBe('the cycle 4-5');
  expect(seen(cycle('4', '4'), 'A')).toBe('the cycle on 4');
  expect(seen(EMPTY, 'A')).toBe('empty');
});

test('a way is said by its sides, one that is not seen as a hair', () => {
  expect(by({ xMm: 10, yMm: 0 })).toBe('10 mm right');
  expect(by({ xMm: -2.5, yMm: -3 })).toBe('2.5 mm left, 3 mm down');
  expect(by({ xMm: 0.004, yMm: 1 })).toBe('1 mm up');
  expect(by({ xMm: 0.004, yMm: 0 })).toBe('moved by a hair');
});

test('a place and a size; no size is that of the usual sheet', () => {
  expect(at({ xMm: -0.001, yMm: 12.5 })).toBe('0,12.5');
  expect(size({ widthMm: 560, heightMm: 200 })).toBe('560 x 200 mm');
  expect(size(null)).toBe('the usual sheet');
});

test('no text is none', () => {
  expect([none('', FORMAT), none('Nao', FORMAT)]).toEqual(['none', '“Nao”']);
});

describe('frames that changed', () => {
  const frames = (old: [number, number], now: [number, number]) =>
    timed('F.I', { old: { from: old[0], to: old[1] }, now: { from: now[0], to: now[1] } }, FORMAT);

  test('both ends alike are later or earlier', () => {
    expect(frames([1, 12], [7, 18])).toBe('F.I 6 frames later: 0+7 to 0+18 (was 0+1 to 0+12)');
  });

  test('with the same end they begin later or earlier', () => {
    expect(frames([7, 12], [1, 12])).toBe('F.I begins 6 frames earlier: 0+1 to 0+12 (was 0+7 to 0+12)');
  });

  test('else they are longer or shorter', () => {
    expect(frames([1, 24], [1, 12])).toBe('F.I 12 frames shorter: 0+1 to 0+12 (was 0+1 to 0+24)');
  });
});

// ---- the cut as a whole and its levels in English

const japan = levelsIn(JAPAN_TERMS);
const west = levelsIn(WEST_TERMS);

test('what was not written is none, an artist nobody', () => {
  expect(say(japan, { kind: 'take', old: '', now: '2' })).toBe('take 2 (was none)');
  expect(say(japan, { kind: 'title', old: 'Quay', now: '' })).toBe('title none (was “Quay”)');
  expect(say(japan, { kind: 'artist', old: [], now: ['M. Arai', 'L. Quoy'] })).toBe(
    'artist M. Arai, L. Quoy (was nobody)',
  );
});

test('a cut has grown or shrunk; a western form calls it a scene', () => {
  expect(say(japan, { kind: 'time', old: 120, now: 108 })).toBe('cut 12 frames shorter: 4+12 (was 5+0)');
  expect(say(west, { kind: 'time', old: 96, now: 120 })).toBe('scene 1+0 longer: 5+0 (was 4+0)');
  expect(say(west, { kind: 'scene', old: '3', now: '4' })).toBe('sequence 4 (was 3)');
});

test('a memo is added, dropped or reworded', () => {
  expect(say(japan, { kind: 'memo', old: null, now: 'No rain.' })).toBe('memo added: “No rain.”');
  expect(say(japan, { kind: 'memo', old: 'No rain.', now: null })).toBe('memo dropped: “No rain.”');
  expect(say(japan, { kind: 'memo', old: 'Rain.', now: 'No rain.' })).toBe(
    'memo reworded: “No rain.” (was “Rain.”)',
  );
});

test('handles are told by both ends', () => {
  expect(say(japan, { kind: 'handles', old: { head: 0, tail: 0 }, now: { head: 12, tail: 24 } })).toBe(
    'handles: 0+12 before, 1+0 after the cut (was 0+0, 0+0)',
  );
});

test('a level that comes lies above another or at the bottom, with its drawings if it has any', () => {
  const added = { kind: 'level-added', level: 'C', title: 'smoke', drawings: 1, above: 'A' } as const;
  expect(say(japan, added)).toBe('level C “smoke” added, above A: 1 drawing');
  expect(say(japan, { ...added, title: '', drawings: 0, above: null })).toBe('level C added, at the bottom');
});

test('a level that goes is told with its drawings if it had any', () => {
  const dropped = { kind: 'level-dropped', level: 'C', title: '', drawings: 5 } as const;
  expect(say(japan, dropped)).toBe('level C dropped: 5 drawings');
  expect(say(japan, { ...dropped, drawings: 0 })).toBe('level C dropped');
});

test.each([
  ['free', true, 'A: its edges may show'],
  ['free', false, 'A: its edges must not show'],
  ['carry', true, 'A: fixed to the camera'],
  ['carry', false, 'A: no longer fixed to the camera'],
  ['flash', true, 'A: its appearing is a flash'],
  ['flash', false, 'A: no flash any more'],
] as const)('the manner of a level: %s %s', (manner, now, sentence) => {
  expect(say(japan, { kind: 'level-manner', level: 'A', manner, now })).toBe(sentence);
});

test('reuse names cut and level, or ends', () => {
  const reuse = { kind: 'reuse', level: 'C', old: null, now: { cut: '8', level: 'A' } } as const;
  expect(say(japan, reuse)).toBe('C: reuse of cut 8, level A (was none)');
  expect(say(west, { ...reuse, old: reuse.now, now: null })).toBe('C: no reuse (was scene 8, level A)');
});

test('artwork lies elsewhere by its sides, or has another size', () => {
  const [old, now] = [
    { xMm: 130, yMm: 0 },
    { xMm: 130, yMm: 5 },
  ];
  expect(say(japan, { kind: 'artwork-home', level: 'BG', old, now })).toBe(
    'BG: artwork 5 mm up, at 130,5 (was 130,0)',
  );
  expect(
    say(japan, { kind: 'artwork-size', level: 'BG', old: null, now: { widthMm: 560, heightMm: 200 } }),
  ).toBe('BG: artwork 560 x 200 mm (was the usual sheet)');
});

test('a timeline comes or goes', () => {
  expect(say(japan, { kind: 'level-timed', level: 'A', now: true })).toBe('A: has a timeline now');
  expect(say(japan, { kind: 'level-timed', level: 'A', now: false })).toBe(
    'A: no timeline any more, simply there',
  );
});

// ---- what levels show, in English

const told = (body: Parameters<typeof say>[1], rows: Parameters<typeof say>[2] = null) =>
  say(drawings, body, rows);
const [a, b] = [between('1.1', 2, '1', '2'), between('1.2', 3, '1', '2')];

describe('a hold', () => {
  test('of one drawing says how much longer or shorter', () => {
    expect(told(exposure())).toBe('A: key 1 held 4 frames longer, 16 frames (was 12), from 0+1');
    expect(told(exposure({ first: a, last: a, frames: { old: 3, now: 2 }, inCycle: true }))).toBe(
      'A: A2 (1.1) held 1 frame shorter, 2 frames (was 3), from 0+1, in each pass of the cycle',
    );
  });

  test('of several drawings says what each has', () => {
    const several = exposure({ last: key('3'), count: 3, frames: { old: 2, now: 3 } });
    expect(told(several)).toBe('A: keys 1 to 3 (3 exposures) held 3 frames (was 2) each, from 0+1');
    expect(told({ ...several, first: a })).toMatch(/^A: A2 \(1\.1\) to key 3 \(3 exposures\)/);
  });

  test('says what follows, and up to where', () => {
    expect(told(exposure({ follows: { by: 4, last: null } }))).toMatch(
      /; what follows comes 4 frames later$/,
    );
    expect(told(exposure({ follows: { by: -4, last: cycle('2', '3') } }))).toMatch(
      /; what follows up to the cycle 2-3 comes 4 frames earlier$/,
    );
  });
});

describe('what comes earlier or later', () => {
  test('one thing is on a row, the last one from it', () => {
    expect(told(moved())).toBe('A: key 2 comes 6 frames later, on 0+19 (was 0+13)');
    expect(told(moved({ toEnd: true }))).toBe('A: key 2 comes 6 frames later, from 0+19 (was 0+13)');
  });

  test('several things by their ends', () => {
    expect(told(moved({ last: key('4') }))).toBe('A: keys 2 to 4 come 6 frames later, from 0+19 (was 0+13)');
  });

  test('everything to the end by the first, where its numbers fall', () => {
    expect(told(moved({ last: key('1'), toEnd: true, by: -6 }))).toBe(
      'A: everything from key 2 on comes 6 frames earlier, from 0+19 (was 0+13)',
    );
  });

  test('nothing at all is empty', () => {
    expect(told(moved({ first: EMPTY, last: EMPTY }))).toBe('A: empty 6 frames later, from 0+19 (was 0+13)');
  });
});

describe('what is shown', () => {
  test('is added where it is new, and shown again where it is not', () => {
    expect(told(replaced({ now: shown([key('7')]) }))).toBe('A: key 7 added from 0+13 for 2 frames');
    expect(told(replaced({ now: shown([key('7'), key('2')], false) }))).toBe(
      'A: key 7, key 2 shown again from 0+13 for 4 frames',
    );
  });

  test('is dropped, or not shown again', () => {
    expect(told(replaced({ old: shown([key('7')]) }))).toBe('A: key 7 dropped (was on 0+9, 2 frames)');
    expect(told(replaced({ old: shown([key('7')], false) }))).toBe(
      'A: key 7 not shown again (was on 0+9, 2 frames)',
    );
  });

  test('stands in the place of something else, with its time where that differs', () => {
    const [now, old] = [shown([key('7')]), shown([a])];
    expect(told(replaced({ now, old }))).toBe('A: key 7 instead of 1 in-between from 0+13');
    expect(told(replaced({ now: shown([key('7')], true, 6), old }))).toBe(
      'A: key 7 instead of 1 in-between from 0+13 for 6 frames (was 2)',
    );
  });

  test('two in-betweens of one name are told apart by their keys', () => {
    expect(told(replaced({ now: shown([between('1.1', 2, '1', '3')]), old: shown([a]) }))).toBe(
      'A: A2 (1>3.1) instead of A2 (1>2.1) from 0+13',
    );
  });

  test('nothing comes and goes as empty', () => {
    expect(told(replaced({ now: shown([EMPTY]) }))).toBe('A: empty from 0+13 for 2 frames');
    expect(told(replaced({ old: shown([EMPTY]) }))).toBe('A: no longer empty (was on 0+9, 2 frames)');
  });

  test('takes the time of its neighbour, or gives it', () => {
    expect(told(replaced({ now: shown([key('7')]), holder: key('3') }))).toMatch(
      /, key 3 held that much less$/,
    );
    expect(told(replaced({ old: shown([key('7')]), holder: key('3') }))).toMatch(/, key 3 held instead$/);
    expect(told(replaced({ now: shown([key('7')]), holder: EMPTY }))).toMatch(/, where it was empty$/);
    expect(told(replaced({ old: shown([key('7')]), holder: EMPTY }))).toMatch(/, empty instead$/);
  });
});

describe('in-betweens of a passage', () => {
  test('are counted, new ones and those that are gone named', () => {
    expect(told(inBetweens({ added: [{ drawing: '1.3', cel: 4 }] }))).toBe(
      'A: 3 in-betweens from key 1 to key 2 (was 2), from 0+3, new: A4 (1.3)',
    );
    expect(told(inBetweens({ count: { old: 1, now: 0 }, dropped: [{ drawing: '1.1', cel: 2 }] }))).toBe(
      'A: no in-between from key 1 to key 2 (was 1), from 0+3, gone: A2 (1.1)',
    );
  });

  test('more of them take the time of a hold, fewer give it', () => {
    expect(told(inBetweens({ holder: key('2') }))).toMatch(/; key 2 held less for it$/);
    expect(told(inBetweens({ holder: key('2'), count: { old: 3, now: 2 } }))).toMatch(
      /; key 2 held more for it$/,
    );
  });

  test('lie elsewhere on the way', () => {
    const drawing = { drawing: '1.2', cel: 3, old: 2 / 3, now: 0.5 };
    expect(told({ kind: 'places', level: 'A', from: '1', to: '2', drawings: [drawing] })).toBe(
      'A: on the way from key 1 to key 2 lies A3 (1.2) at 1/2 (was 2/3)',
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
    expect(chart('early', 'both')).toBe(
      'A: in-betweens from key 1 to key 2 crowding both keys (was crowding the earlier key)',
    );
    expect(chart('even', 'fractions')).toBe(
      'A: in-betweens from key 1 to key 2 at 1/4 1/2 (was evenly spaced)',
    );
  });

  test('one becomes a breakdown, or is none any more', () => {
    const breakdown = { kind: 'breakdown', level: 'A', drawing: '1.1', cel: 2 } as const;
    expect(told({ ...breakdown, now: true })).toBe('A: A2 (1.1) is a breakdown now');
    expect(told({ ...breakdown, now: false })).toBe('A: A2 (1.1) is no breakdown any more');
  });
});

describe('a cycle', () => {
  test('runs more or fewer times', () => {
    expect(told(cycleChange())).toBe('B: the cycle 1-2 runs 4 times (was 3), from 1+1');
    expect(told(cycleChange({ times: { old: 2, now: 1 } }))).toBe(
      'B: the cycle 1-2 runs 1 time (was 2), from 1+1',
    );
  });

  test('lasts longer or shorter', () => {
    expect(told(cycleChange({ what: 'length', frames: { old: 24, now: 30 } }))).toBe(
      'B: the cycle 1-2 lasts 1+6 (was 1+0), from 1+1',
    );
  });

  test('goes there and back, or one way', () => {
    expect(told(cycleChange({ what: 'bounce', bounce: { old: false, now: true } }))).toBe(
      'B: the cycle 1-2 there and back (was one way), from 1+1',
    );
    expect(told(cycleChange({ what: 'bounce', bounce: { old: true, now: false } }))).toBe(
      'B: the cycle 1-2 one way only (was there and back), from 1+1',
    );
  });
});

test('a key in another’s place', () => {
  expect(told({ kind: 'key', level: 'A', frame: 25, old: '2', now: '2a' })).toBe(
    'A: key 2a instead of key 2, from 1+1',
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
    expect(renumbered([2, 5], [4, 7], [5, 8])).toBe('A: numbers: A2 is now A5, A4 to A5 are now A7 to A8');
  });

  test('in more than six runs are told by the first six, and how many they are', () => {
    const many = [1, 3, 5, 7, 9, 11, 13].map((old): [number, number] => [old, old + 20]);
    expect(renumbered(...many)).toMatch(/, A11 is now A31 … \(7 drawings\)$/);
  });
});

test('rows that show something else, where it is known which', () => {
  expect(told({ kind: 'rows', level: 'A' }, { from: 3, to: 8 })).toBe('A: other drawings on 0+3 to 0+8');
  expect(told({ kind: 'rows', level: 'A' })).toBe('A: other drawings');
});

test('in-betweens are counted where they stand in the place of others', () => {
  expect(told(replaced({ now: shown([a]), old: shown([a, b]) }))).toBe(
    'A: 1 in-between instead of 2 in-betweens from 0+13 for 2 frames (was 4)',
  );
});

// ---- dialogue, sound and notes in English

const FRAMES = { from: 7, to: 30 };

test('a line is called by its kind, its speaker and its words', () => {
  expect(say(words, { kind: 'speech-added', frames: FRAMES, ...VOICE })).toBe(
    'dialogue Nao “Wait for me!” added: 0+7 to 1+6',
  );
  const music = { words: 'music', speaker: '', text: 'flute' } as const;
  expect(say(words, { kind: 'speech-dropped', frames: FRAMES, ...music })).toBe(
    'music “flute” dropped (was 0+7 to 1+6)',
  );
});

test('a speaker that is not named is nobody', () => {
  expect(say(words, { kind: 'speech-speaker', old: '', now: 'Nao', ...VOICE })).toBe(
    'dialogue Nao “Wait for me!”: said by Nao (was nobody)',
  );
});

test('how it is said, and what was said before', () => {
  expect(say(words, { kind: 'speech-manner', old: 'on', now: 'off', ...VOICE })).toBe(
    'dialogue Nao “Wait for me!”: off (was in picture)',
  );
  expect(say(words, { kind: 'speech-text', old: 'Wait!', now: VOICE.text, ...VOICE })).toBe(
    'dialogue Nao “Wait for me!” reworded (was “Wait!”)',
  );
});

test('a word may be tied to a row, or to none', () => {
  expect(say(words, { kind: 'speech-rows', word: 'me!', row: { old: null, now: 25 }, ...VOICE })).toBe(
    'dialogue Nao “Wait for me!”: “me!” on 1+1 (was no row of its own)',
  );
});

test('notes are called by their words, and by their row where the words are what changed', () => {
  expect(say(words, { kind: 'note-added', frame: 25, text: 'looks up' })).toBe(
    'note “looks up” added on 1+1',
  );
  expect(say(words, { kind: 'note-dropped', frame: 25, text: 'looks up' })).toBe(
    'note “looks up” dropped (was on 1+1)',
  );
  expect(say(words, { kind: 'note-moved', frame: { old: 25, now: 13 }, text: 'looks up' })).toBe(
    'note “looks up” 12 frames earlier, on 0+13 (was 1+1)',
  );
  expect(say(words, { kind: 'note-text', frame: 25, old: 'looks up', now: 'looks down' })).toBe(
    'note on 1+1 reworded: “looks down” (was “looks up”)',
  );
});
