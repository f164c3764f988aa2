import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../src/language/diagnostic.js';
import { messageOf } from '../../src/language/message.js';
import { compileText } from '../compile.js';
import { tone, wave } from '../sound/wave-writer.js';

const RATE = 4000;

/** A cut of two seconds with a recording. */
function cut(lines: string, samples: Float32Array) {
  const text = `cut 1\ntime 2+0\nA: 1..\n${lines}\n`;
  const { solved, diagnostics } = compileText(text, { 'a.wav': wave(samples, { rate: RATE }) });
  return { track: solved!.track!, said: diagnostics.map(sentence) };
}
const sentence = (one: Diagnostic): string => `${one.severity} ${one.code}: ${messageOf(one, 'en')}`;
const speech = (...times: readonly (readonly [number, number])[]): Float32Array => {
  const all = times.map(([from, to]) => tone(2, from, to, RATE));
  return Float32Array.from(all[0]!, (_, i) => all.reduce((sum, one) => sum + one[i]!, 0));
};

describe('the rows on which there is recording', () => {
  test.each([
    ['track "a.wav"', 2, { from: 1, to: 48 }],
    ['track "a.wav" @7', 2, { from: 7, to: 48 }],
    ['track "a.wav"', 1, { from: 1, to: 24 }],
    ['track "a.wav" from 1.5s', 2, { from: 1, to: 12 }],
    ['track "a.wav" @13 from 0:00:01:12', 2, { from: 13, to: 24 }],
    ['track "a.wav" from 60s', 2, null],
  ])('%s of %d s', (line, seconds, heard) => {
    expect(cut(line, tone(seconds, 0, seconds, RATE)).track.heard).toEqual(heard);
  });
});

describe('another length than that of the cut', () => {
  test.each([
    ['track "a.wav"', 1, 'hint track-length: The recording ends on row 24, 24 rows before the sheet.'],
    [
      'track "a.wav"',
      3,
      'hint track-length: The recording goes on for 24 frames after the last row of the sheet.',
    ],
    [
      'track "a.wav" from 0.5s',
      2,
      'hint track-length: The recording ends on row 36, 12 rows before the sheet.',
    ],
    [
      'track "a.wav" from 60s',
      2,
      'warning track-start: The recording lasts for 2 s, so nothing is heard from 60 s on.',
    ],
  ])('%s of %d s', (line, seconds, message) => {
    const voice = 'voice "Nao" 1..2+0 "Wait"';
    expect(cut(`${line}\n${voice}`, tone(seconds, 0, seconds, RATE)).said).toContain(message);
  });

  test('half a frame is no other length, and a reel may be longer', () => {
    const voice = 'voice "Nao" 1..2+0 "Wait"';
    expect(cut(`track "a.wav"\n${voice}`, tone(2.02, 0, 2.02, RATE)).said).toEqual([]);
    expect(cut(`track "a.wav"\n${voice}`, tone(1.98, 0, 1.98, RATE)).said).toEqual([]);
    expect(cut(`track "a.wav" from 1s\n${voice}`, tone(9, 0, 9, RATE)).said).toEqual([]);
  });
});

describe('speech where it is silent, and the other way round', () => {
  test.each([
    ['a line where it is heard', 'voice "Nao" 13..24 "Wait"', []],
    ['a row or two off', 'voice "Nao" 15..26 "Wait"', []],
    [
      'a line that is not heard at all',
      'sound 13..24 "bell"\nvoice "Nao" 30..46 "Wait"',
      ['hint voice-unheard: Nothing is heard on the rows of this line.'],
    ],
    [
      'a line that is too long',
      'voice "Nao" 13..44 "Wait"',
      ['hint voice-unheard: The recording is silent on rows 25 to 44 of this line.'],
    ],
    [
      'nothing written',
      '',
      ['hint sound-unwritten: Something is heard on rows 13 to 24, and nothing is written there.'],
    ],
    ['a sound that is written', 'sound 13..24 "bell"', []],
  ])('%s', (_, line, said) => {
    expect(cut(`track "a.wav"\n${line}`, speech([0.5, 1])).said).toEqual(said);
  });

  test('gaps shorter than a fifth of a second are no silence', () => {
    const { said } = cut('track "a.wav"\nvoice "Nao" 1..48 "Wait"', speech([0, 0.6], [0.75, 1.2], [1.35, 2]));
    expect(said).toEqual([]);
  });

  test('a recording of nothing but noise far below', () => {
    const hum = tone(2, 0, 2, RATE, 0.001);
    expect(cut('track "a.wav"\nvoice "Nao" 1..48 "Wait"', hum).said).toEqual([
      'hint track-silent: The recording is silent on all rows of the sheet.',
    ]);
  });

  test('a quiet voice over noise counts', () => {
    const samples = tone(2, 0.5, 1, RATE, 0.05).map((one, i) => one + 0.002 * Math.sin(i * 1.7));
    expect(cut('track "a.wav"\nvoice "Nao" 13..24 "Wait"', samples).said).toEqual([]);
  });
});

describe('how much counts as heard, and as written', () => {
  const told = (lines: string, ...times: readonly (readonly [number, number])[]) =>
    cut(`track "a.wav"\n${lines}`, speech(...times)).said.map((one) => one.replace(/^hint /, ''));
  /** Seconds of the rows from..to, a hair inside them. */
  const rows = (from: number, to: number) => [(from - 1) / 24 + 0.001, to / 24 - 0.001] as const;
  const unwritten = (from: number, to: number) =>
    `sound-unwritten: Something is heard on rows ${from} to ${to}, and nothing is written there.`;

  test('half a second of sound wants to be written, a row less does not', () => {
    expect(told('', rows(13, 24))).toEqual([unwritten(13, 24)]);
    expect(told('', rows(13, 23))).toEqual([]);
  });

  test('sounds with a fifth of a second between them are one', () => {
    expect(told('', rows(1, 6), rows(12, 17))).toEqual([unwritten(1, 17)]);
    expect(told('', rows(1, 6), rows(13, 18))).toEqual([]);
  });

  test('a line is written near enough within three rows', () => {
    expect(told('voice "Nao" 16..2+0 "Wait"', [0, 2])).toEqual([unwritten(1, 12)]);
    expect(told('voice "Nao" 15..2+0 "Wait"', [0, 2])).toEqual([]);
    expect(told('voice "Nao" 1..33 "Wait"', [0, 2])).toEqual([unwritten(37, 48)]);
    expect(told('voice "Nao" 1..34 "Wait"', [0, 2])).toEqual([]);
  });

  test('a line may be silent for less than half a second', () => {
    const unheard = 'voice-unheard: The recording is silent on rows 25 to 36 of this line.';
    expect(told('voice "Nao" 13..36 "Wait"', [0.5, 1])).toEqual([unheard]);
    expect(told('voice "Nao" 13..35 "Wait"', [0.5, 1])).toEqual([]);
  });

  test('each stretch that is not written is named', () => {
    const [said] = told('', [0, 0.75], [1.25, 2]);
    expect(said).toContain('rows 1 to 18');
    expect(said).toContain('31 to 48');
  });
});

test('a recording that begins on a later row is heard there', () => {
  const samples = speech([0, 1]);
  expect(cut('track "a.wav" @25', samples).said).toEqual([
    'hint sound-unwritten: Something is heard on rows 25 to 48, and nothing is written there.',
    'hint track-length: The recording goes on for 24 frames after the last row of the sheet.',
  ]);
  expect(cut('track "a.wav" @25\nvoice "Nao" 25..48 "Wait"', samples).said).toEqual([
    'hint track-length: The recording goes on for 24 frames after the last row of the sheet.',
  ]);
});

test('a recording is as long as the cut within half a frame', () => {
  const said = (seconds: number) =>
    cut('track "a.wav"\nvoice "Nao" 1..2+0 "Wait"', tone(seconds, 0, seconds, RATE)).said;
  expect(said(2 + 0.4 / 24)).toEqual([]);
  expect(said(2 + 0.75 / 24)).toHaveLength(1);
  expect(said(2 - 0.4 / 24)).toEqual([]);
  expect(said(2 - 0.75 / 24)).toHaveLength(1);
});
