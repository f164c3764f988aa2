import { describe, expect, test } from 'vitest';
import { type DiagnosticSink, eachOutcome, findAll } from '../../src/episode/batch.js';
import { threadsFor } from '../../src/episode/worker-pool.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { withWorkers } from './memory-workers.js';

const CUTS = 60;
const name = (number: number): string => `c${String(number).padStart(3, '0')}.cut`;
/** Every seventh lacks its time, every tenth has an empty frame too many. */
const text = (number: number): string =>
  `cut ${number}\n${number % 7 === 0 ? '' : 'time 1+0\n'}A: ${number % 10 === 0 ? '1:25' : '1..'}\n`;

function episode(): MemoryHost {
  const cuts = Array.from({ length: CUTS }, (_, i) => [name(i + 1), text(i + 1)]);
  return memoryHost({
    'episode.yaml': 'artists: { M. Arai: [3, 99] }\n',
    'house.cut': 'phrase walk = 1-2\n',
    ...Object.fromEntries(cuts),
    'd7.cut': text(7),
  });
}

/** What is told and taken, in its order. */
async function ran(host: MemoryHost, threads: number, files: readonly string[] = ['.']): Promise<string[]> {
  const events: string[] = [];
  const sink: DiagnosticSink = {
    report: (diagnostics, sources) =>
      void events.push(
        ...diagnostics.map(({ code, span }) => `${code} ${span.file} ${sources.has(span.file)}`),
      ),
  };
  const found = await findAll(host, sink, files);
  const count = await eachOutcome(host, sink, found, {
    make: () => null,
    take({ house, number, cut, solved }, job) {
      events.push([job.name, house, number?.text, cut, solved].join(' '));
      if (number?.text === '5') throw new Error('a fault that was made');
    },
    workers: threads < 2 ? undefined : () => ({ threads, command: 'check', task: null }),
  });
  return [...events, `${count}`];
}

describe('with several threads', () => {
  test.each([2, 3, 5])(
    '%i: the same is told and taken in the same order, and all of them work',
    async (threads) => {
      const alone = await ran(episode(), 1);
      expect(alone).toContain('internal-fault c005.cut false');
      expect(alone).toContain('artist-without-cut episode.yaml true');
      const host = episode();
      const workers = withWorkers(host);
      expect(await ran(host, threads)).toEqual(alone);
      expect(workers.commands).toEqual(Array.from({ length: threads - 1 }, () => 'check'));
      expect(Math.min(...workers.answers)).toBeGreaterThan(0);
      expect(workers.stopped).toBe(threads - 1);
    },
  );

  test.each([0, 1, 7])('what a worker that dies after %i cuts had to do is done here', async (answers) => {
    const host = episode();
    const workers = withWorkers(host, answers);
    expect(await ran(host, 3)).toEqual(await ran(episode(), 1));
    expect(workers.answers).toEqual([answers, answers]);
    expect(workers.stopped).toBe(0);
  });

  test('what a worker has not begun is taken over where there is nothing else to do', async () => {
    const host = episode();
    const workers = withWorkers(host, 0, { deaf: true });
    expect(await ran(host, 2)).toEqual(await ran(episode(), 1));
    expect(workers.answers).toEqual([0]);
    expect(workers.stopped).toBe(1);
  });

  test('a fault of the program in a worker is told at its cut', async () => {
    const broken = (): MemoryHost => {
      const host = episode();
      const { read } = host;
      host.read = (path) => {
        if (path.endsWith('c058.cut')) throw new Error('a fault that was made');
        return read(path);
      };
      return host;
    };
    const alone = await ran(broken(), 1);
    expect(alone.filter((one) => one.startsWith('internal-fault')).length).toBeGreaterThan(1);
    const host = broken();
    withWorkers(host);
    expect(await ran(host, 3)).toEqual(alone);
  });

  test('standard input, and a host without threads, are done here', async () => {
    const host = episode();
    const workers = withWorkers(host);
    host.input = Buffer.from(text(81));
    const told = await ran(host, 2, ['-', name(1)]);
    expect(told[0]).toBe('standard input false 81 81 true');
    expect(workers.commands).toEqual([]);
    expect(await ran(episode(), 3)).toEqual(await ran(episode(), 1));
  });
});

test('as many threads are worth it as the machine has processors and every one has cuts enough', () => {
  const host = memoryHost();
  host.processors = () => 4;
  expect([1, 79, 80, 130, 3000].map((cuts) => threadsFor(host, cuts, null, 40))).toEqual([1, 1, 2, 3, 4]);
  host.processors = () => 64;
  expect(threadsFor(host, 3000, null, 40)).toBe(8);
  expect(threadsFor(host, 3000, 16, 40)).toBe(16);
  expect(threadsFor(host, 3, 16, 40)).toBe(3);
  expect(threadsFor(host, 3000, 1, 40)).toBe(1);
});
