import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, fileNames, isPdf, run } from '../command/run.js';

const TWO = CUT.replace('cut 1', 'cut 2');

describe('where it goes', () => {
  test('beside the cut, with a line that says so', async () => {
    const host = memoryHost({ 'cuts/c012.cut': CUT });
    expect(await run(host, 'build', 'cuts/c012.cut')).toEqual({
      status: 0,
      out: '',
      error: 'wrote cuts/c012.pdf: 2 pages\n',
    });
    expect(isPdf(host.files.get('/work/cuts/c012.pdf'))).toBe(true);
    expect(fileNames(host)).toEqual(['cuts/c012.cut', 'cuts/c012.pdf']);
  });

  test.each([
    ['x.pdf', ['x.pdf']],
    ['out/x.pdf', ['out/x.pdf']],
    ['out', ['out/a.pdf']],
    ['out/', ['out/a.pdf']],
    ['there', ['there/a.pdf']],
    ['there.d', ['there.d/a.pdf']],
  ])('--output %s', async (output, names) => {
    const host = memoryHost({ 'a.cut': CUT, 'there/b.txt': '', 'there.d/b.txt': '' });
    expect((await run(host, 'build', 'a.cut', '-o', output)).status).toBe(0);
    expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual(names);
  });

  test('standard output', async () => {
    const host = memoryHost({ 'a.cut': CUT });
    const { status, error } = await run(host, 'build', 'a.cut', '--output', '-');
    expect([status, error]).toEqual([0, 'wrote 2 pages to standard output\n']);
    expect(isPdf(host.printedBytes())).toBe(true);
    expect(fileNames(host)).toEqual(['a.cut']);
  });

  test('from standard input to standard output, or to a file', async () => {
    const host = memoryHost();
    host.input = Buffer.from(CUT);
    expect((await run(host, 'build', '-')).status).toBe(0);
    expect(isPdf(host.printedBytes())).toBe(true);
    expect((await run(host, 'build', '-', '-o', 'x.pdf')).status).toBe(0);
    expect(isPdf(host.files.get('/work/x.pdf'))).toBe(true);
    expect((await run(host, 'build', '-', '-o', 'folder/')).error).toContain('Standard input has no name');
  });

  test('a whole episode into a folder', async () => {
    const host = memoryHost({
      'e/episode.yaml': 'cuts: "cuts/*.cut"\n',
      'e/cuts/1.cut': CUT,
      'e/cuts/2.cut': TWO,
      'e/house.cut': 'phrase p = 1\n',
    });
    expect(await run(host, 'build', 'e', '-o', 'out')).toEqual({
      status: 0,
      out: '',
      error: 'wrote 2 files, 4 pages, in out\n',
    });
    expect(fileNames(host).filter((name) => name.startsWith('out/'))).toEqual(['out/1.pdf', 'out/2.pdf']);
  });

  test('without files: the episode that the current folder lies in', async () => {
    const files = {
      'episode.yaml': 'cuts: "cuts/*.cut"\n',
      'cuts/1.cut': CUT,
      'cuts/2.cut': TWO,
      'x/3.cut': TWO,
    };
    const top = memoryHost(files);
    expect((await run(top, 'build')).error).toBe('wrote 2 files, 4 pages, in cuts\n');
    expect(fileNames(top).filter((name) => name.endsWith('.pdf'))).toEqual(['cuts/1.pdf', 'cuts/2.pdf']);
    const below = Object.assign(memoryHost(files), { cwd: '/work/cuts' });
    expect((await run(below, 'build', '-o', 'out')).error).toBe('wrote 2 files, 4 pages, in out\n');
    expect(fileNames(below).filter((name) => name.endsWith('.pdf'))).toEqual([
      'cuts/out/1.pdf',
      'cuts/out/2.pdf',
    ]);
  });

  test('without files, outside any episode: wrong use', async () => {
    const { status, error } = await run(memoryHost({ '1.cut': CUT }), 'build');
    expect([status, error]).toEqual([2, expect.stringContaining('this folder lies in no episode')]);
  });

  test('the folder is swept of what killed runs left', async () => {
    const host = memoryHost({ 'e/episode.yaml': '', 'e/1.cut': CUT, 'e/b/2.cut': TWO });
    await run(host, 'build', 'e');
    expect(host.swept).toEqual(['/work/e', '/work/e/b']);
    await run(host, 'build', 'e', '--one-file', '-o', 'out/all.pdf');
    expect(host.swept.at(-1)).toBe('/work/out');
  });

  test('a shared file in the folder is passed over', async () => {
    const host = memoryHost({ 'a.cut': `use "h.cut"\n${CUT}`, 'h.cut': 'phrase walk = 1{late}--2--\n' });
    expect(await run(host, 'build', '.')).toMatchObject({ status: 0, error: 'wrote a.pdf: 2 pages\n' });
    expect((await run(host, 'build', 'h.cut')).status).toBe(2);
  });
});

describe('what must not be written over', () => {
  test('two cuts that would go into one file: neither is written', async () => {
    const host = memoryHost({ 'day/c1.cut': CUT, 'night/c1.cut': TWO, 'night/c2.cut': TWO });
    const { status, error } = await run(host, 'build', 'day', 'night', '-o', 'out');
    expect(status).toBe(2);
    expect(error.match(/: same-output$/gm)).toHaveLength(2);
    expect(fileNames(host).filter((name) => name.startsWith('out/'))).toEqual(['out/c2.pdf']);
  });

  test('links to one folder are seen through', async () => {
    const host = memoryHost({ 'a/c1.cut': CUT, 'out/x.txt': '' });
    host.links.set('/work/same', 'out');
    expect((await run(host, 'build', 'a/c1.cut', '-o', 'same')).status).toBe(0);
    expect(fileNames(host)).toContain('out/c1.pdf');
  });

  test.each([
    ['the cut itself', 'a.cut'],
    ['a cut that is not read', 'other.cut'],
    ['the manifest', 'episode.yaml'],
    ['a used file', 'h.txt'],
    ['the cut, by a link', 'link.pdf'],
  ])('%s', async (_, output) => {
    const files = {
      'a.cut': `use "h.txt"\n${CUT}`,
      'other.cut': TWO,
      'h.txt': 'phrase p = 1\n',
      'episode.yaml': 'title: X\n',
    };
    const host = memoryHost(files);
    host.links.set('/work/link.pdf', 'a.cut');
    const { status, error } = await run(host, 'build', 'a.cut', '-o', output);
    expect(status).toBe(2);
    expect(error).toContain(': output-is-input\n');
    for (const [name, text] of Object.entries(files))
      expect(Buffer.from(host.files.get(`/work/${name}`)!).toString()).toBe(text);
  });
});

test.each([
  ['build', 'a.cut'],
  ['build', '--one-file', 'a.cut'],
  ['export', 'a.cut'],
  ['export', '-t', 'drawings', 'a.cut'],
  ['export', '-e', 'edl', 'a.cut'],
])('an empty --output is a fault, not the current folder: %s %s', async (...words) => {
  const host = memoryHost({ 'a.cut': CUT });
  const { status, error } = await run(host, ...words, '--output', '');
  expect([status, error]).toEqual([2, expect.stringContaining('`--output` takes a file or a folder')]);
  expect(fileNames(host)).toEqual(['a.cut']);
});
