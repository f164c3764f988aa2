/** `build --marked-against REV`: what has changed since a revision, read back from the printed sheets. */

import { beforeEach, describe, expect, test } from 'vitest';
import { ChangeMarks } from '../../src/build/change-marks.js';
import type { Reporter } from '../../src/build/reporter.js';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { fileNames, run } from '../command/run.js';
import { openPrinted } from '../pdf.js';
import { readBars } from '../readback/bars.js';
import { readSheet } from '../readback/sheet.js';

const cut = (number: number, a: string, more = '') =>
  `cut ${number}\ntime 4+0\nstack BG A B\nA: ${a}\nB: 1..\n${more}`;
const VOICE = 'voice "Nao" 1+6..2+20 "Wait for me!"\n';
const THEN = {
  'e/episode.yaml': 'title: Ferry\n',
  'e/1.cut': cut(1, '1:12 1--2..'),
  'e/2.cut': cut(2, '1:1+0 2:1+0 3..', VOICE),
  'e/3.cut': cut(3, '1..'),
};

let host: MemoryHost;
const set = (name: string, text: string) => void host.files.set(`/work/e/${name}`, Buffer.from(text));
const build = (...argv: string[]) =>
  run(host, 'build', 'e', '-o', 'out/', '--only', 'sheet', '--marked-against', 'HEAD~1', ...argv);

interface Sheets {
  /** `A keys 13-24`, `speech 30-48`. */
  readonly bars: readonly string[];
  readonly memo: string;
}

async function printed(name: string): Promise<Sheets> {
  const { pages } = await openPrinted(host.files.get(`/work/${name}`)!);
  const sheets = pages.map(readSheet);
  const bars = sheets.flatMap(readBars).map(({ place, group, from, to }) => {
    const what = place.kind === 'level' ? `${place.level} ${group}` : place.kind;
    return `${what} ${from}-${to}`;
  });
  return { bars, memo: sheets.map(({ memo }) => memo).join(' ') };
}

beforeEach(() => {
  host = memoryHost(THEN);
  host.revisions.set('HEAD~1', memoryHost(THEN));
});

describe('what is to be marked on a cut', () => {
  async function marks(name: string, rev = 'HEAD~1') {
    const found = await findCuts(host, ['e']);
    const said: string[] = [];
    const reporter = { report: (all: { code: string }[]) => void said.push(...all.map(({ code }) => code)) };
    const changes = await ChangeMarks.open(host, rev, found, ['e'], {}, reporter as unknown as Reporter);
    const job = found.jobs.find((one) => one.name === `e/${name}`)!;
    const cache = newEpisodeCache();
    const compiled = compile(host, job.path, job.episode, { name: job.name, cache });
    const printable = { host, job, compiled, solved: compiled.solved!, cache };
    return { marks: changes.of(printable), again: changes.of(printable), said };
  }
  const commit = (name: string) => {
    const then = memoryHost(THEN);
    then.commits.set('/work/e', name);
    return then;
  };

  test('is nothing where it is what it was, whatever commit that is', async () => {
    host.revisions.set('HEAD~1', commit('9bfdb48'));
    expect((await marks('2.cut')).marks).toEqual({ against: 'HEAD~1', rows: [], ladders: [], lines: [] });
  });

  test('is said against the revision with its commit, or against the commit where that was typed', async () => {
    set('2.cut', cut(2, '1:1+0 2:1+12 3..', VOICE));
    for (const rev of ['HEAD~1', '9bfdb48', '9bfdb48c55']) host.revisions.set(rev, commit('9bfdb48'));
    const against = async (rev: string) => (await marks('2.cut', rev)).marks!.against;
    expect(await against('HEAD~1')).toBe('HEAD~1 (9bfdb48)');
    expect(await against('9bfdb48')).toBe('9bfdb48');
    expect(await against('9bfdb48c55')).toBe('9bfdb48c55');
  });

  test('is one line for a cut that is new', async () => {
    set('4.cut', cut(4, '1{late}--2..'));
    expect((await marks('4.cut')).marks).toEqual({
      against: 'HEAD~1',
      rows: [],
      ladders: [],
      lines: ['The cut is new'],
    });
  });

  test('is nothing for a cut that had errors, which is said once', async () => {
    host.revisions.set('HEAD~1', memoryHost({ ...THEN, 'e/1.cut': cut(1, '1:12') }));
    expect(await marks('1.cut')).toEqual({ marks: undefined, again: undefined, said: ['not-marked'] });
  });

  test('cannot be found against a revision that git does not know: the option is named', async () => {
    const { status, error } = await run(host, 'build', 'e', '--marked-against', 'HEDA');
    expect(status).toBe(2);
    expect(error).toContain('Error: `--marked-against HEDA` does not do: git knows no revision `HEDA`.');
  });
});

describe('a cut', () => {
  test('whose drawing stands later has bars in its level’s columns, and a line in the memo', async () => {
    set('2.cut', cut(2, '1:1+0 2:1+12 3..', VOICE));
    expect((await build()).status).toBe(0);
    const { bars, memo } = await printed('out/2.pdf');
    expect(bars.length).toBeGreaterThan(1);
    for (const bar of bars) expect(bar).toMatch(/^A (keys|cels) /);
    const rows = bars.filter((bar) => bar.startsWith('A keys')).map((bar) => bar.slice(7));
    expect(bars.filter((bar) => bar.startsWith('A cels')).map((bar) => bar.slice(7))).toEqual(rows);
    // Drawing 3 stood on frame 49 and stands on 61.
    expect(rows.some((row) => Number(row.split('-')[0]) <= 49 && Number(row.split('-')[1]) >= 60)).toBe(true);
    expect(memo).toContain('Changed against HEAD~1 (bar: rows that differ)');
    expect(memo).toMatch(/· A.*\b12\b/);
  });

  test('names the commit behind a revision where something has changed, and only there', async () => {
    const then = memoryHost(THEN);
    then.commits.set('/work/e', '9bfdb48');
    host.revisions.set('HEAD~1', then);
    set('2.cut', cut(2, '1:1+0 2:1+12 3..', VOICE));
    expect((await build()).status).toBe(0);
    expect((await printed('out/2.pdf')).memo).toContain('Changed against HEAD~1 (9bfdb48) (bar: rows');
    expect((await printed('out/1.pdf')).memo).toContain('No change against HEAD~1');
    expect((await printed('out/1.pdf')).memo).not.toContain('9bfdb48');
  });

  test('whose dialogue moves has bars beside it, and so has a camera that is new', async () => {
    set('2.cut', cut(2, '1:1+0 2:1+0 3..', `${VOICE.replace('1+6', '1+10')}shake 3mm 1..12\n`));
    await build('--convention', 'west');
    const { bars } = await printed('out/2.pdf');
    expect(new Set(bars.map((bar) => bar.split(' ')[0]))).toEqual(new Set(['speech', 'camera']));
    expect(bars).toContain('camera 1-12');
  });

  test('with a level dropped says so in the memo', async () => {
    set('1.cut', cut(1, '1:12 1--2..').replace('B: 1..\n', '').replace(' A B', ' A'));
    await build();
    const { bars, memo } = await printed('out/1.pdf');
    expect(bars).toEqual([]);
    expect(memo).toMatch(/· .*\bB\b/);
  });

  test('that is the same says that nothing has changed', async () => {
    set('1.cut', `# a remark\n${cut(1, '1:12   1--2..')}`);
    expect((await build()).error).not.toContain('warning');
    expect(await printed('out/1.pdf')).toEqual({
      bars: [],
      memo: expect.stringContaining('No change against HEAD~1'),
    });
  });

  test('that is new says so, in the form’s language, and has no bars', async () => {
    set('4.cut', cut(4, '1..'));
    await build();
    const english = await printed('out/4.pdf');
    expect(english.bars).toEqual([]);
    expect(english.memo).toContain('Changed against HEAD~1 · The cut is new');
    await build('--labels', 'ja');
    expect((await printed('out/4.pdf')).memo).toContain('HEAD~1 からの変更 · 新規カット');
  });

  test('that had errors then is printed without marks, with a warning', async () => {
    host.revisions.set('HEAD~1', memoryHost({ ...THEN, 'e/1.cut': cut(1, '1:12') }));
    const { status, error } = await build();
    expect(status).toBe(0);
    expect(error).toContain('Cut 1 had errors at HEAD~1: nothing is marked on its sheets.');
    expect(error.match(/not-marked/g)).toHaveLength(1);
    const { bars, memo } = await printed('out/1.pdf');
    expect(bars).toEqual([]);
    expect(memo).not.toContain('HEAD~1');
    expect(fileNames(host)).toContain('out/3.pdf');
  });

  test('is marked for what a used file says', async () => {
    const uses = (phrase: string) => ({
      'e/house.cut': `phrase p = ${phrase}\n`,
      'e/1.cut': 'use "house.cut"\ncut 1\ntime 1+0\nA: p 9..\n',
    });
    host = memoryHost(uses('1--2'));
    host.revisions.set('HEAD~1', memoryHost(uses('1---2')));
    await run(host, 'build', 'e/1.cut', '--marked-against', 'HEAD~1', '--only', 'sheet');
    expect((await printed('e/1.pdf')).bars.length).toBeGreaterThan(0);
  });
});

describe('together with what is printed', () => {
  beforeEach(() => set('2.cut', cut(2, '1:1+0 2:1+12 3..', VOICE)));

  test('since a revision: the cuts that differ, with marks, and no others', async () => {
    const { error } = await build('--since', 'HEAD~1');
    expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual(['out/2.pdf']);
    expect(error).toContain('cut 2: page 1 of 1');
    expect((await printed('out/2.pdf')).bars.length).toBeGreaterThan(0);
  });

  test('changed since the last build: marked sheets that are there are not written again', async () => {
    await build();
    const before = host.files.get('/work/out/2.pdf');
    const { error } = await build('--changed');
    expect(error).toBe('3 cuts unchanged\n');
    expect(host.files.get('/work/out/2.pdf')).toBe(before);
    set('3.cut', cut(3, '1:12 2..'));
    expect((await build('--changed')).error).toContain('wrote out/3.pdf');
  });

  test('in one file', async () => {
    for (const more of [[], ['--since', 'HEAD~1'], ['--changed']]) {
      host.files.delete('/work/all.pdf');
      const { status } = await run(
        host,
        ...['build', 'e', '--one-file', '-o', 'all.pdf', '--only', 'sheet'],
        ...['--marked-against', 'HEAD~1', ...more],
      );
      expect(status).toBe(0);
      const { bars, memo } = await printed('all.pdf');
      expect(bars.filter((bar) => !bar.startsWith('A '))).toEqual([]);
      expect(bars.length).toBeGreaterThan(1);
      expect(memo.match(/Changed against/g)).toHaveLength(1);
    }
  });
});
