/** `build --plan`: what ninja and make do with the build file, as real processes; skipped where they are not installed. */

import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { program } from '../bundle.js';

const cut = (number: number | string, lines = 'A: 1..'): string => `cut ${number}\ntime 1+0\n${lines}\n`;

/** Names that a shell, ninja and make would each read otherwise. */
const TEXTS: Record<string, string> = {
  'episode.yaml': 'title: Ferry\n',
  'the house.cut': 'phrase p = 1--2\n',
  'cuts/c 1: the $HOME.cut': cut(1, 'C: 1--2..'),
  "cuts/c2 #2 (it's) 100 {x}.cut": `use "../the house.cut"\n${cut(2, 'A: p 1..')}`,
  'cuts/第三カット.cut': cut(3, 'level D reuse 1/C\nD: 1..'),
  'cuts/-4.cut': cut(4, 'overlap out 8\nA: 1..'),
  'cuts/$(touch x) `5` "six".cut': cut(5, 'overlap in 8\nA: 1..'),
};

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright plan-'));
  put(TEXTS);
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function put(texts: Record<string, string>): void {
  for (const [name, text] of Object.entries(texts)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
}

function call(command: string, ...argv: string[]) {
  const env = { ...process.env, CUTWRIGHT: `${process.execPath} ${program}`, MAKEFLAGS: '' };
  const { status, stdout, stderr } = spawnSync(command, argv, { cwd: folder, encoding: 'utf8', env });
  return { status, said: stdout + stderr };
}

const cutwright = (...argv: string[]) => call(process.execPath, program, ...argv);

function prints(place: string): Map<string, Buffer> {
  const names = readdirSync(join(folder, place)).filter((name) => name.endsWith('.pdf'));
  return new Map(names.map((name) => [name, readFileSync(join(folder, place, name))]));
}

/** Cuts that were printed since the last call. */
function printed(place: string, before: Map<string, number>): string[] {
  const names = readdirSync(join(folder, place)).filter((name) => name.endsWith('.pdf'));
  const fresh = names.filter((name) => statSync(join(folder, place, name)).ino !== before.get(name));
  before.clear();
  for (const name of names) before.set(name, statSync(join(folder, place, name)).ino);
  return fresh.sort();
}

const save = (name: string, text: string): void => put({ [name]: text });

describe.each([
  // Only ninja prints again what a cut that is gone has borrowed from.
  { tool: 'ninja', file: 'cutwright.ninja', keep: ['-k', '0'], gone: ['c 1: the $HOME.pdf', 'c7.pdf'] },
  { tool: 'make', file: 'cutwright.mk', keep: ['-k'], gone: ['c7.pdf'] },
])('$tool', ({ tool, file, keep, gone }) => {
  const there = spawnSync(tool, ['--version']).status === 0;
  const run = (...argv: string[]) => call(tool, '-j2', '-f', `out put/${file}`, ...argv);

  test.skipIf(!there)(
    'prints the same bytes, only what has changed, and all but what is broken',
    { timeout: 300_000 },
    () => {
      const options = ['--paper', 'A3', '--labels', 'ja'];
      expect(cutwright('build', '-o', 'one', ...options).status).toBe(0);
      expect(cutwright('build', '-o', 'out put', '--plan', tool, ...options)).toEqual({
        status: 0,
        said: `wrote out put/${file}: 5 cuts; \`${tool} -f out put/${file}\` prints them\n`,
      });
      const first = run();
      expect(first.status, first.said).toBe(0);
      expect(prints('out put')).toEqual(prints('one'));
      expect(readdirSync(folder).sort()).toEqual(['cuts', 'episode.yaml', 'one', 'out put', 'the house.cut']);

      const inodes = new Map<string, number>();
      printed('out put', inodes);
      expect(run().status).toBe(0);
      expect(printed('out put', inodes)).toEqual([]);

      save('cuts/c 1: the $HOME.cut', cut(1, 'C: 1-2..'));
      expect(run().status).toBe(0);
      expect(printed('out put', inodes)).toEqual(['c 1: the $HOME.pdf', '第三カット.pdf']);
      save('the house.cut', 'phrase p = 1-2\n');
      expect(run().status).toBe(0);
      expect(printed('out put', inodes)).toEqual(["c2 #2 (it's) 100 {x}.pdf"]);

      save('cuts/-4.cut', `use "later.cut"\n${cut(4, 'overlap out 8\nA 1..')}`);
      save('cuts/c 1: the $HOME.cut', cut(1, 'C: 1---2..'));
      const kept = prints('out put').get('-4.pdf');
      const broken = run(...keep);
      expect(broken.status, broken.said).not.toBe(0);
      expect(printed('out put', inodes)).toEqual(
        // Two of them are neighbours of the broken one, which has an overlap.
        [
          '$(touch x) `5` "six".pdf',
          'c 1: the $HOME.pdf',
          "c2 #2 (it's) 100 {x}.pdf",
          '第三カット.pdf',
        ].sort(),
      );
      expect(prints('out put').get('-4.pdf')).toEqual(kept);
      save('cuts/-4.cut', cut(4, 'overlap out 8\nA: 1-2..'));
      const mended = run();
      expect(mended.status, mended.said).toBe(0);
      rmSync(join(folder, 'one'), { recursive: true });
      expect(cutwright('build', '-o', 'one', ...options).status).toBe(0);
      expect(prints('out put')).toEqual(prints('one'));
      printed('out put', inodes);

      rmSync(join(folder, 'cuts/第三カット.cut'));
      put({ 'cuts/c7.cut': cut(7) });
      const other = run();
      expect(other.status, other.said).toBe(0);
      expect(printed('out put', inodes)).toEqual(gone);
    },
  );
});
