/** Moves of two versions: which belong together. What differs in one is told by the move's own test. */

import { describe, expect, test } from 'vitest';
import { fieldChanges, lightChanges, moveChanges, within } from '../../src/compare/camera-changes.js';
import { near } from '../../src/compare/move-pair.js';
import { CAMERA, edits, TRUCK } from './edits.js';
import { note, solved } from './say.js';

edits(CAMERA, [
  ['A@13', 'A@25', 'PAN A→B→A begins 12 frames later: 1+1 to 4+13 (was 0+13 to 4+13)'],
  ['B@3+13', 'B@3+1', 'PAN A→B→A: B on 3+1 (was 3+13), slower: largest step 3.67 mm/f (was 6.11)'],
  [
    'A@4+13',
    'A@4+24',
    'PAN A→B→A 11 frames longer: 0+13 to 4+24 (was 0+13 to 4+13), slower: largest step 3.79 mm/f (was 6.11)',
  ],
  [
    'A@13 > B@3+13 > A@4+13',
    'A@1 > B@3+1 > A@4+1',
    'PAN A→B→A 12 frames earlier: 0+1 to 4+1 (was 0+13 to 4+13)',
  ],
  [
    ' > A@4+13',
    '',
    'PAN A→B (was A→B→A): 0+13 to 3+13 (was 0+13 to 4+13), slower: largest step 1.67 mm/f (was 6.11)',
  ],
  [
    'ease 6',
    'curve 0.42 0 0.58 1',
    'PAN A→B→A, B→A: curve 0.42 0 0.58 1 (was ease 6/6), faster: largest step 7.87 mm/f (was 6.11)',
  ],
  ['carry A', '', 'PAN A→B→A: carrying no level (was carrying A)'],
  ['carry A', 'carry A graduated', 'PAN A→B→A: graduated frame by frame (was not graduated)'],
  ['carry A', 'carry A on 2', 'PAN A→B→A: on 2s (was on 1s)'],
  ['pan A@13 > B@3+13 > A@4+13 ease 6 carry A\n', '', 'PAN A→B→A dropped (was 0+13 to 4+13)'],
  ['エ(-120,0)', 'エ(-140,0)', 'B slide ア→エ: mark エ 20 mm left, at -140,0 (was -120,0)'],
  [
    '@1 > エ',
    '@13 > エ',
    'B slide ア→エ begins 12 frames later: 0+13 to 1+24 (was 0+1 to 1+24), faster: largest step 3.43 mm/f (was 2.55)',
  ],
  ['> 360@', '> 180@', 'C turn 0°→180° (was 0°→360°)'],
  ['> 360@', '> -360@', 'C turn 0°→360°: counter-clockwise (was clockwise)'],
  ['> 360@2+0 cw', '> -360@2+0 ccw'],
  ['> 360@', '> 20@1+12 > -340@', 'C turn 0°→20°→-340° (was 0°→360°)'],
  ['about 0,0', 'about 10,0', 'C turn 0°→360°: about 10,0 (was about 0,0)'],
  ['3mm/f', '4mm/f', 'BG pull faster: 4 mm/f (was 3 mm/f), 192 mm (was 144 mm) in all'],
  ['right 3mm/f', 'left 3mm/f', 'BG pull: to the left (was to the right)'],
  ['1..2+0\nshake', '1..2+12\nshake', 'BG pull 12 frames longer: 0+1 to 2+12 (was 0+1 to 1+24)'],
  ['3mm/f 1..2+0', '3mm/f 1..2+0 loop 420mm', 'BG pull: loop of 420 mm (was no loop)'],
  ['3mm/f 1..2+0', '3mm/f 1..2+0 ease 6', 'BG pull: ease 6/6 (was even speed)'],
  ['pull BG right 3mm/f 1..2+0', 'pull BG right 144mm 1..2+0'],
  ['shake 3mm', 'shake 5mm>0mm', 'shake: 5 to 0 mm (was 3 mm)'],
  ['1+1..1+12', '2+1..2+12', 'shake 1+0 later: 2+1 to 2+12 (was 1+1 to 1+12)'],
  ['sway A 5mm', 'sway A 6mm', 'A sway: 6 mm (was 5 mm)'],
  ['every 1+12', 'every 1+0', 'A sway: every 1+0 (was every 1+12)'],
]);

edits(TRUCK, [
  ['@24 fair', '@30 fair', 'Q.T.U A→B 6 frames longer: 0+1 to 1+6 (was 0+1 to 0+24)'],
  [
    'ア@6 85%',
    'ア@8 85%',
    'Q.T.U A→B: fairing ア on 0+8 with 85% (was fairing ア on 0+6 with 85%), slower: largest step 2.43 mm/f (was 3.4)',
  ],
  [
    'truck quick A@1 > B@24 fair ア@6 85%',
    'truck A@1 > B@24',
    'T.U A→B: even speed (was fairing ア on 0+6 with 85%), slower: largest step 0.87 mm/f (was 3.4)',
  ],
]);

const cut = (...lines: string[]) =>
  solved(
    `cut 1\ntime 4+0\nstack A B\nlevel A free\nlevel B free\nA: 1..\nB: 1..\nfield P full\nfield Q full at 40,0\nfield R 60%\n${lines.join('\n')}\n`,
  );
const kinds = (old: string[], now: string[], levels: ReadonlyMap<string, string> = new Map()) =>
  moveChanges(cut(...old), cut(...now), new Map(), levels).map(({ kind }) => kind);

test('two moves of one kind are told apart by their time', () => {
  const [early, late] = ['shake 3mm 1..12', 'shake 3mm 3+1..3+12'];
  expect(kinds([early, late], [late])).toEqual(['move-dropped']);
});

test('a mark of a scale or a turn that has another value, and another name of one, are told', () => {
  const scaled = (value: string) => `truck level A ア(100%)@1 > ${value}@24`;
  expect(kinds([scaled('イ(80%)')], [scaled('イ(80%)')])).toEqual([]);
  expect(kinds([scaled('イ(80%)')], [scaled('イ(70%)')])).toEqual(['move-route']);
  expect(kinds([scaled('イ(80%)')], [scaled('ウ(80%)')])).toEqual(['move-route']);
  expect(kinds(['turn level A ア(0)@1 > イ(20)@24 cw'], ['turn level A ア(0)@1 > イ(30)@24 cw'])).toEqual([
    'move-route',
  ]);
});

test('a curve that passes another field, or becomes straight, is told', () => {
  const curve = 'pan P@1 > Q > P@24 curved';
  expect(kinds([curve], [curve])).toEqual([]);
  expect(kinds([curve], ['field S full at 9,9', 'pan P@1 > S > P@24 curved'])).toContain('move-route');
  expect(kinds(['pan P@1 > Q@12 > P@24 curved'], ['pan P@1 > Q@12 > P@24'])).toEqual(['move-manner']);
  expect(kinds([curve], ['pan P@1 > Q@12 > P@24 curved'])).toContain('move-route');
});

test('a pan between fields may have become a truck, a shake has not', () => {
  expect(kinds(['pan P@1 > Q@24'], ['truck P@1 > R@24'])).toContain('move-manner');
  expect(kinds(['pan P@1 > Q@24'], ['shake 3mm 1..24'])).toEqual(['move-added', 'move-dropped']);
});

test('moves of other levels are other moves, of a renamed level the same', () => {
  const [ofA, ofB] = ['sway A 5mm 1..2+0 every 12', 'sway B 5mm 1..2+0 every 12'];
  expect(kinds([ofA], [ofB])).toEqual(['move-added', 'move-dropped']);
  expect(kinds([ofA], [ofB], new Map([['A', 'B']]))).toEqual([]);
});

test('rows end where the sheet does, and there are none behind it', () => {
  expect(within({ from: 5, to: 30 }, 24)).toEqual({ from: 5, to: 24 });
  expect(within({ from: 24, to: 24 }, 24)).toEqual({ from: 24, to: 24 });
  expect(within({ from: 25, to: 30 }, 24)).toBeNull();
});

describe('light changes', () => {
  // ---- light and effects of two versions

  edits(CAMERA, [
    ['fade in 1..12', 'fade in 1..24', 'F.I 12 frames longer: 0+1 to 0+24 (was 0+1 to 0+12)'],
    ['fade in 1..12\n', '', 'F.I dropped (was 0+1 to 0+12)'],
    ['fade in 1..12', 'fade in white 1..12', 'W.I: white (was black)'],
    ['B 50%', 'B 40%', 'B double exposure: 40% (was 50%)'],
    ['glow C', 'glow B,C', 'B,C glow (was level C)'],
    ['heat haze', 'mist', 'effect “mist” on A,B (was “heat haze”)'],
    ['fade in 1..12', 'fade in 1..12\noverlap out 24', 'O.L with the next cut added: 4+13 to 5+12'],
  ]);

  test('a wipe and an iris are told with where they go, and where they open', () => {
    const base = (line: string) => `cut 1\ntime 4+0\nA: 1..\n${line}\n`;
    expect(note(base(''), base('wipe out left 1+1..2+0'))).toEqual(['wipe out added: 1+1 to 1+24']);
    expect(note(base('wipe out left 1+1..2+0'), base('wipe out up 1+1..2+0'))).toEqual([
      'wipe out: up (was to the left)',
    ]);
    expect(note(base('iris out 1+1..2+0'), base('iris out 1+1..2+0 at 30,-4'))).toEqual([
      'iris out: centre 30,-4 (was centre 0,0)',
    ]);
    expect(note(base('iris out 1+1..2+0'), base('iris out 1+1..2+0 at 30,-4'), 'ja')).toEqual([
      'アイリスアウト：中心 30,-4（旧 中心 0,0）',
    ]);
  });

  const cut = (lines: readonly string[], time = '4+0') =>
    solved(`cut 1\ntime ${time}\nA: 1..\nB: 1..\n${lines.join('\n')}\n`);
  const told = (old: string[], now: string[], levels: ReadonlyMap<string, string> = new Map()) =>
    lightChanges(cut(old), cut(now), levels).map((change) => [
      change.kind,
      'manner' in change ? change.manner : null,
    ]);

  test('a fade in and a fade out are two', () => {
    expect(told(['fade in 1..12'], ['fade out 1..12'])).toEqual([
      ['light-added', null],
      ['light-dropped', null],
    ]);
  });

  test('light that comes, goes or moves has its rows', () => {
    expect(lightChanges(cut([]), cut(['fade in 1..12']), new Map())).toMatchObject([
      {
        kind: 'light-added',
        frames: { from: 1, to: 12 },
        rows: { from: 1, to: 12 },
        place: { kind: 'camera' },
      },
    ]);
  });

  test('an exposure is told by both its shares', () => {
    expect(
      lightChanges(cut(['expose A 50% 1..24']), cut(['expose A 40%>60.5% 1..24']), new Map()),
    ).toMatchObject([{ kind: 'light-manner', manner: 'shares', old: '50%', now: '40%>60.5%' }]);
  });

  test('levels are compared by what they are called now', () => {
    const [old, now] = [['glow A 1..24'], ['glow B 1..24']];
    expect(told(old, now)).toEqual([['light-manner', 'levels']]);
    expect(told(old, now, new Map([['A', 'B']]))).toEqual([]);
  });

  test('light to the end of the cut stays so in a longer one, but a fade is at another time', () => {
    const longer = (...lines: string[]) =>
      lightChanges(
        cut(lines),
        cut(
          lines.map((line) => line.replace('4+0', '5+0')),
          '5+0',
        ),
        new Map(),
      ).map(({ kind }) => kind);
    expect(longer('glow A 2+1..4+0')).toEqual([]);
    expect(longer('expose A 50% 2+1..4+0')).toEqual([]);
    expect(longer('expose A 50%>60% 2+1..4+0')).toEqual(['light-time']);
    expect(longer('fade out 2+1..4+0')).toEqual(['light-time']);
  });

  test('another text of an effect at another time is another effect', () => {
    expect(told(['effect "mist" A 1..24'], ['effect "haze" A 1..24'])).toEqual([['light-manner', 'text']]);
    expect(told(['effect "mist" A 1..12'], ['effect "haze" A 3+1..3+24'])).toEqual([
      ['light-dropped', null],
      ['light-added', null],
    ]);
  });
});

describe('field changes', () => {
  // ---- fields of two versions, and where the camera rests

  edits(CAMERA, [
    ['field B full at 110,0', 'field B full at 100,3', 'field B 10 mm left, 3 mm up: at 100,3 (was 110,0)'],
    ['60% at', '50% at', 'field C smaller: 50%, 127 mm (was 60%, 152.4 mm)'],
    ['cw 5', 'cw 8', 'field C turned 3° clockwise: 8° (was 5°)'],
    ['field C 60% at 20,0 cw 5\n', '', 'field C dropped'],
    ['field D', 'field E', 'field D is called E'],
  ]);

  edits(TRUCK, [['50% at 20,0', '40% at 20,0', 'field B smaller: 40%, 101.6 mm (was 50%, 127 mm)']]);

  test('the name of a field may change wherever it stands', () => {
    const now = CAMERA.replace('field B full', 'field Z full').replace('> B@3+13', '> Z@3+13');
    expect(note(CAMERA, now)).toEqual(['field B is called Z']);
  });

  const cut = (...lines: string[]) => solved(`cut 1\ntime 2+0\nA: 1..\n${lines.join('\n')}\n`);

  test('numbers are the same to the sixth decimal', () => {
    expect(near(1, 1 + 9e-7)).toBe(true);
    expect(near(1, 1 + 2e-6)).toBe(false);
  });

  test('fields are called by their new names, the standard field among them', () => {
    const { names, changes } = fieldChanges(cut('field B 60% at 20,0'), cut('field Z 60% at 20,0'));
    expect([...names]).toEqual([
      ['full', 'full'],
      ['B', 'Z'],
    ]);
    expect(changes).toMatchObject([
      { kind: 'field-renamed', field: 'Z', old: 'B', place: { kind: 'camera' }, rows: null },
    ]);
  });

  test('a field elsewhere under another name is another one', () => {
    const { changes } = fieldChanges(cut('field B 60% at 20,0'), cut('field Z 60% at 25,0'));
    expect(changes.map(({ kind }) => kind)).toEqual(['field-added', 'field-dropped']);
  });

  test('where the camera rests is told, but not of one that moves', () => {
    const fields = ['field A full', 'field B 60% at 20,0'];
    expect(fieldChanges(cut(...fields, 'fix A'), cut(...fields, 'fix B')).changes).toMatchObject([
      { kind: 'fix', old: 'A', now: 'B' },
    ]);
    expect(fieldChanges(cut(...fields, 'fix A'), cut(...fields, 'truck B@1 > A@24')).changes).toEqual([]);
  });

  test('the field that it rests on may change its name', () => {
    const { changes } = fieldChanges(
      cut('field B 60% at 20,0', 'fix B'),
      cut('field Z 60% at 20,0', 'fix Z'),
    );
    expect(changes.map(({ kind }) => kind)).toEqual(['field-renamed']);
  });
});
