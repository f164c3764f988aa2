import { expect, test } from 'vitest';
import { hoverWords } from '../../src/lsp/hover-words.js';

const en = hoverWords('en');

test('a duration is told in frames, and in seconds and frames', () => {
  expect(en.lasting(48, 24)).toBe('48 frames (2+0)');
  expect(en.lasting(1, 24)).toBe('1 frame (0+1)');
  expect(en.lasting(30, 25)).toBe('30 frames (1+5)');
});

test('one frame is not a stretch of frames', () => {
  expect(en.between(25, 48)).toBe('frames 25–48');
  expect(en.between(25, 25)).toBe('frame 25');
});

// 16 frames of 35 mm film are a foot (common practice).
test('a length is told in frames, seconds and feet', () => {
  expect(en.asLength(24, 24)).toBe("24 frames = 1+0 = 1'08 of 35 mm film");
});

test('a position is told as its rows, and as the length up to it', () => {
  expect(en.asPosition(25, 24)).toBe(
    "frame 25: row 1+1, or 1'09 in feet; up to here 25 frames = 1+1 = 1'09 of 35 mm film",
  );
});

test('a long list is cut short, and says how many are left out', () => {
  expect(en.listed(['a', 'b', 'c'], 3)).toBe('a, b, c');
  expect(en.listed(['a', 'b', 'c', 'd'], 3)).toBe('a, b, c and 1 more');
  expect(en.listed([])).toBe('');
});

test('a mark is named with the frames from it', () => {
  expect(en.mark('hit', 3)).toBe('Mark `hit` + 3: ');
  expect(en.mark('hit', -3)).toBe('Mark `hit` − 3: ');
  expect(en.mark('hit', 0)).toBe('Mark `hit`: ');
});

test('a recording has its channels, and its rows where it is heard', () => {
  expect([1, 2, 6].map((channels) => en.recording(2.5, 48, channels))).toEqual([
    'Recording of 2.5 s, 48 kHz, mono',
    'Recording of 2.5 s, 48 kHz, stereo',
    'Recording of 2.5 s, 48 kHz, 6 channels',
  ]);
  expect(en.heard({ from: 1, to: 24 })).toBe('; heard on rows 1 to 24');
  expect(en.heard(null)).toBe('; heard on no row of the sheet');
});

test('artwork has its loop and what there is of it', () => {
  expect(en.artwork('300 × 200 mm', null, null)).toBe('artwork needed 300 × 200 mm');
  expect(en.artwork('300 × 200 mm', '310 × 200 mm', 310)).toBe(
    'artwork needed 300 × 200 mm, it has 310 × 200 mm, painted as a loop of 310 mm',
  );
});

test('the words are those of the language', () => {
  expect(hoverWords('ja').lasting(48, 24)).toBe('48コマ（2+0）');
});
