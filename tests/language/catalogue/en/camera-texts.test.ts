import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('a size of 60 and one of 8F are told in the measure of each', () => {
  expect(said('field-measures', { field: 'A', other: 'B', percent: true })).toBe(
    'Field `A` is given in percent, and field `B` in lines of the field chart; are both meant so?',
  );
  expect(said('field-measures', { field: 'A', other: 'B', percent: false })).toBe(
    'Field `A` is given in lines of the field chart, and field `B` in percent; are both meant so?',
  );
});

test('what vanishes is the field, or a level by its name', () => {
  expect(said('size-vanishes', { level: null, frame: 9 })).toMatch(
    /^The field shrinks to nothing on frame 9;/,
  );
  expect(said('size-vanishes', { level: 'A', frame: 9 })).toMatch(/^A shrinks to nothing on frame 9;/);
});

test('light past the end is no move', () => {
  expect(said('move-past-end', { light: true, end: 130, rows: 120 })).toBe(
    'This ends on frame 130, past the end of the sheet, which has 120 rows.',
  );
  expect(said('move-past-end', { light: false, end: 2, rows: 1 })).toBe(
    'This move ends on frame 2, past the end of the sheet, which has 1 row.',
  );
});

test('moves that overlap are of the camera or of a level', () => {
  expect(said('moves-overlap', { move: 'turn', level: 'L', from: 21, to: 24 })).toBe(
    'Two turns of L run at once, from frame 21 to frame 24.',
  );
  expect(said('moves-overlap', { move: 'pan', level: null, from: 1, to: 2 })).toBe(
    'Two moves of the camera run at once, from frame 1 to frame 2.',
  );
});

test('a jump is told in the measure of what jumps', () => {
  const camera = {
    variant: 'camera',
    frame: 9,
    move: 'pan',
    field: 'A',
    widthMm: 254,
    xMm: 20,
    yMm: 0,
  } as const;
  expect(said('move-jumps', { ...camera, turnDeg: 0 })).toMatch(/is 254 mm wide at 20, 0\.$/);
  expect(said('move-jumps', { ...camera, turnDeg: 5 })).toMatch(/is 254 mm wide at 20, 0 turned 5°\.$/);
  const level = { variant: 'level', frame: 9, level: 'A', starts: 2, is: 1.5 } as const;
  expect(said('move-jumps', { ...level, of: 'scale' })).toBe(
    'A would jump on frame 9: this move starts from 200 %, but A is at 150 %.',
  );
  expect(said('move-jumps', { ...level, of: 'angle' })).toBe(
    'A would jump on frame 9: this move starts from 2°, but A is at 1.5°.',
  );
});

test('an ease below nothing is another fault than one too long', () => {
  expect(said('ease-long', { leave: -2, arrive: 3, steps: 9 })).toBe(
    'An ease of -2 frames cannot be; 0 is none.',
  );
  expect(said('ease-long', { leave: 2, arrive: -3, steps: 9 })).toBe(
    'An ease of -3 frames cannot be; 0 is none.',
  );
  expect(said('ease-long', { leave: 6, arrive: 6, steps: 1 })).toBe(
    'The ease takes 6 + 6 frames, but this leg has only 1 step; both ends together take 1 at most.',
  );
});

test('one graduation is, two are', () => {
  expect(said('steps-count', { graduations: 1, steps: 2, start: 1, end: 3 })).toBe(
    'There is 1 graduation for 2 steps, from frame 1 to frame 3.',
  );
  expect(said('steps-count', { graduations: 2, steps: 1, start: 1, end: 2 })).toBe(
    'There are 2 graduations for 1 step, from frame 1 to frame 2.',
  );
});

test('a fairing mark has several frames, one, or none to stand on', () => {
  const outside = (first: number, last: number) =>
    said('fairing-outside', { mark: 'ア', frame: 9, first, last });
  expect(outside(2, 8)).toMatch(/inside the move, on frame 2 to 8\.$/);
  expect(outside(2, 2)).toMatch(/inside the move, on frame 2\.$/);
  expect(outside(2, 1)).toMatch(/give it more frames, or leave the mark out\.$/);
  const slow = { mark: 'ア', share: 0.6, frame: 20, least: 82.7 };
  expect(said('fairing-slow', { ...slow, latest: 14 })).toMatch(
    /put the mark on frame 14 or earlier, or have 82\.7 % or more done there\.$/,
  );
  expect(said('fairing-slow', { ...slow, latest: null })).toMatch(
    /than before it; have 82\.7 % or more done there\.$/,
  );
});

test('a place without a name is a mark', () => {
  expect(said('speed-jumps', { frame: 9, field: null, before: 1, after: 2 })).toContain(
    'passes a mark: 1 mm a frame before',
  );
  expect(said('speed-jumps', { frame: 9, field: 'B', before: 1, after: 2 })).toContain('passes B:');
});

test('both sides of a chart are joined', () => {
  const reaches = [
    { lines: 13, side: 'east' },
    { lines: 12.5, side: 'north' },
  ] as const;
  expect(said('field-off-chart', { field: 'A', lines: 12, reaches })).toContain(
    'come to 13 to the east and 12.5 to the north, where 12 is the edge',
  );
});

test('a scan is enlarged on a field, or for a level', () => {
  const scan = { share: 0.5, frame: 9, dpi: 200, enough: 0.96, pixels: 1920 };
  expect(said('scan-enlarged', { ...scan, level: null })).toMatch(
    /^The field is 50 % of the standard field on frame 9:/,
  );
  expect(said('scan-enlarged', { ...scan, level: 'A' })).toMatch(
    /^A shows as little as a field of 50 % would on frame 9:/,
  );
});

test('where edges strobe it is said', () => {
  const fast = { frames: [3, 4, 5], mm: 3, fraction: 85 };
  expect(said('strobing', { ...fast, edge: false })).toMatch(
    /^On frames 3-5 the picture passes at up to 3 mm a frame, 1\/85/,
  );
  expect(said('strobing', { ...fast, edge: true })).toMatch(/^On frames 3-5 the edge of the picture passes/);
});

test('an edge is worst later, or at once', () => {
  const edge = {
    level: 'BG',
    side: 'right',
    frame: 25,
    byMm: 1,
    needed: { width: 301, height: 142.875, x: 23.5, y: 0 },
  } as const;
  expect(said('artwork-edge', { ...edge, worstFrame: 48, worstMm: 24 })).toBe(
    'The right edge of BG comes into the picture on frame 25, by 1 mm (at worst 24 mm, on frame 48); 301 x 142.88 mm with its centre at 23.5, 0 would do.',
  );
  expect(said('artwork-edge', { ...edge, worstFrame: 25, worstMm: 1 })).toContain(
    'on frame 25, by 1 mm; 301 x',
  );
});

test('loops lie along the length or the height', () => {
  expect(said('loop-two', { level: 'BG', here: { mm: 300, axis: 'x' }, there: { mm: 400, axis: 'y' } })).toBe(
    'BG is painted as one loop, but this pull says 300 mm along its length where another says 400 mm along its height.',
  );
});

test('light overlaps for the whole picture, or for levels', () => {
  expect(said('light-overlaps', { levels: null, from: 1, to: 9 })).toMatch(
    /^Two fades, wipes, irises or overlaps of the whole picture run/,
  );
  expect(said('light-overlaps', { levels: ['A', 'B'], from: 1, to: 9 })).toMatch(
    /^Two exposures of A, B run/,
  );
});

test.each([
  [0, 'Light flashes here; whether'],
  [1, 'Light flashes here, once in its fastest second; whether'],
  [2, 'Light flashes here, twice in its fastest second; whether'],
  [3, 'Light flashes here, three times in its fastest second; whether'],
])('%d flashes in a second: %s', (count, begins) => {
  expect(said('flash-unmeasured', { count }).startsWith(begins)).toBe(true);
});
