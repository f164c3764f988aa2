import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type DiagnosticSink, eachCut, findAll } from '../../src/episode/batch.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';

const cut = (number: string) => `cut ${number}\ntime 1+0\nA: 1..\n`;

/** Runs over what `files` means; `code file` of each problem, and the cuts in their order. */
async function ran(
  host: MemoryHost,
  files: readonly string[],
  work: (name: string) => void = () => {},
): Promise<{ told: string[]; worked: string[]; cuts: number }> {
  const told: string[] = [];
  const worked: string[] = [];
  const sink: DiagnosticSink = {
    report: (diagnostics) => void told.push(...diagnostics.map(({ code, span }) => `${code} ${span.file}`)),
  };
  const found = await findAll(host, sink, files);
  const cuts = await eachCut(host, sink, found, (compiled, job) => {
    worked.push(compiled.house ? `${job.name} (shared)` : job.name);
    work(job.name);
  });
  return { told, worked, cuts };
}

describe('a run', () => {
  test('takes one cut after the other, shared files too, and counts the cuts', async () => {
    const host = memoryHost({ 'b.cut': cut('2'), 'a.cut': cut('1'), 'h.cut': 'phrase walk = 1-2\n' });
    expect(await ran(host, ['b.cut', 'h.cut', 'a.cut'])).toEqual({
      told: [],
      worked: ['b.cut', 'h.cut (shared)', 'a.cut'],
      cuts: 2,
    });
  });

  test('tells of files that are not there, and does the others', async () => {
    const { told, worked } = await ran(memoryHost({ 'a.cut': cut('1') }), ['none.cut', 'a.cut']);
    expect([told, worked]).toEqual([['file-missing none.cut'], ['a.cut']]);
  });

  test('tells of a fault of the program at its cut, and goes on with the next', async () => {
    const host = memoryHost({ 'a.cut': cut('1'), 'b.cut': cut('2') });
    const { told, worked } = await ran(host, ['a.cut', 'b.cut'], (name) => {
      if (name === 'a.cut') throw new Error('a fault that was made');
    });
    expect([told, worked]).toEqual([['internal-fault a.cut'], ['a.cut', 'b.cut']]);
  });

  test('compiles a cut once, though others reuse its levels, and they are what they are by themselves', async () => {
    const files = {
      'episode.yaml': 'cuts: ["*.cut"]\n',
      '1.cut': 'cut 1\ntime 1+0\nA: 1--2..\n',
      '2.cut': 'cut 2\ntime 1+0\nlevel B reuse 1/A\nB: 2 3..\n',
      '3.cut': 'cut 3\ntime 1+0\nlevel B reuse 4/A\nB: 2 3..\n',
      '4.cut': 'cut 4\ntime 1+0\nA: 1--2 x\n',
    };
    const seen = async (args: readonly string[]) => {
      const base = memoryHost(files);
      const reads: string[] = [];
      const read: MemoryHost['read'] = (path) => {
        reads.push(basename(path));
        return base.read(path);
      };
      const cuts = new Map<string, unknown>();
      const host = { ...base, read };
      await eachCut(host, { report() {} }, await findAll(host, { report() {} }, args), (compiled, job) => {
        const { digest, diagnostics, solved } = compiled;
        const drawings = solved!.levels.map((level) => level.drawings);
        cuts.set(basename(job.name), { digest, told: diagnostics.map(({ code }) => code), drawings });
      });
      return { cuts, lent: reads.filter((name) => name === '1.cut').length };
    };
    const whole = await seen(['episode.yaml']);
    for (const name of ['2.cut', '3.cut'])
      expect((await seen([name])).cuts.get(name)).toEqual(whole.cuts.get(name));
    // Once as a cut of the story, once by itself.
    expect(whole.lent).toBe(2);
    expect(whole.cuts.get('3.cut')).toMatchObject({ told: ['reuse-unknown'] });
  });

  test('reads standard input where that is meant', async () => {
    const host = memoryHost();
    host.input = Buffer.from('cut 1\ntime 1+0\nA: 1\n');
    expect((await ran(host, ['-'])).told).toEqual(['timeline-short standard input']);
  });
});

describe('a number', () => {
  const twice = { 'a.cut': cut('7'), 'b.cut': cut('０７') };

  test('that two cuts of an episode have is told at the second', async () => {
    expect((await ran(memoryHost({ 'episode.yaml': '', ...twice }), ['.'])).told).toEqual([
      'cut-twice b.cut',
    ]);
  });

  test('may be had twice outside an episode, and once in each of two', async () => {
    expect((await ran(memoryHost(twice), ['.'])).told).toEqual([]);
    const two = { 'x/episode.yaml': '', 'x/a.cut': cut('7'), 'y/episode.yaml': '', 'y/a.cut': cut('7') };
    expect((await ran(memoryHost(two), ['x', 'y'])).told).toEqual([]);
  });
});

describe('an artist of a cut that is nowhere', () => {
  const files = { 'episode.yaml': 'artists: { M. Arai: [1, 9] }\n', 'a.cut': cut('1') };

  test('is told at the end of a whole episode', async () => {
    expect((await ran(memoryHost(files), ['.'])).told).toEqual(['artist-without-cut episode.yaml']);
  });

  test('is not told where only some cuts are looked at', async () => {
    expect((await ran(memoryHost(files), ['a.cut'])).told).toEqual([]);
  });

  test('is not told where the number of some cut cannot be read', async () => {
    const { told } = await ran(memoryHost({ ...files, 'b.cut': 'cut\ntime 1+0\nA: 1..\n' }), ['.']);
    expect(told).not.toContain('artist-without-cut episode.yaml');
    expect(told.length).toBeGreaterThan(0);
  });
});
