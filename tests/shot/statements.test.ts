/** Levels, words on the sheet, phrases and files that are used. */

import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import { bindText, withLines } from './bind.js';

const HEAD = 'cut 1\ntime 5+0\n';

function stack(text: string): string[] {
  return bindText(HEAD + text).shot!.levels.map((level) => level.name);
}

describe('the stack', () => {
  test('is BG, then the levels in the order of writing', () => {
    expect(stack('B: 1..\nA: 1..\n')).toEqual(['BG', 'B', 'A']);
    expect(stack('B: 1..\nlevel BOOK1 free\nA: 1..\n')).toEqual(['BG', 'B', 'BOOK1', 'A']);
    expect(stack('A: 1..\nBG: 1..\n')).toEqual(['BG', 'A']);
  });

  test('that is given is the whole of it', () => {
    expect(stack('stack 空 A BOOK1 B\nB: 1..\nA: 1..\n')).toEqual(['空', 'A', 'BOOK1', 'B']);
  });

  test('with a level outside it is an error that offers to put it in', () => {
    const { codes, diagnostics } = bindText(`${HEAD}stack BG A\nA: 1..\nB: 1..\n`);
    expect(codes).toEqual(['error level-outside']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe(' B');
  });

  test('that cannot be read is not held against the levels', () => {
    expect(bindText(`${HEAD}stack BG 7\nA: 1..\nB: 1..\n`).codes).toEqual([]);
  });
});

describe('a level', () => {
  test('has size, home and what else is said of it', () => {
    const { shot } = bindText(
      `${HEAD}level BG size 560x200mm at 130,0\nlevel B carry free reuse 8/C\nB: 1..\n`,
    );
    expect(shot!.levels).toMatchObject([
      {
        name: 'BG',
        timeline: null,
        sizeMm: { widthMm: 560, heightMm: 200 },
        homeMm: { xMm: 130, yMm: 0 },
        free: false,
        carry: false,
      },
      {
        name: 'B',
        sizeMm: null,
        homeMm: { xMm: 0, yMm: 0 },
        free: true,
        carry: true,
        reuse: { cut: '8', level: 'C' },
      },
    ]);
  });

  test('may be called like a statement', () => {
    expect(stack('note: 1..\n')).toEqual(['BG', 'note']);
  });

  test.each([
    ['level BG size 0x200mm', 'size-zero'],
    ['level A reuse 1/A', 'reuse-self'],
    ['cels Q 1', 'unknown-level'],
    ['cels A 1 1', 'cels-twice'],
    ['stack BG A A', 'stack-twice'],
    ['A: 2..', 'statement-twice'],
    ['time 4+0', 'statement-twice'],
    ['level A free\nlevel A carry', 'statement-twice'],
    ['fps 0', 'fps-range'],
    ['on 0', 'on-range'],
    ['numbering frames', 'unknown-numbering'],
  ])('%s gives %s', (line, code) => {
    expect(withLines(line).codes).toEqual([`error ${code}`]);
  });
});

describe('words on the sheet', () => {
  test('keep speaker, manner, rows and ties', () => {
    const { shot, codes } = withLines('voice "Nao" off 1+6..2+20 "Wait" @1+14 "for" @1+20 "me!"');
    expect(codes).toEqual([]);
    expect(shot!.spoken).toMatchObject([
      {
        kind: 'voice',
        speaker: 'Nao',
        manner: 'off',
        frames: { from: 30, to: 68 },
        parts: [
          { text: 'Wait', frame: null },
          { text: 'for', frame: 38 },
          { text: 'me!', frame: 44 },
        ],
      },
    ]);
  });

  test('stand in the order of their rows, memos in that of writing', () => {
    const { shot } = withLines(
      'sound 60..70 "late"',
      'voice "Nao" 1..10 "early"',
      'note 9 "b"',
      'note 3 "a"',
      'memo "z"',
      'memo "a"',
    );
    expect(shot!.spoken.map((each) => each.kind)).toEqual(['voice', 'sound']);
    expect(shot!.notes.map((each) => each.text)).toEqual(['a', 'b']);
    expect(shot!.memos.map((each) => each.text)).toEqual(['z', 'a']);
  });

  test('past the end are a warning, and stop at the last row', () => {
    const { shot, codes } = withLines(
      'voice "Nao" 4+1..6+0 "Wait" @5+12 "for me!"',
      'sound 130.. "door"',
      'note 130 "wind"',
    );
    expect(codes).toEqual([
      'warning dialogue-past-end',
      'warning dialogue-past-end',
      'warning note-past-end',
    ]);
    expect(shot!.spoken).toMatchObject([
      { frames: { from: 97, to: 120 }, parts: [{}, { text: 'for me!', frame: null }] },
    ]);
    expect(shot!.notes).toEqual([]);
  });

  test('tied outside their rows, or backwards, are errors', () => {
    expect(withLines('voice "Nao" 6..12 "Wait" @18 "for me!"').codes).toEqual(['error words-outside']);
    expect(withLines('voice "Nao" 6..20 "Wait" @18 "for" @12 "me!"').codes).toEqual([
      'error words-not-rising',
    ]);
  });
});

describe('phrases', () => {
  test('that play themselves show the chain, once', () => {
    const { codes, diagnostics } = withLines(
      'phrase a = 1 b',
      'phrase b = 2 c*2',
      'phrase c = on 3 3 a',
      'B: a..',
      'C: on 3 b..',
    );
    expect(codes).toEqual(['error phrase-circle']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe('A phrase cannot play itself: `a` → `b` → `c` → `a`.');
    expect(withLines('phrase a = 1 a', 'B: a..').codes).toEqual(['error phrase-circle']);
  });

  test('that are not there: did you mean', () => {
    const { codes, diagnostics } = withLines('phrase walk = 1--2--', 'B: wakl*2', 'C: walk..');
    expect(codes).toEqual(['error unknown-phrase']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('walk');
  });

  test('that are not there, on a line of their own: the timeline of a level that was indented', () => {
    const { codes, diagnostics } = withLines('B: 1:12 1--2..', '  D: 1--2..');
    expect(codes).toEqual(['error indented-statement']);
    const [edit] = diagnostics[0]!.fix!.edits;
    expect([edit!.text, edit!.span.end - edit!.span.start]).toEqual(['', 2]);
    for (const line of ['  D:2+0', 'D: 1', '  D*2', '  2 D: 1'])
      expect(withLines('B: 1:12 2', `  ${line}..`).codes, line).not.toContain('error indented-statement');
    expect(withLines('phrase D = 1--', 'B: 1:12', '  D: 4 2..').codes).toEqual([]);
  });

  test('that an unreadable statement began are not reported as unknown', () => {
    expect(withLines('phrase walk = 1--???', 'B: walk..').codes).toEqual([]);
  });

  test('are checked even where nothing plays them', () => {
    expect(withLines('phrase walk = 1:0 2').codes).toEqual(['error length-zero', 'hint phrase-unused']);
  });
});

describe('used files', () => {
  test('give phrases, and levels that the cut has', () => {
    const house = 'phrase walk = 1--2--\nlevel BG size 560x200mm\nlevel Z free\n';
    const { shot, codes } = bindText(`${HEAD}use "house.cut"\nA: walk..\n`, [house]);
    expect(codes).toEqual([]);
    expect(shot!.levels.map((level) => [level.name, level.sizeMm?.widthMm ?? null])).toEqual([
      ['BG', 560],
      ['A', null],
    ]);
  });

  test("are overruled by the cut's own words", () => {
    const { shot, codes } = bindText(`${HEAD}phrase walk = 1:9\nlevel BG free\nA: walk..\n`, [
      'phrase walk = 1--2--\nlevel BG size 560x200mm\n',
    ]);
    expect(codes).toEqual([]);
    expect(shot!.levels[0]).toMatchObject({ free: true, sizeMm: null });
  });

  test('that both define a phrase are an error', () => {
    const { codes, diagnostics } = bindText(`${HEAD}A: walk..\n`, [
      'phrase walk = 1-2-\n',
      'phrase walk = 1--2--\n',
    ]);
    expect(codes).toEqual(['error name-twice']);
    expect(diagnostics[0]!.span.file).toBe('used1.cut');
    expect(diagnostics[0]!.notes[0]!.span!.file).toBe('used0.cut');
  });
});

describe('what is missing', () => {
  test('number and time of the cut', () => {
    expect(bindText('A: 1..\n').codes).toEqual(['error cut-missing', 'error time-missing']);
    expect(bindText('').codes).toEqual(['error cut-missing', 'error time-missing']);
  });

  test('a cut without a number is bound all the same', () => {
    expect(bindText('time 5+0\nA: 1..\n').shot).toMatchObject({ cut: '', time: 120 });
  });

  test('the first of two statements holds', () => {
    expect(bindText('cut 1\ntime 5+0\ntime 6+0\nA: 1..\n').shot!.time).toBe(120);
  });

  test('every fault of a text is told in one run', () => {
    const { codes } = bindText('time 5+0\nfps 0\nA: 1:0 wlk @0 2..\nnote nowhere "x"\nvoice "N" 9..3 "y"\n');
    expect([...codes].sort()).toEqual([
      'error cut-missing',
      'error fps-range',
      'error length-zero',
      'error position-zero',
      'error range-backwards',
      'error unknown-mark',
      'error unknown-phrase',
    ]);
  });
});
