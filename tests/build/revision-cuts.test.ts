/** `build --since REV`: what would come out otherwise than at a revision. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { lookInto } from '../command/pdf.js';
import { CUT, fileNames, run } from '../command/run.js';

const short = (cut: string) => CUT.replace('cut 1', `cut ${cut}`);
const long = (cut: string) => `cut ${cut}\ntime 13+0\nA: 1{late}--2:6+0 3:6+0 4..\n`;

const THEN = {
  'e/episode.yaml': 'title: Ferry\n',
  'e/2.cut': long('2'),
  'e/10.cut': short('10'),
  'e/11.cut': short('11'),
};

let host: MemoryHost;
const set = (name: string, text: string) => void host.files.set(`/work/e/${name}`, Buffer.from(text));
const build = (...argv: string[]) => run(host, 'build', 'e', '-o', 'out', '--since', 'HEAD~1', ...argv);
const pdfs = () => fileNames(host).filter((name) => name.endsWith('.pdf'));

beforeEach(() => {
  host = memoryHost(THEN);
  host.revisions.set('HEAD~1', memoryHost(THEN));
});

test('nothing differs: nothing is written', async () => {
  set('2.cut', `# later\n${long('2').replace('6+0 3', '144 3')}`);
  host.commits.set('/work/e', '1234567');
  expect(await build()).toEqual({ status: 0, out: '', error: '3 cuts unchanged since HEAD~1\n' });
  expect(pdfs()).toEqual([]);
});

test('one key: its cut is printed, and its page is named', async () => {
  set('2.cut', long('2').replace('4..', '4 3..'));
  expect((await build()).error).toBe(
    'cut 2: page 3 of 4\nwrote out/2.pdf: 4 pages\n2 cuts unchanged since HEAD~1\n',
  );
  expect(pdfs()).toEqual(['out/2.pdf']);
});

test('a new cut counts as all its pages; one that is gone is named', async () => {
  set('12.cut', long('12'));
  host.files.delete('/work/e/10.cut');
  const { error } = await build();
  expect(error).toContain('cut 12: all 4 pages, new since HEAD~1\n');
  expect(error).toContain('cut 10: no cut of the episode any more\n');
  expect(error).toContain('wrote out/12.pdf: 4 pages\n2 cuts unchanged since HEAD~1\n');
});

test('a file that was renamed is the same cut', async () => {
  host.files.delete('/work/e/10.cut');
  set('c010.cut', short('10').replace('2..', '3..'));
  const { error } = await build();
  expect(error).toContain('cut 10: pages 1-2 of 2 (1, charts 1)\n');
  expect(error).not.toContain('any more');
});

test('files that were renamed in a chain: each cut is compared with itself', async () => {
  for (const name of ['2', '10', '11']) host.files.delete(`/work/e/${name}.cut`);
  set('2.cut', short('1'));
  set('10.cut', THEN['e/2.cut']);
  set('11.cut', THEN['e/10.cut']);
  set('12.cut', THEN['e/11.cut']);
  const { error } = await build();
  expect(error).toMatch(
    /^cut 1: .*, new since HEAD~1\nwrote out\/2\.pdf: 2 pages\n3 cuts unchanged since HEAD~1\n$/,
  );
});

test('a cut that got another number prints otherwise, and its old number is gone', async () => {
  set('11.cut', short('11A'));
  const { error } = await build();
  expect(error).toContain('cut 11A: pages 1-2 of 2 (1, charts 1)\n');
  expect(error).toContain('cut 11: no cut of the episode any more\n');
});

test('a renamed cut with errors is not gone', async () => {
  host.files.delete('/work/e/10.cut');
  set('c010.cut', short('10').replace('..', ''));
  const { status, error } = await build();
  expect(status).toBe(1);
  expect(error).toMatch(/2 cuts unchanged since HEAD~1\nnot printed: cut 10 \(1 error\)\n$/);
  expect(error).not.toContain('any more');
});

test('where the number of a cut cannot be read, nobody says that its cut is gone', async () => {
  host.files.delete('/work/e/10.cut');
  set('1.cut', short('10').replace('cut 10', 'cut "Pier"'));
  const { status, error } = await build();
  expect(status).toBe(1);
  expect(error).toMatch(/^2 cuts unchanged since HEAD~1\nnot printed: e\/1\.cut \(1 error\)$/m);
  expect(error).not.toContain('any more');
});

test('of two cuts of one number then, the first counts for one whose file is new', async () => {
  const then = { ...THEN, 'e/10b.cut': long('10') };
  host.revisions.set('HEAD~1', memoryHost(then));
  host.files.delete('/work/e/10.cut');
  set('c010.cut', short('10'));
  expect((await build()).error).toBe('3 cuts unchanged since HEAD~1\n');
});

test('before there was a manifest the defaults held', async () => {
  const { 'e/episode.yaml': _, ...cuts } = THEN;
  host.revisions.set('HEAD~1', memoryHost(cuts));
  expect((await build()).error).toContain('cut 10: pages 1-2 of 2 (1, charts 1)\n');
  set('episode.yaml', '# nothing yet\n');
  expect((await build()).error).toBe('3 cuts unchanged since HEAD~1\n');
});

test('the manifest of then counts', async () => {
  set('episode.yaml', 'title: Ferry\npaper: A3\n');
  const { error } = await build();
  expect(error).toContain('cut 10: pages 1-2 of 2 (1, charts 1)\n');
  expect(error).toContain('wrote 3 files');
});

test('the command line holds for both', async () => {
  expect((await build('--paper', 'A3', '--labels', 'ja')).error).toBe('3 cuts unchanged since HEAD~1\n');
});

test('what a used file says counts', async () => {
  const uses = (phrase: string) => ({
    ...THEN,
    'e/house.cut': `phrase p = ${phrase}\n`,
    'e/10.cut': 'use "house.cut"\ncut 10\ntime 1+0\nA: p 9..\n',
  });
  host = memoryHost(uses('1{late}--2'));
  host.revisions.set('HEAD~1', memoryHost(uses('1{late}---2')));
  expect((await build()).error).toContain('cut 10: pages 1-2 of 2');
});

test('a cut that had errors then', async () => {
  host.revisions.set('HEAD~1', memoryHost({ ...THEN, 'e/10.cut': short('10').replace('..', '') }));
  expect((await build()).error).toContain('cut 10: all 2 pages, as it had errors at HEAD~1\n');
});

describe('--pages changed', () => {
  test('prints the pages to exchange, in one file', async () => {
    set('2.cut', long('2').replace('4..', '4 3..'));
    set('11.cut', short('11').replace('1{late}--2', '1{late}-2'));
    const { error } = await build('--one-file', '--pages', 'changed');
    expect(error).toBe(
      'cut 2: page 3 of 4\ncut 11: pages 1-2 of 2 (1, charts 1)\nwrote out/e-changes.pdf: 3 pages\n1 cut unchanged since HEAD~1\n',
    );
    const { labels, outline } = await lookInto(host.files.get('/work/out/e-changes.pdf')!);
    expect(labels).toEqual(['2/3', '11/1', '11/charts 1']);
    expect(outline.map(({ title }) => title)).toEqual(['Cut 2', 'Cut 11']);
  });

  test('to standard output', async () => {
    set('2.cut', long('2').replace('4..', '4 3..'));
    const argv = ['build', 'e/2.cut', '-o', '-', '--since', 'HEAD~1', '--pages', 'changed'];
    expect((await run(host, ...argv)).error).toBe('cut 2: page 3 of 4\nwrote 1 page to standard output\n');
  });

  test('nothing differs: no file', async () => {
    expect((await build('--one-file', '--pages', 'changed')).error).toBe('3 cuts unchanged since HEAD~1\n');
    expect(pdfs()).toEqual([]);
  });
});

describe('what git cannot give', () => {
  test('an unknown revision, pointed at', async () => {
    const { status, error } = await run(host, 'build', 'e', '--since', 'HEDA');
    expect(status).toBe(2);
    expect(error).toContain('Error: `--since HEDA` does not do: git knows no revision `HEDA`.');
    const [, , line, caret] = error.split('\n');
    expect(line!.slice(caret!.indexOf('^'), caret!.lastIndexOf('^') + 1)).toBe('HEDA');
  });

  test('no work tree', async () => {
    host.revision = () => ({ ok: false, reason: 'the folder is in no git work tree' });
    const { status, error } = await build();
    expect([status, error]).toEqual([2, expect.stringContaining('the folder is in no git work tree')]);
    expect(pdfs()).toEqual([]);
  });

  test('standard input', async () => {
    const { status, error } = await run(host, 'build', '-', '--since', 'HEAD~1');
    expect([status, error]).toEqual([2, expect.stringContaining('Standard input has no revisions')]);
  });
});
