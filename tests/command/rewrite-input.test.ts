import { describe, expect, test } from 'vitest';
import {
  bytesOf,
  marked,
  printDiff,
  remembering,
  saying,
  writeBack,
} from '../../src/command/rewrite-input.js';
import { noEpisode } from '../../src/episode/episode.js';
import type { Job } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { run } from './run.js';

const FILE: Job = { path: '/work/a.cut', name: 'a.cut', episode: noEpisode, named: true };
const INPUT: Job = { ...FILE, path: null, name: 'standard input' };
const text = (bytes: Uint8Array | undefined) => Buffer.from(bytes!).toString();

describe('standard input', () => {
  test('is read once where it is named, and remembered', async () => {
    const host = memoryHost();
    let reads = 0;
    host.standardInput = async () => Buffer.from(`read ${++reads}`);
    const world = await remembering(host, ['a.cut', '-']);
    expect([text(await bytesOf(world, INPUT)), text(await bytesOf(world, INPUT)), reads]).toEqual([
      'read 1',
      'read 1',
      1,
    ]);
  });

  test('is not read where it is not named', async () => {
    const host = memoryHost();
    host.standardInput = async () => {
      throw new Error('waits for ever');
    };
    expect(await remembering(host, ['a.cut'])).toBe(host);
  });
});

test('a world in which a file says something else leaves the others as they are', async () => {
  const host = memoryHost({ 'a.cut': 'one', 'b.cut': 'two' });
  const world = saying(host, '/work/a.cut', Buffer.from('three'));
  expect(text(await bytesOf(world, FILE))).toBe('three');
  expect(text(await bytesOf(world, { ...FILE, path: '/work/b.cut' }))).toBe('two');
  expect(text(await bytesOf(host, FILE))).toBe('one');
  expect(text(await bytesOf(saying(host, null, Buffer.from('four')), INPUT))).toBe('four');
});

test('a file that cannot be read has no bytes', async () => {
  expect(await bytesOf(memoryHost(), FILE)).toHaveLength(0);
});

test('a byte-order mark is seen, and written back', () => {
  const host = memoryHost();
  // U+FEFF in UTF-8 (Unicode Standard, 23.8).
  expect([
    marked(Buffer.from([0xef, 0xbb, 0xbf, 0x61])),
    marked(Buffer.from('a')),
    marked(Buffer.from([])),
  ]).toEqual([true, false, false]);
  host.files.set('/work/a.cut', Buffer.from('old'));
  expect(writeBack(host, FILE, 'cut 1\n', true, Buffer.from('old'))).toBeNull();
  expect([...host.files.get('/work/a.cut')!.subarray(0, 4)]).toEqual([0xef, 0xbb, 0xbf, 0x63]);
});

describe('a text goes back', () => {
  test('to its file, or from standard input to standard output', () => {
    const host = memoryHost({ 'a.cut': 'old' });
    writeBack(host, FILE, 'cut 1\n', false, Buffer.from('old'));
    writeBack(host, INPUT, 'cut 2\n', false, Buffer.from('old'));
    expect([text(host.files.get('/work/a.cut')), host.printed()]).toEqual(['cut 1\n', 'cut 2\n']);
  });

  test('or what stands against it is said of its file', () => {
    const host = memoryHost({ 'a.cut': 'old' });
    host.locked.add('/work/a.cut');
    expect(writeBack(host, FILE, 'new', false, Buffer.from('old'))).toMatchObject({
      code: 'output-unwritable',
      span: { file: 'a.cut' },
    });
    expect(text(host.files.get('/work/a.cut'))).toBe('old');
  });

  test.each([
    ['format', 'cut 1\ntime 1+0\nA: 1   --2..\n', ['format']],
    ['number', 'cut 1\ntime 1+0\nA: 1--2..\n', ['number']],
    ['number', 'cut 1\ntime 1+0\nA: 1-2..\ncels A 1 1.1 1.2 2\n', ['number', '--gone', 'A:1.1']],
  ])('never over what somebody has saved while `%s` ran', async (_, before, argv) => {
    const host = memoryHost({ 'a.cut': before });
    const { read } = host;
    const later = `${before}memo "saved in the editor"\n`;
    host.read = (path) => {
      const reading = read(path);
      host.files.set('/work/a.cut', Buffer.from(later));
      return reading;
    };
    const { status, error } = await run(host, ...argv, 'a.cut');
    expect([status, error]).toEqual([
      2,
      expect.stringContaining('`a.cut` cannot be written: it was saved meanwhile'),
    ]);
    expect(text(host.files.get('/work/a.cut'))).toBe(later);
  });
});

test('a difference is printed as a patch, and none as nothing', async () => {
  const host = memoryHost();
  await printDiff(host, 'a.cut', 'same\n', 'same\n');
  expect(host.printed()).toBe('');
  await printDiff(host, 'a.cut', 'cut 1\nA: 1..\n', 'cut 1\nA: 2..\n');
  expect(host.printed()).toBe('--- a/a.cut\n+++ b/a.cut\n@@ -1,2 +1,2 @@\n cut 1\n-A: 1..\n+A: 2..\n');
});
