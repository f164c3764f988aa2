import { beforeEach, describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { FILES, type PrintedEpisode, printedEpisode } from '../build/printed-episode.js';
import { CUT, fileNames, run } from './run.js';

let episode: PrintedEpisode;
const build = (...argv: string[]) => episode.build(...argv);
const written = (act: () => Promise<unknown>) => episode.written(act);

beforeEach(async () => {
  episode = await printedEpisode();
});

describe('what does not go together', () => {
  test.each([
    [['--pages', 'changed'], '`--pages changed` needs something to compare with'],
    [['--changed', '--since', 'HEAD'], 'two comparisons'],
    [['--changed', '--pages', '2-3'], 'takes only `changed`'],
    [['--since', 'HEAD', '--pages', '2'], 'takes only `changed`'],
  ])('%s', async (argv, words) => {
    const done = await written(async () => {
      const { status, error } = await build(...argv);
      expect([status, error]).toEqual([2, expect.stringContaining(words)]);
      expect(error).toContain('^');
    });
    expect(done).toEqual([]);
  });

  test('standard output with --changed', async () => {
    const { status, error } = await run(episode.host, 'build', 'e/2.cut', '-o', '-', '--changed');
    expect([status, error]).toEqual([2, expect.stringContaining('standard output has none')]);
  });
});

describe('`--marked-against`', () => {
  let host: MemoryHost;

  beforeEach(() => {
    host = memoryHost(FILES);
    host.revisions.set('HEAD~1', memoryHost(FILES));
  });

  test('with a revision that git does not know is one clear error, and nothing is printed', async () => {
    const { status, error } = await run(host, 'build', 'e', '--marked-against', 'HEAD~9');
    expect(status).toBe(2);
    expect(error).toContain('`--marked-against HEAD~9` does not do');
    expect(error.match(/HEAD~9.*does not do/g)).toHaveLength(1);
    expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual([]);
  });

  test.each([
    [['e', '--only', 'camera'], '`--marked-against` marks the sheets; `--only camera` prints none.'],
    [['e', '--since', 'HEAD~1', '--pages', 'changed'], '`--marked-against` prints whole cuts'],
    [['-', '-o', 'a.pdf'], 'Standard input has no revisions'],
  ])('%j does not go together with marks', async (argv, words) => {
    host.input = Buffer.from(CUT);
    const { status, error } = await run(host, 'build', ...argv, '--marked-against', 'HEAD~1');
    expect([status, error]).toEqual([2, expect.stringContaining(words)]);
  });
});
