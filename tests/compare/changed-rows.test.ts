/** The rows that get a change bar: those that show something else than the same row did. */

import { describe, expect, test } from 'vitest';
import {
  changedRows,
  earlierLevels,
  nowCalled,
  rowsOfChange,
  samePlace,
} from '../../src/compare/changed-rows.js';
import { compare } from '../../src/compare/compare-cuts.js';
import { rowName } from '../../src/shot/time-notation.js';
import { solved } from './say.js';

/** `A 1+1–1+6`, `camera 1+2–3+0`; of levels one of their two columns. */
function rows(old: string, now: string, column: 'keys' | 'cels' = 'keys'): string[] {
  const [was, is] = [solved(old), solved(now)];
  const row = (frame: number) => rowName(frame, is.shot.fps, false);
  return changedRows(was, is, compare(was, is))
    .filter(({ place }) => place.kind !== 'level' || place.column === column)
    .map(
      ({ place, from, to }) => `${place.kind === 'level' ? place.level : place.kind} ${row(from)}–${row(to)}`,
    );
}

const level = (line: string, time = '4+0') => `cut 1\ntime ${time}\nA: ${line}\n`;
const levelRows = (old: string, now: string, time?: string) => rows(level(old, time), level(now, time));
const with3 = (more: string, time = '3+0') => `cut 1\ntime ${time}\nA: 1..\n${more}\n`;
const sheetRows = (old: string, now: string) => rows(with3(old), with3(now));

describe('of a level', () => {
  test('are those with another drawing, not those of the drawing that is held longer', () => {
    expect(levelRows('1:1+0 2-3:6 x..', '1:1+2 2-3:6 x..')).toEqual(['A 1+1–1+6', 'A 1+11–1+12']);
  });

  test('are none where a drawing happens to stand as before, though it came later', () => {
    expect(levelRows('1 @1+1 --2:8 3..', '1 @1+7 --2:8 3..')).toEqual(['A 1+1–1+10', 'A 1+13–1+18']);
  });

  test('are none where nothing is shown in both', () => {
    expect(levelRows('x:1+8 1-2-3 x..', 'x:1+10 1-2-3 x..')).toEqual(['A 1+9–1+20']);
  });

  test('are those from which drawings went', () => {
    expect(levelRows('1:6 2:6 3:6 x..', '1:6 2:6 x..')).toEqual(['A 0+13–0+18']);
  });

  test('of a hold that was cut short are those that it held', () => {
    expect(levelRows('1:2+0 2..', '1:1+0 2..')).toEqual(['A 1+1–1+24']);
  });

  test('are all that show another key in a key’s place, and the in-betweens to it', () => {
    expect(levelRows('1:6 2:6 3..', '1:6 5:6 3..')).toEqual(['A 0+7–0+12']);
    expect(levelRows('on 2 1-2:8 3..', 'on 2 1-5:8 3..')).toEqual(['A 0+3–0+12']);
  });

  test('are none where only the number is another one: those before and behind one more in-between keep their names', () => {
    expect(levelRows('on 2 1--2:12 3..', 'on 2 1---2:12 3..')).toEqual(['A 0+7–0+8', 'A 0+19–0+20']);
  });

  test('in its other column are those with another number, too', () => {
    const [old, now] = ['on 2 1--2:12 3..', 'on 2 1---2:12 3..'].map((line) => level(line)) as [
      string,
      string,
    ];
    expect(rows(old, now, 'cels')).toEqual(['A 0+7–3+24']);
    expect(rows(level('1:12 2:12 3..'), level('1:12 4:12 3..'), 'cels')).toEqual(['A 0+13–0+24']);
  });

  test('with in-betweens elsewhere on their way are those that show them', () => {
    expect(levelRows('on 2 1{late}--2:8 3..', 'on 2 1--2:8 3..')).toEqual(['A 0+3–0+6']);
  });

  test('with a drawing that is a breakdown now are those that show it', () => {
    expect(levelRows('on 2 1--2:8 3..', 'on 2 1-=2:8 3..')).toEqual(['A 0+5–0+6']);
  });

  test('of a cycle played more or less often are those where it goes on, or where the next thing stands', () => {
    expect(levelRows('(1--2--)*2 3..', '(1--2--)*3 3..')).toEqual(['A 1+1–1+12']);
    expect(levelRows('(1--2--)*3 3..', '(1--2--)*2 3..')).toEqual(['A 1+1–1+12']);
  });

  test('in a cut that became longer are all that were not there', () => {
    expect(rows(level('(1--2--)..', '3+0'), level('(1--2--)..', '4+0'))).toEqual(['A 3+1–3+24']);
    expect(rows(level('1:2+0 x..', '3+0'), level('1:2+0 x..', '4+0'))).toEqual([]);
    expect(rows(level('1..', '4+0'), level('1..', '3+0'))).toEqual([]);
  });

  test('that is new are those on which it shows anything; of one that had no timeline all', () => {
    expect(rows(with3(''), with3('B: x:12 1:12 x..'))).toEqual(['B 0+13–0+24']);
    expect(rows(with3('stack A B'), with3('stack A B\nB: x:12 1:12 x..'))).toEqual(['B 0+1–2+24']);
  });

  test('under another name are none', () => {
    const [old, now] = [
      with3('B: 1:12 2..\nslide B (0,0)@1 > (4,0)@12'),
      with3('C: 1:12 2..\nslide C (0,0)@1 > (4,0)@12'),
    ];
    expect(rows(old, now)).toEqual([]);
    expect([...earlierLevels(compare(solved(old), solved(now)))]).toEqual([['C', 'B']]);
  });
});

describe('of the dialogue', () => {
  test('are those on which another word falls', () => {
    expect(
      sheetRows('voice "Nao" 1..2+0 "Strike" @1+12 "three!"', 'voice "Nao" 1..2+0 "Strike" @1+14 "three!"'),
    ).toEqual(['speech 1+12–1+14']);
    expect(sheetRows('voice "Nao" 1..12 "Wait here"', 'voice "Nao" 1..12 "Wait there"')).toEqual([
      'speech 0+7–0+12',
    ]);
  });

  test('are those on which a line begins, too', () => {
    expect(sheetRows('sound 3..9 "bang"', 'sound 5..9 "bang"')).toEqual(['speech 0+3–0+5']);
  });

  test('of a script without blanks go by its letters', () => {
    expect(sheetRows('voice "ナオ" 1..12 "待って"', 'voice "ナオ" 1..12 "待つよ"')).toEqual([
      'speech 0+5–0+12',
    ]);
  });

  test('that came or went are its rows, also those of before', () => {
    expect(sheetRows('', 'sound 1..6 "bang"')).toEqual(['speech 0+1–0+6']);
    expect(sheetRows('sound 1..6 "bang"', 'sound 1..4 "bang"')).toEqual(['speech 0+5–0+6']);
    expect(sheetRows('sound 1..6 "bang"', '')).toEqual(['speech 0+1–0+6']);
  });

  test('are all of a line that another says', () => {
    expect(sheetRows('voice "Nao" 3..6 "No"', 'voice "Ran" 3..6 "No"')).toEqual(['speech 0+3–0+6']);
  });
});

test('of the notes are those on which a note stands or stood', () => {
  expect(sheetRows('note 1+4 "heads turn"', 'note 1+6 "heads turn"')).toEqual([
    'notes 1+4–1+4',
    'notes 1+6–1+6',
  ]);
  expect(sheetRows('note 1+4 "heads turn"', '')).toEqual(['notes 1+4–1+4']);
});

describe('of the camera', () => {
  const truck = (share: number, to = '2+0') => `field K ${share}% at 4,0\ntruck full@1+1 > K@${to} graduated`;

  test('are those on which it stands otherwise, also where it rests: the first graduation is the same', () => {
    expect(sheetRows(truck(97), truck(96))).toEqual(['camera 1+2–2+24']);
    expect(sheetRows(truck(97), truck(97, '1+12'))).toEqual(['camera 1+2–1+24']);
  });

  test('are those of a level that moves otherwise, while it does', () => {
    expect(sheetRows('slide A (0,0)@1 > (8,0)@12', 'slide A (0,0)@1 > (8,0)@24')).toEqual([
      'camera 0+2–0+24',
    ]);
    expect(sheetRows('slide A (0,0)@1 > (8,0)@12', 'slide A (0,0)@1 > (8,1)@12')).toEqual([
      'camera 0+2–2+24',
    ]);
  });

  test('are those with other light', () => {
    expect(sheetRows('glow A 9..10', 'glow A 9..11')).toEqual(['camera 0+11–0+11']);
    expect(sheetRows('fade in 1..12', 'fade in 1..12 white')).toEqual(sheetRows('', 'fade in 1..12'));
    expect(sheetRows('effect "rain" 1..4', 'effect "snow" 1..4')).toEqual(['camera 0+1–0+4']);
  });

  test('are those with the name of another field', () => {
    const named = (name: string) => `field ${name} 90%\ntruck full@1+1 > ${name}@2+0`;
    expect(sheetRows(named('K'), named('L'))).toEqual(['camera 1+24–1+24']);
  });

  test('are all of a move where what is said of it is seen on no row', () => {
    const pull = (loop: number) => `pull A left 1mm/f 1..1+0 loop ${loop}mm`;
    expect(sheetRows(pull(420), pull(600))).toEqual(['camera 0+1–0+24']);
  });

  test('are none where what differs is less than paper tells', () => {
    expect(sheetRows('field K 50% at 0,0\nfix K', 'field K 50% at 0.004,0\nfix K')).toEqual([]);
  });
});

test('western keys are called by their numbers: both columns of a level have the same rows', () => {
  const [was, is] = ['on 2 1--2:12 3..', 'on 2 1---2:12 3..'].map((line) => {
    const it = solved(level(line));
    return { ...it, shot: { ...it.shot, settings: { ...it.shot.settings, convention: 'west' as const } } };
  });
  const marked = changedRows(was!, is!, compare(was!, is!));
  expect(marked.map(({ place, from, to }) => [place.kind === 'level' && place.column, from, to])).toEqual([
    ['keys', 7, 96],
    ['cels', 7, 96],
  ]);
});

describe('a change is shown', () => {
  /** `exposure 25-26 25-30,35-36`: the rows shown, and all that differ. */
  function shownOf(old: string, now: string): string[] {
    const [was, is] = [solved(old), solved(now)];
    const changes = compare(was, is);
    return changes.map((change) => {
      const found = rowsOfChange(was, is, change, changes);
      if (!found) return `${change.kind} none`;
      const frames = found.differs.flatMap((one, i) => (one ? [i + 1] : []));
      return `${change.kind} ${found.rows.from}-${found.rows.to}: ${frames[0]} to ${frames.at(-1)}`;
    });
  }
  const camera = (old: string, now: string) => shownOf(with3(old), with3(now));

  test('from the first row that differs, not from the beginning of the hold', () => {
    expect(shownOf(level('1:1+0 2-3:6 x..'), level('1:1+2 2-3:6 x..'))).toEqual(['exposure 25-26: 25 to 36']);
    expect(shownOf(level('1:1+2 2-3:6 x..'), level('1:1+0 2-3:6 x..'))).toEqual(['exposure 25-30: 25 to 36']);
  });

  test('on no row where it has none', () => {
    expect(shownOf(level('1..'), `${level('1..')}scene 3\n`)).toEqual(['scene none']);
  });

  test('by the one move or light that it is about, from its name on', () => {
    const both = (shake: string, glow: string) => `shake ${shake} 1+1..1+12\nglow A ${glow}`;
    expect(camera(both('3mm>0mm', '1..6'), both('4mm>0mm', '1..8'))).toEqual([
      'move-manner 25-36: 25 to 36',
      'light-time 1-8: 7 to 8',
    ]);
  });

  test('beside all rows of a move where nothing of it is seen', () => {
    const pull = (loop: number) => `pull A left 1mm/f 1..1+0 loop ${loop}mm`;
    expect(camera(pull(420), pull(600))).toEqual(['move-manner 1-24: 1 to 24']);
  });

  test('in dialogue and notes by all that is said', () => {
    expect(camera('sound 1..6 "bang"', 'sound 3..6 "bang"')).toEqual(['speech-time 1-3: 1 to 3']);
    expect(camera('note 5 "dust"', 'note 9 "dust"')).toEqual(['note-moved 9-9: 5 to 9']);
  });
});

test('levels are called by what they are called now', () => {
  const called = nowCalled(new Map([['C', 'B']]));
  expect(['A', 'B', 'C'].map(called)).toEqual(['A', 'C', 'C']);
});

test('places are the same by their kind, levels by their name', () => {
  expect(samePlace({ kind: 'level', level: 'A' }, { kind: 'level', level: 'A', column: 'cels' })).toBe(true);
  expect(samePlace({ kind: 'level', level: 'A' }, { kind: 'level', level: 'B', column: 'keys' })).toBe(false);
  expect(samePlace({ kind: 'camera' }, { kind: 'notes' })).toBe(false);
  expect(samePlace(null, { kind: 'notes' })).toBe(false);
});
