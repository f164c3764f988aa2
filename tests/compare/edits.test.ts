/** One edit, one sentence: what an in-betweener, a compositor and an editor read of each. */

import { describe, expect, test } from 'vitest';
import { note } from './say.js';

const SHEET = `cut 12 "Rooftop"
time 5+0
scene 6
artist "M. Arai"
memo "Wind from screen left."
stack BG A B C
level BG size 560x200mm at 130,0
A "Nao": 1:12 1--2-3:1+0 (4-5-)*3 6..
B: x:24 (1--2--)..
C: 1 @49 2:12{late}--3..
voice "Nao" 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"
sound 3+1..3+8 "door slams"
music 1.. "flute"
note 2+12 "looks up"
`;
const CAMERA = `cut 12
time 5+0
stack BG A B C
level BG free
A: 1..
B: 1..
C: 1..
field A full
field B full at 110,0
field C 60% at 20,0 cw 5
field D 50% at 20,0
pan A@13 > B@3+13 > A@4+13 ease 6 carry A
slide B ア(0,0)@1 > エ(-120,0)@2+0
turn level C 0@1 > 360@2+0 cw about 0,0
pull BG right 3mm/f 1..2+0
shake 3mm 1+1..1+12
roll A 5mm 1..4+0 every 1+12
fade in 1..12
expose B 50% 1..24
glow C 1+1..2+0
effect "heat haze" A,B 1..5+0
`;
const TRUCK = `cut 12
time 5+0
BG: x..
level BG free
field A full
field B 50% at 20,0
truck quick A@1 > B@24 fair ア@6 85%
`;

const MOUTH = `cut 4
time 4+0
B: on 3 1 @24 2 3:6 2 3:6 2 1:6 2 3:6 2 3 2 1..
C: (1-2)*3 2:12 3..
D: 1:12 (2-3)*3 @37 4..
E: x:12 1 2 x:12 3..
`;

type Edit = readonly [from: string, to: string, ...sentences: readonly string[]];

function edits(base: string, all: readonly Edit[]): void {
  test.each(all.map(([from, to, ...sentences]) => ({ from, to, sentences })))(
    '$from → $to',
    ({ from, to, sentences }) => {
      expect(base).toContain(from);
      expect(note(base, base.replace(from, to))).toEqual(sentences);
    },
  );
}

describe('what levels show, and the levels', () => {
  edits(SHEET, [
    [
      '1:12 1',
      '1:16 1',
      'A: key 1 held 4 frames longer, 18 frames (was 14), from 0+1; what follows comes 4 frames later',
    ],
    [
      '3:1+0',
      '3:1+12',
      'A: key 3 held 12 frames longer, 1+12 (was 1+0), from 0+23; what follows comes 12 frames later',
    ],
    [
      '3:1+0',
      '3:12',
      'A: key 3 held 12 frames shorter, 0+12 (was 1+0), from 0+23; what follows comes 12 frames earlier',
    ],
    ['*3', '*4', 'A: the cycle 4-5 runs 4 times (was 3), from 1+23; what follows comes 8 frames later'],
    [
      '(4-5-)*3',
      '(4-5-):2+0',
      'A: the cycle 4-5 runs 6 times (was 3), from 1+23; what follows comes 1+0 later',
    ],
    [
      '1--2-',
      '1---2-',
      'A: 3 in-betweens from key 1 to key 2 (was 2), from 0+15, new: A4 (1.3); what follows comes 2 frames later',
      'A: numbers: A4 to A11 are now A5 to A12',
    ],
    [
      '1--2-',
      '1-2-',
      'A: 1 in-between from key 1 to key 2 (was 2), from 0+15, gone: A3 (1.2); what follows comes 2 frames earlier',
      'A: numbers: A4 to A11 are now A3 to A10',
    ],
    [
      '2-3:',
      '2 3:',
      'A: no in-between from key 2 to key 3 (was 1), from 0+21, gone: A5 (2.1); what follows comes 2 frames earlier',
      'A: numbers: A6 to A11 are now A5 to A10',
    ],
    ['1--2-3', '1=-2-3', 'A: A2 (1.1) is a breakdown now'],
    [
      '1--2-3',
      '1-9-2-3',
      'A: 1 in-between, key 9, 1 in-between instead of 2 in-betweens from 0+15 for 6 frames (was 4); what follows comes 2 frames later',
      'A: numbers: A4 to A11 are now A5 to A12',
    ],
    ['x:24', 'x:36', 'B: the cycle 1-2 comes 12 frames later, from 1+13 (was 1+1)'],
    [
      '(1--2--)',
      '(1--2-=-)',
      'B: 3 in-betweens from key 2 to key 1 (was 2), from 1+9, new: B7 (2.3)',
      'B: B6 (2.2) is a breakdown now',
    ],
    ['(1--2--)..', '(1--2)<>..', 'B: the cycle 1-2 there and back (was one way), from 1+1'],
    [
      '(4-5-)',
      '(4:4-5-)',
      'A: key 4 held 2 frames longer, 4 frames (was 2), from 1+23, in each pass of the cycle; what follows comes 6 frames later',
    ],
    [
      '4-5-',
      '4-5--',
      'A: 2 in-betweens from key 5 to key 4 (was 1), from 2+5, new: A11 (5.2); what follows comes 6 frames later',
      'A: numbers: A11 is now A12',
    ],
    ['2-3:', '2a-3:', 'A: key 2a instead of key 2, from 0+19'],
    [
      '3:1+0',
      '3:12 7:12',
      'A: key 7 added from 1+11 for 12 frames, key 3 held that much less',
      'A: numbers: A7 to A11 are now A8 to A12',
    ],
    ['3:1+0', '3:6 x:12 3:6', 'A: empty from 1+5 for 12 frames, key 3 held that much less'],
    ['6..', '6:12 8..', 'A: key 8 added from 3+11 for 1+14'],
    [
      '-3:1+0',
      '',
      'A: A5 (2.1), key 3 dropped (was on 0+21, 1+2); what follows comes 1+2 earlier',
      'A: numbers: A7 to A11 are now A5 to A9',
    ],
    [
      '(4-5-)*3 ',
      '',
      'A: the cycle 4-5 dropped (was on 1+23, 1+0); what follows comes 1+0 earlier',
      'A: numbers: A11 is now A7',
    ],
    [
      '"Nao": 1',
      '"Nao": on 3 1',
      'A: key 1 held 1 frame longer, 15 frames (was 14), from 0+1',
      'A: A2 (1.1) to A5 (2.1) (4 exposures) held 3 frames (was 2) each, from 0+16; what follows comes 4 frames later',
      'A: key 4 to A10 (5.1) (4 exposures) held 3 frames (was 2) each, from 2+4, in each pass of the cycle; what follows comes 12 frames later',
    ],
    ['C: 1 @49', 'C: 1 @61', 'C: keys 2 to 3 come 12 frames later, from 2+13 (was 2+1)'],
    ['C: 1 @49', 'C: 1:6 9 @49', 'C: key 9 added from 0+7 for 1+18', 'C: numbers: C2 to C5 are now C3 to C6'],
    [
      '{late}',
      '{early}',
      'C: in-betweens from key 2 to key 3 crowding the earlier key (was crowding the later key)',
    ],
    ['{late}', '{1/4 1/2}', 'C: in-betweens from key 2 to key 3 at 1/4 1/2 (was crowding the later key)'],
    [
      '2:12{late}',
      '2{late}',
      'C: key 2 held 10 frames shorter, 2 frames (was 12), from 2+1; what follows comes 10 frames earlier',
    ],
    ['3..\nv', '3:6 x..\nv', 'C: empty from 2+23 for 2+2'],
    ['B: x:24 (1--2--)..', 'B: x..', 'B: empty throughout'],
    ['B: x:24 (1--2--)..\n', '', 'B: no timeline any more, simply there'],
    ['time 5+0', 'time 5+12', 'cut 12 frames longer: 5+12 (was 5+0)'],
    ['BG A B C', 'BG B A C', 'stack, bottom to top: BG B A C (was BG A B C)'],
    ['560x200', '600x200', 'BG: artwork 600 x 200 mm (was 560 x 200 mm)'],
    ['at 130,0', 'at 130,5', 'BG: artwork 5 mm up, at 130,5 (was 130,0)'],
    ['level BG', 'level A free\nlevel BG', 'A: its edges may show'],
    ['"Nao":', '"Nao, near":', 'A: title “Nao, near” (was “Nao”)'],
    ['stack BG A B C', 'cels A 1 1.1 1.2 2 2.1 3 4 4.1 5 5.1 6\nstack BG A B C'],
  ]);
});

describe('the same drawings again and again', () => {
  edits(MOUTH, [
    ['@24', '@36', 'B: everything from key 2 on comes 12 frames later, from 1+12 (was 0+24)'],
    [
      '1:6 2 3',
      '1:6 2 4 2 3',
      'B: key 4, key 2 added from 2+6 for 6 frames; what follows comes 6 frames later',
    ],
    [
      '2 3:6 2 3:6 2 1',
      '2 3:6 3:6 2 1',
      'B: key 2 not shown again (was on 1+9, 3 frames); what follows comes 3 frames earlier',
    ],
    [
      '3:6 2 3 2',
      '3:6 2 3:5 2',
      'B: key 3 held 2 frames longer, 5 frames (was 3), from 2+15; what follows comes 2 frames later',
    ],
    // What a cycle ends on is held behind it.
    [
      '2:12 3',
      '2:16 3',
      'C: key 2 held 4 frames longer, 18 frames (was 14), from 0+17; what follows comes 4 frames later',
    ],
    [
      '(1-2)*3',
      '(1-2)*2',
      'C: the cycle 1-2 runs 2 times (was 3), from 0+1; what follows comes 6 frames earlier',
    ],
    // An anchor that stays takes up what comes before it.
    [
      'D: 1:12',
      'D: 1:15',
      'D: key 1 held 3 frames longer, 15 frames (was 12), from 0+1; what follows up to the cycle 2-3 comes 3 frames later',
    ],
    ['x:12 3', 'x:6 3', 'E: key 3 comes 6 frames earlier, from 0+23 (was 1+5)'],
    [
      'E: x:12 1 2',
      'E: x:12 1:5 2',
      'E: key 1 held 3 frames longer, 5 frames (was 2), from 0+13; what follows comes 3 frames later',
    ],
    [
      '1 2 x:12',
      '1 x:2 x:12',
      'E: key 2 dropped (was on 0+15, 2 frames), empty instead',
      'E: numbers: E3 is now E2',
    ],
  ]);
});

describe('words and header', () => {
  edits(SHEET, [
    ['"Rooftop"', '"The roof"', 'title “The roof” (was “Rooftop”)'],
    ['scene 6', 'scene 7', 'scene 7 (was 6)'],
    ['scene 6', 'scene 6\ntake 2', 'take 2 (was none)'],
    ['"M. Arai"', '"L. Quoy"', 'artist L. Quoy (was M. Arai)'],
    ['left."', 'right."', 'memo reworded: “Wind from screen right.” (was “Wind from screen left.”)'],
    ['memo "Wind from screen left."\n', '', 'memo dropped: “Wind from screen left.”'],
    ['left."', 'left."\nmemo "No rain."', 'memo added: “No rain.”'],
    ['1+6..2+20', '1+6..3+8', 'dialogue Nao “Wait for me!” 12 frames longer: 1+6 to 3+8 (was 1+6 to 2+20)'],
    [
      '1+6..2+20 "Wait" @1+14 "for" @1+20',
      '1+18..3+8 "Wait" @2+2 "for" @2+8',
      'dialogue Nao “Wait for me!” 12 frames later: 1+18 to 3+8 (was 1+6 to 2+20)',
    ],
    ['@1+14', '@1+16', 'dialogue Nao “Wait for me!”: “for” on 1+16 (was 1+14)'],
    ['"me!"', '"us!"', 'dialogue Nao “Wait for us!” reworded (was “Wait for me!”)'],
    ['voice "Nao"', 'voice "Pim"', 'dialogue Pim “Wait for me!”: said by Pim (was Nao)'],
    ['voice "Nao" 1', 'voice "Nao" mono 1', 'dialogue Nao “Wait for me!”: inner voice (was in picture)'],
    ['sound 3+1..3+8 "door slams"\n', '', 'sound “door slams” dropped (was 3+1 to 3+8)'],
    ['music', 'sound 4+1..4+6 "bell"\nmusic', 'sound “bell” added: 4+1 to 4+6'],
    ['3+1..3+8', '3+3..3+10', 'sound “door slams” 2 frames later: 3+3 to 3+10 (was 3+1 to 3+8)'],
    ['music 1..', 'music 2+1..', 'music “flute” begins 2+0 later: 2+1 to 4+24 (was 0+1 to 4+24)'],
    ['note 2+12', 'note 3+12', 'note “looks up” 1+0 later, on 3+12 (was 2+12)'],
    ['looks up', 'looks down', 'note on 2+12 reworded: “looks down” (was “looks up”)'],
    ['note 2', 'note 1+1 "breathes"\nnote 2', 'note “breathes” added on 1+1'],
  ]);
});

describe('camera and light', () => {
  edits(CAMERA, [
    ['field B full at 110,0', 'field B full at 100,3', 'field B 10 mm left, 3 mm up: at 100,3 (was 110,0)'],
    ['60% at', '50% at', 'field C smaller: 50%, 127 mm (was 60%, 152.4 mm)'],
    ['cw 5', 'cw 8', 'field C turned 3° clockwise: 8° (was 5°)'],
    ['field C 60% at 20,0 cw 5\n', '', 'field C dropped'],
    ['field D', 'field E', 'field D is called E'],
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
    ['carry A', 'carry A ticks', 'PAN A→B→A: graduated frame by frame (was not graduated)'],
    ['carry A', 'carry A on 2', 'PAN A→B→A: on 2s (was on 1s)'],
    ['pan A@13 > B@3+13 > A@4+13 ease 6 carry A\n', '', 'PAN A→B→A dropped (was 0+13 to 4+13)'],
    ['エ(-120,0)', 'エ(-140,0)', 'B slide ア→エ: mark エ 20 mm left, at -140,0 (was -120,0)'],
    [
      '@1 > エ',
      '@13 > エ',
      'B slide ア→エ begins 12 frames later: 0+13 to 1+24 (was 0+1 to 1+24), faster: largest step 3.43 mm/f (was 2.55)',
    ],
    ['> 360@', '> 180@', 'C turn 0°→180° (was 0°→360°)'],
    ['about 0,0', 'about 10,0', 'C turn 0°→360°: about 10,0 (was about 0,0)'],
    ['3mm/f', '4mm/f', 'BG pull faster: 4 mm/f (was 3 mm/f), 192 mm (was 144 mm) in all'],
    ['right 3mm/f', 'left 3mm/f', 'BG pull: to the left (was to the right)'],
    ['1..2+0\nshake', '1..2+12\nshake', 'BG pull 12 frames longer: 0+1 to 2+12 (was 0+1 to 1+24)'],
    ['3mm/f 1..2+0', '3mm/f 1..2+0 loop 420mm', 'BG pull: loop of 420 mm (was no loop)'],
    ['3mm/f 1..2+0', '3mm/f 1..2+0 ease 6', 'BG pull: ease 6/6 (was even speed)'],
    ['pull BG right 3mm/f 1..2+0', 'pull BG right 144mm 1..2+0'],
    ['shake 3mm', 'shake 5mm>0mm', 'shake: 5 to 0 mm (was 3 mm)'],
    ['1+1..1+12', '2+1..2+12', 'shake 1+0 later: 2+1 to 2+12 (was 1+1 to 1+12)'],
    ['roll A 5mm', 'roll A 6mm', 'A sway: 6 mm (was 5 mm)'],
    ['every 1+12', 'every 1+0', 'A sway: every 1+0 (was every 1+12)'],
    ['fade in 1..12', 'fade in 1..24', 'F.I 12 frames longer: 0+1 to 0+24 (was 0+1 to 0+12)'],
    ['fade in 1..12\n', '', 'F.I dropped (was 0+1 to 0+12)'],
    ['fade in 1..12', 'fade in white 1..12', 'W.I: white (was black)'],
    ['B 50%', 'B 40%', 'B double exposure: 40% (was 50%)'],
    ['glow C', 'glow B,C', 'B,C light through (was level C)'],
    ['heat haze', 'mist', 'effect “mist” on A,B (was “heat haze”)'],
    ['fade in 1..12', 'fade in 1..12\noverlap out 24', 'O.L with the next cut added: 4+13 to 5+12'],
  ]);
  edits(TRUCK, [
    ['@24 fair', '@30 fair', 'Q.T.U A→B 6 frames longer: 0+1 to 1+6 (was 0+1 to 0+24)'],
    [
      'ア@6 85%',
      'ア@8 85%',
      'Q.T.U A→B: fairing ア on frame 8 with 85% (was fairing ア on frame 6 with 85%), slower: largest step 2.43 mm/f (was 3.4)',
    ],
    [
      'truck quick A@1 > B@24 fair ア@6 85%',
      'truck A@1 > B@24',
      'T.U A→B: even speed (was fairing ア on frame 6 with 85%), slower: largest step 0.87 mm/f (was 3.4)',
    ],
    ['50% at 20,0', '40% at 20,0', 'field B smaller: 40%, 101.6 mm (was 50%, 127 mm)'],
  ]);
});

describe('names', () => {
  test('of a level may change wherever it stands', () => {
    const now = CAMERA.replace('stack BG A B C', 'stack BG A B H')
      .replace('C: 1', 'H: 1')
      .replace('level C 0@1', 'level H 0@1')
      .replace('glow C', 'glow H');
    // What shows the same as another level can be told from it by nothing but its place.
    const base = CAMERA.replace('C: 1..', 'C: 1 2 3..');
    expect(note(base, now.replace('H: 1..', 'H: 1 2 3..'))).toEqual(['level C is called H']);
  });

  test('of a field may change wherever it stands', () => {
    const now = CAMERA.replace('field B full', 'field Z full').replace('> B@3+13', '> Z@3+13');
    expect(note(CAMERA, now)).toEqual(['field B is called Z']);
  });

  test('of in-betweens change where their key leads to another key too, and that is no difference', () => {
    const head = 'cut 1\ntime 2+0\n';
    expect(note(`${head}A: 1--2 3..`, `${head}A: 1--2 3:20 1-3..`)).toEqual([
      'A: key 3, key 1, A6 (1>3.1) added from 0+9 for 1+0; what follows comes 1+0 later',
    ]);
  });
});

test('a level that comes or goes is one line, with what it moves with it', () => {
  const head = 'cut 1\ntime 1+0\n';
  const one = `${head}BG: x..\nA: 1--2..\n`;
  const two = `${head}BG: x..\nA: 1--2..\nC "smoke": 1-2-3..\n`;
  expect(note(one, two)).toEqual(['level C “smoke” added, above A: 5 drawings']);
  expect(note(two, one)).toEqual(['level C “smoke” dropped: 5 drawings']);
});

test('reuse of another cut is told, and its drawings are not counted', () => {
  const text = (reuse: string) => `cut 9\ntime 1+0\n${reuse}C: 1--2..\n`;
  expect(note(text(''), text('level C reuse 8/C\n'))).toEqual(['C: reuse of cut 8, level C (was none)']);
});

describe('a passage on paper', () => {
  const cut = (timeline: string, names: string) => `cut 1\ntime 1+0\nA: ${timeline}\ncels A ${names}\n`;
  const old = cut('1--2..', '1 1.1 1.2 2');

  test('says nothing of places while its drawings stay where they lie', () => {
    expect(note(old, cut('1---2..', '1 1.1 1.2 2 1.2a')).join('\n')).not.toContain(' lies ');
  });

  test('says where a drawing lies that a chart has moved', () => {
    const now = cut('1{1/3 1/2 3/4}---2..', '1 1.1 1.2 2 1.2a');
    expect(note(old, now)).toContain('A: on the way from key 1 to key 2 lies A3 (1.2) at 1/2 (was 2/3)');
    expect(note(old, now, 'ja').join('\n')).toContain('A：原画1→2 の割り A3 (1.2) 1/2');
  });
});
