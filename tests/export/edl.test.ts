import { describe, expect, test } from 'vitest';
import { edlText } from '../../src/export/edl.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';
import { run } from '../command/run.js';
import { soundEdit } from './edit.js';

const list = (cuts: readonly string[], start = 0) => edlText(soundEdit(cuts), start);
const lines = (cuts: readonly string[], start = 0) => list(cuts, start).text!.split('\r\n');
const faults = (cuts: readonly string[], start = 0) => {
  const { text, diagnostics } = list(cuts, start);
  expect(text === null).toBe(diagnostics.length > 0);
  return diagnostics.map((one) => `${one.code}: ${messageOf(one, 'en')}`);
};

describe('an edit list', () => {
  test('has a line for each cut and a remark with its name', () => {
    expect(lines(['cut 1 "Salt marsh"\ntime 1+12', 'time 1+0'], 24)).toEqual([
      'TITLE: ',
      'FCM: NON-DROP FRAME',
      '',
      '001  C1       V     C        00:00:00:00 00:00:01:12 00:00:01:00 00:00:02:12',
      '* FROM CLIP NAME: 1 Salt marsh',
      '002  C2       V     C        00:00:00:00 00:00:01:00 00:00:02:12 00:00:03:12',
      '* FROM CLIP NAME: 2',
      '',
    ]);
  });

  test('has a dissolve as two lines of one number', () => {
    expect(lines(['time 2+0\noverlap out 12', 'time 2+0\noverlap in 12']).slice(3)).toEqual([
      '001  C1       V     C        00:00:00:00 00:00:01:18 00:00:00:00 00:00:01:18',
      '* FROM CLIP NAME: 1',
      '002  C1       V     C        00:00:01:18 00:00:01:18 00:00:01:18 00:00:01:18',
      '002  C2       V     D    012 00:00:00:00 00:00:02:06 00:00:01:18 00:00:04:00',
      '* FROM CLIP NAME: 1',
      '* TO CLIP NAME: 2',
      '',
    ]);
  });

  test('tells of fades, which are in the picture', () => {
    const text = lines(['time 2+0\nfade in 1..12\nfade out white 37..48']).join('\n');
    expect(text).toContain(
      '* COMMENT: FADE IN FROM BLACK ON FRAMES 1 TO 12 OF THE SHEET, DONE IN THE PICTURE',
    );
    expect(text).toContain(
      '* COMMENT: FADE OUT TO WHITE ON FRAMES 37 TO 48 OF THE SHEET, DONE IN THE PICTURE',
    );
  });

  test('a title cannot make a line of its own', () => {
    const text = lines(['cut 1 "a\\n002  BL       V     C"\ntime 12']);
    expect(text.filter((line) => line.startsWith('002'))).toEqual([]);
  });
});

describe('what it cannot hold is an error', () => {
  test('other speeds', () => {
    expect(faults(['fps 12\ntime 12'])).toEqual([
      'edit-list-limit: An edit list counts 24, 25 or 30 frames a second, but cut 1 runs at 12.',
    ]);
    for (const fps of [24, 25, 30]) expect(faults([`fps ${fps}\ntime 12`])).toEqual([]);
  });

  test('more than 999 cuts', () => {
    const cuts = Array.from({ length: 1000 }, () => 'time 12');
    expect(faults(cuts.slice(1))).toEqual([]);
    expect(faults(cuts)[0]).toMatch(/^edit-list-limit: .* 999 events .* these are 1000 cuts: cut 1000 is/);
  });

  test('a dissolve of more than three digits', () => {
    const cuts = (length: number) => [
      `time 100+0\noverlap out ${length}`,
      `time 100+0\noverlap in ${length}`,
    ];
    expect(list(cuts(999)).text).not.toBeNull();
    expect(faults(cuts(1000))[0]).toContain('dissolves of 999 frames at most');
  });

  test('a dissolve of more than 255 frames is written, with a warning', () => {
    // From memory: the longest dissolve that manuals of edit controllers name, one byte.
    const cuts = (length: number) => [
      `time 100+0\noverlap out ${length}`,
      `time 100+0\noverlap in ${length}`,
    ];
    expect(list(cuts(255)).diagnostics).toEqual([]);
    const { text, diagnostics } = list(cuts(256));
    expect(text).toContain('D    256');
    expect(diagnostics).toMatchObject([{ code: 'edit-list-long', severity: 'warning' }]);
  });

  test('a record past 24 hours', () => {
    const day = 24 * 3600 * 24;
    expect(faults(['time 1+0', 'time 1+0'], day - 49)).toEqual([]);
    expect(faults(['time 1+0', 'time 1+0'], day - 47)[0]).toContain('cut 2 would run past that');
  });
});

describe('export --edit', () => {
  const FILES = { 'ep/cuts/1.cut': 'cut 1\ntime 12\nA: 1..\n', 'ep/cuts/2.cut': 'cut 2\ntime 12\nA: 1..\n' };
  const written = (host: ReturnType<typeof memoryHost>, path: string) =>
    Buffer.from(host.files.get(`/work/${path}`)!).toString();

  test('writes one file, called as the folder is where a folder is named', async () => {
    const host = memoryHost({ ...FILES, 'ep/episode.yaml': 'title: Samphire Ferry\nepisode: 3\n' });
    const { status, out, error } = await run(host, 'export', 'ep', '--edit', 'edl', '-o', 'out/');
    expect([status, out, error]).toEqual([0, '', 'wrote out/ep.edl: 2 cuts, 1+0\n']);
    expect(written(host, 'out/ep.edl')).toMatch(/^TITLE: Samphire Ferry 3\r\n/);
    await run(host, 'export', 'ep', '--edit', 'otio', '-o', 'out/other.otio');
    expect(JSON.parse(written(host, 'out/other.otio')).name).toBe('Samphire Ferry 3');
  });

  test('a folder without a manifest goes in the order of numbers: 2 before 10', async () => {
    const files = Object.fromEntries(
      [10, 2, 1].map((n) => [`cuts/c${n}.cut`, `cut ${n}\ntime 12\nA: 1..\n`]),
    );
    const { out } = await run(memoryHost(files), 'export', 'cuts', '--edit', 'edl');
    expect([...out.matchAll(/NAME: (\d+)/g)].map(([, cut]) => cut)).toEqual(['1', '2', '10']);
    expect(out).toMatch(/^TITLE: cuts\r\n/);
  });

  test('one cut with errors, and nothing is written', async () => {
    const host = memoryHost({ ...FILES, 'ep/cuts/3.cut': 'cut 3\ntime 12\nA: 1--2\n' });
    const { status, error } = await run(host, 'export', 'ep', '--edit', 'edl', '-o', 'a.edl');
    expect(status).toBe(1);
    expect(error).toContain('no edit written: 1 cut with errors, 1 error');
    expect(host.files.has('/work/a.edl')).toBe(false);
  });

  test('house files are no clips', async () => {
    const { out } = await run(
      memoryHost({ ...FILES, 'ep/house.cut': 'phrase a = 1-2\n' }),
      'export',
      'ep',
      '--edit',
      'edl',
    );
    expect(out.match(/^\d{3} /gm)).toHaveLength(2);
  });

  test.each([
    [['--start', '1:00:00:00'], '1:00:00:00', 'such as 01:00:00:00'],
    [['--start', '01:00:00;00'], '01:00:00;00', 'such as 01:00:00:00'],
    [['--start', '24:00:00:00'], '24:00:00:00', 'such as 01:00:00:00'],
    [['--start', '00:00:00:24'], '00:00:00:24', 'frames up to 23: the cuts run at 24 a second'],
    [['--table', 'camera'], '--table', 'do not go together'],
    [['--pixels'], '--pixels', 'do not go together'],
    [['-o', 'ep/cuts/1.cut'], 'ep/cuts/1.cut', 'not written over'],
  ])('%j is wrong use', async (more, word, said) => {
    const { status, out, error } = await run(memoryHost(FILES), 'export', 'ep', '--edit', 'edl', ...more);
    expect([status, out]).toEqual([2, '']);
    expect(error).toContain(word);
    expect(error).toContain(said);
  });

  test('two episodes are no edit, and a start needs one', async () => {
    const files = {
      ...FILES,
      'ep/episode.yaml': '',
      'other/episode.yaml': '',
      'other/1.cut': FILES['ep/cuts/1.cut'],
    };
    const two = await run(memoryHost(files), 'export', 'ep', 'other', '--edit', 'otio');
    expect([two.status, two.error]).toEqual([2, expect.stringContaining('cuts are of 2 episodes')]);
    const start = await run(memoryHost(FILES), 'export', 'ep/cuts/1.cut', '--start', '01:00:00:00');
    expect([start.status, start.error]).toEqual([2, expect.stringContaining('goes with `--edit`')]);
  });
});
