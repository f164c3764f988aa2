import { expect, test } from 'vitest';
import { checkProgress } from '../../src/episode/check-progress.js';
import { openEpisode } from '../../src/episode/manifest.js';
import { parseProgress } from '../../src/episode/progress-csv.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';

const HEAD = 'cut,stage,date,state\n';

/** Severity, place and sentence of what is said. */
function said(rows: string, manifest = '', cuts: readonly string[] | null = ['1', '12A']): string[] {
  const host = memoryHost({ 'episode.yaml': manifest });
  const episode = openEpisode(host, '/work/episode.yaml', 'episode.yaml');
  expect(episode.diagnostics).toEqual([]);
  const text = HEAD + rows;
  const file = parseProgress('progress.csv', text, episode.production.stages);
  return checkProgress(episode, file.rows, cuts).map((one) => {
    const of = one.span.file === 'progress.csv' ? text : manifest;
    return `${one.severity} ${of.slice(one.span.start, one.span.end)}: ${messageOf(one, 'en')}`;
  });
}

test('a row or a day of a cut that is not there is a warning at the number', () => {
  expect(said('1,layout,2027-03-01,\n12B,layout,2027-03-01,\n', 'due: { key 3: 2027-03-01 }\n')).toEqual([
    'warning key 3: A day is due for cut 3, which the episode does not have.',
    'warning 12B: The episode has no cut 12B; did you mean `12A`?',
  ]);
});

test('nothing is said of cuts while the number of one cannot be read', () => {
  expect(said('99,layout,2027-03-01,\n', '', null)).toEqual([]);
});

test('leading zeros and full-width forms do not matter', () => {
  expect(said('０01,layout,2027-03-01,\n012a,layout,2027-03-01,\n')).toEqual([]);
});

test('what does not fit is said at the later row, with the earlier one', () => {
  expect(said('1,layout,2027-03-01,\n1,layout,2027-03-02,\n')).toEqual([
    'warning layout: Cut 1: layout is done already, on 2027-03-01; a row with `retake` would send it back.',
  ]);
  expect(said('1,layout,2027-03-01,\n1,layout,2027-03-02,started\n')[0]).toContain('is started again');
  expect(said('1,key,2027-03-02,\n')).toEqual([
    'hint key: Cut 1: key is done on 2027-03-02, but layout, which comes before it, is not done by then.',
  ]);
  expect(said('1,layout,2027-03-02,retake\n')).toEqual([
    'hint retake: Cut 1: layout is sent back, but it was not done.',
  ]);
});
