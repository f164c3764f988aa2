/** What other cuts add to a sheet is on its paper, and counts as a change of it. */

import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { lookInto } from '../command/pdf.js';
import { run } from '../command/run.js';

const cut = (number: number, lines: string): string => `cut ${number}\ntime 2+0\n${lines}\n`;
const EPISODE = {
  'e/episode.yaml': 'cuts: ["*.cut"]\n',
  'e/8.cut': cut(8, 'C: 1--2..'),
  'e/9.cut': cut(9, 'overlap out 1+0\nA: 1..'),
  'e/10.cut': cut(10, 'overlap in 24\nA: 1..'),
  'e/11.cut': cut(11, 'A: 1..'),
};

test('a borrower or another neighbour prints the sheets again on which they stand, and no others', async () => {
  const host = memoryHost(EPISODE);
  const build = (...more: string[]) => run(host, 'build', 'e', '-o', 'out', ...more);
  const words = async (name: string) =>
    (await lookInto(host.files.get(`/work/out/${name}.pdf`)!)).texts.join(' ');
  const written = async () => {
    const before = new Map(host.files);
    await build('--changed');
    return [...host.files]
      .filter(([name, bytes]) => before.get(name) !== bytes)
      .map(([name]) => name.slice(10));
  };
  await build();
  expect(await words('9')).toContain('c10');
  expect(await words('10')).toContain('c9');
  expect(await words('8')).not.toContain('shown again');

  host.files.set('/work/e/12.cut', Buffer.from(cut(12, 'level D reuse 8/C\nD: 1..')));
  expect((await written()).sort()).toEqual(['12.pdf', '8.pdf']);
  expect(await words('8')).toContain('cut 12 (as D)');
  expect(await words('12')).toContain('cut 8');

  host.files.set('/work/e/9A.cut', Buffer.from(cut(9, 'overlap out 1+0\nA: 1..').replace('cut 9', 'cut 9A')));
  expect((await written()).sort()).toEqual(['10.pdf', '9.pdf', '9A.pdf']);
  expect(await words('10')).toContain('c9A');
  expect(await words('9')).toContain('c9A');

  host.files.delete('/work/e/12.cut');
  expect(await written()).toEqual(['8.pdf']);
  expect(await words('8')).not.toContain('as D');
});
