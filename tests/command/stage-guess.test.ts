import { expect, test } from 'vitest';
import { guessedWord } from '../../src/command/stage-guess.js';

const STAGES = ['layout', 'key', 'supervisor', 'in-between', 'finish', 'grading'];

test.each([
  ['原画', 'key'],
  ['レイアウト', 'layout'],
  ['作監', 'supervisor'],
  ['仕上げ', 'finish'],
  ['ＬＯ', 'layout'],
  ['Keys', 'key'],
  ['kez', 'key'],
  ['in between', 'in-between'],
])('the stage %s is meant for %s', (typed, stage) => expect(guessedWord('stage', typed, STAGES)).toBe(stage));

test.each([
  ['完了', 'done'],
  ['済', 'done'],
  ['リテイク', 'retake'],
  ['作業中', 'started'],
  ['donne', 'done'],
])('the state %s is meant for %s', (typed, state) =>
  expect(guessedWord('state', typed, ['started', 'done', 'retake'])).toBe(state),
);

test('a stage that the episode has not is none, and neither is any other word', () => {
  expect(guessedWord('stage', '撮影', STAGES)).toBeNull();
  expect(guessedWord('stage', '潮待ち', STAGES)).toBeNull();
});
