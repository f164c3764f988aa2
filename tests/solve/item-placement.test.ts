import { describe, expect, test } from 'vitest';
import { messageOf } from '../../src/language/message.js';
import type { Group, Leaf, ShotItem } from '../../src/shot/shot.js';
import {
  cutShort,
  lastLeaf,
  lastOfPass,
  lay,
  leafAt,
  natural,
  onceThrough,
  passFrames,
} from '../../src/solve/item-placement.js';
import { explained } from '../explained.js';
import { bindText } from '../shot/bind.js';
import { shown, solveText } from './shown.js';

/** The items of a timeline; the sheet is longer than any of them. */
function items(text: string): readonly ShotItem[] {
  const { shot } = bindText(`cut 1\ntime 100+0\nA: ${text}\n`);
  return shot!.levels.find(({ name }) => name === 'A')!.timeline!.items;
}
const group = (text: string): Group => {
  const [only] = items(text);
  if (only?.kind !== 'group') throw new Error('no group');
  return only;
};
const nameOf = (leaf: Leaf): string => (leaf.kind === 'key' ? leaf.name : leaf.kind);

describe('frames once through', () => {
  test.each([
    ['1:3 2:4', 7],
    ['1--2', 8],
    ['1:3 @10 2:4', 7],
    ['(1 2)*3', 12],
    ['(1:2 2:3):9', 9],
    ['((1:1 2:1)*2 3:1)*2', 10],
  ])('%s: %d', (text, frames) => {
    expect(onceThrough(items(text))).toBe(frames);
  });

  test('of more passes than any sheet has are counted, not played', () => {
    expect(onceThrough(items('((((1)*9999)*9999)*9999)*9999'))).toBe(1e15);
  });
});

describe('frames of a pass', () => {
  test.each([
    ['(1:2 2:3 3:4)*2', 9],
    // There, and back without the two ends.
    ['(1:2 2:3 3:4)<>*2', 12],
    ['(1:2 2:3)<>*2', 5],
    ['(1:2)<>*2', 2],
  ])('%s: %d', (text, frames) => {
    expect(passFrames(group(text))).toBe(frames);
  });
});

test('an open group lasts one pass by itself', () => {
  expect(natural(group('(1:2 2:3)..'))).toBe(5);
});

describe('what is seen some frames into the items', () => {
  const seen = (text: string, frames: number): string =>
    Array.from({ length: frames }, (_, i) => nameOf(leafAt(items(text), i).leaf)).join('');

  test.each([
    ['1:2 2:3', 5, '11222'],
    ['(1:1 2:2)*2', 6, '122122'],
    ['(1:1 2:2 3:1)<>*2', 12, '122322122322'],
    ['(1:2 2:2):3', 3, '112'],
  ])('%s', (text, frames, drawings) => {
    expect(seen(text, frames)).toBe(drawings);
  });

  test('with where it starts and how long it is seen', () => {
    expect(leafAt(items('1:2 (2:3 3:4)*2'), 10)).toMatchObject({ start: 9, frames: 3 });
    expect(leafAt(items('1:2 (2:3 3:4):5'), 6)).toMatchObject({ start: 5, frames: 2 });
  });
});

test.each([
  ['(1:2 2:3)*2', '2'],
  ['(1:2 2:3 3:1)<>*2', '2'],
  ['(1:2 2:3):4', '2'],
  ['(1:2 2:3):6', '1'],
])('%s shows last %s', (text, drawing) => {
  expect(nameOf(lastLeaf(group(text)).leaf)).toBe(drawing);
});

describe('what a way there and back ends on', () => {
  test('is the second drawing of the way', () => {
    expect(nameOf(lastOfPass(group('(1:2 2:3 3:1)<>*2'))!)).toBe('2');
  });

  test('passes over references', () => {
    expect(nameOf(lastOfPass(group('(1:2 1.1:2 2:3)<>*2'))!)).toBe('2');
  });
});

describe('until an @', () => {
  test('the item before is held', () => {
    expect(shown(12, '1 @7 2..').runs).toBe('1*6 2*6');
    expect(shown(12, '1- @7 2..').runs).toBe('1*2 1.1*4 2*6');
  });

  test('first in the line, the level is empty until then', () => {
    expect(shown(12, '@7 1..').runs).toBe('x*6 1*6');
  });

  test('an item that says nothing may be cut shorter than `on` says', () => {
    expect(shown(6, 'on 3 1 2 @5 3..').runs).toBe('1*3 2*1 3*2');
  });

  test('`..` goes on, holding or repeating', () => {
    expect(shown(12, '1.. @7 2..').runs).toBe('1*6 2*6');
    expect(shown(12, '(1-2-).. @7 3..').runs).toBe('1*2 1.1*2 2*2 3*6');
  });

  test('the last drawing of a group that has been played is held', () => {
    expect(shown(14, '(1 2)*2 @11 3..').runs).toBe("1*2 2*2 1'*2 2'*4 3*4");
  });

  test('going backwards is an error', () => {
    expect(shown(12, '1 2 3 @5 4..').codes).toEqual(['error at-backwards']);
    expect(shown(12, '1:6 @5 2..').codes).toEqual(['error at-backwards']);
    expect(shown(12, '(1-2-)*2 @9 3..').codes).toEqual(['error at-backwards']);
  });

  test('a length that stops short of it is an error that offers the right one', () => {
    const { codes, diagnostics } = shown(12, '1:4 @9 2..');
    expect(codes).toEqual(['error at-gap']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('8');
    expect(shown(12, '(1-2-):6 @9 3..').diagnostics[0]!.fix!.edits[0]!.text).toBe('..');
  });

  test('a phrase that ends in `..` is held until then', () => {
    expect(shown(12, 'stop @9 3..', 'phrase stop = 1-2..').runs).toBe('1*2 1.1*2 2*4 3*4');
  });

  test('past the end of the sheet it is an error', () => {
    expect(shown(12, '1 @13 2..').codes).toContain('error at-past-end');
  });
});

describe('filling the sheet', () => {
  test('too short says by how much and where, and offers to hold the last drawing', () => {
    const { diagnostics, codes } = shown(24, '1--2');
    expect(codes).toEqual(['error timeline-short']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe(
      'Level A shows 8 of 24 frames: 16 frames missing, from frame 9 on.',
    );
    const edit = diagnostics[0]!.fix!.edits[0]!;
    expect([edit.text, edit.span.start, edit.span.end]).toEqual([
      '..',
      'cut 1\ntime 24\nA: 1--2'.length,
      'cut 1\ntime 24\nA: 1--2'.length,
    ]);
  });

  test('too short with a length of its own offers the length that fits', () => {
    expect(shown(24, '1--2:4').diagnostics[0]!.fix!.edits[0]!.text).toBe('18');
    expect(shown(24, '(1-2-)*2').diagnostics[0]!.fix!.edits[0]!.text).toBe('..');
    expect(shown(24, '(1-2)<>').diagnostics[0]!.fix!.edits[0]!.text).toBe('..');
  });

  test('too long says by how much and at which item', () => {
    const { diagnostics, codes } = shown(10, '1--2--3');
    expect(codes).toEqual(['error timeline-long', 'warning drawing-never-seen']);
    expect(messageOf(diagnostics[0]!, 'en')).toBe(
      'Level A shows 14 frames, but the sheet has 10: 4 frames too many, from here on.',
    );
  });

  test('names the handles of the sheet', () => {
    const text = 'cut 1\ntime 4+0\noverlap out 24\nA: 1:12 2\n';
    const { diagnostics } = solveText(text);
    const short = diagnostics.find((each) => each.code === 'timeline-short');
    expect(messageOf(short!, 'en')).toBe(
      'Level A shows 14 of 96 + 12 handle frames: 94 frames missing, from frame 15 on.',
    );
    expect(solveText(text.replace('1:12 2', '1:12 2:96')).codes).toEqual([]);
  });

  test('one frame is a frame', () => {
    expect(messageOf(shown(9, '1--2').diagnostics[0]!, 'en')).toContain('1 frame missing');
  });

  test('nothing is said of the length where an item could not be read', () => {
    expect(shown(24, '1 wlk 2').codes).toEqual(['error unknown-phrase']);
  });
});

test('a timeline that names no drawing is too short', () => {
  const { codes, diagnostics } = shown(10, 'on 1');
  expect(codes).toEqual(['error timeline-short']);
  expect(messageOf(diagnostics[0]!, 'en')).toBe(
    'Level A shows nothing on any of 10 frames: name its drawings, or write `x..` where it stays empty.',
  );
});

describe('what is said of places', () => {
  /** Parameters, notes and fix of the messages with this code; `span` as the text that it names. */
  const said = (rows: number, items: string, code: string) => {
    const text = `cut 1\ntime ${rows}\nA: ${items}\n\n`;
    return shown(rows, items)
      .diagnostics.filter((one) => one.code === code)
      .map(({ parameters, notes, fix }) => ({
        ...parameters,
        notes: notes.map(({ note, span }) => [note, span && text.slice(span.start, span.end)]),
        fix: fix && { ...fix, edits: fix.edits.map((edit) => edit.text) },
      }));
  };

  test.each([
    // What is held until an @ has to be seen: a drawing for a frame, a group up to its last drawing.
    ['1 2 3 @5 4..', { variant: 'unseen', frame: 5, seen: 5 }, '3'],
    ['(1-2-)*2 @9 3..', { variant: 'unseen', frame: 9, seen: 15 }, '(1-2-)*2'],
    ['(1 2):6 @5 3..', { variant: 'unseen', frame: 5, seen: 5 }, '(1 2):6'],
    ['1 2.. @3 3..', { variant: 'unseen', frame: 3, seen: 3 }, '2..'],
    // What has a length of its own has it.
    ['1:6 @5 2..', { variant: 'exposed', frame: 5, until: 6 }, '1:6'],
    ['(1 2):6 @6 3..', { variant: 'exposed', frame: 6, until: 6 }, '(1 2):6'],
  ])('%s goes backwards', (items, wanted, before) => {
    expect(said(24, items, 'at-backwards')).toEqual([
      { ...wanted, notes: [['item-before', before]], fix: undefined },
    ]);
  });

  test.each(['1:4 @5 2..', '(1 2)*2 @8 3..', '(1 2).. @2 3..', '1:4 2 @6 3..'])('%s does not', (items) => {
    expect(shown(24, items).codes.filter((code) => code.startsWith('error'))).toEqual([]);
  });

  test.each([
    ['1:4 @9 2..', { last: 4, frame: 9 }, '1:4', { action: 'expose-for', frames: 8, edits: ['8'] }],
    ['1 (1-2-):6 @11 3..', { last: 8, frame: 11 }, '(1-2-):6', { action: 'repeat-until', edits: ['..'] }],
  ])('%s leaves a gap', (items, wanted, before, fix) => {
    expect(said(24, items, 'at-gap')).toEqual([{ ...wanted, notes: [['item-before', before]], fix }]);
  });

  test('an @ behind the last row is told with the rows, and not also as too long', () => {
    expect(said(12, '1 @13 2:4', 'at-past-end')).toMatchObject([{ frame: 13, rows: 12 }]);
    expect(said(12, '1 @13 2:4', 'timeline-long')).toEqual([]);
    expect(said(12, '1 @12 2', 'at-past-end')).toEqual([]);
  });

  test.each(['1 @5 @7 2..', '1 @5'])('%s: an @ before nothing is taken out', (items) => {
    expect(said(12, items, 'at-nothing')).toEqual([{ notes: [], fix: { action: 'take-out', edits: [''] } }]);
  });

  test('what crosses the end is cut where it is the last item', () => {
    const long = (rows: number, items: string) =>
      said(rows, items, 'timeline-long').map(({ fix, ...rest }) => [
        (rest as { shown?: unknown }).shown,
        fix,
      ]);
    expect(long(6, '1 2:8')).toEqual([[10, { action: 'expose-for', frames: 4, edits: ['4'] }]]);
    expect(long(7, '1 2 3 4')).toEqual([[8, { action: 'hold-until', edits: ['..'] }]]);
    expect(long(5, '1 2 3 4')).toEqual([[8, undefined]]);
    // Longer than anybody can count.
    expect(long(6, '((((1)*9999)*9999)*9999)*9999')).toEqual([
      [null, { action: 'repeat-until', edits: ['..'] }],
    ]);
  });

  test('what stops short is told with what it shows', () => {
    expect(said(24, '1--2', 'timeline-short')).toMatchObject([
      { level: 'A', shown: 8, rows: 24, fix: { action: 'hold-until', edits: ['..'] } },
    ]);
    expect(said(24, 'on 1', 'timeline-short')).toMatchObject([{ level: 'A', shown: 0, rows: 24 }]);
  });
});

describe('a way there and back inside a pass', () => {
  test.each([
    // 1 2 2 3 3 3 2 2, and so on: 3 is on frames 3 to 5.
    ['(1:1 2:2 3:3)<>*2', 7, 2, 6, 2],
    ['(1:1 2:2 3:3)<>*2', 4, 3, 3, 3],
    ['(1:1 2:2 3:3)<>*2', 15, 2, 14, 2],
  ])('%s on frame %d', (text, offset, key, start, frames) => {
    const found = leafAt(items(text), offset);
    expect([nameOf(found.leaf), found.start, found.frames]).toEqual([String(key), start, frames]);
  });

  test('ends at once where there is nothing but references', () => {
    expect(lastOfPass(group('(1.1:2 1.2:2)*2'))).toBeNull();
  });
});

describe('a placed item', () => {
  /** Start and frames of each item of a timeline. */
  const placed = (rows: number, items: string, lines = '') => {
    const { shot } = bindText(`cut 1\ntime ${rows}\nA: ${items}\n${lines}\n`);
    const level = shot!.levels.find(({ name }) => name === 'A')!;
    return lay(level, level.timeline!, shot!, () => {});
  };
  const spans = (...of: Parameters<typeof placed>) =>
    placed(...of).map(({ start, frames }) => [start, frames]);

  test('starts where the one before ends, or where an @ says', () => {
    expect(spans(20, '1:4 2 (3 4):6 @15 5..')).toEqual([
      [1, 4],
      [5, 2],
      [7, 8],
      [15, 6],
    ]);
  });

  test('before an @ is cut or held, and never less than nothing', () => {
    expect(spans(12, 'on 4 1 2 @6 3..')).toEqual([
      [1, 4],
      [5, 1],
      [6, 7],
    ]);
    expect(spans(12, '1:6 @1 2..')).toEqual([
      [1, 0],
      [1, 12],
    ]);
  });

  test('past the end stays in the list', () => {
    expect(spans(4, '1 2 3 4')).toHaveLength(4);
  });

  test('that runs on past the end has a frame all the same', () => {
    expect(spans(4, '1:6 2..')).toEqual([
      [1, 6],
      [7, 1],
    ]);
  });

  test.each([
    ['(1 2):4', 4, false],
    ['(1 2):6', 6, true],
    ['(1 2)*2', 8, false],
    ['(1 2)..', 8, false],
    ['(1 2)..', 6, true],
    ['1..', 5, false],
  ])('%s on %d rows: whether its last pass is cut short', (items, rows, cut) => {
    expect(cutShort(placed(rows, items)[0]!)).toBe(cut);
  });
});

describe('what is said of frames that do not add up, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a gap between two items',
      'time 1+0\nA: 1:4 @9 2..',
      [
        'error «@9» The item before stops on frame 4, and nothing is said for the 4 frames before frame 9.',
        ' + «1:4» the item before',
        ' > expose it for 8 frames: «4» → «8»',
      ],
    ],
    ['a gap after a group of so many times', 'time 1+0\nA: (1-2)*2 @20 3..', []],
    [
      'an item that another one cuts',
      'time 1+0\nA: 1:12 @9 2..',
      [
        'error «@9» This starts the next item on frame 9, but the item before it is exposed until frame 12.',
        ' + «1:12» the item before',
      ],
    ],
    [
      'a place that goes back',
      'time 1+0\nA: 1:4 @9 2:4 @5 3..',
      [
        'error «@9» The item before stops on frame 4, and nothing is said for the 4 frames before frame 9.',
        ' + «1:4» the item before',
        ' > expose it for 8 frames: «4» → «8»',
        'error «@5» This starts the next item on frame 5, but what is before it is first seen on frame 9.',
        ' + «2:4» the item before',
      ],
    ],
    [
      'a place behind the sheet',
      'time 1+0\nA: 1.. @30 2..',
      ['error «@30» Frame 1+6 (30) lies past the end of the sheet, which has 24 rows.'],
    ],
    [
      'too few frames',
      'time 1+0\nA: 1:4 2:4',
      [
        'error «2:4» Level A shows 8 of 24 frames: 16 frames missing, from frame 9 on.',
        ' > expose it for 20 frames: «4» → «20»',
      ],
    ],
    [
      'too few frames of a group',
      'time 1+0\nA: (1-2)*2',
      [
        'error «(1-2)*2» Level A shows 12 of 24 frames: 12 frames missing, from frame 13 on.',
        ' > repeat it until there: «*2» → «..»',
      ],
    ],
    [
      'too many frames',
      'time 1+0\nA: 1:20 2:20',
      [
        'error «2:20» Level A shows 40 frames, but the sheet has 24: 16 frames too many, from here on.',
        ' > expose it for 4 frames: «20» → «4»',
      ],
    ],
    [
      'a group cut by the end',
      'time 1+0\nA: 1 (2-3-):40',
      [
        'error «(2-3-):40» Level A shows 42 frames, but the sheet has 24: 18 frames too many, from here on.',
        ' > repeat it until there: «:40» → «..»',
      ],
    ],
    ['nothing at the start', 'time 1+0\nA: @5 1..', []],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
