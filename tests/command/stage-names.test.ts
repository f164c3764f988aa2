import { expect, test } from 'vitest';
import { stageNames } from '../../src/command/stage-names.js';

test('English has the words that are typed', () => {
  const { stage, state, unit } = stageNames('en');
  expect([stage('second-key'), state('retake'), unit('in-between')]).toEqual([
    'second-key',
    'retake',
    'in-between',
  ]);
});

test('Japanese has those of the paper; a stage of the house keeps its name', () => {
  const { stage, state, unit } = stageNames('ja');
  expect([stage('second-key'), stage('grading'), state('done'), unit('cut')]).toEqual([
    '第二原画',
    'grading',
    '済',
    'カット',
  ]);
});
