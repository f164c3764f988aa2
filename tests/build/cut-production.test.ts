/** `build --only cover`, read back from the PDF. */

import { describe, expect, test } from 'vitest';
import { productionOf } from '../../src/build/cut-production.js';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { run } from '../command/run.js';
import { openPrinted } from '../pdf.js';

const HEAD = 'cut,stage,state,date,person,note\n';
const CUT = 'cut 012 "Pier"\ntime 1+0\nA: 1--2..\n';

const world = (rows: string): MemoryHost =>
  memoryHost({
    'episode.yaml': 'stages: [layout, key]\ndue: { key: 2027-04-02, key 12: 2027-04-09 }\n',
    'c12.cut': CUT,
    'progress.csv': HEAD + rows,
  });

async function cover(host: MemoryHost): Promise<string[]> {
  const { pages } = await openPrinted(host.files.get('/work/c12.pdf')!);
  expect(pages).toHaveLength(1);
  return pages[0]!.texts.map(({ text }) => text);
}

describe('the cover', () => {
  test('shows what the table of the episode knows of this cut', async () => {
    const host = world(
      '12,layout,done,2027-03-06,H. Tarn,\n13,key,done,2027-03-07,R. Esk,\n12,layout,retake,2027-03-09,K. Brandt,"flat 🎬"\n12,layout,done,2027-03-11,H. Tarn,\n',
    );
    const { status } = await run(host, 'build', 'c12.cut', '--only', 'cover');
    expect(status).toBe(0);
    const texts = await cover(host);
    expect(texts).toEqual(
      expect.arrayContaining([
        '012',
        'H. Tarn',
        '2027-03-11',
        'due 04-09',
        'retakes: 1',
        'K. Brandt',
        'flat 〓',
      ]),
    );
    expect(texts).not.toContain('R. Esk');
  });

  test('is printed again when the table says something else, and only then', async () => {
    const host = world('');
    const again = async () => (await run(host, 'build', 'c12.cut', '--only', 'cover', '--changed')).error;
    await run(host, 'build', 'c12.cut', '--only', 'cover');
    expect(await again()).toContain('1 cut unchanged');
    host.files.set('/work/progress.csv', Buffer.from(`${HEAD}12,layout,done,2027-03-06,H. Tarn,\n`));
    expect(await again()).toContain('wrote c12.pdf');
    expect(await cover(host)).toContain('2027-03-06');
    expect(await again()).toContain('1 cut unchanged');
  });

  test('says what of the table cannot be read, and is printed with the rest', async () => {
    const host = world('12,layout,done,soon,,\n12,key,done,2027-03-11,H. Tarn,\n');
    const { status, error } = await run(host, 'build', 'c12.cut', '--only', 'cover');
    expect(status).toBe(1);
    expect(error).toContain('progress.csv:2:16: progress-faulty');
    expect(await cover(host)).toContain('2027-03-11');
  });

  test('of a cut outside of any episode has the usual stages to sign', async () => {
    const host = memoryHost({ 'c12.cut': CUT });
    await run(host, 'build', 'c12.cut', '--only', 'cover', '--paper', 'kaku2');
    expect(await cover(host)).toEqual(expect.arrayContaining(['layout', 'in-between', 'shoot']));
  });

  test('is no part of what is printed otherwise', async () => {
    const host = world('');
    await run(host, 'build', 'c12.cut', '--parts', 'all');
    const { labels } = await openPrinted(host.files.get('/work/c12.pdf')!);
    expect(labels).not.toContain('cover');
  });
});

test('a stage of which the table says nothing has no date and nobody to sign it', async () => {
  const host = world('12,layout,done,2027-03-06,H. Tarn,\n');
  const [job] = (await findCuts(host, ['c12.cut'])).jobs;
  const cache = newEpisodeCache();
  const compiled = compile(host, job!.path, job!.episode, { name: job!.name, cache });
  expect(productionOf({ host, job: job!, compiled, solved: compiled.solved!, cache })).toEqual({
    stages: [
      { stage: 'layout', state: 'done', date: '2027-03-06', person: 'H. Tarn', due: null },
      { stage: 'key', state: 'open', date: '', person: '', due: '2027-04-09' },
    ],
    retakes: [],
  });
});
