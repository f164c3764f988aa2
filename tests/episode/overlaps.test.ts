import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { noteOf } from '../../src/language/message.js';
import { withEdits } from '../../src/language/statement-reader.js';
import { run } from '../command/run.js';
import { codes, compiled, compiledIn, cut, told } from './episode.js';

/** Cuts 1, 2 and 3 in a row, with these lines. */
const row = (one: string, two: string, three = '') => ({
  '1.cut': cut('1', one),
  '2.cut': cut('2', two),
  '3.cut': cut('3', three),
});
const about = async (one: string, two: string, arg = '.', three = '') => {
  const cuts = await compiled(row(one, two, three), arg);
  return Object.fromEntries(Object.entries(cuts).map(([name, each]) => [name, told(each, 'overlap')]));
};

describe('an overlap', () => {
  test('that both cuts name with one length is right, however it is written', async () => {
    expect(await about('overlap out 24', 'overlap in 1+0')).toEqual({
      '1.cut': [],
      '2.cut': [],
      '3.cut': [],
    });
    expect(await about("overlap out 1'08", 'overlap in 24\noverlap out 2', '.', 'overlap in 2')).toEqual({
      '1.cut': [],
      '2.cut': [],
      '3.cut': [],
    });
  });

  test('of two lengths is an error of both cuts', async () => {
    expect(await about('overlap out 24', 'overlap in 12')).toEqual({
      '1.cut': ['overlap-differs 24: This overlap lasts for 24 frames, but cut 2 has 12 for it.'],
      '2.cut': ['overlap-differs 12: This overlap lasts for 12 frames, but cut 1 has 24 for it.'],
      '3.cut': [],
    });
  });

  test('points to what the other cut says, and its text can be shown', async () => {
    const { '1.cut': one } = await compiled(row('overlap out 24', 'overlap in 0+12'), '1.cut');
    const [note] = one!.diagnostics.find(({ code }) => code === 'overlap-differs')!.notes;
    const span = note!.span!;
    expect([span.file, noteOf(note!, 'en')]).toEqual(['2.cut', 'cut 2 says it here']);
    expect(one!.sources.get(span.file)!.slice(span.start, span.end)).toBe('0+12');
  });

  test('takes the length that the other cut has, when the edit is made', async () => {
    const files = row('overlap out 24', 'overlap in 0+12');
    const { '1.cut': one } = await compiled(files, '1.cut');
    const { fix } = one!.diagnostics.find(({ code }) => code === 'overlap-differs')!;
    const mended = withEdits(
      files['1.cut'],
      fix!.edits.map(({ span, text }) => ({ ...span, text })),
    );
    expect(mended).toBe(cut('1', 'overlap out 0+12'));
    const after = await compiled({ ...files, '1.cut': mended });
    expect(told(after['1.cut'], 'overlap')).toEqual([]);
    expect(told(after['2.cut'], 'overlap')).toEqual([]);
  });

  test('that only one cut names is a warning of both', async () => {
    expect(await about('', 'overlap out 1+0')).toEqual({
      '1.cut': [],
      '2.cut': ['overlap-unanswered overlap out 1+0: Cut 3 has no `overlap in 1+0` to go with this overlap.'],
      '3.cut': [
        'overlap-missing cut 3: Cut 2 ends in an overlap of 24 frames with this cut, which has no `overlap in`.',
      ],
    });
    expect(await about('', 'overlap in 1+0')).toEqual({
      '1.cut': [
        'overlap-missing cut 1: Cut 2 begins in an overlap of 24 frames with this cut, which has no `overlap out`.',
      ],
      '2.cut': ['overlap-unanswered overlap in 1+0: Cut 1 has no `overlap out 1+0` to go with this overlap.'],
      '3.cut': [],
    });
  });

  test('that is missing can be added below the time, behind a comment of that line', async () => {
    const files = { ...row('overlap out 1+0', ''), '2.cut': 'cut 2\ntime 2+0 # two\n\nA: 1..\n' };
    const { '2.cut': two } = await compiled(files, '2.cut');
    const { fix } = two!.diagnostics.find(({ code }) => code === 'overlap-missing')!;
    const mended = withEdits(
      files['2.cut'],
      fix!.edits.map(({ span, text }) => ({ ...span, text })),
    );
    expect(mended).toBe('cut 2\ntime 2+0 # two\noverlap in 1+0\n\nA: 1..\n');
    const after = await compiled({ ...files, '2.cut': mended });
    expect([codes(after['1.cut']), codes(after['2.cut'])]).toEqual([[], []]);
  });

  test('is checked the same, whether one cut is named or all', async () => {
    const all = await about('overlap out 24', 'overlap in 12\noverlap out 8', '.', 'overlap in 6');
    for (const name of ['1.cut', '2.cut', '3.cut']) {
      const alone = await about('overlap out 24', 'overlap in 12\noverlap out 8', name, 'overlap in 6');
      expect(alone).toEqual({ [name]: all[name] });
    }
  });

  test('before the first cut and behind the last has nobody', async () => {
    expect(await about('overlap in 24', '', '.', 'overlap out 24')).toEqual({
      '1.cut': [
        'overlap-alone overlap in 24: This is the first cut of the episode: there is no cut to overlap with.',
      ],
      '2.cut': [],
      '3.cut': [
        'overlap-alone overlap out 24: This is the last cut of the episode: there is no cut to overlap with.',
      ],
    });
  });

  test('of cuts at two speeds cannot be', async () => {
    expect(await about('overlap out 24', 'fps 12\noverlap in 24')).toMatchObject({
      '1.cut': [
        'overlap-fps 24: Cut 2 runs at 12 frames a second and this cut at 24: they cannot overlap frame by frame.',
      ],
      '2.cut': [
        'overlap-fps 24: Cut 1 runs at 24 frames a second and this cut at 12: they cannot overlap frame by frame.',
      ],
    });
  });
});

test('in an export has its place in the text of its own cut, though the other file has the same name', async () => {
  const files = {
    'episode.yaml': '',
    'day/c.cut': `# the day\n\n\n${cut('1', 'overlap out 1+0')}`,
    'night/c.cut': cut('2'),
  };
  const host = memoryHost(files);
  const { out } = await run(host, 'export', 'day/c.cut');
  const { diagnostics } = JSON.parse(out) as {
    diagnostics: { code: string; line: number; column: number }[];
  };
  expect(diagnostics.map(({ code, line, column }) => [code, line, column])).toEqual([
    ['overlap-unanswered', 6, 1],
  ]);
});

describe('errors of the neighbour', () => {
  test.each([
    ['a broken overlap', 'cut 2\ntime 2+0\noverlap in\nA: 1..\n'],
    ['no time', 'cut 2\noverlap in 24\nA: 1..\n'],
    ['an overlap longer than its sheet', 'cut 2\ntime 2+0\noverlap in 9+0\nA: 1..\n'],
    ['an overlap that is no length', 'cut 2\ntime 2+0\nmark m 3\noverlap in m\nA: @m 1..\n'],
  ])('%s: a hint, and no fault of this cut', async (_, two) => {
    const { '1.cut': one } = await compiled({ ...row('overlap out 24', ''), '2.cut': two }, '1.cut');
    expect(codes(one)).toEqual(['overlap-unchecked']);
  });

  test('elsewhere in its text do not matter', async () => {
    const { '1.cut': one } = await compiled(row('overlap out 24', 'overlap in 24\nzzz\nB: 1'), '1.cut');
    expect(codes(one)).toEqual([]);
  });

  test('a file that may not be read', async () => {
    const host = memoryHost({ 'episode.yaml': '', ...row('overlap out 24', '') });
    host.locked.add('/work/2.cut');
    const { '1.cut': one } = await compiledIn(host, '1.cut');
    expect(told(one, 'overlap')).toEqual([
      'overlap-unchecked 24: Whether `2.cut` names the same length cannot be told: it cannot be read.',
    ]);
  });

  test('say nothing of a cut that does not overlap', async () => {
    const { '1.cut': one } = await compiled(
      { ...row('', ''), '2.cut': 'cut 2\noverlap in\nA: 1..\n' },
      '1.cut',
    );
    expect(codes(one)).toEqual([]);
  });
});

describe('outside an episode', () => {
  test('overlaps are not looked at, and no other file is read', async () => {
    const host = memoryHost(row('overlap out 24', 'overlap in 12'));
    expect(codes((await compiledIn(host, '1.cut'))['1.cut'])).toEqual([]);
  });

  test('nor those of a cut that the manifest does not list', async () => {
    const files = {
      ...row('', ''),
      'episode.yaml': 'cuts: [1.cut, 2.cut]\n',
      'x.cut': cut('9', 'overlap out 8'),
    };
    expect(codes((await compiled(files, 'x.cut'))['x.cut'])).toEqual([]);
  });
});

test('another version of a cut, and standard input, stand where their number does', async () => {
  const files = {
    ...row('overlap out 24', ''),
    'episode.yaml': 'cuts: [1.cut, 2.cut, 3.cut]\n',
    'retake/2.cut': cut('02', 'overlap in 12'),
  };
  const { 'retake/2.cut': two } = await compiled(files, 'retake/2.cut');
  expect(codes(two)).toEqual(['overlap-differs']);
});
