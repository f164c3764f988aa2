import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('a timeline shows nothing, or too little', () => {
  expect(said('timeline-short', { level: 'A', shown: 0, time: 24, rows: 24 })).toMatch(
    /^Level A shows nothing on any of 24 frames:/,
  );
  expect(said('timeline-short', { level: 'A', shown: 23, time: 24, rows: 24 })).toBe(
    'Level A shows 23 of 24 frames: 1 frame missing, from frame 24 on.',
  );
});

test('a timeline shows too much, or beyond all count', () => {
  expect(said('timeline-long', { level: 'A', shown: 40, time: 24, rows: 36 })).toBe(
    'Level A shows 40 frames, but the sheet has 24 + 12 handle: 4 frames too many, from here on.',
  );
  expect(said('timeline-long', { level: 'A', shown: null, time: 24, rows: 24 })).toBe(
    'Level A shows far more frames than there are, from here on: the sheet has 24.',
  );
});

test('a group that shows nothing may be a phrase', () => {
  expect(said('group-empty', { phrase: null })).toBe('This group shows nothing.');
  expect(said('group-empty', { phrase: 'walk' })).toBe('Phrase `walk` shows nothing.');
});

test('a drawing is missing on a way, or on any', () => {
  const missing = { level: 'A', drawing: '1.3', key: '1' };
  expect(said('reference-missing', { ...missing, to: null, way: '2', count: 1 })).toBe(
    'Level A has no drawing 1.3: from key 1 to key 2 there is 1 in-between.',
  );
  expect(said('reference-missing', { ...missing, to: null, way: '2', count: 2 })).toMatch(
    /there are 2 in-betweens\.$/,
  );
  expect(said('reference-missing', { ...missing, to: null, way: null, count: 0 })).toMatch(
    /: no in-between leads from key 1\.$/,
  );
  expect(said('reference-missing', { ...missing, to: '4', way: '4', count: 0 })).toMatch(
    /: no in-between leads from key 1 to key 4\.$/,
  );
});

test('five keys of many are named', () => {
  const several = (keys: string[]) =>
    said('reference-ambiguous', { level: 'A', drawing: '1.1', key: '1', keys });
  expect(several(['2', '3', '4', '5', '6'])).toContain('(2, 3, 4, 5, 6)');
  expect(several(['2', '3', '4', '5', '6', '7'])).toContain('(2, 3, 4, 5, 6 …)');
});

test('of drawings that a chart moves the first says the way', () => {
  const moved = [
    { cel: 2, name: '1.1', was: 1 / 3, is: 1 / 4 },
    { cel: 3, name: '1.2', was: 2 / 3, is: 1 / 2 },
  ];
  expect(said('chart-drawn', { level: 'A', from: '1', to: '2', moved })).toBe(
    'On paper A2 (1.1) lies at 1/3 of the way from key 1 to key 2, A3 (1.2) at 2/3; this chart says 1/4, 1/2.',
  );
});

test('keys that are never seen are told, ten at most', () => {
  const unseen = (count: number) =>
    said('drawing-never-seen', { level: 'A', keys: Array.from({ length: count }, (_, i) => String(i + 1)) });
  expect(unseen(1)).toBe('Key 1 of level A would come after the end, and is never seen.');
  expect(unseen(10)).toMatch(/^Keys 1, 2, 3, 4, 5, 6, 7, 8, 9, 10 of level A/);
  expect(unseen(11)).toMatch(/^Keys 1, 2, 3, 4, 5, 6, 7, 8, 9, 10 … of level A/);
});

test('a flash is a drawing, or an empty level', () => {
  expect(said('one-frame-flash', { level: 'A', drawing: null, frame: 9 })).toBe(
    'Level A is empty for 1 frame only, frame 9, between two holds.',
  );
  expect(said('one-frame-flash', { level: 'A', drawing: '2', frame: 9 })).toMatch(
    /^Drawing 2 of level A is seen for 1 frame only/,
  );
});

test('one key is left out, or several', () => {
  const jump = (first: number, last: number) =>
    said('key-jump', { key: '5', level: 'A', after: '2', first, last });
  expect(jump(3, 3)).toMatch(/; there is no key 3\.$/);
  expect(jump(3, 4)).toMatch(/; keys 3 to 4 are not there\.$/);
});
