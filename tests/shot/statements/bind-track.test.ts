import { describe, expect, test } from 'vitest';
import { compileText } from '../../compile.js';
import { explained } from '../../explained.js';

const track = (line: string) => {
  const { shot, diagnostics } = compileText(`cut 1\nfps 25\ntime 2+0\nA: 1..\n${line}\n`);
  return { track: shot?.track, codes: diagnostics.map(({ code }) => code) };
};

describe('the recording of a cut', () => {
  test.each([
    ['track "a.wav"', { file: 'a.wav', frame: 1, startSeconds: 0, startSpan: null }],
    ['track "a.wav" @1+1', { frame: 26, startSeconds: 0 }],
    ['track "a.wav" from 12s', { frame: 1, startSeconds: 12 }],
    ['track "a.wav" from 12.48s', { startSeconds: 12.48 }],
    ['track "a.wav" @13 from 0:03:12:05', { frame: 13, startSeconds: 192.2 }],
    [
      'track 「音/a.wav」　＠１３　ｆｒｏｍ　１：００：００：００',
      { file: '音/a.wav', frame: 13, startSeconds: 3600 },
    ],
    ['mark hit 1+5\ntrack "a.wav" @hit-3', { frame: 27 }],
  ])('%s', (line, expected) => {
    expect(track(line)).toMatchObject({ track: expected, codes: ['track-missing'] });
  });

  test('none', () => {
    expect(track('')).toEqual({ track: null, codes: [] });
  });

  test.each([
    ['track "a.wav" @2+1', 'track-past-end'],
    ['track "a.wav" @0', 'position-zero'],
    ['track "a.wav" from 0:00:12:25', 'timecode-range'],
    ['track "a.wav" from 0:60:12:00', 'timecode-range'],
    ['track "a.wav" from 12', 'does-not-fit'],
    ['track "a.wav" from', 'stops-short'],
    ['track a.wav', 'missing-quotes'],
  ])('%s is an error', (line, code) => {
    expect(track(line)).toMatchObject({ track: null, codes: [code] });
  });

  test('a second one is an error that shows the first', () => {
    expect(track('track "a.wav"\ntrack "b.wav"')).toMatchObject({
      track: { file: 'a.wav' },
      codes: ['track-missing', 'statement-twice'],
    });
  });

  test('drawings may be called 3s and 1.1s as before', () => {
    const { solved, diagnostics } = compileText('cut 1\ntime 0+8\nA: 3s:4 4..\n');
    expect(diagnostics).toEqual([]);
    expect(solved!.levels[1]!.drawings[0]!.drawing).toBe('3s');
    const pinned = compileText('cut 1\ntime 8\nA: 1--2..\ncels A 1 1.1s 1.2 2\n');
    expect(pinned.shot!.levels[1]!.pinned!.names[1]).toMatchObject({ form: 'between' });
  });
});

describe('what is said of a recording, in full', () => {
  test.each<[string, string, string[]]>([
    [
      'a recording from behind the end',
      'time 2+0\ntrack "a.wav" @49',
      ['error «49» The recording begins on row 49, but the sheet has 48 rows.'],
    ],
    ['one on the last row', 'time 2+0\ntrack "a.wav" @48', ['warning «"a.wav"» There is no file `a.wav`.']],
    [
      'a timecode with too many minutes',
      'time 2+0\ntrack "a.wav" from 0:60:00:00',
      [
        'error «0:60:00:00» There is no such timecode: minutes and seconds go up to 59, frames up to 23 at 24 frames a second.',
      ],
    ],
    [
      'a timecode with too many seconds',
      'time 2+0\ntrack "a.wav" from 0:00:60:00',
      [
        'error «0:00:60:00» There is no such timecode: minutes and seconds go up to 59, frames up to 23 at 24 frames a second.',
      ],
    ],
    [
      'a timecode with too many frames',
      'time 2+0\ntrack "a.wav" from 0:00:01:24',
      [
        'error «0:00:01:24» There is no such timecode: minutes and seconds go up to 59, frames up to 23 at 24 frames a second.',
      ],
    ],
    [
      'a timecode with all there may be',
      'time 2+0\ntrack "a.wav" from 0:59:59:23',
      ['warning «"a.wav"» There is no file `a.wav`.'],
    ],
  ])('%s', (_, lines, said) => expect(explained(`cut 1\n${lines}\n`)).toEqual(said));
});
