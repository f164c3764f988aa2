import { describe, expect, test } from 'vitest';
import { main } from '../../src/command/main.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';

async function run(host: MemoryHost, ...argv: string[]): Promise<number> {
  return main(argv, host);
}

const text = (host: MemoryHost, path: string) =>
  Buffer.from(host.files.get(`/work/${path}`)!).toString('utf8');
const names = (host: MemoryHost) => [...host.files.keys()].map((path) => path.replace('/work/', '')).sort();

/** A host whose current folder is another one. */
const within = (host: MemoryHost, folder: string): MemoryHost =>
  new Proxy(host, { get: (target, key) => (key === 'cwd' ? `/work/${folder}` : Reflect.get(target, key)) });

describe('a new cut', () => {
  const EPISODE = {
    'episode.yaml': 'cuts: ["cuts/*.cut"]\n',
    'house.cut': 'phrase walk = 1--2--\n',
    'cuts/c012.cut': [
      'use "../house.cut"',
      'cut 12 "Sea wall"',
      'time 5+12',
      'artist "H. Tarn"',
      'scene 6',
      'memo "Only here."',
      'stack BG A BOOK1 ア',
      'level BG size 420x160mm at 55,0',
      'A "gulls": walk..',
      'ア: x..',
      'field B 60%   at 10,0',
      'fix B',
      'voice "Pim" 1..24 "Here."',
      '',
    ].join('\n'),
  };

  test('like one with a mouth has a closed one', async () => {
    const host = memoryHost({
      'episode.yaml': '',
      'c012.cut': 'cut 12\ntime 2+0\nA: 1..\nmouth B "Nao" 1 2 3\nvoice "Nao" 1..24 "Wait for me!"\n',
    });
    expect(await run(host, 'new', 'cut', '13', '--like', '12')).toBe(0);
    expect(text(host, 'c013.cut')).toContain('A:       1..\nB "Nao": 1..\n');
  });

  test('like another has its set-up and none of what happens in it', async () => {
    const host = memoryHost(EPISODE);
    expect(await run(host, 'new', 'cut', '13', '--like', '012', '--title', 'Next')).toBe(0);
    expect(text(host, 'cuts/c013.cut')).toBe(
      [
        'use "../house.cut"',
        '',
        'cut 13 "Next"',
        'time 5+12',
        'artist "H. Tarn"',
        'scene 6',
        '',
        'stack BG A BOOK1 ア',
        'level BG size 420x160mm at 55,0',
        '',
        'A "gulls": 1..',
        'ア:        1..',
        '',
        'field B 60% at 10,0',
        'fix B',
        '',
      ].join('\n'),
    );
    expect(await run(host, 'check', 'cuts/c013.cut')).toBe(0);
    expect(host.complaints()).toContain('wrote cuts/c013.cut\nnext: cutwright check cuts/c013.cut\n');
  });

  test('has a key a level, and what the command line says', async () => {
    const host = memoryHost(EPISODE);
    const argv = ['new', 'cut', '12A', '--levels', 'A, B', '--time', "8'04", '--artist', 'R. "Esk"'];
    expect(await run(within(host, 'cuts'), ...argv)).toBe(0);
    expect(text(host, 'cuts/c012A.cut')).toBe(
      'cut 12A\ntime 8\'04\nartist "R. \\"Esk\\""\n\nstack BG A B\n\nA: 1..\nB: 1..\n',
    );
    expect(await run(host, 'check', '--strict', 'cuts/c012A.cut')).toBe(0);
  });

  test('outside any episode lies in this folder, or goes to standard output', async () => {
    const host = memoryHost();
    expect(await run(host, 'new', 'cut', '7')).toBe(0);
    expect(names(host)).toEqual(['c007.cut']);
    expect(await run(host, 'new', 'cut', '8', '--output', '-')).toBe(0);
    expect(host.printed()).toBe('cut 8\ntime 3+0\n\nstack BG A\n\nA: 1..\n');
  });

  test('that the manifest does not list is told so', async () => {
    const host = memoryHost({ ...EPISODE, 'episode.yaml': 'cuts: [cuts/c012.cut]\n' });
    expect(await run(host, 'new', 'cut', '13')).toBe(0);
    expect(host.complaints()).toContain('add it to `cuts:` in episode.yaml');
  });

  test.each([
    [['new', 'cut', '１２'], 'Cut １２ is there already: `cuts/c012.cut`'],
    [
      ['new', 'cut', '13', '--output', 'cuts/c012.cut'],
      '`cuts/c012.cut` is there already; nothing was written',
    ],
    [['new', 'cut', '13', '--output', 'house.txt'], 'ends in .cut'],
    [['new', 'cut', '13', '--like', '112'], 'no cut 112; did you mean 12?'],
    [['new', 'cut', '13', '--time', '5 + 0'], '`--time` takes a length'],
    [['new', 'cut', '13', '--time', '0'], '`--time` takes a length'],
    [['new', 'cut', '13', '--levels', 'A,,B'], '`--levels` takes names'],
    [['new', 'cut', '1-3'], 'letters and digits'],
    [['new', 'cut'], 'needs its number'],
    [['new', 'ct'], 'did you mean `cut`?'],
    [['new', 'episode', 'x', '--like', '12'], '`--like` is for a new cut'],
    [['new', 'episode', 'house.cut'], '`house.cut` is a file'],
  ])('%j is refused', async (argv, message) => {
    const host = memoryHost(EPISODE);
    expect(await run(host, ...argv)).toBe(2);
    expect(host.complaints()).toContain(message);
    expect(names(host)).toEqual(Object.keys(EPISODE).sort());
  });
});

describe('a cut out of a table', () => {
  const GRID = 'frame,A\n1,1\n2,\n3,1.1\n4,\n5,2\n6,\n';

  test('has its levels, and takes its number from the command line', async () => {
    const host = memoryHost({ 'grid.csv': GRID });
    expect(await run(host, 'new', 'cut', '13', '--from-csv', 'grid.csv', '--title', 'Quay')).toBe(0);
    expect(text(host, 'c013.cut')).toBe('cut 13 "Quay"\ntime 0+6\n\nA: 1-2\n');
    expect(await run(host, 'check', '--strict', 'c013.cut')).toBe(0);
  });

  test('or its number is that of the exported table, a file a cut', async () => {
    const host = memoryHost({
      'a.cut': 'cut 4\ntime 0+8\nA: 1-2..\n',
      'b.cut': 'cut 5\ntime 2+0\nB: (1 2)..\n',
    });
    expect(await run(host, 'export', 'a.cut', 'b.cut', '-t', 'exposures', '-o', 'all.csv')).toBe(0);
    expect(await run(host, 'new', 'cut', '--from-csv', 'all.csv', '-o', 'back/')).toBe(0);
    expect(text(host, 'back/c004.cut')).toBe('cut 4\ntime 0+8\n\nA: 1-2..\n');
    expect(text(host, 'back/c005.cut')).toBe('cut 5\ntime 2+0\n\nB: (1 2)..\n');
  });

  test('has a title that holds quotes, and a blank where a line break was typed', async () => {
    const host = memoryHost({ 'grid.csv': GRID });
    expect(await run(host, 'new', 'cut', '13', '--from-csv', 'grid.csv', '--title', 'a "b"\nc')).toBe(0);
    expect(text(host, 'c013.cut')).toContain('cut 13 "a \\"b\\" c"\n');
    expect(await run(host, 'check', '--strict', 'c013.cut')).toBe(0);
  });

  test('goes from standard input to standard output', async () => {
    const host = memoryHost();
    host.input = Buffer.from(GRID);
    expect(await run(host, 'new', 'cut', '1', '--from-csv', '-', '-o', '-')).toBe(0);
    expect(host.printed()).toBe('cut 1\ntime 0+6\n\nA: 1-2\n');
  });

  test.each([
    [['new', 'cut', '--from-csv', 'grid.csv'], 2, 'The table does not say which cut it is'],
    [['new', 'cut', '1', '--from-csv', 'gird.csv'], 2, 'did you mean `grid.csv`?'],
    [['new', 'cut', '1', '--from-csv', 'grid.csv', '--like', '2'], 2, 'do not go together'],
    [['new', 'cut', '1', '--from-csv', 'old.csv'], 1, 'UTF-8'],
    [['new', 'cut', '1', '--from-csv', 'bad.csv'], 1, 'bad.csv:2:3: table-faulty'],
  ])('%j writes nothing', async (argv, status, message) => {
    const host = memoryHost({
      'grid.csv': GRID,
      'old.csv': new Uint8Array([0x66, 0xe9, 0x0a]),
      'bad.csv': 'frame,A\n1,?\n',
    });
    const before = names(host);
    expect(await run(host, ...argv)).toBe(status);
    expect(host.complaints()).toContain(message);
    expect(names(host)).toEqual(before);
  });
});

test('a time in frames that was probably meant in seconds is told', async () => {
  const host = memoryHost();
  expect(await run(host, 'new', 'cut', '5', '--time', '5')).toBe(0);
  expect(host.complaints()).toContain('Hint: This cut lasts 5 frames; were seconds meant, `5+0`?');
  const other = memoryHost();
  await run(other, 'new', 'cut', '5', '--time', '5+0');
  expect(other.complaints()).not.toContain('Hint');
});
