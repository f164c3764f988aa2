import { describe, expect, test } from 'vitest';
import { playPlaced } from '../../src/solve/unroll-cycles.js';
import { bindText } from '../shot/bind.js';
import { shown } from './shown.js';

/** The first item of a timeline, laid from frame `start` on for `frames`, on a sheet of so many rows. */
function played(text: string, frames: number, { start = 1, rows = 1000 } = {}) {
  const { shot } = bindText(`cut 1\ntime 100+0\nA: ${text}\n`);
  const [item] = shot!.levels.find(({ name }) => name === 'A')!.timeline!.items;
  if (!item || item.kind === 'at') throw new Error('nothing to play');
  return playPlaced({ item, start, frames }, rows);
}

/** `1*2 2*3'`: what is seen for how many frames; `'`: again, in a cycle; `<`: on a way back. */
const seen = (text: string, frames: number, place = {}): string =>
  played(text, frames, place)
    .units.map(
      ({ leaf, frames, again, back }) =>
        `${leaf.kind === 'key' ? leaf.name : leaf.kind}*${frames}${again ? "'" : ''}${back ? '<' : ''}`,
    )
    .join(' ');

describe('what is seen', () => {
  test.each([
    ['1:2', 2, '1*2'],
    ['(1:2 2:3)*2', 10, "1*2 2*3 1*2' 2*3'"],
    ['(1:2 2:3):7', 7, "1*2 2*3 1*2'"],
    ['(1:1 2:2 3:3)<>*2', 16, "1*1 2*2 3*3 2*2< 1*1' 2*2' 3*3' 2*2'<"],
    ['(1:1 2:2 3:3)<>', 8, '1*1 2*2 3*3 2*2<'],
    ['(1:2 2:3)..', 12, "1*2 2*3 1*2' 2*3' 1*2'"],
    ['((1:1 2:1)*2 3:1)*2', 10, "1*1 2*1 1*1' 2*1' 3*1 1*1' 2*1' 1*1' 2*1' 3*1'"],
  ])('%s for %d frames', (text, frames, wanted) => {
    expect(seen(text, frames)).toBe(wanted);
  });

  test('is cut where there are fewer frames', () => {
    expect(seen('(1:2 2:3)*2', 3)).toBe('1*2 2*1');
    expect(seen('(1:2 2:3)*2', 0)).toBe('');
  });

  test('is held where there are more: its last drawing', () => {
    expect(seen('1:2', 5)).toBe('1*5');
    expect(seen('(1:2 2:3)*2', 14)).toBe("1*2 2*3 1*2' 2*7'");
  });

  test('ends with the sheet', () => {
    expect(seen('(1:2 2:3)..', 12, { start: 7, rows: 9 })).toBe('1*2 2*1');
    expect(seen('1:2', 5, { start: 10, rows: 9 })).toBe('');
  });
});

describe('a cycle', () => {
  const cycles = (text: string, frames: number, place = {}) => played(text, frames, place).cycles;

  test('is told with its frames, its pass and how often it is played', () => {
    expect(cycles('(1:2 2:3)*2', 10)).toMatchObject([
      { firstFrame: 1, lastFrame: 10, passFrames: 5, times: 2, bounce: false, depth: 0 },
    ]);
  });

  test('starts where it is laid', () => {
    expect(cycles('(1:2 2:3)*2', 10, { start: 25 })).toMatchObject([{ firstFrame: 25, lastFrame: 34 }]);
  });

  test('that runs on has no number of passes', () => {
    expect(cycles('(1:2 2:3)..', 12)).toMatchObject([{ lastFrame: 12, times: null }]);
  });

  test('that is cut short has the passes that are begun', () => {
    expect(cycles('(1:2 2:3)*4', 12)).toMatchObject([{ lastFrame: 12, times: 3 }]);
  });

  test('of one pass is none', () => {
    expect(cycles('(1:2 2:3)', 5)).toEqual([]);
  });

  test('in a cycle is told each time, one deeper', () => {
    expect(
      cycles('((1:1 2:1)*2 3:1)*2', 10).map(({ firstFrame, lastFrame, depth }) => [
        firstFrame,
        lastFrame,
        depth,
      ]),
    ).toEqual([
      [1, 10, 0],
      [1, 4, 1],
      [6, 9, 1],
    ]);
  });
});

describe('a cycle in a cycle', () => {
  const places = (text: string, frames: number) =>
    played(text, frames).cycles.map(({ firstFrame, lastFrame, depth }) => [firstFrame, lastFrame, depth]);

  test('ends with the one around it', () => {
    expect(places('((1:1 2:1)*2 3:1)*2', 8)).toEqual([
      [1, 8, 0],
      [1, 4, 1],
      [6, 8, 1],
    ]);
    // The second pass begins on frame 6, the one inside on 7.
    expect(places('(3:1 (1:1 2:1)*2)*2', 7)).toEqual([
      [1, 7, 0],
      [2, 5, 1],
      [7, 7, 1],
    ]);
  });

  test('is not told where the one around it ends before it begins', () => {
    expect(places('(3:1 (1:1 2:1)*2)*2', 6)).toEqual([
      [1, 6, 0],
      [2, 5, 1],
    ]);
  });

  test('has the passes that are begun before the end of the one around it', () => {
    expect(played('(3:1 (1:1 2:1)*4):5', 5).cycles).toMatchObject([
      { firstFrame: 2, lastFrame: 5, times: 2, depth: 0 },
    ]);
  });

  test('there are none where nothing is played', () => {
    expect(places('((1:1 2:1)*2 3:1)*2', 0)).toEqual([]);
  });
});

describe('groups', () => {
  test('are played so many times, or for so long, the last pass cut short', () => {
    expect(shown(16, '(1-2-)*2').runs).toBe("1*2 1.1*2 2*2 2.1*2 1'*2 1.1'*2 2'*2 2.1'*2");
    expect(shown(13, '(1-2-):13').runs).toBe("1*2 1.1*2 2*2 2.1*2 1'*2 1.1'*2 2'*1");
    expect(shown(5, '(1-2-)..').runs).toBe('1*2 1.1*2 2*1');
  });

  test('stand in groups', () => {
    expect(shown(12, '((1)*2 (2 3)*2)*2', 'on 1').runs).toBe(
      "1*2 2*1 3*1 2'*1 3'*1 1'*2 2'*1 3'*1 2'*1 3'*1",
    );
  });

  test('are cycles where they are played more than once', () => {
    expect(shown(24, '(1-2-)*2 3:4 (4-):4').level.cycles).toEqual([
      { firstFrame: 1, lastFrame: 16, passFrames: 8, times: 2, bounce: false, depth: 0 },
    ]);
    expect(shown(24, 'x:3 (1-2-)..').level.cycles).toEqual([
      { firstFrame: 4, lastFrame: 24, passFrames: 8, times: null, bounce: false, depth: 0 },
    ]);
    expect(shown(20, '((1 2)*2 3)*2').level.cycles).toEqual([
      { firstFrame: 1, lastFrame: 20, passFrames: 10, times: 2, bounce: false, depth: 0 },
      { firstFrame: 1, lastFrame: 8, passFrames: 4, times: 2, bounce: false, depth: 1 },
      { firstFrame: 11, lastFrame: 18, passFrames: 4, times: 2, bounce: false, depth: 1 },
    ]);
  });

  test('that are played once are no cycle', () => {
    expect(shown(8, '(1-2-)').level.cycles).toEqual([]);
    expect(shown(8, '(1-2-)').level.exposures.some((each) => each.again)).toBe(false);
  });
});

describe('there and back', () => {
  test('does not double its ends', () => {
    expect(shown(24, '(1--2)<>*2').runs).toBe(
      "1*2 1.1*2 1.2*2 2*2 1.2*2 1.1*2 1'*2 1.1'*2 1.2'*2 2'*2 1.2'*2 1.1'*2",
    );
  });

  test('alone is once', () => {
    expect(shown(14, '(1--2)<> 1').runs).toBe(shown(14, '(1--2)<>*1 1').runs);
  });

  test('keeps the lengths of its drawings on the way back', () => {
    expect(shown(16, '(1:4-:1-2:3)<> 1:3').runs).toBe('1*4 1.1*1 1.2*2 2*3 1.2*2 1.1*1 1*3');
  });

  test('costs no drawings', () => {
    expect(shown(48, '(1--2)<>..').level.drawings.map((each) => each.drawing)).toEqual([
      '1',
      '1.1',
      '1.2',
      '2',
    ]);
  });

  test('of one drawing is that drawing, of two one after the other', () => {
    expect(shown(6, '(1)<>*3').runs).toBe('1*6');
    expect(shown(8, '(1 2)<>*2').runs).toBe("1*2 2*2 1'*2 2'*2");
  });

  test('turns round groups inside', () => {
    expect(shown(18, '((1-2-)*1 3)<> 1..').runs).toBe('1*2 1.1*2 2*2 2.1*2 3*2 2.1*2 2*2 1.1*2 1*2');
  });

  test('a count of passes is cut by the end of the sheet', () => {
    expect(shown(9, '(1--2)<>..').runs).toBe('1*2 1.1*2 1.2*2 2*2 1.2*1');
  });
});
