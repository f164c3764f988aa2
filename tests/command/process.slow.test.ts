/** The shipped bundle as whole processes on the real file system: what a world in memory cannot show. */

import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { program } from '../bundle.js';
import { CUT, isPdf } from './run.js';

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
  write('a.cut', CUT);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

function write(name: string, content: string | Uint8Array): void {
  writeFileSync(join(folder, name), content);
}

/** Runs the program in the folder. */
function run(argv: readonly string[], more: { env?: Record<string, string>; input?: string } = {}) {
  const { status, stdout, stderr, signal } = spawnSync(process.execPath, [program, ...argv], {
    cwd: folder,
    encoding: 'buffer',
    timeout: 60_000,
    maxBuffer: 64 * 1024 * 1024,
    input: Buffer.from(more.input ?? ''),
    env: { ...process.env, NO_COLOR: '1', ...more.env },
  });
  expect(signal).toBeNull();
  return { status, out: stdout, error: stderr.toString() };
}

/** Runs a line of shell in which `$C` is the program. */
function shell(line: string): { status: number | null; error: string } {
  const { status, stderr } = spawnSync('sh', ['-c', line], {
    cwd: folder,
    timeout: 60_000,
    env: { ...process.env, NO_COLOR: '1', C: `${process.execPath} ${program}` },
  });
  return { status, error: stderr.toString() };
}

/** What the record in a PDF says of its pages. */
const pageHashes = (pdf: Buffer) => pdf.toString('latin1').match(/(?<= )(?:charts%20)?\d+=[\w-]+/g);

describe('a process', () => {
  test('prints a cut beside its text, and leaves nothing else behind', () => {
    expect(run(['build', 'a.cut'])).toMatchObject({ status: 0, error: 'wrote a.pdf: 2 pages\n' });
    expect(isPdf(readFileSync(join(folder, 'a.pdf')))).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(['a.cut', 'a.pdf']);
  });

  test('reads standard input and writes standard output', () => {
    const { status, out } = run(['build', '-'], { input: CUT });
    expect(status).toBe(0);
    const file = readFileSync(join(folder, 'a.pdf'));
    expect(run(['build', 'a.cut', '--output', '-']).out.equals(file)).toBe(true);
    // The record in the file tells of its text besides, which standard input is no file of.
    expect(pageHashes(out)).toEqual(pageHashes(file));
    expect(pageHashes(out)).toHaveLength(2);
    expect(JSON.parse(run(['export', '-'], { input: CUT }).out.toString()).cut).toBe('1');
  });

  test('writes the same bytes at another time, in another place and language', () => {
    const env = { SOURCE_DATE_EPOCH: '86400', TZ: 'Asia/Tokyo', LANG: 'ja_JP.UTF-8', LC_ALL: 'tr_TR.UTF-8' };
    expect(run(['build', 'a.cut', '-o', '-'], { env }).out.equals(readFileSync(join(folder, 'a.pdf')))).toBe(
      true,
    );
  });
});

describe('what a disk can do', () => {
  const full = existsSync('/dev/full');

  test.skipIf(!full)('full, as the output', () => {
    const { status, error } = run(['build', 'a.cut', '-o', '/dev/full']);
    expect(status).toBe(2);
    expect(error).toContain('`/dev/full` cannot be written: the disk is full.');
  });

  test.skipIf(!full)('full, as standard output', () => {
    for (const line of ['build a.cut -o -', 'export a.cut', 'explain', '--help', 'blank -o -']) {
      const { status, error } = shell(`$C ${line} > /dev/full`);
      expect({ line, status }).toEqual({ line, status: 2 });
      expect(error).toContain('Error: Standard output cannot be written: the disk is full.');
    }
  });

  test('a reader that goes away early is no fault', () => {
    expect(shell('$C explain | head -c 1 > head.txt')).toEqual({ status: 0, error: '' });
    expect(shell('$C export a.cut | head -c 1 > head.txt')).toEqual({ status: 0, error: '' });
  });

  test('a file without an end', () => {
    const { status, error } = run(['check', '/dev/zero']);
    expect(status).toBe(1);
    expect(error).toContain(': file-too-large\n');
  });

  test('a file of 50 MB', () => {
    write('big.cut', new Uint8Array(50 * 1024 * 1024).fill(0x41));
    expect(run(['build', 'big.cut'])).toMatchObject({
      status: 1,
      error: expect.stringContaining(': file-too-large\n'),
    });
    rmSync(join(folder, 'big.cut'));
  });

  test('a current folder that is gone', () => {
    const { status, error } = shell('mkdir gone && cd gone && rmdir ../gone && $C check a.cut');
    expect({ status, error }).toEqual({
      status: 2,
      error: expect.stringMatching(/^a.cut: file-missing$/m),
    });
    expect(shell('mkdir gone && cd gone && rmdir ../gone && $C check ../a.cut').status).toBe(0);
  });

  test('a name that no file can have', () => {
    expect(run(['check', `${'x'.repeat(5000)}.cut`]).status).toBe(2);
    expect(run(['build', 'a.cut', '-o', `${'x'.repeat(5000)}.pdf`])).toMatchObject({
      status: 2,
      error: expect.stringContaining('the name is too long'),
    });
  });
});

/** Texts that are far too much, with what is told of them. Each ends by itself, soon. */
const head = 'cut 1\ntime 1+0\n';
const muchs: [string, string | Uint8Array, 1 | 2, string][] = [
  ['a timeline of 100,000 items', `${head}A: ${'1 2 '.repeat(50_000)}\n`, 1, 'cut-too-large'],
  ['a cycle of a thousand million passes', `${head}A: (1)*999999999\n`, 1, 'timeline-long'],
  ['cycles in cycles', `${head}A: ((((1)*9999)*9999)*9999)*9999\n`, 1, 'timeline-long'],
  ['phrases that include themselves', `${head}phrase a = 1 b\nphrase b = 2 a\nA: a..\n`, 1, 'phrase-circle'],
  ['no time at all', 'cut 1\ntime 0+0\nA: 1..\n', 1, 'time-zero'],
  ['a cut of an hour', 'cut 1\ntime 3600+0\nA: 1..\n', 1, 'time-too-long'],
  ['NUL bytes', `${head}A: 1..\n\0\0\0`, 1, 'not-text'],
  ['groups in groups', `${head}A: ${'('.repeat(20_000)}1${')'.repeat(20_000)}\n`, 1, 'nested-too-deep'],
  ['a memo of 3 MB', `${head}memo "${'x'.repeat(3_000_000)}"\nA: 1..\n`, 1, 'file-too-large'],
  ['memos of 4 MB', `${head}${`memo "${'x y '.repeat(500)}"\n`.repeat(2000)}A: 1..\n`, 1, 'file-too-large'],
  [
    '5,000 levels',
    head + Array.from({ length: 5000 }, (_, i) => `A${i}: 1..\n`).join(''),
    1,
    'levels-too-many',
  ],
  ['nothing but slips', 'zzz\n'.repeat(200_000), 1, 'reading-stopped'],
  ['Latin-1', Buffer.from(`${head}memo "caf\xe9"\nA: 1..\n`, 'latin1'), 1, 'wrong-encoding'],
];

test.each(muchs)('%s', (_, text, status, code) => {
  write('much.cut', text);
  const { status: left, error } = run(['build', 'much.cut']);
  expect(error).toContain(`: ${code}\n`);
  expect(error.length).toBeLessThan(100_000);
  expect(left).toBe(status);
  expect(existsSync(join(folder, 'much.pdf'))).toBe(false);
  rmSync(join(folder, 'much.cut'));
});
