import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { columnsOf, readSheet } from '../sheet/terminal/reader.js';
import { CUT, run, runOn } from './run.js';

const LONG = 'cut 12 "Rooftop, dusk"\ntime 5+0\nA "Nao": 1:12 1--2-3:1+0 (4-5-)*3 6..\nB: x:24 (1--2--)..\n';

/** The frames that have a row. */
const frames = (out: string) => [...readSheet(out.split('\n')).tables[0]!.rows.keys()];

describe('show', () => {
  test('prints the sheet on standard output, and nothing else', async () => {
    const { status, out, error } = await runOn({ 'c012.cut': LONG }, 'show', 'c012.cut');
    expect([status, error]).toEqual([0, '']);
    expect(out.split('\n')[0]).toBe('cut 12 “Rooftop, dusk”');
    expect(frames(out)).toHaveLength(120);
  });

  test('takes standard input', async () => {
    const host = memoryHost();
    host.input = Buffer.from(LONG);
    expect(frames((await run(host, 'show', '-')).out)).toHaveLength(120);
  });

  test.each([
    // As positions in a text: 1+0 is frame 24.
    [['--from', '1+0', '--to', '2+12'], 24, 60, 37],
    [['--from', '37', '--to', '40'], 37, 40, 4],
    [['--from', "1'08"], 24, 120, 97],
    [['--every', '24'], 1, 97, 5],
    [['--from', '100', '--to', '9+0'], 100, 120, 21],
  ])('%j shows frames %i to %i', async (options, first, last, count) => {
    const { out } = await runOn({ 'c012.cut': LONG }, 'show', 'c012.cut', ...options);
    const shown = frames(out);
    expect([shown[0], shown.at(-1), shown.length]).toEqual([first, last, count]);
  });

  test.each([
    [['--from', '0'], '0', 'the first frame is 1'],
    [['--to', '0+0'], '0+0', 'the first frame is 1'],
    [['--from', 'soon'], 'soon', 'such as 37, 1+12'],
    [['--every', '0'], '0', 'from 1 to'],
    [['--width', '20'], '20', 'from 40 to 1000'],
    [['--levels', 'A,Bb'], 'A,Bb', 'There is no level `Bb` here'],
    [['--home', 'nowhere'], 'nowhere', 'takes a folder that is there'],
    [['--from', '20', '--to', '10'], '10', 'lies before'],
    [['--from', '6+0'], '6+0', 'lies behind the end: the sheet has 120 frames'],
  ])('%j is wrong use', async (options, word, said) => {
    const { status, out, error } = await runOn({ 'c012.cut': LONG }, 'show', 'c012.cut', ...options);
    expect([status, out]).toEqual([2, '']);
    expect(error).toContain('option-value');
    expect(error).toContain(word);
    expect(error).toContain(said);
  });

  test('a file that is not there is wrong use, and the others are shown', async () => {
    const { status, out, error } = await runOn({ 'c012.cut': LONG }, 'show', 'c12.cut', 'c012.cut');
    expect(status).toBe(2);
    expect(error).toContain('file-missing');
    expect(frames(out)).toHaveLength(120);
  });

  test('a file that cannot be read is no sheet: said as such, and the others are shown', async () => {
    const host = memoryHost({ 'c012.cut': LONG, 'c013.cut': LONG });
    host.locked.add('/work/c013.cut');
    const { status, out, error } = await run(host, 'show', 'c013.cut', 'c012.cut');
    expect([status, error]).toEqual([
      2,
      'Error: `c013.cut` cannot be read: permission denied.\nc013.cut: file-unreadable\n',
    ]);
    expect(frames(out)).toHaveLength(120);
  });

  test('is as wide as the terminal, or 80, or as the line says', async () => {
    const cut = `${LONG}voice "Nao" 1+6..2+20 "Wait for me, wait for me, wait for me, for the tide will not!"\n${['C', 'D', 'E', 'F', 'G', 'H', 'I', 'J', 'K'].map((one) => `${one}: 1..`).join('\n')}\n`;
    const widest = async (columns: number | null, ...options: string[]) => {
      const host = { ...memoryHost({ 'c012.cut': cut }), columns };
      const { out } = await run(host, 'show', 'c012.cut', ...options);
      return Math.max(...out.split('\n').map(columnsOf));
    };
    expect(await widest(null)).toBeLessThanOrEqual(80);
    expect(await widest(null)).toBeGreaterThan(70);
    expect(await widest(120)).toBeGreaterThan(100);
    expect(await widest(120, '--width', '60')).toBeLessThanOrEqual(60);
    expect(await widest(7)).toBeLessThanOrEqual(40);
  });

  test('several cuts stand one after the other, with an empty line between', async () => {
    const files = { 'c001.cut': CUT, 'c002.cut': CUT.replace('cut 1', 'cut 2') };
    const { out } = await runOn(files, 'show', '.');
    expect([...out.matchAll(/(?:^|\n\n)cut (\d)\n/g)].map(([, number]) => number)).toEqual(['1', '2']);
  });

  test('levels are chosen by name, in full width too', async () => {
    const { out } = await runOn({ 'c012.cut': LONG }, 'show', 'c012.cut', '--levels', 'Ｂ');
    expect(readSheet(out.split('\n')).tables[0]!.heads).toEqual(['s+f  no.', 'B']);
  });

  test('the legend says what every mark of a level means', async () => {
    const { out } = await runOn({ 'c012.cut': LONG }, 'show', 'c012.cut', '--legend', '--to', '3');
    const legend = out.slice(out.lastIndexOf('┘'));
    for (const mark of ['(1)', '-', '=', 'o', '│', '×', '[1]', '╮', '╯', '┌', '└', '═══'])
      expect(legend).toContain(mark);
    expect((await runOn({}, 'show', '--help')).out).toContain('key drawing 1');
  });
});

describe('a cut that is not in order', () => {
  test('is shown as far as it can be, with what is wrong below, and is no failure', async () => {
    const text = 'cut 1\ntime 1+0\nA: 1--2\nB: 1..\nzz\n';
    const { status, out, error } = await runOn({ 'a.cut': text }, 'show', 'a.cut');
    expect([status, error]).toEqual([0, '']);
    expect(frames(out)).toHaveLength(24);
    expect(out).toContain('! 3:7: Error: Level A shows 8 of 24 frames');
    expect(out).toMatch(/^! 5:1: Error: .* \(unknown-word\)$/m);
  });

  test('without a time the text itself stands there', async () => {
    const { status, out } = await runOn({ 'a.cut': 'cut 1\nA: 1..\n' }, 'show', 'a.cut');
    expect(status).toBe(0);
    expect(out).toMatch(/^! 1:1: Error: [\s\S]*\(time-missing\)\ncut 1\nA: 1\.\.\n$/);
  });

  test('a file that only others use is shown as it is', async () => {
    const { status, out } = await runOn({ 'house.cut': 'phrase walk = 1--2--\n' }, 'show', 'house.cut');
    expect([status, out]).toEqual([0, 'phrase walk = 1--2--\n']);
  });

  test('what is wrong with the manifest is told too', async () => {
    const { status, out } = await runOn({ 'episode.yaml': 'papper: A4\n', 'a.cut': CUT }, 'show', 'a.cut');
    expect(status).toBe(0);
    expect(out).toContain('! episode.yaml:1:1: Error: ');
  });
});

test('a copy elsewhere is read as if it lay at home: with the episode and the files that it uses', async () => {
  const files = {
    'ep/episode.yaml': 'title: Samphire Ferry\n',
    'ep/house.cut': 'phrase walk = 1--2--\n',
    '/tmp/git-blob-x/c001.cut': 'use "../house.cut"\ncut 1\ntime 12\nA: walk..\n',
    'ep/cuts/c002.cut': CUT,
  };
  const lost = await runOn(files, 'show', '/tmp/git-blob-x/c001.cut');
  expect(lost.out).toContain('! 1:5: Error: ');
  const found = await runOn(files, 'show', '--home', 'ep/cuts', '/tmp/git-blob-x/c001.cut');
  expect(found.out).toContain('Samphire Ferry');
  expect(found.out).not.toContain('!');
});

test('a wide terminal has the seconds beside each other, but not where a width is asked for', async () => {
  const host = memoryHost({ 'c012.cut': 'cut 12\ntime 4+0\nA: 1..\n' });
  const terminal = { ...host, columns: 120, outputIsTerminal: true };
  expect((await run(terminal, 'show', 'c012.cut')).out).toMatch(/^│ 0\+01 +1 .*│ 1\+01 +25 .*│ 2\+01 +49 /m);
  const asked = await run(
    { ...memoryHost(Object.fromEntries(host.files)), ...terminal },
    'show',
    '--width',
    '120',
    'c012.cut',
  );
  expect(asked.out).not.toMatch(/1\+01.*2\+01/);
});

test('the page of the reference shows what is printed', async () => {
  const page = readFileSync('grammar/show.md', 'utf8');
  const cut = /```cut file=c012\.cut\n([\s\S]*?)```/.exec(page)![1]!;
  const [, line, printed] = /```console\n\$ cutwright (.*)\n([\s\S]*?)```/.exec(page)!;
  expect((await runOn({ 'c012.cut': cut }, ...line!.split(' '))).out).toBe(printed);
});
