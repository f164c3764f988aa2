/** What commands show on a terminal has no word of English in it for whoever works in Japanese. */

import { describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { englishIn } from '../japanese-text.js';
import { run, runOn } from './run.js';

/** An episode of which each cut has something to tell; what is typed in it is Japanese or no word. */
function world(): MemoryHost {
  const manifest = (budget: string, lines = '') =>
    `title: 潮待ち\nbudget: ${budget}\nstages: [key, shoot]\ndue: { key: 2027-01-04, shoot: 2027-03-01 }\nrates: { key: 500 JPY per key }\n${lines}`;
  const cut = (number: number, time: string, line: string, artist = '汐見') =>
    `cut ${number} "防波堤"\ntime ${time}\nartist "${artist}"\n${line}\n`;
  const host = memoryHost({
    'episode.yaml': manifest('4+0'),
    'c1.cut': cut(1, '3+0', 'A: 1 2 3..'),
    'c2.cut': cut(2, '2+6', 'A: 1--2..\nfield A full\nfield B 60%\ntruck A@1 > B@24'),
    'c4.cut': `cut 4\ntime 1+0\nA: 1(\n`,
    'c5.cut': 'cut 5 "灯台"\ntime 1+0\nartist "汐見"\nartist "浦"\nA: 1 2..\n',
    'progress.csv':
      'cut,stage,state,date,person\n1,key,done,2026-12-28,汐見\n2,key,retake,2027-01-05,\n5,key,started,2027-01-06,浦\n',
  });
  host.revisions.set(
    'v1',
    memoryHost({
      'episode.yaml': manifest('9+0'),
      'c1.cut': cut(1, '2+0', 'A: 1 2 3..'),
      'c3.cut': cut(3, '0+18', 'A: 1..'),
    }),
  );
  host.variables.set('CUTWRIGHT_LANGUAGE', 'ja');
  return host;
}

/** What is typed as it stands: stages, file names, units of money. */
const TYPED = 'key shoot JPY c1.cut c2.cut c4.cut c5.cut c1.pdf c2.pdf c5.pdf all.pdf v1 progress.csv number';

describe.each([
  ['list'],
  ['list', '--since', 'v1'],
  ['list', '--check'],
  ['progress', '--date', '2027-01-10'],
  ['progress', '1', 'shoot', 'done', '--date', '2027-01-10', '--by', '浦'],
  ['progress', '1', '撮影', 'done'],
  ['show', 'c2.cut', '--labels', 'ja'],
  ['number', 'c1.cut', 'c2.cut', '--check'],
  ['number', 'c1.cut'],
  ['build', '--changed'],
  ['build', '--changed', '--one-file', '-o', 'all.pdf'],
  ['build', '--since', 'v1'],
  ['compare', '--since', 'v1', 'c1.cut', 'c2.cut', 'c3.cut'],
  ['compare', 'c1.cut', 'c2.cut'],
  ['compare', '--git', 'c1.cut', 'c1.cut', '0', '0', 'c2.cut', '0', '0'],
])('%s %s %s', (...argv) => {
  test('is told in Japanese', async () => {
    const { out, error } = await run(world(), ...argv);
    // Places with their codes, and lines of the texts, are no speech.
    const told = `${out}${error.replace(/^.*: [a-z-]+$|^ {4}.*$/gm, '')}`;
    expect(told).toMatch(/[ぁ-ん一-龠]/);
    expect(englishIn(told, TYPED), told).toEqual([]);
  });
});

test('stages have the names of the paper, beside what is typed; rates their units', async () => {
  const { out } = await run(world(), 'progress', '--date', '2027-01-10');
  expect(out).toMatch(/^カット +内容 +原画 +撮影$/m);
  expect(out).toMatch(/^原画 key .* 500 JPY／原画1枚$/m);
  expect(out).toContain('日遅れ：原画、締切');
  const { error } = await run(world(), 'progress', '1', 'shoot', 'done', '--date', '2027-01-11');
  expect(error).toBe('progress.csv：カット1：撮影 済、2027-01-11\n');
});

test('the command line is called so', async () => {
  expect((await run(world(), 'progress', '1', '撮影', 'done')).error).toMatch(/^コマンドライン:1:\d+: /m);
});

test('columns that a narrow terminal has no room for are named in Japanese', async () => {
  const { out } = await run(Object.assign(world(), { columns: 40 }), 'list');
  expect(out).toContain('幅が足りないので省いた列：');
  expect(englishIn(out, TYPED)).toEqual([]);
});

test('so are questions that only the animator can answer, and how far a long run is', async () => {
  const host = memoryHost({ 'a.cut': 'cut 1\ntime 1+0\nA: 1---2..\ncels A 1 1.1 1.2 2\n' });
  host.variables.set('CUTWRIGHT_LANGUAGE', 'ja');
  const asked = await run(host, 'number', 'a.cut');
  expect(asked.error).toMatch(
    /a\.cut：増えた1枚がどれかを指定してください：cutwright number a\.cut --new A:/,
  );
  const many = Object.fromEntries(
    Array.from({ length: 101 }, (_, i) => [`c${i}.cut`, `cut ${i + 1}\ntime 1+0\nA: 1..\n`]),
  );
  const built = await runOn({ ...many }, '--language', 'ja', 'build', '.', '--only', 'cover');
  expect(built.error).toContain('印刷中：101カットのうち100\n');
});
