import { describe, expect, test } from 'vitest';
import {
  deliver,
  deliverLater,
  isFolder,
  oneTarget,
  overwriting,
  STANDARD_OUTPUT,
  sharedFolder,
  Targets,
} from '../../src/build/output-targets.js';
import { UsageError } from '../../src/build/usage-error.js';
import { noEpisode } from '../../src/episode/episode.js';
import type { Found, Job } from '../../src/episode/find-cuts.js';
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

const SPAN = { file: 'a.cut', start: 0, end: 0 };
const jobOf = (name: string, more: Partial<Job> = {}): Job => ({
  path: `/work/${name}`,
  name,
  episode: noEpisode,
  named: true,
  ...more,
});
const foundOf = (jobs: readonly Job[], whole: Found['whole'] = []): Found => ({
  jobs,
  episodes: whole,
  whole,
  diagnostics: [],
});
/** The variant of the wrong use that a call is, or null. */
const wrongUse = (call: () => unknown): unknown => {
  try {
    call();
  } catch (fault) {
    if (fault instanceof UsageError) return (fault.parameters as { variant: string }).variant;
    throw fault;
  }
  return null;
};

describe('the target of a cut', () => {
  const host = memoryHost({ 'a.cut': CUT, 'b/c.cut': CUT, 'there/x.txt': '', file: '' });
  const targets = (
    names: readonly string[],
    output?: string,
    ending = '.pdf',
    fallback?: 'beside' | 'standard',
  ) => {
    const jobs = names.map((name) => jobOf(name));
    const all = new Targets(host, foundOf(jobs), output, ending, fallback);
    return jobs.map((job) => all.of(job));
  };

  test('is beside it under its name, or standard output, as the command has it', () => {
    expect(targets(['b/c.cut'])).toEqual([{ path: '/work/b/c.pdf', name: 'b/c.pdf' }]);
    expect(targets(['b/c.cut'], undefined, '.json', 'standard')).toEqual([STANDARD_OUTPUT]);
    const nameless = jobOf('-', { path: null });
    expect(new Targets(host, foundOf([nameless]), undefined, '.pdf').of(nameless)).toBe(STANDARD_OUTPUT);
  });

  test('of several cuts is a folder, never one file', () => {
    expect(targets(['a.cut', 'b/c.cut'], 'out').map(({ name }) => name)).toEqual(['out/a.pdf', 'out/c.pdf']);
    expect(wrongUse(() => targets(['a.cut', 'b/c.cut'], 'x.pdf'))).toBe('one-output');
    expect(wrongUse(() => targets(['a.cut', 'b/c.cut'], '-'))).toBe('one-output');
    expect(targets(['a.cut'], '-')).toEqual([STANDARD_OUTPUT]);
  });

  test('of standard input needs a name in a folder', () => {
    const nameless = jobOf('-', { path: null });
    expect(wrongUse(() => new Targets(host, foundOf([nameless]), 'out/', '.pdf'))).toBe('input-nameless');
  });

  test('has its folder among those that are written to, once', () => {
    const jobs = [jobOf('a.cut'), jobOf('b/c.cut'), jobOf('b/d.cut')];
    expect(new Targets(host, foundOf(jobs), undefined, '.pdf').folders()).toEqual(['/work', '/work/b']);
    expect(new Targets(host, foundOf(jobs), 'out', '.pdf').folders()).toEqual(['/work/out']);
  });

  test('is refused where another cut has it, or where a text lies', () => {
    const jobs = [jobOf('a/c.cut'), jobOf('b/c.cut'), jobOf('b/d.cut')];
    const all = new Targets(host, foundOf(jobs), 'out', '.pdf');
    expect(jobs.map((job) => all.refusal(job)?.parameters ?? null)).toEqual([
      { other: 'b/c.cut', output: 'out/c.pdf' },
      { other: 'a/c.cut', output: 'out/c.pdf' },
      null,
    ]);
    expect(all.refusal(jobs[2]!, ['out/d.pdf'])).toMatchObject({
      code: 'output-is-input',
      parameters: { variant: 'read' },
    });
    const standard = new Targets(host, foundOf(jobs.slice(0, 1)), '-', '.pdf');
    expect([standard.rivalry(jobs[0]!), standard.refusal(jobs[0]!)]).toEqual([null, null]);
  });
});

describe('one target for all cuts', () => {
  const episode = { ...noEpisode, file: 'e/episode.yaml', folder: 'e' };
  const host = memoryHost({ 'e/episode.yaml': '' });
  const own = foundOf([jobOf('e/1.cut', { episode })], [episode]);
  const nameOf = (...rest: [Found, string | undefined, string?, string?]) => oneTarget(host, ...rest).name;

  test('is as typed, or beside the manifest under the name of its folder', () => {
    expect(oneTarget(host, own, '-')).toBe(STANDARD_OUTPUT);
    expect(nameOf(own, 'x.pdf')).toBe('x.pdf');
    expect(nameOf(own, undefined)).toBe('e/e.pdf');
    expect(nameOf(own, 'out', '-retakes')).toBe('out/e-retakes.pdf');
    expect(nameOf(own, undefined, '', '.csv')).toBe('e/e.csv');
  });

  test('is under the name of a manifest that has one of its own', () => {
    const named = { ...episode, file: 'e/pilot.yml' };
    expect(nameOf(foundOf([jobOf('e/1.cut', { episode: named })], [named]), undefined)).toBe('e/pilot.pdf');
  });

  test('has no name where the cuts are not those of one whole episode', () => {
    const others = [
      foundOf([jobOf('1.cut')]),
      foundOf([jobOf('1.cut'), jobOf('e/1.cut', { episode })], [episode]),
      foundOf([jobOf('e/1.cut', { episode })], [episode, { ...episode, file: 'f/episode.yaml' }]),
    ];
    for (const found of others)
      expect(wrongUse(() => oneTarget(host, found, undefined))).toBe('output-nameless');
  });
});

test('a name is a folder where one lies, ends in a stroke, or has no ending', () => {
  const host = memoryHost({ 'there.d/x': '', file: '' });
  const folders = ['there.d', 'x.d/', 'x.d\\', 'out', 'file', 'x.pdf', '.'].map((name) =>
    isFolder(host, name),
  );
  expect(folders).toEqual([true, true, true, true, false, false, true]);
  expect(wrongUse(() => isFolder(host, ''))).toBe('output-empty');
});

test('a text is never written over: one that was read, or anything with the name of one', () => {
  const host = memoryHost();
  const refused = (path: string, isInput?: (real: string) => boolean) =>
    (overwriting(host, path, path, SPAN, isInput)?.parameters as { variant: string } | undefined)?.variant ??
    null;
  expect(['/x.cut', '/x.YAML', '/x.yml', '/x.cut.pdf', '/cut'].map((path) => refused(path))).toEqual([
    'named',
    'named',
    'named',
    null,
    null,
  ]);
  expect(refused('/x.pdf', (real) => real === '/x.pdf')).toBe('read');
});

describe('bytes are delivered', () => {
  const bytes = Buffer.from('x');
  const file = { path: '/work/x.pdf', name: 'x.pdf' };

  test('to a file or to standard output', async () => {
    const host = memoryHost();
    expect([deliver(host, file, bytes, SPAN), await deliverLater(host, file, bytes, SPAN)]).toEqual([
      null,
      null,
    ]);
    expect(fileNames(host)).toEqual(['x.pdf']);
    expect(deliver(host, STANDARD_OUTPUT, bytes, SPAN)).toBeNull();
    expect(await deliverLater(host, STANDARD_OUTPUT, bytes, SPAN)).toBeNull();
    expect(Buffer.from(host.printedBytes()).toString()).toBe('xx');
  });

  test('or it is said why they cannot be', async () => {
    const host = Object.assign(memoryHost(), {
      out: () => {
        throw new Error('the disk is full');
      },
    });
    host.locked.add('/work/x.pdf');
    const told = {
      code: 'output-unwritable',
      span: SPAN,
      parameters: { output: 'x.pdf', reason: 'permission denied' },
    };
    expect(deliver(host, file, bytes, SPAN)).toMatchObject(told);
    expect(await deliverLater(host, file, bytes, SPAN)).toMatchObject(told);
    const nameless = { parameters: { output: null, reason: expect.stringContaining('the disk is full') } };
    expect(deliver(host, STANDARD_OUTPUT, bytes, SPAN)).toMatchObject(nameless);
    expect(await deliverLater(host, STANDARD_OUTPUT, bytes, SPAN)).toMatchObject(nameless);
  });
});

test('targets share a folder, or none', () => {
  const host = memoryHost();
  const to = (...paths: (string | null)[]) =>
    sharedFolder(
      host,
      paths.map((path) => ({ path, name: '' })),
    );
  expect(to('/work/out/a.pdf', '/work/out/b.pdf')).toBe('out');
  expect(to('/work/a.pdf', '/work/b.pdf')).toBe('.');
  expect(to('/work/a/a.pdf', '/work/b/b.pdf')).toBeNull();
  expect(to(null, '/work/b.pdf')).toBeNull();
  expect(to(null, null)).toBeNull();
});
