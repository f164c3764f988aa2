import { describe, expect, test } from 'vitest';
import { bindText, withLines } from '../bind.js';

describe('a setting of the cut', () => {
  test.each([
    ['fps 0', 'fps-range'],
    ['on 0', 'on-range'],
    ['numbering frames', 'unknown-numbering'],
  ])('%s gives %s', (line, code) => {
    expect(withLines(line).codes).toEqual([`error ${code}`]);
  });

  test('stands before that of the episode; a wrong one leaves that', () => {
    const of = (line: string) =>
      bindText(`cut 1\ntime 5\n${line}\nA: 1..\n`, [], { fps: 25, on: 3, numbering: 'frame' }).shot!;
    expect(of('fps 30')).toMatchObject({ fps: 30, on: 3, numbering: 'frame' });
    expect(of('fps 0').fps).toBe(25);
    expect(of('on 1').on).toBe(1);
    expect(of('on 0').on).toBe(3);
    expect(of('numbering sequence').numbering).toBe('sequence');
    expect(of('numbering frames').numbering).toBe('frame');
  });

  test('of frames a second is 1 to 120, whole', () => {
    expect(withLines('fps 1').codes).toEqual([]);
    expect(withLines('fps 120').codes).toEqual([]);
    expect(withLines('fps 121').codes).toEqual(['error fps-range']);
  });

  test('that is misspelt is guessed at, where it is near', () => {
    const fix = (line: string) => withLines(line).diagnostics[0]!.fix?.edits.map(({ text }) => text);
    expect(fix('numbering frames')).toEqual(['frame']);
    expect(fix('numbering backwards')).toBeUndefined();
  });
});

test('the header says what is written, artists by name', () => {
  const { shot } = bindText(
    'cut 12A "Rooftop"\ntime 5+0\nscene 3\ntake "3 of 5"\nartist "B"\nartist "A"\nA: 1..\n',
  );
  expect(shot).toMatchObject({
    cut: '12A',
    title: 'Rooftop',
    scene: '3',
    take: '3 of 5',
    artists: ['A', 'B'],
  });
});

describe('the time of a cut', () => {
  const codes = (time: string) => bindText(`cut 1\n${time}\nA: 1..\n`).codes;

  test('is wanted, and at least one frame', () => {
    expect(codes('')).toEqual(['error time-missing']);
    expect(codes('time 0+0')).toEqual(['error time-zero']);
    expect(codes('time 1')).toEqual([]);
  });

  test('is ten minutes at most', () => {
    expect(codes('time 600+0')).toEqual([]);
    expect(codes('time 600+1')).toEqual(['error time-too-long']);
    expect(codes('time 3600+0')).toEqual(['error time-too-long']);
  });

  test('that cannot be read is not called missing', () => {
    expect(codes('time "five"')).toEqual([]);
  });
});

describe('an accepted message', () => {
  test('must be one that there is: did you mean', () => {
    const { codes, diagnostics } = withLines('accept mark-unsed "for the retake"');
    expect(codes).toEqual(['error accept-unknown']);
    expect(diagnostics[0]!.fix!.edits[0]!.text).toBe('mark-unused');
    expect(withLines('accept whatever-it-is "why not"').diagnostics[0]!.fix).toBeUndefined();
  });

  test('is no error', () => {
    expect(withLines('accept timeline-short "drawn later"').codes).toEqual(['error accept-error']);
  });

  test('is accepted once', () => {
    expect(withLines('accept mark-unused "a"', 'accept mark-unused "b"').codes).toEqual([
      'error statement-twice',
    ]);
  });
});
