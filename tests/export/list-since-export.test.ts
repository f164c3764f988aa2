/** What has become of an episode, for programs. */

import { expect, test } from 'vitest';
import { listSince } from '../../src/count/list-since.js';
import { listSinceCsv, listSinceJson } from '../../src/export/list-since-export.js';
import { listOf, row } from '../count/rows.js';
import { records } from './records.js';

// Ten frames at 25 a second last 9.6 frames of the episode.
const before = listOf([row('1', { time: 24 }), row('2', { time: 24 })]);
const now = listOf([row('1', { time: 10, fps: 25 }, { title: 'Rope, close' }), row('3', null)]);
const since = listSince(before, now, (cut) => cut);

test('a row a cut that differs', () => {
  expect(records(listSinceCsv(since))).toEqual([
    ['cut', 'title', 'state', 'runningBefore', 'running', 'change', 'drawingsBefore', 'drawings'],
    ['1', 'Rope, close', 'changed', '24', '10', '-14.4', '0', '0'],
    ['2', '', 'gone', '24', '', '-24', '0', ''],
    ['3', '', 'new', '', '', '', '', ''],
  ]);
});

test('JSON with both totals', () => {
  expect(JSON.parse(listSinceJson('v2', since))).toEqual({
    version: 1,
    since: 'v2',
    before: { cuts: 2, fps: 24, running: 48, drawings: 0, budget: null, over: null, unsound: 0, untimed: 0 },
    now: { cuts: 2, fps: 24, running: 10, drawings: 0, budget: null, over: null, unsound: 0, untimed: 1 },
    unchanged: 0,
    reordered: false,
    cuts: [
      expect.objectContaining({ cut: '1', change: -14.4 }),
      expect.objectContaining({ cut: '2', now: null, change: -24 }),
      expect.objectContaining({ cut: '3', before: null, change: null }),
    ],
  });
});
